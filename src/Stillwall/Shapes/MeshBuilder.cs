namespace Stillwall.Shapes;

/// <summary>Covers a stack of slabs with triangles: caps where neighbours differ, walls along the edges. One run over one stack.</summary>
internal sealed class MeshBuilder
{
    private readonly List<MeshPoint> points = [];
    private readonly List<MeshTriangle> triangles = [];
    private readonly List<SolidLayer?> slabs = [];
    private readonly List<MeshInterface> faces = [];

    private MeshBuilder() { }

    internal static IndexedMesh Build(IReadOnlyList<SolidLayer> layers)
    {
        var builder = new MeshBuilder();
        builder.Stack(layers);
        builder.Cap();
        builder.Wall();
        return new IndexedMesh([.. builder.points], [.. builder.triangles]);
    }

    private void Stack(IReadOnlyList<SolidLayer> layers)
    {
        SolidLayer? last = null;
        foreach (var layer in layers)
        {
            if (last is not null && last.Top < layer.Bottom)
            {
                Face(last.Top, last, null);
                slabs.Add(null);
                last = null;
            }

            Face(layer.Bottom, last, layer);
            slabs.Add(layer);
            last = layer;
        }

        if (last is not null)
        {
            Face(last.Top, last, null);
        }
    }

    private void Face(int height, SolidLayer? below, SolidLayer? above) => faces.Add(new MeshInterface(height, below, above, points));

    private void Cap()
    {
        foreach (var face in faces)
        {
            foreach (var (a, b, c) in CapSweep.Fill(face.Open))
            {
                triangles.Add(new MeshTriangle(face.Corner(a), face.Corner(b), face.Corner(c)));
            }
        }
    }

    private void Wall()
    {
        for (var s = 0; s < slabs.Count; s++)
        {
            for (var e = 0; e < (slabs[s]?.Edges.Count ?? 0); e++)
            {
                if (faces[s].ChainAbove(e) is { } foot)
                {
                    Wall(s, e, foot);
                }
            }
        }
    }

    // From its foot an upright edge runs up through the slabs that have it; corners of neighbours on its two sides belong to its outline.
    private void Wall(int slab, int edge, GridPoint[] foot)
    {
        var (from, to) = (slabs[slab]!.Edges[edge].From, slabs[slab]!.Edges[edge].To);
        var (start, left, right) = (slab, new List<WallPoint>(), new List<WallPoint>());
        for (; faces[slab + 1].RunsOnAs(edge) is var next and >= 0; edge = next)
        {
            slab++;
            AddSide(left, faces[slab], from, 0);
            AddSide(right, faces[slab], to, 1);
        }

        var end = faces[slab + 1];
        List<WallPoint> outline = [.. End(faces[start], foot), .. right, .. End(end, end.ChainBelow(edge)).Reverse(), .. Enumerable.Reverse(left)];
        WallFill.Fill(outline, triangles);
    }

    private static void AddSide(List<WallPoint> side, MeshInterface face, GridPoint at, double along)
    {
        if (face.Existing(at) is var corner and >= 0)
        {
            side.Add(new WallPoint(corner, along, face.Height));
        }
    }

    private static IEnumerable<WallPoint> End(MeshInterface face, GridPoint[] chain)
    {
        var (from, to) = (chain[0], chain[^1]);
        var (dx, dy) = ((double)to.X - from.X, (double)to.Y - from.Y);
        var length = dx * dx + dy * dy;
        return chain.Select(
            (p, i) =>
                new WallPoint(
                    face.Corner(p),
                    i == 0 ? 0
                        : i == chain.Length - 1 ? 1
                        : ((p.X - from.X) * dx + (p.Y - from.Y) * dy) / length,
                    face.Height
                )
        );
    }
}

/// <summary>A corner of a wall: along its edge from 0 to 1, and at a height.</summary>
internal readonly record struct WallPoint(int Corner, double Along, int Height);

/// <summary>Fills a wall: a flat outline that bulges nowhere inwards, with points in line on its sides.</summary>
internal static class WallFill
{
    internal static void Fill(List<WallPoint> outline, List<MeshTriangle> triangles)
    {
        if (outline.Count == 4)
        {
            triangles.Add(new MeshTriangle(outline[0].Corner, outline[1].Corner, outline[2].Corner));
            triangles.Add(new MeshTriangle(outline[0].Corner, outline[2].Corner, outline[3].Corner));
            return;
        }

        for (var i = 0; outline.Count > 3;)
        {
            var n = outline.Count;
            var (before, at, after) = (outline[(i + n - 1) % n], outline[i % n], outline[(i + 1) % n]);
            if (InLine(before, at, after))
            {
                i = (i + 1) % n;
            }
            else if (RestIsALine(outline, i % n))
            {
                Fan(outline, i % n, triangles);
                return;
            }
            else
            {
                triangles.Add(new MeshTriangle(before.Corner, at.Corner, after.Corner));
                outline.RemoveAt(i % n);
                i = (i + 1) % outline.Count;
            }
        }

        if (outline.Count == 3)
        {
            triangles.Add(new MeshTriangle(outline[0].Corner, outline[1].Corner, outline[2].Corner));
        }
    }

    private static bool InLine(WallPoint a, WallPoint b, WallPoint c) =>
        ((b.Along - a.Along) * ((double)c.Height - a.Height) - (c.Along - a.Along) * ((double)b.Height - a.Height)).Equals(0.0);

    private static bool RestIsALine(List<WallPoint> outline, int apex)
    {
        var n = outline.Count;
        var (first, second) = (outline[(apex + 1) % n], outline[(apex + 2) % n]);
        return Enumerable.Range(3, n - 3).All(k => InLine(first, second, outline[(apex + k) % n]));
    }

    private static void Fan(List<WallPoint> outline, int apex, List<MeshTriangle> triangles)
    {
        var n = outline.Count;
        for (var k = 1; k + 1 < n; k++)
        {
            triangles.Add(new MeshTriangle(outline[apex].Corner, outline[(apex + k) % n].Corner, outline[(apex + k + 1) % n].Corner));
        }
    }
}
