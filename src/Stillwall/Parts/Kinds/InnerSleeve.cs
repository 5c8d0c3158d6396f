using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>The inner sleeve: skin with its drying holes, slots that take the struts' heads, keys, seats for the braces.</summary>
internal sealed class InnerSleeve : Sleeve
{
    private const double LetterHeight = 8,
        LettersFromTop = 4;

    // Heights of drying holes that are told beside the section.
    private const int MostHeights = 4;

    /// <inheritdoc/>
    public override string Name => "inner sleeve";

    internal override int Turn => 20;

    internal override Exploding Exploding => new(70);

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var s = job.Sizes;
        if (s.Core > 0)
        {
            var skin = 2 * (s.OuterSkin + s.Core);
            var (slotsWide, slotsHigh) = job.Geometry.Sleeve.InnerSizeM;
            var size = new PartSize(
                Math.Max(s.Width - skin, slotsWide.InMillimetres()),
                Math.Max(s.Height - skin, slotsHigh.InMillimetres()),
                s.Depth - 2 * s.Wall
            );
            yield return new PartDraft(job.Geometry.InnerSleeveM3, size, () => Draw(job)) { Place = job.FrontDown(s.Wall), CentreMm = s.Depth / 2 };
        }
    }

    internal override PartFeatures Features(FeatureJob job)
    {
        var (s, units) = (job.Sizes, job.Units);
        var pitch = SleeveSection.StrutPlaces(s).Pitch;
        var skin = s.OuterSkin + s.Core;
        var slot = 2 * BuildUp.SlotGap + BuildUp.HeadThickness;
        var seats = job.Job.Geometry.Bracing.FrontsMm;
        var seat = s.Wall + s.Outline.Inset(s.Wall).Width / 4;
        return new PartFeatures
        {
            SectionAcross = [job.Inside(s.Wall), job.Inside(skin)],
            SectionUp =
            [
                .. seats.Select(at => new Length(0, at, skin, s.Wall)),
                .. job.Job.Geometry.DryingHoles.HeightsMm.Take(MostHeights).Select(at => new Length(0, at, skin, s.Wall)),
            ],
            Notes =
            [
                job.Corner(skin),
                new(s.Width - skin, s.Height * 0.62, $"skin {units.Of(s.InnerSkin)}"),
                .. s.Tied
                    ?
                    [
                        new Callout(
                            s.Width / 2 + pitch / 2 + BuildUp.HeadWidth / 2 + BuildUp.SlotGap,
                            skin - slot / 2,
                            $"slot {units.Of(BuildUp.HeadWidth + 2 * BuildUp.SlotGap)} × {units.Of(slot)},",
                            $"mouth {units.Of(s.Web + 2 * BuildUp.SlotGap)}, lips {units.Of(BuildUp.LipThickness)}"
                        ),
                    ]
                    : Array.Empty<Callout>(),
            ],
            SectionNotes =
            [
                .. seats.Count == 0
                    ? Array.Empty<Callout>()
                    :
                    [
                        new Callout(
                            s.Width - seat,
                            seats[0] - BuildUp.SeatDepth / 2,
                            $"{BuildUp.Seats} seats {units.Of(BuildUp.SeatWidth)} wide,",
                            $"{units.Of(BuildUp.SeatDepth)} out, for a brace"
                        ),
                    ],
                .. DryingHole(job),
            ],
        };
    }

    // The one furthest to the right on the upper side, which the section looks at.
    private static IEnumerable<Callout> DryingHole(FeatureJob job)
    {
        var holes = job.Job.Geometry.DryingHoles;
        if (holes.Count > 0 && holes.Rows.Where(r => r.AlongX < -0.5).MaxBy(r => r.X) is { } row)
        {
            yield return new Callout(
                row.X + holes.DiameterMm / 2,
                holes.HeightsMm[0],
                SheetUnits.Many(holes.Count, $"{job.Units.Diameter(holes.DiameterMm)}, to dry,"),
                "taped inside to pour"
            );
        }
    }

    private static Blank Draw(PartJob job)
    {
        var (drawn, s) = (SleeveSection.Rooted(job.Sizes), job.Sizes);
        var length = s.Depth - 2 * s.Wall;
        var solid = Solid.Empty.Add(Ring(s, s.OuterSkin + s.Core, s.Wall), 0, length).Add(Region.JoinAll(drawn.Lips), 0, length);
        solid = Keys(solid, job, drawn, SleeveSection.RootedForSlopes(s), 0, onOuter: false);
        return new Blank(Holes(Seats(solid, job), job), (piece, words, _) => Marked(piece, words, job, s.Wall, LettersFromTop, LetterHeight));
    }

    // The holes of all rows are cut together, step by step: each step is as wide as a hole on average over its height.
    private static Solid Holes(Solid solid, PartJob job)
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
            .Aggregate(solid, (drawn, step) => drawn.Cut(Region.Apart(step.Select(l => l.Region)), step.Key.BottomMm, step.Key.TopMm));
    }

    // Eight small ledges before each brace, two on each side of the cabinet.
    private static Solid Seats(Solid solid, PartJob job)
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
        return job.Geometry.Bracing.FrontsMm.Aggregate(solid, (drawn, at) => slope.On(drawn, at - BuildUp.SeatDepth));
    }
}
