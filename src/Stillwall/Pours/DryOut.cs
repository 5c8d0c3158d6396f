using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>How the free water leaves the core.</summary>
public static class DryOut
{
    /// <summary>Water that an open, wet face gives off in a heated room, kg/(m²·s): 60 g/(m²·h) (from memory).</summary>
    public const double RateKgM2S = 0.060 / 3600;

    /// <summary>Least time in which the free water can leave.</summary>
    /// <param name="freeWaterKg">Free water, kg, zero or greater.</param>
    /// <param name="openAreaM2">Area of core that is open to the air, m², above 0.</param>
    /// <returns>Time, s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: the first stage of drying goes on to the end. Validity: a lower bound; the last water comes far more slowly, and behind closed skins it takes months.
    /// Source: rate from memory. Accuracy: a bound, not a forecast.
    /// </remarks>
    public static double LeastTimeS(double freeWaterKg, double openAreaM2)
    {
        Require.NotNegative(freeWaterKg);
        Require.Positive(openAreaM2);
        return freeWaterKg / (openAreaM2 * RateKgM2S);
    }
}
