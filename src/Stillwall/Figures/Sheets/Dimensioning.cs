using Stillwall.Parts;

namespace Stillwall.Figures.Sheets;

/// <summary>
/// Places dimensions beside views in lanes, shorter ones nearer, none over another: after ISO 129-1 (from memory), text over its line and readable
/// from below or from the right.
/// </summary>
internal static class Dimensioning
{
    internal const double Lane = 6.5,
        FirstLane = 8,
        Gap = 0.8,
        Past = 1.5,
        Outside = 4.5;

    /// <summary>Room that lanes take beside a view, mm.</summary>
    internal static double Room(IReadOnlyList<Length> lengths, SheetUnits units, double scale) =>
        lengths.Count == 0 ? 3 : FirstLane + (Lanes(lengths, units, scale).Max(l => l.Lane) + 1) * Lane - Lane + 3;

    /// <summary>How far a figure that does not fit between its arrows reaches past the greater end of a view, mm.</summary>
    internal static double Overhang(IReadOnlyList<Length> lengths, SheetUnits units, double scale, double end) =>
        lengths
            .Select(l =>
                (l.To - end) * scale
                + (SheetText.WidthMm(Label(l, units), SheetPen.Small) is var width && (l.To - l.From) * scale >= width + 1 ? 0 : Outside + 1 + width)
            )
            .DefaultIfEmpty(0)
            .Max();

    /// <summary>Dimensions under a view.</summary>
    internal static void Below(SheetPen pen, SheetView view, IReadOnlyList<Length> lengths, SheetUnits units)
    {
        foreach (var (length, lane) in Lanes(lengths, units, view.ScaleRatio))
        {
            var y = view.BottomMm + FirstLane + lane * Lane;
            var (a, b) = (view.X(length.From), view.X(length.To));
            pen.Group(
                "dimension",
                [
                    SheetPen.Line(SheetLine.Thin, new(a, view.Y(length.EdgeFrom) + Gap), new(a, y + Past)),
                    SheetPen.Line(SheetLine.Thin, new(b, view.Y(length.EdgeTo) + Gap), new(b, y + Past)),
                    .. Across(a, b, Label(length, units), t => new SheetPoint(t, y), (dt, d) => (dt, d), upright: false),
                ]
            );
        }
    }

    /// <summary>Dimensions to the left of a view.</summary>
    internal static void AtLeft(SheetPen pen, SheetView view, IReadOnlyList<Length> lengths, SheetUnits units)
    {
        foreach (var (length, lane) in Lanes(lengths, units, view.ScaleRatio))
        {
            var x = view.LeftMm - FirstLane - lane * Lane;
            var (a, b) = (-view.Y(length.From), -view.Y(length.To));
            pen.Group(
                "dimension",
                [
                    SheetPen.Line(SheetLine.Thin, new(view.X(length.EdgeFrom) - Gap, -a), new(x - Past, -a)),
                    SheetPen.Line(SheetLine.Thin, new(view.X(length.EdgeTo) - Gap, -b), new(x - Past, -b)),
                    .. Across(a, b, Label(length, units), t => new SheetPoint(x, -t), (dt, d) => (d, -dt), upright: true),
                ]
            );
        }
    }

