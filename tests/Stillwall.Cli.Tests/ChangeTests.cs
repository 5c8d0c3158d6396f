using System.Text.Json;
using System.Text.RegularExpressions;

namespace Stillwall.Cli.Tests;

/// <summary>What changes files: start, set, apply.</summary>
public sealed class ChangeTests : IDisposable
{
    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_new_folder_has_everything_that_a_project_needs()
    {
        Assert.Equal(
            ["drivers.csv", "measurements", "stillwall.json", "stillwall.schema.json"],
            Directory.GetFileSystemEntries(desk.PathTo("reading-room")).Select(Path.GetFileName).Order(StringComparer.Ordinal)
        );
        Assert.Equal(File.ReadAllBytes(Path.Combine(Repository.Folder, "samples/reading-room/stillwall.json")), File.ReadAllBytes(desk.Project));
        Assert.Equal(desk.Run("schema").Output, File.ReadAllText(desk.PathTo("reading-room/stillwall.schema.json")));
    }

    [Fact]
    public void An_empty_folder_may_become_a_project()
    {
        Directory.CreateDirectory(desk.PathTo("empty"));
        Assert.Equal(0, desk.Run("start", "empty").ExitCode);
        Assert.Equal(0, desk.Run("appraise", "empty").ExitCode);
    }

    [Fact]
    public void Nobody_is_asked_without_a_terminal_or_for_the_demo()
    {
        Assert.Equal("", desk.Run(["start", "piped"], terminal => terminal with { OutputIsTerminal = true }, "Window cabinet\n").Error);
        Assert.Equal(
            "",
            desk.Run(["start", "demo", "--demo"], terminal => terminal with { InputIsTerminal = true, OutputIsTerminal = true }, "Window cabinet\n").Error
        );
        Assert.Equal(File.ReadAllBytes(desk.Project), File.ReadAllBytes(desk.PathTo("piped/stillwall.json")));
        Assert.Equal(File.ReadAllBytes(desk.Project), File.ReadAllBytes(desk.PathTo("demo/stillwall.json")));
    }

    [Fact]
    public void Setting_a_value_changes_that_value_only_and_keeps_the_former_file()
    {
        var before = File.ReadAllText(desk.Project);
        Assert.Equal(0, desk.Run("set", "cabinet.core", "14.3 mm", "--project", "reading-room").ExitCode);

        Assert.Equal(Regex.Replace(before, "\"core\": \"[^\"]*\"", "\"core\": \"14.3 mm\""), File.ReadAllText(desk.Project));
        Assert.Equal(before, File.ReadAllText(desk.Project + ".1"));
    }

