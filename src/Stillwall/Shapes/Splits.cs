namespace Stillwall.Shapes;

/// <summary>Cuts a solid apart for a printer that is too small for it.</summary>
public static class Splits
{
    private const double Far = 10_000;

    /// <summary>Cuts level, at heights.</summary>
    /// <param name="solid">The solid.</param>
    /// <param name="heights">Heights of the cuts, mm, in any order.</param>
    /// <returns>The pieces from the lowest up, each let down to z = 0; heights that leave nothing are passed over.</returns>
    /// <remarks>Model: slabs cut in two. Validity: any solid. Source: geometry. Accuracy: exact on the grid; nothing is lost in the cut.</remarks>
    public static IReadOnlyList<Solid> AtHeights(Solid solid, params IReadOnlyList<double> heights)
    {
        ArgumentNullException.ThrowIfNull(solid);
        ArgumentNullException.ThrowIfNull(heights);
        if (solid.Heights is not { } ends)
        {
            return [];
        }

        double[] cuts = [ends.Bottom, .. heights.Where(h => h > ends.Bottom && h < ends.Top).Distinct().Order(), ends.Top];
        return
        [
            .. cuts.Zip(cuts.Skip(1), (from, to) => solid.Between(from, to)).Where(s => s.Layers.Count > 0).Select(s => s.Lifted(-s.Heights!.Value.Bottom)),
        ];
    }

    /// <summary>Cuts upright, along a line in the plane.</summary>
    /// <param name="solid">The solid.</param>
    /// <param name="alongX">True for a cut along x at a y, false for one along y at an x.</param>
    /// <param name="at">Where the cut lies, mm.</param>
    /// <returns>The piece on the lesser side and the one on the greater; a piece may be empty.</returns>
    /// <remarks>
    /// Model: regions cut in two; inclined sides that the cut crosses are taken in steps of 0.1 mm. Validity: any solid. Source: geometry. Accuracy:
    /// exact on the grid; nothing is lost in the cut.
    /// </remarks>
    public static (Solid Lesser, Solid Greater) Upright(Solid solid, bool alongX, double at)
    {
        ArgumentNullException.ThrowIfNull(solid);
        Grid.Micrometres(at, nameof(at));
        var (lesser, greater) = alongX
            ? (Region.RoundedRectangle(-Far, -Far, Far, at, 0), Region.RoundedRectangle(-Far, at, Far, Far, 0))
            : (Region.RoundedRectangle(-Far, -Far, at, Far, 0), Region.RoundedRectangle(at, -Far, Far, Far, 0));
        return (solid.Within(lesser), solid.Within(greater));
    }
}
