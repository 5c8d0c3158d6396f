using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Cabinets;

/// <summary>What the fibre does to the air in the box.</summary>
/// <param name="FillFactor">Factor by which the air seems larger.</param>
/// <param name="DisplacedM3">Volume of the fibre itself that is taken off, m³.</param>
/// <param name="EffectiveVolumeM3">Effective volume, m³.</param>
/// <param name="DensityKgM3">Packing of the fibre, kg/m³; null where no mass is stated.</param>
/// <param name="IsLossy">Whether the fibre's own loss is to be added: where it is stated by mass.</param>
public sealed record FillEffect(double FillFactor, double DisplacedM3, double EffectiveVolumeM3, double? DensityKgM3, bool IsLossy);

/// <summary>Fibre inside the cabinet: it makes the box seem larger and adds loss.</summary>
public static class FibreFill
{
    /// <summary>Density of polyester, of which the fibre is taken to be, kg/m³ (handbook value, from memory).</summary>
    public const double FibreDensityKgM3 = 1380;

    /// <summary>Mechanical Q that a box with fibre does not exceed (from memory; 2 to 5 is met).</summary>
    public const double GreatestMechanicalQ = 3.5;

    /// <summary>Factor by which fibre makes a box seem larger.</summary>
    /// <param name="densityKgM3">Packing: mass of the fibre over net volume, kg/m³, 0 or more.</param>
    /// <returns>k, 1 to 1.25.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is negative.</exception>
    /// <remarks>
    /// Model: k = 1 + 0.25(1 − e^(−d/8)). Validity: loose polyester fibre, up to about 24 kg/m³; 1.4 is the isothermal limit.
    /// Source: from memory, common practice; no measured table was found. Accuracy: ±0.05; the measured resonance replaces it.
    /// </remarks>
    public static double Factor(double densityKgM3)
    {
        Require.NotNegative(densityKgM3);
        return 1 + (0.25 * (1 - Math.Exp(-densityKgM3 / 8)));
    }

    /// <summary>Effective volume with the stated fibre.</summary>
    /// <param name="netVolumeM3">Net air volume before the fibre goes in, m³.</param>
    /// <param name="fill">The fibre; null is none.</param>
    /// <param name="measuredFactor">Fill factor found by measuring; it beats what is stated. Null where not measured.</param>
    /// <returns>The effect; null where fibre and net volume leave no air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not a finite number.</exception>
    /// <remarks>
    /// Model: kVb = k·(net − mass/1380); with a stated factor nothing is taken off and no loss is added. Validity: as the factor.
    /// Source: our choice of bookkeeping; factor from memory. Accuracy: ±5 % of the volume.
    /// </remarks>
    public static FillEffect? Of(double netVolumeM3, Fill? fill, double? measuredFactor)
    {
        Require.Within(netVolumeM3, double.MinValue, double.MaxValue, nameof(netVolumeM3), "m³");
        var massKg = fill?.Factor is null ? fill?.MassKg ?? 0 : 0;
        var displacedM3 = massKg / FibreDensityKgM3;
        if (netVolumeM3 <= displacedM3)
        {
            return null;
        }

        var factor = measuredFactor ?? fill?.Factor ?? Factor(massKg / netVolumeM3);
        double? density = fill?.MassKg is { } stated ? stated / netVolumeM3 : null;
        return new FillEffect(factor, displacedM3, factor * (netVolumeM3 - displacedM3), density, massKg > 0);
    }

    /// <summary>Mechanical resistance that the fibre adds to the cone's.</summary>
    /// <param name="driver">The driver, or several as one.</param>
    /// <param name="effectiveVolumeM3">Effective volume, m³, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Added resistance, kg/s, 0 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not positive.</exception>
    /// <remarks>
    /// Model: as much as brings the mechanical Q at the box's resonance down to 3.5, nothing where it is lower already. Validity: about the resonance.
    /// Source: from memory, common practice. Accuracy: the Q may lie between 2 and 5; the measured impedance replaces it.
    /// </remarks>
    public static double LossKgS(Driver driver, double effectiveVolumeM3, Air air)
    {
        ArgumentNullException.ThrowIfNull(driver);
        var stiffness = (1 + ClosedBox.ComplianceRatio(driver, effectiveVolumeM3, air)) / driver.CmsMPerN;
        return Math.Max(0, (Math.Sqrt(driver.MmsKg * stiffness) / GreatestMechanicalQ) - driver.RmsKgS);
    }
}
