using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>Front and rear plates, each printed with its outer face down.</summary>
internal static class PlateDrawing
{
    /// <summary>The front's outer plate: openings, recesses for the flanges, collars, bosses with their holes, posts, tongue.</summary>
    internal static Blank FrontOuter(PartDrawingJob job)
    {
        var (s, layout) = (job.Sizes, job.Geometry.Front.Layout);
        var plate = Outer(job, layout, FrontTongue(s).Cut(Discs(layout.Bosses.Select(b => b.Grown(BuildUp.TongueGap)))), job.Turned);
        return plate with
        {
            Solid = plate.Solid.Cut(job.Turned(Discs(layout.Recesses)), 0, s.Sunk).Cut(job.Turned(Discs(layout.Pilots)), 0, job.Geometry.PilotDepth),
        };
    }

    /// <summary>The rear's outer plate: terminal, pour opening, vents, openings for drying, collar, posts, tongue.</summary>
    internal static Blank RearOuter(PartDrawingJob job) => Outer(job, job.Geometry.Rear.Layout, Tongue(job.Sizes), r => r);

    /// <summary>The front's inner plate: openings, and four tongues that stand inside the inner sleeve.</summary>
    internal static Blank FrontInner(PartDrawingJob job) => Inner(job, job.Geometry.Front.Layout, job.Turned);

    /// <summary>The rear's inner plate: the terminal's opening and four tongues.</summary>
    internal static Blank RearInner(PartDrawingJob job) => Inner(job, job.Geometry.Rear.Layout, r => r);

    /// <summary>A brace: a frame that slides into the inner sleeve, with a window.</summary>
    internal static Blank Brace(CabinetSizes sizes)
    {
        var (frame, window) = CabinetGeometry.BraceFrames(sizes);
        var face = frame.ToRegion().Cut(window.ToRegion());
        return Blank.NamedOnTop(Solid.Empty.Add(face, 0, BuildUp.BraceThickness), face, BuildUp.BraceThickness);
    }

    /// <summary>The tongue of an outer plate, all round inside the outer sleeve; empty in a thin core.</summary>
    internal static Region Tongue(CabinetSizes sizes)
    {
        var from = sizes.OuterSkin + sizes.JointClearance;
        return sizes.HasTongue ? SleeveDrawing.Ring(sizes, from, from + BuildUp.TongueThickness) : Region.Empty;
    }

    // At the front the struts' feet stand in the way.
    private static Region FrontTongue(CabinetSizes sizes)
    {
        if (!sizes.HasTongue)
        {
            return Region.Empty;
        }

        var (pen, half) = (SleeveSection.Pen(sizes), sizes.Web / 2 + BuildUp.TongueGap);
        return Tongue(sizes).Cut(Region.JoinAll(pen.OnBothSides(SleeveSection.StrutPlaces(sizes).Places, p => [pen.Block(p, -half, half, 0, sizes.Core)])));
    }

    private static Blank Outer(PartDrawingJob job, PlateLayout layout, Region tongue, Func<Region, Region> turn)
    {
        var s = job.Sizes;
        var (openings, cavity) = (Discs(layout.Openings), s.Outline.Inset(s.OuterSkin).ToRegion());
        var solid = Solid.Empty.Add(s.Outline.Inset(0).ToRegion(), 0, s.OuterSkin);
        if (s.Core <= 0)
        {
            solid = Tongued(solid.Add(cavity, s.OuterSkin, s.Wall), s, s.Wall, turn(openings)).Cut(turn(openings), 0, s.Wall);
            return Blank.NamedOnTop(solid, cavity.Cut(turn(openings)).Cut(turn(Discs(layout.Recesses))).Cut(InnerTongues(s)), s.Wall);
        }

        var standing = Region.JoinAll([Discs(layout.Standing).Intersect(cavity), Discs(layout.Posts)]);
        solid = solid
            .Add(turn(standing), s.OuterSkin, s.OuterSkin + s.Core)
            .Add(turn(tongue), s.OuterSkin, s.OuterSkin + BuildUp.TongueHeight)
            .Cut(turn(openings), 0, s.OuterSkin + s.Core)
            .Cut(turn(Discs(layout.OuterOnly)), 0, s.OuterSkin);
        // Under a flange the plate is thin enough without letters.
        var free = s.Outline.Inset(s.OuterSkin + s.Core).ToRegion().Cut(Region.JoinAll([standing, openings, Discs(layout.OuterOnly), Discs(layout.Recesses)]));
        return Blank.NamedOnTop(solid, turn(free), s.OuterSkin);
    }

    private static Blank Inner(PartDrawingJob job, PlateLayout layout, Func<Region, Region> turn)
    {
        var s = job.Sizes;
        var (plate, openings) = (s.Outline.Inset(s.OuterSkin + s.Core).ToRegion(), turn(Discs(layout.Openings)));
        var solid = Tongued(Solid.Empty.Add(plate, 0, s.InnerSkin), s, s.InnerSkin, openings).Cut(openings, 0, s.InnerSkin);
        return Blank.NamedOnTop(
            solid,
            plate.Cut(openings).Cut(SleeveDrawing.Ring(s, s.OuterSkin + s.Core, s.Wall + s.JointClearance + BuildUp.TongueThickness)),
            s.InnerSkin
        );
    }

    private static Solid Tongued(Solid solid, CabinetSizes sizes, double from, Region openings) =>
        solid.Add(InnerTongues(sizes).Cut(openings), from, from + BuildUp.TongueHeight);

    private static Region InnerTongues(CabinetSizes sizes)
    {
        var from = sizes.Wall + sizes.JointClearance;
        var (x, z, half) = (sizes.Width / 2, sizes.Height / 2, BuildUp.InnerTongue / 2);
        var cross = Region.JoinAll([
            Region.RoundedRectangle(x - half, 0, x + half, sizes.Height, 0),
            Region.RoundedRectangle(0, z - half, sizes.Width, z + half, 0),
        ]);
        return SleeveDrawing.Ring(sizes, from, from + BuildUp.TongueThickness).Intersect(cross);
    }

    internal static Region Discs(IEnumerable<Circle> circles) => Region.JoinAll(circles.Distinct().Select(c => c.ToRegion()));
}
