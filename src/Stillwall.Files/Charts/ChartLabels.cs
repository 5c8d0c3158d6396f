using Stillwall.Figures;

namespace Stillwall.Files.Charts;

/// <summary>Limits, upright lines, landmarks, and all labels: on the lines, not in a legend.</summary>
internal static class ChartLabels
{
    private const double Size = 13;
    private const double Radius = 4;

    internal static IEnumerable<Mark> Of(Chart chart, ChartPlot plot, LabelPlacer placer, ChartTheme theme)
    {
        List<Mark> lines = [.. chart.Limits.SelectMany(l => Limit(l, plot, placer, theme)), .. chart.Rules.Select(r => Rule(r, plot, placer, theme))];
        foreach (var bars in chart.Series.Where(s => s.Shape is SeriesShape.Bars or SeriesShape.Strokes))
        {
            AvoidBars(bars, plot, placer);
        }

        List<Mark> marks = [.. chart.Landmarks.SelectMany(l => Sign(plot.At(l.At), l.Mark, theme))];
        foreach (var landmark in chart.Landmarks)
        {
            placer.Avoid(Around(plot.At(landmark.At)));
        }

        List<TextMark?> texts =
        [
            .. chart
                .Landmarks.Where(l => l.Label.Length > 0)
                .OrderBy(l => l.MayDropLabel)
                .Select(l => placer.Place(Beside(plot.At(l.At), l.Label, theme.Ink, theme), l.MayDropLabel)),
            .. chart.Limits.Select(l => placer.Place(PastEdge(l, plot, theme))),
            .. chart.Rules.Select(r => placer.Place(BesideRule(r, plot, theme))),
            .. chart.Series.Reverse().Where(s => s.Name.Length > 0 && s.Shape != SeriesShape.Bars).Select(s => placer.Place(Along(s, chart, plot, theme))),
        ];
        return [.. lines, .. marks, .. texts.OfType<TextMark>()];
    }

    private static IEnumerable<Mark> Limit(ChartLimit limit, ChartPlot plot, LabelPlacer placer, ChartTheme theme)
    {
        var edge = plot.Line(limit.Edge);
        var hatch = Hatch.Of(edge, plot.Ring(limit.Region));
        placer.Avoid(edge, 12);
        foreach (var line in hatch)
        {
            placer.Avoid(line, 4);
        }

        if (hatch.Count > 0)
        {
            yield return new StrokeMark(hatch, theme.Fails, 0.8);
        }

        yield return new StrokeMark(plot.Clipped(edge), theme.Fails, 1.4);
    }

    private static StrokeMark Rule(ChartRule rule, ChartPlot plot, LabelPlacer placer, ChartTheme theme)
    {
        IReadOnlyList<Pixel> line = [new(plot.X(rule.X), plot.Area.Top), new(plot.X(rule.X), plot.Area.Bottom)];
        placer.Avoid(line, 10);
        return new StrokeMark([line], theme.SecondInk, 1, "4 3");
    }

    // A label on a bar would need the bar's colour for its ground; it stands beside or above.
    private static void AvoidBars(ChartSeries series, ChartPlot plot, LabelPlacer placer)
    {
        foreach (var (low, k) in series.Points.Select((p, k) => (plot.At(p), k)))
        {
            var end = series.Shape == SeriesShape.Bars ? plot.Area.Bottom : plot.At(series.UpperPoints[k]).Y;
            var across = series.Shape == SeriesShape.Bars ? new[] { -24.0, -12, 0, 12, 24 } : [0];
            foreach (var x in across)
            {
                placer.Avoid([new(low.X + x, low.Y), new(low.X + x, end)], 8);
            }
        }
    }

    private static IEnumerable<Mark> Sign(Pixel at, LandmarkMark mark, ChartTheme theme) =>
        mark switch
        {
            LandmarkMark.Holds => [new DiscMark(at, Radius + 1, theme.Holds, theme.Holds, 1.4)],
            LandmarkMark.Tight =>
            [
                new DiscMark(at, Radius + 1, theme.Sheet, theme.Tight, 1.4),
                new AreaMark(
                    [
                        .. Enumerable
                            .Range(0, 13)
                            .Select(k => new Pixel(at.X - ((Radius + 1) * Math.Sin(Math.PI * k / 12)), at.Y - ((Radius + 1) * Math.Cos(Math.PI * k / 12)))),
                    ],
                    theme.Tight
                ),
            ],
            LandmarkMark.Fails => [new AreaMark([new(at.X, at.Y - 6), new(at.X + 5.5, at.Y + 4), new(at.X - 5.5, at.Y + 4)], theme.Fails)],
            LandmarkMark.Unknown => [new DiscMark(at, Radius + 1, theme.Sheet, theme.Unknown, 1.4)],
            _ => [new DiscMark(at, Radius, theme.Sheet, theme.Ink, 1.4)],
        };

    private static Box Around(Pixel spot) => new(spot.X - Radius - 1, spot.Y - Radius - 1, spot.X + Radius + 1, spot.Y + Radius + 1);

    private static TextMark Text(string text, double x, double y, Anchor anchor, string colour, ChartTheme theme) =>
        new(text, new Pixel(x, y), Size, anchor, colour, theme.Sheet);

