using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>What is printed before and beside the cabinet: mould, coupon, strip, gauges.</summary>
internal static class GaugeDrawing
{
    private const double StripLength = 100,
        StripWidth = 20,
        StripThickness = 4,
        Peg = 10,
        PegHeight = 12,
        PegLead = 20,
        PegCorner = 2;

    /// <summary>Volume of the strip, m³: less five holes, their clearance 0.1 to 0.5 mm.</summary>
    internal static double StripM3 => (StripLength * StripWidth - Enumerable.Range(1, 5).Sum(i => (Peg + 0.2 * i) * (Peg + 0.2 * i))) * StripThickness * 1e-9;

    /// <summary>Volume of the peg, m³.</summary>
    internal static double PegM3 => ((PegLead * PegLead - (4 - Math.PI) * PegCorner * PegCorner) * StripThickness + Peg * Peg * PegHeight) * 1e-9;

    /// <summary>Size of the strip, m.</summary>
    internal static double[] StripSizeM => [StripLength * 1e-3, StripWidth * 1e-3, StripThickness * 1e-3];

    /// <summary>Size of the peg, m.</summary>
    internal static double[] PegSizeM => [PegLead * 1e-3, PegLead * 1e-3, (StripThickness + PegHeight) * 1e-3];

    /// <summary>A tray for the bar that is tapped.</summary>
    internal static Blank Mould()
    {
        var (length, width, deep) = (PartList.TestBarM[0] * 1e3, PartList.TestBarM[1] * 1e3, PartList.TestBarM[2] * 1e3);
        var wall = PartList.MouldWallM * 1e3;
        var hollow = Region.RoundedRectangle(wall, wall, wall + length, wall + width, 0);
        var tray = Solid.Empty.Add(Region.RoundedRectangle(0, 0, length + 2 * wall, width + 2 * wall, 0), 0, deep + wall).Cut(hollow, wall, wall + deep);
        return Blank.NamedOnTop(tray, hollow, wall);
    }

    /// <summary>A strip of 100 mm for shrinkage, with five holes in which the peg shows the clearance that fits: 0.1 to 0.5 mm all round.</summary>
    internal static Blank Strip()
    {
        var strip = Region.RoundedRectangle(0, 0, StripLength, StripWidth, 0);
        var holes = Region.JoinAll(
            Enumerable
                .Range(1, 5)
                .Select(i =>
                {
                    var (x, half) = (StripLength * (i - 0.5) / 5, Peg / 2 + 0.1 * i);
                    return Region.RoundedRectangle(x - half, StripWidth / 2 - half, x + half, StripWidth / 2 + half, 0);
                })
        );
        return Blank.NamedOnTop(Solid.Empty.Add(strip.Cut(holes), 0, StripThickness), strip.Cut(holes), StripThickness);
    }

    /// <summary>The peg that goes with the strip: 10 mm square, on a wider foot to hold it by.</summary>
    internal static Blank PegOf() =>
        Blank.Nameless(
            Solid
                .Empty.Add(Region.RoundedRectangle(0, 0, PegLead, PegLead, PegCorner), 0, StripThickness)
                .Add(
                    Region.RoundedRectangle((PegLead - Peg) / 2, (PegLead - Peg) / 2, (PegLead + Peg) / 2, (PegLead + Peg) / 2, 0),
                    StripThickness,
                    StripThickness + PegHeight
                )
        );

    /// <summary>A gauge that keeps the skins apart until the first lift has set; it hangs over the rear ends by its head.</summary>
    internal static Blank Spacer(CabinetSizes sizes)
    {
        var (thick, long_, high) = (sizes.Core - BuildUp.SpacerPlay, BuildUp.SpacerLength, BuildUp.SpacerHeight);
        var bar = Region.RoundedRectangle(-thick / 2, 0, thick / 2, long_, 0);
        var head = Region.RoundedRectangle(-thick / 2 - BuildUp.SpacerHead, long_, thick / 2 + BuildUp.SpacerHead, long_ + BuildUp.SpacerHead, 0);
        var face = bar.Join(head);
        return Blank.NamedOnTop(Solid.Empty.Add(face, 0, high), face, high);
    }
}
