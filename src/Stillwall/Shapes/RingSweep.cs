namespace Stillwall.Shapes;

/// <summary>Joins, cuts and intersects rings on the grid in one sweep from left to right.</summary>
/// <remarks>
/// Model: all edges are cut at one another (<see cref="Noder"/>); a sweep counts how often each side winds round what lies above and below an edge; edges with the
/// result on one side only are its border. Source: our own construction on whole numbers; a general overlay does the same, several times slower.
/// Accuracy: exact but for the bends of the noder, 0.71 µm at most.
/// </remarks>
internal static class RingSweep
{
    /// <summary>The rings round what a rule keeps, the region at their left.</summary>
    /// <param name="first">Rings of the first side; what they wind round is within it.</param>
    /// <param name="second">Rings of the second side; they may overlap.</param>
    /// <param name="keeps">Whether to keep a place that is within the first side, and within the second.</param>
    /// <param name="node">Whether the edges have to be cut at one another first.</param>
    /// <returns>The rings, none of which touches itself; null where they do not close, which a general overlay has to sort out.</returns>
    internal static IReadOnlyList<GridPoint[]>? Combine(IEnumerable<GridPoint[]> first, IEnumerable<GridPoint[]> second, Func<bool, bool, bool> keeps, bool node)
    {
        var edges = first.SelectMany(EdgesOf).ToList();
        var ofFirst = edges.Count;
        edges.AddRange(second.SelectMany(EdgesOf));
        var runs = Runs(edges, ofFirst, node);
        var all = runs.Where(r => r.Value != default).Select(r => (r.Key.From, r.Key.To, r.Value.First, r.Value.Second)).ToArray();
        Array.Sort(all, (a, b) => SweepStatus.InOrder(a.From, a.To, b.From, b.To));
        return Border(all, keeps) is { } border ? RingTracing.Trace(border) : null;
    }

    /// <summary>The edges of a ring.</summary>
    internal static IEnumerable<GridEdge> EdgesOf(GridPoint[] ring)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            yield return new GridEdge(ring[i], ring[i + 1 < ring.Length ? i + 1 : 0]);
        }
    }

    private static Dictionary<GridEdge, (int First, int Second)> Runs(List<GridEdge> edges, int ofFirst, bool node)
    {
        var runs = new Dictionary<GridEdge, (int First, int Second)>(edges.Count);
        void Add(GridPoint a, GridPoint b, bool isFirst)
        {
            var forwards = a.CompareTo(b) < 0;
            var key = forwards ? new GridEdge(a, b) : new GridEdge(b, a);
            var so = runs.GetValueOrDefault(key);
            var one = forwards ? 1 : -1;
            runs[key] = isFirst ? (so.First + one, so.Second) : (so.First, so.Second + one);
        }

        var chains = node ? Noder.Chains(edges) : null;
        for (var i = 0; i < edges.Count; i++)
        {
            GridPoint[] chain = chains?[i] ?? [edges[i].From, edges[i].To];
            for (var j = 1; j < chain.Length; j++)
            {
                Add(chain[j - 1], chain[j], i < ofFirst);
            }
        }

        return runs;
    }

    private static List<GridEdge>? Border((GridPoint From, GridPoint To, int First, int Second)[] edges, Func<bool, bool, bool> keeps)
    {
        var points = edges.SelectMany(e => new[] { e.From, e.To }).ToArray();
        Array.Sort(points);
        var (status, border, next) = (new List<Open>(), new List<GridEdge>(), 0);
        for (var i = 0; i < points.Length; i++)
        {
            if (i > 0 && points[i] == points[i - 1])
            {
                continue;
            }

            var (low, high) = SweepStatus.EndingAt(status, points[i]);
            status.RemoveRange(low, high - low);
            var (first, second) = low > 0 ? (status[low - 1].First, status[low - 1].Second) : (0, 0);
            for (; next < edges.Length && edges[next].From == points[i]; next++, low++)
            {
                var e = edges[next];
                var below = keeps(first > 0, second > 0);
                (first, second) = (first + e.First, second + e.Second);
                var above = keeps(first > 0, second > 0);
                status.Insert(low, new Open(e.From, e.To, first, second));
                if (above != below)
                {
                    border.Add(above ? new GridEdge(e.From, e.To) : new GridEdge(e.To, e.From));
                }
            }
        }

        return status.Count == 0 ? border : null;
    }

    private readonly record struct Open(GridPoint From, GridPoint To, int First, int Second) : ISweepEdge;
}

/// <summary>Follows border edges, the region at their left, round to rings.</summary>
internal static class RingTracing
{
    /// <summary>Rings that touch neither themselves nor run over an edge twice; null where an edge leads nowhere.</summary>
    internal static IReadOnlyList<GridPoint[]>? Trace(List<GridEdge> border)
    {
        var leaving = new Dictionary<GridPoint, List<int>>(border.Count);
        for (var i = 0; i < border.Count; i++)
        {
            (leaving.TryGetValue(border[i].From, out var list) ? list : leaving[border[i].From] = new List<int>(1)).Add(i);
        }

        var (rings, used) = (new List<GridPoint[]>(), new bool[border.Count]);
        for (var i = 0; i < border.Count; i++)
        {
            if (!used[i] && !Follow(border, leaving, used, i, rings))
            {
                return null;
            }
        }

        return rings;
    }

    private static bool Follow(List<GridEdge> border, Dictionary<GridPoint, List<int>> leaving, bool[] used, int start, List<GridPoint[]> rings)
    {
        var (path, places) = (new List<GridPoint>(), new Dictionary<GridPoint, int>());
        for (var at = start; ;)
        {
            used[at] = true;
            var (from, to) = (border[at].From, border[at].To);
            places[from] = path.Count;
            path.Add(from);
            // Back where the path has been before, a ring is complete; what came before it goes on from here.
            if (places.TryGetValue(to, out var begin))
            {
                rings.Add([.. path.Skip(begin)]);
                path.Skip(begin).ToList().ForEach(p => places.Remove(p));
                path.RemoveRange(begin, path.Count - begin);
                if (path.Count == 0)
                {
                    return true;
                }
            }

            at = Next(border, leaving.GetValueOrDefault(to), used, from, to);
            if (at < 0)
            {
                return false;
            }
        }
    }

    // Where several edges leave, the sharpest left turn stays with the same piece of the region.
    private static int Next(List<GridEdge> border, List<int>? leaving, bool[] used, GridPoint from, GridPoint at)
    {
        var best = -1;
        foreach (var i in leaving ?? [])
        {
            if (!used[i] && (best < 0 || IsFurtherLeft(from, at, border[i].To, border[best].To)))
            {
                best = i;
            }
        }

        return best;
    }

    private static bool IsFurtherLeft(GridPoint from, GridPoint at, GridPoint a, GridPoint b)
    {
        var (leftA, leftB) = (GridPoint.Turn(from, at, a) > 0, GridPoint.Turn(from, at, b) > 0);
        return leftA != leftB ? leftA : GridPoint.Turn(at, b, a) > 0;
    }
}
