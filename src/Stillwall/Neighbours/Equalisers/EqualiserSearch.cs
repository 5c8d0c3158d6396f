using Stillwall.Numerics;

namespace Stillwall.Neighbours.Equalisers;

/// <summary>An equaliser that was found, and what it comes to.</summary>
internal sealed record EqualiserChoice(IReadOnlyList<EqualiserSection> Sections, EqualiserEffect Effect)
{
    /// <summary>Its shape and setting; null for the plain high-pass.</summary>
    internal (EqualiserShape Shape, double[] At)? Setting { get; init; }
}

/// <summary>Seeks the equaliser that leaves nothing over the neighbour's limits and takes the least of what is audible at the seat.</summary>
internal sealed class EqualiserSearch
{
    // What a decibel over costs against a decibel lost: more than any cut that helps can cost.
    private const double Penalty = 30;

    private const double SectionDb = 0.1;

    private const int Rounds = 140;
    private const double LeastStepShare = 0.004;

    // The simplest first, so that between equals the simpler one stays.
    private static readonly EqualiserShape[] Shapes =
    [
        new(ShapePart.Peaking),
        new(ShapePart.Lowshelf),
        new(ShapePart.Highpass),
        new(ShapePart.Highpass4),
        new(ShapePart.Transform),
        new(ShapePart.Peaking, ShapePart.Peaking),
        new(ShapePart.Lowshelf, ShapePart.Peaking),
        new(ShapePart.Highpass, ShapePart.Peaking),
        new(ShapePart.Highpass4, ShapePart.Peaking),
        new(ShapePart.Highpass, ShapePart.Peaking, ShapePart.Peaking),
    ];

    private readonly EqualiserCase problem;
    private readonly double boxHz;
    private readonly double boxQ;
    private readonly IReadOnlyList<double> seedsHz;
    private readonly EqualiserStage[] stages = new EqualiserStage[6];

    private EqualiserSearch(EqualiserCase @case, double boxHz, double boxQ, IReadOnlyList<double> seedsHz) =>
        (problem, this.boxHz, this.boxQ, this.seedsHz) = (@case, boxHz, boxQ, seedsHz);

    /// <summary>The plain second-order Butterworth high-pass whose corner is the lowest that leaves nothing over; null where not even 500 Hz does.</summary>
    internal static (double CornerHz, EqualiserEffect Effect)? Plain(EqualiserCase @case)
    {
        EqualiserEffect At(double corner) => @case.Of([EqualiserStage.Of(SectionKind.Highpass, corner, Analogue.ButterworthQ)]);

        // The excess falls as the corner rises, since the high-pass falls at every frequency; so the corner is found by halving.
        var (low, high) = (QuietModel.LowestCornerHz, 500.0);
        if (At(high).OverDb > 0)
        {
            return null;
        }

        while (high - low > 1e-7 * high)
        {
            var middle = Math.Sqrt(low * high);
            (low, high) = At(middle).OverDb > 0 ? (middle, high) : (low, middle);
        }

        return (high, At(high));
    }

    /// <summary>The best equaliser of every shape.</summary>
    /// <param name="case">Everyday level, drive and limits.</param>
    /// <param name="boxHz">Resonance of the box, Hz, which a Linkwitz transform starts from; null leaves that kind out.</param>
    /// <param name="seedsHz">Where cuts are tried first: bands that are over, modes of the room.</param>
    internal static EqualiserChoice? Best(EqualiserCase @case, double? boxHz, double? boxQ, IReadOnlyList<double> seedsHz)
    {
        var search = new EqualiserSearch(@case, boxHz ?? 0, boxQ ?? 0, seedsHz);
        var plain = Plain(@case);
        var best = plain is { } p ? new EqualiserChoice([new EqualiserSection(SectionKind.Highpass, p.CornerHz, Analogue.ButterworthQ, 0)], p.Effect) : null;
        foreach (var shape in Shapes.Where(shape => boxHz is not null || !shape.Parts.Contains(ShapePart.Transform)))
        {
            foreach (var start in search.Starts(shape))
            {
                var found = search.Settled(shape, search.Refined(shape, start));
                best = IsBetter(found, best, plain?.Effect) ? found : best;
            }
        }

        return best is null ? null : search.Pruned(best, plain?.Effect);
    }

    // A section that hardly does anything is left out, and the others moved up to do its work.
    private EqualiserChoice Pruned(EqualiserChoice best, EqualiserEffect? plain)
    {
        while (best.Setting is { Shape: { Parts.Length: > 1 } shape, At: var at })
        {
            var found = Enumerable
                .Range(0, shape.Parts.Length)
                .Select(k => shape.Without(k, at))
                .Select(left => Settled(left.Shape, Refined(left.Shape, left.At)))
                .MinBy(choice => Cost(choice.Setting!.Value.Shape, choice.Setting.Value.At))!;
            if (!IsBetter(found, best, plain))
            {
                break;
            }

            best = found;
        }

        return best;
    }

