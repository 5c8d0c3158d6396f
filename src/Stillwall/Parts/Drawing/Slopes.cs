using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>Pieces that begin in mid-air: they grow out of the skin at 45°, two layers at a time, so that they print without support.</summary>
internal static class Slopes
{
    // A stair of two layers stands out by no more than a line of the nozzle.
    private const int LayersPerStep = 2;

    /// <summary>Adds pieces with the slope they begin with.</summary>
    /// <param name="solid">What they stand on.</param>
    /// <param name="pieces">The pieces in full.</param>
    /// <param name="within">What lies within a distance of the skin that they grow from, mm.</param>
    /// <param name="height">Height of the slope, mm: how far the pieces stand out from the skin.</param>
    /// <param name="from">Where the slope begins, mm.</param>
    /// <param name="to">Where the pieces end, mm.</param>
    /// <param name="layer">Height of a printed layer, mm.</param>
    /// <returns>Both together; each step reaches as far as the slope does halfway up it.</returns>
    internal static Solid AddSloped(this Solid solid, Region pieces, Func<double, Region> within, double height, double from, double to, double layer)
    {
        foreach (var (bottom, top, region) in Steps(pieces, within, height, layer))
        {
            solid = solid.Add(region, from + bottom, from + top);
        }

        return solid.Add(pieces, from + height, to);
    }

    /// <summary>The steps of a slope, from its foot: from and to, and what stands there.</summary>
    internal static IReadOnlyList<(double From, double To, Region Region)> Steps(Region pieces, Func<double, Region> within, double height, double layer)
    {
        var n = Math.Max(1, (int)Math.Ceiling(height / (LayersPerStep * layer) - 1e-9));
        return [.. Enumerable.Range(0, n).Select(i => (height * i / n, height * (i + 1) / n, pieces.Intersect(within(height * (i + 0.5) / n))))];
    }
}
