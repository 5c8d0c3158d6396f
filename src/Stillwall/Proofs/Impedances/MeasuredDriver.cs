using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Impedances;

/// <summary>A driver's small-signal parameters by measurement, and half of the 95 % band of those that take two recordings.</summary>
/// <param name="FsHz">Resonance in free air, Hz.</param>
/// <param name="Qms">Mechanical Q.</param>
/// <param name="Qes">Electrical Q.</param>
/// <param name="ReOhm">Resistance of the coil, ohm.</param>
/// <param name="LeH">Inductance of the coil, H.</param>
/// <param name="SdM2">Area of the cone as stated, m².</param>
/// <param name="VasM3">Air volume with the compliance of the suspension, m³.</param>
/// <param name="MmsKg">Moving mass, kg.</param>
/// <param name="BlTM">Force factor, N/A.</param>
/// <param name="VasBandM3">Half of the 95 % band of Vas, m³; area, mass and volume as stated.</param>
public sealed record MeasuredDriver(
    double FsHz,
    double Qms,
    double Qes,
    double ReOhm,
    double LeH,
    double SdM2,
    [property: ComputedBy("measured-vas", "recording.resonance_hz", "recording.other_resonance_hz", "recording.added", "recording.sd_m2")] double VasM3,
    [property: ComputedBy("measured-vas", "recording.resonance_hz", "recording.other_resonance_hz", "recording.added", "recording.sd_m2")] double MmsKg,
    [property: ComputedBy(
        "measured-force-factor",
        "recording",
        "recording.reference_ohm",
        "recording.resonance_hz",
        "recording.other_resonance_hz",
        "recording.added",
        "recording.sd_m2"
    )]
        double BlTM,
    double VasBandM3
)
{
    /// <summary>From the free driver and the same with a mass stuck to its cone.</summary>
    /// <param name="free">Figures in free air.</param>
    /// <param name="loaded">Figures with the mass.</param>
    /// <param name="addedKg">The mass, kg, above 0.</param>
    /// <param name="sdM2">Area of the cone, m², above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>The driver; null where the mass did not lower the resonance by 3 % or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: Mms = m/((fs/f')² − 1), Cms = 1/((2πfs)²Mms), Vas = ρc²Sd²Cms. Validity: a mass that moves with the cone and lowers the resonance by 20
    /// to 40 %. Source: IEC 60268-5:2003 for the parameters; added mass after Small 1972, JAES 20(5) (both from memory). Accuracy: the error of the ratio
    /// of resonances, doubled and more.
    /// </remarks>
    public static MeasuredDriver? ByMass(ImpedanceResult free, ImpedanceResult loaded, double addedKg, double sdM2, Air air)
    {
        ArgumentNullException.ThrowIfNull(free);
        ArgumentNullException.ThrowIfNull(loaded);
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(addedKg);
        Require.Positive(sdM2);
        var ratio = Math.Pow(free.ResonanceHz / loaded.ResonanceHz, 2);
        if (ratio < 1.06)
        {
            return null;
        }

        var mass = addedKg / (ratio - 1);
        var compliance = 1 / (Math.Pow(2 * Math.PI * free.ResonanceHz, 2) * mass);
        var vas = air.BulkModulusPa * sdM2 * sdM2 * compliance;
        var (one, two) = (free.Uncertainty.ResonanceHz / free.ResonanceHz, loaded.Uncertainty.ResonanceHz / loaded.ResonanceHz);

        // Vas goes with (ratio − 1)/fs² = 1/f'² − 1/fs².
        var band = vas * Math.Sqrt(Math.Pow(2 * one / (ratio - 1), 2) + Math.Pow(2 * two * ratio / (ratio - 1), 2));
        return Of(free, sdM2, vas, mass, band);
    }

    /// <summary>From the free driver and the same on a closed box of known volume.</summary>
    /// <param name="free">Figures in free air.</param>
    /// <param name="boxed">Figures on the box.</param>
    /// <param name="volumeM3">Volume of the air in the box, the cone's hollow counted, m³, above 0.</param>
    /// <param name="sdM2">Area of the cone, m², above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>The driver; null where the box did not raise the resonance by 3 % or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: Vas = V·(fc·Qec/(fs·Qes) − 1), which a change of the air's load does not touch. Validity: an airtight, empty box. Source: Small 1972,
    /// JAES 20(10) (from memory). Accuracy: the error of resonances and electrical Qs together.
    /// </remarks>
    public static MeasuredDriver? ByVolume(ImpedanceResult free, ImpedanceResult boxed, double volumeM3, double sdM2, Air air)
    {
        ArgumentNullException.ThrowIfNull(free);
        ArgumentNullException.ThrowIfNull(boxed);
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(volumeM3);
        Require.Positive(sdM2);
        var ratio = boxed.ResonanceHz * boxed.QElectrical / (free.ResonanceHz * free.QElectrical);
        if (ratio < 1.06 || boxed.ResonanceHz < 1.03 * free.ResonanceHz)
        {
            return null;
        }

        var vas = volumeM3 * (ratio - 1);
        var compliance = vas / (air.BulkModulusPa * sdM2 * sdM2);
        double Share(ImpedanceResult r) => Math.Pow(r.Uncertainty.ResonanceHz / r.ResonanceHz, 2) + Math.Pow(r.Uncertainty.QElectrical / r.QElectrical, 2);
        return Of(free, sdM2, vas, DriverParameters.MovingMassKg(free.ResonanceHz, compliance), volumeM3 * ratio * Math.Sqrt(Share(free) + Share(boxed)));
    }

    private static MeasuredDriver Of(ImpedanceResult free, double sdM2, double vasM3, double massKg, double bandM3) =>
        new(
            FsHz: free.ResonanceHz,
            Qms: free.QMechanical,
            Qes: free.QElectrical,
            ReOhm: free.DcResistanceOhm,
            LeH: free.InductanceH,
            SdM2: sdM2,
            VasM3: vasM3,
            MmsKg: massKg,
            BlTM: DriverParameters.ForceFactorTM(free.ResonanceHz, massKg, free.DcResistanceOhm, free.QElectrical),
            VasBandM3: bandM3
        );
}
