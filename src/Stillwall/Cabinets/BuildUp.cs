using Stillwall.Projects;
using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Cabinets;

/// <summary>The sizes of struts, keys, collars and braces that the maker does not state.</summary>
/// <remarks>Source: our choice throughout, from what a 0.4 to 0.6 mm nozzle lays and what a mix passes; not from a standard. All in millimetres.</remarks>
internal static class BuildUp
{
    /// <summary>Head of the T at the inner end of a strut: its width, mm.</summary>
    public const double HeadWidth = 6;

    /// <summary>Head of the T: its thickness, mm.</summary>
    public const double HeadThickness = 2;

    /// <summary>Gap on every side between the T and the slot that takes it, mm.</summary>
    public const double SlotGap = 0.3;

    /// <summary>Thickness of the slot's lips, mm.</summary>
    public const double LipThickness = 1.6;

    /// <summary>Length of a strut's web between two windows, mm.</summary>
    public const double WebLength = 14;

    /// <summary>Where the lowest window begins, mm above the strut's foot.</summary>
    public const double LowestWindow = 10;

    /// <summary>Share of a strut that its windows must leave open, so that the core runs through.</summary>
    public const double OpenShare = 0.5;

    /// <summary>Least core that has room for a T and its slot, mm; a thinner one has plain webs, untied.</summary>
    public const double LeastTiedCore = 8;

    /// <summary>Width of a key where it leaves the skin, mm.</summary>
    public const double KeyFoot = 2.4;

    /// <summary>Width of a key at its undercut head, mm.</summary>
    public const double KeyHead = 4;

    /// <summary>Height of a key, mm; a quarter of a thin core.</summary>
    public const double KeyHeight = 2.8;

    /// <summary>Radius of the inner skin at a corner below which it has no keys there, mm.</summary>
    public const double TightCorner = 15;

    /// <summary>Clear wall for each key near an end, mm.</summary>
    public const double KeySpacingAtEnds = 12.5;

    /// <summary>Clear wall for each key elsewhere, mm.</summary>
    public const double KeySpacing = 25;

    /// <summary>How far from an end the wall is keyed more closely, mm.</summary>
    public const double EndZone = 80;

    /// <summary>Thickness of the collar round the driver's opening, mm.</summary>
    public const double DriverCollar = 3;

    /// <summary>Thickness of the collar round the terminal's opening, mm.</summary>
    public const double TerminalCollar = 2;

    /// <summary>Plate left between an opening in the rear and the side walls, mm.</summary>
    public const double OpeningRoom = 10;

    /// <summary>How much wider than the flange a recess for it is, mm.</summary>
    public const double RecessPlay = 0.6;

    /// <summary>Face left between a recess and the edge of the front, or the next driver's share of it, mm.</summary>
    public const double RecessRim = 2;

    /// <summary>Diameter of the boss that takes a threaded insert, mm.</summary>
    public const double Boss = 10;

    /// <summary>Diameter of the posts between outer and inner plate at front and rear, mm.</summary>
    public const double Post = 6;

    /// <summary>Room a post keeps from collars, bosses and walls, mm.</summary>
    public const double PostRoom = 8;

    public const double BraceThickness = ProjectChecks.BraceThicknessM * MillimetresPerMetre;

    /// <summary>Width of a brace's frame round its window, mm.</summary>
    public const double BraceFrame = 28;

    /// <summary>Width of the groove of an accent ring, mm.</summary>
    public const double AccentWidth = 4;

    /// <summary>Wall of a port tube, mm.</summary>
    public const double PortWall = 3;

    /// <summary>Thickness of the trim ring over the driver's screws, mm.</summary>
    public const double TrimThickness = 4;

    /// <summary>Thickness of the tongue that stands on a plate inside the sleeve, mm.</summary>
    public const double TongueThickness = 2;

    public const double TongueHeight = 5;

    /// <summary>Length of each of the four tongues on an inner plate, mm.</summary>
    public const double InnerTongue = 20;

    /// <summary>Least core that has room for a tongue and for what flows past it, mm.</summary>
    public const double LeastCoreForTongue = 6;

    /// <summary>What a tongue keeps from a strut on either side, mm.</summary>
    public const double TongueGap = 1;

    /// <summary>Width of a seat that a brace rests on, mm; there are eight.</summary>
    public const double SeatWidth = 12;

    /// <summary>How far a seat stands out from the inner skin, mm; below it runs out at 45°.</summary>
    public const double SeatDepth = 2.5;

    /// <summary>Seats of a brace.</summary>
    public const int Seats = 8;

    /// <summary>Greatest diameter of a vent, mm.</summary>
    public const double Vent = 4;

    /// <summary>Greatest diameter of an opening for drying in the rear, mm.</summary>
    public const double DryOut = 50;

    /// <summary>Plate left between an opening for drying and whatever is next to it, mm.</summary>
    public const double DryOutRoom = 8;

    /// <summary>Skin left between a drying hole and whatever stands on it beside, mm.</summary>
    public const double DryingHoleRoom = 1.5;

    /// <summary>Least distance of the drying holes of a row, mm.</summary>
    public const double DryingHolePitch = 40;

    /// <summary>Least distance of the drying holes of a row, in diameters: two of them are left between two holes.</summary>
    public const double DryingHolePitchPerDiameter = 3;

    /// <summary>How much wider than its thread the hole for a heat-set insert is, mm; makers differ.</summary>
    public const double PilotOver = 1.6;

    /// <summary>Depth of the hole for a heat-set insert from where the flange sits, mm.</summary>
    public const double PilotDepth = 10;

    /// <summary>Width of an accent ring, less than its groove's by the slots' gap on either side, mm.</summary>
    public const double AccentRingWidth = AccentWidth - 2 * SlotGap;

    /// <summary>Gap round a lid in its opening, mm.</summary>
    public const double LidGap = 0.3;

    public const double FootDiameter = 30;

    public const double FootHeight = 8;

    /// <summary>Least core that a spacer gauge is printed for, mm.</summary>
    public const double LeastSpacerCore = 4;

    /// <summary>How much thinner than the core a spacer gauge is, mm.</summary>
    public const double SpacerPlay = 0.3;

    /// <summary>Length of a spacer gauge that hangs between the skins, mm.</summary>
    public const double SpacerLength = 40;

    /// <summary>Height of a spacer gauge as printed, mm.</summary>
    public const double SpacerHeight = 20;

    /// <summary>How far the head of a spacer gauge stands out on either side, and its thickness, mm.</summary>
    public const double SpacerHead = 8;

    /// <summary>Clearance between parts that go into one another, for a length: 0.3 mm and a thousandth.</summary>
    /// <param name="length">Length of the joint, mm, zero or greater.</param>
    /// <remarks>Source: our choice; a thousandth of the length covers a third of a percent of shrinkage of which two thirds are alike on both sides.</remarks>
    public static double Clearance(double length) => 0.3 + 0.001 * length;

    /// <summary>Height of a key in a core of a given thickness.</summary>
    /// <remarks>Source: our choice: a quarter of the core, so that half of it stays clear between facing keys.</remarks>
    public static double KeyHeightIn(double core) => Math.Min(KeyHeight, core / 4);
}
