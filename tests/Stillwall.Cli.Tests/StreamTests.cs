using System.Globalization;
using CsCheck;

namespace Stillwall.Cli.Tests;

/// <summary>What goes where: standard output, standard error, exit code; and that the same words give the same bytes.</summary>
public sealed class StreamTests : IDisposable
{
    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Theory]
    [InlineData("appraise nowhere", 3)]
    [InlineData("curves nowhere --csv -", 3)]
    [InlineData("filter highpass --f0 30Hz --csv - --frequencies nowhere.csv", 3)]
    [InlineData("start reading-room/stillwall.json", 3)]
    [InlineData("room reading-room --csv reading-room", 3)]
    [InlineData("nothing", 2)]
    [InlineData("stillwall", 2)]
    [InlineData("[diagram] schema", 2)]
    [InlineData("mix --powder 4kg --json=false", 2)]
    [InlineData("room reading-room --volume-velocity 1e308 --csv -", 2)]
    [InlineData("appraise --nothing", 2)]
    [InlineData("curves reading-room --volts 0", 2)]
    [InlineData("curves reading-room --volts 2,83", 2)]
    [InlineData("curves reading-room --points-per-decade 1.5", 2)]
    [InlineData("curves reading-room --volts NaN", 2)]
    [InlineData("room reading-room --volume-velocity -1", 2)]
    [InlineData("panel --layers 5:2e9:0.38 --size 330mmx210mm", 2)]
    [InlineData("panel --layers 5:2e9:0.7:1270 --size 330mmx210mm", 2)]
    [InlineData("panel --layers 2mm:petg --size 10mx1mm", 2)]
    [InlineData("panel --layers 2mm:petg --size 1mx1m --edges loose", 2)]
    [InlineData("panel --size 1mx1m", 2)]
    [InlineData("filter transform --f0 52Hz --q 0.9", 2)]
    [InlineData("filter lowshelf --f0 60Hz --gain 99dB", 2)]
    [InlineData("filter lowshelf --f0 60Hz --gain 6dB --q 1 --slope 1", 2)]
    [InlineData("mix --powder 4kg --volume 4L", 2)]
    [InlineData("set cabinet", 2)]
    [InlineData("set driver.fs 30Hz --project reading-room", 2)]
    [InlineData("set cabinet x --project reading-room", 2)]
    public void Nothing_is_on_standard_output_when_a_run_is_refused(string words, int exitCode)
    {
        var ran = desk.Run(words.Split(' '));

        Assert.Equal((exitCode, ""), (ran.ExitCode, ran.Output));
        Assert.Matches(@"\A[^\n]{1,300}\n\z", ran.Error);
    }

    [Fact]
    public void A_defect_is_told_in_one_line_and_ends_with_70()
    {
        var ran = desk.Run(["schema"], terminal => terminal with { Output = new Broken() });

        Assert.Equal((70, "a defect of ours: InvalidOperationException: as a defect would\n"), (ran.ExitCode, ran.Error));
    }

    [Theory]
    [InlineData("--gain", "-9.5 dB")]
    [InlineData("--gain", "-9.5dB")]
    [InlineData("--gain", "\u22129.5 dB")]
    [InlineData("--gain=-9.5 dB", null)]
    public void A_value_may_begin_with_a_minus(string option, string? value)
    {
        string[] words =
        [
            "filter",
            "peaking",
            "--f0",
            "45Hz",
            option,
            .. value is null ? Array.Empty<string>() : [value],
            "--csv",
            "-",
            "--frequencies",
            "at.csv",
        ];
        desk.Write("at.csv", "frequency_hz\n45\n");

        Assert.Equal(-9.5, desk.Run(words).Rows[0][1], 9);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void Another_country_gives_the_same_bytes(string culture)
    {
        var former = CultureInfo.CurrentCulture;
        var commands = new[]
        {
            "appraise reading-room --all",
            "appraise reading-room --json",
            "curves reading-room --csv -",
            "filter peaking --f0 45.5Hz --gain -8.5dB --json",
            "mix --powder 4.5kg",
            "appraise --HELP",
        };
        var here = commands.Select(c => desk.Run(c.Split(' '))).ToList();
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
            Assert.All(commands.Zip(here), pair => Assert.Equal(pair.Second.Output, desk.Run(pair.First.Split(' ')).Output));
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = former;
        }
    }

    [Fact]
    public void Colour_is_for_terminals_only_and_changes_no_word()
    {
        var plain = desk.Run("appraise", "reading-room", "--all").Output;
        var coloured = desk.Run(["appraise", "reading-room", "--all"], terminal => terminal with { OutputIsTerminal = true, HasColour = true }).Output;

        Assert.DoesNotContain('\u001b', plain);
        Assert.Contains('\u001b', coloured);
        Assert.Equal(
            plain,
            System
                .Text.RegularExpressions.Regex.Replace(coloured, "\u001b\\[[0-9;]*m", "")
                .Split('\n')
                .Select(l => l.TrimEnd())
                .Aggregate((a, b) => a + "\n" + b)
        );
    }

    [Fact]
    public void No_line_is_wider_than_the_terminal_but_the_ones_to_be_typed()
    {
        var lines = desk.Run(["appraise", "reading-room"], terminal => terminal with { Width = 60 }).Lines;
        Assert.All(lines.Skip(1).Where(l => !l.Contains("stillwall apply", StringComparison.Ordinal)), l => Assert.InRange(l.Length, 0, 60));
    }

    [Fact]
    public void A_faulty_row_stops_only_the_driver_it_describes()
    {
        File.AppendAllText(desk.PathTo("reading-room/drivers.csv"), "Ouzel 6,165,nought,0.9,36,5.2,0.5,,13.5,134,9.5,,,150,,,,,,,,,,,\n");
        var other = desk.Run("appraise", "reading-room", "--json");
        var changed = desk.Run("set", "cabinet.core", "14.3 mm", "--project", "reading-room");
        desk.State("driver", "\"Ouzel 6\"");
        var chosen = desk.Run("appraise", "reading-room", "--json");

        Assert.Equal((0, 1), (other.ExitCode, other.Error.Split('\n').Length - 1));
        Assert.Equal(other.Error, changed.Error);
        Assert.StartsWith("warning: drivers.csv:50: re_ohm: ", other.Error, StringComparison.Ordinal);
        Assert.Equal((2, ""), (chosen.ExitCode, chosen.Output));
    }

    [Fact]
    public void Drivers_may_not_be_reached_through_a_link_that_leads_out()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a privilege there");
        File.Move(desk.PathTo("reading-room/drivers.csv"), desk.PathTo("drivers.csv"));
        File.CreateSymbolicLink(desk.PathTo("reading-room/drivers.csv"), desk.PathTo("drivers.csv"));

        var ran = desk.Run("appraise", "reading-room");

        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("leads out of the project folder", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("appraise reading-room --strict", 1)]
    [InlineData("appraise reading-room", 0)]
    public void Only_a_strict_run_ends_with_1_when_something_fails(string words, int exitCode)
    {
        desk.State("brief.aim.level", "\"130 dB\"");
        var ran = desk.Run(words.Split(' '));

        Assert.Equal(exitCode, ran.ExitCode);
        Assert.Contains("▲ Cabinet: loud enough", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strict_run_ends_with_0_when_nothing_fails()
    {
        desk.Write("bare/stillwall.json", "{ \"stillwall\": 1 }\n");
        Assert.Equal(0, desk.Run("appraise", "bare", "--strict").ExitCode);
    }

    [Fact]
    public void No_words_whatever_end_in_a_defect()
    {
        string[] verbs = ["appraise", "curves", "room", "join", "mix", "panel", "filter", "set", "apply", "start", "schema", "rank", "--help", ""];
        string[] words =
        [
            "reading-room",
            "nowhere",
            "-",
            "--",
            "-9.5 dB",
            "45 Hz",
            "1e300 Hz",
            "0",
            "-1",
            "1e308",
            "4kg",
            "1e-9 kg",
            "∞",
            "NaN",
            "2mm:petg",
            "1:1:0:1",
            "1mx1m",
            "x",
            "peaking",
            "transform",
            "lowshelf",
            "cabinet.core",
            "12 mm",
            "--json",
            "--all",
            "--csv",
            "--volts",
            "--powder",
            "--volume",
            "--mix",
            "plaster",
            "own",
            "--layers",
            "--size",
            "--edges",
            "clamped",
            "--f0",
            "--fp",
            "--q",
            "--gain",
            "--slope",
            "--rate",
            "--frequencies",
            "--project",
            "=",
            "[x]",
            "@x",
            "\0",
            "\u202e",
        ];
        Gen.Select(Gen.Int[0, verbs.Length - 1], Gen.Int[0, words.Length - 1].Array[0, 7])
            .Sample(
                (verb, rest) =>
                {
                    var ran = desk.Run([verbs[verb], .. rest.Select(i => words[i])]);
                    Assert.True(ran.ExitCode is 0 or 2 or 3, ran.Error);
                    Assert.True(ran.ExitCode == 0 || ran.Output.Length == 0, ran.Output);
                },
                iter: 200,
                threads: 1
            );
    }

    private sealed class Broken : MemoryStream
    {
        public override void Write(byte[] buffer, int offset, int count) => throw new InvalidOperationException("as a defect would");

        public override void Write(ReadOnlySpan<byte> buffer) => throw new InvalidOperationException("as a defect would");
    }
}
