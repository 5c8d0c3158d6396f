using System.Text.Json;

namespace Stillwall.Cli.Tests.Outputs;

/// <summary>Parts and sheets in one folder: each clears away its own old files, and nobody else's.</summary>
public sealed class MadeFolderTests : IDisposable
{
    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Another_design_leaves_no_old_part_and_no_sheet_is_touched()
    {
        Write("parts");
        Write("sheets");
        var (parts, sheets) = (Made("parts"), Made("sheets"));
        Assert.Equal([.. parts.Concat(sheets).Append("made.json").Order(StringComparer.Ordinal)], Names());
        desk.State("brief.printer.build_height", "\"100 mm\"");

        Write("parts");

        Assert.NotEqual(parts, Made("parts"));
        Assert.Equal(sheets, Made("sheets"));
        Assert.Equal([.. Made("parts").Concat(sheets).Append("made.json").Order(StringComparer.Ordinal)], Names());
    }

    [Fact]
    public void The_other_format_takes_the_place_of_the_first()
    {
        Write("parts");
        Write("parts", "--format", "stl");
        Assert.All(Names().Where(name => name != "made.json"), name => Assert.EndsWith(".stl", name, StringComparison.Ordinal));
    }

    [Fact]
    public void The_list_is_the_same_bytes_whatever_was_there_before()
    {
        Write("sheets");
        Write("parts");
        var first = File.ReadAllBytes(desk.PathTo("out/made.json"));
        Write("parts", "--format", "stl");
        Write("parts");
        Write("sheets");
        Assert.Equal(first, File.ReadAllBytes(desk.PathTo("out/made.json")));
    }

    [Fact]
    public void Strangers_are_left_and_named_a_part_changed_by_hand_among_them()
    {
        Write("parts");
        desk.Write("out/notes.txt", "glue first");
        var changed = Made("parts").First(name => name.StartsWith("accent", StringComparison.Ordinal));
        File.AppendAllText(desk.PathTo($"out/{changed}"), "by hand");
        desk.State("cabinet.accents", null);

        var ran = Write("parts");

        Assert.Equal($"out: left as they are, for no verb wrote them: {changed}, notes.txt\n", ran.Error);
        Assert.Equal("glue first", File.ReadAllText(desk.PathTo("out/notes.txt")));
        Assert.EndsWith("by hand", File.ReadAllText(desk.PathTo($"out/{changed}")), StringComparison.Ordinal);
        Assert.DoesNotContain(changed, Made("parts"));
    }

    [Theory]
    [InlineData("parts", "outer-sleeve-1-of-2.3mf", "assembly.3mf")]
    [InlineData("sheets", "sheet-03-exploded.svg", "sheet-03-exploded.svg")]
    public void A_stranger_of_the_same_name_stops_the_run_before_anything_is_written(string verb, string first, string second)
    {
        foreach (var isThere in new[] { false, true })
        {
            desk.Write($"out/{first}", "somebody's");
            desk.Write($"out/{second}", "somebody's");
            var before = Names();

            var ran = desk.Run(verb, "reading-room", "--out", "out");

            Assert.Equal((2, ""), (ran.ExitCode, ran.Output));
            Assert.Matches($@"\Aout/[^\n]*{second}[^\n]*: (is|are) there and not as {verb} left (it|them); [^\n]*\n\z", ran.Error);
            Assert.Equal(before, Names());
            Assert.All([first, second], name => Assert.Equal("somebody's", File.ReadAllText(desk.PathTo($"out/{name}"))));
            if (!isThere)
            {
                Directory.Delete(desk.PathTo("out"), recursive: true);
                Write(verb);
            }
        }
    }

    [Fact]
    public void A_lost_list_is_made_up_for_where_the_files_are_the_same()
    {
        Write("parts");
        var list = File.ReadAllBytes(desk.PathTo("out/made.json"));
        File.Delete(desk.PathTo("out/made.json"));
        Write("parts");
        Assert.Equal(list, File.ReadAllBytes(desk.PathTo("out/made.json")));
    }

