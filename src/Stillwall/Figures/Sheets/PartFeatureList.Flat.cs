using Stillwall.Cabinets;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;

namespace Stillwall.Figures.Sheets;

/// <summary>Plates, braces, rings and trial pieces.</summary>
internal sealed partial class PartFeatureList
{
    private PartFeatures Plate(bool outer, PlateLayout layout, Func<Circle, Circle> turn)
    {
        var edge = Edge(outer);
        var thick = outer
            ? s.Core > 0
                ? s.OuterSkin
                : s.Wall
            : s.InnerSkin;
        List<Callout> notes = [Corner(edge)];
        if (outer && s.Core > 0 && layout.Posts.Count > 0)
        {
            var post = layout.Posts.Select(turn).OrderByDescending(p => p.XMm).ThenBy(p => p.ZMm).First();
            notes.Add(
                new(
                    post.XMm + post.DiameterMm / 2,
                    post.ZMm,
                    SheetUnits.Many(layout.Posts.Count, $"post {units.Diameter(BuildUp.Post)}, {units.Of(s.Core)} high")
                )
            );
        }

        if (outer && s.Core > 0 && s.HasTongue)
        {
            notes.Add(
                new(
                    s.Width - s.OuterSkin - s.JointClearance - BuildUp.TongueThickness / 2,
                    s.Height * 0.47,
                    $"tongue {units.Of(BuildUp.TongueThickness)}, {units.Of(s.JointClearance)} clear of the sleeve"
                )
            );
        }

        if (!outer || s.Core <= 0)
        {
            notes.Add(
                new(
                    s.Width - s.Wall - s.JointClearance - BuildUp.TongueThickness / 2,
                    s.Height * 0.47,
                    $"4 tongues {units.Of(BuildUp.InnerTongue)} × {units.Of(BuildUp.TongueThickness)},",
                    $"{units.Of(s.JointClearance)} clear of the sleeve"
                )
            );
        }

        return new PartFeatures
        {
            SectionUp =
            [
                new(0, thick, edge, edge),
                .. !outer || s.HasTongue || s.Core <= 0
                    ? [new Length(thick, thick + BuildUp.TongueHeight, edge, edge + s.JointClearance)]
                    : Array.Empty<Length>(),
            ],
            Notes = notes,
        };
    }

    private PartFeatures Brace()
    {
        var (frame, window) = CabinetGeometry.BraceFrames(s);
        return new PartFeatures
        {
            SectionAcross = [new(frame.Left, window.Left, 0, 0), new(window.Left, window.Right, 0, 0)],
            Up = [new(window.Bottom, window.Top, frame.Left, frame.Left)],
            Notes =
            [
                new(frame.Right - (1 - Math.Sqrt(0.5)) * frame.Radius, frame.Top - (1 - Math.Sqrt(0.5)) * frame.Radius, $"R{units.Of(frame.Radius)}"),
                new(
                    window.Right - (1 - Math.Sqrt(0.5)) * window.Radius,
                    window.Top - (1 - Math.Sqrt(0.5)) * window.Radius,
                    window.Radius > 0 ? $"window, R{units.Of(window.Radius)}" : "window, sharp corners"
                ),
                new(frame.Right, s.Height * 0.4, $"{units.Of(s.JointClearance / 2)} clear of the sleeve"),
            ],
        };
    }

    private PartFeatures TrimRing()
    {
        var (flange, cutout) = ((job.Facts.Sheet?.FlangeM ?? 0) * 1e3, (job.Facts.Sheet?.CutoutM ?? 0) * 1e3);
        var (pocket, deep) = SmallParts.HeadPocket(s.Bolt);
        var screws = s.Bolt > 0 && s.BoltCircle > 0 ? s.Bolts : 0;
        var circles = Enumerable
            .Range(0, screws)
            .Select(i => 2 * Math.PI * (i + 0.5) / s.Bolts)
            .Select(a => new Circle(-s.BoltCircle / 2 * Math.Cos(a), s.BoltCircle / 2 * Math.Sin(a), pocket))
            .ToList();
        var low = circles.OrderByDescending(c => c.XMm).ThenBy(c => c.ZMm).FirstOrDefault();
        return new PartFeatures
        {
            Notes =
            [
                Round(new Circle(0, 0, flange), units.Diameter(flange)),
                Round(new Circle(0, 0, cutout), units.Diameter(cutout)),
                .. low is null
                    ? Array.Empty<Callout>()
                    :
                    [
                        new Callout(
                            low.XMm + pocket / 2,
                            low.ZMm,
                            SheetUnits.Many(screws, $"{units.Diameter(pocket)} on {units.Diameter(s.BoltCircle)},"),
                            $"{units.Of(deep)} deep"
                        ),
                    ],
            ],
            Centres = [new Circle(0, 0, flange), .. circles],
            IsRound = true,
            BoltCircles = screws > 0 ? [new Circle(0, 0, s.BoltCircle)] : [],
        };
    }

    private static PartFeatures Mould()
    {
        var (length, width, deep) = (PartList.TestBarM[0] * 1e3, PartList.TestBarM[1] * 1e3, PartList.TestBarM[2] * 1e3);
        var wall = PartList.MouldWallM * 1e3;
        return new PartFeatures
        {
            SectionAcross = [new(wall, wall + length, 0, 0)],
            Up = [new(wall, wall + width, 0, 0)],
            SectionUp = [new(wall, wall + deep, 0, 0)],
        };
    }

    private PartFeatures Coupon()
    {
        var (side, skin) = (PartList.CouponM * 1e3, s.OuterSkin + s.Core);
        var pitch = SleeveSection.StrutPlaces(s).Pitch;
        return new PartFeatures
        {
            Across = pitch < side / 2 ? [new(0, pitch, 0, 0)] : [],
            Up =
            [
                new(0, s.OuterSkin, -side / 2, -side / 2),
                new(s.OuterSkin, skin, -side / 2, -side / 2),
                .. s.InnerSkin > 0 ? [new Length(skin, s.Wall, -side / 2, -side / 2)] : Array.Empty<Length>(),
            ],
            SectionUp = [new(0, PartList.MouldWallM * 1e3, -side / 2, -side / 2)],
            CutAt = s.OuterSkin + s.Core / 2,
        };
    }

    private PartFeatures Strip() =>
        new()
        {
            Notes = [new(75 + 5.4, 12, "holes from the left, square:", string.Join(", ", Enumerable.Range(1, 5).Select(i => units.Of(10 + 0.2 * i))))],
            Across = [new(10, 30, 10 - 5.1, 10 - 5.2)],
        };
}
