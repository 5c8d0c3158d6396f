using Stillwall.Pours;

namespace Stillwall.Web.Pages;

/// <summary>One step at the bench.</summary>
internal sealed record BenchStep(PourAction Action, int Batch, int Lift, int InLift, int StepsInLift, double LengthS)
{
    /// <summary>The steps of a plan, one after the other.</summary>
    internal static IReadOnlyList<BenchStep> Of(PourBench bench)
    {
        var batches = bench.Plan.Batches;
        var steps = batches.SelectMany((b, i) => Of(b, i + 1, i + 1 < batches.Count ? batches[i + 1] : null)).ToList();
        return [.. steps.GroupBy(s => s.Lift).SelectMany(lift => lift.Select((s, i) => s with { InLift = i + 1, StepsInLift = lift.Count() }))];
    }

    private static IEnumerable<BenchStep> Of(PourBatch batch, int number, PourBatch? next)
    {
        var mixing = batch.PourStartS - batch.StartS;
        var soak = mixing * 2 / 3;
        yield return new BenchStep(PourAction.Soak, number, batch.Lift, 0, 0, soak);
        yield return new BenchStep(PourAction.Stir, number, batch.Lift, 0, 0, mixing - soak);
        yield return new BenchStep(PourAction.Pour, number, batch.Lift, 0, 0, batch.PourEndS - batch.PourStartS);
        if (next is null || next.Lift != batch.Lift)
        {
            yield return new BenchStep(PourAction.Empty, number, batch.Lift, 0, 0, 0);
        }

        if (next is not null && next.Lift != batch.Lift)
        {
            yield return new BenchStep(PourAction.NextLift, number, batch.Lift, 0, 0, next.StartS - batch.PourEndS);
        }
    }
}
