using Stillwall.Cabinets;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Parts;

/// <summary>What the parts are made from.</summary>
/// <param name="Cabinet">The cabinet as stated, for accents and feet.</param>
/// <param name="Sheet">The driver's data sheet; null without a driver.</param>
/// <param name="Printer">The printer; null where none is stated: nothing is split then.</param>
internal sealed record PartJob(CabinetGeometry Geometry, Cabinet Cabinet, DriverSheet? Sheet, Printer? Printer)
{
    private const double UsualLayer = 0.3;

    /// <summary>Whether the parts' names are cut into them.</summary>
    public bool Named { get; init; } = true;

    /// <summary>Stated sizes, mm.</summary>
    public CabinetSizes Sizes => Geometry.Sizes;

    /// <summary>Height of a printed layer, mm.</summary>
    public double LayerMm => Printer?.LayerM.InMillimetres() ?? UsualLayer;

    /// <summary>Turn and shift of a part that was printed with its front end down.</summary>
    /// <returns>The placement; seen on the bed, left and right have changed places.</returns>
    internal Placement FrontDown(double y) => Placement.AsPrinted.TurnedAboutX(1).TurnedAboutZ(2).Shifted(Sizes.Width, y, 0);

    /// <summary>Turn and shift of a part that was printed with its rear end down.</summary>
    /// <param name="y">Distance of that end from the front face, mm.</param>
    internal static Placement RearDown(double y) => Placement.AsPrinted.TurnedAboutX(1).Shifted(0, y, 0);

    /// <summary>A region of the front as it lies on the bed, front down.</summary>
    internal Region Turned(Region region) => region.Mirrored(Sizes.Width / 2);

    /// <summary>Whether the printer needs something of this size in pieces.</summary>
    internal bool IsSplit(PartSize size) => Printer is not null && PrinterFit.SpaceMm(Printer) is { } space && PrinterFit.Pieces(size, space) != (1, 1, 1);
}
