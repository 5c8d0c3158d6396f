using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Spectra;

/// <summary>Brings a recording to another rate.</summary>
internal static class Resampling
{
    /// <summary>Rate at which recordings of bass are looked into, Hz: valid to 5 kHz, an eighth of the work of 96 kHz (our choice).</summary>
    public const double BassRateHz = 12000;

    // Kaiser's window for 100 dB, and how much of half the lower rate is kept; what folds back lies above that.
    private const double Beta = 10,
        PassShare = 5.0 / 6;
    private const int MostPhases = 12000;

    /// <summary>Resamples a signal.</summary>
    /// <returns>The signal at the new rate; its first sample stays where it was.</returns>
    /// <remarks>
    /// Model: windowed sinc, Kaiser β = 10, flat within 0.001 dB up to 5/6 of half the lower rate, 100 dB down where it would fold into that.
    /// Validity: rates whose ratio in lowest terms has at most 12 000 over it. Source: Kaiser's window after Oppenheim and Schafer 2010, chapter 7
    /// (from memory).
    /// Accuracy: 0.001 dB against the formula of a sampled sine.
    /// </remarks>
    public static double[] To(double[] samples, double fromHz, double toHz)
    {
        ArgumentNullException.ThrowIfNull(samples);
        Require.Positive(fromHz);
        Require.Positive(toHz);
        if (fromHz == toHz)
        {
            return samples;
        }

        var common = (long)BigInteger.GreatestCommonDivisor((BigInteger)fromHz, (BigInteger)toHz);
        var (phases, step) = ((int)(toHz / common), (int)(fromHz / common));
        Require.Within(phases, 1, MostPhases, nameof(toHz), "phases");
        var lower = Math.Min(fromHz, toHz);
        var half = (int)Math.Ceiling(92 / (2 * 2.285 * 2 * Math.PI * lower * (1 - PassShare) / fromHz));
        var kernels = new double[phases][];
        var result = new double[(int)((long)samples.Length * phases / step)];
        for (var i = 0; i < result.Length; i++)
        {
            var place = (long)i * step;
            var (at, phase) = ((int)(place / phases), (int)(place % phases));
            result[i] = Dot(samples, at - half + 1, kernels[phase] ??= Kernel(half, (double)phase / phases, lower / fromHz));
        }

        return result;
    }

    // Weights of the samples at −half + 1 … half for a point that lies a fraction after sample 0.
    private static double[] Kernel(int half, double fraction, double cutoff)
    {
        var kernel = new double[2 * half];
        for (var k = 0; k < kernel.Length; k++)
        {
            var x = k - half + 1 - fraction;
            var inside = 1 - (x / half * (x / half));
            kernel[k] = inside <= 0 ? 0 : cutoff * Sinc(cutoff * x) * MathNet.Numerics.SpecialFunctions.BesselI0(Beta * Math.Sqrt(inside));
        }

        var sum = kernel.Sum();
        return Array.ConvertAll(kernel, w => w / sum);
    }

    private static double Sinc(double x) => x == 0 ? 1 : Math.Sin(Math.PI * x) / (Math.PI * x);

    private static double Dot(ReadOnlySpan<double> samples, int first, ReadOnlySpan<double> kernel)
    {
        var from = Math.Max(0, -first);
        var to = Math.Min(kernel.Length, samples.Length - first);
        if (to <= from)
        {
            return 0;
        }

        var a = samples.Slice(first + from, to - from);
        var b = kernel[from..to];
        var (sums, i) = (Vector<double>.Zero, 0);
        for (; i <= a.Length - Vector<double>.Count; i += Vector<double>.Count)
        {
            sums += new Vector<double>(a[i..]) * new Vector<double>(b[i..]);
        }

        var sum = Vector.Sum(sums);
        for (; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
