using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>Draws everything that has to be printed, in the order of <see cref="PartList"/>.</summary>
public static class PartDrawings
{
    /// <summary>Draws the parts, those that are too large for the printer in keyed pieces.</summary>
    /// <param name="job">Cabinet, driver and printer.</param>
    /// <returns>
    /// The parts as they lie on the bed, their names cut into them where there is room, and where they go; none of which an opening leaves nothing.
    /// </returns>
    /// <remarks>
    /// Model: stacks of slabs along each part's print direction. Validity: cabinets that have been drawn. Source: our choice of build-up, see
    /// <see cref="BuildUp"/>.
    /// Accuracy: exact to the 1 µm grid; slopes in steps of two layers.
    /// </remarks>
    public static IReadOnlyList<DrawnPart> Of(PartDrawingJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var blanks = (IEnumerable<(string Name, Blank Blank, Placement? Place)>)[.. Shells(job), .. Braces(job), .. Trims(job), .. Gauges(job)];
        return
        [
            .. blanks
                .SelectMany(b => Pieces.Of(b.Name, job.Named ? b.Blank : Blank.Nameless(b.Blank.Solid), b.Place, job.Printer))
                .Where(part => part.Solid.FootMm is not null),
        ];
    }

    private static IEnumerable<(string, Blank, Placement?)> Shells(PartDrawingJob job)
    {
        var s = job.Sizes;
        if (s.Core <= 0)
        {
            return
            [
                ("sleeve", SleeveDrawing.Outer(job), job.FrontDown(s.OuterSkin)),
                ("front plate", PlateDrawing.FrontOuter(job), job.FrontDown(0)),
                ("rear plate", PlateDrawing.RearOuter(job), PartDrawingJob.RearDown(s.Depth)),
            ];
        }

        return
        [
            ("outer sleeve", SleeveDrawing.Outer(job), job.FrontDown(s.OuterSkin)),
            ("inner sleeve", SleeveDrawing.Inner(job), job.FrontDown(s.Wall)),
            ("front outer plate", PlateDrawing.FrontOuter(job), job.FrontDown(0)),
            ("front inner plate", PlateDrawing.FrontInner(job), job.FrontDown(s.OuterSkin + s.Core)),
            ("rear outer plate", PlateDrawing.RearOuter(job), PartDrawingJob.RearDown(s.Depth)),
            ("rear inner plate", PlateDrawing.RearInner(job), PartDrawingJob.RearDown(s.Depth - s.OuterSkin - s.Core)),
            .. Numbered(
                "lid",
                job.Geometry.Rear.Layout.DryOuts.Select(o =>
                    (SmallParts.Lid(o, s.OuterSkin), (Placement?)Placement.AsPrinted.TurnedAboutX(1).Shifted(o.XMm, s.Depth, o.ZMm))
                )
            ),
        ];
    }

    private static IEnumerable<(string, Blank, Placement?)> Braces(PartDrawingJob job) =>
        Numbered("brace", SleeveDrawing.BracesAt(job.Geometry).Select(at => (PlateDrawing.Brace(job.Sizes), (Placement?)job.FrontDown(job.Sizes.Wall + at))));

    private static IEnumerable<(string, Blank, Placement?)> Trims(PartDrawingJob job)
    {
        var s = job.Sizes;
        var trims =
            job.Sheet is { FlangeM: { } flange, CutoutM: { } cutout } sheet && flange > cutout
                ? PlateLayout
                    .DriverCentres(s)
                    .Select(c =>
                        (
                            SmallParts.TrimRing(job, flange * 1e3, cutout * 1e3),
                            (Placement?)
                                Placement
                                    .AsPrinted.TurnedAboutX(1)
                                    .TurnedAboutZ(2)
                                    .Shifted(c.X, s.Sunk - (sheet.FlangeThicknessM ?? 0) * 1e3 - BuildUp.TrimThickness, c.Z)
                        )
                    )
                : [];
        var rings = AccentRings
            .Places(job)
            .Select(at => (Blank.Nameless(AccentRings.Draw(s, job.Printer)), (Placement?)job.FrontDown(s.OuterSkin + at + BuildUp.SlotGap)));
        var footing = Footing.Of(s, job.Cabinet.Feet);
        var feet = job.Cabinet.Feet is null
            ? []
            : footing.Places(s).Select(c => (SmallParts.Foot(), (Placement?)Placement.AsPrinted.Shifted(c.XMm, c.YMm, -footing.HeightMm)));
        return [.. Numbered("trim ring", trims), .. Numbered("accent ring", rings), .. Numbered("foot", feet)];
    }

    private static IEnumerable<(string, Blank, Placement?)> Gauges(PartDrawingJob job) =>
        job.Sizes.Core <= 0
            ? []
            :
            [
                ("test-bar mould", GaugeDrawing.Mould(), null),
                ("wall coupon", WallCoupon.Of(job.Sizes).Draw(job.LayerMm), null),
                ("calibration strip", GaugeDrawing.Strip(), null),
                ("calibration peg", GaugeDrawing.PegOf(), null),
                .. Numbered(
                    "spacer gauge",
                    Enumerable.Repeat((GaugeDrawing.Spacer(job.Sizes), (Placement?)null), job.Sizes.Core >= BuildUp.LeastSpacerCore ? PartList.Spacers : 0)
                ),
            ];

    private static IEnumerable<(string, Blank, Placement?)> Numbered(string name, IEnumerable<(Blank Blank, Placement? Place)> parts)
    {
        var all = parts.ToList();
        return all.Select((p, i) => (PartList.Numbered(name, i + 1, all.Count), p.Blank, p.Place));
    }
}
