namespace Stillwall.Figures.Sheets;

/// <summary>Outlines of the areas that each thing takes on a raster.</summary>
internal static class MaskOutlines
{
    // How far a simplified outline may stray, points of the raster.
    private const double Stray = 0.8;

    private const int LeastPoints = 12;

    /// <summary>Rings round the areas of each owner, along the borders of points.</summary>
    internal static IReadOnlyDictionary<int, IReadOnlyList<IReadOnlyList<(int X, int Y)>>> Of(int width, int height, Func<int, int, int> ownerAt)
    {
        var borders = new SortedDictionary<int, Dictionary<(int, int), List<(int, int)>>>();
        for (var y = 0; y <= height; y++)
        {
            for (var x = 0; x <= width; x++)
            {
                var (here, below, before) = (At(x, y), At(x, y - 1), At(x - 1, y));
                Border(here, below, (x, y), (x + 1, y));
                Border(before, here, (x, y), (x, y + 1));
            }
        }

        return borders.ToDictionary(b => b.Key, b => (IReadOnlyList<IReadOnlyList<(int X, int Y)>>)[.. Rings(b.Value)]);

        int At(int x, int y) => x < 0 || y < 0 || x >= width || y >= height ? -1 : ownerAt(x, y);

        // The first owner lies at the left of the way from one corner to the other, the second at its right.
        void Border(int left, int right, (int, int) from, (int, int) to)
        {
            if (left != right)
            {
                Step(left, from, to);
                Step(right, to, from);
            }
        }

        void Step(int owner, (int, int) from, (int, int) to)
        {
            if (owner >= 0)
            {
                borders.TryAdd(owner, []);
                borders[owner].TryAdd(from, []);
                borders[owner][from].Add(to);
            }
        }
    }

    private static IEnumerable<IReadOnlyList<(int X, int Y)>> Rings(Dictionary<(int X, int Y), List<(int X, int Y)>> steps)
    {
        foreach (var start in steps.Keys.OrderBy(k => k.Y).ThenBy(k => k.X).ToList())
        {
            while (steps[start].Count > 0)
            {
                var ring = new List<(int X, int Y)> { start };
                var at = Taken(steps, start);
                while (at != start)
                {
                    ring.Add(at);
                    at = Taken(steps, at);
                }

                if (ring.Count >= LeastPoints)
                {
                    yield return Simplified(ring);
                }
            }
        }
    }

    private static (int X, int Y) Taken(Dictionary<(int X, int Y), List<(int X, int Y)>> steps, (int X, int Y) from)
    {
        var next = steps[from][^1];
        steps[from].RemoveAt(steps[from].Count - 1);
        return next;
    }

    // Ramer's and Douglas and Peucker's way: of each stretch the corner that strays most is kept.
    private static List<(int X, int Y)> Simplified(List<(int X, int Y)> ring)
    {
        var kept = new bool[ring.Count];
        var stack = new Stack<(int From, int To)>([(0, ring.Count / 2), (ring.Count / 2, ring.Count)]);
        kept[0] = kept[ring.Count / 2] = true;
        while (stack.TryPop(out var span))
        {
            var (a, b) = (ring[span.From], ring[span.To % ring.Count]);
            var length = Math.Max(1e-9, Math.Sqrt(Math.Pow(b.X - a.X, 2) + Math.Pow(b.Y - a.Y, 2)));
            var (worst, far) = (-1, Stray);
            for (var i = span.From + 1; i < span.To; i++)
            {
                var away = Math.Abs((b.X - a.X) * (double)(ring[i].Y - a.Y) - (b.Y - a.Y) * (double)(ring[i].X - a.X)) / length;
                (worst, far) = away > far ? (i, away) : (worst, far);
            }

            if (worst >= 0)
            {
                kept[worst] = true;
                stack.Push((span.From, worst));
                stack.Push((worst, span.To));
            }
        }

        return [.. ring.Where((_, i) => kept[i])];
    }
}
