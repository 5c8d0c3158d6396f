using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>The outer sleeve: skin, struts with their windows, keys, grooves for the accent rings.</summary>
internal sealed class OuterSleeve : Sleeve
{
    private const double LetterHeight = 8;

    /// <inheritdoc/>
    public override string Name => "outer sleeve";

    internal override int Turn => 10;

    internal override Exploding Exploding => new(60) { CarriesFeet = true };

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var s = job.Sizes;
        if (s.Core > 0)
        {
            var size = new PartSize(s.Width, s.Height, s.Depth - 2 * s.OuterSkin);
            yield return new PartDraft(job.Geometry.OuterSleeveM3(AccentRing.Count(job)), size, () => Draw(job))
            {
                Place = job.FrontDown(s.OuterSkin),
                CentreMm = s.Depth / 2,
            };
        }
    }

    internal override PartFeatures Features(FeatureJob job)
    {
        var (s, units) = (job.Sizes, job.Units);
        var pitch = SleeveSection.StrutPlaces(s).Pitch;
        var count = SleeveSection.StrutPlaces(s).Places.Count;
        var struts = job.Job.Geometry.Struts;
        var head = s.Wall - s.InnerSkin - (s.Tied ? BuildUp.SlotGap : 0);
        var firstWindow = s.Core + BuildUp.LowestWindow;
        List<Callout> section = [];
        if (struts.Windows > 0)
        {
            section.Add(
                new(
                    s.Width / 2 + pitch / 2,
                    firstWindow + struts.Window / 2,
                    $"windows {units.Of(struts.Window)} high",
                    $"at the heads, {units.Of(BuildUp.WebLength)} apart"
                )
            );
        }

        if (AccentRing.Places(job.Job) is [var first, ..] places)
        {
            section.Add(
                new(
                    s.Width - s.OuterSkin / 2,
                    first + BuildUp.AccentWidth,
                    SheetUnits.Many(places.Count, $"groove {units.Of(BuildUp.AccentWidth)} wide,"),
                    $"{units.Of(s.OuterSkin / 2)} deep"
                )
            );
        }

        return new PartFeatures
        {
            Across = [new(s.Width / 2 - pitch / 2, s.Width / 2 + pitch / 2, s.OuterSkin, s.OuterSkin)],
            SectionAcross = [job.Inside(s.OuterSkin)],
            SectionUp = [.. AccentRing.Grooves(job.Job), .. struts.Windows > 0 ? [new Length(0, firstWindow, 0, s.OuterSkin)] : Array.Empty<Length>()],
            Notes =
            [
                job.Corner(),
                new(s.Width, s.Height * 0.62, $"skin {units.Of(s.OuterSkin)}"),
                new(
                    s.Width / 2 + pitch / 2 + s.Web / 2,
                    s.OuterSkin + s.Core * 0.4,
                    $"{count} struts, web {units.Of(s.Web)}",
                    $"{units.Of(pitch)} apart, {units.Of(head - s.OuterSkin)} high"
                ),
                .. s.Tied
                    ?
                    [
                        new Callout(
                            s.Width / 2 + pitch / 2 + BuildUp.HeadWidth / 2,
                            head - BuildUp.HeadThickness / 2,
                            $"head {units.Of(BuildUp.HeadWidth)} × {units.Of(BuildUp.HeadThickness)}"
                        ),
                    ]
                    : Array.Empty<Callout>(),
            ],
            SectionNotes = section,
        };
    }

    private static Blank Draw(PartJob job)
    {
        var s = job.Sizes;
        var (drawn, narrower) = (SleeveSection.Rooted(s), SleeveSection.RootedForSlopes(s));
        var skin = Solid.Empty.Add(Ring(s, 0, s.OuterSkin), 0, s.Depth - 2 * s.OuterSkin);
        var keyed = Keys(Struts(skin, job, drawn, narrower), job, drawn, narrower, s.Core + s.InnerSkin, onOuter: true);
        var letters = Math.Min(LetterHeight, s.Core - 2);
        return new Blank(
            AccentRing.Grooved(keyed, job),
            (piece, words, _) => Marked(piece, words, job, s.OuterSkin, (s.Core - letters) / 2, letters)
        );
    }

    private static Solid Struts(Solid solid, PartJob job, SleeveSection drawn, SleeveSection narrower)
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
}
