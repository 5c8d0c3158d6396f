namespace Stillwall.Shapes;

/// <summary>Draws the slabs of a solid from the steps that act between one height and the next.</summary>
internal static class LayerDrawing
{
    private const int StepMicrometres = 100;

    internal static IReadOnlyList<SolidLayer> Draw(IReadOnlyList<SolidStep> steps)
    {
        var drawn = new StepDrawing(steps);
        var layers = new List<SolidLayer>();
        foreach (var (bottom, top) in Spans(steps))
        {
            var acting = Acting(steps, bottom, top);
            foreach (
                var layer in acting.Exists(s => s.Taper is not null)
                    ? Tapered(drawn, acting, bottom, top)
                    : [new SolidLayer(bottom, top, drawn.At(acting, bottom))]
            )
            {
                Append(layers, layer);
            }
        }

        return layers;
    }

    /// <summary>The height of the lowest slab that is not empty, µm; null for nothing.</summary>
    internal static int? Foot(IReadOnlyList<SolidStep> steps)
    {
        foreach (var (bottom, top) in Spans(steps))
        {
            var acting = Acting(steps, bottom, top);
            if (!new StepDrawing(acting).At(acting, (bottom + top) / 2.0).IsEmpty)
            {
                return bottom;
            }
        }

        return null;
    }

    /// <summary>A slab with inclined sides in upright steps of 0.1 mm at most, each with the region halfway up.</summary>
    internal static IEnumerable<SolidLayer> Upright(SolidLayer layer)
    {
        if (!layer.Tapered)
        {
            return [layer];
        }

        return Steps(layer.Bottom, layer.Top).Select(s => new SolidLayer(s.Bottom, s.Top, layer.RegionAt((s.Bottom + s.Top) / 2.0)));
    }

    // From each height at which a step begins or ends to the next.
    private static IEnumerable<(int Bottom, int Top)> Spans(IReadOnlyList<SolidStep> steps)
    {
        var heights = steps.SelectMany(s => new[] { s.Bottom, s.Top }).Distinct().Order().ToArray();
        return heights.Zip(heights.Skip(1));
    }

    private static List<SolidStep> Acting(IReadOnlyList<SolidStep> steps, int bottom, int top) => [.. steps.Where(s => s.Bottom <= bottom && s.Top >= top)];

    private static IEnumerable<(int Bottom, int Top)> Steps(int bottom, int top)
    {
        var n = (top - bottom + StepMicrometres - 1) / StepMicrometres;
        int At(int i) => (int)(bottom + (long)(top - bottom) * i / n);
        return Enumerable.Range(0, n).Select(i => (At(i), At(i + 1)));
    }

    private static void Append(List<SolidLayer> layers, SolidLayer layer)
    {
        if (layer.LowerEdges.Count == 0)
        {
            return;
        }

        if (layers.Count > 0 && layers[^1] is { Tapered: false } last && !layer.Tapered && last.Top == layer.Bottom && last.Lower.Same(layer.Lower))
        {
            layers[^1] = new SolidLayer(last.Bottom, layer.Top, last.Lower);
        }
        else
        {
            layers.Add(layer);
        }
    }

    private static IEnumerable<SolidLayer> Tapered(StepDrawing drawn, IReadOnlyList<SolidStep> acting, int bottom, int top) =>
        Inclined(drawn, acting, bottom, top) is { } layer
            ? [layer]
            : Steps(bottom, top).Select(s => new SolidLayer(s.Bottom, s.Top, drawn.At(acting, (s.Bottom + s.Top) / 2.0)));

    // The rings of the tapers must come through whole at both ends, and everything else must be upright.
    private static SolidLayer? Inclined(StepDrawing drawn, IReadOnlyList<SolidStep> acting, int bottom, int top)
    {
        var (lower, upper) = (new SolidLayer(bottom, bottom, drawn.At(acting, bottom)), new SolidLayer(top, top, drawn.At(acting, top)));
        var (low, high) = (lower.LowerEdges.ToHashSet(), upper.LowerEdges.ToHashSet());
        var (lowerEdges, upperEdges) = (new List<GridEdge>(), new List<GridEdge>());
        foreach (var step in acting.Where(s => s.Taper is not null))
        {
            var (a, b) = (step.RingAt(bottom), step.RingAt(top));
            for (var i = 0; i < a.Count; i++)
            {
                var j = (i + 1) % a.Count;
                var (l, u) =
                    step.Kind == SolidStepKind.Add
                        ? (new GridEdge(a[i], a[j]), new GridEdge(b[i], b[j]))
                        : (new GridEdge(a[j], a[i]), new GridEdge(b[j], b[i]));
                if ((l.From != l.To && !low.Remove(l)) || (u.From != u.To && !high.Remove(u)))
                {
                    return null;
                }

                if (l.From != l.To || u.From != u.To)
                {
                    lowerEdges.Add(l);
                    upperEdges.Add(u);
                }
            }
        }

        if (!low.SetEquals(high))
        {
            return null;
        }

        var upright = lower.LowerEdges.Where(low.Contains).ToList();
        return new SolidLayer(
            bottom: bottom,
            top: top,
            lower: lower.Lower,
            upper: upper.Lower,
            lowerEdges: [.. lowerEdges, .. upright],
            upperEdges: [.. upperEdges, .. upright],
            regionAt: height => drawn.At(acting, height)
        );
    }
}
