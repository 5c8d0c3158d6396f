namespace Stillwall.Shapes;

/// <summary>Where two slabs meet: which edges run on from one into the other, where the others are cut at one another, and what is left open.</summary>
/// <remarks>Only the edges of the two slabs that differ are looked at; an upright edge that both have runs on without a joint.</remarks>
internal sealed class MeshInterface
{
    private readonly Dictionary<GridPoint, int> corners = [];
    private readonly GridPoint[]?[] below;
    private readonly GridPoint[]?[] above;
    private readonly int[] runsOnAs;
    private readonly List<MeshPoint> points;

    internal MeshInterface(int height, SolidLayer? belowLayer, SolidLayer? aboveLayer, List<MeshPoint> points)
    {
        Height = height;
        this.points = points;
        var (lower, upper) = (belowLayer?.Edges ?? [], aboveLayer?.Edges ?? []);
        below = new GridPoint[]?[lower.Count];
        above = new GridPoint[]?[upper.Count];
        runsOnAs = new int[lower.Count];
        Array.Fill(runsOnAs, -1);
        var (edges, owners) = Differing(lower, upper);
        Cut(edges, owners);
    }

    internal int Height { get; }

    /// <summary>Runs of each edge that no slab's neighbour takes up, by its lesser and greater point.</summary>
    internal Dictionary<GridEdge, int> Open { get; } = [];

    /// <summary>The edge of the slab above that an edge of the slab below runs on as; −1 where it ends here.</summary>
    internal int RunsOnAs(int edgeBelow) => runsOnAs[edgeBelow];

    /// <summary>The points along the upper end of an edge below.</summary>
    internal GridPoint[] ChainBelow(int edge) => below[edge]!;

    /// <summary>The points along the lower end of an edge above; null where it comes from below.</summary>
    internal GridPoint[]? ChainAbove(int edge) => above[edge];

    /// <summary>The mesh corner at a point, new where there was none.</summary>
    internal int Corner(GridPoint at)
    {
        if (!corners.TryGetValue(at, out var corner))
        {
            corners[at] = corner = points.Count;
            points.Add(new MeshPoint(at.X, at.Y, Height));
        }

        return corner;
    }

    /// <summary>The mesh corner at a point, or −1.</summary>
    internal int Existing(GridPoint at) => corners.TryGetValue(at, out var corner) ? corner : -1;

    private (List<GridEdge> Edges, List<int> Owners) Differing(IReadOnlyList<GridEdge> lower, IReadOnlyList<GridEdge> upper)
    {
        var known = new Dictionary<GridEdge, int>(lower.Count);
        for (var i = 0; i < lower.Count; i++)
        {
            known[lower[i]] = i;
        }

        var (edges, owners) = (new List<GridEdge>(), new List<int>());
        var taken = new bool[lower.Count];
        for (var i = 0; i < upper.Count; i++)
        {
            if (known.TryGetValue(upper[i], out var same) && !taken[same])
            {
                taken[same] = true;
                runsOnAs[same] = i;
            }
            else
            {
                edges.Add(upper[i]);
                owners.Add(-1 - i);
            }
        }

        for (var i = 0; i < lower.Count; i++)
        {
            if (!taken[i])
            {
                edges.Add(lower[i]);
                owners.Add(i);
            }
        }

        return (edges, owners);
    }

    private void Cut(List<GridEdge> edges, List<int> owners)
    {
        var chains = Noder.Chains(edges);
        for (var i = 0; i < chains.Count; i++)
        {
            var (chain, isBelow) = (chains[i], owners[i] >= 0);
            (isBelow ? below : above)[isBelow ? owners[i] : -1 - owners[i]] = chain;
            Corner(chain[0]);
            for (var j = 1; j < chain.Length; j++)
            {
                Corner(chain[j]);
                var forwards = chain[j - 1].CompareTo(chain[j]) < 0;
                var key = forwards ? new GridEdge(chain[j - 1], chain[j]) : new GridEdge(chain[j], chain[j - 1]);
                Open[key] = Open.GetValueOrDefault(key) + (forwards == isBelow ? 1 : -1);
            }
        }
    }
}
