using Stillwall.Materials;

namespace Stillwall.Pours;

/// <summary>What is to be done at one moment of a pour.</summary>
public enum PourAction
{
    /// <summary>Powder goes into the water and soaks.</summary>
    Soak,

    /// <summary>Stirring begins.</summary>
    Stir,

    /// <summary>Pouring begins.</summary>
    Pour,

    /// <summary>The bucket is empty.</summary>
    Empty,

    /// <summary>The bucket's pot life ends.</summary>
    PourBy,

    /// <summary>The lift has set and bears the next one.</summary>
    NextLift,
}

/// <summary>One moment of a pour.</summary>
/// <param name="AtS">When, from the first water, s.</param>
/// <param name="Action">What is to be done.</param>
/// <param name="Batch">Bucket it is done with, from 1.</param>
public sealed record PourStep(double AtS, PourAction Action, int Batch);

/// <summary>A pour as it goes at the bench.</summary>
/// <param name="Plan">The buckets on their clock.</param>
/// <param name="Steps">Every moment, bucket by bucket.</param>
/// <param name="LiftTopsM">Height of the cast after each lift, from the bottom of the form, m.</param>
/// <param name="WarmFromS">When the last bucket begins to set and to warm, s.</param>
/// <param name="HeatEndS">When the last bucket has given off its heat: the peak is reached and it cools from then on, s.</param>
/// <param name="BearsFromS">When the last bucket has reached its final set, s.</param>
public sealed record PourBench(
    PourPlan Plan,
    IReadOnlyList<PourStep> Steps,
    IReadOnlyList<double> LiftTopsM,
    double WarmFromS,
    double HeatEndS,
    double BearsFromS
)
{
    /// <summary>Tells a plan moment by moment.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="job">The job that it plans.</param>
    /// <param name="liftHeightsM">Height of each lift, m, as many as the job has shares.</param>
    /// <returns>The moments of each bucket in order, and what follows the last one.</returns>
    /// <exception cref="ArgumentException">Not one height for each lift.</exception>
    /// <remarks>
    /// Model: the times of the plan; set and heat counted from the last bucket's first water. Validity: as the plan. Source: times of the mix, from
    /// memory or as stated. Accuracy: as pot life is known.
    /// </remarks>
    public static PourBench Of(PourPlan plan, PourJob job, IReadOnlyList<double> liftHeightsM)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(liftHeightsM);
        if (liftHeightsM.Count != job.LiftShares.Count)
        {
            throw new ArgumentException($"{liftHeightsM.Count} heights; one for each of the {job.LiftShares.Count} lifts", nameof(liftHeightsM));
        }

        var last = plan.Batches[^1].StartS;
        CastTimes times = job.Mix.Times;
        return new PourBench(
            plan,
            [.. plan.Batches.SelectMany((batch, i) => Moments(plan, job, batch, i))],
            [.. liftHeightsM.Select((_, i) => liftHeightsM.Take(i + 1).Sum())],
            last + times.InitialSetS,
            last + times.HeatEndS,
            last + times.FinalSetS
        );
    }

    private static IEnumerable<PourStep> Moments(PourPlan plan, PourJob job, PourBatch batch, int i)
    {
        yield return new PourStep(batch.StartS, PourAction.Soak, i + 1);
        yield return new PourStep(batch.StartS + job.SoakS, PourAction.Stir, i + 1);
        yield return new PourStep(batch.PourStartS, PourAction.Pour, i + 1);
        yield return new PourStep(batch.PourEndS, PourAction.Empty, i + 1);
        yield return new PourStep(batch.PourByS, PourAction.PourBy, i + 1);
        if (i + 1 < plan.Batches.Count && plan.Batches[i + 1] is var next && next.Lift != batch.Lift)
        {
            yield return new PourStep(next.StartS, PourAction.NextLift, i + 1);
        }
    }
}
