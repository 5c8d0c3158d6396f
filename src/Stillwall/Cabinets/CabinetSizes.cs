using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>The stated sizes of a drawn cabinet, in millimetres as geometry uses them.</summary>
/// <param name="Depth">Outside depth (y), front to rear.</param>
/// <param name="Radius">Outside radius of the long edges.</param>
/// <param name="StrutPitch">Greatest distance between struts along the wall.</param>
/// <param name="Cutout">Diameter of a driver's opening; 0 where not known.</param>
/// <param name="BoltCircle">Diameter of the bolt circle; 0 where not known.</param>
/// <param name="Terminal">Diameter of the terminal's opening; 0 for none.</param>
/// <param name="Pour">Diameter of the pour opening; 0 for none.</param>
/// <param name="Bolt">Thread of the driver's bolts; 0 where not known.</param>
/// <param name="Recess">Depth of the recess for the driver's flange as stated; 0 for none.</param>
/// <param name="Flange">Diameter of the flange that goes into the recess; 0 where there is none or where it is not known.</param>
/// <param name="DryingHole">Diameter of the drying holes in the inner skin; 0 for none.</param>
internal sealed record CabinetSizes(
    double Width,
    double Depth,
    double Height,
    double Radius,
    double OuterSkin,
    double Core,
    double InnerSkin,
    double StrutPitch,
    int Braces,
    int DriverCount,
    double Cutout,
    double BoltCircle,
    int Bolts,
    double Terminal,
    double Pour,
    double Bolt = 0,
    double Recess = 0,
    double Flange = 0,
    double DryingHole = 0
)
{
    /// <summary>Thickness of the whole wall, mm.</summary>
    public double Wall => OuterSkin + Core + InnerSkin;

    /// <summary>Thickness of a strut's web, mm: the outer skin's, 1.2 mm at least (our choice).</summary>
    public double Web => Math.Max(1.2, OuterSkin);

    /// <summary>Whether struts tie the inner skin: the core has room for their heads.</summary>
    public bool Tied => Core >= BuildUp.LeastTiedCore;

    /// <summary>Clearance between sleeve and tongue, mm.</summary>
    public double JointClearance => BuildUp.Clearance(Math.Max(Width, Height));

    /// <summary>Gap by which an accent ring is open, mm: it springs into its groove, and takes up a joint's clearance on each of four sides.</summary>
    public double AccentGap => 4 * JointClearance;

    /// <summary>Whether the outer plates have a tongue: the core has room for it.</summary>
    public bool HasTongue => Core >= BuildUp.LeastCoreForTongue;

    /// <summary>How far the driver's flange is sunk into the front, mm; 0 where its diameter is not known: no recess is drawn then.</summary>
    public double Sunk => Flange > 0 ? Recess : 0;

    /// <summary>Diameter of the recess for the driver's flange, mm; 0 for none.</summary>
    public double RecessDiameter => Sunk > 0 ? Flange + BuildUp.RecessPlay : 0;

    /// <summary>The outline seen from the front.</summary>
    public RoundedOutline Outline => new(Width, Height, Math.Min(Radius, Math.Min(Width, Height) / 2));

    /// <summary>Takes the sizes from what is stated.</summary>
    /// <param name="sheet">The driver's data sheet, or null.</param>
    /// <returns>The sizes, or null where outside size or walls are not stated; without a core the outer skin alone is a wall.</returns>
    /// <remarks>Source: the stated sizes, in millimetres.</remarks>
    public static CabinetSizes? Of(Cabinet? cabinet, DriverSheet? sheet) =>
        cabinet is { Outside: { } outside, OuterSkinM: { } outer, CoreM: { } core } && (cabinet.InnerSkinM ?? (core == 0 ? 0 : null)) is { } inner
            ? new CabinetSizes(
                Width: outside.WidthM.InMillimetres(),
                Depth: outside.DepthM.InMillimetres(),
                Height: outside.HeightM.InMillimetres(),
                Radius: outside.CornerRadiusM.InMillimetres(),
                OuterSkin: outer.InMillimetres(),
                Core: core.InMillimetres(),
                InnerSkin: inner.InMillimetres(),
                StrutPitch: cabinet.StrutPitchM.InMillimetres(),
                Braces: cabinet.Braces,
                DriverCount: cabinet.DriverCount,
                Cutout: (sheet?.CutoutM ?? 0).InMillimetres(),
                BoltCircle: (sheet?.BoltCircleM ?? 0).InMillimetres(),
                Bolts: sheet?.Bolts ?? 0,
                Terminal: (cabinet.Openings?.TerminalM ?? 0).InMillimetres(),
                Pour: (cabinet.Openings?.PourM ?? 0).InMillimetres(),
                Bolt: (sheet?.BoltM ?? 0).InMillimetres(),
                Recess: (cabinet.Openings?.RecessM ?? 0).InMillimetres(),
                Flange: cabinet.Openings?.RecessM > 0 ? (sheet?.FlangeM ?? 0).InMillimetres() : 0,
                DryingHole: (cabinet.Openings?.DryingHoleM ?? 0).InMillimetres()
            )
            : null;
}

/// <summary>The outline of the cabinet seen from the front, and what lies inside it.</summary>
internal sealed record RoundedOutline(double Width, double Height, double Radius)
{
    /// <summary>The frame a distance inside the outline, in the cabinet's x and z.</summary>
    public Shapes.RoundedFrame Inset(double distance) => new Shapes.RoundedFrame(0, 0, Width, Height, Radius).Inset(distance);
}
