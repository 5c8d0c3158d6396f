using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Parts.Kinds;
using Stillwall.Projects;

namespace Stillwall.Pours;

/// <summary>What is to be poured, and by whom.</summary>
public sealed record PourJob
{
    /// <summary>Kind of mix, with its ratio and times.</summary>
    public required CastMix Mix { get; init; }

    /// <summary>Volume of the cavity, m³.</summary>
    public required double CavityVolumeM3 { get; init; }

    /// <summary>Cast mixed beyond the cavity, as a ratio.</summary>
    public double ReserveRatio { get; init; } = 0.10;

    /// <summary>Shares of the cavity that the lifts fill, from the bottom; they add up to one.</summary>
    public IReadOnlyList<double> LiftShares { get; init; } = [1];

    /// <summary>Volume of the mixing bucket, m³.</summary>
    public required double BucketM3 { get; init; }

    /// <summary>Time the powder soaks, s.</summary>
    public double SoakS { get; init; } = 120;

    /// <summary>Time of stirring, s.</summary>
    public double StirS { get; init; } = 60;

    /// <summary>How fast it is poured, m³/s.</summary>
    public double PourRateM3S { get; init; } = 2e-3 / Units.Minute;

    /// <summary>People at the pour.</summary>
    public int People { get; init; } = 1;
}

/// <summary>One bucket of the pour, on the clock of the first water.</summary>
/// <param name="PowderKg">Powder, kg.</param>
/// <param name="WaterKg">Water, kg.</param>
/// <param name="StartS">When powder goes into the water, s.</param>
/// <param name="PourByS">When its pot life ends, s.</param>
/// <param name="Lift">Lift that it belongs to, from 1.</param>
/// <param name="VolumeM3">Slurry, m³.</param>
/// <param name="PourStartS">When pouring begins, s.</param>
/// <param name="PourEndS">When the bucket is empty, s.</param>
public sealed record PourBatch(
    [property: ComputedBy("pour-batches", "pour.powder_kg")] double PowderKg,
    [property: ComputedBy("pour-batches", "pour.water_kg")] double WaterKg,
    [property: ComputedBy("pour-clock")] double StartS,
    [property: ComputedBy("pour-clock")] double PourByS,
    [property: ComputedBy("pour-clock", "pour.lift_height_m")] int Lift,
    [property: ComputedBy("pour-batches", "pour.cavity_volume_m3")] double VolumeM3,
    [property: ComputedBy("pour-clock")] double PourStartS,
    [property: ComputedBy("pour-clock")] double PourEndS
);

/// <summary>The whole pour on a clock.</summary>
/// <param name="Batches">The buckets, in order.</param>
/// <param name="MixedVolumeM3">Slurry that is mixed in all, m³.</param>
/// <param name="LongestBatchS">Longest time from a bucket's first water until it is empty, s.</param>
/// <param name="LongestGapS">Longest pause between two buckets of one lift, s; 0 where each lift is one bucket.</param>
/// <param name="DurationS">From the first water until the last bucket is empty, s.</param>
/// <param name="KeepsPotLife">Whether every bucket is empty within its pot life.</param>
/// <param name="ReserveFillsTestBar">Whether the reserve is enough to fill the test bar from the last bucket.</param>
public sealed record PourPlan(
    IReadOnlyList<PourBatch> Batches,
    [property: ComputedBy("pour-batches", "pour.cavity_volume_m3")] double MixedVolumeM3,
    [property: ComputedBy("pour-clock")] double LongestBatchS,
    [property: ComputedBy("pour-clock")] double LongestGapS,
    [property: ComputedBy("pour-clock")] double DurationS,
    bool KeepsPotLife,
    bool ReserveFillsTestBar
);

/// <summary>Divides a pour into buckets and lifts and puts them on a clock.</summary>
public static class PourClock
{
    /// <summary>Share of a bucket that can be stirred without loss (our choice).</summary>
    public const double UsableBucketRatio = 0.8;

    // Buckets of less than a hundredth of what fits are no plan: the pot life is then as good as over when stirring ends.
    private const double LeastBatchRatio = 0.01;

    // More buckets than anyone pours in one go: no plan (our choice).
    private const int MostBatches = 1000;

