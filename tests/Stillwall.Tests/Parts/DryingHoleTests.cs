using CsCheck;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Pours;
using Stillwall.Projects;
using Stillwall.Shapes;
using Stillwall.Tests.Appraisals;
using Stillwall.Tests.Shapes;
using static Stillwall.Tests.Parts.DrawnCabinets;

namespace Stillwall.Tests.Parts;

/// <summary>Holes in the inner skin through which the cast dries: counted by hand, held against the drawing, taped, sealed.</summary>
public sealed class DryingHoleTests
{
    private const double HoleM = 0.005;

    private static readonly Lazy<Drawn> Cabinet = new(() => Draw("drying holes", With(HoleM)));

    private static readonly Gen<CabinetSizes> AnyCabinet =
        from width in Gen.Double[180, 420]
        from height in Gen.Double[180, 420]
        from depth in Gen.Double[180, 500]
        from radius in Gen.Double[0, 60]
        from core in Gen.Double[4, 25]
        from inner in Gen.Double[1, 4]
        from pitch in Gen.Double[Math.Max(24, 1.6 * core), 70]
        from braces in Gen.Int[0, 3]
        from hole in Gen.Double[3, 12]
        select new CabinetSizes(width, depth, height, radius, 2, core, inner, pitch, braces, 1, 120, 135, 6, 50, 30, DryingHole: hole);

    private static Project With(double? holeM, Func<Cabinet, Cabinet>? change = null) =>
        VariedProjects.With(DemoProject.Project, c => (change?.Invoke(c) ?? c) with { Openings = c.Openings! with { DryingHoleM = holeM } });

