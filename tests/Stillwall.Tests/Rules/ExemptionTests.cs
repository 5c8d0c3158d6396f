using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Stillwall.Tests.Rules;

/// <summary>
/// What no test may do stands in <c>tests/BannedSymbols.txt</c> and fails the build: sleeping for a fixed time, randomness that cannot be had again. An
/// exemption gives its reason where it stands.
/// </summary>
public sealed partial class ExemptionTests
{
    [Fact]
    public void An_exemption_gives_its_reason_and_ends_where_its_line_does()
    {
        var exempt = Repository.Sources("tests").SelectMany(file => Exempt(file, File.ReadAllLines(file))).ToList();
        Assert.NotEmpty(exempt);
        var wrong = exempt.Where(e => !e.IsRight).Select(e => e.Place).ToList();
        Assert.True(
            wrong.Count == 0,
            "write it as #pragma warning disable RS0030 // with the reason, and restore it after the one statement:\n" + string.Join("\n", wrong)
        );
    }

    [Theory]
    [InlineData("#pragma warning disable RS0030", false)]
    [InlineData("#pragma warning disable RS0030 // needed", false)]
    [InlineData("#pragma warning disable RS0030 // The time itself is what is tried.", true)]
    public void A_reason_is_asked_for(string line, bool isRight) =>
        Assert.Equal(isRight, Exempt("x", [line, "Sleep();", "#pragma warning restore RS0030"]).Single().IsRight);

    // A name that has changed would forbid nothing.
    [Fact]
    public void Every_banned_symbol_of_the_framework_is_there()
    {
        var framework = Directory.GetFiles(Path.GetDirectoryName(typeof(object).Assembly.Location)!, "System.*.dll").Where(IsManaged);
        var compilation = CSharpCompilation.Create("x", references: framework.Select(f => MetadataReference.CreateFromFile(f)));
        var banned = File.ReadLines(Path.Combine(Repository.Root, "tests", "BannedSymbols.txt")).Select(line => line.Split(';')[0]).ToList();
        var ofFramework = banned.Where(id => id[2..].StartsWith("System.", StringComparison.Ordinal)).ToList();
        Assert.True(ofFramework.Count >= 10);
        Assert.All(ofFramework, id => Assert.True(DocumentationCommentId.GetFirstSymbolForDeclarationId(id, compilation) is not null, id));
    }

    private static bool IsManaged(string file)
    {
        using var stream = File.OpenRead(file);
        using var pe = new System.Reflection.PortableExecutable.PEReader(stream);
        return pe.HasMetadata;
    }

    // The helper that all properties go through is exempt as a whole file.
    private static IEnumerable<(string Place, bool IsRight)> Exempt(string file, string[] lines)
    {
        var isHelper = Path.GetFileName(file) == "Sampling.cs";
        return lines
            .Index()
            .Where(line => line.Item.TrimStart().StartsWith("#pragma warning disable RS0030", StringComparison.Ordinal))
            .Select(line => ($"{Repository.Relative(file)}:{line.Index + 1}", Reason().IsMatch(line.Item) && (isHelper || Ends(lines[line.Index..]))));
    }

    private static bool Ends(string[] lines) => lines.Take(4).Contains("#pragma warning restore RS0030");

    [GeneratedRegex(@"RS0030 // \w.{15,}\.$")]
    private static partial Regex Reason();
}
