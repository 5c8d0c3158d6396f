using System.Globalization;
using System.Text.Json;

namespace Stillwall.Cli.Tests;

/// <summary>Every number of the demo and of ten projects drawn from it stays bit for bit what it was; see tests/data/figures/README.md.</summary>
public sealed class KeptFiguresTests : IDisposable
{
    private readonly Desk desk = new();

    private static readonly string[] Names = ["demo", "ported", "radiator", "ready-box", "deep", "cement", "small", "two-drivers", "studs", "measured", "seat"];

    public static TheoryData<string> Projects => [.. Names];

    private static Dictionary<string, Dictionary<string, JsonElement>> Stated { get; } =
        JsonSerializer.Deserialize<Dictionary<string, Dictionary<string, JsonElement>>>(File.ReadAllText(Repository.Data("figures/projects.json")))!;

    public void Dispose() => desk.Dispose();

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_figure_moves(string project)
    {
        foreach (var (key, value) in Stated[project])
        {
            desk.State(key, value.ValueKind == JsonValueKind.Null ? null : value.GetRawText());
        }

        var lines = (project is "demo" or "seat" ? new[] { "rank", "walls", "join", "quiet" } : [])
            .Aggregate(
                Lines("appraise", desk.Run("appraise", "reading-room", "--json").Json).Concat(Curves()),
                (all, verb) => all.Concat(Lines(verb, desk.Run(verb, "reading-room", "--json").Json))
            )
            .ToList();

        var file = Repository.Data($"figures/{project}.txt");
        if (Environment.GetEnvironmentVariable("STILLWALL_WRITE_EXPECTED") == "1")
        {
            File.WriteAllLines(file, lines.Select(l => $"{l.Path} {l.Value}"));
        }

        var now = lines.ToDictionary(l => l.Path, l => l.Value, StringComparer.Ordinal);
        var moved = File.ReadLines(file)
            .Select(l => l.Split(' ', 2))
            .Select(l => (Path: l[0], Value: l[1]))
            .Where(l => !now.TryGetValue(l.Path, out var value) || !IsSame(l.Value, value))
            .Select(l => $"{l.Path} was {l.Value}, is {now.GetValueOrDefault(l.Path, "not there")}")
            .Take(20)
            .ToList();
        Assert.True(moved.Count == 0, $"{project}: {string.Join("; ", moved)}");
    }

    [Fact]
    public void Every_file_of_figures_belongs_to_a_project()
    {
        Assert.Equal(Stated.Keys, Names);
        var files = Directory.GetFiles(Repository.Data("figures"), "*.txt").Select(f => Path.GetFileNameWithoutExtension(f)!);
        Assert.Equal(Names.Order(StringComparer.Ordinal), files.Order(StringComparer.Ordinal));
    }

    private IEnumerable<(string Path, string Value)> Curves()
    {
        var rows = desk.Run("curves", "reading-room", "--csv", "-", "--points-per-decade", "8").Lines.Select(l => l.Split(',')).ToList();
        return rows.Skip(1)
            .SelectMany(
                (row, i) =>
                    rows[0].Zip(row).Where(c => c.Second.Length > 0).Select(c => ($"curves[{i.ToString(CultureInfo.InvariantCulture)}].{c.First}", c.Second))
            );
    }

    private static IEnumerable<(string Path, string Value)> Lines(string path, JsonElement at) =>
        at.ValueKind switch
        {
            JsonValueKind.Object => at.EnumerateObject().SelectMany(p => Lines($"{path}.{p.Name}", p.Value)),
            JsonValueKind.Array => at.EnumerateArray().SelectMany((item, i) => Lines($"{path}[{NameOf(item, i)}]", item)),
            JsonValueKind.Number => [(path, at.GetRawText())],
            JsonValueKind.String when path.EndsWith(".verdict", StringComparison.Ordinal) || path.Contains(".change[", StringComparison.Ordinal) =>
            [
                (path, at.GetRawText()),
            ],
            _ => [],
        };

    private static string NameOf(JsonElement item, int index) =>
        item.ValueKind == JsonValueKind.Object && item.TryGetProperty("id", out var id) && item.TryGetProperty("verdict", out _)
            ? id.GetString()!
            : index.ToString(CultureInfo.InvariantCulture);

    private static bool IsSame(string was, string now) =>
        was == now
        || (
            double.TryParse(was, CultureInfo.InvariantCulture, out var a)
            && double.TryParse(now, CultureInfo.InvariantCulture, out var b)
            && BitConverter.DoubleToInt64Bits(a) == BitConverter.DoubleToInt64Bits(b)
        );
}
