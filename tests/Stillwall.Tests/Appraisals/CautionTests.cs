using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>The table of cautions: whole, in order, short at every step, and said only where a plan gives cause.</summary>
public sealed class CautionTests
{
    private static readonly Lazy<Facts> Plan = new(() => new Facts(DemoProject.Project, DemoDrivers.All));

    // Everything that can be said at once: a mix of everything, a cabinet that nobody lifts, holes to be closed.
    private static readonly Lazy<Facts> Worst = new(() =>
        new Facts(
            Poured(
                "own",
                p =>
                    p with
                    {
                        Limits = p.Limits with { LiftMassKg = 5 },
                        Cabinet = p.Cabinet! with { Openings = p.Cabinet.Openings! with { DryingHoleM = 0.005 } },
                        Materials = p.Materials! with
                        {
                            Cast = p.Materials.Cast! with
                            {
                                Mix = "own",
                                Own = new OwnMix
                                {
                                    PowderDensityKgM3 = 2600,
                                    BoundWater = 0.2,
                                    ModulusPa = 5e9,
                                },
                            },
                        },
                    }
            ),
            DemoDrivers.All
        )
    );

    public static TheoryData<WorkStep> Steps => [.. Enum.GetValues<WorkStep>()];

    [Fact]
    public void Every_hazard_has_one_row_and_they_stand_in_the_order_of_the_list() =>
        Assert.Equal(Enum.GetValues<Hazard>(), CautionTable.All.Select(c => c.Hazard));

    [Fact]
    public void Every_step_has_one_line_and_they_stand_in_the_order_of_the_job() => Assert.Equal(Enum.GetValues<WorkStep>(), WorkSteps.All.Select(s => s.Step));

    [Fact]
    public void Every_caution_is_a_short_sentence_with_its_steps_and_its_source() =>
        Assert.All(
            CautionTable.All,
            c =>
            {
                Assert.InRange(c.Sentence.Length, 40, 140);
                Assert.EndsWith(".", c.Sentence, StringComparison.Ordinal);
                Assert.DoesNotMatch("(?i)\\b(safe|safely|legal|legally)\\b", c.Sentence);
                Assert.NotEmpty(c.Steps);
                Assert.Equal(c.Steps.Distinct(), c.Steps);
                Assert.Matches("no source|from memory", c.Source);
            }
        );

    [Fact]
    public void Every_step_has_something_to_take_care_of_in_some_plan() =>
        Assert.All(Enum.GetValues<WorkStep>(), s => Assert.NotEmpty(Cautions.At(s, Worst.Value)));

    [Theory]
    [MemberData(nameof(Steps))]
    public void At_a_step_there_are_at_most_four_the_worst_first(WorkStep step) =>
        Assert.All(
            new[] { Worst.Value, Plan.Value, null },
            facts =>
            {
                var at = Cautions.At(step, facts).Select(c => c.Hazard).ToList();
                Assert.InRange(at.Count, 0, 4);
                Assert.Equal(at.Order(), at);
            }
        );

    [Fact]
    public void A_hazard_that_applies_is_said_at_every_step_it_belongs_to() =>
        Assert.All(
            CautionTable.All.Where(c => c.Applies(Worst.Value)),
            c => Assert.Equal(c.Steps.Order(), Cautions.Of(Worst.Value).Where(s => s.Hazard == c.Hazard).Select(s => s.Step))
        );

    [Fact]
    public void Plaster_is_never_cast_round_a_hand() =>
        Assert.Equal("Plaster heats up as it sets and can burn badly: never enclose a hand, arm or leg in it.", Cautions.Of(Hazard.PlasterHeat));

    [Theory]
    [InlineData("plaster", "P2", true, false)]
    [InlineData("hard-gypsum", "P2", true, false)]
    [InlineData("gypsum-binder", "P2", true, false)]
    [InlineData("sand-plaster", "P3", true, false)]
    [InlineData("cement-grout", "P3", false, true)]
    public void The_mix_decides_on_mask_heat_and_lye(string mix, string mask, bool isHot, bool isCaustic)
    {
        var facts = new Facts(Poured(mix), DemoDrivers.All);
        foreach (var step in new[] { WorkStep.Pour, WorkStep.WallCoupon, WorkStep.Soak, WorkStep.Supplies })
        {
            var at = Cautions.At(step, facts);
            Assert.Equal(mask, Assert.Single(at, c => c.Hazard is Hazard.Dust or Hazard.SilicaDust).Sentence.Split("class ")[1][..2]);
            Assert.Equal(isCaustic, at.Any(c => c.Hazard == Hazard.Caustic));
            Assert.Equal(!isCaustic, at.Any(c => c.Hazard == Hazard.Splash));
        }

        Assert.Equal(isHot, Cautions.At(WorkStep.Pour, facts).Any(c => c.Hazard == Hazard.PlasterHeat));
    }

    [Fact]
    public void What_is_in_a_mix_of_one_s_own_nobody_knows()
    {
        var own = Cautions.At(WorkStep.Pour, Worst.Value).Select(c => c.Hazard);
        Assert.Equal([Hazard.PlasterHeat, Hazard.Caustic, Hazard.SilicaDust, Hazard.HeavyWet], own);
    }

