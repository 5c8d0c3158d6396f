using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

/// <summary>One closed shell of a mesh.</summary>
/// <param name="TriangleCount">Number of triangles.</param>
/// <param name="EulerCount">Euler characteristic, corners − edges + triangles; a corner where several fans of the shell meet counts once for each.</param>
/// <param name="VolumeM3">Volume within, m³; negative for the surface of a hollow.</param>
internal sealed record MeshShell(int TriangleCount, int EulerCount, double VolumeM3)
{
    /// <summary>Number of ways through the shell, as the one of a ring.</summary>
    public int GenusCount => (2 - EulerCount) / 2;
}

/// <summary>Whether a mesh is closed, and what it consists of.</summary>
/// <param name="UnmatchedEdgeCount">Edges that are not run exactly once each way.</param>
/// <param name="Shells">Shells that hang together by edges, in the order of their first triangle; empty where edges are unmatched.</param>
internal sealed record MeshReport(int UnmatchedEdgeCount, IReadOnlyList<MeshShell> Shells)
{
    /// <summary>Whether every directed edge is met exactly once by its reverse.</summary>
    public bool Watertight => UnmatchedEdgeCount == 0;

    /// <summary>Examines a mesh.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <returns>The report.</returns>
    /// <remarks>
    /// Model: every directed edge is looked up; corners that share an edge between two triangles are one. Validity: any indexed mesh.
    /// Source: Euler characteristic χ = V − E + F = 2 − 2g of a closed orientable surface, Euler 1758 (from memory). Accuracy: exact.
    /// </remarks>
    public static MeshReport Of(IndexedMesh mesh)
    {
        var unmatched = MeshEdges.Unmatched(mesh);
        return unmatched.Count > 0 ? new MeshReport(unmatched.Count, []) : new MeshReport(0, ShellsOf(mesh));
    }

    private static IReadOnlyList<MeshShell> ShellsOf(IndexedMesh mesh)
    {
        var triangles = mesh.Triangles;
        var (bodies, fans) = (new Groups(triangles.Length), new Groups(3 * triangles.Length));
        var seen = new Dictionary<long, int>(3 * triangles.Length);
        for (var t = 0; t < triangles.Length; t++)
        {
            for (var c = 0; c < 3; c++)
            {
                var (u, v) = MeshEdges.Edge(triangles[t], c);
                seen[MeshEdges.Key(u, v)] = 3 * t + c;
                if (seen.TryGetValue(MeshEdges.Key(v, u), out var other))
                {
                    bodies.Join(t, other / 3);
                    fans.Join(3 * t + c, other / 3 * 3 + (other + 1) % 3);
                    fans.Join(3 * t + (c + 1) % 3, other);
                }
            }
        }

        return
        [
            .. Enumerable
                .Range(0, triangles.Length)
                .GroupBy(bodies.Of)
                .Select(shell =>
                {
                    var own = shell.ToList();
                    var corners = own.SelectMany(t => new[] { 3 * t, 3 * t + 1, 3 * t + 2 }).Select(fans.Of).Distinct().Count();
                    return new MeshShell(
                        own.Count,
                        corners - own.Count * 3 / 2 + own.Count,
                        (mesh with { Triangles = [.. own.Select(t => triangles[t])] }).VolumeM3
                    );
                }),
        ];
    }
}