    /// <summary>The pour on a clock.</summary>
    /// <param name="job">What is to be poured, and by whom.</param>
    /// <returns>
    /// Buckets with their times; <see cref="PourPlan.KeepsPotLife"/> is false where soak and stir leave no time to pour, the buckets then being as
    /// large as they hold; null beyond a thousand buckets a lift.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range, or lift shares that do not add up to one.</exception>
    /// <remarks>
    /// Model: mixed = cavity × (1 + reserve), the test bar coming out of the reserve; in each lift the fewest equal buckets of at most 0.8 of the
    /// bucket's volume and of what is poured within pot life − soak − stir. One person mixes, then pours; from two on the next bucket is mixed while
    /// one is poured, one mixer for all. The next lift starts when the last bucket of the one before has reached its final set, and not within its
    /// pot life.
    /// Validity: steady pouring. Source: common practice, no source; bucket share and overlap are our choice. Accuracy: as good as pot life and pour
    /// rate are known.
    /// </remarks>
    public static PourPlan? Plan(PourJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        Check(job);
        var mixed = job.CavityVolumeM3 * (1 + job.ReserveRatio);
        var figures = Pours.Mix.FromVolume(job.Mix, mixed, job.Mix.PowderPerWaterRatio);
        var mixing = job.SoakS + job.StirS;
        var bucket = UsableBucketRatio * job.BucketM3;
        var inTime = job.PourRateM3S * (job.Mix.Times.PotLifeS - mixing);
        var greatest = inTime > LeastBatchRatio * bucket ? Math.Min(bucket, inTime) : bucket;
        var batches = new List<PourBatch>();
        var gap = 0.0;
        for (var lift = 0; lift < job.LiftShares.Count; lift++)
        {
            var volume = mixed * job.LiftShares[lift];
            if (volume / greatest > MostBatches)
            {
                return null;
            }

            var count = Math.Max(1, (int)Math.Ceiling(volume / greatest - 1e-9));
            for (var i = 0; i < count; i++)
            {
                var batch = Batch(job, figures, volume / count / mixed, lift, batches.Count == 0 ? null : batches[^1]);
                gap = i > 0 ? Math.Max(gap, batch.PourStartS - batches[^1].PourEndS) : gap;
                batches.Add(batch);
            }
        }

        var longest = batches.Max(b => b.PourEndS - b.StartS);
        return new PourPlan(
            Batches: batches,
            MixedVolumeM3: mixed,
            LongestBatchS: longest,
            LongestGapS: gap,
            DurationS: batches[^1].PourEndS,
            KeepsPotLife: longest <= job.Mix.Times.PotLifeS * (1 + 1e-9),
            ReserveFillsTestBar: job.CavityVolumeM3 * job.ReserveRatio >= TestBarMould.BarM3
        );
    }

    /// <summary>How many buckets the powder on the shelf is enough for.</summary>
    /// <param name="plan">The pour.</param>
    /// <param name="powderKg">Powder at hand, kg, 0 or more.</param>
    /// <returns>Whole buckets from the first on, 0 to all.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The powder is negative.</exception>
    /// <remarks>Model: buckets in their order until the powder runs out. Validity: any. Source: arithmetic. Accuracy: exact.</remarks>
    public static int EnoughFor(PourPlan plan, double powderKg)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Require.NotNegative(powderKg);
        var used = 0.0;
        return plan.Batches.TakeWhile(b => (used += b.PowderKg) <= powderKg * (1 + 1e-9)).Count();
    }

    private static PourBatch Batch(PourJob job, MixFigures all, double share, int lift, PourBatch? before)
    {
        var (mixing, volume, times) = (job.SoakS + job.StirS, share * all.SlurryVolumeM3, job.Mix.Times);
        var start = before switch
        {
            null => 0,
            _ when before.Lift != lift + 1 => Math.Max(before.PourEndS, before.StartS + Math.Max(times.FinalSetS, times.PotLifeS)),
            _ when job.People == 1 => before.PourEndS,
            _ => Math.Max(before.PourStartS, before.PourEndS - mixing),
        };
        var pour = start + mixing;
        return new PourBatch(
            PowderKg: share * all.PowderKg,
            WaterKg: share * all.WaterKg,
            StartS: start,
            PourByS: start + times.PotLifeS,
            Lift: lift + 1,
            VolumeM3: volume,
            PourStartS: pour,
            PourEndS: pour + volume / job.PourRateM3S
        );
    }

    private static void Check(PourJob job)
    {
        Require.Positive(job.CavityVolumeM3);
        Require.NotNegative(job.ReserveRatio);
        Require.Positive(job.BucketM3);
        Require.NotNegative(job.SoakS);
        Require.NotNegative(job.StirS);
        Require.Positive(job.PourRateM3S);
        Require.Within(job.People, 1, 100, nameof(job.People));
        foreach (var share in job.LiftShares)
        {
            Require.Positive(share);
        }

        Require.Within(job.LiftShares.Sum(), 1 - 1e-9, 1 + 1e-9, "sum of the lifts' shares");
    }
}
