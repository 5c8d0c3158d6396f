using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>Trim ring, feet, lids.</summary>
internal static class SmallParts
{
    /// <summary>Diameter and depth of the pockets for the driver's screw heads, mm (our choice: heads are up to twice the thread wide).</summary>
    internal static (double Diameter, double Depth) HeadPocket(double bolt) => (2 * bolt + 1, BuildUp.TrimThickness - 1);

    /// <summary>The ring over the driver's screws, visible face down, with pockets for their heads.</summary>
    internal static Blank TrimRing(PartDrawingJob job, double flange, double cutout)
    {
        var s = job.Sizes;
        var ring = Outlines.Ring(0, 0, flange, cutout);
        var (diameter, depth) = HeadPocket(s.Bolt);
        var pockets =
            s.Bolt > 0 && s.BoltCircle > 0
                ? Region.JoinAll(
                    Enumerable
                        .Range(0, s.Bolts)
                        .Select(i =>
                        {
                            var angle = 2 * Math.PI * (i + 0.5) / s.Bolts;
                            return Region.Disc(-s.BoltCircle / 2 * Math.Cos(angle), s.BoltCircle / 2 * Math.Sin(angle), diameter);
                        })
                )
                : Region.Empty;
        var solid = Solid.Empty.Add(ring, 0, BuildUp.TrimThickness).Cut(pockets, BuildUp.TrimThickness - depth, BuildUp.TrimThickness);
        return Blank.NamedOnTop(solid, ring.Cut(pockets), BuildUp.TrimThickness);
    }

    /// <summary>A foot.</summary>
    internal static Blank Foot()
    {
        var disc = Region.Disc(0, 0, BuildUp.FootDiameter);
        return Blank.NamedOnTop(Solid.Empty.Add(disc, 0, BuildUp.FootHeight), disc, BuildUp.FootHeight);
    }

    /// <summary>A lid for an opening for drying.</summary>
    internal static Blank Lid(Circle opening, double thickness)
    {
        var disc = Region.Disc(0, 0, opening.DiameterMm - 2 * BuildUp.LidGap);
        return Blank.NamedOnTop(Solid.Empty.Add(disc, 0, thickness), disc, thickness);
    }
}
