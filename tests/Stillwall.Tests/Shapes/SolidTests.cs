using CsCheck;
using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

public sealed class SolidTests
{
    private static readonly Region Unit = Square(0, 0, 1);

    [Fact]
    public void The_last_shape_that_covers_a_place_decides()
    {
        var (a, b) = (Square(0, 0, 10), Square(5, 0, 10));
        Assert.Equal(0.5e-6 + 1e-6, Solid.Empty.Add(a, 0, 10).Cut(b, 0, 10).Add(b, 0, 10).VolumeM3, 1e-18);
        Assert.Equal(0.5e-6, Solid.Empty.Add(a, 0, 10).Add(b, 0, 10).Cut(b, 0, 10).VolumeM3, 1e-18);
    }

    [Fact]
    public void Slabs_that_do_not_change_are_one()
    {
        var solid = Solid.Empty.Add(Unit, 0, 1).Add(Unit, 1, 2).Add(Unit, 5, 6);
        Assert.Equal([(0.0, 2.0), (5.0, 6.0)], solid.Layers.Select(l => (l.BottomMm, l.TopMm)));
        Assert.Equal((0.0, 6.0), solid.Heights);
    }

    [Fact]
    public void Heights_in_the_wrong_order_are_refused_by_name() =>
        Assert.Contains("to", Assert.Throws<ArgumentOutOfRangeException>(() => Solid.Empty.Add(Unit, 3, 2)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_sliver_narrower_than_two_micrometres_is_dropped()
    {
        var solid = Solid
            .Empty.Add(Square(0, 0, 10), 0, 5)
            .Add(Region.RoundedRectangle(20, 0, 20.001, 10, 0), 0, 5)
            .Add(Region.RoundedRectangle(30, 0, 30.004, 10, 0), 0, 5);
        Assert.Equal(2, Connections.Pieces(solid).Count);
    }

    [Fact]
    public void Pieces_are_what_hangs_together_by_faces()
    {
        // Two towers on a bar are one piece; a block that touches in an edge and one that floats are others.
        var solid = Solid
            .Empty.Add(Region.RoundedRectangle(0, 0, 30, 10, 0), 0, 5)
            .Add(Square(0, 0, 10), 5, 15)
            .Add(Square(18, 0, 10), 5, 15)
            .Add(Square(30, 0, 10), 5, 6)
            .Add(Square(0, 0, 10), 20, 22);
        Assert.Equal([3500e-9, 200e-9, 100e-9], Connections.Pieces(solid).Select(p => p.VolumeM3), (a, b) => Math.Abs(a - b) < 1e-15);
    }

    [Fact]
    public void A_space_shows_which_hollows_open_into_one_another()
    {
        // Two chambers with a door between them, a third without.
        var block = Solid
            .Empty.Add(Region.RoundedRectangle(0, 0, 40, 14, 0), 0, 14)
            .Cut(Square(2, 2, 10), 2, 12)
            .Cut(Square(14, 2, 10), 2, 12)
            .Cut(Region.RoundedRectangle(12, 5, 14, 8, 0), 4, 6)
            .Cut(Square(26, 2, 10), 2, 12);
        var space = Solid.Empty.Add(Region.RoundedRectangle(0, 0, 40, 14, 0), 0, 14).Cut(block);
        Assert.Equal(2012e-9, Reach.From(space, 5, 5, 5)!.VolumeM3, 1e-15);
        Assert.Equal(2012e-9, Reach.From(space, 20, 5, 10)!.VolumeM3, 1e-15);
        Assert.Equal(1000e-9, Reach.From(space, 30, 5, 5)!.VolumeM3, 1e-15);
        Assert.Null(Reach.From(space, 1, 1, 1));
    }

    [Theory]
    [InlineData(6, 0.3)]
    [InlineData(8, 0.25)]
    [InlineData(12, 0.3)]
    [InlineData(35, 0.2)]
    public void A_level_hole_takes_away_the_volume_of_its_cross_section(double diameter, double layer)
    {
        var hole = new CrossHole(10, 50, 40, 90, 20, diameter).ToSolid(layer);
        var r = diameter / 2;
        // A circle; above 8 mm a square of side r stands on one corner over it, less a quarter of the disc: r² − π r²/4.
        var area = Math.PI * r * r + (diameter > 8 ? r * r - Math.PI * r * r / 4 : 0);
        Assert.Equal(area * 20e-9, hole.VolumeM3, 20e-9 * 1e-3 * diameter * 2);
        var heights = hole.Heights!.Value;
        Assert.Equal(40 - r, heights.Bottom, 0.0011);
        Assert.InRange(heights.Top, 40 + (diameter > 8 ? r * Math.Sqrt(2) : r) - layer, 40 + (diameter > 8 ? r * Math.Sqrt(2) : r) + 0.001);
    }

    [Fact]
    public void A_wide_level_hole_overhangs_no_more_than_a_layer_from_one_step_to_the_next_above_its_middle()
    {
        const double layer = 0.3;
        var widths = new CrossHole(0, 0, 30, 0, 20, 20).ToSolid(layer).Layers.Where(l => l.BottomMm >= 30).Select(l => l.Region.Extent!.Value.Top).ToList();
        Assert.True(widths.Count > 40);
        Assert.All(widths.Zip(widths.Skip(1)), w => Assert.InRange(w.First - w.Second, -0.001, layer + 0.002));
    }

    [Fact]
    public void A_sleeve_with_level_holes_through_two_walls_has_a_way_through_for_each()
    {
        var sleeve = Solid.Empty.Add(Region.RoundedRectangle(0, 0, 60, 60, 10), 0, 60).Cut(Region.RoundedRectangle(3, 3, 57, 57, 7), 0, 60);
        var drilled = sleeve.Cut(new CrossHole(-1, 30, 20, 0, 62, 6).ToSolid(0.3)).Cut(new CrossHole(30, -1, 40, 90, 20, 12).ToSolid(0.3));
        var mesh = SolidMesh.Of(drilled);
        Assert.True(mesh.Watertight);
        Assert.Equal([1 + 2 + 1], MeshReport.Of(mesh.Mesh).Shells.Select(s => s.GenusCount));
        Assert.Equal(drilled.VolumeM3, mesh.Mesh.VolumeM3, 1e-6 * drilled.VolumeM3);
    }

    private static Region Square(double x, double y, double side) => Region.RoundedRectangle(x, y, x + side, y + side, 0);
}
