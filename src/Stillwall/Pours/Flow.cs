using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>Whether the mix gets everywhere.</summary>
public static class Flow
{
    /// <summary>Grains that have to pass side by side (common practice).</summary>
    public const double GrainFactor = 4;

    /// <summary>Least passage that a mix wants: the plain rule, or four grains where it is coarse.</summary>
    /// <param name="plainM">The plain rule without sand, m, above 0.</param>
    /// <param name="grainM">Largest grain, m, 0 or more.</param>
    /// <returns>Passage, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: the greater of the plain rule and 4 × grain. Validity: pourable mixes. Source: common practice, no source. Accuracy: a rule of thumb.
    /// </remarks>
    public static double WantedPassageM(double plainM, double grainM)
    {
        Require.Positive(plainM);
        Require.NotNegative(grainM);
        return Math.Max(plainM, GrainFactor * grainM);
    }
}
