using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

/// <summary>A mesh as a slicer reads it from a file without an index: corners whose 32-bit millimetres are the same are one.</summary>
internal static class WeldedMesh
{
    /// <summary>Directed edges that are not met exactly once by their reverse.</summary>
    internal static int UnmatchedEdges(IndexedMesh mesh)
    {
        var ids = new Dictionary<(float, float, float), int>(mesh.Points.Length);
        var welded = mesh
            .Points.Select(p =>
                ids.TryGetValue((p.X / 1000f, p.Y / 1000f, p.Z / 1000f), out var id) ? id : ids[(p.X / 1000f, p.Y / 1000f, p.Z / 1000f)] = ids.Count
            )
            .ToArray();
        var edges = new Dictionary<(int, int), int>(3 * mesh.Triangles.Length);
        foreach (var t in mesh.Triangles)
        {
            foreach (var (a, b) in new[] { (t.A, t.B), (t.B, t.C), (t.C, t.A) })
            {
                edges[(welded[a], welded[b])] = edges.GetValueOrDefault((welded[a], welded[b])) + 1;
            }
        }

        return edges.Count(e => e.Value != 1 || edges.GetValueOrDefault((e.Key.Item2, e.Key.Item1)) != 1);
    }
}
