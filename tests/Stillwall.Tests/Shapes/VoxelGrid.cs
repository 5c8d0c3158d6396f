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

    /// <summary>
    /// Euler characteristic of the surface of a solid that touches itself only along faces: twice that of the solid, V − E + F − C of its cubes.
    /// </summary>
    internal int EulerOfSurface()
    {
        var cells = Cells().Where(c => At(c.X, c.Y, c.Z)).ToList();
        // A cell of the grid (corner, edge, face, cube) lies at doubled coordinates: odd where it extends.
        var all = cells
            .SelectMany(c =>
                from dx in Enumerable.Range(0, 3)
                from dy in Enumerable.Range(0, 3)
                from dz in Enumerable.Range(0, 3)
                select (X: 2 * c.X + dx, Y: 2 * c.Y + dy, Z: 2 * c.Z + dz)
            )
            .ToHashSet();
        return 2 * all.Sum(c => (c.X % 2 + c.Y % 2 + c.Z % 2) % 2 == 0 ? 1 : -1);
    }

    /// <summary>The same as a solid of upright squares, 1 mm each.</summary>
    internal Solid ToSolid() =>
        Cells()
            .Where(c => At(c.X, c.Y, c.Z))
            .Aggregate(Solid.Empty, (solid, c) => solid.Add(Region.RoundedRectangle(c.X, c.Y, c.X + 1, c.Y + 1, 0), c.Z, c.Z + 1));

    private IEnumerable<(int X, int Y, int Z)> Cells() =>
        from x in Enumerable.Range(0, size)
        from y in Enumerable.Range(0, size)
        from z in Enumerable.Range(0, size)
        select (x, y, z);

    private IEnumerable<(int X, int Y, int Z)> Nodes() =>
        from x in Enumerable.Range(0, size + 1)
        from y in Enumerable.Range(0, size + 1)
        from z in Enumerable.Range(0, size + 1)
        select (x, y, z);

    // Round a corner of the grid both the full cubes and the empty ones must hang together by faces; each of the 256 ways to fill the eight cubes is
    // looked at once.
    private static readonly bool[] Simple = [.. Enumerable.Range(0, 256).Select(cubes => HangsTogether(cubes) && HangsTogether(~cubes & 255))];

    private static bool HangsTogether(int cubes)
    {
        // Two of the eight cubes share a face where their numbers differ in one bit.
        var reached = cubes & -cubes;
        for (var i = 0; i < 8; i++)
        {
            reached |= Enumerable
                .Range(0, 8)
                .Where(c => (cubes >> c & 1) == 1 && new[] { 1, 2, 4 }.Any(bit => (reached >> (c ^ bit) & 1) == 1))
                .Sum(c => 1 << c & ~reached);
        }

        return reached == cubes;
    }

    private bool IsSimple((int X, int Y, int Z) node)
    {
        var cubes = 0;
        for (var c = 0; c < 8; c++)
        {
            cubes |= At(node.X - (c & 1), node.Y - (c >> 1 & 1), node.Z - (c >> 2)) ? 1 << c : 0;
        }

        return Simple[cubes];
    }
}
