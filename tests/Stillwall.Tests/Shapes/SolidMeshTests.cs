using CsCheck;
using Stillwall.Shapes;

namespace Stillwall.Tests.Shapes;

public sealed class SolidMeshTests
{
    private static readonly Gen<bool[,,]> Cubes = Gen
        .Bool.Array[64]
        .Select(b =>
        {
            var grid = new bool[4, 4, 4];
            for (var i = 0; i < 64; i++)
            {
                grid[i % 4, i / 4 % 4, i / 16] = b[i];
            }

            return grid;
        });

    [Fact]
    public void A_cube_has_twelve_triangles_and_its_volume()
    {
        var mesh = SolidMesh.Of(Solid.Empty.Add(Square(0, 0, 10), 0, 10));
        Assert.Equal(12, mesh.Mesh.Triangles.Length);
        Assert.Equal(8, mesh.Mesh.Points.Length);
        Assert.Equal(1e-6, mesh.Mesh.VolumeM3, 1e-18);
        Assert.Equal([0.01, 0.01, 0.01], mesh.Mesh.SizeM);
        Assert.Equal([0], Genera(mesh));
        Assert.Equal(0, mesh.PatchCount);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(200)]
    public void A_plate_with_holes_has_a_handle_for_each_hole(int holes)
    {
        var plate = Solid.Empty.Add(Region.RoundedRectangle(0, -5, 10 * holes, 5, 3), 0, 4);
        var drilled = Enumerable.Range(0, holes).Aggregate(plate, (p, i) => p.Cut(Region.Disc(10 * i + 5, 0, 6), -1, 5));
        var mesh = SolidMesh.Of(drilled);
        Assert.Equal([holes], Genera(mesh));
        Near(drilled.VolumeM3, mesh);
        // The areas of discs and rounded corners are those of true arcs, but for half a micrometre all round.
        Assert.Equal((100 * holes - (4 - Math.PI) * 9 - holes * Math.PI * 9) * 4e-9, drilled.VolumeM3, 0.5e-6 * 4e-3 * Math.PI * 6e-3 * (holes + 1));
    }

    [Fact]
    public void Steps_on_one_another_are_one_closed_body()
    {
        var steps = Enumerable.Range(0, 6).Aggregate(Solid.Empty, (s, i) => s.Add(Square(i, 2 * i, 30 - 4 * i), 3 * i, 3 * i + 3));
        var mesh = SolidMesh.Of(steps);
        Assert.Equal([0], Genera(mesh));
        Assert.Equal(Enumerable.Range(0, 6).Sum(i => 3e-9 * (30 - 4 * i) * (30 - 4 * i)), mesh.Mesh.VolumeM3, 1e-15);
    }

    [Fact]
    public void A_hollow_is_a_shell_of_its_own_with_its_volume_taken_away()
    {
        var mesh = SolidMesh.Of(Solid.Empty.Add(Square(0, 0, 30), 0, 30).Cut(Square(10, 10, 10), 10, 20));
        var shells = MeshReport.Of(mesh.Mesh).Shells;
        Assert.Equal([-1e-6, 27e-6], shells.Select(s => s.VolumeM3).Order(), (a, b) => Math.Abs(a - b) < 1e-15);
        Assert.Equal([0, 0], shells.Select(s => s.GenusCount));
    }

    [Fact]
    public void A_frame_with_windows_on_four_sides_has_the_handles_of_a_cubes_edges()
    {
        // The edges of a cube: 12 bars, 8 nodes, 12 − 8 + 1 = 5 ways through.
        var frame = Solid
            .Empty.Add(Square(0, 0, 30), 0, 30)
            .Cut(Region.RoundedRectangle(5, -1, 25, 31, 0), 5, 25)
            .Cut(Region.RoundedRectangle(-1, 5, 31, 25, 0), 5, 25)
            .Cut(Square(5, 5, 20), -1, 31);
        var mesh = SolidMesh.Of(frame);
        Assert.Equal([5], Genera(mesh));
        Near(frame.VolumeM3, mesh);
    }

