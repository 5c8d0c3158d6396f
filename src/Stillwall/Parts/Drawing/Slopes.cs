using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>Pieces that begin in mid-air: they grow out of the skin at 45°, two layers at a time, so that they print without support.</summary>
internal static class Slopes
{
    // A stair of two layers stands out by no more than a line of the nozzle.
    private const int LayersPerStep = 2;

    /// <summary>The slope that pieces begin with.</summary>
    /// <param name="narrower">The pieces as the slope is made of, a hair narrower, so that its steps do not bend their sides.</param>
    /// <param name="within">What lies within a distance of the skin that they grow from, mm.</param>
    /// <param name="heights">Distances from the skin at which the pieces change their width, and at last how far they stand out, mm.</param>
    /// <param name="apex">Distance behind the skin at which the sides of the pieces would meet, mm; null where the sides are parallel.</param>
    /// <param name="across">Step to which distances from the skin are rounded, mm; zero for any.</param>
    /// <returns>The slope; each step has the mean area of the 45° slope over its height.</returns>
    internal static Slope Of(
        Region pieces,
        Region narrower,
        Func<double, Region> within,
        IReadOnlyList<double> heights,
        double layer,
        double? apex = null,
        double across = 0
    )
    {
        var steps = heights.Zip(heights.Prepend(0), (to, from) => StepsFrom(from, to, layer)).SelectMany(s => s).ToList();
        List<double> reaches = [.. steps.Select(s => Reach(s.From, s.To, apex))];
        if (apex is { } behind && across > 0)
        {
            reaches = [.. reaches.Select(r => KeyGrid.Nearest(r, across))];
            steps = AsMuch(steps, reaches, behind);
        }

        var parts = narrower.PartsWithin([.. reaches.Select(within)]);
        return new Slope(pieces, [.. steps.Zip(parts, (s, part) => (s.From, s.To, part))]);
    }

    // Rounded reaches make a slope a little more or less: the last step but one gives or takes that much.
    private static List<(double From, double To)> AsMuch(List<(double From, double To)> steps, List<double> reaches, double behind)
    {
        double Area(double reach) => reach * (reach + 2 * behind);
        var surplus = steps.Zip(reaches, (s, reach) => (Area(reach) - Area(Reach(s.From, s.To, behind))) * (s.To - s.From)).Sum();
        if (steps.Count < 2 || reaches[^1] <= reaches[^2])
        {
            return steps;
        }

        var at = steps[^1].From + surplus / (Area(reaches[^1]) - Area(reaches[^2]));
        return [.. steps[..^2], (steps[^2].From, at), (at, steps[^1].To)];
    }

    private static IEnumerable<(double From, double To)> StepsFrom(double from, double to, double layer)
    {
        var n = Math.Max(1, (int)Math.Ceiling((to - from) / (LayersPerStep * layer) - 1e-9));
        return Enumerable.Range(0, n).Select(i => (from + (to - from) * i / n, from + (to - from) * (i + 1) / n));
    }

    // The area up to a height grows as the height where sides are parallel, as the square of the distance from where they meet otherwise.
    private static double Reach(double from, double to, double? apex) =>
        apex is { } behind ? Math.Sqrt(Math.Pow((from + to) / 2 + behind, 2) + Math.Pow(to - from, 2) / 12) - behind : (from + to) / 2;
}

/// <summary>A slope in steps.</summary>
/// <param name="Steps">The steps from the foot of the slope up, mm, and what stands there.</param>
internal sealed record Slope(Region Pieces, IReadOnlyList<(double From, double To, Region Region)> Steps)
{
    /// <summary>Adds the slope alone, from a height on, mm.</summary>
    internal Solid On(Solid solid, double from) => Steps.Aggregate(solid, (drawn, step) => drawn.Add(step.Region, from + step.From, from + step.To));

    /// <summary>Adds the slope from a height on, and then the pieces in full, mm.</summary>
    internal Solid On(Solid solid, double from, double to) => On(solid, from).Add(Pieces, from + Steps[^1].To, to);
}