    // Nothing over comes first; then never more lost than by the plain high-pass, in either measure; then the least of what is audible, a section
    // more must save a tenth of a decibel.
    private static bool IsBetter(EqualiserChoice found, EqualiserChoice? best, EqualiserEffect? plain)
    {
        if (best is null)
        {
            return true;
        }

        if (found.Effect.OverDb > 0 || best.Effect.OverDb > 0)
        {
            return found.Effect.OverDb < Math.Max(best.Effect.OverDb, 0) - 1e-6;
        }

        // One that makes the seat louder is no answer to a neighbour.
        var isNoWorse =
            found.Effect.SeatLossDb >= 0 && (plain is not { } p || (found.Effect.AudibleLossDb <= p.AudibleLossDb && found.Effect.SeatLossDb <= p.SeatLossDb));
        return isNoWorse
            && found.Effect.AudibleLossDb + (SectionDb * found.Sections.Count) < best.Effect.AudibleLossDb + (SectionDb * best.Sections.Count) - 1e-9;
    }

    private double Cost(EqualiserShape shape, ReadOnlySpan<double> at)
    {
        var effect = Effect(shape, at);

        // The unweighted loss breaks ties and keeps an unheard octave from being thrown away.
        return effect.AudibleLossDb + (0.05 * Math.Max(0, effect.SeatLossDb)) + (Penalty * Math.Max(0, effect.OverDb));
    }

    private EqualiserEffect Effect(EqualiserShape shape, ReadOnlySpan<double> at) => problem.Of(stages.AsSpan(0, shape.Stages(at, stages, boxHz, boxQ)));

    // Steps along each move, and along drawn directions across the creases that the limits make; halved where none is better.
    private double[] Refined(EqualiserShape shape, double[] start)
    {
        var (best, cost) = (start, Cost(shape, start));
        var draw = new SeededGenerator(7);
        var (moves, share) = (shape.Moves, 1.0);
        var tried = new double[start.Length];
        for (var round = 0; round < Rounds && share > LeastStepShare; round++)
        {
            var before = cost;
            for (var direction = 0; direction < 4 * start.Length; direction++)
            {
                for (var i = 0; i < start.Length; i++)
                {
                    var along = direction < 2 * start.Length ? (direction / 2 == i ? (direction % 2 == 0 ? 1 : -1) : 0) : (2 * draw.Next()) - 1;
                    tried[i] = Math.Clamp(best[i] + (along * share * moves[i].Step), moves[i].Least, moves[i].Greatest);
                }

                var now = Cost(shape, tried);
                if (now < cost - 1e-9)
                {
                    (best, cost) = ([.. tried], now);
                }
            }

            share = cost < before - 1e-6 ? share : share / 2;
        }

        return best;
    }

    // A crease leaves the search a hair over the limit: the whole setting is made a little stronger, by halving, until nothing is over.
    private EqualiserChoice Settled(EqualiserShape shape, double[] at)
    {
        var effect = Effect(shape, at);
        if (effect.OverDb is > 0 and < 1)
        {
            var (low, high, settled) = (0.0, 0.5, new double[at.Length]);
            Strengthen(shape, at, high, settled);
            if (Effect(shape, settled).OverDb <= 0)
            {
                for (var i = 0; i < 40; i++)
                {
                    Strengthen(shape, at, (low + high) / 2, settled);
                    (low, high) = Effect(shape, settled).OverDb > 0 ? ((low + high) / 2, high) : (low, (low + high) / 2);
                }

                Strengthen(shape, at, high, settled);
                (at, effect) = (settled, Effect(shape, settled));
            }
        }

        return new(shape.Sections(at, boxHz, boxQ), effect) { Setting = (shape, at) };
    }

    // Gains deeper, corners higher; moves with a floor at or below zero are gains.
    private static void Strengthen(EqualiserShape shape, double[] at, double by, double[] into)
    {
        var p = 0;
        foreach (var kind in shape.Parts)
        {
            var (isCut, count) = (kind is ShapePart.Peaking or ShapePart.Lowshelf, EqualiserShape.CountOf(kind));
            for (var i = 0; i < count; i++)
            {
                into[p + i] = at[p + i];
            }

            var (moved, step) = isCut ? (p + 2, -4 * by) : (p, by / 4);
            into[moved] = Math.Clamp(at[moved] + step, shape.Moves[moved].Least, shape.Moves[moved].Greatest);
            p += count;
        }
    }

    private IEnumerable<double[]> Starts(EqualiserShape shape)
    {
        var deep = Math.Min(Math.Max(1, problem.OverDb), EqualiserShape.DeepestDb);
        for (var s = 0; s < seedsHz.Count; s++)
        {
            var (start, cut) = (new List<double>(), s);
            foreach (var kind in shape.Parts)
            {
                var (f, q) = (seedsHz[cut % seedsHz.Count], kind == ShapePart.Peaking ? 1.4 : 0.7);
                var hertz = kind switch
                {
                    ShapePart.Peaking => f,
                    ShapePart.Lowshelf => f * 1.2,
                    ShapePart.Transform => Math.Max(boxHz, f),
                    _ => f * 0.7,
                };
                start.AddRange(kind == ShapePart.Highpass4 ? [Math.Log2(hertz)] : [Math.Log2(hertz), Math.Log2(q)]);
                if (kind is ShapePart.Peaking or ShapePart.Lowshelf)
                {
                    start.Add(-deep);
                    cut++;
                }
            }

            yield return [.. start.Select((value, i) => Math.Clamp(value, shape.Moves[i].Least, shape.Moves[i].Greatest))];

            // Without a cut the seed hardly matters.
            if (!shape.Parts.Contains(ShapePart.Peaking))
            {
                yield break;
            }
        }
    }
}
