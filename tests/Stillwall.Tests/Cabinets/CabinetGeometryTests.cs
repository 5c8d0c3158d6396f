using CsCheck;
using Stillwall.Cabinets;
using Stillwall.Parts;

namespace Stillwall.Tests.Cabinets;

public sealed class CabinetGeometryTests
{
    private static readonly CabinetSizes Demo = new(244, 330, 244, 30, 2, 12, 2, 40, 1, 1, 186, 209, 8, 55, 35);

    private static readonly Gen<CabinetSizes> AnyCabinet =
        from width in Gen.Double[180, 420]
        from height in Gen.Double[180, 420]
        from depth in Gen.Double[180, 500]
        from radius in Gen.Double[0, 60]
        from outer in Gen.Double[1, 4]
        from core in Gen.Double[4, 25]
        from inner in Gen.Double[1, 4]
        from pitch in Gen.Double[Math.Max(24, 1.6 * core), 70]
        from braces in Gen.Int[0, 3]
        from sunk in Gen.OneOf(Gen.Const(0.0), Gen.Double[0, outer - 1])
        from hole in Gen.OneOf(Gen.Const(0.0), Gen.Double[3, 12])
        select new CabinetSizes(width, depth, height, radius, outer, core, inner, pitch, braces, 1, 120, 135, 6, 50, 30, 0, sunk, sunk > 0 ? 150 : 0, hole);

    [Fact]
    public void A_plain_box_has_the_volume_worked_out_by_hand()
    {
        // 200 × 300 × 250 outside, walls 2 + 10 + 3 = 15 mm, square corners: inside 170 × 270 × 220 mm.
        var box = CabinetGeometry.Of(new CabinetSizes(200, 300, 250, 0, 2, 10, 3, 1000, 0, 1, 0, 0, 0, 0, 0));
        Assert.Equal(0.170 * 0.270 * 0.220, box.InsideM3, 1e-9 * box.InsideM3);
    }

    [Fact]
    public void Two_openings_that_overlap_and_reach_past_the_edge_lose_the_segments_of_a_circle()
    {
        // Centres 200 mm apart, 240 mm in diameter, the inner plate's edge 88 mm beside each: a segment at x is r² acos(x/r) − x √(r² − x²).
        var front = PlateSection.Front(new CabinetSizes(400, 300, 300, 0, 2, 10, 2, 40, 0, 2, 240, 0, 0, 0, 0));
        const double radius = 0.12;
        static double Segment(double x) => radius * radius * Math.Acos(x / radius) - x * Math.Sqrt(radius * radius - x * x);
        var opening = 2 * (Math.PI * radius * radius - Segment(0.1) - Segment(0.088));
        Assert.Equal(opening, front.OpeningM2, 1e-4 * opening);
    }

    [Fact]
    public void Bosses_count_in_full_where_they_stand_apart_and_not_at_all_within_a_collar()
    {
        double Collars(double boltCircle) => PlateSection.Front(new CabinetSizes(900, 300, 400, 0, 2, 10, 2, 40, 0, 2, 180, boltCircle, 8, 0, 0)).CollarM2;
        var collars = 2 * Math.PI / 4 * (0.186 * 0.186 - 0.180 * 0.180);
        Assert.Equal(collars + 16 * Math.PI / 4 * 0.010 * 0.010, Collars(220), 1e-4 * collars);
        Assert.Equal(collars, Collars(150), 1e-4 * collars);
    }

    [Fact]
    public void The_plastic_of_a_single_walled_box_is_outside_less_inside()
    {
        var box = CabinetGeometry.Of(new CabinetSizes(200, 300, 250, 0, 3, 0, 2, 40, 0, 1, 0, 0, 0, 0, 0));
        var plastic =
            box.OuterSleeveM3(0)
            + box.InnerSleeveM3
            + box.OuterPlateM3(box.Front)
            + box.InnerPlateM3(box.Front)
            + box.OuterPlateM3(box.Rear)
            + box.InnerPlateM3(box.Rear);

        // Less the inside, and eight tongues of 20 × 2 × 5 mm that stand in it.
        var byHand = 0.200 * 0.300 * 0.250 - 0.190 * 0.290 * 0.240 + 8 * 0.020 * 0.002 * 0.005;
        Assert.Equal(byHand, plastic, 1e-9 * byHand);
        Assert.Equal(0, box.CavityM3);
    }

