using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Web.Drawings;
using Stillwall.Shapes;

namespace Stillwall.Web.Texts;

/// <summary>Texts on the drawings.</summary>
internal static class DrawingTexts
{
    internal const string AlongTitle = "Section A–A along the depth, seen from the right",
        AcrossTitle = "Section B–B across, seen from the front",
        DetailTitle = "Detail C, the wall";
    internal const string AcrossSaid = "Four walls with struts in the core, the brace beyond, the outline of the driver in front of the cut.";
    internal const string Terminal = "terminal ⌀",
        Pour = "pour ⌀",
        OfFill = "of fill",
        Brace = "brace",
        Braces = "braces",
        StrutsEvery = "struts every";
    internal const string TerminalOpening = "Terminal opening",
        PourOpening = "Pour opening",
        FillMass = "Fill",
        BraceCount = "Braces";
    internal const string Depth = "Depth outside",
        Height = "Height outside",
        Width = "Width outside",
        Radius = "Corner radius outside",
        Stiffness = "Stiffness of a foot";
    internal const string OuterSkin = "outer skin",
        Core = "core",
        InnerSkin = "inner skin";

    internal const string Cabinet = "cabinet",
        Seat = "seat",
        Room = "Room",
        Spot = "Spot",
        FromTheSide = "from the side",
        Printer = "Printer";
    internal const string RoomTitle = "The room from above, with cabinet and seat",
        SpotTitle = "The spot from the front and from the side, with the cabinet's outline",
        PrinterTitle = "The printer's plate from above and its height, with the largest part";
    internal const string RoomWidth = "Width of the room",
        RoomLength = "Length of the room",
        SpotWidth = "Width of the spot",
        SpotHeight = "Height of the spot",
        SpotDepth = "Depth of the spot";
    internal const string BuildWidth = "Build width",
        BuildDepth = "Build depth",
        BuildHeight = "Build height";

    internal const string Beside = "room beside the cabinet",
        Above = "room above the cabinet",
        Behind = "room behind the cabinet",
        Passage = "least passage for the mix",
        SeatAway = "distance from cabinet to seat",
        PowderPerWater = "powder to water";

    private static readonly string[] Times =
    [
        "",
        "",
        "twice",
        "three times",
        "four times",
        "five times",
        "six times",
        "seven times",
        "eight times",
        "nine times",
        "ten times",
    ];

    internal static string AlongSaid(string depth, string height, string? spotDepth, string spotHeight, int braces) =>
        $"The cabinet, {depth} deep and {height} high, "
        + $"{(spotDepth is null ? "stands on the floor" : $"stands in a spot {spotDepth} deep and {spotHeight} high")}; driver in front, {braces} "
        + $"{(braces == 1 ? "brace" : "braces")}, terminal and pour opening in the rear.";

    /// <summary>By how much a detail is larger.</summary>
    internal static string Larger(double factor) =>
        Math.Round(factor) is >= 2 and < 11 and var times ? $"the wall, {Times[(int)times]} larger" : "the wall, larger";

    /// <summary>What the wall is made of.</summary>
    internal static IEnumerable<FigurePiece> Made(Projects.Materials? materials)
    {
        var skin = materials?.Skin is { } s ? (s == "own" ? "own" : s.ToUpperInvariant()) + " skins" : "skins of a material not stated";
        if (materials?.Cast?.Mix is not { } mix)
        {
            return [new(skin)];
        }

        IEnumerable<FigurePiece> ratio = materials.Cast.PowderPerWater is { } stated
            ? [new(" "), new($"{stated.ToString("0.##", CultureInfo.InvariantCulture)} : 1", "materials.cast.powder_per_water", PowderPerWater)]
            : [];
        return [new($"{skin}, {mix.Replace('-', ' ')}"), .. ratio, new(" between them")];
    }

    /// <summary>A size that follows, or is stated on another stage.</summary>
    internal static FigurePiece Bracketed(double millimetres, bool inch, string of, string name) =>
        new($"({Number(millimetres, inch)})", of, name, inch ? "inches" : "millimetres");

    /// <summary>A size on a drawing, without its unit.</summary>
    internal static string Number(double millimetres, bool inch) => Show.Number(inch ? millimetres / Projects.Units.Inch.InMillimetres() : millimetres, 3);
}
