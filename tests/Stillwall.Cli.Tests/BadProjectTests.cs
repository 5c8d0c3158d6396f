using System.Text.Json;

namespace Stillwall.Cli.Tests;

/// <summary>Projects that are wrong on purpose, mended by nothing but <c>apply</c>; see tests/data/bad-projects/README.md.</summary>
public sealed class BadProjectTests : IDisposable
{
    private const int MostRounds = 25;

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    // Folder, the finding that the project is named after, what still fails at the end.
    [Theory]
    [InlineData("too-small-a-box", "cabinet/system-q-as-wanted")]
    [InlineData("a-wall-too-thin", "pour/mix-flows-into-the-cavity")]
    [InlineData("a-party-wall-too-light", "quiet/neighbour-at-the-everyday-level")]
    public void A_bad_project_is_mended_by_apply_alone_or_told_plainly_why_not(string name, string because, params string[] left)
    {
        desk.Write($"{name}/stillwall.json", File.ReadAllText(Repository.Data($"bad-projects/{name}/stillwall.json")));
        var plans = new List<string> { File.ReadAllText(desk.PathTo($"{name}/stillwall.json")) };
        var failing = Failing(name);
        Assert.Contains(failing, f => Id(f) == because);
        var told = new List<string>();
        while (failing.FirstOrDefault(f => f.GetProperty("change").GetArrayLength() > 0) is { ValueKind: JsonValueKind.Object } next)
        {
            told.Add($"{Id(next)}: {next.GetProperty("remedy").GetString()}");
            Assert.True(told.Count <= MostRounds, string.Join('\n', told));
            Assert.Equal(0, desk.Run("apply", Id(next), "--project", name).ExitCode);
            plans.Add(File.ReadAllText(desk.PathTo($"{name}/stillwall.json")));
            var after = Failing(name);
            Assert.True(after.Count < failing.Count, $"{failing.Count}, then {after.Count} fail:\n{string.Join('\n', told)}");
            failing = after;
        }

        Assert.Equal(plans.Count, plans.Distinct(StringComparer.Ordinal).Count());
        Assert.True(
            left.SequenceEqual(failing.Select(Id)),
            string.Join('\n', [.. told, .. failing.Select(f => $"left: {Id(f)}: {f.GetProperty("because")} → {f.GetProperty("remedy")}")])
        );
        Assert.All(failing, f => Assert.Contains("no stated change within reach", f.GetProperty("remedy").GetString(), StringComparison.Ordinal));
    }

    [Fact]
    public void What_cannot_be_had_is_told_with_what_was_tried()
    {
        // A front that is lower than the driver on it holds no driver.
        desk.State("brief.spot.height", "\"240 mm\"");
        var fit = Failing("reading-room").Single(f => Id(f) == "brief/cabinet-fits-the-spot");

        Assert.Equal(0, fit.GetProperty("change").GetArrayLength());
        Assert.Matches(
            @"^no stated change within reach makes it hold by itself: height \d+ mm instead of 244 mm would, but makes fail: ",
            fit.GetProperty("remedy").GetString()
        );
        Assert.Contains("Driver: fits the front", fit.GetProperty("remedy").GetString(), StringComparison.Ordinal);
    }

    private static string Id(JsonElement finding) => finding.GetProperty("id").GetString()!;

    private List<JsonElement> Failing(string project)
    {
        var ran = desk.Run("appraise", project, "--json");
        Assert.True(ran.ExitCode == 0, ran.Error);
        return [.. ran.Json.GetProperty("findings").EnumerateArray().Where(f => f.GetProperty("verdict").GetString() == "fails")];
    }
}