    private static IEnumerable<TextMark> Beside(Pixel at, string label, string colour, ChartTheme theme) =>
        from far in new[] { 10.0, 24, 40 }
        from place in new[]
        {
            Text(label, at.X + 10, at.Y + far + 6, Anchor.Start, colour, theme),
            Text(label, at.X + 10, at.Y - far + 4, Anchor.Start, colour, theme),
            Text(label, at.X - 10, at.Y - far + 4, Anchor.End, colour, theme),
            Text(label, at.X - 10, at.Y + far + 6, Anchor.End, colour, theme),
            Text(label, at.X, at.Y - far - 4, Anchor.Middle, colour, theme),
            Text(label, at.X, at.Y + far + 10, Anchor.Middle, colour, theme),
            Text(label, at.X + 10, at.Y + 4, Anchor.Start, colour, theme),
            Text(label, at.X - 10, at.Y + 4, Anchor.End, colour, theme),
        }
        select place;

    // Past the hatch, beginning at one of several places along the edge; for a steep edge beside it.
    private static IEnumerable<TextMark> PastEdge(ChartLimit limit, ChartPlot plot, ChartTheme theme)
    {
        var edge = plot.Line(limit.Edge);
        var region = plot.Ring(limit.Region);
        var under = region.Average(p => p.Y) > edge.Average(p => p.Y);
        var (from, to) = (edge.Min(p => p.X), edge.Max(p => p.X));
        foreach (var far in new[] { 8.0, 22, 38, 60 })
        {
            foreach (var share in new[] { 0.3, 0.5, 0.15, 0.7, 0.85, 0 })
            {
                var x = from + (share * (to - from));
                var y = HeightAt(edge, x);
                yield return Text(limit.Name, x, under ? y + Hatch.DepthPx + far + 8 : y - Hatch.DepthPx - far, Anchor.Start, theme.Fails, theme);
                yield return Text(limit.Name, x, under ? y + Hatch.DepthPx + far + 8 : y - Hatch.DepthPx - far, Anchor.Middle, theme.Fails, theme);
            }
        }
    }

    private static IEnumerable<TextMark> BesideRule(ChartRule rule, ChartPlot plot, ChartTheme theme) =>
        from share in new[] { 0.14, 0.25, 0.4, 0.55, 0.7, 0.85 }
        let y = plot.Area.Bottom - (share * (plot.Area.Bottom - plot.Area.Top))
        from side in new[] { (X: plot.X(rule.X) + 7, Anchor: Anchor.Start), (X: plot.X(rule.X) - 7, Anchor: Anchor.End) }
        select Text(rule.Label, side.X, y, side.Anchor, theme.SecondInk, theme);

    private static IEnumerable<TextMark> Along(ChartSeries series, Chart chart, ChartPlot plot, ChartTheme theme)
    {
        var colour =
            series.Role == StyleRole.Main ? theme.Ink
            : series.Role == StyleRole.Pencil ? theme.Pencil
            : theme.SecondInk;
        var line = series.Shape is SeriesShape.Strokes ? plot.Line(series.UpperPoints) : [.. plot.Clipped(plot.Line(series.Points)).SelectMany(p => p)];
        if (line.Count < 2)
        {
            yield break;
        }

        var (from, to) = (line[0].X, line[^1].X);
        var others = chart.Series.Where(s => s != series && s.Shape == SeriesShape.Line).Select(s => plot.Line(s.Points)).Where(l => l.Count > 1).ToList();
        var shares = new[] { 0.5, 0.7, 0.3, 0.9, 0.15, 1.0, 0.4, 0.6, 0.8, 0 }.OrderByDescending(s => Apart(line, from + (s * (to - from)), others)).ToList();
        foreach (var far in new[] { 8.0, 20, 34, 56, 84 })
        {
            foreach (var share in shares)
            {
                var x = from + (share * (to - from));
                var y = HeightAt(line, x);
                foreach (var anchor in new[] { Anchor.Start, Anchor.End, Anchor.Middle })
                {
                    var beside =
                        anchor == Anchor.Start ? x + 6
                        : anchor == Anchor.End ? x - 6
                        : x;
                    yield return Text(series.Name, beside, y - far, anchor, colour, theme);
                    yield return Text(series.Name, beside, y + far + 9, anchor, colour, theme);
                }
            }
        }
    }

    // How far the line is from the next at one place, in steps of 3 px and no more than 24: nearer ones could be mistaken for each other.
    private static double Apart(IReadOnlyList<Pixel> line, double x, List<IReadOnlyList<Pixel>> others)
    {
        var y = HeightAt(line, x);
        return others.Where(o => x >= o[0].X && x <= o[^1].X).Select(o => Math.Floor(Math.Min(24, Math.Abs(HeightAt(o, x) - y)) / 3)).DefaultIfEmpty(8).Min();
    }

    private static double HeightAt(IReadOnlyList<Pixel> line, double x)
    {
        for (var i = 1; i < line.Count; i++)
        {
            if (x <= line[i].X && line[i].X > line[i - 1].X)
            {
                return line[i - 1].Y + ((line[i].Y - line[i - 1].Y) * Math.Clamp((x - line[i - 1].X) / (line[i].X - line[i - 1].X), 0, 1));
            }
        }

        return line[^1].Y;
    }
}
