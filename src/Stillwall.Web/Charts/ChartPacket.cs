using System.Runtime.InteropServices;
using Stillwall.Figures;

namespace Stillwall.Web.Charts;

/// <summary>A chart on its way to the page: what is written as words and single numbers, and all points as one run of bytes.</summary>
/// <param name="Layout">Names, axes, and how many points of each line follow.</param>
/// <param name="Points">32-bit floats: of each series x, y and upper y; of each limit the edge's x and y, the region's x and y.</param>
internal sealed record ChartPacket(ChartLayout Layout, byte[] Points)
{
    internal static ChartPacket Of(Chart chart)
    {
        var floats = new List<float>();
        var series = chart.Series.Select((s, i) => Packed(s, i, floats)).ToList();
        var limits = chart.Limits.Select(l => Packed(l, floats)).ToList();
        var layout = new ChartLayout(
            Name: chart.Name,
            Across: Axis(chart.Across),
            Up: Axis(chart.Up),
            Series: series,
            Limits: limits,
            Landmarks: [.. chart.Landmarks.Select(l => new LandmarkLayout(l.At.X, l.At.Y, l.Label, l.Name, Word(l.Mark), l.MayDropLabel))],
            Rules: [.. chart.Rules.Select(r => new RuleLayout(r.X, r.Label))]
        );
        return new ChartPacket(layout, MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(floats)).ToArray());
    }

    /// <summary>Series that a check box switches together have one key: the runs of a line that changes its reason are one line.</summary>
    internal static string KeyOf(ChartSeries series, int index) =>
        series.Role is StyleRole.Main or StyleRole.Pencil ? Word(series.Role) : $"{Word(series.Role)}-{index}";

    private static SeriesLayout Packed(ChartSeries series, int index, List<float> floats)
    {
        var hasUpper = series.UpperPoints.Count > 0;
        floats.AddRange(series.Points.Select(p => (float)p.X));
        floats.AddRange(series.Points.Select(p => (float)p.Y));
        if (hasUpper)
        {
            floats.AddRange(series.UpperPoints.Select(p => (float)p.Y));
        }

        return new SeriesLayout(KeyOf(series, index), series.Name, Word(series.Role), Word(series.Shape), series.Points.Count, hasUpper);
    }

    private static LimitLayout Packed(ChartLimit limit, List<float> floats)
    {
        foreach (var points in new[] { limit.Edge, limit.Region })
        {
            floats.AddRange(points.Select(p => (float)p.X));
            floats.AddRange(points.Select(p => (float)p.Y));
        }

        return new LimitLayout(limit.Name, limit.Edge.Count, limit.Region.Count);
    }

    private static AxisLayout Axis(ChartAxis axis) =>
        new(
            Label: axis.Label,
            Unit: axis.Unit,
            Log: axis.IsLogarithmic,
            Low: axis.Low,
            High: axis.High,
            Ticks: axis.Ticks,
            TickLabels: axis.TickLabels,
            Notes: axis.Notes
        );

#pragma warning disable CA1308 // Words of the page's scripts, not keys to compare.
    private static string Word<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
#pragma warning restore CA1308
}

/// <summary>Everything of a chart but its points.</summary>
internal sealed record ChartLayout(
    string Name,
    AxisLayout Across,
    AxisLayout Up,
    IReadOnlyList<SeriesLayout> Series,
    IReadOnlyList<LimitLayout> Limits,
    IReadOnlyList<LandmarkLayout> Landmarks,
    IReadOnlyList<RuleLayout> Rules
);

/// <summary>An axis.</summary>
internal sealed record AxisLayout(
    string Label,
    string Unit,
    bool Log,
    double Low,
    double High,
    IReadOnlyList<double> Ticks,
    IReadOnlyList<string> TickLabels,
    IReadOnlyList<AxisNote> Notes
);

/// <summary>A series without its points.</summary>
internal sealed record SeriesLayout(string Key, string Name, string Role, string Shape, int Count, bool HasUpper);

/// <summary>A limit without its points.</summary>
internal sealed record LimitLayout(string Name, int Edge, int Region);

/// <summary>A landmark.</summary>
internal sealed record LandmarkLayout(double X, double Y, string Label, string Name, string Mark, bool MayDropLabel);

/// <summary>An upright line.</summary>
internal sealed record RuleLayout(double X, string Label);
