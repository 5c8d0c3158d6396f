using System.Numerics;
using Stillwall.Numerics;
using Stillwall.Proofs.Spectra;

namespace Stillwall.Proofs.Impedances;

/// <summary>Voltage across the load over the voltage of the source, on lines of equal distance.</summary>
/// <param name="SpacingHz">Distance of the lines, Hz; the first is at 0.</param>
/// <param name="DeviationRatios">Standard deviation of each part of the ratio; infinite where the source is silent.</param>
/// <param name="PowerDensityRatios">Power of the source on each line, over its greatest.</param>
/// <param name="IsSmeared">Whether each line still sees its neighbours through the window.</param>
internal sealed record VoltageRatio(
    double SpacingHz,
    Complex[] Ratios,
    double[] DeviationRatios,
    double[] CoherenceFractions,
    double[] PowerDensityRatios,
    bool IsSmeared
)
{
    /// <summary>Power of the source on a line, over its greatest, that makes the line worth reading: 45 dB down.</summary>
    internal const double AudibleRatio = 3e-5;
}

/// <summary>Two voltages that were recorded together.</summary>
internal sealed class VoltagePair
{
    // Segments of at most 2.7 s at 6 kHz, and a third of the recording, so that there are several to average (our choice).
    private const int LongestSegment = 1 << 14,
        LeastSegment = 1 << 10;

    // A driver rings no longer than this, s.
    private const double RingS = 4;

    private const double BlockS = 0.25,
        LoudRatio = 3;

    // What the method itself leaves over, so that a clean recording does not trust a few lines alone (our choice).
    private const double LeastDeviation = 2e-6;

    // Lines over which the noise is taken as even.
    private const int NoiseReach = 10;

    private readonly double[] source,
        load;
    private readonly double rateHz;
    private readonly int segment;
    private readonly CrossSpectrum spectrum;

    // Silence is added at both ends, so that every moment counts alike.
    private VoltagePair(double[] source, double[] load, double rateHz, int segment)
    {
        (this.source, this.load, this.rateHz, this.segment) = (source, load, rateHz, segment);
        spectrum = Spectrum(load, isPaddedBefore: true);
    }

    /// <summary>Puts two voltages together; null where they are too short.</summary>
    /// <param name="source">Voltage of the source, about zero.</param>
    /// <param name="load">Voltage across the load, about zero.</param>
    internal static VoltagePair? Of(double[] source, double[] load, double rateHz)
    {
        var third = Math.Max(1, source.Length / 3);
        var segment = Math.Min(LongestSegment, FourierTransform.PowerOfTwo(third) / (BitOperations.IsPow2(third) ? 1 : 2));
        return segment < LeastSegment ? null : new VoltagePair(source, load, rateHz, segment);
    }

    /// <summary>The ratio as the averaged spectra give it.</summary>
    internal VoltageRatio Ratio() =>
        Of(spectrum, [.. spectrum.Cross.Select((c, k) => spectrum.FirstPower[k] > 0 ? c / spectrum.FirstPower[k] : 0)], spectrum, isSmeared: true);

    /// <summary>
    /// The ratio about a model that is near: what the model leaves over is averaged instead of the whole, so that the window smears almost nothing.
    /// </summary>
    internal VoltageRatio RatioAbout(Func<double, Complex> model)
    {
        var miss = Less(model);
        var left = Spectrum(miss, isPaddedBefore: !StartsLoud(miss));
        return Of(
            left,
            [.. left.Cross.Select((c, k) => model(Math.Max(1e-3, k * left.SpacingHz)) + (left.FirstPower[k] > 0 ? c / left.FirstPower[k] : 0))],
            spectrum,
            isSmeared: false
        );
    }

    private double[] Less(Func<double, Complex> model)
    {
        var length = FourierTransform.PowerOfTwo(source.Length + (int)(RingS * rateHz));
        var (lines, _) = FourierTransform.Pair(source, [], length);
        for (var k = 0; k < lines.Length; k++)
        {
            lines[k] *= model(Math.Max(1e-3, k * rateHz / length));
        }

        var expected = FourierTransform.Signal(lines);
        return [.. load.Select((v, i) => v - expected[i])];
    }

    // What sounded before the recording began still rings at its start, and no model knows of it: without silence before it, the window passes over that.
    private bool StartsLoud(double[] miss)
    {
        var blocks = miss.Chunk((int)(BlockS * rateHz)).Select(b => Rms(b)).ToList();
        return blocks[0] > LoudRatio * blocks.Order().ElementAt(blocks.Count / 2);
    }

    private CrossSpectrum Spectrum(double[] other, bool isPaddedBefore) =>
        CrossSpectrum.Of(Padded(source, isPaddedBefore), Padded(other, isPaddedBefore), rateHz, segment);

    // Noise: what of the second signal does not follow from the first.
    private static VoltageRatio Of(CrossSpectrum noisy, Complex[] ratios, CrossSpectrum whole, bool isSmeared)
    {
        var noise = ratios.Select((_, k) => (1 - noisy.CoherenceFraction(k)) * noisy.SecondPower[k]).ToArray();
        var deviations = ratios
            .Select(
                (_, k) =>
                    noisy.FirstPower[k] > 0
                        ? Math.Sqrt((Median(noise, k) / noisy.FirstPower[k] / noisy.IndependentCount / 2) + (LeastDeviation * LeastDeviation))
                        : double.PositiveInfinity
            )
            .ToArray();
        var greatest = whole.FirstPower.Max();
        return new VoltageRatio(
            noisy.SpacingHz,
            ratios,
            deviations,
            [.. ratios.Select((_, k) => whole.CoherenceFraction(k))],
            [.. whole.FirstPower.Select(p => greatest > 0 ? p / greatest : 0)],
            isSmeared
        );
    }

    private static double Median(double[] noise, int line)
    {
        var around = noise[Math.Max(0, line - NoiseReach)..Math.Min(noise.Length, line + NoiseReach + 1)];
        Array.Sort(around);
        return around[around.Length / 2];
    }

    private double[] Padded(double[] samples, bool before) => [.. new double[before ? segment : 0], .. samples, .. new double[segment]];

    private static double Rms(ReadOnlySpan<double> samples)
    {
        var sum = 0.0;
        foreach (var x in samples)
        {
            sum += x * x;
        }

        return Math.Sqrt(sum / Math.Max(1, samples.Length));
    }
}
