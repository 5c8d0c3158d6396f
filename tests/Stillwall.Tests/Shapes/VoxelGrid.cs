using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

/// <summary>A small solid of unit cubes, counted without any mesh: the independent judge of volume and Euler characteristic.</summary>
internal sealed class VoxelGrid
{
    private readonly bool[,,] full;
    private readonly int size;

    internal VoxelGrid(bool[,,] full)
    {
        this.full = full;
        size = full.GetLength(0);
    }

    internal int Count => Cells().Count(c => At(c.X, c.Y, c.Z));

    internal bool At(int x, int y, int z) => x >= 0 && y >= 0 && z >= 0 && x < size && y < size && z < size && full[x, y, z];

    /// <summary>Whether the solid touches itself only along faces: no edge or corner where full cubes meet without sharing a face.</summary>
    internal bool TouchesItselfOnlyInFaces() => Nodes().All(IsSimple);

    /// <summary>Euler characteristic of the surface of a solid that touches itself only along faces: twice that of the solid, V − E + F − C of its cubes.</summary>
    internal int EulerOfSurface()
    {
        var cells = Cells().Where(c => At(c.X, c.Y, c.Z)).ToList();
        // A cell of the grid (corner, edge, face, cube) lies at doubled coordinates: odd where it extends.
        var all = cells.SelectMany(c => from dx in Enumerable.Range(0, 3) from dy in Enumerable.Range(0, 3) from dz in Enumerable.Range(0, 3) select (X: 2 * c.X + dx, Y: 2 * c.Y + dy, Z: 2 * c.Z + dz)).ToHashSet();
        return 2 * all.Sum(c => (c.X % 2 + c.Y % 2 + c.Z % 2) % 2 == 0 ? 1 : -1);
    }

    /// <summary>The same as a solid of upright squares, 1 mm each.</summary>
    internal Solid ToSolid() => Cells().Where(c => At(c.X, c.Y, c.Z)).Aggregate(Solid.Empty, (solid, c) => solid.Add(Region.RoundedRectangle(c.X, c.Y, c.X + 1, c.Y + 1, 0), c.Z, c.Z + 1));

    private IEnumerable<(int X, int Y, int Z)> Cells() =>
        from x in Enumerable.Range(0, size) from y in Enumerable.Range(0, size) from z in Enumerable.Range(0, size) select (x, y, z);

    private IEnumerable<(int X, int Y, int Z)> Nodes() =>
        from x in Enumerable.Range(0, size + 1) from y in Enumerable.Range(0, size + 1) from z in Enumerable.Range(0, size + 1) select (x, y, z);

    // Round a corner of the grid both the full cubes and the empty ones must hang together by faces.
    private bool IsSimple((int X, int Y, int Z) node)
    {
        var around = (from dx in Enumerable.Range(0, 2) from dy in Enumerable.Range(0, 2) from dz in Enumerable.Range(0, 2) select (dx, dy, dz)).ToList();
        bool Full((int dx, int dy, int dz) d) => At(node.X - d.dx, node.Y - d.dy, node.Z - d.dz);
        return new[] { true, false }.All(kind =>
        {
            var left = around.Where(d => Full(d) == kind).ToList();
            var reached = left.Take(1).ToList();
            for (var i = 0; i < reached.Count; i++)
            {
                reached.AddRange(left.Where(d => !reached.Contains(d) && Math.Abs(d.dx - reached[i].dx) + Math.Abs(d.dy - reached[i].dy) + Math.Abs(d.dz - reached[i].dz) == 1));
            }

            return reached.Count == left.Count;
        });
    }
}
