namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Cabinet.</summary>
internal static class CabinetTexts
{
    internal const string Chart = "Chart",
        NotDrawn = "What is not drawn",
        NetVolume = "Net volume";
    internal const string Follows = "Results",
        Inside = "air within the skins",
        Net = "net volume",
        Effective = "effective volume",
        FillFactor = "fill factor",
        Resonance = "resonance",
        Q = "Q",
        QFilled = "Q with the fibre's loss";
    internal const string F3 = "f3 (−3 dB)",
        F10 = "f10 (−10 dB)",
        Peak = "peak of the response",
        Sensitivity = "level for 1 W at 1 m",
        LeakQ = "Q of the leak",
        AirMode = "first air mode inside",
        LevelAtLowest = "greatest level at the lowest note, half space";
    internal const string LevelAtSeat = "greatest level at the lowest note, seat",
        PowerNeeded = "power for the wanted level",
        LeastImpedance = "least impedance",
        PortLength = "port, length to print";
    internal const string NotStated = "No cabinet is stated yet. Its outside size, skins and core are enough to draw it.";
    internal const string Begin = "Begin with a small one",
        BeginWhat = "a first cabinet";
    internal const string Ready = "A ready box is stated by its net volume: nothing is drawn, and nothing is subtracted.";

    /// <summary>Keys that are stated here but have no place on a drawing yet.</summary>
    internal static readonly (string Key, string Label, string? Unit)[] Loose =
    [
        ("cabinet.driver_count", "drivers", null),
        ("cabinet.openings.terminal", "terminal opening", "mm"),
        ("cabinet.openings.pour", "pour opening", "mm"),
        ("cabinet.openings.recess", "recess for the flange", "mm"),
        ("cabinet.openings.drying_hole", "drying holes", "mm"),
        ("cabinet.fill.mass", "fill", "g"),
        ("cabinet.leak.gap", "width of the leak", "mm"),
        ("cabinet.leak.length", "length of the leak", "mm"),
        ("cabinet.leak.depth", "depth of the leak", "mm"),
        ("cabinet.feet.kind", "feet", null),
        ("cabinet.feet.stiffness", "stiffness of a foot", "kN/m"),
        ("cabinet.accents.rings", "accent rings", null),
        ("cabinet.accents.ratio", "spacing from ring to ring", null),
    ];

    /// <summary>A cabinet to begin with: the demo's, which a printer of 256 mm can print.</summary>
    internal static readonly (string Key, string Stated)[] Beginning =
    [
        ("cabinet.outside.width", "244 mm"),
        ("cabinet.outside.depth", "330 mm"),
        ("cabinet.outside.height", "244 mm"),
        ("cabinet.outside.corner_radius", "30 mm"),
        ("cabinet.outer_skin", "2 mm"),
        ("cabinet.core", "12 mm"),
        ("cabinet.inner_skin", "2 mm"),
        ("cabinet.strut_pitch", "40 mm"),
        ("cabinet.braces", "1"),
        ("cabinet.openings.terminal", "55 mm"),
        ("cabinet.openings.pour", "35 mm"),
        ("cabinet.fill.mass", "190 g"),
        ("cabinet.feet.kind", "pads"),
        ("cabinet.feet.stiffness", "9 kN/m"),
    ];

    internal static string Hint(bool inch) =>
        $"Sizes in {(inch ? "inches" : "mm")}. *Dotted* ones are set here; (bracketed) ones follow from them or from the brief.";
}
