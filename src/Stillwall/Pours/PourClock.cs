using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>How the mix is handled.</summary>
/// <param name="BucketM3">Volume of the bucket, m³, above 0.</param>
/// <param name="PotLifeS">Time from the first water until the mix no longer pours, s, above 0.</param>
/// <param name="SoakS">Time of soaking, s.</param>
/// <param name="StirS">Time of stirring, s.</param>
/// <param name="PourRateM3S">How fast it is poured, m³/s, above 0.</param>
/// <param name="People">People at the pour, at least 1; from two on the next batch is mixed while the last is poured.</param>
/// <param name="FinalSetS">When a lift has set, s from its last water.</param>
public sealed record Handling(double BucketM3, double PotLifeS, double SoakS, double StirS, double PourRateM3S, int People, double FinalSetS)
{
    /// <summary>Share of a bucket that can be stirred without spilling (our choice).</summary>
    public const double UsableBucket = 0.8;

    /// <summary>Greatest volume of one batch, m³: what the bucket holds and what is poured within the pot life; 0 where soaking and stirring take it all.</summary>
    public double GreatestBatchM3 => Math.Max(0, Math.Min(BucketM3 * UsableBucket, (PotLifeS - SoakS - StirS) * PourRateM3S));
}

/// <summary>One batch with its clock.</summary>
/// <param name="VolumeM3">Volume of slurry, m³.</param>
/// <param name="Lift">The lift it belongs to, from 1.</param>
/// <param name="StartS">When its powder goes into the water, s from the first water.</param>
/// <param name="PourStartS">When pouring begins, s.</param>
/// <param name="PourEndS">When pouring ends, s.</param>
/// <param name="PourByS">When its pot life ends, s.</param>
public sealed record TimedBatch(double VolumeM3, int Lift, double StartS, double PourStartS, double PourEndS, double PourByS);

/// <summary>The pour as a clock.</summary>
/// <param name="Batches">The batches in order.</param>
/// <param name="LongestGapS">Longest pause between two pours of one lift, s; 0 where every lift is one batch.</param>
/// <param name="Seconds">End of the last pour, s from the first water.</param>
public sealed record PourClock(IReadOnlyList<TimedBatch> Batches, double LongestGapS, double Seconds)
{
    // Our choice: nobody mixes more, and a span of pot life that is next to nothing must not count to millions.
    private const int MostBatches = 1000;

    /// <summary>Longest time from the first water to the last drop of one batch, s.</summary>
    public double LongestBatchS => Batches.Count == 0 ? 0 : Batches.Max(b => b.PourEndS - b.StartS);

    /// <summary>Sets out the batches of a pour.</summary>
    /// <param name="liftVolumesM3">Volume of slurry to mix for each lift, reserve counted, m³, each above 0.</param>
    /// <param name="handling">How the mix is handled.</param>
    /// <returns>The clock; null where soaking and stirring leave no time to pour, or so little that a lift would take more than a thousand batches.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not positive.</exception>
    /// <remarks>
    /// Model: each lift in equal batches, as few as bucket and pot life allow; alone, a batch is mixed after the last is poured, with two people while it is
    /// poured; a lift waits until the one below has set. Validity: steady work. Source: common practice, no source. Accuracy: a plan, not a promise.
    /// </remarks>
    public static PourClock? Of(IReadOnlyList<double> liftVolumesM3, Handling handling)
    {
        ArgumentNullException.ThrowIfNull(liftVolumesM3);
        ArgumentNullException.ThrowIfNull(handling);
        var greatest = handling.GreatestBatchM3;
        if (greatest <= 0)
        {
            return null;
        }

        var batches = new List<TimedBatch>();
        var (time, gap) = (0.0, 0.0);
        for (var lift = 0; lift < liftVolumesM3.Count; lift++)
        {
            Require.Positive(liftVolumesM3[lift], "volume of a lift");
            var needed = Math.Ceiling(liftVolumesM3[lift] / greatest - 1e-9);
            if (needed > MostBatches)
            {
                return null;
            }

            var count = (int)needed;
            var volume = liftVolumesM3[lift] / count;
            for (var i = 0; i < count; i++)
            {
                var start = i == 0 ? time : handling.People > 1 ? Math.Max(batches[^1].PourStartS, batches[^1].PourEndS - handling.SoakS - handling.StirS) : batches[^1].PourEndS;
                var pour = start + handling.SoakS + handling.StirS;
                gap = i == 0 ? gap : Math.Max(gap, pour - batches[^1].PourEndS);
                batches.Add(new TimedBatch(volume, lift + 1, start, pour, pour + volume / handling.PourRateM3S, start + handling.PotLifeS));
            }

            time = batches[^1].StartS + handling.FinalSetS;
        }

        return new PourClock(batches, gap, batches.Count == 0 ? 0 : batches[^1].PourEndS);
    }
}
