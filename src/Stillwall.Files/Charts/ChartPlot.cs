using Stillwall.Figures;

namespace Stillwall.Files.Charts;

/// <summary>Where a chart's values fall on the picture.</summary>
internal sealed class ChartPlot(Chart chart, Box area)
{
    internal Box Area => area;

    internal double X(double value) => area.Left + (Share(value, chart.Across) * (area.Right - area.Left));

    internal double Y(double value) => area.Bottom - (Share(value, chart.Up) * (area.Bottom - area.Top));

    internal Pixel At(ChartPoint point) => new(X(point.X), Y(point.Y));

    internal IReadOnlyList<Pixel> Line(IReadOnlyList<ChartPoint> points) => [.. points.Select(At)];

    /// <summary>A ring of corners pressed into the plot.</summary>
    internal IReadOnlyList<Pixel> Ring(IEnumerable<ChartPoint> points) =>
        [.. points.Select(At).Select(s => new Pixel(Math.Clamp(s.X, area.Left, area.Right), Math.Clamp(s.Y, area.Top, area.Bottom)))];

    /// <summary>The parts of a line that lie in the plot.</summary>
    internal IReadOnlyList<IReadOnlyList<Pixel>> Clipped(IReadOnlyList<Pixel> line)
    {
        List<List<Pixel>> parts = [];
        for (var i = 1; i < line.Count; i++)
        {
            if (Clip(line[i - 1], line[i]) is not { } kept)
            {
                continue;
            }

            if (parts.Count == 0 || parts[^1][^1] != kept.From)
            {
                parts.Add([kept.From]);
            }

            parts[^1].Add(kept.To);
        }

        return parts;
    }

    // Liang and Barsky: the stretch of the line that is on the good side of all four borders.
    private (Pixel From, Pixel To)? Clip(Pixel a, Pixel b)
    {
        var (dx, dy, from, to) = (b.X - a.X, b.Y - a.Y, 0.0, 1.0);
        foreach (var (speed, room) in new[] { (-dx, a.X - area.Left), (dx, area.Right - a.X), (-dy, a.Y - area.Top), (dy, area.Bottom - a.Y) })
        {
            if (speed == 0 && room < -1e-6)
            {
                return null;
            }

            if (speed < 0)
            {
                from = Math.Max(from, (room + 1e-6) / speed);
            }
            else if (speed > 0)
            {
                to = Math.Min(to, (room + 1e-6) / speed);
            }
        }

        Pixel Between(double t) =>
            t <= 0 ? a
            : t >= 1 ? b
            : new(a.X + (t * dx), a.Y + (t * dy));
        return from < to ? (Between(from), Between(to)) : null;
    }

    private static double Share(double value, ChartAxis axis) =>
        axis.IsLogarithmic
            ? Math.Log(Math.Max(value, double.Epsilon) / axis.Low) / Math.Log(axis.High / axis.Low)
            : (value - axis.Low) / (axis.High - axis.Low);
}