    [Fact]
    public void The_demo_has_as_many_holes_as_are_counted_by_hand()
    {
        // The path is 228 mm square with corners of 22 mm: 874.23 mm, 22 struts 39.737 mm apart, a key in each bay: two strips, 8.48 mm beside the
        // bay's middle. Of a flat side of 184 mm the middle 176 mm count. Lower side: bays at 0, ±39.7 and ±79.5, the first left whole: 8. Upper
        // side: the same with it: 10. Left and right, where bays stand at ±19.9 and ±59.6: 8 each.
        var holes = Cabinet.Value.Facts.Geometry!.DryingHoles;
        Assert.Equal(8 + 10 + 8 + 8, holes.Rows.Count);

        // Inside 298 mm, brace from 145 mm, seats from 142.5 mm, ends of 80 mm; 4 mm from axis to whatever is next: 84 to 138.5 mm and 157 to 214 mm.
        Assert.Equal([91.25, 131.25, 165.5, 205.5], holes.HeightsMm, (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(136, holes.Count);
        Assert.Equal(136 * Math.PI / 4 * 25e-6, holes.OpenM2, 1e-12);
    }

    // A circle, and above 8 mm the corner of a square on a quarter of it: r²(1 + 3π/4).
    [Theory]
    [InlineData(8, 16 * Math.PI)]
    [InlineData(10, 25 * (1 + 3 * Math.PI / 4))]
    public void A_hole_above_8_mm_has_a_roof(double diameter, double areaMm2) =>
        Assert.Equal(areaMm2 * 1e-6, DryingHoles.Of(Cabinet.Value.Job.Sizes with { StrutPitch = 60, DryingHole = diameter }).HoleM2, 1e-12);

    [Fact]
    public void What_the_holes_take_from_the_sleeve_the_cast_fills() =>
        AnyCabinet.Sample(
            sizes =>
            {
                var (with, without) = (CabinetGeometry.Of(sizes), CabinetGeometry.Of(sizes with { DryingHole = 0 }));
                var volume = with.DryingHoles.Count * with.DryingHoles.HoleM2 * sizes.InnerSkin * 1e-3;
                Assert.Equal(volume, without.InnerSleeveM3 - with.InnerSleeveM3, 1e-12);
                Assert.Equal(volume, with.CavityM3 - without.CavityM3, 1e-12);
                Assert.Equal(without.InsideM3, with.InsideM3);
            },
            iter: 30
        );

    [Fact]
    public void Every_hole_goes_through_flat_skin_clear_of_slots_keys_braces_and_of_one_another()
    {
        var seen = 0;
        AnyCabinet.Sample(
            sizes =>
            {
                var holes = DryingHoles.Of(sizes);
                var section = SleeveSection.Of(sizes);
                var skin = sizes.Outline.Inset(sizes.OuterSkin + sizes.Core).ToRegion().Cut(sizes.Outline.Inset(sizes.Wall).ToRegion());
                foreach (var row in holes.Rows)
                {
                    Region Strip(double half, double from, double to) =>
                        Region.Polygon(
                            new[] { (-half, from), (half, from), (half, to), (-half, to) }.Select(c =>
                                (row.X + c.Item1 * row.AlongX + c.Item2 * row.AlongY, row.Y + c.Item1 * row.AlongY - c.Item2 * row.AlongX)
                            )
                        );

                    // From the middle of the core the skin lies inwards.
                    var through = Strip(sizes.DryingHole / 2, -sizes.Core / 2 - sizes.InnerSkin, -sizes.Core / 2);
                    Assert.Equal(sizes.DryingHole * sizes.InnerSkin * 1e-6, through.Intersect(skin).AreaM2, 2e-8);
                    var beside = Strip(sizes.DryingHole / 2 + 1.4, -sizes.Core / 2, 0);
                    Assert.All(section.Lips.Concat(section.InnerKeys), piece => Assert.True(!piece.MayTouch(beside) || piece.Intersect(beside).AreaM2 < 1e-9));
                }

                var inside = sizes.Depth - 2 * sizes.Wall;
                var clear = (inside - 8 * sizes.Braces) / (sizes.Braces + 1);
                var roof = sizes.DryingHole > 8 ? sizes.DryingHole / Math.Sqrt(2) : sizes.DryingHole / 2;
                Assert.All(holes.HeightsMm, at => Assert.InRange(at, 80 + sizes.DryingHole / 2, inside - 80 - roof));
                // Across a brace, which holds the skin, they may be nearer to one another.
                var fronts = Enumerable.Range(1, sizes.Braces).Select(brace => brace * clear + (brace - 1) * 8).ToList();
                Assert.All(
                    holes.HeightsMm.Zip(holes.HeightsMm.Skip(1)).Where(pair => !fronts.Any(front => front > pair.First && front < pair.Second)),
                    pair => Assert.True(pair.Second - pair.First >= Math.Max(40, 3 * sizes.DryingHole) - 1e-9)
                );
                Assert.All(fronts, front => Assert.All(holes.HeightsMm, at => Assert.True(at + roof < front - 2.5 || at - sizes.DryingHole / 2 > front + 8)));
                Interlocked.Add(ref seen, holes.Count);
            },
            iter: 400
        );
        Assert.True(seen > 500, $"{seen} holes were looked at");
    }

    [Fact]
    public void The_drawn_sleeve_is_closed_has_a_way_through_each_hole_and_the_volume_of_the_figures()
    {
        var job = Cabinet.Value.Job with { Named = false, Printer = null };
        var sleeve = PartDrawings.Of(job).Single(p => p.Name == "inner sleeve").Solid;
        var mesh = SolidMesh.Of(sleeve);
        Assert.True(mesh.Watertight);
        Assert.Single(Connections.Pieces(sleeve));

        // A tube is one way through, each hole one more: the genus of its surface (Euler 1758, from memory).
        Assert.Equal(1 + job.Geometry.DryingHoles.Count, MeshReport.Of(mesh.Mesh).Shells.Sum(s => s.GenusCount));
        Assert.InRange(sleeve.VolumeM3 / job.Geometry.InnerSleeveM3, 0.9999, 1.0001);
        Assert.All(Cabinet.Value.Parts.Zip(Cabinet.Value.Meshes), p => Assert.True(p.Second.Watertight, p.First.Name));
        Assert.Empty(InteriorCheck.Of(Cabinet.Value.Job, Cabinet.Value.Parts));
    }

    [Fact]
    public void Between_outer_sleeve_and_tape_the_mix_reaches_every_hole()
    {
        var (g, s) = (Cabinet.Value.Facts.Geometry!, Cabinet.Value.Job.Sizes);

        // The space of the side walls up to the tape, which lies on the inner skin's face.
        var space = Solid.Empty.Add(s.Outline.Inset(s.OuterSkin).ToRegion().Cut(s.Outline.Inset(s.Wall).ToRegion()), s.Wall, s.Depth - s.Wall);
        foreach (var part in Cabinet.Value.Parts.Where(p => p.Name.Contains("sleeve", StringComparison.Ordinal)))
        {
            space = space.Cut(InCabinet.Of(part)!);
        }

        var (row, deep) = (g.DryingHoles.Rows[0], s.Core / 2 + s.InnerSkin / 2);
        var reached = Reach.From(space, row.X, row.Y, s.Wall + g.DryingHoles.HeightsMm[0])!;
        Assert.All(
            g.DryingHoles.Rows,
            at =>
                Assert.All(
                    g.DryingHoles.HeightsMm,
                    height => Assert.True(reached.Contains(at.X - deep * at.AlongY, at.Y + deep * at.AlongX, s.Wall + height), $"{at.X}, {at.Y}, {height}")
                )
        );
    }

    [Fact]
    public void The_cast_dries_sooner_by_the_open_area_and_the_list_has_tape_and_sealant_for_each_hole()
    {
        var (plain, holed) = (new Facts(With(null), DemoDrivers.All), Cabinet.Value.Facts);
        var lids = plain.Geometry!.Rear.Layout.OuterOnly.Sum(c => c.AreaM2);
        Assert.Equal(
            lids / (lids + 136 * Math.PI / 4 * 25e-6) * (holed.Pour.DryInCabinetKg / plain.Pour.DryInCabinetKg)!.Value,
            holed.Pour.DryOutLeastDays!.Value / plain.Pour.DryOutLeastDays!.Value,
            1e-9
        );

        // 5 mm and 10 mm either side of each; dabs of 11 mm and 1 mm.
        Assert.Equal(136 * 0.025, holed.Supplies.Single(l => l.Item == "masking tape").Needed!.Value, 1e-9);
        Assert.Equal(136, holed.Cast.Holes!.Count);
        Assert.Equal(136 * 0.025, holed.Cast.Holes.TapeM, 1e-9);
        Assert.Equal(136 * Math.PI / 4 * 0.011 * 0.011 * 0.001, holed.Cast.Holes.SealantM3, 1e-12);
        Assert.Equal(136 * (11.0 / 6) * (11.0 / 6) * 0.001, HoleClosing.SealantBeadM(136, HoleM), 1e-9);
        Assert.DoesNotContain(plain.Supplies, l => l.Item == "masking tape");
        Assert.Null(plain.Cast.Holes);
    }

    [Fact]
    public void A_row_of_holes_weakens_the_inner_skin_by_what_it_takes_of_its_section()
    {
        // 5 mm of every 40 mm are gone: an eighth. The lifts follow the bulge, so that it is compared for one height.
        Finding Hold(double? holeM) => Appraisal.WithoutRemedies(With(holeM), DemoDrivers.All).Findings.Single(f => f.Id == "pour/skins-bulge");
        var (plain, holed) = (new Facts(With(null), DemoDrivers.All).Pour, Cabinet.Value.Facts.Pour);
        Assert.Equal(plain.SkinBulgeM!.Value / plain.FormPressurePa!.Value / (1 - 1.0 / 8), holed.SkinBulgeM!.Value / holed.FormPressurePa!.Value, 1e-12);
        Assert.True(Hold(HoleM).Value >= Hold(null).Value);

        // The outer skin has no holes: where it is thinner by enough, it decides as before.
        var thin = (double? holeM) => new Facts(With(holeM, c => c with { OuterSkinM = 0.0015 }), DemoDrivers.All).Pour;
        Assert.Equal(thin(null).SkinBulgeM, thin(HoleM).SkinBulgeM);
    }

    [Fact]
    public void A_caution_says_that_an_open_hole_leaks()
    {
        bool Warns(Project project) =>
            Cautions
                .Of(new Facts(project, DemoDrivers.All))
                .Any(c => c.Hazard == Hazard.OpenHoles && c.Sentence.Contains("drying hole", StringComparison.Ordinal));
        Assert.True(Warns(With(HoleM)));
        Assert.False(Warns(With(null)));
        Assert.False(Warns(With(HoleM, c => c with { CoreM = 0 })));
    }

    // Holes of 12 mm want 15 mm of clear skin, a strip of the demo has 12.97 mm; a cabinet 190 mm deep is 158 mm inside, less than its two ends of 80 mm.
    [Theory]
    [InlineData(0.012, 0.33, false)]
    [InlineData(0.005, 0.19, false)]
    [InlineData(0.005, 0.33, true)]
    public void Where_no_hole_has_room_none_is_drawn_and_a_finding_says_so(double holeM, double depthM, bool isDrawn)
    {
        var project = With(holeM, c => c with { Outside = c.Outside! with { DepthM = depthM } });
        Assert.Equal(isDrawn, new Facts(project, DemoDrivers.All).Geometry!.DryingHoles.Count > 0);
        var dry = Appraisal.WithoutRemedies(project, DemoDrivers.All).Findings.Single(f => f.Id == "pour/dry-before-it-is-sealed");
        Assert.Equal(isDrawn, !dry.Because!.Contains("none is drawn", StringComparison.Ordinal));
    }

    [Fact]
    public void A_single_printed_wall_has_no_holes_for_drying() =>
        Assert.Equal(0, new Facts(With(HoleM, c => c with { CoreM = 0 }), DemoDrivers.All).Geometry!.DryingHoles.Count);

    [Fact]
    public void A_negative_number_or_diameter_is_the_caller_s_mistake()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => HoleClosing.TapeM(-1, 0.005));
        Assert.Throws<ArgumentOutOfRangeException>(() => HoleClosing.SealantM3(1, -0.005));
    }
}
