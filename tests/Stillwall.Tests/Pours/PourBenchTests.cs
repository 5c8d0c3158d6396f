using CsCheck;
using Stillwall.Materials;
using Stillwall.Pours;

namespace Stillwall.Tests.Pours;

/// <summary>The pour moment by moment, against times worked by hand.</summary>
public sealed class PourBenchTests
{
    private static readonly PourJob TwoLifts = new()
    {
        Mix = CastMixes.Plaster,
        CavityVolumeM3 = 0.0065,
        BucketM3 = 0.005,
        LiftShares = [0.5, 0.5],
    };

    // By hand: each lift is one bucket of 3.575 L; 2 min of soaking, 1 min of stirring, 107.25 s of pouring at 2 L/min; plaster sets in 30 min.
    [Fact]
    public void The_first_bucket_goes_as_worked_by_hand()
    {
        var steps = Bench(TwoLifts, [0.04, 0.28]).Steps.Where(s => s.Batch == 1).ToList();
        Assert.Equal(
            [PourAction.Soak, PourAction.Stir, PourAction.Pour, PourAction.Empty, PourAction.PourBy, PourAction.NextLift],
            steps.Select(s => s.Action)
        );
        Assert.All(new[] { 0, 120, 180, 287.25, 600, 1800 }.Zip(steps), pair => Assert.Equal(pair.First, pair.Second.AtS, 1e-6));
    }

    [Fact]
    public void The_last_bucket_is_followed_by_no_lift_but_by_its_heat()
    {
        var bench = Bench(TwoLifts, [0.04, 0.28]);
        Assert.DoesNotContain(bench.Steps, s => s is { Batch: 2, Action: PourAction.NextLift });
        Assert.Equal(1800 + 720, bench.WarmFromS, 1e-9);
        Assert.Equal(1800 + 1800, bench.HeatEndS, 1e-9);
        Assert.Equal(1800 + 1800, bench.BearsFromS, 1e-9);
    }

    [Fact]
    public void The_cast_stands_as_high_as_its_lifts_on_top_of_one_another()
    {
        var tops = Bench(TwoLifts, [0.04, 0.28]).LiftTopsM;
        Assert.Equal(0.04, tops[0], 1e-12);
        Assert.Equal(0.32, tops[1], 1e-12);
    }

    [Fact]
    public void Every_bucket_is_soaked_stirred_and_poured_in_this_order_for_as_long_as_stated() =>
        Gen.Select(Gen.Double[0.001, 0.03], Gen.Double[0.001, 0.02], Gen.Double[0, 90], Gen.Double[10, 120], Gen.Int[1, 4])
            .Sample(
                (cavity, bucket, soak, stir, people) =>
                {
                    var job = TwoLifts with { CavityVolumeM3 = cavity, BucketM3 = bucket, SoakS = soak, StirS = stir, People = people };
                    var bench = Bench(job, [0.1, 0.2]);
                    Assert.Equal(Enumerable.Range(1, bench.Plan.Batches.Count), bench.Steps.Select(s => s.Batch).Distinct());
                    Assert.All(
                        bench.Steps.GroupBy(s => s.Batch),
                        batch =>
                        {
                            var at = batch.ToDictionary(s => s.Action, s => s.AtS);
                            Assert.Equal(soak, at[PourAction.Stir] - at[PourAction.Soak], 1e-6);
                            Assert.Equal(stir, at[PourAction.Pour] - at[PourAction.Stir], 1e-6);
                            Assert.True(at[PourAction.Empty] > at[PourAction.Pour]);
                            Assert.Equal(600, at[PourAction.PourBy] - at[PourAction.Soak], 1e-6);
                        }
                    );
                    Assert.Single(bench.Steps, s => s.Action == PourAction.NextLift);
                }
            );

    [Fact]
    public void One_height_for_each_lift_is_wanted() => Assert.Throws<ArgumentException>(() => Bench(TwoLifts, [0.3]));

    private static PourBench Bench(PourJob job, IReadOnlyList<double> heightsM) => PourBench.Of(PourClock.Plan(job)!, job, heightsM);
}
