using Stillwall.Cabinets;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>One thing to print, drawn as it lies on the printer's bed.</summary>
/// <param name="Name">Name of the part.</param>
/// <param name="Solid">The part: z up from the bed, mm.</param>
/// <param name="Place">Where it goes in the cabinet; null for moulds, coupons and gauges.</param>
public sealed record DrawnPart(string Name, Solid Solid, Placement? Place);

/// <summary>A part before its name is cut into it.</summary>
/// <param name="Solid">The part.</param>
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

/// <summary>What is needed to draw the parts.</summary>
/// <param name="Geometry">The drawn cabinet.</param>
/// <param name="Cabinet">The cabinet as stated, for accents and feet.</param>
/// <param name="Sheet">The driver's data sheet; null without a driver.</param>
/// <param name="Printer">The printer; null where none is stated: nothing is split then.</param>
public sealed record PartDrawingJob(CabinetGeometry Geometry, Cabinet Cabinet, DriverSheet? Sheet, Printer? Printer)
{
    private const double UsualLayer = 0.3;

    /// <summary>Whether the parts' names are cut into them.</summary>
    public bool Named { get; init; } = true;

    /// <summary>Stated sizes, mm.</summary>
    public CabinetSizes Sizes => Geometry.Sizes;

    /// <summary>Height of a printed layer, mm.</summary>
    public double LayerMm => Printer?.LayerM * 1e3 ?? UsualLayer;

    /// <summary>Turn and shift of a part that was printed with its front end down.</summary>
    /// <param name="y">Distance of that end from the front face, mm.</param>
    /// <returns>The placement; seen on the bed, left and right have changed places.</returns>
    internal Placement FrontDown(double y) => Placement.AsPrinted.TurnedAboutX(1).TurnedAboutZ(2).Shifted(Sizes.Width, y, 0);

    /// <summary>Turn and shift of a part that was printed with its rear end down.</summary>
    /// <param name="y">Distance of that end from the front face, mm.</param>
    /// <returns>The placement.</returns>
    internal static Placement RearDown(double y) => Placement.AsPrinted.TurnedAboutX(1).Shifted(0, y, 0);

    /// <summary>A region of the front as it lies on the bed, front down.</summary>
    internal Region Turned(Region region) => region.Mirrored(Sizes.Width / 2);
}
