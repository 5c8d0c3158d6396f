using System.Text.Json;

namespace Stillwall.Cli.Tests;

/// <summary>The nine questions, asked of a scripted person.</summary>
public sealed class StartTests : IDisposable
{
    private const int Questions = 9;

    private static readonly string[] Answers =
    [
        "Window cabinet",
        "10 x 10 x 12 in",
        "0.5 m x 600 mm x 45 cm",
        "28 Hz",
        "95 dB at 8 ft",
        "100 W into 8 ohm",
        "studs plaster",
        "58 dB",
        "hard gypsum, 20 lb",
    ];

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Every_answer_is_stated_in_the_unit_in_which_it_was_given()
    {
        Assert.Equal(0, Asked(Answers).ExitCode);
        Assert.Equal("Window cabinet", Stated("name").GetString());
        Assert.Equal("10 in, 10 in, 12 in", Texts("brief.printer.build_width", "brief.printer.build_depth", "brief.printer.build_height"));
        Assert.Equal("0.5 m, 600 mm, 45 cm", Texts("brief.spot.width", "brief.spot.height", "brief.spot.depth"));
        Assert.Equal("28 Hz, 95 dB, 8 ft", Texts("brief.aim.lowest", "brief.aim.level", "brief.aim.distance"));
        Assert.Equal("100 W, 8 ohm", Texts("brief.amplifier.power", "brief.amplifier.rated_load"));
        Assert.Equal("studs-plaster, 58 dB", Texts("brief.neighbour.partition", "brief.everyday.level"));
        Assert.Equal("hard-gypsum", Stated("materials.cast.mix").GetString());
        Assert.Equal(2.8, Stated("materials.cast.powder_per_water").GetDouble());
        Assert.Equal(
            "20 lb",
            Stated("stock").EnumerateArray().Single(s => s.GetProperty("item").GetString() == "cast powder").GetProperty("amount").GetString()
        );
        Assert.Equal("inch", Stated("display_units").GetString());
        Assert.Equal(0, desk.Run("appraise", "asked").ExitCode);
    }

    [Fact]
    public void Nine_questions_are_asked_each_with_what_the_demo_has()
    {
        var asked = Asked([.. Enumerable.Repeat("", Questions)]).Error;
        Assert.Equal(Questions, System.Text.RegularExpressions.Regex.Count(asked, @"\d\. [^\[\]\n]+ \[[^\]\n]+\]: "));
        Assert.All(
            new[]
            {
                "[Reading-room cabinet]",
                "[256 mm x 256 mm x 256 mm]",
                "[420 mm x 520 mm x 430 mm]",
                "[32 Hz]",
                "[93 dB at 2 m]",
                "[120 W into 4 ohm]",
                "[brick-255-plastered]",
                "[62 dB]",
                "[plaster, 6 kg]",
            },
            shown => Assert.Contains(shown, asked, StringComparison.Ordinal)
        );
        Assert.All(asked.Split('\n'), line => Assert.InRange(line.Length, 0, 700));
    }

    [Fact]
    public void Enter_keeps_the_demos_values_and_so_does_the_end_of_the_input()
    {
        Asked([.. Enumerable.Repeat("", Questions)], "kept");
        Asked([], "ended");
        Asked(["", "300 mm"], "broken-off");
        Assert.Equal(File.ReadAllText(desk.PathTo("kept/stillwall.json")), File.ReadAllText(desk.PathTo("ended/stillwall.json")));
        Assert.Equal("256 mm", Stated("brief.printer.build_width", "kept").GetString());
        Assert.Equal("300 mm", Stated("brief.printer.build_height", "broken-off").GetString());
        Assert.Equal("32 Hz", Stated("brief.aim.lowest", "broken-off").GetString());
    }

