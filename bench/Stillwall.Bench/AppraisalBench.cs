using BenchmarkDotNet.Attributes;
using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Projects;

namespace Stillwall.Bench;

/// <summary>The demo appraised, whole and stage by stage.</summary>
[MemoryDiagnoser]
public class AppraisalBench
{
    private Project project = null!;
    private IReadOnlyList<DriverSheet> drivers = [];
    private byte[] text = [];

    [GlobalSetup]
    public void Load()
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "reading-room");
        text = File.ReadAllBytes(Path.Combine(folder, "stillwall.json"));
        project = ProjectReader.Read(text, "stillwall.json").Project ?? throw new InvalidDataException("the demo has faults");
        drivers = [.. DriverTable.Read(File.ReadAllBytes(Path.Combine(folder, "drivers.csv"))).Rows.Select(r => r.Sheet)];
    }

    [Benchmark(Baseline = true)]
    public object Appraisal_without_remedies() => Appraisal.WithoutRemedies(project, drivers);

    [Benchmark]
    public object Appraisal_with_remedies() => Appraisal.Of(project, drivers);

    [Benchmark]
    public object Read_the_project() => ProjectReader.Read(text, "stillwall.json");

    [Benchmark]
    public object Draw_the_cabinet() => CabinetGeometry.Of(new Facts(project, drivers).Sizes!);

    [Benchmark]
    public object Box() => new Facts(project with { Cabinet = new Cabinet { NetVolumeM3 = 0.012 } }, drivers).Box;

    [Benchmark]
    public object Walls() => new Facts(project, drivers).Walls;

    [Benchmark]
    public object Quiet() => new Facts(project with { Cabinet = new Cabinet { NetVolumeM3 = 0.012 } }, drivers).Quiet;
}
