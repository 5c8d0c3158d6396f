namespace Stillwall.Shapes;

/// <summary>Joins, cuts and intersects rings on the grid in one sweep from left to right.</summary>
/// <remarks>
/// Model: all edges are cut at one another (<see cref="Noder"/>); a sweep counts how often each side winds round what lies above and below an edge;
/// edges with the result on one side only are its border. Source: our own construction on whole numbers; a general overlay does the same, several
/// times slower.
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
    internal static IReadOnlyList<GridPoint[]>? Combine(
        IEnumerable<GridPoint[]> first,
        IEnumerable<GridPoint[]> second,
        Func<bool, bool, bool> keeps,
        bool node
    )
    {
        var edges = first.SelectMany(EdgesOf).ToList();
        var ofFirst = edges.Count;
        edges.AddRange(second.SelectMany(EdgesOf));
        return Border(Runs(edges, ofFirst, node), keeps) is { } border ? RingTracing.Trace(border) : null;
    }

    internal static IEnumerable<GridEdge> EdgesOf(GridPoint[] ring)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            yield return new GridEdge(ring[i], ring[i + 1 < ring.Length ? i + 1 : 0]);
        }
    }

    // Every edge once, from its lesser to its greater point, in the order of the sweep: how often each side winds round what lies above it, less what
    // lies below.
    private static List<Run> Runs(List<GridEdge> edges, int ofFirst, bool node)
    {
        var all = new List<Run>(edges.Count);
        void Add(GridPoint a, GridPoint b, bool isFirst)
        {
            var (from, to, one) = a.CompareTo(b) < 0 ? (a, b, 1) : (b, a, -1);
            all.Add(new Run(from, to, isFirst ? one : 0, isFirst ? 0 : one));
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

        return Merged(InOrder(all));
    }

    // Sorting whole numbers and then the few edges that start at one point is several times quicker than sorting edges.
    private static Run[] InOrder(List<Run> all)
    {
        var sorted = all.ToArray();
        var keys = Array.ConvertAll(sorted, r => r.From.Key);
        Array.Sort(keys, sorted);
        for (var i = 0; i < keys.Length;)
        {
            var j = i + 1;
            while (j < keys.Length && keys[j] == keys[i])
            {
                j++;
            }

            if (j - i > 1)
            {
                Array.Sort(sorted, i, j - i, Run.FromLowestUp);
            }

            i = j;
        }

        return sorted;
    }

    private static List<Run> Merged(Run[] sorted)
    {
        var merged = new List<Run>(sorted.Length);
        for (var i = 0; i < sorted.Length;)
        {
            var (from, to, first, second) = sorted[i];
            for (i++; i < sorted.Length && sorted[i].From == from && sorted[i].To == to; i++)
            {
                (first, second) = (first + sorted[i].First, second + sorted[i].Second);
            }

            if (first != 0 || second != 0)
            {
                merged.Add(new Run(from, to, first, second));
            }
        }

        return merged;
    }

    private static List<GridEdge>? Border(List<Run> edges, Func<bool, bool, bool> keeps)
    {
        var ends = new long[edges.Count];
        for (var i = 0; i < ends.Length; i++)
        {
            ends[i] = edges[i].To.Key;
        }

        Array.Sort(ends);
        var (status, border, next) = (new List<Open>(), new List<GridEdge>(), 0);
        for (var end = 0; end < ends.Length;)
        {
            // The next place where an edge starts or ends.
            var key = next < edges.Count ? Math.Min(edges[next].From.Key, ends[end]) : ends[end];
            var at = GridPoint.Of(key);
            while (end < ends.Length && ends[end] == key)
            {
                end++;
            }

            var (low, high) = SweepStatus.EndingAt(status, at);
            status.RemoveRange(low, high - low);
            var (first, second) = low > 0 ? (status[low - 1].First, status[low - 1].Second) : (0, 0);
            for (; next < edges.Count && edges[next].From == at; next++, low++)
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

    private readonly record struct Run(GridPoint From, GridPoint To, int First, int Second)
    {
        // One after another where edges are the same.
        internal static Comparer<Run> FromLowestUp { get; } =
            Comparer<Run>.Create((a, b) => SweepStatus.InOrder(a.From, a.To, b.From, b.To) is not 0 and var order ? order : a.To.CompareTo(b.To));
    }

    private readonly record struct Open(GridPoint From, GridPoint To, int First, int Second) : ISweepEdge;
}

/// <summary>Follows border edges, the region at their left, round to rings.</summary>
internal static class RingTracing
{
    /// <summary>Rings that touch neither themselves nor run over an edge twice; null where an edge leads nowhere.</summary>
    internal static IReadOnlyList<GridPoint[]>? Trace(List<GridEdge> border)
    {
        var leaving = new Leaving(border);
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

    private static bool Follow(List<GridEdge> border, Leaving leaving, bool[] used, int start, List<GridPoint[]> rings)
    {
        var (path, places) = (new List<GridPoint>(), new Dictionary<GridPoint, int>());
        for (var at = start; ;)
        {
            used[at] = true;
            var (from, to) = (border[at].From, border[at].To);
            if (path.Count == 0 || leaving.Several(from))
            {
                places[from] = path.Count;
            }

            path.Add(from);
            // Back where the path has been before, a ring is complete; what came before it goes on from here.
            if (places.TryGetValue(to, out var begin))
            {
                rings.Add([.. path.Skip(begin)]);
                path.Skip(begin).Where(places.ContainsKey).ToList().ForEach(p => places.Remove(p));
                path.RemoveRange(begin, path.Count - begin);
                if (path.Count == 0)
                {
                    return true;
                }
            }

            at = Next(border, leaving.At(to), used, from, to);
            if (at < 0)
            {
                return false;
            }
        }
    }

    // Where several edges leave, the sharpest left turn stays with the same piece of the region.
    private static int Next(List<GridEdge> border, IEnumerable<int> leaving, bool[] used, GridPoint from, GridPoint at)
    {
        var best = -1;
        foreach (var i in leaving)
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

    // Which edges leave a point: the first of them, and after each the next.
    private sealed class Leaving
    {
        private readonly Dictionary<GridPoint, int> first;
        private readonly int[] next;

        internal Leaving(List<GridEdge> border)
        {
            (first, next) = (new(border.Count), new int[border.Count]);
            for (var i = border.Count - 1; i >= 0; i--)
            {
                next[i] = first.GetValueOrDefault(border[i].From, -1);
                first[border[i].From] = i;
            }
        }

        internal bool Several(GridPoint from) => first.TryGetValue(from, out var i) && next[i] >= 0;

        internal IEnumerable<int> At(GridPoint from)
        {
            for (var i = first.GetValueOrDefault(from, -1); i >= 0; i = next[i])
            {
                yield return i;
            }
        }
    }
}