    [Theory]
    [InlineData(1, "300", "has no unit")]
    [InlineData(1, "300 mm x 300 mm", "is 2 sizes; 3 of them")]
    [InlineData(1, "-300 mm", "300 mm")]
    [InlineData(1, "300 kg", "wrong unit")]
    [InlineData(3, "32", "has no unit")]
    [InlineData(3, "32,5 Hz", "decimal comma")]
    [InlineData(4, "93 dB at 2 m at night", "says too much")]
    [InlineData(5, "a lot", "is not a quantity")]
    [InlineData(6, "brick 255 plasterd", "did you mean \"brick-255-plastered\"?")]
    [InlineData(7, "loud", "is not a quantity")]
    [InlineData(8, "chocolate", "is not known")]
    [InlineData(8, "plaster, 6 L", "wrong unit")]
    [InlineData(8, "plaster, 0 kg", "out of range")]
    [InlineData(8, ",", "names no cast")]
    public void An_answer_that_will_not_do_is_told_in_one_line_and_asked_again(int question, string wrong, string told)
    {
        string[] script = [.. Enumerable.Repeat("", question), wrong];
        var ran = Asked(script);
        var fault = Assert.Single(ran.Error.Split('\n'), l => l.Contains(told, StringComparison.Ordinal));
        Assert.InRange(fault.Split("]:    ")[^1].Length, 1, 120);
        Assert.Equal(2, ran.Error.Split($"{question + 1}. ").Length - 1);
        Assert.Equal(0, ran.ExitCode);
        Assert.Equal("", desk.Run("appraise", "asked").Error);
    }

    [Fact]
    public void Values_that_nobody_stated_are_marked_and_those_that_were_answered_are_not()
    {
        Asked(Answers);
        Assert.Equal("still the demo's: edge_margin, nozzle, layer, flow_mm3_s, layer_pause", Stated("brief.printer.note").GetString());
        Assert.Equal("still the demo's: clearance, plug_space", Stated("brief.spot.note").GetString());
        Assert.DoesNotContain("level", Stated("brief.everyday.note").GetString(), StringComparison.Ordinal);
        Assert.Contains("stock", Stated("note").GetString(), StringComparison.Ordinal);
        Assert.Contains("cabinet_at", Stated("brief.room.note").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Object, Stated("measured").ValueKind);
        Assert.Empty(Stated("measured").EnumerateObject());
    }

    [Fact]
    public void The_appraisal_counts_the_blocks_that_still_have_the_demos_values()
    {
        var closing = Asked(Answers).Output;
        var blocks = int.Parse(
            closing.Split('\n').Single(l => l.Contains(" blocks have values", StringComparison.Ordinal)).Split(' ')[0],
            System.Globalization.CultureInfo.InvariantCulture
        );
        Assert.Contains("- brief.room", closing, StringComparison.Ordinal);
        Assert.Contains($"\n{blocks} blocks still have values of the demo", desk.Run("appraise", "asked").Output, StringComparison.Ordinal);
        Assert.DoesNotContain("of the demo", desk.Run("appraise", "reading-room").Output, StringComparison.Ordinal);

        foreach (var (key, value) in new[] { ("clearance", "10 mm"), ("plug_space", "60 mm") })
        {
            Assert.Equal(0, desk.Run("set", $"brief.spot.{key}", value, "--project", "asked").ExitCode);
        }

        Assert.DoesNotContain("demo", Stated("brief.spot.note").GetString(), StringComparison.Ordinal);
        Assert.Contains($"\n{blocks - 1} blocks still have values of the demo", desk.Run("appraise", "asked").Output, StringComparison.Ordinal);
    }

    private Ran Asked(IReadOnlyList<string> answers, string folder = "asked") =>
        desk.Run(
            ["start", folder],
            terminal => terminal with { InputIsTerminal = true, OutputIsTerminal = true },
            string.Concat(answers.Select(a => a + "\n"))
        );

    private JsonElement Stated(string key, string folder = "asked") =>
        key.Split('.').Aggregate(JsonDocument.Parse(File.ReadAllText(desk.PathTo($"{folder}/stillwall.json"))).RootElement, (at, k) => at.GetProperty(k));

    private string Texts(params string[] keys) => string.Join(", ", keys.Select(k => Stated(k).GetString()));
}
