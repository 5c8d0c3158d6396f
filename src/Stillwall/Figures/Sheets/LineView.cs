using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>A direction in space.</summary>
internal readonly record struct Direction(double X, double Y, double Z)
{
    internal double Dot(Direction o) => X * o.X + Y * o.Y + Z * o.Z;

    internal Direction Cross(Direction o) => new(Y * o.Z - Z * o.Y, Z * o.X - X * o.Z, X * o.Y - Y * o.X);

    internal Direction Unit()
    {
        var length = Math.Sqrt(Dot(this));
        return length > 0 ? new(X / length, Y / length, Z / length) : this;
    }
}

/// <summary>A way of looking: along a direction, with another one up on the paper.</summary>
internal sealed record Look(Direction Right, Direction Up, Direction Away)
{
    internal static Look From(Direction away, Direction up)
    {
        var d = away.Unit();
        var right = d.Cross(up).Unit();
        return new Look(right, right.Cross(d), d);
    }

    internal static Look Down { get; } = From(new(0, 0, -1), new(0, 1, 0));

    internal static Look FrontToRear { get; } = From(new(0, 1, 0), new(0, 0, 1));

    internal static Look RearToFront { get; } = From(new(0, -1, 0), new(0, 0, 1));

    internal static Look RightToLeft { get; } = From(new(-1, 0, 0), new(0, 0, 1));

    internal static Look Isometric { get; } = From(new(-1, 1, -1), new(0, 0, 1));

    internal (double U, double V, double Depth) Of(MeshPoint p)
    {
        var at = new Direction(p.X.OffGrid(), p.Y.OffGrid(), p.Z.OffGrid());
        return (at.Dot(Right), at.Dot(Up), at.Dot(Away));
    }
}

/// <summary>A visible line: from and to, mm of the thing, across and up as looked at.</summary>
internal readonly record struct SeenLine(double FromU, double FromV, double ToU, double ToV);

/// <summary>The edges of meshes that can be seen from one side, hidden parts removed by comparing depths.</summary>
/// <remarks>
/// Edges are corners sharper than 30° and outlines of rounds. What is nearest at each point of a fine raster is kept; of each edge the lengths that
/// nothing hides are drawn, exactly where the edge lies. Source: our own construction; comparing depths on a raster is common practice.
/// </remarks>
internal sealed class LineView
{
    private const double SharpestSmooth = 0.866,
        Bias = 0.35,
        ShortestPixels = 2.5;

    private readonly Look look;
    private readonly double pixel,
        left,
        bottom,
        cut;
    private readonly int width,
        height;
    private readonly float[] depths;
    private readonly short[] owners;

    private LineView(Look look, double pixel, (double Left, double Bottom, double Right, double Top) box, double cut)
    {
        (this.look, this.pixel, this.cut) = (look, pixel, cut);
        (left, bottom) = (box.Left - 3 * pixel, box.Bottom - 3 * pixel);
        (width, height) = ((int)Math.Ceiling((box.Right - left) / pixel) + 3, (int)Math.Ceiling((box.Top - bottom) / pixel) + 3);
        depths = new float[width * height];
        owners = new short[width * height];
        Array.Fill(depths, float.MaxValue);
        Array.Fill(owners, (short)-1);
    }

    /// <summary>Box round meshes as looked at: left, bottom, right, top, mm.</summary>
    internal static (double Left, double Bottom, double Right, double Top) BoxOf(IEnumerable<IndexedMesh> meshes, Look look)
    {
        var (l, b, r, t) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var (u, v, _) in meshes.SelectMany(m => m.Points).Select(look.Of))
        {
            (l, b, r, t) = (Math.Min(l, u), Math.Min(b, v), Math.Max(r, u), Math.Max(t, v));
        }