    /// <summary>Notes in a column at the right of a view, in the order of the places they belong to.</summary>
    internal static void AtRight(SheetPen pen, SheetView view, IReadOnlyList<Callout> callouts, double lowest)
    {
        const double LineStep = 3.6,
            Apart = 2.6;
        var x = view.RightMm + 12;
        var sorted = callouts.OrderBy(c => view.Y(c.At.V)).ThenBy(c => view.X(c.At.U)).ToList();
        var total = sorted.Sum(c => c.Lines.Count * LineStep + Apart);
        var y = Math.Max(view.TopMm - 2, Math.Min(lowest - total, (view.TopMm + view.BottomMm) / 2 - total / 2));
        foreach (var callout in sorted)
        {
            var (tip, shelf) = (view.At(callout.At.U, callout.At.V), y + LineStep);
            var width = callout.Lines.Max(l => SheetText.WidthMm(l, SheetPen.Small));
            var (dx, dy) = (tip.XMm - (x - 3), tip.YMm - (shelf + 0.9));
            var length = Math.Sqrt(dx * dx + dy * dy);
            pen.Group(
                "leader",
                [
                    SheetPen.Line(SheetLine.Thin, tip, new(x - 3, shelf + 0.9), new(x + width, shelf + 0.9)),
                    SheetPen.Arrow(tip, dx / length, dy / length),
                    .. callout.Lines.Select((line, i) => new SheetText(line, new SheetPoint(x, shelf + (i == 0 ? 0 : 0.9) + i * LineStep), SheetPen.Small)),
                ]
            );
            y += callout.Lines.Count * LineStep + Apart;
        }
    }

    /// <summary>Width that a column of notes takes, mm.</summary>
    internal static double NotesWidth(IReadOnlyList<Callout> callouts) =>
        callouts.Count == 0 ? 8 : 15 + callouts.Max(c => c.Lines.Max(l => SheetText.WidthMm(l, SheetPen.Small)));

    /// <summary>Height that a column of notes takes, mm.</summary>
    internal static double NotesHeight(IReadOnlyList<Callout> callouts) => callouts.Sum(c => c.Lines.Count * 3.6 + 2.6);

    private static string Label(Length length, SheetUnits units) => units.Of(length.To - length.From) + length.Suffix;

    // Line, arrows and text along t; the text beyond the greater end where it does not fit between the arrows.
    private static IEnumerable<SheetMark> Across(
        double a,
        double b,
        string label,
        Func<double, SheetPoint> at,
        Func<double, double, (double X, double Y)> turn,
        bool upright
    )
    {
        var width = SheetText.WidthMm(label, SheetPen.Small);
        var (fits, inside) = (b - a >= width + 1, b - a >= 2 * SheetPen.ArrowLength + 1);
        var (from, to) = inside ? (a, b) : (a - Outside, b + Outside);
        var textAt = fits ? (a + b) / 2 : (inside ? b : to) + 0.6;
        to = fits ? to : textAt + width;
        var (ax, ay) = turn(inside ? -1 : 1, 0);
        var (ox, oy) = turn(0, -0.9);
        var place = at(textAt);
        return
        [
            SheetPen.Line(SheetLine.Thin, at(from), at(to)),
            SheetPen.Arrow(at(a), ax, ay),
            SheetPen.Arrow(at(b), -ax, -ay),
            new SheetText(label, new SheetPoint(place.XMm + ox, place.YMm + oy), SheetPen.Small, fits ? SheetAnchor.Middle : SheetAnchor.Start, upright),
        ];
    }

    // Shorter lengths nearer to the view; a lane holds several that keep clear of one another.
    private static List<(Length Length, int Lane)> Lanes(IReadOnlyList<Length> lengths, SheetUnits units, double scale)
    {
        var (lanes, placed) = (new List<List<(double From, double To)>>(), new List<(Length Length, int Lane)>());
        foreach (var length in lengths.OrderBy(l => l.To - l.From).ThenBy(l => l.From))
        {
            var width = SheetText.WidthMm(Label(length, units), SheetPen.Small);
            var (a, b) = (length.From * scale, length.To * scale);
            var inside = b - a >= 2 * SheetPen.ArrowLength + 1;
            var taken = (
                From: (inside ? a : a - Outside) - 0.5,
                To: b - a >= width + 1 ? (inside ? b : b + Outside) + 0.5 : b + (inside ? 0 : Outside) + width + 1.5
            );
            var lane = lanes.FindIndex(l => l.TrueForAll(t => t.To <= taken.From + 1 || t.From >= taken.To - 1));
            if (lane < 0)
            {
                lane = lanes.Count;
                lanes.Add([]);
            }

            lanes[lane].Add(taken);
            placed.Add((length, lane));
        }

        return placed;
    }
}