    [Theory]
    [InlineData("{ \"parts\": [ { \"file\": \"../reading-room/drivers.csv\", \"sha256\": \"0\" } ] }")]
    [InlineData("{ \"made\": \"by me\" }")]
    [InlineData("a list of what I made")]
    [InlineData("[]")]
    public void Somebody_elses_list_stays(string list)
    {
        desk.Write("out/made.json", list);
        var ran = desk.Run("parts", "reading-room", "--out", "out");
        Assert.Equal(
            (2, "", "out/made.json: is not the list that parts and sheets keep of their files; another folder, or take that file away first\n"),
            (ran.ExitCode, ran.Output, ran.Error)
        );
        Assert.Equal(["made.json"], Names());
        Assert.Equal(list, File.ReadAllText(desk.PathTo("out/made.json")));
    }

    [Fact]
    public void The_project_folder_itself_may_be_filled_and_stays_a_project()
    {
        var before = File.ReadAllBytes(desk.Project);
        Assert.Equal(
            "reading-room: left as it is, for no verb wrote it: stillwall.schema.json\n",
            desk.Run("sheets", "reading-room", "--out", "reading-room").Error
        );
        Assert.Equal(before, File.ReadAllBytes(desk.Project));
        Assert.Equal(0, desk.Run("appraise", "reading-room").ExitCode);
    }

    [Fact]
    public void What_cannot_be_used_is_said_first_and_not_written_without_anyway()
    {
        desk.Write(
            "narrow/stillwall.json",
            """
            {
              "stillwall": 1,
              "brief": { "printer": { "build_width": "50 mm", "build_depth": "256 mm", "build_height": "256 mm" } },
              "cabinet": {
                "outside": { "width": "100 mm", "depth": "100 mm", "height": "100 mm", "corner_radius": "20 mm" },
                "outer_skin": "2 mm", "core": "12 mm", "inner_skin": "2 mm", "strut_pitch": "80 mm"
              }
            }
            """
        );
        foreach (var more in new string[][] { [], ["--json"] })
        {
            var ran = desk.Run(["parts", "narrow", "--out", "out", .. more]);
            Assert.Equal((2, ""), (ran.ExitCode, ran.Output));
            Assert.Matches(@"\Aparts: not written without --anyway: larger than the printer's bed: [a-z0-9 ]+(, [a-z0-9 ]+)*\n\z", ran.Error);
            Assert.False(Directory.Exists(desk.PathTo("out")));
        }

        var anyway = desk.Run("parts", "narrow", "--out", "out", "--anyway", "--json");
        Assert.Equal(0, anyway.ExitCode);
        Assert.StartsWith("parts: written anyway: larger than the printer's bed: ", anyway.Error, StringComparison.Ordinal);
        var large = anyway
            .Json.GetProperty("parts")
            .EnumerateArray()
            .Where(p => !p.GetProperty("fits").GetBoolean())
            .Select(p => p.GetProperty("name").GetString()!)
            .ToList();
        Assert.NotEmpty(large);
        Assert.All(large, name => Assert.Contains(name, anyway.Error, StringComparison.Ordinal));
    }

    [Fact]
    public void What_collides_is_a_line_each()
    {
        desk.State(
            "driver",
            "{ \"re\": \"3.5 ohm\", \"sd\": \"214 cm2\", \"fs\": \"30 Hz\", \"qms\": 5, \"qes\": 0.47, \"vas\": \"24 L\", \"depth\": \"320 mm\", "
                + "\"cutout\": \"186 mm\", \"flange\": \"222 mm\", \"magnet_diameter\": \"180 mm\" }"
        );
        var ran = desk.Run("parts", "reading-room", "--out", "out");
        Assert.Equal((2, "", false), (ran.ExitCode, ran.Output, Directory.Exists(desk.PathTo("out"))));
        Assert.Matches(@"\A(parts: not written without --anyway: [a-z ]+ and [a-z ]+ collide [0-9.]+ mm behind the front\n){2,}\z", ran.Error);
    }

    private Ran Write(string verb, params string[] more)
    {
        var ran = desk.Run([verb, "reading-room", "--out", "out", .. verb == "parts" ? ["--anyway"] : Array.Empty<string>(), .. more]);
        Assert.True(ran.ExitCode == 0, ran.Error);
        return ran;
    }

    private string[] Names() => [.. Directory.GetFiles(desk.PathTo("out")).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    private List<string> Made(string verb) =>
        [
            .. JsonDocument
                .Parse(File.ReadAllText(desk.PathTo("out/made.json")))
                .RootElement.GetProperty(verb)
                .EnumerateArray()
                .Select(e => e.GetProperty("file").GetString()!),
        ];
}
