using Stillwall.Numerics;
using Stillwall.Walls;

namespace Stillwall.Pours;

/// <summary>What the wet cast presses with.</summary>
public static class FormPressure
{
    /// <summary>Pressure of the slurry at a depth.</summary>
    /// <param name="slurryDensityKgM3">Density of the slurry, kg/m³, above 0.</param>
    /// <param name="headM">Depth below the slurry's surface, m, 0 or more; within the lift, the lifts below having set.</param>
    /// <returns>Pressure, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: p = ρgh, the full head of a liquid. Validity: poured fluid mixes that have not begun to set. Source: ACI 347-04, 2.2.2, liquid head for fluid
    /// mixes. Accuracy: upper bound, exact at first.
    /// </remarks>
    public static double AtDepthPa(double slurryDensityKgM3, double headM)
    {
        Require.Positive(slurryDensityKgM3);
        Require.NotNegative(headM);
        return slurryDensityKgM3 * StandardGravity.AccelerationMS2 * headM;
    }

    /// <summary>Least number of equal lifts whose head stays within a limit.</summary>
    /// <param name="cavityHeightM">Height of the cavity, m, above 0.</param>
    /// <param name="greatestHeadM">Greatest head that the skins bear, m, above 0.</param>
    /// <returns>Number of lifts, at least 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: height over head, rounded up. Validity: each lift sets before the next. Source: elementary; equal lifts are our choice. Accuracy: exact.
    /// </remarks>
    public static int Lifts(double cavityHeightM, double greatestHeadM)
    {
        Require.Positive(cavityHeightM);
        Require.Positive(greatestHeadM);
        return (int)Math.Min(1000, Math.Max(1, Math.Ceiling(cavityHeightM / greatestHeadM - 1e-9)));
    }

    /// <summary>Force that lifts the inner sleeve where slurry gets under it.</summary>
    /// <param name="slurryDensityKgM3">Density of the slurry, kg/m³, above 0.</param>
    /// <param name="displacedVolumeM3">Volume of the sleeve under the slurry's surface, m³, 0 or more.</param>
    /// <param name="sleeveMassKg">Mass of the sleeve, kg, 0 or more.</param>
    /// <param name="holdDownKg">Weight laid or clamped on it, kg, 0 or more.</param>
    /// <returns>Net force, N; positive lifts it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: g(ρV − m − weight). Validity: slurry can get under the sleeve; none does once a first lift of 30 mm has set around its foot (our
    /// choice). Source: elementary, Archimedes. Accuracy: exact for its model.
    /// </remarks>
    public static double UpliftN(double slurryDensityKgM3, double displacedVolumeM3, double sleeveMassKg, double holdDownKg = 0)
    {
        Require.Positive(slurryDensityKgM3);
        Require.NotNegative(displacedVolumeM3);
        Require.NotNegative(sleeveMassKg);
        Require.NotNegative(holdDownKg);
        return StandardGravity.AccelerationMS2 * (slurryDensityKgM3 * displacedVolumeM3 - sleeveMassKg - holdDownKg);
    }
}
