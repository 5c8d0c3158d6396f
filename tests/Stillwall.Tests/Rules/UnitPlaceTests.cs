using System.Text.RegularExpressions;

namespace Stillwall.Tests.Rules;

/// <summary>Millimetres that are drawn and metres that are computed meet in one file.</summary>
public sealed partial class UnitPlaceTests
{
    // Where sections are drawn and their sizes used. What a person reads (Appraisals/Show, the texts of proofs) has units of its own.
    private static readonly string[] Drawing =
    [
        "src/Stillwall/Shapes",
        "src/Stillwall/Cabinets",
        "src/Stillwall/Walls",
        "src/Stillwall/Parts",
        "src/Stillwall/Pours",
        "src/Stillwall/Figures",
        "src/Stillwall/Appraisals/Findings",
        "src/Stillwall/Appraisals/WallChoices",
        "src/Stillwall.Web/Drawings",
        "src/Stillwall.Web/Viewer",
        "src/Stillwall.Files/Meshes",
    ];

    // Other quantities than lengths: a delay and milliseconds; and a decimal that is rounded as a decimal.
    private static readonly string[] Others = ["GroupDelayMs: ", "joining.DelayS", "(decimal)"];

    [Theory]
    [InlineData("var width = sizes.Width * 1e-3;")]
    [InlineData("var at = p.X / 1000.0;")]
    [InlineData("var volume = area * thickness * 1e-9;")]
    [InlineData("var radius = cutoutM * 500;")]
    public void A_length_changed_by_hand_is_seen(string line) => Assert.Matches(ByHand(), line);

    [Fact]
    public void A_length_changes_its_unit_in_one_file_alone()
    {
        var lines = Drawing
            .SelectMany(folder => Repository.Sources(folder))
            .Where(f => Path.GetFileName(f) != "Millimetres.cs")
            .SelectMany(f => File.ReadLines(f).Select((line, i) => (Line: line.Trim(), At: $"{Repository.Relative(f)}:{i + 1}")))
            .Where(l => !l.Line.StartsWith("//", StringComparison.Ordinal))
            .ToList();
        Assert.True(lines.Count > 10_000);
        var byHand = lines
            .Where(l => ByHand().IsMatch(l.Line) && !Others.Any(o => l.Line.Contains(o, StringComparison.Ordinal)))
            .Select(l => $"{l.At}: {l.Line}")
            .ToList();
        Assert.True(byHand.Count == 0, "use Shapes/Millimetres (InMetres, InMillimetres, OffGrid):\n" + string.Join('\n', byHand));
    }

    [GeneratedRegex(@"[*/] (1e-?3|1000(\.0)?|500|1e-9|1e9|0\.001)\b")]
    private static partial Regex ByHand();
}