    [Fact]
    public void A_stack_of_cubes_that_touch_in_lines_and_corners_is_closed_and_keeps_its_volume() =>
        Cubes
            .Select(c => new VoxelGrid(c))
            .Sample(
                grid =>
                {
                    var mesh = SolidMesh.Of(grid.ToSolid());
                    Assert.True(mesh.Watertight);
                    // 10 µm round each line of contact: a square of 20 µm over the length of an edge.
                    Assert.Equal(grid.Count * 1e-9, mesh.Mesh.VolumeM3, 4.2e-13 * mesh.PatchCount + 1e-18);
                },
                iter: 150
            );

    [Fact]
    public void A_grid_of_cubes_without_contacts_in_lines_needs_no_patch_and_has_the_euler_characteristic_that_is_counted()
    {
        var seen = new System.Collections.Concurrent.ConcurrentDictionary<int, int>();
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 63].Array[20, 90])
            .Select(Grown)
            .Sample(
                grid =>
                {
                    var mesh = SolidMesh.Of(grid.ToSolid());
                    Assert.Equal(0, mesh.PatchCount);
                    seen.AddOrUpdate(grid.EulerOfSurface(), 1, (_, n) => n + 1);
                    Assert.Equal(grid.EulerOfSurface(), MeshReport.Of(mesh.Mesh).Shells.Sum(s => s.EulerCount));
                    Assert.Equal(grid.Count * 1e-9, mesh.Mesh.VolumeM3, 1e-18);
                },
                iter: 200
            );
        // Bodies in several pieces or with a hollow, single ones, and ones with a way through.
        Assert.True(seen.Keys.Any(e => e > 2) && seen.ContainsKey(2) && seen.Keys.Any(e => e <= 0), string.Join(' ', seen));
    }

    [Fact]
    public void Two_bars_that_touch_in_an_upright_line_are_joined_or_parted_with_a_warning()
    {
        var touching = Solid.Empty.Add(Square(0, 0, 10), 0, 10).Add(Square(10, 10, 10), 0, 10);
        var mesh = SolidMesh.Of(touching);
        Assert.True(mesh.Watertight);
        Assert.True(mesh.PatchCount > 0);
        Assert.Equal(2e-6, mesh.Mesh.VolumeM3, 1e-11);
    }

    [Fact]
    public void Two_blocks_that_touch_in_a_level_line_are_joined_or_parted_with_a_warning()
    {
        var touching = Solid.Empty.Add(Square(0, 0, 10), 0, 10).Add(Square(10, 0, 10), 10, 20);
        var mesh = SolidMesh.Of(touching);
        Assert.True(mesh.Watertight);
        Assert.True(mesh.PatchCount > 0);
        Assert.Equal(2e-6, mesh.Mesh.VolumeM3, 1e-11);
    }

    [Fact]
    public void Random_stacks_are_closed_and_have_the_volume_of_their_slabs() =>
        Stacks.Sample(
            solid =>
            {
                var mesh = SolidMesh.Of(solid);
                Assert.True(mesh.Watertight);
                if (mesh.PatchCount == 0)
                {
                    Near(solid.VolumeM3, mesh);
                }
            },
            iter: 200
        );

    [Fact]
    public void Ten_thousand_awkward_stacks_are_closed_and_stay_so_when_corners_at_the_same_place_are_one()
    {
        var open = Enumerable
            .Range(0, 10_000)
            .AsParallel()
            .Select(seed =>
            {
                var mesh = SolidMesh.Of(AwkwardStack.Of((ulong)seed));
                return (mesh.Watertight, Welded: WeldedMesh.UnmatchedEdges(mesh.Mesh) == 0);
            })
            .ToList();
        Assert.Equal(0, open.Count(m => !m.Watertight));
        Assert.InRange(open.Count(m => m.Welded), 9_990, 10_000);
    }

    [Fact]
    public void Edges_that_cross_halfway_between_points_of_the_grid_meet_there()
    {
        // The diagonals cross at 4999.5 µm in x and in y, on the corner of four squares of the grid.
        var rising = Region.Polygon([(0, 0), (10.001, 10.001), (0, 10.001)]);
        var falling = Region.Polygon([(0, 0), (9.999, 0), (0, 9.999)]);
        var solid = Solid.Empty.Add(rising, 0, 2).Add(falling, 1, 3);
        Near(solid.VolumeM3, SolidMesh.Of(solid));
        // Areas by hand: halves of squares, and a quarter in common. Moving the crossing to a point of the grid shears four edges of 7 mm by 0.7 µm.
        const double risingM2 = 10.001e-3 * 10.001e-3 / 2,
            fallingM2 = 9.999e-3 * 9.999e-3 / 2,
            commonM2 = fallingM2 / 2;
        Assert.Equal(2e-3 * (risingM2 + fallingM2) - 1e-3 * commonM2, solid.VolumeM3, 4 * 7e-3 * 0.7e-6 / 2 * 3e-3);
    }

    [Fact]
    public void The_same_solid_gives_the_same_mesh() =>
        Stacks.Sample(
            solid =>
            {
                var (a, b) = (SolidMesh.Of(solid).Mesh, SolidMesh.Of(solid).Mesh);
                Assert.True(a.Points.SequenceEqual(b.Points) && a.Triangles.SequenceEqual(b.Triangles));
            },
            iter: 20
        );

    /// <summary>Six to twelve rectangles and discs, added and cut in order at random places, heights and sizes.</summary>
    internal static Gen<Solid> Stacks { get; } =
        Gen.Select(Gen.Bool, Gen.Bool, Gen.Double[0, 60], Gen.Double[0, 60], Gen.Double[2, 50], Gen.Double[2, 50], Gen.Int[0, 20], Gen.Int[1, 10])
            .Array[6, 12]
            .Select(steps =>
                steps.Aggregate(
                    Solid.Empty.Add(Region.RoundedRectangle(10, 10, 50, 50, 0), 0, 20),
                    (solid, s) =>
                    {
                        var (add, round, x, y, w, h, from, thick) = s;
                        var region = round ? Region.Disc(x, y, w) : Region.RoundedRectangle(x, y, x + w, y + h, Math.Min(w, h) / 4);
                        return add ? solid.Add(region, from, from + thick) : solid.Cut(region, from, from + thick);
                    }
                )
            );

    private static Region Square(double x, double y, double side) => Region.RoundedRectangle(x, y, x + side, y + side, 0);

    private static IEnumerable<int> Genera(SolidMesh mesh)
    {
        Assert.True(mesh.Watertight);
        return MeshReport.Of(mesh.Mesh).Shells.Select(s => s.GenusCount);
    }

    // Walls are upright without a bend, so the mesh has the volume of its slabs to the last digits; a millionth would do.
    private static void Near(double volume, SolidMesh mesh) => Assert.Equal(volume, mesh.Mesh.VolumeM3, 1e-12 * volume);

    // Cubes are set or taken out one after the other, where the solid still touches itself only along faces: blocks, hollows and ways through.
    private static VoxelGrid Grown(int start, int[] places)
    {
        // From nothing, from a full block, or from a block with a shaft through it.
        var cubes = new bool[4, 4, 4];
        for (var i = 0; i < 64; i++)
        {
            cubes[i % 4, i / 4 % 4, i / 16] = start > 0 && (start == 1 || i % 4 is 0 or 3 || i / 4 % 4 is 0 or 3);
        }

        foreach (var i in places)
        {
            cubes[i % 4, i / 4 % 4, i / 16] ^= true;
            if (!new VoxelGrid(cubes).TouchesItselfOnlyInFaces())
            {
                cubes[i % 4, i / 4 % 4, i / 16] ^= true;
            }
        }

        return new VoxelGrid(cubes);
    }
}
