using CsCheck;
using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

public sealed class TaperTests
{
    [Fact]
    public void The_stump_of_a_pyramid_has_the_volume_of_its_formula()
    {
        // h/3·(A₁ + A₂ + √(A₁·A₂)): 10/3·(400 + 100 + 200) = 7000/3 mm³.
        var stump = Solid.Empty.Add(Taper.Frames(new RoundedFrame(0, 0, 20, 20, 0), new RoundedFrame(5, 5, 15, 15, 0)), 0, 10);
        Assert.Equal(7000.0 / 3 * 1e-9, stump.VolumeM3, 1e-18);
        var mesh = Closed(stump, 0);
        Assert.Equal(12, mesh.Triangles.Length);
        Assert.Equal(7000.0 / 3 * 1e-9, mesh.VolumeM3, 1e-18);
    }

    [Fact]
    public void The_stump_of_a_cone_has_the_volume_of_its_formula() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[1, 100], Gen.Double[1, 50])
            .Sample(
                (a, b, h) =>
                {
                    var cone = Solid.Empty.Add(Taper.Discs(60, 60, a, b), 0, h);
                    // The grid: half a micrometre all round, and in height.
                    var widest = Math.Max(a, b) * 1e-3;
                    var grid = 0.5e-6 * Math.PI * widest * (h * 1e-3 + widest / 4);
                    Assert.Equal(Math.PI / 12 * h * (a * a + a * b + b * b) * 1e-9, cone.VolumeM3, grid);
                    Assert.Equal(cone.VolumeM3, Closed(cone, 0).VolumeM3, 1e-6 * cone.VolumeM3 + 1e-6 * grid);
                },
                iter: 100
            );

    [Fact]
    public void A_pointed_cone_is_closed_at_its_tip()
    {
        var cone = Solid.Empty.Add(Taper.Discs(0, 0, 20, 0), 0, 30);
        Assert.Equal(Math.PI / 12 * 30 * 400e-9, Closed(cone, 0).VolumeM3, 1e-9);
        Assert.Equal(1, Closed(cone, 0).Points.Count(p => p.Z == 30_000));
    }

    [Fact]
    public void A_plate_with_a_chamfer_all_round_is_one_body_whose_sides_run_on_from_plate_to_chamfer()
    {
        var frame = new RoundedFrame(0, 0, 200, 100, 30);
        var plate = Solid.Empty.Add(frame.ToRegion(), 0, 5).Add(Taper.Frames(frame, frame.Inset(2)), 5, 7).Cut(Region.Disc(100, 50, 60), -1, 8);
        var mesh = Closed(plate, 1);
        Assert.Equal(plate.VolumeM3, mesh.VolumeM3, 1e-6 * plate.VolumeM3);
        // Two slabs only: the chamfer was not cut in steps, and no sliver lies between plate and chamfer.
        Assert.Equal(2, plate.Layers.Count);
        Assert.True(plate.Layers[1].Tapered);
        // Steiner: an outline moved inwards by t loses length·t − π t²; over the height of a chamfer, length·c²/2 − π c³/3.
        var lost = frame.Length * 2 - Math.PI * 8 / 3;
        Assert.Equal((frame.ToRegion().AreaM2 - Region.Disc(100, 50, 60).AreaM2) * 7e-3 - lost * 1e-9, plate.VolumeM3, 2e-10);
    }

    [Fact]
    public void A_chamfer_deeper_than_the_corners_radius_is_closed()
    {
        var frame = new RoundedFrame(0, 0, 40, 40, 3);
        Closed(Solid.Empty.Add(Taper.Frames(frame, frame.Inset(8)), 0, 8), 0);
    }

    [Fact]
    public void A_countersink_takes_its_cone_away_and_leaves_a_hole_through()
    {
        var plate = Solid.Empty.Add(Region.RoundedRectangle(0, 0, 30, 30, 0), 0, 6).Cut(Region.Disc(15, 15, 4), 0, 4).Cut(Taper.Discs(15, 15, 4, 8), 4, 6);
        var expected = 900 * 6 - Math.PI * 4 * 4 - Math.PI / 12 * 2 * (16 + 32 + 64);
        Assert.Equal(expected * 1e-9, plate.VolumeM3, 2e-11);
        Assert.Equal(plate.VolumeM3, Closed(plate, 1).VolumeM3, 1e-6 * plate.VolumeM3);
    }

    [Fact]
    public void A_taper_that_something_else_cuts_is_drawn_in_steps_and_keeps_its_volume_nearly()
    {
        var stump = Solid.Empty.Add(Taper.Frames(new RoundedFrame(0, 0, 20, 20, 0), new RoundedFrame(5, 5, 15, 15, 0)), 0, 10);
        var halved = stump.Cut(Region.RoundedRectangle(10, -1, 30, 30, 0), -1, 11);
        Assert.All(halved.Layers, l => Assert.False(l.Tapered));
        Assert.Equal(100, halved.Layers.Count);
        // The rule of the middle: a hundred steps of 0.1 mm each miss A″Δ³/24, A″ = 2, of the whole; the half of it here.
        Assert.Equal(stump.VolumeM3 / 2 - 100 * 2 * 1e-3 / 24 / 2 * 1e-9, halved.VolumeM3, 1e-17);
        Assert.Equal(halved.VolumeM3, Closed(halved, 0).VolumeM3, 1e-6 * halved.VolumeM3);
    }

    private static IndexedMesh Closed(Solid solid, int genus)
    {
        var mesh = SolidMesh.Of(solid);
        Assert.True(mesh.Watertight);
        Assert.Equal(0, mesh.PatchCount);
        Assert.Equal([genus], MeshReport.Of(mesh.Mesh).Shells.Select(s => s.GenusCount));
        return mesh.Mesh;
    }
}
