using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>A part as it is drawn on paper: without the fine steps of its slopes and without its cut-in name.</summary>
internal static class TidySolid
{
    // Slopes go in steps of two printed layers; skins are thicker than this, mm.
    private const double ThinStep = 0.95;

    // Areas below this are rounding, m².
    private const double Speck = 0.3e-6;

    // What a slab must add or lack beside its neighbours to be more than a letter or rounding, m².
    private const double Feature = 60e-6;

    /// <summary>
    /// Gives every run of thin steps one section: that of the slab below, less the grooves cut into the run, with the ledges that end with it.
    /// </summary>
    internal static Solid Of(Solid solid)
    {
        var (layers, tidy) = (solid.Layers, Solid.Empty);
        var thick = layers.Index().Where(l => IsThick(l.Item)).Select(l => l.Index).ToList();
        if (thick.Count == 0)
        {
            return solid;
        }

        for (var i = 0; i < layers.Count; i++)
        {
            var region = layers[i].Region;
            if (!IsThick(layers[i]))
            {
                var (below, above) = (thick.FindLast(t => t < i), thick.Find(t => t > i));
                var (isBelow, isAbove) = (thick[0] < i, thick[^1] > i);
                var (start, first, next) = (layers[isBelow ? below : above].Region, isBelow ? below + 1 : 0, isAbove ? above : layers.Count);

                // A single thin step is what a name was cut into; what begins on the bed is drawn as if without slopes.
                var isRun = isBelow && layers[next - 1].TopMm - layers[first].BottomMm >= ThinStep;
                region = isRun ? Tidied(start, region, isAbove ? layers[above].Region : Region.Empty, layers[next - 1].Region) : start;
            }

            tidy = tidy.Add(region, layers[i].BottomMm, layers[i].TopMm);
        }

        return tidy;
    }

    private static Region Tidied(Region start, Region step, Region above, Region last)
    {
        var groove = Less(start, step);
        var ledge = Less(Less(last, above), start);
        var grooved = groove.AreaM2 > Feature ? Less(start, groove) : start;
        return ledge.AreaM2 > Feature ? grooved.Join(ledge) : grooved;
    }

    private static Region Less(Region one, Region other) => one.Same(other) ? Region.Empty : one.Combine([other], (inOne, inOther) => inOne && !inOther);

    private static bool IsThick(SolidLayer layer) => layer.TopMm - layer.BottomMm >= ThinStep;

    /// <summary>What an upright plane cuts out of a stack of slabs: across the plane, and up the stack.</summary>
    /// <param name="acrossX">Whether the plane stands across x, so that y runs along it, or across y.</param>
    internal static Region Section(Solid solid, double at, bool acrossX) =>
        Region.JoinAll(
            solid
                .Layers.SelectMany(layer => Spans(layer.Region, at, acrossX).Select(s => Region.RoundedRectangle(s.From, layer.BottomMm, s.To, layer.TopMm, 0)))
                .Where(r => r.AreaM2 > Speck / 10)
        );

    /// <summary>Where a line runs through a region, mm.</summary>
    internal static IReadOnlyList<(double From, double To)> Spans(Region region, double at, bool acrossX)
    {
        // Between two places of the grid, so that no corner lies on the line.
        var line = Math.Round(at * Millimetres.MicrometresPerMillimetre) + 0.5;
        var crossings = new List<double>();
        foreach (var ring in region.Rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                var (a0, a1, b0, b1) = acrossX ? (a.X, a.Y, b.X, b.Y) : (a.Y, a.X, b.Y, b.X);
                if (a0 < line != b0 < line)
                {
                    crossings.Add((a1 + (line - a0) * (b1 - (double)a1) / (b0 - (double)a0)) / Millimetres.MicrometresPerMillimetre);
                }
            }
        }

        crossings.Sort();
        return [.. crossings.Chunk(2).Where(c => c.Length == 2).Select(c => (c[0], c[1]))];
    }
}
