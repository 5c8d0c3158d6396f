using System.Globalization;
using System.Text;

namespace Stillwall.Cli.Tests;

/// <summary>The walk through the first hour in the documentation is what the program prints. STILLWALL_WRITE_EXPECTED=1 writes it anew.</summary>
public sealed class FirstHourTests : IDisposable
{
    private const string Opening = """
        # The first hour

        Every block below is what the program prints, 80 columns wide; a test holds this page to it. `stillwall` stands for
        `dotnet run --project src/Stillwall.Cli --` in a fresh clone, or for the built program.

        """;

    private const string Closing = """
        ## What to do with it

        Replace the demo's values by your own, one at a time, and watch which verdicts move: `stillwall set cabinet.core "13 mm" --project my-cabinet`.
        `stillwall start my-own`, typed in a terminal, asks nine questions first and marks every value that is still the demo's.

        """;

    private static readonly (string Heading, string Words, string Says)[] Steps =
    [
        (
            "A project to try things on",
            "start my-cabinet --demo",
            "One folder, one file to edit. Without `--demo` it asks nine questions; the demo is a finished design, so that there is something to look at."
        ),
        (
            "What holds and what does not",
            "appraise my-cabinet",
            "The first line counts the verdicts: `●` holds, `◐` is tight, `▲` fails, `○` cannot be said yet. Only what does not hold is told, each with "
                + "its number, the cheapest change that would mend it, and the line that makes that change. "
                + "`--all` tells the rest."
        ),
        (
            "Which driver",
            "rank my-cabinet --top 10",
            "Every driver of the list is tried in this very cabinet. A reason is given for each that is not plainly good; the demo's own, Dunlin 8, is "
                + "among the two that hold."
        ),
        (
            "What to take to the shop",
            "supplies my-cabinet",
            "The demo has everything on its shelf. Take something out of `stock`, and the list says how much to buy, in which packs and for how much."
        ),
        (
            "At the bench",
            "pour my-cabinet",
            "This is meant for a telephone or a sheet of paper beside the bucket. The moment that must not be missed is marked `▶`."
        ),
        (
            "The people next door",
            "quiet my-cabinet",
            "The answer comes first. It is a forecast with a wide band, since nobody has measured the wall: read the second sentence too."
        ),
        (
            "Where a number comes from",
            "why box.system_resonance_hz --project my-cabinet",
            "Any number can be asked for its formula, its source and what moves it. Here the resonance follows the driver's own most of all, and a larger "
                + "cabinet lowers it."
        ),
    ];

    private readonly Desk desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void The_page_of_the_first_hour_is_what_the_program_prints()
    {
        var page = new StringBuilder(Opening);
        foreach (var (heading, words, says) in Steps)
        {
            var ran = desk.Run(words.Split(' '), terminal => terminal with { Width = 80 });
            Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
            page.Append(CultureInfo.InvariantCulture, $"\n## {heading}\n\n{says}\n\n```\n$ stillwall {words}\n{ran.Output}```\n");
        }

        page.Append('\n').Append(Closing);
        var file = Path.Combine(Repository.Folder, "docs", "first-hour.md");
        if (Environment.GetEnvironmentVariable("STILLWALL_WRITE_EXPECTED") == "1")
        {
            File.WriteAllText(file, page.ToString());
        }

        Assert.Equal(File.ReadAllText(file), page.ToString());
    }

    [Fact]
    public void The_readme_shows_what_the_program_prints()
    {
        var shown = File.ReadAllText(Path.Combine(Repository.Folder, "README.md")).Split("## What it prints")[1].Split("```")[1].Trim('\n');
        Assert.Contains(shown + "\n", desk.Run("appraise", "reading-room").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_page_says_of_the_demo_is_so()
    {
        var ranked = desk.Run("rank", "reading-room", "--json")
            .Json.GetProperty("drivers")
            .EnumerateArray()
            .Where(d => d.GetProperty("verdict").GetString() == "holds")
            .Select(d => d.GetProperty("name").GetString())
            .ToList();
        Assert.Equal(2, ranked.Count);
        Assert.Contains("Dunlin 8", ranked);
        var inputs = desk.Run("why", "box.system_resonance_hz", "--project", "reading-room", "--json")
            .Json.GetProperty("inputs")
            .EnumerateArray()
            .Where(i => i.GetProperty("sensitivity").ValueKind == System.Text.Json.JsonValueKind.Number)
            .ToDictionary(i => i.GetProperty("key").GetString()!, i => i.GetProperty("sensitivity").GetDouble());
        Assert.Equal("driver.fs", inputs.MaxBy(i => Math.Abs(i.Value)).Key);
        Assert.True(inputs["cabinet.outside.depth"] < 0);
    }
}
