namespace Stillwall.Shapes;

/// <summary>Fills what a closed set of edges winds round with triangles, in one sweep from left to right.</summary>
/// <remarks>
/// Model: between two neighbouring edges that the sweep line meets, the right border of what is already filled is a chain that bulges to the right; a new point
/// sees the end of it and is joined to all it sees. Edges may meet at points but not cross (<see cref="Noder"/>).
/// Source: the sweep triangulation of Hertel and Mehlhorn 1983 (from memory). Accuracy: exact; whole-number tests, no triangle without area.
/// </remarks>
internal sealed class CapSweep
{
    private readonly List<Link> links = [];
    private readonly List<Open> status = [];
    private readonly List<(GridPoint A, GridPoint B, GridPoint C)> triangles = [];
    private int sign;

    private CapSweep() { }

    /// <summary>Triangles, counter-clockwise where the edges wind forwards (+1), clockwise where they wind backwards (−1).</summary>
    /// <param name="edges">How often each edge is run, by its direction from the lesser to the greater point; runs the other way count negative.</param>
    internal static IReadOnlyList<(GridPoint A, GridPoint B, GridPoint C)> Fill(IEnumerable<KeyValuePair<GridEdge, int>> edges)
    {
        var sweep = new CapSweep();
        var all = edges.Where(e => e.Value != 0).Select(e => (e.Key.From, e.Key.To, Runs: e.Value)).ToArray();
        Array.Sort(all, (a, b) => SweepStatus.InOrder(a.From, a.To, b.From, b.To));
        var points = all.SelectMany(e => new[] { e.From, e.To }).Distinct().ToArray();
        Array.Sort(points);
        var next = 0;
        foreach (var point in points)
        {
            var first = next;
            while (next < all.Length && all[next].From == point)
            {
                next++;
            }

            sweep.Visit(point, all.AsSpan(first, next - first));
        }

        return sweep.triangles;
    }

    private void Visit(GridPoint v, ReadOnlySpan<(GridPoint From, GridPoint To, int Runs)> starting)
    {
        var (low, high) = SweepStatus.EndingAt(status, v);
        var below = low > 0 ? status[low - 1] : null;
        var (lower, upper) = (below?.Chain, below?.Chain);
        if (high > low)
        {
            for (var i = low; i < high - 1; i++)
            {
                AddOnTop(status[i].Chain, status[i].Winding, v);
            }

            upper = status[high - 1].Chain;
        }
        else if (lower is not null)
        {
            upper = Split(lower);
        }

        var windingAbove = high > 0 ? status[high - 1].Winding : 0;
        AddOnTop(lower, below?.Winding ?? 0, v);
        AddBelow(upper, windingAbove, v);
        status.RemoveRange(low, high - low);
        if (starting.Length > 0)
        {
            Insert(low, v, starting, upper);
        }
        else if (lower is not null && upper is not null)
        {
            Join(lower, upper);
        }
    }

    private void Insert(int at, GridPoint v, ReadOnlySpan<(GridPoint From, GridPoint To, int Runs)> starting, Chain? above)
    {
        var winding = at > 0 ? status[at - 1].Winding : 0;
        for (var i = 0; i < starting.Length; i++)
        {
            winding += starting[i].Runs;
            var chain =
                winding == 0 ? null
                : i == starting.Length - 1 && above is not null ? above
                : NewChain(v);
            status.Insert(at + i, new Open(starting[i].From, starting[i].To, winding, chain));
        }
    }

    private void AddOnTop(Chain? chain, int winding, GridPoint v)
    {
        if (chain is null)
        {
            return;
        }

        sign = winding;
        while (links[chain.Tail].Before is var b and >= 0 && GridPoint.Turn(links[b].At, links[chain.Tail].At, v) < 0)
        {
            Emit(links[b].At, v, links[chain.Tail].At);
            chain.Tail = b;
        }

        links.Add(new Link(v, chain.Tail, -1));
        links[chain.Tail] = links[chain.Tail] with { After = links.Count - 1 };
        chain.Tail = chain.Last = links.Count - 1;
    }

    private void AddBelow(Chain? chain, int winding, GridPoint v)
    {
        if (chain is null)
        {
            return;
        }

        sign = winding;
        while (chain.Head != chain.Tail && links[chain.Head].After is var n && GridPoint.Turn(links[chain.Head].At, links[n].At, v) < 0)
        {
            Emit(links[chain.Head].At, v, links[n].At);
            chain.Head = n;
        }

        links.Add(new Link(v, -1, chain.Head));
        links[chain.Head] = links[chain.Head] with { Before = links.Count - 1 };
        chain.Head = chain.Last = links.Count - 1;
    }

    private void Emit(GridPoint a, GridPoint b, GridPoint c) => triangles.Add(sign > 0 ? (a, b, c) : (a, c, b));

    private Chain NewChain(GridPoint v)
    {
        links.Add(new Link(v, -1, -1));
        var at = links.Count - 1;
        return new Chain
        {
            Head = at,
            Tail = at,
            Last = at,
        };
    }

    // A point in the open sees the rightmost point of the chain, the one added last: below it the chain stays, above it a new one begins.
    private Chain Split(Chain chain)
    {
        var at = links[chain.Last];
        links.Add(new Link(at.At, -1, at.After));
        var twin = links.Count - 1;
        var upper = new Chain
        {
            Head = twin,
            Tail = chain.Tail == chain.Last ? twin : chain.Tail,
            Last = twin,
        };
        if (at.After >= 0)
        {
            links[at.After] = links[at.After] with { Before = twin };
        }

        links[chain.Last] = at with { After = -1 };
        chain.Tail = chain.Last;
        return upper;
    }

    // Both chains end at the same point, which is then in the middle.
    private void Join(Chain lower, Chain upper)
    {
        var after = links[upper.Head].After;
        links[lower.Tail] = links[lower.Tail] with { After = after };
        if (after >= 0)
        {
            links[after] = links[after] with { Before = lower.Tail };
            lower.Last = lower.Tail;
            lower.Tail = upper.Tail;
        }
    }

    private readonly record struct Link(GridPoint At, int Before, int After);

    private sealed class Chain
    {
        internal int Head { get; set; }

        internal int Tail { get; set; }

        internal int Last { get; set; }
    }

    private sealed record Open(GridPoint From, GridPoint To, int Winding, Chain? Chain) : ISweepEdge;
}
