using System.Collections;
using System.Reflection;
using System.Text.Json;
using CsCheck;
using Stillwall.Appraisals;
using Stillwall.Projects;
using Stillwall.SupplyLists;

namespace Stillwall.Tests.Appraisals;

/// <summary>The whole of what is computed: that it is finite, that it adds up, and that it moves the way it must.</summary>
public sealed class AppraisalTests
{
    public static TheoryData<string> BareNames => [.. VariedProjects.Bare.Select(b => b.Name)];

    [Fact]
    public void No_number_of_any_appraisal_is_infinite_or_not_a_number() => Assert.All(VariedProjects.All, p => Assert.Empty(NotFinite(p.Appraisal, "")));

    [Theory]
    [MemberData(nameof(BareNames))]
    public void A_project_of_which_little_is_stated_is_appraised_all_the_same(string name)
    {
        var (_, project, appraisal) = VariedProjects.BareAll.Single(b => b.Name == name);
        Assert.Empty(ProjectChecks.Of(project));
        Assert.Empty(NotFinite(appraisal, ""));
    }

    [Fact]
    public void Nothing_is_known_of_an_empty_project()
    {
        var appraisal = Appraisal.Of(new Project { FormatVersion = 1 }, []);
        Assert.All(appraisal.Findings, f => Assert.Equal((f.Id, Verdict.Unknown), (f.Id, f.Verdict)));
        Assert.Null(appraisal.Box.SystemResonanceHz);
        Assert.Empty(appraisal.Parts);
    }

    [Fact]
    public void A_single_printed_wall_needs_no_inner_skin()
    {
        var thick = VariedProjects.With(DemoProject.Project, c => c with { OuterSkinM = 0.005, CoreM = 0, InnerSkinM = null, Accents = null });
        var split = VariedProjects.With(DemoProject.Project, c => c with { OuterSkinM = 0.003, CoreM = 0, InnerSkinM = 0.002, Accents = null });
        Assert.Empty(ProjectChecks.Of(thick));
        Assert.Equal(Of(split).Box.InsideVolumeM3!.Value, Of(thick).Box.InsideVolumeM3!.Value, 1e-12);
        Assert.Equal(Of(split).Mass.ShellsKg!.Value, Of(thick).Mass.ShellsKg!.Value, 1e-9);
    }

    [Fact]
    public void The_finished_mass_is_the_sum_of_shells_dry_cast_drivers_fill_and_hardware()
    {
        var weighed = VariedProjects.All.Where(p => p.Appraisal.Mass.FinishedKg is not null).ToList();
        Assert.True(weighed.Count > 20);
        Assert.All(
            weighed,
            p =>
            {
                var (project, a) = p;
                var sheet = DemoDrivers.All.Single(s => s.Name == project.Driver!.Name);
                var count = project.Cabinet!.DriverCount;
                var shells = a.Parts.Where(part => part.InCabinet).Sum(part => part.MassKg!.Value);
                var sum =
                    shells
                    + (a.Pour.DryInCabinetKg ?? 0)
                    + count * sheet.MassKg!.Value
                    + (project.Cabinet.Fill?.MassKg ?? 0)
                    + Hardware.MassKg(count * sheet.Bolts!.Value);
                Assert.Equal(sum, a.Mass.FinishedKg!.Value, 1e-9);
                Assert.Equal(shells + (a.Pour.WetInCabinetKg ?? 0), a.Mass.WetKg!.Value, 1e-9);
            }
        );
    }

    [Fact]
    public void The_batches_hold_all_the_powder_and_all_the_water()
    {
        var poured = VariedProjects.All.Select(p => p.Appraisal.Pour).Where(p => p.Batches.Count > 0).ToList();
        Assert.True(poured.Count > 15);
        Assert.All(
            poured,
            p =>
            {
                Assert.Equal(p.PowderKg!.Value, p.Batches.Sum(b => b.PowderKg), 1e-9);
                Assert.Equal(p.WaterKg!.Value, p.Batches.Sum(b => b.WaterKg), 1e-9);
                Assert.Equal(1, p.Batches[0].Lift);
                Assert.Equal(p.Batches.Select(b => b.StartS).Order(), p.Batches.Select(b => b.StartS));
            }
        );
    }

    [Fact]
    public void No_mass_is_lost_between_bucket_and_dry_wall() =>
        Assert.All(
            VariedProjects.All.Select(p => p.Appraisal.Pour).Where(p => p.PowderKg is not null),
            p =>
            {
                Assert.Equal(p.PowderKg!.Value + p.WaterKg!.Value, p.WetMassKg!.Value, 1e-9);
                Assert.Equal(p.WetMassKg.Value, p.DryMassKg!.Value + p.FreeWaterKg!.Value, 1e-9);
                Assert.Equal(p.WetMassKg.Value / p.DryMassKg.Value, p.WetInCabinetKg!.Value / p.DryInCabinetKg!.Value, 1e-9);
            }
        );

    [Fact]
    public void What_is_to_be_bought_is_what_is_needed_less_what_is_on_the_shelf() =>
        Assert.All(
            VariedProjects.All.SelectMany(p => p.Appraisal.Supplies).Where(l => l is { Needed: not null, InStock: not null }),
            l => Assert.Equal(Math.Max(0, l.Needed!.Value - l.InStock!.Value), l.ToBuy!.Value, 1e-12)
        );

