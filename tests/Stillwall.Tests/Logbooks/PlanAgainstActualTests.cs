using CsCheck;
using Stillwall.Logbooks;
using Stillwall.Projects;

namespace Stillwall.Tests.Logbooks;

public sealed class PlanAgainstActualTests
{
    private static readonly PlannedLine[] Plan =
    [
        new("front outer plate", 0.117, 11880, 14256, null),
        new("cast powder", 3.84, null, null, 6.15),
        new("cabinet", 10.5, 300000, 360000, 230),
    ];

    // By hand: 0.130/0.117 − 1 = 1/9; 6 h against at most 3.96 h; 5 EUR against 6.15 EUR.
    [Fact]
    public void A_deviation_is_the_share_of_the_plan()
    {
        Assert.Equal(1.0 / 9, Of(Entry("front outer plate") with { MassKg = 0.130 }).Single().DeviationRatio, 1e-9);
        Assert.Equal(21600.0 / 14256 - 1, Of(Entry("front outer plate") with { DurationS = 21600 }).Single().DeviationRatio, 1e-9);
        Assert.Equal(5 / 6.15 - 1, Of(Entry("cast powder") with { Cost = 5 }).Single().DeviationRatio, 1e-9);
    }

    [Fact]
    public void A_time_within_the_planned_span_is_as_planned() =>
        Gen.Double[11880, 14256].Sample(s => Assert.Equal(0, Of(Entry("front outer plate") with { DurationS = s }).Single().DeviationRatio), iter: 50);

    [Fact]
    public void A_quicker_print_deviates_from_the_near_end_of_the_span() =>
        Assert.Equal(-0.5, Of(Entry("front outer plate") with { DurationS = 5940 }).Single().DeviationRatio, 1e-12);

    [Fact]
    public void Without_a_part_an_entry_is_about_the_cabinet()
    {
        var three = Of(Entry(null) with { MassKg = 10.5, DurationS = 330000, Cost = 230 });
        Assert.Equal(["mass", "time", "cost"], three.Select(d => d.Measure));
        Assert.All(three, d => Assert.Equal(0, d.DeviationRatio));
    }

    [Fact]
    public void What_the_plan_does_not_know_is_left_out() =>
        Assert.Empty(
            PlanAgainstActual.Of(
                Plan,
                [
                    Entry("gasket") with
                    {
                        MassKg = 1,
                    },
                    Entry("cast powder") with
                    {
                        DurationS = 60,
                    },
                    Entry("cabinet") with
                    {
                        Kind = "weigh-in",
                        MassKg = 12,
                    },
                    Entry("cabinet"),
                ]
            )
        );

    [Fact]
    public void The_actual_figure_is_the_plan_and_the_deviation_put_together() =>
        Gen.Double[0.01, 5]
            .Sample(
                mass =>
                {
                    var one = Of(Entry("FRONT outer plate ") with { Kind = "attempt", MassKg = mass }).Single();
                    Assert.Equal(mass, one.PlannedValue * (1 + one.DeviationRatio), 1e-9);
                },
                iter: 50
            );

    private static IReadOnlyList<PlanDeviation> Of(LogEntry entry) => PlanAgainstActual.Of(Plan, [entry]);

    private static LogEntry Entry(string? part) =>
        new()
        {
            Date = new DateOnly(2026, 11, 20),
            Kind = "actual",
            Part = part,
        };
}
