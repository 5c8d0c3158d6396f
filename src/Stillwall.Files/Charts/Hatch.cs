namespace Stillwall.Files.Charts;

/// <summary>Hatching of a limit: 45° lines along the inner side of its edge only.</summary>
internal static class Hatch
{
    internal const double DepthPx = 12;
    private const double PitchPx = 6;
    private const double StepPx = 0.5;

    /// <summary>The parts of the 45° lines that lie in the region and no farther than the depth from the edge.</summary>
    internal static IReadOnlyList<IReadOnlyList<Pixel>> Of(IReadOnlyList<Pixel> edge, IReadOnlyList<Pixel> region)
    {
        var (left, right) = (edge.Min(p => p.X) - DepthPx, edge.Max(p => p.X) + DepthPx);
        var (top, bottom) = (edge.Min(p => p.Y) - DepthPx, edge.Max(p => p.Y) + DepthPx);
        List<IReadOnlyList<Pixel>> lines = [];
        for (var sum = Math.Ceiling((left + top) / PitchPx / Math.Sqrt(2)) * PitchPx * Math.Sqrt(2); sum <= right + bottom; sum += PitchPx * Math.Sqrt(2))
        {
            lines.AddRange(Kept(sum, Math.Max(left, sum - bottom), Math.Min(right, sum - top), edge, region));
        }

        return lines;
    }

    private static IEnumerable<IReadOnlyList<Pixel>> Kept(double sum, double from, double to, IReadOnlyList<Pixel> edge, IReadOnlyList<Pixel> region)
    {
        Pixel? start = null;
        var last = default(Pixel);
        for (var x = from; x <= to; x += StepPx)
        {
            var spot = new Pixel(x, sum - x);
            if (!Inside(spot, region) || SquaredDistance(spot, edge) > DepthPx * DepthPx)
            {
                if (start is { } begun && last.X > begun.X)
                {
                    yield return [begun, last];
                }

                start = null;
                continue;
            }

            start ??= spot;
            last = spot;
        }

        if (start is { } open && last.X > open.X)
        {
            yield return [open, last];
        }
    }

    // Even-odd: how often a ray to the right meets the ring.
    private static bool Inside(Pixel p, IReadOnlyList<Pixel> ring)
    {
        var inside = false;
        for (int i = 0, j = ring.Count - 1; i < ring.Count; j = i++)
        {
            if ((ring[i].Y > p.Y) != (ring[j].Y > p.Y) && p.X < ((ring[j].X - ring[i].X) * (p.Y - ring[i].Y) / (ring[j].Y - ring[i].Y)) + ring[i].X)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private static double SquaredDistance(Pixel p, IReadOnlyList<Pixel> line)
    {
        var least = double.MaxValue;
        for (var i = 1; i < line.Count; i++)
        {
            var (a, b) = (line[i - 1], line[i]);
            var (dx, dy) = (b.X - a.X, b.Y - a.Y);
            var length = (dx * dx) + (dy * dy);
            var t = length == 0 ? 0 : Math.Clamp((((p.X - a.X) * dx) + ((p.Y - a.Y) * dy)) / length, 0, 1);
            var (offX, offY) = (p.X - a.X - (t * dx), p.Y - a.Y - (t * dy));
            least = Math.Min(least, (offX * offX) + (offY * offY));
        }

        return least;
    }
}
