namespace Stillwall.Shapes;

/// <summary>Directed edges of a mesh.</summary>
internal static class MeshEdges
{
    internal static (int From, int To) Edge(MeshTriangle t, int corner) =>
        corner switch
        {
            0 => (t.A, t.B),
            1 => (t.B, t.C),
            _ => (t.C, t.A),
        };

    internal static long Key(int from, int to) => ((long)from << 32) | (uint)to;

    /// <summary>Edges that are not run exactly once each way, the lesser corner first, in the order of the triangles.</summary>
    internal static IReadOnlyList<(int Lesser, int Greater)> Unmatched(IndexedMesh mesh)
    {
        // Sorting the edges of a mesh is quicker than looking each of them up. The lowest bit is the direction.
        var keys = new ulong[3 * mesh.Triangles.Length];
        var at = 0;
        foreach (var t in mesh.Triangles)
        {
            for (var c = 0; c < 3; c++)
            {
                var (u, v) = Edge(t, c);
                keys[at++] = ((ulong)Key(Math.Min(u, v), Math.Max(u, v)) << 1) | (u < v ? 0u : 1u);
            }
        }

        Array.Sort(keys);
        var wrong = new List<(int, int)>();
        for (var i = 0; i < keys.Length;)
        {
            var edge = keys[i] >> 1;
            var j = i;
            while (j < keys.Length && keys[j] >> 1 == edge)
            {
                j++;
            }

            if (j - i != 2 || keys[i] == keys[i + 1])
            {
                wrong.Add(((int)(edge >> 32), (int)(edge & uint.MaxValue)));
            }

            i = j;
        }

        return wrong;
    }
}

/// <summary>Things that belong together, by pairs: union and find.</summary>
internal sealed class Groups
{
    private readonly int[] parent;

    internal Groups(int count) => parent = [.. Enumerable.Range(0, count)];

    internal int Of(int i)
    {
        while (parent[i] != i)
        {
            i = parent[i] = parent[parent[i]];
        }

        return i;
    }

    internal void Join(int a, int b)
    {
        var (x, y) = (Of(a), Of(b));
        parent[Math.Max(x, y)] = Math.Min(x, y);
    }
}
