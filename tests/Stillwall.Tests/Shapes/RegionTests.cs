using CsCheck;
using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

public sealed class RegionTests
{
    [Fact]
    public void A_disc_has_the_area_of_its_circle() =>
        Gen.Double[0.5, 500].Sample(d => Assert.Equal(Math.PI / 4 * d * d * 1e-6, Region.Disc(0, 0, d).AreaM2, 4e-6 * d * 1e-3 + 1e-12));

    [Fact]
    public void A_rounded_rectangle_has_the_area_of_its_formula() =>
        Gen.Select(Gen.Double[20, 500], Gen.Double[20, 500], Gen.Double[0, 10])
            .Sample((w, h, r) => Assert.Equal((w * h - (4 - Math.PI) * r * r) * 1e-6, Region.RoundedRectangle(0, 0, w, h, r).AreaM2, 2e-9 * (w + h)));

    [Fact]
    public void A_radius_within_the_grid_leaves_the_corners_where_they_are() =>
        Assert.Equal(417 * 273.419 * 1e-6, Region.RoundedRectangle(0, 0, 417, 273.419, 0.0007).AreaM2, 1e-15);

    [Fact]
    public void What_is_cut_and_what_is_common_make_the_whole() =>
        Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], Gen.Double[1, 60])
            .Sample(
                (x, y, d) =>
                {
                    // A crossing point rounded to the 1 µm grid shears an edge of up to 60 mm by 0.7 µm; there are at most eight of them.
                    const double grid = 8 * 0.060 * 0.7e-6 / 2;
                    var (plate, hole) = (Region.RoundedRectangle(-30, -30, 30, 30, 5), Region.Disc(x, y, d));
                    Assert.Equal(plate.AreaM2, plate.Cut(hole).AreaM2 + plate.Intersect(hole).AreaM2, grid);
                    Assert.Equal(plate.AreaM2 + hole.AreaM2, plate.Join(hole).AreaM2 + plate.Intersect(hole).AreaM2, grid);
                }
            );

    [Fact]
    public void A_mirror_image_is_as_large_and_lies_as_far_on_the_other_side() =>
        Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[1, 40])
            .Sample(
                (x, y, mirror) =>
                {
                    var piece = Region.Polygon([(x, y), (x + 9, y + 1), (x + 2, y + 7)]);
                    var image = piece.Mirrored(mirror);
                    Assert.Equal(piece.AreaM2, image.AreaM2);
                    Assert.True(piece.Contains(x + 3, y + 3));
                    Assert.True(image.Contains(2 * mirror - x - 3, y + 3));
                    Assert.Equal(0, image.Mirrored(mirror).Cut(piece).AreaM2);
                }
            );

    [Fact]
    public void Edges_that_have_passed_one_another_leave_nothing() => Assert.Equal(0, Region.RoundedRectangle(5, 0, 4, 10, 1).AreaM2);

    [Fact]
    public void A_negative_radius_is_refused_by_name() =>
        Assert.Contains("radius", Assert.Throws<ArgumentOutOfRangeException>(() => Region.RoundedRectangle(0, 0, 1, 1, -1)).Message, StringComparison.Ordinal);

    [Fact]
    public void Once_round_the_frame_comes_back_to_where_it_began() =>
        Gen.Select(Gen.Double[30, 400], Gen.Double[30, 400], Gen.Double[0, 15])
            .Sample(
                (w, h, r) =>
                {
                    var frame = new RoundedFrame(0, 0, w, h, r);
                    var (start, end) = (frame.At(0), frame.At(frame.Length));
                    Assert.Equal(w / 2, start.X, 1e-9);
                    Assert.Equal(start.X, end.X, 1e-6);
                    Assert.Equal(start.Y, end.Y, 1e-6);
                    // Walking it in small steps measures its length.
                    var walked = Enumerable
                        .Range(0, 4000)
                        .Sum(i =>
                        {
                            var (a, b) = (frame.At(frame.Length * i / 4000), frame.At(frame.Length * (i + 1) / 4000));
                            return Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
                        });
                    Assert.Equal(frame.Length, walked, 0.002 * frame.Length);
                }
            );
}
