using System.IO.Compression;
using CsCheck;
using Stillwall.Files.Meshes;
using Stillwall.Shapes;

namespace Stillwall.Files.Tests.Meshes;

public sealed class MeshFileTests
{
    private static readonly Gen<Solid> Plates = Gen.Select(Gen.Bool, Gen.Double[0, 400], Gen.Double[0, 400], Gen.Double[2, 90], Gen.Int[0, 20], Gen.Int[1, 10])
        .Array[3, 9]
        .Select(steps =>
            steps.Aggregate(
                Solid.Empty.Add(Region.RoundedRectangle(0.137, 0.211, 400.333, 400.777, 20.123), 0, 20),
                (solid, s) =>
                    s.Item1
                        ? solid.Add(Region.Disc(s.Item2, s.Item3, s.Item4), s.Item5, s.Item5 + s.Item6)
                        : solid.Cut(Region.Disc(s.Item2, s.Item3, s.Item4), s.Item5, s.Item5 + s.Item6)
            )
        );

    private static readonly IndexedMesh Block = SolidMesh
        .Of(Solid.Empty.Add(Region.RoundedRectangle(0, 0, 20, 10, 0), 0, 5).Cut(Region.Disc(5, 5, 3), 1, 5))
        .Mesh;

    [Fact]
    public void An_stl_file_that_is_read_back_is_closed_and_has_the_volume_of_the_solid() =>
        Plates.Sample(
            solid =>
            {
                var mesh = SolidMesh.Of(solid);
                Assert.True(mesh.Watertight);
                var (read, _) = MeshReaders.Stl(StlFile.Write(mesh.Mesh, "plate"));
                Assert.Equal(0, read.UnmatchedEdges());
                Assert.Equal(mesh.Mesh.VolumeM3 * 1e9, read.VolumeMm3(), 1e-6 * read.VolumeMm3());
                if (mesh.PatchCount == 0)
                {
                    Assert.Equal(solid.VolumeM3 * 1e9, read.VolumeMm3(), 1e-6 * read.VolumeMm3());
                }
            },
            iter: 40
        );

    [Fact]
    public void Normals_in_an_stl_file_have_length_one_and_point_along_the_right_hand_rule()
    {
        var (read, normals) = MeshReaders.Stl(StlFile.Write(Block, "block"));
        foreach (var (t, n) in read.Triangles.Zip(normals))
        {
            Assert.Equal(1, Math.Sqrt((double)n.X * n.X + (double)n.Y * n.Y + (double)n.Z * n.Z), 1e-6);
            var (ux, uy, uz) = (t[1].X - t[0].X, t[1].Y - t[0].Y, t[1].Z - t[0].Z);
            var (vx, vy, vz) = (t[2].X - t[0].X, t[2].Y - t[0].Y, t[2].Z - t[0].Z);
            Assert.True(n.X * (uy * vz - uz * vy) + n.Y * (uz * vx - ux * vz) + n.Z * (ux * vy - uy * vx) > 0);
        }
    }

    [Fact]
    public void An_stl_file_carries_the_name_and_never_begins_with_the_word_of_the_other_kind()
    {
        Assert.Equal("binary STL, mm: front outer plate", MeshReaders.Stl(StlFile.Write(Block, "front outer plate")).Mesh.Name);
        Assert.Equal(80, MeshReaders.Stl(StlFile.Write(Block, new string('x', 300))).Mesh.Name.Length);
        Assert.StartsWith("binary", MeshReaders.Stl(StlFile.Write(Block, "solid")).Mesh.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void A_3mf_assembly_that_is_read_back_has_every_part_by_its_name_in_its_place()
    {
        var placed = Placement.AsPrinted.TurnedAboutX(1).Shifted(100, 200.5, -3);
        var read = MeshReaders.ThreeMf(ThreeMfFile.Write([new("base", Block, Placement.AsPrinted), new("side <\"&\">", Block, placed)], "Pair & co"));
        Assert.Equal(["base", "side <\"&\">"], read.Select(r => r.Name));
        Assert.All(read, r => Assert.Equal(0, r.UnmatchedEdges()));
        Assert.All(read, r => Assert.Equal(Block.VolumeM3 * 1e9, r.VolumeMm3(), 1e-3));
        Assert.Equal(((0f, 20f), (0f, 10f), (0f, 5f)), (read[0].Span(p => p.X), read[0].Span(p => p.Y), read[0].Span(p => p.Z)));
        // A quarter turn about x takes y to z and z to −y.
        Assert.Equal(((100f, 120f), (195.5f, 200.5f), (-3f, 7f)), (read[1].Span(p => p.X), read[1].Span(p => p.Y), read[1].Span(p => p.Z)));
    }

    [Fact]
    public void A_placed_mesh_is_what_a_reader_of_the_transform_sees() =>
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 3], Gen.Int[0, 3], Gen.Int[-500, 500], Gen.Int[-500, 500], Gen.Int[-500, 500])
            .Sample(
                (a, b, c, x, y, z) =>
                {
                    var placement = Placement.AsPrinted.TurnedAboutX(a).TurnedAboutZ(b).Shifted(x, y, z).TurnedAboutX(c);
                    var read = MeshReaders.ThreeMf(
                        ThreeMfFile.Write([new("part", Block, placement), new("part", Block.Placed(placement), Placement.AsPrinted)], "both")
                    );
                    Assert.Equal(read[1].Triangles.SelectMany(t => t), read[0].Triangles.SelectMany(t => t));
                },
                iter: 50
            );

    [Fact]
    public void A_3mf_file_is_the_same_every_time_and_holds_three_entries_of_a_fixed_date()
    {
        var file = ThreeMfFile.Write([new("base", Block, Placement.AsPrinted)], "One");
        Assert.Equal(file, ThreeMfFile.Write([new("base", Block, Placement.AsPrinted)], "One"));
        using var archive = new ZipArchive(new MemoryStream(file));
        Assert.Equal(["[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model"], archive.Entries.Select(e => e.FullName));
        Assert.All(archive.Entries, e => Assert.Equal(new DateTime(1980, 1, 1), e.LastWriteTime.DateTime));
    }

    [Fact]
    public void A_3mf_file_without_a_part_is_refused_by_name() =>
        Assert.Contains("parts", Assert.Throws<ArgumentException>(() => ThreeMfFile.Write([], "none")).Message, StringComparison.Ordinal);

    [Fact]
    public void Coordinates_in_a_3mf_file_keep_every_micrometre_on_both_sides_of_nought() =>
        Gen.Int[-300_000, 300_000]
            .Array[3]
            .Sample(
                at =>
                {
                    var placement = Placement.AsPrinted.Shifted(at[0] / 1000.0, at[1] / 1000.0, at[2] / 1000.0);
                    var read = MeshReaders.ThreeMf(ThreeMfFile.Write([new("part", Block.Placed(placement), Placement.AsPrinted)], "one"))[0];
                    Assert.Equal((float)(at[0] / 1000.0), read.Span(p => p.X).Low);
                    Assert.Equal((float)(at[1] / 1000.0), read.Span(p => p.Y).Low);
                    Assert.Equal((float)(at[2] / 1000.0), read.Span(p => p.Z).Low);
                },
                iter: 50
            );
}
