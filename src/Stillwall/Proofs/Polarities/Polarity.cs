using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;
using Stillwall.Proofs.Spectra;

namespace Stillwall.Proofs.Polarities;

/// <summary>Which way the first push of the polarity pulses goes in a recording.</summary>
/// <param name="IsPositive">Whether it goes up; null where it cannot be told.</param>
/// <param name="ClearRatio">First swing over the noise before it.</param>
/// <param name="Trouble">Why it cannot be told; null where it can.</param>
public sealed record PolarityReading(bool? IsPositive, double ClearRatio, string? Trouble);

/// <summary>Polarity by the sign of the first swing.</summary>
public static class Polarity
{
    private const double RateHz = 3000,
        BackS = 0.1,
        SwingShare = 0.25,
        Clear = 8;

    /// <summary>Looks into a recording of the polarity pulses, close to the cone.</summary>
    /// <param name="recording">The recording; its loudest channel counts.</param>
    /// <returns>The sign of the first swing.</returns>
    /// <remarks>
    /// Model: the first time a pulse passes a quarter of its greatest swing, below 1.2 kHz. Validity: close to the cone; one microphone, whose own
    /// polarity nobody knows, so that two recordings compare and one alone says nothing of which way is outward. Source: our choice. Accuracy: right
    /// or unknown.
    /// </remarks>
    public static PolarityReading Of(Recording recording)
    {
        ArgumentNullException.ThrowIfNull(recording);
        var samples = Resampling.To(recording.Loudest(), recording.RateHz, RateHz);
        var greatest = samples.Select((x, i) => (Size: Math.Abs(x), At: i)).DefaultIfEmpty().MaxBy(p => p.Size);
        var from = Math.Max(0, greatest.At - (int)(BackS * RateHz));
        var first = from;
        while (first < samples.Length - 1 && Math.Abs(samples[first]) < SwingShare * greatest.Size)
        {
            first++;
        }

        var quiet = samples[Math.Max(0, first - (int)(0.4 * RateHz))..Math.Max(0, first - (int)(TestSignals.PulseWidthS * RateHz))];
        var noise = quiet.Length < 100 ? double.NaN : Math.Sqrt(quiet.Average(x => x * x));
        var clear = SwingShare * greatest.Size / Math.Max(noise, 1e-9);
        return double.IsNaN(noise) || greatest.Size < 1e-4
                ? new PolarityReading(null, 0, "has no pulse with half a second of quiet before it; the polarity pulses, recorded close to the cone")
            : clear < Clear ? new PolarityReading(null, clear, "is too noisy to tell; louder pulses, closer to the cone")
            : new PolarityReading(samples[first] > 0, clear, null);
    }
}
