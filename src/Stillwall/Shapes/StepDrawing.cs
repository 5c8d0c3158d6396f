using System.Globalization;

namespace Stillwall.Shapes;

/// <summary>Draws the region of a set of steps that act together. Beginnings that sets have in common are drawn once.</summary>
/// <remarks>
/// All upright shapes are cut at one another beforehand, whatever their heights: then an edge that two slabs have in common is the same edge in both, walls are
/// upright without a bend, and the volume of the mesh is that of the slabs.
/// </remarks>
internal sealed class StepDrawing
{
    private readonly Dictionary<Region, IReadOnlyList<GridPoint[]>> noded;
    private readonly Dictionary<SolidStep, string> numbers = new(ReferenceEqualityComparer.Instance);
    private readonly Drawn nothing = new([]);

    internal StepDrawing(IReadOnlyList<SolidStep> steps)
    {
        noded = Noded([.. steps.Select(s => s.Region).Distinct()]);
        for (var i = 0; i < steps.Count; i++)
        {
            numbers[steps[i]] = i.ToString(CultureInfo.InvariantCulture);
        }
    }

    /// <summary>The region of steps, without slivers.</summary>
    internal Region At(IReadOnlyList<SolidStep> acting)
    {
        var at = Runs(acting).Aggregate(nothing, Next);
        return at.Region ??= (at.Rings is { } rings ? Region.OfTraced(rings, simplify: true) : null) ?? Overlaid(acting);
    }

    // What follows one another and does the same.
    private static IEnumerable<IReadOnlyList<SolidStep>> Runs(IReadOnlyList<SolidStep> acting)
    {
        for (var i = 0; i < acting.Count;)
        {
            var run = acting.Skip(i).TakeWhile(s => s.Kind == acting[i].Kind).ToList();
            run = run[0].Kind == SolidStepKind.Keep ? run[..1] : run;
            yield return run;
            i += run.Count;
        }
    }

    private Drawn Next(Drawn from, IReadOnlyList<SolidStep> run)
    {
        var key = string.Join(',', run.Select(s => numbers[s]));
        if (!from.Next.TryGetValue(key, out var found))
        {
            var shapes = run.SelectMany(s => noded[s.Region]);
            from.Next[key] = found = new Drawn(from.Rings is { } rings ? RingSweep.Combine(rings, shapes, Rule(run[0].Kind), node: false) : null);
        }

        return found;
    }

    private static Func<bool, bool, bool> Rule(SolidStepKind kind) =>
        kind switch
        {
            SolidStepKind.Add => (a, b) => a || b,
            SolidStepKind.Cut => (a, b) => a && !b,
            _ => (a, b) => a && b,
        };

    // The slow way, step by step, where the quick one came to no end.
    private static Region Overlaid(IReadOnlyList<SolidStep> acting) =>
        acting.Aggregate(
            Region.Empty,
            (region, step) =>
                step.Kind switch
                {
                    SolidStepKind.Add => region.Join(step.Region),
                    SolidStepKind.Cut => region.Cut(step.Region),
                    _ => region.Intersect(step.Region),
                }
        );

    private static Dictionary<Region, IReadOnlyList<GridPoint[]>> Noded(IReadOnlyList<Region> regions)
    {
        var edges = regions.SelectMany(r => r.Rings).SelectMany(RingSweep.EdgesOf).Distinct().ToList();
        var chains = Noder.Settled(edges);
        return regions.ToDictionary(
            r => r,
            r => (IReadOnlyList<GridPoint[]>)[.. r.Rings.Select(ring => RingSweep.EdgesOf(ring).SelectMany(e => chains[e].SkipLast(1)).ToArray())]
        );
    }

    // From each region on, what the next steps make of it. No rings: the quick way came to no end.
    private sealed class Drawn(IReadOnlyList<GridPoint[]>? rings)
    {
        internal IReadOnlyList<GridPoint[]>? Rings { get; } = rings;

        internal Dictionary<string, Drawn> Next { get; } = new(StringComparer.Ordinal);

        internal Region? Region { get; set; }
    }
}
