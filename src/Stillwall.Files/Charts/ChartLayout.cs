using System.Globalization;
using Stillwall.Figures;

namespace Stillwall.Files.Charts;

/// <summary>Turns a chart into things to draw: sheet, axes, bands, lines and their labels.</summary>
internal static class ChartLayout
{
    private const double Small = 12;
    private const double Margin = 24;
    private const double TickRoom = 44;

    internal static IReadOnlyList<Mark> Of(Chart chart, double width, double height, ChartTheme theme, double left = 0, double top = 0)
    {
        // A tenth is left for fonts with wider digits.
        var answer = Wrapped(chart.Answer, 14, 0.9 * (width - (2 * Margin))).ToList();
        var plotTop = top + 78 + (20 * answer.Count);
        var plot = new ChartPlot(chart, new Box(left + Margin + TickRoom, plotTop, left + width - Margin - 4, top + height - 58));
        List<Mark> marks =
        [
            .. Head(chart: chart, answer: answer, theme: theme, left: left, top: top, width: width, height: height),
            .. Axes(chart, plot, theme),
        ];
        var placer = new LabelPlacer(plot.Area.Grown(-3));
        foreach (var series in chart.Series)
        {
            marks.AddRange(Drawn(series, plot, theme));
            if (series.Shape == SeriesShape.Line)
            {
                foreach (var part in plot.Clipped(plot.Line(series.Points)))
                {
                    placer.Avoid(part, series.Role == StyleRole.Main ? 10 : 5);
                }
            }
        }

        return [.. marks, .. ChartLabels.Of(chart, plot, placer, theme)];
    }

    private static IEnumerable<Mark> Head(Chart chart, List<string> answer, ChartTheme theme, double left, double top, double width, double height)
    {
        yield return new AreaMark(Rectangle(left, top, left + width, top + height), theme.Sheet);
        yield return new AreaMark(Rectangle(left + 6, top + 6, left + width - 6, top + height - 6), theme.Sheet, theme.Ink, 1.5);
        yield return new TextMark(
            Text: chart.Title,
            At: new Pixel(left + Margin, top + 38),
            Size: 20,
            Anchor: Anchor.Start,
            Colour: theme.Ink,
            Ground: theme.Sheet,
            Bold: true
        );
        for (var i = 0; i < answer.Count; i++)
        {
            yield return new TextMark(answer[i], new Pixel(left + Margin, top + 62 + (20 * i)), 14, Anchor.Start, theme.Ink, theme.Sheet);
        }
    }

    private static IEnumerable<Mark> Axes(Chart chart, ChartPlot plot, ChartTheme theme)
    {
        var (area, across, up) = (plot.Area, chart.Across, chart.Up);
        yield return new StrokeMark(
            [
                .. across.Ticks.Select(t => (IReadOnlyList<Pixel>)[new(plot.X(t), area.Top), new(plot.X(t), area.Bottom)]),
                .. up.Ticks.Select(t => (IReadOnlyList<Pixel>)[new(area.Left, plot.Y(t)), new(area.Right, plot.Y(t))]),
            ],
            theme.Faint,
            1
        );
        yield return new StrokeMark(
            [
                [new(area.Left, area.Top), new(area.Left, area.Bottom)],
            ],
            theme.Rule,
            1
        );
        yield return new StrokeMark(
            [
                [new(area.Left, area.Bottom), new(area.Right, area.Bottom)],
            ],
            theme.Ink,
            1
        );
        TextMark Text(string text, double x, double y, Anchor anchor) => new(text, new Pixel(x, y), Small, anchor, theme.SecondInk, theme.Sheet);
        yield return Text(up.Unit.Length > 0 ? $"{up.Label}, {up.Unit}" : up.Label, area.Left, area.Top - 9, Anchor.Start);
        foreach (var tick in up.Ticks)
        {
            yield return Text(Number(tick), area.Left - 8, plot.Y(tick) + 4, Anchor.End);
        }

        foreach (var (tick, words) in across.Ticks.Zip(across.TickLabels.Count > 0 ? across.TickLabels : [.. across.Ticks.Select(Number)]))
        {
            yield return Text(words, plot.X(tick), area.Bottom + 17, Anchor.Middle);
        }

        var label = Text($"{across.Label}, {across.Unit}", area.Right, area.Bottom + 37, Anchor.End);
        yield return label;
        var taken = TextWidth.BoxOf(label).Grown(8);
        foreach (var note in across.Notes.Where(n => n.X >= across.Low && n.X <= across.High))
        {
            var text = Text(note.Text, Math.Max(plot.X(note.X), area.Left + (TextWidth.Of(note.Text, Small) / 2)), area.Bottom + 37, Anchor.Middle);
            if (!TextWidth.BoxOf(text).Overlaps(taken))
            {
                yield return new StrokeMark(
                    [
                        [new(plot.X(note.X), area.Bottom), new(plot.X(note.X), area.Bottom + 5)],
                    ],
                    theme.SecondInk,
                    1
                );
                yield return text;
            }
        }
    }

    private static IEnumerable<Mark> Drawn(ChartSeries series, ChartPlot plot, ChartTheme theme)
    {
        var (colour, width, dash) = series.Role switch
        {
            StyleRole.Main => (theme.Ink, 2.2, ""),
            StyleRole.Second => (theme.SecondInk, 1.2, ""),
            StyleRole.Pencil => (theme.Pencil, 1.1, "2 2"),
            _ => (theme.SecondInk, 1.4, ""),
        };
        return series.Shape switch
        {
            SeriesShape.Area => [new AreaMark(plot.Ring(series.Points.Concat(series.UpperPoints.Reverse())), theme.Cast)],
            SeriesShape.Bars => series.Points.Select(p => Bar(p, plot, theme)),
            SeriesShape.Strokes =>
            [
                new StrokeMark([.. series.Points.Zip(series.UpperPoints).SelectMany(p => Whisker(p.First, p.Second, plot))], colour, width),
            ],
            _ => plot.Clipped(plot.Line(series.Points)) is { Count: > 0 } parts ? [new StrokeMark(parts, colour, width, dash)] : [],
        };
    }

    private static AreaMark Bar(ChartPoint point, ChartPlot plot, ChartTheme theme)
    {
        // A third-octave is a twentieth of a decade to either side; a tenth of that is left free between bars.
        var reach = Math.Pow(10, 0.9 / 20);
        var (left, right) = (plot.X(point.X / reach), plot.X(point.X * reach));
        return new AreaMark(
            Rectangle(left, Math.Clamp(plot.Y(point.Y), plot.Area.Top, plot.Area.Bottom), right, plot.Area.Bottom),
            theme.Cast,
            theme.CastLine,
            1
        );
    }

    private static IEnumerable<IReadOnlyList<Pixel>> Whisker(ChartPoint low, ChartPoint high, ChartPlot plot)
    {
        var (x, bottom, top) = (plot.X(low.X), Math.Min(plot.Y(low.Y), plot.Area.Bottom), Math.Max(plot.Y(high.Y), plot.Area.Top));
        yield return [new(x, bottom), new(x, top)];
        yield return [new(x - 5, top), new(x + 5, top)];
        yield return [new(x - 5, bottom), new(x + 5, bottom)];
    }

    private static IReadOnlyList<Pixel> Rectangle(double left, double top, double right, double bottom) =>
        [new(left, top), new(right, top), new(right, bottom), new(left, bottom)];

    private static IEnumerable<string> Wrapped(string text, double size, double width)
    {
        var line = "";
        foreach (var word in text.Split(' '))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && TextWidth.Of(longer, size) > width)
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture).Replace('-', '−');
}
