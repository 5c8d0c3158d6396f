using System.Collections.Concurrent;
using BenchmarkDotNet.Attributes;
using Stillwall.Appraisals;
using Stillwall.Files.Meshes;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Bench;

/// <summary>The demo's parts drawn and covered with triangles, and files of meshes.</summary>
[MemoryDiagnoser]
public class PartsBench
{
    private Project project = null!;
    private Facts facts = null!;
    private IndexedMesh large = null!;

    [GlobalSetup]
    public void Load()
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "reading-room");
        project =
            ProjectReader.Read(File.ReadAllBytes(Path.Combine(folder, "stillwall.json")), "stillwall.json").Project
            ?? throw new InvalidDataException("the demo has faults");
        facts = new Facts(project, [.. DriverTable.Read(File.ReadAllBytes(Path.Combine(folder, "drivers.csv"))).Rows.Select(r => r.Sheet)]);
        large = TwoHundredThousand();
    }

    [Benchmark(Baseline = true)]
    public object All_parts_one_after_another() => Drawn().Select(p => MeshedPart.Of(p, project.Brief.Printer)).ToList();

    [Benchmark]
    public object All_parts_on_every_core() =>
        Partitioner
            .Create(Drawn(), EnumerablePartitionerOptions.NoBuffering)
            .AsParallel()
            .AsOrdered()
            .Select(p => MeshedPart.Of(p, project.Brief.Printer))
            .ToList();

    [Benchmark]
    public object Write_3mf_of_200000_triangles() => ThreeMfFile.Write([new ThreeMfPart("large", large, Placement.AsPrinted)], "large");

    [Benchmark]
    public object Write_stl_of_200000_triangles() => StlFile.Write(large, "large");

    private IReadOnlyList<DrawnPart> Drawn() => PartDrawings.Of(facts.PartJob!);

    // A plate with rows of holes.
    private static IndexedMesh TwoHundredThousand()
    {
        var holes = Region.JoinAll(Enumerable.Range(0, 40).SelectMany(i => Enumerable.Range(0, 40).Select(j => Region.Disc(6 * i + 4, 6 * j + 4, 4))));
        var solid = Solid.Empty.Add(Region.RoundedRectangle(0, 0, 244, 244, 3), 0, 4).Cut(holes, 0, 4);
        return SolidMesh.Of(solid).Mesh;
    }
}
