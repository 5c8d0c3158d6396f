namespace Stillwall.Shapes;

/// <summary>Cuts edges at one another on the grid: afterwards no two of them cross, and those that overlap share their points.</summary>
/// <remarks>
/// Model: snap rounding. Every end and every crossing, rounded to the grid, owns the square of 1 µm round it; an edge that passes through such a square is bent
/// through its centre, by 0.71 µm at most. Source: Hobby 1999 (from memory); exact whole-number tests.
/// </remarks>
internal static class Noder
{
    private const int MostRounds = 5;
    private const double Doubt = 1e-6;

    /// <summary>The points that each edge runs through, its ends included.</summary>
    internal static IReadOnlyList<GridPoint[]> Chains(IReadOnlyList<GridEdge> edges)
    {
        var points = edges.SelectMany(e => new[] { e.From, e.To }).ToHashSet();
        AddCrossings(edges, points);
        var hot = points.ToArray();
        Array.Sort(hot);
        var chains = new GridPoint[edges.Count][];
        for (var i = 0; i < chains.Length; i++)
        {
            chains[i] = Chain(edges[i], hot);
        }

        return chains;
    }

    /// <summary>
    /// The points that each edge runs through when, after bends have brought edges within reach of other points, they are cut again until nothing
    /// changes.
    /// </summary>
    internal static Dictionary<GridEdge, GridPoint[]> Settled(IReadOnlyList<GridEdge> edges)
    {
        var settled = edges.Zip(Chains(edges)).ToDictionary(e => e.First, e => e.Second);
        for (var round = 1; round < MostRounds; round++)
        {
            var pieces = settled.Values.SelectMany(Pieces).Distinct().ToList();
            var again = pieces.Zip(Chains(pieces)).ToDictionary(e => e.First, e => e.Second);
            if (again.Values.All(chain => chain.Length == 2))
            {
                break;
            }

            foreach (var edge in edges)
            {
                settled[edge] = [edge.From, .. Pieces(settled[edge]).SelectMany(p => again[p].Skip(1))];
            }
        }

        return settled;
    }

    private static IEnumerable<GridEdge> Pieces(GridPoint[] chain) => chain.Zip(chain.Skip(1), (a, b) => new GridEdge(a, b));

    private static void AddCrossings(IReadOnlyList<GridEdge> edges, HashSet<GridPoint> points)
    {
        var order = Enumerable.Range(0, edges.Count).OrderBy(i => Math.Min(edges[i].From.X, edges[i].To.X)).ThenBy(i => i).ToArray();
        var open = new List<int>();
        foreach (var i in order)
        {
            var e = edges[i];
            var (left, low, high) = (Math.Min(e.From.X, e.To.X), Math.Min(e.From.Y, e.To.Y), Math.Max(e.From.Y, e.To.Y));
            var kept = 0;
            for (var j = 0; j < open.Count; j++)
            {
                var o = edges[open[j]];
                if (Math.Max(o.From.X, o.To.X) < left)
                {
                    continue;
                }

                open[kept++] = open[j];
                if (Math.Min(o.From.Y, o.To.Y) <= high && Math.Max(o.From.Y, o.To.Y) >= low && Crossing(e, o) is { } at)
                {
                    AddSquares(points, at.X, at.Y);
                }
            }

            open.RemoveRange(kept, open.Count - kept);
            open.Add(i);
        }
    }

    private static (double X, double Y)? Crossing(GridEdge a, GridEdge b)
    {
        var (c, d) = (GridPoint.Turn(a.From, a.To, b.From), GridPoint.Turn(a.From, a.To, b.To));
        if (c == 0 || d == 0 || c > 0 == d > 0)
        {
            return null;
        }

        var (e, f) = (GridPoint.Turn(b.From, b.To, a.From), GridPoint.Turn(b.From, b.To, a.To));
        if (e == 0 || f == 0 || e > 0 == f > 0)
        {
            return null;
        }

        var along = (double)e / (e - f);
        return (a.From.X + along * ((double)a.To.X - a.From.X), a.From.Y + along * ((double)a.To.Y - a.From.Y));
    }

    // A crossing between two squares is known to a billionth only, so both squares count.
    private static void AddSquares(HashSet<GridPoint> points, double x, double y)
    {
        var (left, low) = ((int)Math.Floor(x + 0.5 - Doubt), (int)Math.Floor(y + 0.5 - Doubt));
        var (right, high) = ((int)Math.Floor(x + 0.5 + Doubt), (int)Math.Floor(y + 0.5 + Doubt));
        points.Add(new GridPoint(left, low));
        points.Add(new GridPoint(right, low));
        points.Add(new GridPoint(left, high));
        points.Add(new GridPoint(right, high));
    }

    private static GridPoint[] Chain(GridEdge edge, GridPoint[] hot)
    {
        var (from, to) = (edge.From, edge.To);
        var (left, right) = (Math.Min(from.X, to.X), Math.Max(from.X, to.X));
        var (low, high) = (Math.Min(from.Y, to.Y), Math.Max(from.Y, to.Y));
        List<GridPoint>? between = null;
        for (var i = FirstAtOrAfter(hot, new GridPoint(left, low)); i < hot.Length && hot[i].X <= right; i++)
        {
            var at = hot[i];
            if (at.Y >= low && at.Y <= high && PassesThrough(from, to, at) && at != from && at != to)
            {
                (between ??= []).Add(at);
            }
        }

        return between is null ? [from, to] : [from, .. between.OrderBy(p => Along(from, to, p)).ThenBy(p => p), to];
    }

    private static long Along(GridPoint from, GridPoint to, GridPoint at) => (long)(at.X - from.X) * (to.X - from.X) + (long)(at.Y - from.Y) * (to.Y - from.Y);

    // The square round the point owns its left and lower side, so of its corners only the lower left one.
    private static bool PassesThrough(GridPoint from, GridPoint to, GridPoint at)
    {
        long dx = to.X - from.X,
            dy = to.Y - from.Y;
        var off = 2 * GridPoint.Turn(from, to, at);
        var reach = Math.Abs(dx) + Math.Abs(dy);
        return Math.Abs(off) < reach || (Math.Abs(off) == reach && off - dx + dy == 0);
    }

    private static int FirstAtOrAfter(GridPoint[] sorted, GridPoint at)
    {
        var i = Array.BinarySearch(sorted, at);
        return i < 0 ? ~i : i;
    }
}
