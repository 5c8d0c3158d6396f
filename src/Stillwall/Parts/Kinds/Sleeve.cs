using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A sleeve, printed standing on its front end.</summary>
internal abstract class Sleeve : PartKind
{
    private const double NumberHeight = 5;

    // Strips that pieces are cut with are a little wider than they, mm.
    private protected const double Spare = 0.4;

    private protected Sleeve() { }

    /// <summary>The ring between two insets of the outline.</summary>
    internal static Region Ring(CabinetSizes sizes, double from, double to) => sizes.Outline.Inset(from).ToRegion().Cut(sizes.Outline.Inset(to).ToRegion());

    // The name stands inside, at the rear end of the lower side, where nothing grows out of the skin; further down there is room for a number beside the keys.
    private protected static Solid Marked(Solid piece, string words, PartJob job, double face, double fromTop, double height)
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

    private protected static Solid Keys(Solid solid, PartJob job, SleeveSection drawn, SleeveSection narrower, double foot, bool onOuter)
    {
        var (s, inside) = (job.Sizes, job.Geometry.InsideDepthM.InMillimetres());
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
}