    // The block is still there, so what it lacks is named; with the block gone its default holds.
    [Fact]
    public void A_block_that_keeps_its_note_keeps_its_place_until_it_is_taken_out_itself()
    {
        Assert.Equal(0, desk.Run("set", "cabinet.fill.note", "two layers of wool felt", "--project", "reading-room").ExitCode);
        Assert.Equal(0, desk.Run("set", "cabinet.fill.mass", "--remove", "--project", "reading-room").ExitCode);
        Assert.Contains("\"fill\": { \"note\": \"two layers of wool felt\" }", File.ReadAllText(desk.Project), StringComparison.Ordinal);
        Assert.Contains(
            "not stated yet: mass of the fill (cabinet.fill.mass)",
            Regex.Replace(desk.Run("appraise", "reading-room", "--all").Output, @"\s+", " "),
            StringComparison.Ordinal
        );
        Assert.Equal(0, desk.Run("set", "cabinet.fill", "--remove", "--block", "--project", "reading-room").ExitCode);
        Assert.DoesNotContain("wool felt", File.ReadAllText(desk.Project), StringComparison.Ordinal);
        Assert.Contains("no fill is stated", desk.Run("appraise", "reading-room", "--all").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cabinet.core", "-3 mm")]
    [InlineData("cabinet.core", "3 kg")]
    [InlineData("driver", "Dodo 9")]
    [InlineData("drivers", "nowhere.csv")]
    [InlineData("pour_date", "tomorrow")]
    [InlineData("cabinet.net_volume", "20 L")]
    [InlineData("brief.aim.system_q", "0,7")]
    public void A_value_that_will_not_do_leaves_the_file_as_it_was(string key, string value)
    {
        var before = File.ReadAllBytes(desk.Project);
        var ran = desk.Run("set", key, value, "--project", "reading-room");

        Assert.InRange(ran.ExitCode, 2, 3);
        Assert.Equal("", ran.Output);
        Assert.Equal(before, File.ReadAllBytes(desk.Project));
    }

    [Theory]
    [InlineData("limits.wall_to_cone", "-28 dB")]
    [InlineData("brief.neighbour.allowance", "-3 dB")]
    [InlineData("brief.aim.system_q", "0.75")]
    [InlineData("brief.room.seat_at", "2 m, 2.5 m, 1.1 m")]
    [InlineData("name", "Another name")]
    public void Any_stated_value_can_be_set(string key, string value) => Assert.Equal(0, desk.Run("set", key, value, "--project", "reading-room").ExitCode);

    [Fact]
    public void A_stated_value_is_taken_out_so_that_its_default_holds()
    {
        var ran = desk.Run("set", "brief.aim.distance", "--remove", "--project", "reading-room");
        Assert.Equal(0, ran.ExitCode);
        Assert.DoesNotContain("\"distance\"", File.ReadAllText(desk.Project), StringComparison.Ordinal);
        Assert.Equal(2, desk.Run("set", "brief.aim.distance", "--remove", "--project", "reading-room").ExitCode);
        Assert.Equal(2, desk.Run("set", "cabinet.outside.depth", "--remove", "--project", "reading-room").ExitCode);
        Assert.Equal(2, desk.Run("set", "cabinet.core", "12 mm", "--remove", "--project", "reading-room").ExitCode);
        Assert.Equal(2, desk.Run("set", "cabinet.core", "--project", "reading-room").ExitCode);
    }

    [Fact]
    public void Applying_a_finding_makes_it_hold_or_tight()
    {
        desk.State("brief.aim.level", "\"110 dB\"");
        desk.State("cabinet.strut_pitch", "\"110 mm\"");
        var proposed = Findings()
            .Where(f => f.GetProperty("change").GetArrayLength() > 0 && f.GetProperty("verdict").GetString() == "fails")
            .Select(f => f.GetProperty("id").GetString()!)
            .ToList();
        Assert.NotEmpty(proposed);

        foreach (var id in proposed)
        {
            var ran = desk.Run("apply", id, "--project", "reading-room");
            Assert.True(ran.ExitCode == 0, ran.Error);
            Assert.Contains(Findings().Single(f => f.GetProperty("id").GetString() == id).GetProperty("verdict").GetString(), new[] { "holds", "tight" });
        }
    }

    [Fact]
    public void The_project_file_itself_may_be_named()
    {
        Assert.Equal(desk.Run("appraise", "reading-room", "--json").Output, desk.Run("appraise", "reading-room/stillwall.json", "--json").Output);
        Assert.Equal(
            desk.Run("appraise", "reading-room", "--json").Output,
            desk.Run(["appraise", "--json"], terminal => terminal with { Folder = desk.PathTo("reading-room") }).Output
        );
    }

    [Fact]
    public async Task A_watched_project_is_appraised_again_when_it_is_saved()
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        using var output = new MemoryStream();
        var watched = Task.Run(
            () =>
                CliApp.Run(
                    ["appraise", "reading-room", "--watch"],
                    new Running.Terminal(Stream.Synchronized(output), TextWriter.Null, TextReader.Null) { Folder = desk.Folder, Stop = stop.Token }
                ),
            stop.Token
        );
        await Until(() => Count(output, "next: ") == 1, stop.Token);
        desk.State("brief.aim.level", "\"110 dB\"");
        await Until(() => Count(output, "▲ Cabinet: loud enough") == 1, stop.Token);
        await stop.CancelAsync();

        Assert.Equal(0, await watched);
        Assert.Equal(2, Count(output, "next: "));
    }

    private static int Count(MemoryStream output, string words) => System.Text.Encoding.UTF8.GetString(output.ToArray()).Split(words).Length - 1;

    private static async Task Until(Func<bool> isSo, CancellationToken stop)
    {
        while (!isSo())
        {
#pragma warning disable RS0030 // Between two looks: nothing tells that something was written.
            await Task.Delay(50, stop);
#pragma warning restore RS0030
        }
    }

    private List<JsonElement> Findings() => [.. desk.Run("appraise", "reading-room", "--json").Json.GetProperty("findings").EnumerateArray()];

    [Theory]
    [InlineData("stock", "13 entries")]
    [InlineData("cabinet", "the whole block with 19 values")]
    [InlineData("brief", "the whole block with 43 values")]
    [InlineData("measured", "the whole block with 1 value")]
    [InlineData("stock[1]", "the whole block with 2 values")]
    public void A_whole_block_goes_only_when_that_is_said_and_in_words(string key, string what)
    {
        var before = File.ReadAllText(desk.Project);
        var refused = desk.Run("set", key, "--remove", "--project", "reading-room");
        Assert.Equal(
            (2, "", $"{key}: is {what}; --block beside --remove takes it out, or a key within it\n"),
            (refused.ExitCode, refused.Output, refused.Error)
        );
        Assert.Equal(before, File.ReadAllText(desk.Project));

        var ran = desk.Run("set", key, "--remove", "--block", "--project", "reading-room");
        Assert.Equal((0, $"{key}: {what} taken out"), (ran.ExitCode, ran.Lines[0]));
        Assert.DoesNotContain("Stillwall.", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("{", ran.Output, StringComparison.Ordinal);
        Assert.Equal(key.Contains('['), JsonDocument.Parse(File.ReadAllText(desk.Project)).RootElement.TryGetProperty(key.Split('[')[0], out _));
    }

    [Theory]
    [InlineData("yes\n", 0)]
    [InlineData("no\n", 2)]
    [InlineData("\n", 2)]
    [InlineData("", 2)]
    public void In_a_terminal_a_whole_block_is_asked_for(string answer, int exitCode)
    {
        Assert.Equal(0, desk.Run("set", "cabinet.note", "the third one", "--project", "reading-room").ExitCode);
        var ran = desk.Run(
            ["set", "cabinet", "--remove", "--project", "reading-room"],
            terminal => terminal with { InputIsTerminal = true, OutputIsTerminal = true },
            answer
        );
        Assert.Equal(exitCode, ran.ExitCode);
        Assert.StartsWith("cabinet: take out the whole block with 19 values? yes or [no]: ", ran.Error, StringComparison.Ordinal);
        Assert.Equal(exitCode != 0, File.ReadAllText(desk.Project).Contains("the third one", StringComparison.Ordinal));
    }
}
