using Stillwall.Appraisals;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>Thirty projects drawn from a seed, so far apart that nearly every finding fails somewhere, and appraised once for all tests.</summary>
internal static class VariedProjects
{
    internal static IReadOnlyList<Project> Projects { get; } = [DemoProject.Project, .. Sound().Take(30)];

    private static readonly Lazy<IReadOnlyList<(Project Project, Appraisal Appraisal)>> Appraised = new(() =>
        [.. Projects.AsParallel().AsOrdered().Select(p => (p, Appraisal.Of(p, DemoDrivers.All)))]
    );

    private static readonly Lazy<IReadOnlyList<(string Name, Project Project, Appraisal Appraisal)>> BareAppraised = new(() =>
        [.. Bare!.AsParallel().AsOrdered().Select(b => (b.Name, b.Project, Appraisal.Of(b.Project, DemoDrivers.All)))]
    );

    /// <summary>The demo, then the thirty.</summary>
    internal static IReadOnlyList<(Project Project, Appraisal Appraisal)> All => Appraised.Value;

    /// <summary>The bare ones, appraised.</summary>
    internal static IReadOnlyList<(string Name, Project Project, Appraisal Appraisal)> BareAll => BareAppraised.Value;

    /// <summary>Projects of which little is stated.</summary>
    internal static IReadOnlyList<(string Name, Project Project)> Bare { get; } =
    [
        ("nothing", new Project { FormatVersion = 1 }),
        ("a ready box and a driver", ReadyBox("Dunlin 8", 0.024)),
        ("a ready box alone", ReadyBox("Dunlin 8", 0.024) with { Driver = null }),
        ("a driver that is not in the table", DemoProject.Project with { Driver = new DriverChoice("Ouzel 8", null) }),
        ("no driver", DemoProject.Project with { Driver = null }),
        ("no brief", DemoProject.Project with { Brief = new Brief() }),
        ("no materials", DemoProject.Project with { Materials = null }),
        ("no cabinet", DemoProject.Project with { Cabinet = null }),
        ("a single printed wall", With(DemoProject.Project, c => c with { CoreM = 0 })),
        ("a single printed wall of one skin", With(DemoProject.Project, c => c with { CoreM = 0, InnerSkinM = null })),
        ("the smallest core that the file takes", With(DemoProject.Project, c => c with { CoreM = 0.001 })),
        ("walls that leave a slit of air", With(DemoProject.Project, c => c with { CoreM = 0.1175, Openings = null, StrutPitchM = 1 })),
        ("no strut in any wall", With(DemoProject.Project, c => c with { StrutPitchM = 1 })),
        ("two drivers", With(DemoProject.Project, c => c with { DriverCount = 2 })),
        ("ten braces", With(DemoProject.Project, c => c with { Braces = 10 })),
        ("a data sheet of nothing but a name", DemoProject.Project with { Driver = new DriverChoice(null, new DriverSheet { Name = "Ouzel 8" }) }),
        (
            "thin and cold air",
            DemoProject.Project with
            {
                Brief = DemoProject.Project.Brief with
                {
                    Air = new AirState { TemperatureC = -40, PressurePa = 30000 },
                },
            }
        ),
    ];

    internal static Project ReadyBox(string driver, double netVolumeM3) =>
        new()
        {
            FormatVersion = 1,
            Driver = new DriverChoice(driver, null),
            Cabinet = new Cabinet { NetVolumeM3 = netVolumeM3 },
        };

    internal static Project With(Project project, Func<Cabinet, Cabinet> change) => project with { Cabinet = change(project.Cabinet!) };

    /// <summary>Projects without a fault, one after another, always the same.</summary>
    internal static IEnumerable<Project> Sound()
    {
        // What few ask for is drawn by itself, so that the rest stays as it was.
        var (draw, besides) = (new Draw(20261114), new Draw(20261125));
        while (true)
        {
            var project = Asking(Any(draw), besides);
            if (!ProjectChecks.Of(project).Any())
            {
                yield return project;
            }
        }
    }

