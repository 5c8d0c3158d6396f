namespace Stillwall.Web.Texts;

/// <summary>What is written about the view of the parts, in one place.</summary>
public static class ViewerTexts
{
    internal const string NoCabinet = "no cabinet is stated with its sizes",
        Drawing = "drawing the parts",
        NoView = "This browser shows no 3D; the sheets show the same parts.",
        Failed = "The parts could not be drawn; the sheets show them.";
    internal const string Picture = "The cabinet in three dimensions. Arrow keys turn it, plus and minus zoom, zero takes it back.";
    internal const string From = "Seen from",
        Corner = "front corner",
        Front = "front",
        Right = "right",
        Above = "above",
        Behind = "behind";
    internal const string Apart = "Exploded",
        Cut = "Cut",
        Uncut = "none",
        AcrossWidth = "across the width",
        AlongDepth = "along the depth",
        AcrossHeight = "level",
        CutAt = "Place of the cut",
        Hidden = "Hidden edges";
    internal const string Part = "Part",
        AllParts = "all parts";
    internal const string Hint = "Drag to turn; click a part for its figures, and from then on the wheel zooms.";

    internal const string Fits = "fits the printer",
        TooLarge = "is too large for the printer";

    internal static string Hours(double hours) => $"{Appraisals.Show.Number(hours, 2)} h of printing at least";
}
