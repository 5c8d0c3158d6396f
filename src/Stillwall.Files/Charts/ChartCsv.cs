using System.Text.RegularExpressions;
using Stillwall.Figures;
using Stillwall.Files.Tables;

namespace Stillwall.Files.Charts;

/// <summary>The points of a chart as a table of numbers.</summary>
public static partial class ChartCsv
{
    /// <summary>
    /// Writes every point of a chart: a column for the axis across, one for each line, one for the former state in pencil where there is one, two for
    /// each band.
    /// </summary>
    /// <param name="chart">The chart.</param>
    /// <returns>
    /// The text: names in snake case with the unit last, numbers in the axes' units; a cell is empty where a line has no point. A chart of points
    /// alone gives its landmarks.
    /// </returns>
    public static string Write(Chart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        var columns = IsCurve(chart) ? Columns(chart) : [(Name(chart.Up.Label, chart.Up.Unit), [.. chart.Landmarks.Select(l => l.At)])];
        // Neighbouring runs of one line share a point.
        var cells = columns.Select(c => c.Points.DistinctBy(p => p.X).ToDictionary(p => p.X, p => p.Y)).ToList();
        return CsvText.Write(
            [Name(chart.Across.Label, chart.Across.Unit), .. columns.Select(c => c.Name)],
            columns
                .SelectMany(c => c.Points.Select(p => p.X))
                .Distinct()
                .Order()
                .Select(x => (IReadOnlyList<double?>)[x, .. cells.Select(c => c.TryGetValue(x, out var y) ? (double?)y : null)])
        );
    }

    private static bool IsCurve(Chart chart) => chart.Across.IsLogarithmic;

    private static List<(string Name, IReadOnlyList<ChartPoint> Points)> Columns(Chart chart)
    {
        var (unit, columns) = (chart.Up.Unit, new List<(string, IReadOnlyList<ChartPoint>)>());
        if (chart.Series.Where(s => s.Role == StyleRole.Main).SelectMany(s => s.Points).ToList() is { Count: > 0 } main)
        {
            columns.Add((Name(chart.Up.Label, unit), main));
        }

        foreach (var series in chart.Series.Where(s => s.Role is StyleRole.Second))
        {
            columns.Add((Name(series.Name, unit), series.Points));
        }

        if (chart.Series.Where(s => s.Role == StyleRole.Pencil).ToList() is { Count: > 0 } pencil)
        {
            columns.Add((Name(pencil[0].Name, unit), [.. pencil.SelectMany(s => s.Points)]));
        }

        foreach (var band in chart.Series.Where(s => s.Role == StyleRole.Band))
        {
            columns.AddRange([(Name("band low", unit), band.Points), (Name("band high", unit), band.UpperPoints)]);
        }

        return columns;
    }

    private static string Name(string words, string unit) => $"{NotPlain().Replace($"{words} {unit}".ToLowerInvariant(), "_").Trim('_')}";

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotPlain();
}
