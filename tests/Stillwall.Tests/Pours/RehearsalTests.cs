using Stillwall.Appraisals;
using Stillwall.Pours;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Tests.Pours;

/// <summary>The water before the cast, the scales, and a shelf that is too small.</summary>
public sealed class RehearsalTests
{
    private static readonly Facts Demo = new(DemoProject.Project, DemoDrivers.All);

    // A litre of water at 20 °C weighs 998.2 g (handbook value, from memory).
    [Fact]
    public void A_cavity_of_a_litre_takes_998_g_of_water() => Assert.Equal(0.9982, WaterRehearsal.WaterKg(1e-3), 0.001);

    [Theory]
    [InlineData(3.65, RehearsalReading.AsDrawn)]
    [InlineData(3.62, RehearsalReading.AsDrawn)]
    [InlineData(3.60, RehearsalReading.TakesLess)]
    [InlineData(0, RehearsalReading.TakesLess)]
    [InlineData(3.70, RehearsalReading.TakesMore)]
    public void A_hundredth_off_says_what_to_look_for(double weighedKg, RehearsalReading reading) =>
        Assert.Equal(reading, WaterRehearsal.Read(3.65, weighedKg));

    [Theory]
    [InlineData(1, Verdict.Holds, null)]
    [InlineData(0.97, Verdict.Tight, "trapped air")]
    [InlineData(1.03, Verdict.Tight, "leaks")]
    public void A_rehearsal_in_the_logbook_is_held_against_the_cavity(double ratio, Verdict verdict, string? remedy)
    {
        var entry = new LogEntry
        {
            Date = new DateOnly(2027, 1, 4),
            Kind = "actual",
            Part = "water rehearsal",
            MassKg = ratio * Demo.RehearsalWaterKg!.Value,
        };
        var finding = Appraisal
            .WithoutRemedies(DemoProject.Project with { Logbook = [entry] }, DemoDrivers.All)
            .Findings.Single(f => f.Id == "logbook/plan-against-actual");
        Assert.Equal(verdict, finding.Verdict);
        Assert.Contains(remedy ?? "", finding.Remedy ?? "", StringComparison.Ordinal);
        Assert.Equal(remedy is null, finding.Remedy is null);
    }

    [Fact]
    public void Scales_tell_apart_what_has_to_be_told_apart_and_carry_the_heaviest()
    {
        var needs = Demo.ScaleNeeds;
        Assert.Equal(["batches", "cabinet", "test bar"], needs.Select(n => n.What));
        var batches = Demo.Bench!.Plan.Batches;
        Assert.Equal(batches.Max(b => Math.Max(b.PowderKg, b.WaterKg)), needs[0].CapacityKg);
        Assert.InRange(needs[0].StepKg, 0.004 * batches.Min(b => b.WaterKg), 0.01 * batches.Min(b => b.WaterKg));
        Assert.Equal(Demo.Mass.WetKg, needs[1].CapacityKg);
        Assert.InRange(needs[1].StepKg, 0.002 * Demo.Pour.DryInCabinetKg!.Value, 0.005 * Demo.Pour.DryInCabinetKg!.Value);

        // Some 140 g of plaster: half a gram and the step of 1, 2 or 5 beneath it.
        Assert.Equal(0.0005, needs[2].StepKg, 1e-12);
    }

    [Fact]
    public void Powder_runs_out_after_the_last_batch_that_it_fills()
    {
        var plan = Demo.Bench!.Plan;
        Assert.Equal(plan.Batches.Count, PourClock.EnoughFor(plan, plan.Batches.Sum(b => b.PowderKg)));
        for (var n = 0; n < plan.Batches.Count; n++)
        {
            Assert.Equal(n, PourClock.EnoughFor(plan, plan.Batches.Take(n + 1).Sum(b => b.PowderKg) - 0.001));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => PourClock.EnoughFor(plan, -1));
    }

    [Fact]
    public void A_short_shelf_says_after_which_batch_it_is_empty()
    {
        var first = Demo.Bench!.Plan.Batches[0].PowderKg;
        var stock = DemoProject.Project.Stock!.Select(s => s.Item == "cast powder" ? s with { Amount = s.Amount with { Value = first + 0.01 } } : s);
        var finding = Appraisal
            .WithoutRemedies(DemoProject.Project with { Stock = [.. stock] }, DemoDrivers.All)
            .Findings.Single(f => f.Id == "pour/powder-in-stock-with-reserve");
        Assert.Equal(Verdict.Fails, finding.Verdict);
        Assert.Contains($"run out after batch 1 of {Demo.Bench.Plan.Batches.Count}", finding.Because, StringComparison.Ordinal);
    }
}
