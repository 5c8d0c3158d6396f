using Stillwall.Cabinets;
using Stillwall.Projects;

namespace Stillwall.Appraisals;

/// <summary>What a drawn cabinet offers whatever driver goes into it; the driver's own openings change none of it.</summary>
/// <param name="Geometry">The cabinet as drawn, with or without a driver's openings.</param>
/// <param name="InsideM3">Air space within the inner skins, m³.</param>
/// <param name="BracesM3">Volume of all braces, their seats and the tongues of the inner plates, m³.</param>
internal sealed record Hollow(CabinetGeometry Geometry, double InsideM3, double BracesM3, double PortM3, double PassiveRadiatorM3)
{
    /// <summary>Takes it from the drawing.</summary>
    internal static Hollow Of(CabinetGeometry geometry, Cabinet cabinet) =>
        new(
            geometry,
            geometry.InsideM3,
            geometry.Sizes.Braces * geometry.BraceM3 + geometry.FittingsM3,
            Displacement.PortM3(cabinet.Port),
            Displacement.PassiveRadiatorM3(cabinet.PassiveRadiator)
        );

    /// <summary>Stated sizes; of the driver's openings they say nothing reliable.</summary>
    internal CabinetSizes Sizes => Geometry.Sizes;

    /// <summary>Largest inside length, m.</summary>
    internal double LongestInsideM => Math.Max(Geometry.InsideDepthM, Math.Max(Geometry.InsideWidthM, Geometry.InsideHeightM));

    /// <summary>Side of the window in a brace, the smaller one, m.</summary>
    internal double BraceWindowM => Geometry.BraceWindowM;

    /// <summary>Depth behind the front face that a driver may take, m.</summary>
    internal double RoomForDriverM(bool passesBraces) => Geometry.RoomForDriverM(passesBraces);

    /// <summary>Air that is left with as many of one driver as the cabinet has, m³; never below 0.</summary>
    internal double NetM3(DriverSheet sheet) =>
        Math.Max(0, InsideM3 - (BracesM3 + Sizes.DriverCount * Displacement.DriverM3(sheet) + PortM3 + PassiveRadiatorM3));
}