    [Fact]
    public void Past_the_mass_for_one_person_it_takes_two_the_wet_cabinet_too()
    {
        var (wet, dry) = (Plan.Value.Mass.WetKg!.Value, Plan.Value.Mass.FinishedKg!.Value);
        IEnumerable<Hazard> Heavy(double limitKg) =>
            Cautions
                .Of(new Facts(DemoProject.Project with { Limits = DemoProject.Project.Limits with { LiftMassKg = limitKg } }, DemoDrivers.All))
                .Select(c => c.Hazard)
                .Where(h => h is Hazard.HeavyWet or Hazard.Heavy)
                .Distinct()
                .Order();
        Assert.Empty(Heavy(Math.Max(wet, dry) + 0.001));
        Assert.Equal([Hazard.HeavyWet, Hazard.Heavy], Heavy(Math.Min(wet, dry) - 0.001));
        Assert.Equal([dry > wet ? Hazard.Heavy : Hazard.HeavyWet], Heavy((wet + dry) / 2));
    }

    [Theory]
    [InlineData(DisplayUnits.Metric, "5 kg")]
    [InlineData(DisplayUnits.Inch, "11 lb")]
    public void The_mass_is_told_in_the_units_of_the_project(DisplayUnits units, string mass)
    {
        var facts = new Facts(DemoProject.Project with { DisplayUnits = units, Limits = DemoProject.Project.Limits with { LiftMassKg = 5 } }, DemoDrivers.All);
        Assert.Contains($"It weighs more than {mass}: lift it with two people.", Cautions.At(WorkStep.SetUp, facts).Select(c => c.Sentence));
        Assert.DoesNotContain(Cautions.Of(facts), c => c.Sentence.Contains('{', StringComparison.Ordinal));
    }

    [Fact]
    public void Where_nothing_is_poured_or_printed_nothing_is_said_of_it()
    {
        var single = new Facts(VariedProjects.With(DemoProject.Project, c => c with { CoreM = 0 }), DemoDrivers.All);
        Hazard[] ofTheCast =
        [
            Hazard.PlasterHeat,
            Hazard.Caustic,
            Hazard.SilicaDust,
            Hazard.Splash,
            Hazard.ThickMix,
            Hazard.Bulge,
            Hazard.Drain,
            Hazard.OpenHoles,
        ];
        Assert.DoesNotContain(Cautions.Of(single), c => ofTheCast.Contains(c.Hazard));
        Assert.Contains(Cautions.Of(single), c => c.Hazard == Hazard.Printing);
        var ready = new Facts(DemoProject.Project with { Cabinet = new Cabinet { NetVolumeM3 = 0.024 } }, DemoDrivers.All);
        Assert.DoesNotContain(Cautions.Of(ready), c => c.Hazard is Hazard.Printing or Hazard.HotInserts || ofTheCast.Contains(c.Hazard));
        Assert.Contains(Cautions.Of(ready), c => c.Hazard == Hazard.Falling);
        Assert.Empty(Cautions.Of(new Facts(DemoProject.Project with { Cabinet = null }, DemoDrivers.All)));
    }

    [Fact]
    public void Every_cabinet_is_kept_from_falling_where_it_is_set_up() =>
        Assert.All(
            Enum.GetValues<FeetKind>(),
            kind =>
                Assert.Contains(
                    Cautions.At(
                        WorkStep.SetUp,
                        new Facts(VariedProjects.With(DemoProject.Project, c => c with { Feet = c.Feet! with { Kind = kind } }), DemoDrivers.All)
                    ),
                    c => c.Hazard == Hazard.Falling
                )
        );

    [Fact]
    public void An_appraisal_has_them_step_by_step() =>
        Assert.Equal(Cautions.Of(Plan.Value), Appraisal.WithoutRemedies(DemoProject.Project, DemoDrivers.All).Cautions);

    [Fact]
    public void The_next_step_follows_what_the_logbook_has_and_has_its_cautions()
    {
        var job = WorkSteps.All.Where(s => s.Say is not null).ToList();
        Assert.Equal(
            [
                "driver",
                "calibration strip",
                "wall coupon",
                "print",
                "dry fit",
                "water rehearsal",
                "pour",
                "weigh-in",
                "seal",
                "paint",
                "wiring",
                "gasket",
                "set up",
                "proof",
            ],
            job.Select(s => s.Word)
        );
        foreach (var (i, step) in job.Index().SkipLast(1))
        {
            // The weigh-in is next until it is dry; the demo's logbook knows of no weighing.
            var expected = job[i + 1].Step == WorkStep.Seal ? WorkStep.WeighIn : job[i + 1].Step;
            var project = DemoProject.Project with { Logbook = [new LogEntry { Date = new DateOnly(2026, 11, 7), Kind = step.Word }] };
            var appraisal = Appraisal.WithoutRemedies(project, DemoDrivers.All);
            Assert.Equal(expected, NextStep.StepOf(project, appraisal));
            Assert.StartsWith(job.Single(s => s.Step == expected).Say!, NextStep.Of(project, appraisal), StringComparison.Ordinal);
            Assert.Contains(appraisal.Cautions, c => c.Step == expected);
        }
    }

    [Fact]
    public void Before_something_is_stated_or_mended_no_step_is_next()
    {
        var bare = new Project { FormatVersion = 1 };
        Assert.Null(NextStep.StepOf(bare, Appraisal.WithoutRemedies(bare, [])));
        var loud = DemoProject.Project with { Brief = DemoProject.Project.Brief with { Aim = DemoProject.Project.Brief.Aim! with { LevelDb = 110 } } };
        Assert.Null(NextStep.StepOf(loud, Appraisal.WithoutRemedies(loud, DemoDrivers.All)));
    }

    private static Project Poured(string mix, Func<Project, Project>? change = null)
    {
        var project = DemoProject.Project with
        {
            Materials = DemoProject.Project.Materials! with
            {
                Cast = DemoProject.Project.Materials.Cast! with { Mix = mix, PowderPerWater = null, PotLifeS = null },
            },
        };
        return change?.Invoke(project) ?? project;
    }
}
