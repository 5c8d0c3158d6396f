namespace Stillwall.Figures;

/// <summary>Axes and edges that several charts share.</summary>
internal static class Axes
{
    // Tone names after equal temperament on a' = 440 Hz (ISO 16); the voice from memory.
    private static readonly AxisNote[] Pitches =
    [
        new(16.35, "32-foot organ pipe"),
        new(41.2, "double bass, low E"),
        new(110, "a man speaking"),
        new(261.6, "middle C"),
    ];

    internal static ChartAxis Frequency(double highHz) =>
        new("frequency", "Hz", true, 10, highHz, [.. new double[] { 10, 20, 30, 50, 70, 100, 200, 300, 500, 1000 }.Where(t => t <= highHz)])
        {
            Notes = Pitches,
        };

    internal static IReadOnlyList<double> FrequenciesHz(double highHz, int steps) =>
        [.. Enumerable.Range(0, steps + 1).Select(k => 10 * Math.Pow(highHz / 10, (double)k / steps))];

    /// <summary>A linear axis over whole steps, with about six numbers.</summary>
    internal static ChartAxis Linear(string label, string unit, double low, double high)
    {
        var step = Step(high - low);
        var (first, last) = ((int)Math.Floor(low / step + 1e-9), (int)Math.Ceiling(high / step - 1e-9));
        return new ChartAxis(
            label,
            unit,
            false,
            first * step,
            last * step,
            [.. Enumerable.Range(first, last - first + 1).Select(k => Math.Round(k * step, 9))]
        );
    }

    /// <summary>A logarithmic axis whose ends are 1, 2 or 5 times a power of ten.</summary>
    internal static ChartAxis Logarithmic(string label, string unit, double low, double high)
    {
        var ticks = Enumerable.Range(-4, 12).SelectMany(d => new[] { 1, 2, 5 }.Select(m => Math.Round(m * Math.Pow(10, d), 6))).ToList();
        var (first, last) = (Math.Max(0, ticks.FindLastIndex(t => t <= low)), ticks.FindIndex(t => t >= high) is var above and >= 0 ? above : ticks.Count - 1);
        return new ChartAxis(label, unit, true, ticks[first], ticks[last], ticks[first..(last + 1)]);
    }

    /// <summary>A level edge from one place to another: what lies under it, or over it, is wrong.</summary>
    internal static ChartLimit Level(string name, double fromX, double toX, double y, bool wrongAbove, ChartAxis up) =>
        Along(name, [new(fromX, y), new(toX, y)], wrongAbove, up);

    /// <summary>An edge of its own course: what lies under it, or over it, is wrong.</summary>
    internal static ChartLimit Along(string name, IReadOnlyList<ChartPoint> edge, bool wrongAbove, ChartAxis up)
    {
        var end = wrongAbove ? up.High : up.Low;
        return new ChartLimit(name, edge, [.. edge, new(edge[^1].X, end), new(edge[0].X, end)]);
    }

    /// <summary>The value between two points of a line, straight on the logarithm of x.</summary>
    internal static double At(IReadOnlyList<ChartPoint> line, double x)
    {
        var k = 1;
        while (k < line.Count - 1 && line[k].X < x)
        {
            k++;
        }

        var (a, b) = (line[k - 1], line[k]);
        return a.Y + ((b.Y - a.Y) * Math.Log(x / a.X) / Math.Log(b.X / a.X));
    }

    private static double Step(double span)
    {
        var rough = span / 6;
        var decade = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return new[] { 1, 2, 5, 10 }.Select(m => m * decade).First(s => s >= rough * 0.999);
    }
}
