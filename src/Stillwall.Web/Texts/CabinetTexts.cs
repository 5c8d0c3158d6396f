namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Cabinet.</summary>
internal static class CabinetTexts
{
    internal const string Chart = "Chart", NotDrawn = "What is not drawn", NetVolume = "Net volume";
    internal const string NotStated = "No cabinet is stated yet. Its outside size, skins and core are enough to draw it.";
    internal const string Ready = "A ready box is stated by its net volume: nothing is drawn, and nothing is subtracted.";

    /// <summary>Keys that are stated here but have no place on a drawing yet.</summary>
    internal static readonly (string Key, string Label, string? Unit)[] Loose =
    [
        ("cabinet.driver_count", "drivers", null), ("cabinet.openings.terminal", "terminal opening", "mm"), ("cabinet.openings.pour", "pour opening", "mm"), ("cabinet.fill.mass", "fill", "g"),
        ("cabinet.leak.gap", "width of the leak", "mm"), ("cabinet.leak.length", "length of the leak", "mm"), ("cabinet.leak.depth", "depth of the leak", "mm"),
        ("cabinet.feet.kind", "feet", null), ("cabinet.feet.stiffness", "stiffness of a foot", "kN/m"), ("cabinet.accents.rings", "accent rings", null), ("cabinet.accents.ratio", "spacing from ring to ring", null),
    ];

    internal static readonly (string Key, string Label, string? Unit)[] First =
    [
        ("cabinet.outside.width", "width outside", "mm"), ("cabinet.outside.depth", "depth outside", "mm"), ("cabinet.outside.height", "height outside", "mm"),
        ("cabinet.outer_skin", "outer skin", "mm"), ("cabinet.core", "core", "mm"), ("cabinet.inner_skin", "inner skin", "mm"),
    ];

    internal static string Hint(bool inch) => $"Sizes in {(inch ? "inches" : "mm")}. *Dotted* ones are set here; (bracketed) ones follow from them or from the brief.";

    /// <summary>What the former state was before.</summary>
    internal static string Before(string what) => $"before {what}";
}
