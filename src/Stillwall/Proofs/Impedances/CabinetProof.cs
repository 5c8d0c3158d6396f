using Stillwall.Cabinets;

namespace Stillwall.Proofs.Impedances;

/// <summary>What the impedance of the driver in its cabinet says of the cabinet.</summary>
/// <param name="F3Hz">3 dB below the passband, Hz, by the measured resonance and Q.</param>
/// <param name="F10Hz">10 dB below the passband, Hz.</param>
/// <param name="ResponsePeakDb">Peak over the passband, dB.</param>
/// <param name="EffectiveVolumeM3">Air the cone feels, m³; null where the resonance is not above the driver's own.</param>
/// <param name="FillFactor">Effective over net volume; null with it.</param>
/// <param name="FillFactorBandFactor">Half of the 95 % band of the fill factor, the driver's data as stated.</param>
/// <param name="LeakQ">Q of the leak, all damping that nothing else explains counted as leak; null where nothing is left to explain.</param>
/// <param name="LeakResistancePaSM3">Resistance of that leak, Pa·s/m³; null with it.</param>
/// <param name="LeastLeakQ">Lower end of the leak Q's 95 % band: the cabinet is at least so tight.</param>
public sealed record CabinetProof(
    double F3Hz, double F10Hz, double ResponsePeakDb, double? EffectiveVolumeM3, double? FillFactor, double? FillFactorBandFactor, double? LeakQ,
    [property: System.Text.Json.Serialization.JsonPropertyName("leak_resistance_pa_s_m3")] double? LeakResistancePaSM3, double? LeastLeakQ)
{
    /// <summary>Reads the cabinet out of the figures.</summary>
    /// <param name="measured">Impedance in the cabinet.</param>
    /// <param name="network">The driver in its box as planned.</param>
    /// <param name="netVolumeM3">Net volume of the box, m³, above 0.</param>
    /// <returns>What the figures imply.</returns>
    /// <remarks>
    /// Model: closed forms of the measured fc and Qtc for the response; kVb = Vas/((fc/fs)² − 1) from the driver's data; damping that neither the driver nor the planned fill explains as a leak: 1/QL = (1 + 1/α)·(1/Qmc − 1/Qmc0), R = QL/(2πfc·Cab).
    /// Validity: a closed box whose leak Q is above 5, and a driver that was measured or keeps to its sheet: 5 % in fs is 10 % and more in the volume. Source: Small, JAES 20(10), 1972 (from memory); the leak is our own algebra on it. Accuracy: 0.5 % of the network it is taken from.
    /// </remarks>
    public static CabinetProof Of(ImpedanceResult measured, BoxNetwork network, double netVolumeM3)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(network);
        Numerics.Require.Positive(netVolumeM3);
        var (fc, driver) = (measured.ResonanceHz, network.Driver);
        var shape = new CabinetProof(ClosedBox.F3Hz(fc, measured.QTotal), ClosedBox.F10Hz(fc, measured.QTotal), ClosedBox.ResponsePeakDb(measured.QTotal), null, null, null, null, null, null);
        var alpha = Math.Pow(fc / driver.FsHz, 2) - 1;
        if (alpha <= 0.01)
        {
            return shape;
        }

        var felt = driver.VasInM3(network.Air) / alpha;
        var planned = Math.Sqrt(driver.MmsKg / driver.CmsMPerN * (1 + alpha)) / (driver.RmsKgS + network.FillLossKgS);
        double Excess(double q) => (1 + (1 / alpha)) * ((1 / q) - (1 / planned));
        var (excess, most) = (Excess(measured.QMechanical), Excess(measured.QMechanical - Math.Min(measured.Uncertainty.QMechanical, 0.9 * measured.QMechanical)));
        double? leak = excess > 0 ? 1 / excess : null;
        return shape with
        {
            EffectiveVolumeM3 = felt,
            FillFactor = felt / netVolumeM3,
            FillFactorBandFactor = felt / netVolumeM3 * 2 * (1 + (1 / alpha)) * measured.Uncertainty.ResonanceHz / fc,
            LeakQ = leak,
            LeakResistancePaSM3 = leak / (2 * Math.PI * fc * Leakage.BoxComplianceM3Pa(felt, network.Air)),
            LeastLeakQ = most > 0 ? 1 / most : null,
        };
    }
}
