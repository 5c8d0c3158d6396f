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
        new("#FBFAF6", "#23282B", "#565B5C", "#C9C2B4", "#E6E1D5", "#DDD6C6", "#8C8779", "#666B6E", "#1D6B5F", "#8A6100", "#A2341F", "#62686B");

    /// <summary>Dark.</summary>
    public static ChartTheme Dark { get; } =
        new("#1D2327", "#E8E4DA", "#A9ADA8", "#444C50", "#2B3236", "#384147", "#8A8F8B", "#9AA09F", "#6FC7B4", "#E2B84C", "#F08A72", "#A3ABAF");
}
