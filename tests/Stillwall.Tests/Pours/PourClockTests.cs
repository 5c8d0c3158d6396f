using CsCheck;
using Stillwall.Materials;
using Stillwall.Parts.Kinds;
using Stillwall.Pours;

namespace Stillwall.Tests.Pours;

public class PourClockTests
{
    private static readonly PourJob Evening = new()
    {
        Mix = CastMixes.Plaster,
        CavityVolumeM3 = 0.0065,
        BucketM3 = 0.005,
    };

    private static readonly Gen<PourJob> AnyJob = Gen.Select(
        Gen.Double[0.001, 0.03],
        Gen.Double[0.001, 0.02],
        Gen.Double[240, 2400],
        Gen.Double[0, 90],
        Gen.Double[10, 120],
        Gen.Double[1e-5, 3e-4],
        Gen.Int[1, 4],
        Gen.Int[1, 4],
        (cavity, bucket, life, soak, stir, rate, people, lifts) =>
            new PourJob
            {
                Mix = CastMixes.Plaster with { Times = new CastTimes(life, life * 1.2, life * 3, life * 3) },
                CavityVolumeM3 = cavity,
                BucketM3 = bucket,
                SoakS = soak,
                StirS = stir,
                PourRateM3S = rate,
                People = people,
                LiftShares = [.. Enumerable.Repeat(1.0 / lifts, lifts)],
            }
    );

    // By hand: 6.5 L and a tenth are 7.15 L, a bucket of 5 L takes 4, so two of 3.575 L; 180 s of mixing and 107.25 s of pouring at 2 L/min.
    [Fact]
    public void An_evening_with_one_bucket_runs_as_worked_by_hand()
    {
        var plan = PourClock.Plan(Evening)!;
        Assert.Equal(2, plan.Batches.Count);
        Assert.Equal(3.575e-3, plan.Batches[0].VolumeM3, 1e-12);
        Assert.Equal(107.25, plan.Batches[0].PourEndS - plan.Batches[0].PourStartS, 1e-6);
        Assert.Equal(287.25, plan.Batches[1].StartS, 1e-6);
        Assert.Equal(180, plan.LongestGapS, 1e-9);
        Assert.Equal(574.5, plan.DurationS, 1e-6);
        Assert.True(plan.KeepsPotLife && plan.ReserveFillsTestBar);
    }

    [Fact]
    public void A_thimble_of_mix_from_a_great_bucket_is_still_one_batch() =>
        Assert.Single(PourClock.Plan(Evening with { CavityVolumeM3 = 1e-12, BucketM3 = 0.5 })!.Batches);

    [Fact]
    public void A_second_pair_of_hands_shortens_the_pause_to_what_pouring_does_not_cover()
    {
        var plan = PourClock.Plan(Evening with { People = 2 })!;
        Assert.Equal(180 - 107.25, plan.LongestGapS, 1e-6);
        Assert.True(plan.DurationS < PourClock.Plan(Evening)!.DurationS);
    }

    [Fact]
    public void A_second_lift_waits_until_the_first_has_set()
    {
        var plan = PourClock.Plan(Evening with { LiftShares = [0.5, 0.5] })!;
        Assert.Equal([1, 2], plan.Batches.Select(b => b.Lift));
        Assert.Equal(plan.Batches[0].StartS + CastMixes.Plaster.Times.FinalSetS, plan.Batches[1].StartS, 1e-9);
        Assert.Equal(0, plan.LongestGapS);
    }

    [Fact]
    public void Buckets_never_overflow_nor_outlive_their_pot_life_and_add_up_to_what_is_mixed()
    {
        AnyJob.Sample(job =>
        {
            var plan = PourClock.Plan(job)!;
            var all = Mix.FromVolume(job.Mix, job.CavityVolumeM3 * 1.1, 1.5);
            Assert.Equal(all.PowderKg, plan.Batches.Sum(b => b.PowderKg), 1e-9 * all.PowderKg);
            Assert.Equal(all.WaterKg, plan.Batches.Sum(b => b.WaterKg), 1e-9 * all.WaterKg);
            Assert.All(plan.Batches, b => Assert.True(b.VolumeM3 <= 0.8 * job.BucketM3 * (1 + 1e-9)));
            var canKeep = job.Mix.Times.PotLifeS - job.SoakS - job.StirS > 0.01 * 0.8 * job.BucketM3 / job.PourRateM3S;
            Assert.Equal(canKeep, plan.KeepsPotLife);
            Assert.All(plan.Batches, b => Assert.Equal(canKeep, b.PourEndS <= b.PourByS + 1e-6));
        });
    }

    [Fact]
    public void One_bucket_is_poured_at_a_time_and_one_is_mixed_at_a_time()
    {
        AnyJob.Sample(job =>
        {
            var plan = PourClock.Plan(job)!;
            Assert.All(
                plan.Batches.Zip(plan.Batches.Skip(1)),
                pair =>
                {
                    Assert.True(pair.Second.PourStartS >= pair.First.PourEndS - 1e-6);
                    Assert.True(pair.Second.StartS >= pair.First.PourStartS - 1e-6);
                }
            );
        });
    }

    [Fact]
    public void A_pot_life_that_is_over_when_stirring_ends_is_said_and_not_hidden()
    {
        var plan = PourClock.Plan(Evening with { Mix = CastMixes.Plaster with { Times = new CastTimes(150, 200, 600, 600) } })!;
        Assert.False(plan.KeepsPotLife);
        Assert.True(plan.LongestBatchS > 150);
    }

    [Fact]
    public void A_reserve_that_is_smaller_than_the_test_bar_does_not_fill_it()
    {
        Assert.False(PourClock.Plan(Evening with { ReserveRatio = 0.01 })!.ReserveFillsTestBar);
        Assert.Equal(0.000128, TestBarMould.BarM3, 1e-12);
    }

    [Fact]
    public void A_thimble_of_a_bucket_is_no_plan() => Assert.Null(PourClock.Plan(Evening with { CavityVolumeM3 = 1, BucketM3 = 1e-4 }));

    [Fact]
    public void Shares_that_do_not_make_a_whole_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PourClock.Plan(Evening with { LiftShares = [0.5, 0.4] }));
}