        return (l, b, r, t);
    }

    /// <summary>Looks at meshes.</summary>
    /// <param name="pixel">Side of a point of the raster, mm of the thing.</param>
    /// <param name="cut">Depth before which nothing is drawn, mm.</param>
    internal static LineView Of(IReadOnlyList<IndexedMesh> meshes, Look look, double pixel, double cut = double.MinValue)
    {
        var view = new LineView(look, pixel, BoxOf(meshes, look), cut);
        for (var i = 0; i < meshes.Count; i++)
        {
            view.Paint(meshes[i], (short)i);
        }

        return view;
    }

    /// <summary>The lines of one mesh that can be seen.</summary>
    internal IReadOnlyList<SeenLine> Lines(IndexedMesh mesh)
    {
        var points = mesh.Points.Select(look.Of).ToArray();
        var normals = mesh.Triangles.Select(t => Normal(mesh, t)).ToArray();
        var edges = new Dictionary<(int, int), (int First, int Second)>();
        for (var i = 0; i < mesh.Triangles.Length; i++)
        {
            var t = mesh.Triangles[i];
            foreach (var (a, b) in new[] { (t.A, t.B), (t.B, t.C), (t.C, t.A) })
            {
                var key = a < b ? (a, b) : (b, a);
                edges[key] = edges.TryGetValue(key, out var found) ? (found.First, i) : (i, -1);
            }
        }

        return [.. edges.Where(e => IsDrawn(e.Value, normals)).SelectMany(e => Seen(points[e.Key.Item1], points[e.Key.Item2]))];
    }

    /// <summary>Highest and lowest point at which a mesh is the nearest thing; null where it is hidden.</summary>
    internal ((double U, double V) Top, (double U, double V) Bottom)? EndsOf(int mesh)
    {
        var (low, high) = (Array.IndexOf(owners, (short)mesh), Array.LastIndexOf(owners, (short)mesh));
        return low < 0 ? null : (Place(high % width + 0.5, high / width + 0.5), Place(low % width + 0.5, low / width + 0.5));
    }

    /// <summary>Whether nothing is drawn within a box, mm of the thing.</summary>
    internal bool IsFree(double fromU, double fromV, double toU, double toV)
    {
        var (x0, x1) = (Math.Max(0, (int)((fromU - left) / pixel)), Math.Min(width - 1, (int)((toU - left) / pixel)));
        for (var y = Math.Max(0, (int)((fromV - bottom) / pixel)); y <= Math.Min(height - 1, (int)((toV - bottom) / pixel)); y++)
        {
            if (x1 >= x0 && owners.AsSpan(y * width + x0, x1 - x0 + 1).ContainsAnyExcept((short)-1))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Outlines of what each mesh covers, by its place in the list.</summary>
    internal IReadOnlyDictionary<int, IReadOnlyList<IReadOnlyList<(double U, double V)>>> Outlines() =>
        MaskOutlines
            .Of(width, height, (x, y) => owners[y * width + x])
            .ToDictionary(
                o => o.Key,
                o =>
                    (IReadOnlyList<IReadOnlyList<(double U, double V)>>)
                        [.. o.Value.Select(ring => (IReadOnlyList<(double U, double V)>)[.. ring.Select(p => Place(p.X, p.Y))])]
            );

    private (double U, double V) Place(double column, double row) => (left + column * pixel, bottom + row * pixel);

    private static Direction Normal(IndexedMesh mesh, MeshTriangle t)
    {
        var (a, b, c) = (mesh.Points[t.A], mesh.Points[t.B], mesh.Points[t.C]);
        return new Direction(b.X - (double)a.X, b.Y - (double)a.Y, b.Z - (double)a.Z)
            .Cross(new Direction(c.X - (double)a.X, c.Y - (double)a.Y, c.Z - (double)a.Z))
            .Unit();
    }

    private bool Faces(Direction normal) => normal.Dot(look.Away) < -1e-6;

    private bool IsDrawn((int First, int Second) edge, Direction[] normals)
    {
        var (one, other) = (normals[edge.First], edge.Second < 0 ? default : normals[edge.Second]);
        var (seen, alsoSeen) = (Faces(one), edge.Second >= 0 && Faces(other));
        return (seen || alsoSeen) && (edge.Second < 0 || seen != alsoSeen || one.Dot(other) < SharpestSmooth);
    }

    private void Paint(IndexedMesh mesh, short owner)
    {
        var points = mesh.Points.Select(look.Of).ToArray();
        foreach (var t in mesh.Triangles.Where(t => Faces(Normal(mesh, t))))
        {
            Paint(points[t.A], points[t.B], points[t.C], owner);
        }
    }

    private void Paint((double U, double V, double D) a, (double U, double V, double D) b, (double U, double V, double D) c, short owner)
    {
        var area = (b.U - a.U) * (c.V - a.V) - (c.U - a.U) * (b.V - a.V);
        if (Math.Abs(area) < 1e-9)
        {
            return;
        }

        var du = ((b.D - a.D) * (c.V - a.V) - (c.D - a.D) * (b.V - a.V)) / area;
        var dv = ((b.U - a.U) * (c.D - a.D) - (c.U - a.U) * (b.D - a.D)) / area;
        var (low, high) = (Row(Math.Min(a.V, Math.Min(b.V, c.V))), Row(Math.Max(a.V, Math.Max(b.V, c.V))));
        for (var row = low; row <= high; row++)
        {
            var v = bottom + (row + 0.5) * pixel;
            var (from, to) = (double.MaxValue, double.MinValue);
            Crossing(a, b, v, ref from, ref to);
            Crossing(b, c, v, ref from, ref to);
            Crossing(c, a, v, ref from, ref to);
            var first = (int)Math.Ceiling((from - left) / pixel - 0.5);
            for (var column = first; left + (column + 0.5) * pixel <= to; column++)
            {
                var depth = a.D + du * (left + (column + 0.5) * pixel - a.U) + dv * (v - a.V);
                var at = row * width + column;
                if (depth >= cut && depth < depths[at])
                {
                    (depths[at], owners[at]) = ((float)depth, owner);
                }
            }
        }
    }

    private int Row(double v) => Math.Clamp((int)((v - bottom) / pixel), 0, height - 1);

    private static void Crossing((double U, double V, double D) a, (double U, double V, double D) b, double v, ref double from, ref double to)
    {
        if (a.V < v != b.V < v)
        {
            var u = a.U + (v - a.V) / (b.V - a.V) * (b.U - a.U);
            (from, to) = (Math.Min(from, u), Math.Max(to, u));
        }
    }

    private IEnumerable<SeenLine> Seen((double U, double V, double D) a, (double U, double V, double D) b)
    {
        var length = Math.Sqrt((b.U - a.U) * (b.U - a.U) + (b.V - a.V) * (b.V - a.V));
        var steps = Math.Max(1, (int)Math.Ceiling(length / pixel));
        var start = -1;
        for (var i = 0; i <= steps; i++)
        {
            var seen = i < steps && IsSeen(a, b, (i + 0.5) / steps);
            if (seen && start < 0)
            {
                start = i;
            }
            else if (!seen && start >= 0)
            {
                // Crumbs between hidden lengths are rounding of the raster.
                if (i - start >= ShortestPixels || (start == 0 && i == steps))
                {
                    var (from, to) = ((double)start / steps, (double)i / steps);
                    yield return new SeenLine(a.U + from * (b.U - a.U), a.V + from * (b.V - a.V), a.U + to * (b.U - a.U), a.V + to * (b.V - a.V));
                }

                start = -1;
            }
        }
    }

    private bool IsSeen((double U, double V, double D) a, (double U, double V, double D) b, double at)
    {
        var depth = a.D + at * (b.D - a.D);
        if (depth < cut - 1e-6)
        {
            return false;
        }

        var (x, y) = ((int)((a.U + at * (b.U - a.U) - left) / pixel), (int)((a.V + at * (b.V - a.V) - bottom) / pixel));
        for (var dy = -1; dy <= 1; dy++)
        {
            for (var dx = -1; dx <= 1; dx++)
            {
                if (depth <= depths[(y + dy) * width + x + dx] + Bias)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
