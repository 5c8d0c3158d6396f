using BenchmarkDotNet.Attributes;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Ranking;
using Stillwall.Cabinets;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Bench;

/// <summary>The demo appraised, whole and stage by stage.</summary>
[MemoryDiagnoser]
public class AppraisalBench
{
    private Project project = null!;
    private IReadOnlyList<DriverSheet> drivers = [];
    private IReadOnlyList<DriverSheet> tenThousand = [];
    private byte[] text = [];
    private Neighbours.Rooms.RoomModel room = null!;

    [GlobalSetup]
    public void Load()
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "reading-room");
        text = File.ReadAllBytes(Path.Combine(folder, "stillwall.json"));
        project = ProjectReader.Read(text, "stillwall.json").Project ?? throw new InvalidDataException("the demo has faults");
        drivers = [.. DriverTable.Read(File.ReadAllBytes(Path.Combine(folder, "drivers.csv"))).Rows.Select(r => r.Sheet)];
        room = new Facts(project, drivers).Room!;
        var draw = new SeededGenerator(1);
        tenThousand = [.. Enumerable.Range(0, 10000).Select(i => Varied(drivers[i % drivers.Count], draw))];
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

    [Benchmark]
    public object Quiet_with_an_equaliser_to_find() =>
        new Facts(
            project with
            {
                Cabinet = new Cabinet { NetVolumeM3 = 0.012 },
                Brief = project.Brief with { Everyday = project.Brief.Everyday! with { LevelDb = 80 } },
            },
            drivers
        ).Quiet;

    [Benchmark]
    public object Room_curve_of_191_points() => Neighbours.Rooms.RoomCurve.Of(room, 0.001, 1);

    [Benchmark]
    public object Search_of_places() => Neighbours.Rooms.PlaceSearch.Of(room.Geometry, room.Air, new Neighbours.Rooms.PlaceOptions());

    [Benchmark]
    public object Joining() => Neighbours.Joins.Joining.Of(Neighbours.Joins.JoiningInputs.From(project.Brief, 49, 0.72)!);

    [Benchmark]
    public object Rank_ten_thousand_drivers() => Ranking.Of(project, tenThousand, 10);

    private static DriverSheet Varied(DriverSheet sheet, SeededGenerator draw) =>
        sheet with
        {
            FsHz = sheet.FsHz * draw.Factor(0.2),
            Qms = sheet.Qms * draw.Factor(0.2),
            Qes = sheet.Qes * draw.Factor(0.2),
            VasM3 = sheet.VasM3 * draw.Factor(0.2),
            BlTM = null,
            MmsKg = null,
            Qts = null,
        };
}
