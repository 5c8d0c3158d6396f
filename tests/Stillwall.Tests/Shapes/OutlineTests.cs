using CsCheck;
using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

public sealed class OutlineTests
{
    [Fact]
    public void Growing_a_rectangle_adds_its_perimeter_and_a_disc() =>
        Gen.Select(Gen.Double[5, 50], Gen.Double[5, 50], Gen.Double[0.5, 10])
            .Sample(
                (w, h, d) =>
                {
                    // Steiner: A + perimeter·d + π d²; the arcs of an offset run inside the true ones, by 20 µm at most.
                    var grown = Region.RoundedRectangle(0, 0, w, h, 0).Offset(d);
                    var steiner = w * h + 2 * (w + h) * d + Math.PI * d * d;
                    Assert.InRange(grown.AreaM2 * 1e6, steiner - 2 * Math.PI * d * 0.02 - 0.1, steiner + 0.1);
                    Assert.Equal(w * h * 1e-6, grown.Offset(-d).AreaM2, 1e-6);
                }
            );

    [Fact]
    public void A_region_that_is_turned_mirrored_or_moved_keeps_its_area_and_comes_back() =>
        Gen.Select(Gen.Int[-5, 5], Gen.Double[-50, 50], Gen.Double[-50, 50])
            .Sample(
                (quarters, x, y) =>
                {
                    var region = Region.Disc(10, 5, 12).Join(Region.RoundedRectangle(10, 5, 18, 9, 0));
                    Assert.Equal(region.AreaM2, region.Turned(quarters).Mirrored(0).Moved(x, y).AreaM2, 1e-15);
                    Assert.Equal(0, region.Turned(quarters).Turned(-quarters).Cut(region).AreaM2);
                    Assert.Equal(0, region.Mirrored(0).Mirrored(0).Moved(x, y).Moved(-x, -y).Cut(region).AreaM2);
                }
            );

    [Fact]
    public void Joining_many_at_once_is_joining_them_one_by_one() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[0, 60], Gen.Double[2, 15])
            .Array[1, 15]
            .Sample(
                discs =>
                {
                    var regions = discs.Select(d => Region.Disc(d.Item1, d.Item2, d.Item3)).ToList();
                    Assert.Equal(regions.Aggregate(Region.Empty, (all, r) => all.Join(r)).AreaM2, Region.JoinAll(regions).AreaM2, 15 * 15 * 1e-3 * 0.7e-6);
                },
                iter: 50
            );

    [Fact]
    public void Letters_have_strokes_of_their_width_and_stand_apart()
    {
        // A stroke of length l and width w has the area l·w, and round ends that add less than π w²/4.
        Assert.Equal(6 * 0.6e-6, Lettering.Text("/", 6 / Math.Sqrt(1 + 4.0 / 9)).AreaM2 / (Math.Sqrt(52) / 6) * (6 / (6 / Math.Sqrt(1 + 4.0 / 9))), 0.5e-6);
        Assert.Equal(26, Lettering.Text("ABCDEFGHIJKLMNOPQRSTUVWXYZ", 6).PieceCount);
        Assert.Equal(12, Lettering.Text("0123456789-.", 6).PieceCount);
        Assert.Equal(Lettering.Text("SLEEVE", 6).AreaM2, Lettering.Text("sleeve", 6).AreaM2);
        Assert.True(Lettering.Text("  ", 6).IsEmpty);
    }

    [Fact]
    public void No_two_letters_look_alike()
    {
        var letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-./".Select(c => Lettering.Text(c.ToString(), 6)).ToList();
        for (var i = 0; i < letters.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Assert.True(2 * letters[i].Join(letters[j]).AreaM2 - letters[i].AreaM2 - letters[j].AreaM2 > 0.4e-6);
            }
        }
    }

    [Fact]
    public void A_line_of_text_is_as_wide_as_its_letters_and_their_gaps()
    {
        var extent = Lettering.Text("HELLO", 12).Extent!.Value;
        Assert.Equal(Lettering.WidthMm("HELLO", 12) + 0.6, extent.Right - extent.Left, 0.01);
        Assert.Equal(12.6, extent.Top - extent.Bottom, 0.01);
    }

    [Fact]
    public void A_name_cut_into_the_foot_of_a_plate_leaves_it_closed()
    {
        var name = Lettering.Text("REAR PLATE 1/2", 6).Mirrored(0).Moved(90, 10);
        var plate = Solid.Empty.Add(Region.RoundedRectangle(0, 0, 100, 30, 5), 0, 3).Cut(name, 0, Lettering.Depth);
        var mesh = SolidMesh.Of(plate);
        Assert.True(mesh.Watertight);
        Assert.Equal(0, mesh.PatchCount);
        Assert.Equal([0], MeshReport.Of(mesh.Mesh).Shells.Select(s => s.GenusCount));
        Assert.Equal(plate.VolumeM3, mesh.Mesh.VolumeM3, 1e-6 * plate.VolumeM3);
    }
}
