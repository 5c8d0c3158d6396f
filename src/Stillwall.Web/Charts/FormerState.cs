using Stillwall.Figures;

namespace Stillwall.Web.Charts;

/// <summary>The state before the last change, as a pencil line under this one's.</summary>
internal static class FormerState
{
    /// <summary>A chart with the main line of its former state; without one, or where nothing moved, the chart as it is.</summary>
    internal static Chart Of(Chart chart, Chart? former, string name)
    {
        if (former is null || former.Name != chart.Name || former.Up.Unit != chart.Up.Unit)
        {
            return chart;
        }

        var (lines, now) = (Lines(former), Lines(chart));
        if (lines.Count == 0 || lines.SelectMany(l => l.Points).SequenceEqual(now.SelectMany(l => l.Points)))
        {
            return chart;
        }

        var pencil = lines.Select(
            (l, i) => new ChartSeries(i == 0 ? name : "", StyleRole.Pencil, SeriesShape.Line, l.Shape == SeriesShape.Bars ? Tops(l.Points) : l.Points)
        );

        // Bars hide what lies under them.
        var at = lines[0].Shape == SeriesShape.Bars ? chart.Series.Count : chart.Series.TakeWhile(s => s.Role == StyleRole.Band).Count();
        return chart with { Series = [.. chart.Series.Take(at), .. pencil, .. chart.Series.Skip(at)] };
    }

    private static List<ChartSeries> Lines(Chart chart) =>
        [.. chart.Series.Where(s => s is { Role: StyleRole.Main, Shape: SeriesShape.Line or SeriesShape.Bars })];

    // Along the tops of the bars, each a third-octave wide: a twentieth of a decade to either side (IEC 61260-1, base ten).
    private static IReadOnlyList<ChartPoint> Tops(IReadOnlyList<ChartPoint> bars) =>
        [.. bars.SelectMany(b => new[] { b with { X = b.X / Math.Pow(10, 0.05) }, b with { X = b.X * Math.Pow(10, 0.05) } })];
}