    [Fact]
    public void The_cost_is_the_sum_of_the_prices() =>
        Assert.All(
            VariedProjects.All.Select(p => p.Appraisal),
            a =>
            {
                Assert.Equal(a.Supplies.Sum(l => l.Price ?? 0), a.Cost.TotalPrice, 1e-9);
                Assert.Equal(a.Supplies.Sum(l => l.PriceToBuy ?? 0), a.Cost.ToPayPrice, 1e-9);
            }
        );

    [Fact]
    public void A_louder_everyday_level_reaches_the_neighbour_decibel_for_decibel() =>
        Gen.Select(Gen.Double[40, 80], Gen.Double[0.1, 20])
            .Sample(
                (level, more) =>
                {
                    var (quiet, loud) = (Everyday(level).Quiet, Everyday(level + more).Quiet);
                    Assert.All(quiet.Bands.Zip(loud.Bands), b => Assert.Equal(b.First.NeighbourDb!.Value + more, b.Second.NeighbourDb!.Value, 1e-9));
                    Assert.Equal(quiet.LoudestPoliteLevelDb!.Value, loud.LoudestPoliteLevelDb!.Value, 1e-9);
                },
                iter: 4
            );

    [Fact]
    public void A_thicker_core_makes_a_heavier_cabinet_with_less_air() =>
        Gen.Select(Gen.Double[0.008, 0.03], Gen.Double[0.001, 0.01])
            .Sample(
                (core, more) =>
                {
                    var (thin, thick) = (Core(core), Core(core + more));
                    Assert.True(thick.Mass.FinishedKg > thin.Mass.FinishedKg, $"{thin.Mass.FinishedKg} kg, then {thick.Mass.FinishedKg} kg");
                    Assert.True(thick.Box.NetVolumeM3 < thin.Box.NetVolumeM3);
                    Assert.True(thick.Box.SystemResonanceHz > thin.Box.SystemResonanceHz);
                },
                iter: 6
            );

    [Fact]
    public void The_same_project_gives_the_same_bytes_twice() =>
        Assert.Equal(JsonSerializer.Serialize(Of(VariedProjects.Projects[3])), JsonSerializer.Serialize(Of(VariedProjects.Projects[3] with { })));

    [Fact]
    public void Seeking_remedies_changes_neither_figures_nor_verdicts() =>
        Assert.All(
            VariedProjects.All.Take(6),
            p =>
            {
                var plain = Appraisal.WithoutRemedies(p.Project, DemoDrivers.All);
                Assert.Equal(JsonSerializer.Serialize(plain with { Findings = [] }), JsonSerializer.Serialize(p.Appraisal with { Findings = [] }));
                Assert.Equal(plain.Findings.Select(f => (f.Id, f.Verdict, f.Value)), p.Appraisal.Findings.Select(f => (f.Id, f.Verdict, f.Value)));
            }
        );

    [Fact]
    public void What_a_change_takes_over_is_what_would_be_computed_anew() =>
        Gen.Select(Gen.Double[0.2, 0.5], Gen.Int[0, 3], Gen.Double[0.2, 0.25])
            .Sample(
                (depth, braces, width) =>
                {
                    var changed = VariedProjects.With(
                        DemoProject.Project,
                        c => c with { Braces = braces, Outside = c.Outside! with { DepthM = depth, WidthM = width } }
                    );
                    var first = new Facts(DemoProject.Project, DemoDrivers.All);
                    Assert.NotNull(first.Geometry);
                    var (shared, fresh) = (first.With(changed), new Facts(changed, DemoDrivers.All));
                    var again = shared.With(VariedProjects.With(changed, c => c with { Outside = c.Outside! with { DepthM = depth + 0.01 } })).With(changed);
                    Assert.Equal(
                        JsonSerializer.Serialize(
                            new
                            {
                                fresh.Box,
                                fresh.Parts,
                                fresh.Pour,
                                fresh.Walls,
                            }
                        ),
                        JsonSerializer.Serialize(
                            new
                            {
                                again.Box,
                                again.Parts,
                                again.Pour,
                                again.Walls,
                            }
                        )
                    );
                    Assert.Equal(fresh.Geometry!.CavityM3, shared.Geometry!.CavityM3);
                    Assert.Throws<ArgumentException>(() => fresh.Geometry.Along(fresh.Geometry.Sizes with { Width = fresh.Geometry.Sizes.Width + 1 }));
                },
                iter: 5
            );

    private static Appraisal Of(Project project) => Appraisal.WithoutRemedies(project, DemoDrivers.All);

    private static Appraisal Everyday(double levelDb) =>
        Of(DemoProject.Project with { Brief = DemoProject.Project.Brief with { Everyday = new Everyday { LevelDb = levelDb } } });

    private static Appraisal Core(double coreM) => Of(VariedProjects.With(DemoProject.Project, c => c with { CoreM = coreM, StrutPitchM = 0.08 }));

    private static IEnumerable<string> NotFinite(object? value, string path) =>
        value switch
        {
            double number => double.IsFinite(number) ? [] : [$"{path} is {number}"],
            null or string or Enum or DateOnly => [],
            IEnumerable list => list.Cast<object?>().SelectMany((item, i) => NotFinite(item, $"{path}[{i}]")),
            _ when value.GetType().Namespace?.StartsWith("Stillwall", StringComparison.Ordinal) == true => value
                .GetType()
                .GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .SelectMany(p => NotFinite(p.GetValue(value), $"{path}.{p.Name}")),
            _ => [],
        };
}
