using Stillwall.Appraisals;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Output;

/// <summary>Marks and colours of verdicts; without colour the marks alone tell them apart.</summary>
internal static class Ink
{
    private const string Escape = "\u001b[", Off = "\u001b[0m";

    internal static string Mark(Verdict verdict) => verdict switch { Verdict.Fails => "▲", Verdict.Tight => "◐", Verdict.Holds => "●", _ => "○" };

    internal static string Of(Terminal terminal, Verdict verdict, string text) =>
        Set(terminal, text, verdict switch { Verdict.Fails => "31m", Verdict.Tight => "33m", Verdict.Holds => "32m", _ => "90m" });

    internal static string Strong(Terminal terminal, string text) => Set(terminal, text, "1m");

    private static string Set(Terminal terminal, string text, string code) => terminal.HasColour ? $"{Escape}{code}{text}{Off}" : text;
}
