using System.Text.Json;
using System.Text.RegularExpressions;

namespace Stillwall.Cli.Tests;

/// <summary>What would steer a terminal or turn the writing round is shown by its code, wherever it comes from; our own colours act.</summary>
public sealed partial class HiddenCharacterTests : IDisposable
{
    // Turns the writing round, sets a part of it off, hides; a project with a control character in it is refused.
    private const string Nasty = "a\u202Eb\u2066c\U000E0001d";

    // Clears the screen, colours, rings, begins a code in one character, breaks the line, turns the writing round.
    private const string Folder = "room\u001b[2J\u001b[31m\u0007\u009B2J\n\u202E";

    private readonly Desk desk = new();

    public HiddenCharacterTests()
    {
        desk.State("name", JsonSerializer.Serialize(Nasty));
        desk.State(
            "stock",
            $"[ {{ \"item\": {JsonSerializer.Serialize(Nasty)}, \"amount\": \"1 kg\" }}, {{ \"item\": \"cast powder\", \"amount\": \"6 kg\" }} ]"
        );
        var drivers = desk.PathTo("reading-room/drivers.csv");
        File.WriteAllText(drivers, File.ReadAllText(drivers).Replace("Dunlin 8", "Dun\u202Elin 8", StringComparison.Ordinal));
        desk.State("driver", JsonSerializer.Serialize("Dun\u202Elin 8"));
    }

    public static TheoryData<string> Commands =>
        [
            "appraise #",
            "appraise # --all",
            "appraise # --json",
            "rank #",
            "rank # --json",
            "pour #",
            "parts # --out #/out",
            "sheets # --out #/out",
            "curves # --csv #/curves.csv",
        ];

    public void Dispose() => desk.Dispose();

    [Theory]
    [MemberData(nameof(Commands))]
    public void A_name_with_codes_in_it_reaches_no_terminal_as_it_is(string command)
    {
        Directory.Move(desk.PathTo("reading-room"), desk.PathTo(Folder));
        string[] words = [.. command.Split(' ').Select(word => word.Replace("#", Folder, StringComparison.Ordinal))];

        foreach (var isColoured in new[] { false, true })
        {
            var ran = desk.Run(words, terminal => terminal with { OutputIsTerminal = isColoured, HasColour = isColoured });
            Assert.True(ran.ExitCode == 0, ran.Error);
            Assert.Contains("\\u202e", ran.Output, StringComparison.Ordinal);
            var plain = isColoured ? OwnColours().Replace(ran.Output, "") : ran.Output;

            Assert.DoesNotMatch(@"[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}-[\n]]", plain + ran.Error);
            Assert.Equal(OwnColours().Count(ran.Output) / 2, Regex.Count(ran.Output, "\u001b\\[0m"));
        }
    }

    [Fact]
    public void A_document_says_the_same_name_in_visible_letters()
    {
        var ran = desk.Run("appraise", "reading-room", "--json");
        Assert.Equal(Nasty, ran.Json.GetProperty("project").GetString());
    }

    [Fact]
    public void A_fault_and_a_question_are_shown_so_too()
    {
        Assert.Equal("no\\u001b[2J\\u202e: is not there; a project folder or its file\n", desk.Run("appraise", "no\u001b[2J\u202E").Error);
        var asked = desk.Run(["start", "new"], terminal => terminal with { InputIsTerminal = true, OutputIsTerminal = true }, "\n\u001b[2Jwide\n");
        Assert.DoesNotContain('\u001b', asked.Error);
    }

    [GeneratedRegex("\u001b\\[(1|2|31|32|33|90|0)m")]
    private static partial Regex OwnColours();
}
