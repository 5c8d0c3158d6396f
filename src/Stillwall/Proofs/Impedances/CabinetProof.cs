using Stillwall.Cabinets;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Impedances;

/// <summary>What the impedance of the driver in its cabinet says of the cabinet.</summary>
/// <param name="F3Hz">3 dB below the passband, Hz, by the measured resonance and Q.</param>
/// <param name="F10Hz">10 dB below the passband, Hz.</param>
/// <param name="ResponsePeakDb">Peak over the passband, dB.</param>
/// <param name="EffectiveVolumeM3">Air the cone feels, m³; null where the resonance is not above the driver's own.</param>
/// <param name="FillFactor">Effective over net volume; null with it.</param>
/// <param name="FillFactorBandFactor">Half of the 95 % band of the fill factor, the driver's data as stated.</param>
/// <param name="LeakQ">Q of the leak; null where its band reaches an airtight box.</param>
/// <param name="LeakResistancePaSM3">Resistance of that leak, Pa·s/m³; null with it.</param>
/// <param name="LeastLeakQ">Lower end of the leak Q's 95 % band: the cabinet is at least so tight; null where the band says nothing.</param>
public sealed record CabinetProof(
    [property: ComputedBy("measured-rolloff", "recording.resonance_hz", "recording.q_total")] double F3Hz,
    [property: ComputedBy("measured-rolloff", "recording.resonance_hz", "recording.q_total")] double F10Hz,
    [property: ComputedBy("measured-rolloff", "recording.q_total")] double ResponsePeakDb,
    [property: ComputedBy("measured-air", "recording", "driver.fs", "driver.vas")] double? EffectiveVolumeM3,
    [property: ComputedBy("measured-air", "recording", "driver.fs", "driver.vas", "box.net_volume_m3")] double? FillFactor,
    double? FillFactorBandFactor,
    double? LeakQ,
    [property: System.Text.Json.Serialization.JsonPropertyName("leak_resistance_pa_s_m3")] double? LeakResistancePaSM3,
    double? LeastLeakQ
)
{
    /// <summary>Reads the cabinet out of the figures.</summary>
    /// <param name="measured">Impedance in the cabinet.</param>
    /// <param name="network">The driver in its box as planned.</param>
    /// <param name="netVolumeM3">Net volume of the box, m³, above 0.</param>
    /// <returns>What the figures imply.</returns>
    /// <remarks>
    /// Model: closed forms of the measured fc and Qtc for the response; air and leak by least squares on the curve, with the driver's moving mass and
    /// compliance as stated and all other losses free: a leak damps below the resonance more than above it.
    /// Validity: a closed box, and a driver that was measured or keeps to its sheet: 5 % in fs is 10 % and more in the volume. Source: the network of
    /// Small 1972, JAES 20(10) (from memory); the fit is our own. Accuracy: 0.5 % of volume and 5 % of leak of the network it is taken from.
    /// </remarks>
    public static CabinetProof Of(ImpedanceResult measured, BoxNetwork network, double netVolumeM3)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(network);
        Require.Positive(netVolumeM3);
        var (fc, driver) = (measured.ResonanceHz, network.Driver);
        var shape = new CabinetProof(
            F3Hz: ClosedBox.F3Hz(fc, measured.QTotal),
            F10Hz: ClosedBox.F10Hz(fc, measured.QTotal),
            ResponsePeakDb: ClosedBox.ResponsePeakDb(measured.QTotal),
            EffectiveVolumeM3: null,
            FillFactor: null,
            FillFactorBandFactor: null,
            LeakQ: null,
            LeakResistancePaSM3: null,
            LeastLeakQ: null
        );
        var alpha = Math.Pow(fc / driver.FsHz, 2) - 1;
        if (alpha <= 0.01)
        {
            return shape;
        }

        var start = driver.VasInM3(network.Air) / alpha;
        if (LeakFit.Of(measured, network, start) is not { } fit)
        {
            return shape with
            {
                EffectiveVolumeM3 = start,
                FillFactor = start / netVolumeM3,
                FillFactorBandFactor = start / netVolumeM3 * 2 * (1 + (1 / alpha)) * measured.Uncertainty.ResonanceHz / fc,
            };
        }

        // A leak counts as found where its band does not reach zero.
        double? leak = fit.LeakShare > fit.LeakBandShare ? 1 / fit.LeakShare : null;
        var most = fit.LeakShare + fit.LeakBandShare;
        return shape with
        {
            EffectiveVolumeM3 = fit.EffectiveVolumeM3,
            FillFactor = fit.EffectiveVolumeM3 / netVolumeM3,
            FillFactorBandFactor = fit.VolumeBandM3 / netVolumeM3,
            LeakQ = leak,
            LeakResistancePaSM3 = leak / (2 * Math.PI * fc * Leakage.BoxComplianceM3Pa(fit.EffectiveVolumeM3, network.Air)),
            LeastLeakQ = most > 0 ? 1 / most : null,
        };
    }
}
