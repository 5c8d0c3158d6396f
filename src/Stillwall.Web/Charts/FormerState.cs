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

        var lines = former.Series.Where(s => s is { Role: StyleRole.Main, Shape: SeriesShape.Line }).ToList();
        var now = chart.Series.Where(s => s is { Role: StyleRole.Main, Shape: SeriesShape.Line }).ToList();
        if (lines.Count == 0 || lines.SelectMany(l => l.Points).SequenceEqual(now.SelectMany(l => l.Points)))
        {
            return chart;
        }

        var pencil = lines.Select((l, i) => new ChartSeries(i == 0 ? name : "", StyleRole.Pencil, SeriesShape.Line, l.Points));
        var at = chart.Series.TakeWhile(s => s.Role == StyleRole.Band).Count();
        return chart with { Series = [.. chart.Series.Take(at), .. pencil, .. chart.Series.Skip(at)] };
    }
}
