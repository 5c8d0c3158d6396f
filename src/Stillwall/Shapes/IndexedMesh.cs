using System.Collections.Immutable;
using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Shapes;

/// <summary>A corner of a mesh, on the grid.</summary>
internal readonly record struct MeshPoint(int X, int Y, int Z);

/// <summary>A triangle of a mesh, counter-clockwise seen from outside.</summary>
/// <param name="B">Index of the second corner.</param>
/// <param name="C">Index of the third corner.</param>
internal readonly record struct MeshTriangle(int A, int B, int C);

/// <summary>A surface of triangles on the grid of 1 µm: what a printer's file is written from.</summary>
internal sealed record IndexedMesh(ImmutableArray<MeshPoint> Points, ImmutableArray<MeshTriangle> Triangles)
{
    private const double CubicMetresPerCubicMicrometre = 1e-18;

    /// <summary>Volume that the surface encloses, m³, by the divergence theorem in whole numbers.</summary>
    public double VolumeM3
    {
        get
        {
            Int128 six = 0;
            foreach (var t in Triangles)
            {
                var (a, b, c) = (Points[t.A], Points[t.B], Points[t.C]);
                var area = (long)(b.X - a.X) * (c.Y - a.Y) - (long)(b.Y - a.Y) * (c.X - a.X);
                six += (Int128)area * ((long)a.Z + b.Z + c.Z);
            }

            return (double)six / 6 * CubicMetresPerCubicMicrometre;
        }
    }

    /// <summary>Sizes of the box round the mesh, m: x, y, z; zeros round nothing.</summary>
    public IReadOnlyList<double> SizeM => Points.IsEmpty ? [0, 0, 0] : [Span(Points, p => p.X), Span(Points, p => p.Y), Span(Points, p => p.Z)];

    /// <summary>The mesh elsewhere.</summary>
    public IndexedMesh Placed(Placement placement)
    {
        ArgumentNullException.ThrowIfNull(placement);
        return this with { Points = [.. Points.Select(placement.Apply)] };
    }

    private static double Span(ImmutableArray<MeshPoint> points, Func<MeshPoint, int> along) => (points.Max(along) - points.Min(along)) * MetresPerMicrometre;
}
