using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>The sleeves, printed standing on their front ends.</summary>
internal static class SleeveDrawing
{
    private const double LetterHeight = 8, LettersFromTop = 4, NumberHeight = 5;

    /// <summary>The outer sleeve: skin, struts with their windows, keys, grooves for the accent rings.</summary>
    internal static Blank Outer(PartDrawingJob job)
    {
        var (drawn, s) = (SleeveSection.Rooted(job.Sizes), job.Sizes);
        var length = s.Depth - 2 * s.OuterSkin;
        var solid = Solid.Empty.Add(Ring(s, 0, s.OuterSkin), 0, length);
        Region Within(double reach) => Ring(s, s.OuterSkin - SleeveSection.Root, s.OuterSkin + reach);
        if (s.Core > 0)
        {
            solid = Struts(solid, job, drawn, Within);
            solid = Keys(solid, drawn.OuterKeys, drawn.OuterEndKeys, s.Core + s.InnerSkin, job, Within, false);
        }
        else
        {
            solid = solid.Add(Ring(s, s.OuterSkin, s.Wall), s.InnerSkin, length - s.InnerSkin);
        }

        var groove = Ring(s, 0, s.OuterSkin / 2);
        solid = AccentRings.Places(job).Aggregate(solid, (cut, at) => cut.Cut(groove, at, at + BuildUp.AccentWidth));
        var letters = Math.Min(LetterHeight, s.Core - 2);
        return new Blank(solid, (piece, words, _) => Marked(piece, words, job, s.OuterSkin, (s.Core - letters) / 2, letters));
    }

    /// <summary>The inner sleeve: skin, slots that take the struts' heads, keys, seats for the braces.</summary>
    internal static Blank Inner(PartDrawingJob job)
    {
        var (drawn, s) = (SleeveSection.Rooted(job.Sizes), job.Sizes);
        var length = s.Depth - 2 * s.Wall;
        var solid = Solid.Empty.Add(Ring(s, s.OuterSkin + s.Core, s.Wall), 0, length).Add(Region.JoinAll(drawn.Lips), 0, length);
        solid = Keys(solid, drawn.InnerKeys, drawn.InnerEndKeys, 0, job, reach => Ring(s, s.OuterSkin + s.Core - reach, s.OuterSkin + s.Core + SleeveSection.Root), true);
        solid = Seats(solid, job);
        return new Blank(solid, (piece, words, _) => Marked(piece, words, job, s.Wall, LettersFromTop, LetterHeight));
    }

    /// <summary>Distances of the braces' front sides from the front ends of the inner sleeve, mm.</summary>
    internal static IEnumerable<double> BracesAt(CabinetGeometry geometry) =>
        Enumerable.Range(0, geometry.Sizes.Braces).Select(i => geometry.ClearDepthM * 1e3 * (i + 1) + BuildUp.BraceThickness * i);

    internal static Region Ring(CabinetSizes sizes, double from, double to) => sizes.Outline.Inset(from).ToRegion().Cut(sizes.Outline.Inset(to).ToRegion());

    // The name stands inside, at the rear end of the lower side, where nothing grows out of the skin; further down there is room for a number beside the keys.
    private static Solid Marked(Solid piece, string words, PartDrawingJob job, double face, double fromTop, double height)
    {
        var (s, top) = (job.Sizes, piece.AddedHeights!.Value.Top);
        var whole = words.Any(char.IsLetter);
        var (x, room) = whole ? (s.Width / 2, s.Width - 2 * Math.Max(s.Radius, s.Wall)) : (s.Width / 2 + job.Geometry.Sleeve.StrutPitch / 4, job.Geometry.Sleeve.StrutPitch / 2);
        return Naming.OnUprightFace(piece, words, x, face, top - fromTop - height, whole ? height : Math.Min(height, NumberHeight), room, job.LayerMm);
    }

    private static Solid Struts(Solid solid, PartDrawingJob job, SleeveSection drawn, Func<double, Region> within)
    {
        var core = job.Sizes.Core;
        var full = Region.JoinAll([.. drawn.Webs, .. drawn.Heads]);
        var steps = Slopes.Steps(full, within, core, job.LayerMm);
        foreach (var (from, to) in job.Geometry.Struts.SolidLengths())
        {
            // Heights from the bed: the foot stands behind the front core zone, through which its slope climbs.
            solid = steps.Aggregate(solid, (s, step) => s.Add(step.Region, from + step.From, from + step.To)).Add(full, core + from, core + to);
        }

        return solid;
    }

    private static Solid Keys(Solid solid, IReadOnlyList<Region> along, IReadOnlyList<Region> atEnds, double foot, PartDrawingJob job, Func<double, Region> within, bool onBed)
    {
        var height = BuildUp.KeyHeightIn(job.Sizes.Core);
        var inside = job.Geometry.InsideDepthM * 1e3;
        var end = Math.Min(BuildUp.EndZone, inside / 2);
        var (few, many) = (Region.JoinAll(along), Region.JoinAll(atEnds));
        var first = inside - 2 * end < 0.001 ? inside : end;
        solid = onBed ? solid.Add(many, foot, foot + first) : solid.AddSloped(many, within, height, foot, foot + first, job.LayerMm);
        return first >= inside ? solid
            : solid.AddSloped(few, within, height, foot + end, foot + inside - end, job.LayerMm).AddSloped(many, within, height, foot + inside - end, foot + inside, job.LayerMm);
    }

    // Eight small ledges before each brace, two on each side of the cabinet.
    private static Solid Seats(Solid solid, PartDrawingJob job)
    {
        var s = job.Sizes;
        var frame = s.Outline.Inset(s.Wall);
        var (across, up) = (frame.Width / 4, frame.Height / 4);
        var (x, z) = (s.Width / 2, s.Height / 2);
        Region Strip(double at, bool upright) => upright
            ? Region.RoundedRectangle(at - BuildUp.SeatWidth / 2, 0, at + BuildUp.SeatWidth / 2, s.Height, 0)
            : Region.RoundedRectangle(0, at - BuildUp.SeatWidth / 2, s.Width, at + BuildUp.SeatWidth / 2, 0);
        var strips = Region.JoinAll([Strip(x - across, true), Strip(x + across, true), Strip(z - up, false), Strip(z + up, false)]);
        var seats = Ring(s, s.Wall, s.Wall + BuildUp.SeatDepth).Intersect(strips);
        return BracesAt(job.Geometry).Aggregate(solid, (drawn, at) =>
            drawn.AddSloped(seats, reach => Ring(s, s.Wall, s.Wall + reach), BuildUp.SeatDepth, at - BuildUp.SeatDepth, at, job.LayerMm));
    }
}
