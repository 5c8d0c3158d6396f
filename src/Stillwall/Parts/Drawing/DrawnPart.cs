using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>One thing to print, drawn as it lies on the printer's bed.</summary>
/// <param name="Solid">The part: z up from the bed, mm.</param>
/// <param name="Place">Where it goes in the cabinet; null for moulds, coupons and gauges.</param>
internal sealed record DrawnPart(PartKind Kind, string Name, Solid Solid, Placement? Place);

/// <summary>A part before its name is cut into it.</summary>
/// <param name="Mark">Cuts words into the part or into one piece of it.</param>
internal sealed record Blank(Solid Solid, Mark Mark)
{
    /// <summary>A part that is named on top, where a face is free.</summary>
    internal static Blank NamedOnTop(Solid solid, Region face, double top) =>
        new(solid, (piece, words, within) => Naming.OnTop(piece, words, face.Intersect(within), top));

    /// <summary>A part that has no room for a name.</summary>
    internal static Blank Nameless(Solid solid) => new(solid, (piece, _, _) => piece);
}

/// <summary>Cuts words into a piece of a part that stands within a region.</summary>
internal delegate Solid Mark(Solid piece, string words, Region within);
