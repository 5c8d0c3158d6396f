using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>A driver as it is drawn, in millimetres; what its sheet does not say is 0.</summary>
/// <param name="Depth">Depth behind the flange.</param>
/// <param name="Flange">Diameter of the flange.</param>
/// <param name="FlangeThickness">Thickness of the flange.</param>
/// <param name="Cutout">Diameter of the opening it goes through.</param>
/// <param name="Magnet">Diameter of the magnet, which goes through the opening; the opening's where it is not stated.</param>
internal sealed record DriverBody(double Depth, double Flange, double FlangeThickness, double Cutout, double Magnet)
{
    /// <summary>Whether enough is stated to draw it.</summary>
    internal bool IsDrawn => Depth > 0 && Cutout > 0;

    /// <summary>Takes the body from a data sheet.</summary>
    internal static DriverBody Of(DriverSheet? sheet)
    {
        double Drawn(double? metres) => (metres ?? 0).InMillimetres();
        return new DriverBody(
            Drawn(sheet?.DepthM),
            Drawn(sheet?.FlangeM),
            Drawn(sheet?.FlangeThicknessM),
            Drawn(sheet?.CutoutM),
            Math.Min(Drawn(sheet?.MagnetDiameterM ?? sheet?.CutoutM), Drawn(sheet?.CutoutM))
        );
    }

    /// <summary>Its flange, its basket and its magnet, from front to rear, with the flange's rear face so deep in the front.</summary>
    /// <param name="sunk">Depth of the recess, mm.</param>
    /// <returns>Where each begins and ends behind the front, and its diameter, mm.</returns>
    internal IReadOnlyList<(double From, double To, double Diameter)> Steps(double sunk) =>
        [
            (sunk - FlangeThickness, sunk, Flange > 0 ? Flange : Cutout),
            (sunk, sunk + Depth / 2, Cutout),
            (sunk + Depth / 2, sunk + Depth, Magnet),
        ];
}
