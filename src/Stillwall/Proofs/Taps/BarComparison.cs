namespace Stillwall.Proofs.Taps;

/// <summary>Figures of a bar and half of their 95 % bands.</summary>
/// <param name="Figures">The figures.</param>
/// <param name="Band">Half of each figure's 95 % band.</param>
public sealed record BarFigures(TapFigures Figures, TapFigures Band);

/// <summary>How one figure differs between two bars.</summary>
/// <param name="Figure"><c>youngs_modulus_pa</c> or <c>loss_factor</c>.</param>
/// <param name="DifferenceRatio">Second over first, less one.</param>
/// <param name="BandRatio">Half of the 95 % band of that difference.</param>
/// <param name="IsBeyondNoise">Whether the difference is larger than its band.</param>
public sealed record BarDifference(string Figure, double DifferenceRatio, double BandRatio, bool IsBeyondNoise);

/// <summary>Two bars of two mixes beside each other.</summary>
public static class BarComparison
{
    /// <summary>Compares two bars that were measured with the same tools.</summary>
    /// <param name="first">The first bar.</param>
    /// <param name="second">The second bar.</param>
    /// <returns>Modulus and loss factor.</returns>
    /// <remarks>
    /// Model: the bands' squares added; of caliper and scales the whole band counts, for two bars are measured apart. Validity: independent errors.
    /// Source: Guide to the expression of uncertainty in measurement, JCGM 100:2008, 5.1 (from memory). Accuracy: as the bands.
    /// </remarks>
    public static IReadOnlyList<BarDifference> Of(BarFigures first, BarFigures second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        return [One("youngs_modulus_pa", f => f.YoungsModulusPa), One("loss_factor", f => f.LossFactor)];

        BarDifference One(string name, Func<TapFigures, double> figure)
        {
            var (one, two) = (figure(first.Figures), figure(second.Figures));
            var ratio = two / one;
            var band = ratio * Math.Sqrt(Math.Pow(figure(first.Band) / one, 2) + Math.Pow(figure(second.Band) / two, 2));
            return new BarDifference(name, ratio - 1, band, Math.Abs(ratio - 1) > band);
        }
    }
}
