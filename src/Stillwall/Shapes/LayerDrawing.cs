namespace Stillwall.Shapes;

/// <summary>Draws the slabs of a solid from the steps that act between one height and the next.</summary>
internal static class LayerDrawing
{
    internal static IReadOnlyList<SolidLayer> Draw(IReadOnlyList<SolidStep> steps)
    {
        var drawn = new StepDrawing(steps);
        var layers = new List<SolidLayer>();
        foreach (var (bottom, top) in Spans(steps))
        {
            Append(layers, new SolidLayer(bottom, top, drawn.At(Acting(steps, bottom, top))));
        }

        return layers;
    }

    /// <summary>The height of the lowest slab that is not empty, µm; null for nothing.</summary>
    internal static int? Foot(IReadOnlyList<SolidStep> steps)
    {
        foreach (var (bottom, top) in Spans(steps))
        {
            var acting = Acting(steps, bottom, top);
            if (!new StepDrawing(acting).At(acting).IsEmpty)
            {
                return bottom;
            }
        }

        return null;
    }

    // From each height at which a step begins or ends to the next.
    private static IEnumerable<(int Bottom, int Top)> Spans(IReadOnlyList<SolidStep> steps)
    {
        var heights = steps.SelectMany(s => new[] { s.Bottom, s.Top }).Distinct().Order().ToArray();
        return heights.Zip(heights.Skip(1));
    }

    private static List<SolidStep> Acting(IReadOnlyList<SolidStep> steps, int bottom, int top) => [.. steps.Where(s => s.Bottom <= bottom && s.Top >= top)];

    private static void Append(List<SolidLayer> layers, SolidLayer layer)
    {
        if (layer.Edges.Count == 0)
        {
            return;
        }

        if (layers.Count > 0 && layers[^1] is var last && last.Top == layer.Bottom && last.Region.Same(layer.Region))
        {
            layers[^1] = new SolidLayer(last.Bottom, layer.Top, last.Region);
        }
        else
        {
            layers.Add(layer);
        }
    }
}