    private static Project Asking(Project project, Draw d)
    {
        var (recessM, holeM) = (d.Between(0.0002, 0.003, 0.0001), d.Between(0.003, 0.012, 0.0005));
        var asked = d.Chance(0.3) ? With(project, c => c with { Openings = c.Openings! with { RecessM = recessM } }) : project;
        asked = d.Chance(0.3) ? With(asked, c => c with { Openings = c.Openings! with { DryingHoleM = holeM } }) : asked;
        return ProjectChecks.Of(asked).Any() ? project : asked;
    }

    private static Project Any(Draw d) =>
        DemoProject.Project with
        {
            Name = "drawn from a seed",
            Budget = d.Between(100, 700, 5),
            Brief = AnyBrief(d),
            Driver = new DriverChoice(d.OneOf([.. DemoDrivers.All.Take(12).Select(s => s.Name)]), null),
            Cabinet = AnyCabinet(d),
            Materials = new Stillwall.Projects.Materials
            {
                Skin = d.OneOf("pla", "petg", "asa", "abs"),
                Cast = new Cast
                {
                    Mix = d.OneOf("plaster", "hard-gypsum", "gypsum-binder", "sand-plaster", "cement-grout"),
                    PowderPerWater = d.Chance(0.7) ? d.Between(0.8, 3, 0.05) : null,
                    PotLifeS = d.Chance(0.8) ? d.Between(180, 2400, 30) : null,
                    BucketM3 = d.Between(0.001, 0.012, 0.0005),
                    SoakS = d.Between(0, 240, 10),
                    StirS = d.Between(30, 180, 10),
                    PourRateM3S = d.Between(5e-6, 6e-5, 1e-6),
                    People = (int)d.Between(1, 3, 1),
                    HoldDownKg = d.Chance(0.8) ? d.Between(0, 8, 0.1) : null,
                },
            },
            Stock = [.. DemoProject.Project.Stock!.Select(s => s with { Amount = s.Amount with { Value = s.Amount.Value * d.Between(0, 3, 0.25) } })],
            Measured = new Measured
            {
                CoreModulusPa = d.Between(1e9, 9e9, 1e8),
                SystemResonanceHz = d.Between(40, 80, 1),
                SystemQ = d.Between(0.5, 1.2, 0.01),
            },
            Logbook =
            [
                new LogEntry
                {
                    Date = new DateOnly(2026, 12, 1),
                    Kind = "weigh-in",
                    MassKg = d.Between(3, 20, 0.1),
                },
            ],
        };

