using Stillwall.Shapes;

namespace Stillwall.Web.Viewer;

/// <summary>An edge where a surface bends sharply: drawn from everywhere.</summary>
internal readonly record struct SharpEdge(int A, int B);

/// <summary>An edge within a round surface: drawn where one of its two triangles is seen from the front and the other from behind.</summary>
internal readonly record struct RoundEdge(int A, int B, int First, int Second);

/// <summary>The edges of a mesh that a drawing shows.</summary>
internal sealed record FeatureEdges(IReadOnlyList<SharpEdge> Sharp, IReadOnlyList<RoundEdge> Round)
{
    /// <summary>Bend from which an edge is sharp, degrees (our choice): arcs are drawn in finer steps than that, chamfers are steeper.</summary>
    internal const double SharpDeg = 25;

    /// <summary>Bend below which two triangles are one face, degrees (our choice).</summary>
    internal const double FlatDeg = 0.2;

    /// <summary>Length below which an edge is left out, µm (our choice): joins of 10 µm and rounding, which would be drawn as specks.</summary>
    internal const int SpeckUm = 50;

    private static readonly double SharpCosine = Math.Cos(SharpDeg * Math.PI / 180),
        FlatCosine = Math.Cos(FlatDeg * Math.PI / 180);

    /// <summary>Finds the edges of a mesh.</summary>
    internal static FeatureEdges Of(IndexedMesh mesh)
    {
        var normals = mesh.Triangles.Select(t => Normal(mesh, t)).ToArray();
        var (open, sharp, round) = (new Dictionary<(int, int), int>(mesh.Triangles.Length * 3 / 2), new List<SharpEdge>(), new List<RoundEdge>());
        for (var i = 0; i < mesh.Triangles.Length; i++)
        {
            var t = mesh.Triangles[i];
            foreach (var (a, b) in new[] { (t.A, t.B), (t.B, t.C), (t.C, t.A) })
            {
                if (!open.Remove((b, a), out var other))
                {
                    open[(a, b)] = i;
                    continue;
                }

                var bend = Dot(normals[i], normals[other]);
                if (IsShort(mesh.Points[a], mesh.Points[b]))
                {
                    continue;
                }

                if (bend < SharpCosine)
                {
                    sharp.Add(new SharpEdge(a, b));
                }
                else if (bend < FlatCosine)
                {
                    round.Add(new RoundEdge(a, b, i, other));
                }
            }
        }

        // What has no second triangle is the border of an open surface.
        sharp.AddRange(open.Keys.Select(e => new SharpEdge(e.Item1, e.Item2)));
        return new FeatureEdges(sharp, round);
    }

    private static bool IsShort(MeshPoint a, MeshPoint b) =>
        Math.Max(Math.Abs((long)a.X - b.X), Math.Max(Math.Abs((long)a.Y - b.Y), Math.Abs((long)a.Z - b.Z))) < SpeckUm;

    // Of length 1; of a triangle without area none, which counts as flat beside any.
    private static (double X, double Y, double Z)? Normal(IndexedMesh mesh, MeshTriangle t)
    {
        var (a, b, c) = (mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]);
        var (ux, uy, uz) = ((double)b.X - a.X, (double)b.Y - a.Y, (double)b.Z - a.Z);
        var (vx, vy, vz) = ((double)c.X - a.X, (double)c.Y - a.Y, (double)c.Z - a.Z);
        var (x, y, z) = ((uy * vz) - (uz * vy), (uz * vx) - (ux * vz), (ux * vy) - (uy * vx));
        var length = Math.Sqrt((x * x) + (y * y) + (z * z));
        return length > 0 ? (x / length, y / length, z / length) : null;
    }

    private static double Dot((double X, double Y, double Z)? a, (double X, double Y, double Z)? b) =>
        a is { } p && b is { } q ? (p.X * q.X) + (p.Y * q.Y) + (p.Z * q.Z) : 1;
}
