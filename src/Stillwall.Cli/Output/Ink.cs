using System.Text;
using System.Text.RegularExpressions;
using Stillwall.Appraisals;
using Stillwall.Cli.Running;
using Stillwall.Files;

namespace Stillwall.Cli.Output;

/// <summary>Marks and colours of verdicts; without colour the marks alone tell them apart.</summary>
internal static partial class Ink
{
    // Stands for the character that begins a colour until the text is printed. Half a character, as no file that is read can hold: a colour in
    // somebody's words is none of ours.
    private const char Begin = '\uDC1B';

    private const char Escape = '\u001b';

    private static readonly string Off = $"{Begin}[0m";

    internal static string Mark(Verdict verdict) =>
        verdict switch
        {
            Verdict.Fails => "▲",
            Verdict.Tight => "◐",
            Verdict.Holds => "●",
            _ => "○",
        };

    internal static string Of(Terminal terminal, Verdict verdict, string text) =>
        Set(
            terminal,
            text,
            verdict switch
            {
                Verdict.Fails => "31m",
                Verdict.Tight => "33m",
                Verdict.Holds => "32m",
                _ => "90m",
            }
        );

    internal static string Strong(Terminal terminal, string text) => Set(terminal, text, "1m");

    private static string Set(Terminal terminal, string text, string code) => terminal.HasColour ? $"{Begin}[{code}{text}{Off}" : text;

    /// <summary>A text as it goes to the terminal: colours set here act, whatever else is hidden in it is shown by its code.</summary>
    internal static string Shown(string text)
    {
        var shown = new StringBuilder(text.Length);
        var from = 0;
        foreach (var colour in Colours().EnumerateMatches(text))
        {
            shown.Append(Visible.Of(text[from..colour.Index], keepsLines: true)).Append(Escape).Append(text, colour.Index + 1, colour.Length - 1);
            from = colour.Index + colour.Length;
        }

        return shown.Append(Visible.Of(text[from..], keepsLines: true)).ToString();
    }

    /// <summary>Takes the colours of a text that is all ours, and set by somebody else's means, for our own.</summary>
    internal static string Taken(string text) => text.Replace(Escape, Begin);

    [GeneratedRegex(@"\uDC1B\[[0-9;]*m", RegexOptions.CultureInvariant)]
    private static partial Regex Colours();
}