    private static Brief AnyBrief(Draw d) =>
        DemoProject.Project.Brief with
        {
            Printer = DemoProject.Project.Brief.Printer! with
            {
                BuildWidthM = d.Between(0.18, 0.4, 0.01),
                BuildDepthM = d.Between(0.18, 0.4, 0.01),
                BuildHeightM = d.Between(0.18, 0.5, 0.01),
                Flow = d.Between(4, 25, 1),
            },
            Spot = DemoProject.Project.Brief.Spot! with
            {
                WidthM = d.Between(0.25, 0.6, 0.01),
                HeightM = d.Between(0.25, 0.6, 0.01),
                DepthM = d.Between(0.3, 0.7, 0.01),
            },
            Aim = new Aim
            {
                LowestHz = d.Between(18, 50, 1),
                CrossoverHz = d.Between(60, 200, 5),
                LevelDb = d.Between(80, 112, 1),
                DistanceM = d.Between(1, 4, 0.5),
                SystemQ = d.Between(0.5, 1, 0.01),
                SystemQTolerance = d.Between(0.05, 0.3, 0.01),
            },
            Everyday = new Everyday
            {
                LevelDb = d.Between(45, 90, 1),
                Programme = d.OneOf("speech", "acoustic-music", "music", "pink"),
                Hours = d.Between(0.5, 16, 0.25),
            },
            Amplifier = new Amplifier
            {
                PowerW = d.Between(20, 500, 10),
                RatedLoadOhm = 4,
                MinimumLoadOhm = d.Between(2, 7, 0.1),
            },
            MainSpeakers = new MainSpeakers
            {
                CornerHz = d.Between(50, 180, 5),
                Q = d.Between(0.5, 1.4, 0.05),
                SensitivityDb = d.Between(80, 92, 1),
            },
            Air = new AirState { TemperatureC = d.Between(5, 32, 1), PressurePa = d.Between(85000, 103000, 500) },
            Room = d.Chance(0.7)
                ? new Room
                {
                    WidthM = d.Between(2, 6, 0.1),
                    LengthM = d.Between(2.5, 8, 0.1),
                    HeightM = d.Between(2.2, 3.5, 0.1),
                    DecayTimeS = d.Between(0.3, 1.2, 0.1),
                    PressureDecayTimeS = d.Between(1, 3, 0.1),
                    CabinetAtM = [d.Between(0.2, 1.9, 0.05), d.Between(0.2, 0.5, 0.05), d.Between(0.1, 0.4, 0.05)],
                    SeatAtM = [d.Between(0.5, 1.9, 0.05), d.Between(1, 2.4, 0.05), d.Between(0.9, 1.3, 0.05)],
                }
                : null,
            Neighbour = DemoProject.Project.Brief.Neighbour! with
            {
                Partition = d.OneOf(
                    "brick-125-plastered",
                    "brick-255-plastered",
                    "brick-cavity-280",
                    "concrete-100",
                    "concrete-300",
                    "studs-plaster",
                    "plasterboard-75"
                ),
                Curve = d.OneOf("hearing-threshold", "night-rooms-se-2014"),
                AllowanceDb = d.Between(-10, 10, 1),
            },
        };

    private static Cabinet AnyCabinet(Draw d) =>
        DemoProject.Project.Cabinet! with
        {
            Outside = new Outside
            {
                WidthM = d.Between(0.16, 0.45, 0.001),
                DepthM = d.Between(0.2, 0.55, 0.001),
                HeightM = d.Between(0.16, 0.5, 0.001),
                CornerRadiusM = d.Between(0, 0.04, 0.001),
            },
            OuterSkinM = d.Between(0.0008, 0.004, 0.0001),
            CoreM = d.Chance(0.1) ? 0 : d.Between(0.003, 0.03, 0.0005),
            InnerSkinM = d.Between(0.0008, 0.004, 0.0001),
            StrutPitchM = d.Between(0.02, 0.14, 0.001),
            Braces = (int)d.Between(0, 3, 1),
            DriverCount = d.Chance(0.1) ? 2 : 1,
            Fill = d.Chance(0.85) ? new Fill { MassKg = d.Between(0.01, 0.8, 0.01) } : null,
            Leak = d.Chance(0.85)
                ? new Leak
                {
                    GapM = d.Between(0.00005, 0.0002, 0.00001),
                    LengthM = d.Between(0.5, 3, 0.1),
                    DepthM = d.Between(0.002, 0.01, 0.001),
                }
                : null,
            Feet = new Feet { Kind = d.OneOf(FeetKind.Spikes, FeetKind.Pads), StiffnessNPerM = d.Between(2000, 200000, 1000) },
        };

    private sealed class Draw(ulong seed)
    {
        private readonly SeededGenerator generator = new(seed);

        // Decimal steps, as a maker would write them.
        internal double Between(double least, double greatest, double step)
        {
            var value = least + (greatest - least) * generator.Next();
            return (double)(Math.Round((decimal)value / (decimal)step) * (decimal)step);
        }

        internal bool Chance(double share) => generator.Next() < share;

        internal T OneOf<T>(params T[] words) => words[(int)(generator.Next() * words.Length)];
    }
}
