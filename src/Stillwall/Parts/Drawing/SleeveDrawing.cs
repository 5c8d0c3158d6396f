using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>The sleeves, printed standing on their front ends.</summary>
internal static class SleeveDrawing
{
    private const double LetterHeight = 8,
        LettersFromTop = 4,
        NumberHeight = 5;

    // Strips that pieces are cut with are a little wider than they, mm.
    private const double Spare = 0.4;

    /// <summary>The outer sleeve: skin, struts with their windows, keys, grooves for the accent rings.</summary>
    internal static Blank Outer(PartDrawingJob job)
    {
        var (drawn, s) = (SleeveSection.Rooted(job.Sizes), job.Sizes);
        var length = s.Depth - 2 * s.OuterSkin;
        var solid = Solid.Empty.Add(Ring(s, 0, s.OuterSkin), 0, length);
        if (s.Core > 0)
        {
            var narrower = SleeveSection.RootedForSlopes(s);
            solid = Keys(Struts(solid, job, drawn, narrower), job, drawn, narrower, s.Core + s.InnerSkin, onOuter: true);
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

    /// <summary>The inner sleeve: skin with its drying holes, slots that take the struts' heads, keys, seats for the braces.</summary>
    internal static Blank Inner(PartDrawingJob job)
    {
        var (drawn, s) = (SleeveSection.Rooted(job.Sizes), job.Sizes);
        var length = s.Depth - 2 * s.Wall;
        var solid = Solid.Empty.Add(Ring(s, s.OuterSkin + s.Core, s.Wall), 0, length).Add(Region.JoinAll(drawn.Lips), 0, length);
        solid = Keys(solid, job, drawn, SleeveSection.RootedForSlopes(s), 0, onOuter: false);
        solid = Holes(Seats(solid, job), job);
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
        var (x, room) = whole
            ? (s.Width / 2, s.Width - 2 * Math.Max(s.Radius, s.Wall))
            : (s.Width / 2 + job.Geometry.Sleeve.StrutPitch / 4, job.Geometry.Sleeve.StrutPitch / 2);
        return Naming.OnUprightFace(
            solid: piece,
            name: words,
            middleX: x,
            faceY: face,
            foot: top - fromTop - height,
            height: whole ? height : Math.Min(height, NumberHeight),
            room: room,
            layer: job.LayerMm
        );
    }

    private static Solid Struts(Solid solid, PartDrawingJob job, SleeveSection drawn, SleeveSection narrower)
    {
        var (s, pen) = (job.Sizes, SleeveSection.Pen(job.Sizes));
        var places = SleeveSection.StrutPlaces(s).Places;
        var slope = Slopes.Of(
            Region.JoinAll(drawn.Struts),
            Region.JoinAll(narrower.Struts),
            reach => pen.Reach(places, Math.Max(s.Web, BuildUp.HeadWidth) + Spare, reach, onOuter: true),
            SleeveSection.StrutSteps(s),
            job.LayerMm
        );

        // Heights from the bed: the foot stands behind the front core zone, through which its slope climbs.
        return job.Geometry.Struts.SolidLengths().Aggregate(solid, (d, length) => slope.On(d, length.From, s.Core + length.To));
    }

    private static Solid Keys(Solid solid, PartDrawingJob job, SleeveSection drawn, SleeveSection narrower, double foot, bool onOuter)
    {
        var (s, inside) = (job.Sizes, job.Geometry.InsideDepthM * 1e3);
        var end = Math.Min(BuildUp.EndZone, inside / 2);
        var first = inside - 2 * end < 0.001 ? inside : end;
        var (pen, height) = (SleeveSection.Pen(s), BuildUp.KeyHeightIn(s.Core));
        var apex = (BuildUp.KeyFoot - 2 * SleeveSection.SlopeHair) * height / (BuildUp.KeyHead - BuildUp.KeyFoot);
        Slope Of(Func<SleeveSection, IEnumerable<Region>> keys, bool atEnds) =>
            Slopes.Of(
                pieces: Region.JoinAll(keys(drawn)),
                narrower: Region.JoinAll(keys(narrower)),
                within: reach => pen.Reach(SleeveSection.KeyPlaces(s, onOuter, atEnds), BuildUp.KeyHead + Spare, reach, onOuter),
                heights: [height],
                layer: job.LayerMm,
                apex: apex,
                across: KeyGrid.Of(s.Core).Across
            );
        var (few, many) = (Of(d => onOuter ? d.OuterKeys : d.InnerKeys, false), Of(d => onOuter ? d.OuterEndKeys : d.InnerEndKeys, true));

        // The inner sleeve's first keys stand on the bed.
        solid = onOuter ? many.On(solid, foot, foot + first) : solid.Add(many.Pieces, foot, foot + first);
        return first >= inside ? solid : many.On(few.On(solid, foot + end, foot + inside - end), foot + inside - end, foot + inside);
    }

    // The holes of all rows are cut together, step by step: each step is as wide as a hole on average over its height.
    private static Solid Holes(Solid solid, PartDrawingJob job)
    {
        const double past = 0.2;
        var (s, holes) = (job.Sizes, job.Geometry.DryingHoles);
        var inwards = s.Core / 2 + s.InnerSkin + past;
        CrossHole Hole(PathPlace at, double height)
        {
            var (outX, outY) = (at.AlongY, -at.AlongX);
            return new CrossHole(
                at.X - inwards * outX,
                at.Y - inwards * outY,
                height,
                Math.Atan2(outY, outX) * 180 / Math.PI,
                s.InnerSkin + 2 * past,
                holes.DiameterMm
            );
        }

        return holes
            .HeightsMm.SelectMany(height =>
                holes.Rows.SelectMany(at => Hole(at, height).ToSolid(job.LayerMm).Layers).GroupBy(step => (step.BottomMm, step.TopMm))
            )
            .Aggregate(solid, (drawn, step) => drawn.Cut(Region.Apart(step.Select(l => l.Lower)), step.Key.BottomMm, step.Key.TopMm));
    }

    // Eight small ledges before each brace, two on each side of the cabinet.
    private static Solid Seats(Solid solid, PartDrawingJob job)
    {
        var s = job.Sizes;
        var frame = s.Outline.Inset(s.Wall);
        var (across, up) = (frame.Width / 4, frame.Height / 4);
        var (x, z) = (s.Width / 2, s.Height / 2);
        Region Strip(double at, bool upright) =>
            upright
                ? Region.RoundedRectangle(at - BuildUp.SeatWidth / 2, 0, at + BuildUp.SeatWidth / 2, s.Height, 0)
                : Region.RoundedRectangle(0, at - BuildUp.SeatWidth / 2, s.Width, at + BuildUp.SeatWidth / 2, 0);
        var strips = Region.JoinAll([Strip(x - across, true), Strip(x + across, true), Strip(z - up, false), Strip(z + up, false)]);
        var seats = Ring(s, s.Wall, s.Wall + BuildUp.SeatDepth).Intersect(strips);
        var slope = Slopes.Of(seats, seats, reach => Ring(s, s.Wall, s.Wall + reach), [BuildUp.SeatDepth], job.LayerMm);
        return BracesAt(job.Geometry).Aggregate(solid, (drawn, at) => slope.On(drawn, at - BuildUp.SeatDepth));
    }
}
