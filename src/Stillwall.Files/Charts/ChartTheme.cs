namespace Stillwall.Files.Charts;

/// <summary>Colours of a picture, as <c>#RRGGBB</c>.</summary>
/// <param name="Sheet">The drawing sheet.</param>
/// <param name="Ink">Text and main lines.</param>
/// <param name="SecondInk">Second text and second lines.</param>
/// <param name="Rule">Axes.</param>
/// <param name="Faint">Grid.</param>
/// <param name="Cast">Bands and bars.</param>
/// <param name="CastLine">Edges of bars.</param>
/// <param name="Pencil">The former state.</param>
/// <param name="Holds">What holds.</param>
/// <param name="Tight">What is tight.</param>
/// <param name="Fails">What fails, and limits.</param>
/// <param name="Unknown">What is unknown.</param>
public sealed record ChartTheme(
    string Sheet,
    string Ink,
    string SecondInk,
    string Rule,
    string Faint,
    string Cast,
    string CastLine,
    string Pencil,
    string Holds,
    string Tight,
    string Fails,
    string Unknown
)
{
    /// <summary>Light: for paper, and for a bright room.</summary>
    public static ChartTheme Light { get; } =
        new(
            Sheet: "#FBFAF6",
            Ink: "#23282B",
            SecondInk: "#565B5C",
            Rule: "#C9C2B4",
            Faint: "#E6E1D5",
            Cast: "#DDD6C6",
            CastLine: "#8C8779",
            Pencil: "#666B6E",
            Holds: "#1D6B5F",
            Tight: "#8A6100",
            Fails: "#A2341F",
            Unknown: "#62686B"
        );

    /// <summary>Dark.</summary>
    public static ChartTheme Dark { get; } =
        new(
            Sheet: "#1D2327",
            Ink: "#E8E4DA",
            SecondInk: "#A9ADA8",
            Rule: "#444C50",
            Faint: "#2B3236",
            Cast: "#384147",
            CastLine: "#8A8F8B",
            Pencil: "#9AA09F",
            Holds: "#6FC7B4",
            Tight: "#E2B84C",
            Fails: "#F08A72",
            Unknown: "#A3ABAF"
        );
}
