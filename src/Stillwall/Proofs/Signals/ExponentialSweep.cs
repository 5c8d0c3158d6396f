using Stillwall.Numerics;

namespace Stillwall.Proofs.Signals;

/// <summary>A sine whose frequency doubles in equal times.</summary>
/// <param name="FromHz">Frequency at the start, Hz.</param>
/// <param name="ToHz">Frequency at the end, Hz.</param>
/// <param name="DurationS">How long it takes, s.</param>
public sealed record ExponentialSweep(double FromHz, double ToHz, double DurationS)
{
    // Rise and fall at the ends, s, but never more than a tenth of the whole (our choice).
    private const double LongestFadeInS = 0.2,
        LongestFadeOutS = 0.05;

    /// <summary>Time in which the frequency grows by e, s.</summary>
    public double TimeConstantS => DurationS / Math.Log(ToHz / FromHz);

    /// <summary>How long before the sweep's answer the answer of a harmonic comes when the sweep is undone.</summary>
    /// <param name="order">Which harmonic, 1 or more.</param>
    /// <returns>Time, s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An order below 1.</exception>
    /// <remarks>Model: L·ln(order). Validity: exponential sweeps. Source: Farina 2000 (from memory). Accuracy: exact.</remarks>
    public double HarmonicLeadS(int order)
    {
        Require.Within(order, 1, 100, nameof(order));
        return TimeConstantS * Math.Log(order);
    }

    /// <summary>The samples, rising and falling softly at the ends.</summary>
    /// <param name="rateHz">Samples a second, more than twice the highest frequency.</param>
    /// <param name="peakDb">Peak re full scale, dB, −120 to 0.</param>
    /// <returns>Samples, full scale at ±1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: x = sin(2π·f1·L·(e^(t/L) − 1)), L = T/ln(f2/f1); half-cosine fades of 0.2 s and 0.05 s, at most a tenth of the whole (our choice).
    /// Validity: f1 below f2 below half the rate. Source: Farina 2000 (from memory). Accuracy: exact.
    /// </remarks>
    public double[] Samples(double rateHz, double peakDb)
    {
        Require.Positive(rateHz);
        Require.Within(FromHz, 1e-3, ToHz * 0.999, nameof(FromHz), "Hz");
        Require.Within(ToHz, FromHz, rateHz / 2, nameof(ToHz), "Hz");
        Require.Within(DurationS, 1e-3, 3600, nameof(DurationS), "s");
        Require.Within(peakDb, -120, 0, nameof(peakDb), "dB");
        var (peak, constant) = (Math.Pow(10, peakDb / 20), TimeConstantS);
        var samples = new double[(int)Math.Round(DurationS * rateHz)];
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i] = peak * Math.Sin(2 * Math.PI * FromHz * constant * (Math.Exp(i / rateHz / constant) - 1));
        }

        return Fades.Put(samples, (int)(rateHz * Math.Min(LongestFadeInS, DurationS / 10)), (int)(rateHz * Math.Min(LongestFadeOutS, DurationS / 10)));
    }
}
