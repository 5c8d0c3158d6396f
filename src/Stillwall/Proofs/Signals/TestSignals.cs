using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Signals;

/// <summary>Signals to play for a proof, besides the sweep; every one fades softly and keeps its peak.</summary>
public static class TestSignals
{
    /// <summary>How wide the polarity pulse is, s (our choice: its energy lies below 100 Hz).</summary>
    public const double PulseWidthS = 0.02;

    // Rise and fall, s (our choice).
    private const double FadeS = 0.02;
    private const double LongestS = 3600;

    /// <summary>A sine.</summary>
    /// <param name="frequencyHz">Frequency, Hz, below half the rate.</param>
    /// <param name="durationS">How long, s.</param>
    /// <param name="rateHz">Samples a second.</param>
    /// <param name="peakDb">Peak re full scale, dB, −120 to 0.</param>
    /// <returns>Samples, full scale at ±1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: sin(2πft), fades of 20 ms. Source: our choice of fades. Accuracy: exact.</remarks>
    public static double[] Tone(double frequencyHz, double durationS, double rateHz, double peakDb)
    {
        var samples = Empty(durationS, rateHz, peakDb);
        Require.Within(frequencyHz, 1e-3, rateHz / 2, nameof(frequencyHz), "Hz");
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i] = Peak(peakDb) * Math.Sin(2 * Math.PI * frequencyHz * i / rateHz);
        }

        return Fade(samples, rateHz);
    }

    /// <summary>A band of pink noise: equal energy in equal ratios of frequency, nothing outside.</summary>
    /// <param name="fromHz">Lower edge, Hz.</param>
    /// <param name="toHz">Upper edge, Hz, below half the rate.</param>
    /// <param name="durationS">How long, s.</param>
    /// <param name="rateHz">Samples a second.</param>
    /// <param name="peakDb">Peak re full scale, dB, −120 to 0.</param>
    /// <param name="seed">Where the noise starts; the same seed gives the same noise.</param>
    /// <returns>Samples, full scale at ±1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: lines of amplitude 1/√f and drawn phase, transformed to a signal; fades of 20 ms. Validity: bands wider than a few lines. Source:
    /// definition of pink noise; the making is our choice.
    /// Accuracy: octaves within the band carry the same energy within 0.1 dB once a hundred lines lie in each.
    /// </remarks>
    public static double[] PinkNoise(double fromHz, double toHz, double durationS, double rateHz, double peakDb, ulong seed = 1)
    {
        var samples = Empty(durationS, rateHz, peakDb);
        Require.Within(fromHz, 1e-3, toHz, nameof(fromHz), "Hz");
        Require.Within(toHz, fromHz, rateHz / 2, nameof(toHz), "Hz");
        var length = FourierTransform.PowerOfTwo(Math.Max(2, samples.Length));
        var random = new SeededGenerator(seed);
        var lines = new Complex[(length / 2) + 1];
        for (var k = 1; k < lines.Length - 1; k++)
        {
            var (hertz, phase) = (k * rateHz / length, 2 * Math.PI * random.Next());
            lines[k] = hertz >= fromHz && hertz <= toHz ? Complex.FromPolarCoordinates(1 / Math.Sqrt(hertz), phase) : 0;
        }

        Array.Copy(FourierTransform.Signal(lines), samples, samples.Length);
        return Scaled(Fade(samples, rateHz), peakDb);
    }

    /// <summary>One push outward in each second, to tell which way a cone goes.</summary>
    /// <param name="durationS">How long, s.</param>
    /// <param name="rateHz">Samples a second.</param>
    /// <param name="peakDb">Peak re full scale, dB, −120 to 0.</param>
    /// <returns>Samples, full scale at ±1; each push is positive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: ½ − ½cos over 20 ms, half a second after each full second. Source: our choice. Accuracy: exact.</remarks>
    public static double[] Pulses(double durationS, double rateHz, double peakDb)
    {
        var samples = Empty(durationS, rateHz, peakDb);
        for (var i = 0; i < samples.Length; i++)
        {
            var after = (i / rateHz % 1) - 0.5;
            samples[i] = after >= 0 && after < PulseWidthS ? Peak(peakDb) * (0.5 - (0.5 * Math.Cos(2 * Math.PI * after / PulseWidthS))) : 0;
        }

        return samples;
    }

    /// <summary>Two bands of pink noise in turn, for trimming a cabinet to the main speakers: an octave below the crossover, then an octave above it.</summary>
    /// <param name="crossoverHz">The crossover, Hz, below a quarter of the rate.</param>
    /// <param name="durationS">How long altogether, s; the bands change every two seconds.</param>
    /// <param name="rateHz">Samples a second.</param>
    /// <param name="peakDb">Peak re full scale of the louder of the two, dB, −120 to 0.</param>
    /// <returns>Samples, full scale at ±1; both bands have the same mean square.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: equal energy in two octaves that meet at the crossover. Validity: a microphone or ear that is level over two octaves. Source: our
    /// choice. Accuracy: equal within 0.01 dB.
    /// </remarks>
    public static double[] LevelPair(double crossoverHz, double durationS, double rateHz, double peakDb)
    {
        const double turnS = 2;
        var samples = Empty(durationS, rateHz, peakDb);
        var (low, high) = (PinkNoise(crossoverHz / 2, crossoverHz, turnS, rateHz, 0, 1), PinkNoise(crossoverHz, 2 * crossoverHz, turnS, rateHz, 0, 2));
        var (lowScale, highScale) = (1 / Rms(low), 1 / Rms(high));
        for (var i = 0; i < samples.Length; i++)
        {
            var (turn, at) = (i / low.Length, i % low.Length);
            samples[i] = turn % 2 == 0 ? low[at] * lowScale : high[at] * highScale;
        }

        return Scaled(Fade(samples, rateHz), peakDb);
    }

    /// <summary>Silence before and after a signal.</summary>
    /// <param name="samples">The signal.</param>
    /// <param name="rateHz">Samples a second.</param>
    /// <param name="leadS">Silence before it, s.</param>
    /// <param name="tailS">Silence after it, s.</param>
    /// <returns>The longer signal.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time out of range.</exception>
    /// <remarks>Model: zeros. Source: common practice, no source. Accuracy: exact.</remarks>
    public static double[] WithSilence(double[] samples, double rateHz, double leadS, double tailS)
    {
        ArgumentNullException.ThrowIfNull(samples);
        Require.Positive(rateHz);
        Require.Within(leadS, 0, LongestS, nameof(leadS), "s");
        Require.Within(tailS, 0, LongestS, nameof(tailS), "s");
        return [.. new double[(int)Math.Round(leadS * rateHz)], .. samples, .. new double[(int)Math.Round(tailS * rateHz)]];
    }

    private static double[] Empty(double durationS, double rateHz, double peakDb)
    {
        Require.Positive(rateHz);
        Require.Within(durationS, 1 / rateHz, LongestS, nameof(durationS), "s");
        Require.Within(peakDb, -120, 0, nameof(peakDb), "dB");
        return new double[(int)Math.Round(durationS * rateHz)];
    }

    private static double[] Fade(double[] samples, double rateHz) =>
        Fades.Put(samples, (int)Math.Min(rateHz * FadeS, samples.Length / 10.0), (int)Math.Min(rateHz * FadeS, samples.Length / 10.0));

    private static double Peak(double peakDb) => Math.Pow(10, peakDb / 20);

    private static double Rms(double[] samples) => Math.Sqrt(samples.Sum(x => x * x) / samples.Length);

    private static double[] Scaled(double[] samples, double peakDb)
    {
        var greatest = samples.Max(Math.Abs);
        return greatest > 0 ? Array.ConvertAll(samples, x => x * Peak(peakDb) / greatest) : samples;
    }
}