    [Fact]
    public void Plastic_cavity_inside_and_openings_fill_the_outside_exactly() =>
        AnyCabinet.Sample(
            sizes =>
            {
                var g = CabinetGeometry.Of(sizes);
                var plastic =
                    g.OuterSleeveM3(0) + g.InnerSleeveM3 + g.OuterPlateM3(g.Front) + g.InnerPlateM3(g.Front) + g.OuterPlateM3(g.Rear) + g.InnerPlateM3(g.Rear);
                var outside = g.Sizes.Outline.Inset(0).ToRegion().AreaM2 * sizes.Depth * 1e-3;

                // Seats and tongues are plastic that stands in the inside.
                var open = outside - plastic - g.CavityM3 - g.InsideM3 + g.FittingsM3;
                var pour = Math.PI / 4 * 30 * 30e-6 * sizes.OuterSkin * 1e-3;
                var openings =
                    Math.PI / 4 * (120 * 120 + 50 * 50) * 1e-6 * sizes.Wall * 1e-3
                    + pour
                    + g.Rear.Layout.Vents.Concat(g.Rear.Layout.DryOuts).Sum(c => c.AreaM2) * sizes.OuterSkin * 1e-3
                    + Math.PI / 4 * (150.6 * 150.6 - 120 * 120) * sizes.Sunk * 1e-9;
                Assert.Equal(openings, open, 1e-6 * outside);
            },
            iter: 60
        );

    [Fact]
    public void Points_thrown_at_random_find_the_same_volumes()
    {
        var g = CabinetGeometry.Of(Demo);
        var random = new Random(20261114);
        var (inside, cavity, n) = (0, 0, 1_000_000);
        for (var i = 0; i < n; i++)
        {
            var (x, y, z) = (random.NextDouble() * Demo.Width, random.NextDouble() * Demo.Depth, random.NextDouble() * Demo.Height);
            inside += ByDistance.IsInside(Demo, x, y, z) ? 1 : 0;
            cavity += ByDistance.IsCavityWithoutPieces(Demo, x, y, z) ? 1 : 0;
        }

        var box = Demo.Width * Demo.Depth * Demo.Height * 1e-9;
        Assert.Equal(g.InsideM3, box * inside / n, 0.003 * g.InsideM3);

        // The count knows no struts, keys, bosses and posts: what they take is the plastic that stands in the core.
        var standing =
            g.OuterSleeveM3(0)
            + g.InnerSleeveM3
            - g.Sleeve.OuterSkinM2 * g.OuterSleeveLengthM
            - g.Sleeve.InnerSkinM2 * g.InsideDepthM
            + (g.Front.CollarM2 + g.Front.PostM2 + g.Rear.CollarM2 + g.Rear.PostM2) * g.CoreM;
        Assert.Equal(g.CavityM3 + standing, box * cavity / n, 0.003 * (g.CavityM3 + standing));
    }

    [Fact]
    public void Every_strut_has_its_piece_and_its_slot_on_both_sides() =>
        AnyCabinet.Sample(
            sizes =>
            {
                var s = SleeveSection.Of(sizes);
                var path = sizes.Outline.Inset(sizes.OuterSkin + sizes.Core / 2);
                var struts = (int)Math.Round(path.Length / s.StrutPitch);
                Assert.Equal((struts, 0), (s.Struts.Count, struts % 2));
                for (var i = 0; i < struts; i++)
                {
                    var at = path.At((i + 0.5) * s.StrutPitch);
                    var (outX, outY) = (at.AlongY, -at.AlongX);
                    Assert.Single(s.Struts, w => w.Contains(at.X + sizes.Core / 4 * outX, at.Y + sizes.Core / 4 * outY));
                }

                Assert.Equal(sizes.Tied ? 2 * struts : 0, s.Lips.Count);
            },
            iter: 60
        );

    [Fact]
    public void Struts_keys_and_slots_stand_in_the_ring_and_never_overlap() =>
        AnyCabinet.Sample(
            sizes =>
            {
                var s = SleeveSection.Of(sizes);
                var ring = sizes.Outline.Inset(sizes.OuterSkin).ToRegion().Cut(sizes.Outline.Inset(sizes.OuterSkin + sizes.Core).ToRegion());
                var pieces = (Stillwall.Shapes.Region[])[.. s.Struts, .. s.Lips, .. s.OuterEndKeys, .. s.InnerEndKeys];
                for (var i = 0; i < pieces.Length; i++)
                {
                    for (var j = i + 1; j < pieces.Length; j++)
                    {
                        Assert.True(!pieces[i].MayTouch(pieces[j]) || pieces[i].Intersect(pieces[j]).AreaM2 < 2e-8, $"pieces {i} and {j} overlap");
                    }

                    Assert.Equal(pieces[i].AreaM2, pieces[i].Intersect(ring).AreaM2, 1e-7);
                }
            },
            iter: 20
        );

