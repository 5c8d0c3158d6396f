using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Sweeps;

/// <summary>An answer over time, going round in a circle as transforms do, and looks at parts of it.</summary>
/// <param name="Samples">The answer; negative times stand at its end.</param>
internal sealed record Response(double[] Samples, double RateHz)
{
    /// <summary>Where the answer is greatest, in samples, 0 to the length.</summary>
    internal int Peak { get; } = PeakOf(Samples);

    /// <summary>Time of the peak, s; negative where it stands in the last quarter of the circle.</summary>
    internal double PeakS => (Between() + (Peak > Samples.Length * 3 / 4 ? Peak - Samples.Length : Peak)) / RateHz;

    /// <summary>Greatest magnitude over the median one: how clearly something stands out.</summary>
    internal double Prominence()
    {
        var sorted = Array.ConvertAll(Samples, Math.Abs);
        Array.Sort(sorted);
        return sorted[^1] / Math.Max(1e-300, sorted[sorted.Length / 2]);
    }

    /// <summary>Energy spectrum of a part, its ends rounded off.</summary>
    /// <param name="fromS">Where the part begins, s from the peak.</param>
    /// <param name="toS">Where it ends, s from the peak.</param>
    /// <param name="roundS">Length of the rounding at the end, s; at the beginning it is a quarter of that.</param>
    internal double[] Energies(double fromS, double toS, double roundS, int length)
    {
        var (from, to) = ((int)Math.Round(fromS * RateHz), (int)Math.Round(toS * RateHz));
        var (rise, fall) = (Math.Max(1, (int)(roundS * RateHz / 4)), Math.Max(1, (int)(roundS * RateHz)));
        var part = new double[Math.Min(to - from, length)];
        for (var i = 0; i < part.Length; i++)
        {
            var at = ((Peak + from + i) % Samples.Length + Samples.Length) % Samples.Length;
            var weight = i < rise ? 0.5 - (0.5 * Math.Cos(Math.PI * i / rise)) : 1;
            weight *= part.Length - i < fall ? 0.5 - (0.5 * Math.Cos(Math.PI * (part.Length - i) / fall)) : 1;
            part[i] = Samples[at] * weight;
        }

        var (spectrum, _) = FourierTransform.Pair(part, [], length);
        return Array.ConvertAll(spectrum, v => (v * Complex.Conjugate(v)).Real);
    }

    // Top of the parabola through the three samples about the peak.
    private double Between()
    {
        var n = Samples.Length;
        var (a, b, c) = (Math.Abs(Samples[(Peak + n - 1) % n]), Math.Abs(Samples[Peak]), Math.Abs(Samples[(Peak + 1) % n]));
        var bend = a - (2 * b) + c;
        return bend < 0 ? Math.Clamp(0.5 * (a - c) / bend, -0.5, 0.5) : 0;
    }

    private static int PeakOf(double[] samples)
    {
        var peak = 0;
        for (var i = 1; i < samples.Length; i++)
        {
            peak = Math.Abs(samples[i]) > Math.Abs(samples[peak]) ? i : peak;
        }

        return peak;
    }
}
