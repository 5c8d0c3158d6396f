using Stillwall.Cabinets;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Signals;

/// <summary>How far a signal may drive a cabinet.</summary>
/// <param name="FrequencyHz">Where in the signal the cone moves farthest, Hz.</param>
/// <param name="VoltageV">Voltage at the terminals at which it reaches its limit there, V rms.</param>
/// <param name="LevelDb">Level there with that voltage, half space, 1 m, dB.</param>
public sealed record DriveBound(
    [property: ComputedBy("drive-bound", "box.system_resonance_hz", "box.system_q")] double FrequencyHz,
    [property: ComputedBy("drive-bound", "driver.xmax", "driver.mms", "driver.bl", "driver.cms", "driver.re", "box.effective_volume_m3")] double VoltageV,
    [property: ComputedBy("drive-bound", "driver.xmax", "driver.sd")] double LevelDb
)
{
    /// <summary>The bound of a signal of one level between two frequencies.</summary>
    /// <param name="network">The driver in its box.</param>
    /// <param name="lowHz">Lowest frequency, Hz, above 0.</param>
    /// <param name="highHz">Highest frequency, Hz.</param>
    /// <returns>The bound; null where the driver's excursion limit is not stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The lowest frequency is not above 0, or the highest is below it.</exception>
    /// <remarks>
    /// Model: greatest excursion for one volt at 101 frequencies, evenly on a logarithmic axis. Validity: steady sine, a slow sweep. Source:
    /// <see cref="BoxNetwork.At"/>. Accuracy: as the network's.
    /// </remarks>
    public static DriveBound? Of(BoxNetwork network, double lowHz, double highHz)
    {
        ArgumentNullException.ThrowIfNull(network);
        Require.Positive(lowHz);
        ArgumentOutOfRangeException.ThrowIfLessThan(highHz, lowHz);
        if (network.Driver.XmaxM is not { } xmax)
        {
            return null;
        }

        var at = Enumerable.Range(0, 101).Select(i => lowHz * Math.Pow(highHz / lowHz, i / 100.0)).MaxBy(f => network.At(f, 1).ExcursionPeakM);
        var volts = xmax / network.At(at, 1).ExcursionPeakM;
        return new DriveBound(at, volts, network.At(at, volts).LevelDb());
    }
}
