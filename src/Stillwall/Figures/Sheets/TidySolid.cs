using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>A part as it is drawn on paper: without the fine steps of its slopes and without its cut-in name.</summary>
internal static class TidySolid
{
    // Slopes go in steps of two printed layers; skins are thicker than this, mm.
    private const double ThinStep = 0.95;

    // Rings below this area are letters and rounding, m².
    private const double Speck = 0.3e-6;

    /// <summary>Gives every thin step the section of the slab below it.</summary>
    internal static Solid Of(Solid solid)
    {
        var layers = solid.Layers;
        var kept = layers.FirstOrDefault(l => l.TopMm - l.BottomMm >= ThinStep)?.Lower;
        if (kept is null)
        {
            return solid;
        }

        var tidy = Solid.Empty;
        for (var i = 0; i < layers.Count; i++)
        {
            var thick = layers[i].TopMm - layers[i].BottomMm;

            // A thin slab on a thick one of the same outline is what a name was cut into.
            kept = thick >= ThinStep || (i > 0 && layers[i].BottomMm - layers[i - 1].TopMm > 0.001) ? layers[i].Lower : kept;
            tidy = tidy.Add(kept, layers[i].BottomMm, layers[i].TopMm);
        }

        return tidy;
    }

    /// <summary>What an upright plane cuts out of a stack of slabs: across the plane, and up the stack.</summary>
    /// <param name="solid">The stack.</param>
    /// <param name="at">Where the plane stands, mm.</param>
    /// <param name="acrossX">Whether the plane stands across x, so that y runs along it, or across y.</param>
    internal static Region Section(Solid solid, double at, bool acrossX) => Region.JoinAll(solid.Layers.SelectMany(layer =>
        Spans(layer.Lower, at, acrossX).Select(s => Region.RoundedRectangle(s.From, layer.BottomMm, s.To, layer.TopMm, 0))).Where(r => r.AreaM2 > Speck / 10));

    /// <summary>Where a line runs through a region, mm.</summary>
    internal static IReadOnlyList<(double From, double To)> Spans(Region region, double at, bool acrossX)
    {
        // Between two places of the grid, so that no corner lies on the line.
        var line = Math.Round(at * 1000) + 0.5;
        var crossings = new List<double>();
        foreach (var ring in region.Rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                var (a0, a1, b0, b1) = acrossX ? (a.X, a.Y, b.X, b.Y) : (a.Y, a.X, b.Y, b.X);
                if (a0 < line != b0 < line)
                {
                    crossings.Add((a1 + (line - a0) * (b1 - (double)a1) / (b0 - (double)a0)) / 1000);
                }
            }
        }

        crossings.Sort();
        return [.. crossings.Chunk(2).Where(c => c.Length == 2).Select(c => (c[0], c[1]))];
    }
}
