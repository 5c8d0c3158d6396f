using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>Whether the mix gets everywhere.</summary>
public static class Flow
{
    /// <summary>Yield stress of a fresh plaster slurry, Pa (from memory); it rises through the pot life.</summary>
    public const double FreshYieldStressPa = 20;

    /// <summary>Grains that have to pass side by side (common practice).</summary>
    public const double GrainFactor = 4;

    /// <summary>Narrowest gap that a slurry of a given yield stress still fills.</summary>
    /// <param name="yieldStressPa">Yield stress, Pa, above 0.</param>
    /// <param name="lengthM">Length of the gap along the flow, m, above 0.</param>
    /// <param name="pressurePa">Pressure that drives it, Pa, above 0.</param>
    /// <returns>Gap, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: h = 2τL/Δp: a plug between two plates stops when the pressure no longer overcomes the yield stress on both walls. Validity: slow flow
    /// without coarse grains.
    /// Source: force balance of a Bingham plug, e.g. Bird, Stewart and Lightfoot 2002 (from memory). Accuracy: as the yield stress, a factor of two.
    /// </remarks>
    public static double LeastPassageM(double yieldStressPa, double lengthM, double pressurePa)
    {
        Require.Positive(yieldStressPa);
        Require.Positive(lengthM);
        Require.Positive(pressurePa);
        return 2 * yieldStressPa * lengthM / pressurePa;
    }

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