    [Fact]
    public void Half_of_every_strut_is_open_so_that_the_core_runs_through() =>
        Gen.Select(Gen.Double[60, 600], Gen.Double[8, 40])
            .Where(g => g.Item1 > 3 * g.Item2 + 60)
            .Sample(
                (length, core) =>
                {
                    var open = StrutRhythm.Of(10 * length, core);
                    Assert.True(open.OpenFraction >= 0.49, $"{length} {core}: {open.OpenFraction}");
                    Assert.Equal(open.Solid, open.SolidLengths().Sum(s => s.To - s.From), 1e-9);
                }
            );

    [Fact]
    public void A_window_that_ends_where_the_strut_does_has_no_slope_behind_it()
    {
        // By hand: a core of 5 mm makes windows of 21 mm with webs of 14 mm between; 10 + 7 · 21 + 6 · 14 = 241, six slopes of half a core each.
        var rhythm = StrutRhythm.Of(241, 5);
        Assert.Equal((7, 94.0), (rhythm.Windows, rhythm.Solid));
        Assert.Equal((206.0, 220.0), rhythm.SolidLengths().Last());
        Assert.Equal((7 * 21 - 6 * 2.5) / 241, rhythm.OpenFraction, 1e-12);
    }

    [Fact]
    public void The_demo_cabinet_has_the_figures_worked_out_by_hand()
    {
        var g = CabinetGeometry.Of(Demo);
        // 212 mm square with 14 mm corners, 298 mm deep.
        var byHand = (0.212 * 0.212 - (4 - Math.PI) * 0.014 * 0.014) * 0.298;
        Assert.Equal(byHand, g.InsideM3, 1e-5 * byHand);
        Assert.InRange(g.CavityM3, 0.0032, 0.0042);
        Assert.InRange(g.Sleeve.StrutPitch, 36, 40);
    }

    [Fact]
    public void A_part_turned_on_the_bed_fits_where_it_did_not()
    {
        var printer = new Stillwall.Projects.Printer
        {
            BuildWidthM = 0.2,
            BuildDepthM = 0.3,
            BuildHeightM = 0.2,
        };
        Assert.True(PrinterFit.MarginM([0.28, 0.1, 0.1], printer) < 0);
        Assert.Equal(0.01, PrinterFit.MarginM(PrinterFit.Turned([0.28, 0.1, 0.1], printer), printer)!.Value, 1e-12);
    }

    /// <summary>Membership by distances from the walls, without a polygon: an independent way to the same volumes.</summary>
    private static class ByDistance
    {
        internal static bool IsInside(CabinetSizes s, double x, double y, double z) => Depth(s, x, z) >= s.Wall && y >= s.Wall && y <= s.Depth - s.Wall;

        internal static bool IsCavityWithoutPieces(CabinetSizes s, double x, double y, double z)
        {
            var behind = Math.Min(y, s.Depth - y);
            var within = Depth(s, x, z);
            if (within < s.OuterSkin || behind < s.OuterSkin || (within >= s.OuterSkin + s.Core && behind >= s.OuterSkin + s.Core))
            {
                return false;
            }

            var (cx, cz, bore) = y < s.Depth / 2 ? (s.Width / 2, s.Height / 2, s.Cutout) : (s.Width / 2, s.Wall + (s.Height - 2 * s.Wall) / 4, s.Terminal);
            return behind >= s.OuterSkin + s.Core || Math.Sqrt((x - cx) * (x - cx) + (z - cz) * (z - cz)) >= bore / 2;
        }

        // Distance inwards from a rounded rectangle.
        private static double Depth(CabinetSizes s, double x, double z)
        {
            var (fromSide, fromEnd) = (Math.Min(x, s.Width - x), Math.Min(z, s.Height - z));
            return fromSide >= s.Radius || fromEnd >= s.Radius
                ? Math.Min(fromSide, fromEnd)
                : s.Radius - Math.Sqrt((s.Radius - fromSide) * (s.Radius - fromSide) + (s.Radius - fromEnd) * (s.Radius - fromEnd));
        }
    }
}
