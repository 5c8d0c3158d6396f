using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Taps;

/// <summary>Finds the first bending mode in the sound of taps.</summary>
internal static class TapSpectrum
{
    // Half a second, falling as half a Hann window does.
    private const double WindowS = 0.5;

    // The second bending mode lies at 2.757 times the first for a slender bar, down to 2.2 for a thick one (Timoshenko's beam). A lower mode counts
    // from 26 dB below the strongest (our choice).
    private const double LeastSecondRatio = 2.15,
        GreatestSecondRatio = 2.85,
        WeakestRatio = 0.0025;

    // A peak stands this far above its surroundings, in power.
    private const double Prominence = 20;

    /// <summary>Frequency of the mode; null where nothing rings.</summary>
    /// <remarks>Source: our choice.</remarks>
    internal static double? FundamentalHz(IEnumerable<double[]> taps, double[] before, double rateHz, double leastHz, double greatestHz)
    {
        var length = FourierTransform.PowerOfTwo((int)(2 * WindowS * rateHz));
        var power = new double[(length / 2) + 1];
        foreach (var tap in taps)
        {
            var spectrum = Power(tap, rateHz, length);
            var sum = spectrum.Sum();
            for (var k = 0; k < power.Length; k++)
            {
                power[k] += sum > 0 ? spectrum[k] / sum : 0;
            }
        }

        var hum = before.Length > 0 ? Power(before, rateHz, length) : new double[power.Length];
        var humSum = hum.Sum();
        var (from, to) = (Math.Max(2, (int)(leastHz * length / rateHz)), Math.Min(power.Length - 2, (int)(greatestHz * length / rateHz)));
        if (to <= from)
        {
            return null;
        }

        bool IsHum(int k) => humSum > 0 && hum[k] > 50 * humSum / hum.Length && hum[k] / humSum > power[k] / power.Sum();
        var strongest = Strongest(power, from, to, IsHum);
        if (strongest < 0)
        {
            return null;
        }

        var lower = Strongest(power, Math.Max(from, (int)(strongest / GreatestSecondRatio)), Math.Max(from, (int)(strongest / LeastSecondRatio)), IsHum);
        var first = lower > 0 && power[lower] > WeakestRatio * power[strongest] ? lower : strongest;
        return (first + Between(power, first)) * rateHz / length;
    }

    // The greatest local peak of a span that stands out of its surroundings; −1 where there is none.
    private static int Strongest(double[] power, int from, int to, Func<int, bool> isHum)
    {
        var found = -1;
        for (var k = from; k <= to; k++)
        {
            if (power[k] >= power[k - 1] && power[k] >= power[k + 1] && (found < 0 || power[k] > power[found]) && Stands(power, k) && !isHum(k))
            {
                found = k;
            }
        }

        return found;
    }

    private static bool Stands(double[] power, int k)
    {
        var (from, to) = ((int)(k * 0.7), Math.Min(power.Length - 1, (int)(k * 1.4)));
        var around = power[from..(to + 1)];
        Array.Sort(around);
        return power[k] > Prominence * around[around.Length / 4];
    }

    // Top of the parabola through the logarithms of three lines.
    private static double Between(double[] power, int k)
    {
        var (a, b, c) = (Math.Log(power[k - 1]), Math.Log(power[k]), Math.Log(power[k + 1]));
        var bend = a - (2 * b) + c;
        return bend < 0 ? Math.Clamp(0.5 * (a - c) / bend, -0.5, 0.5) : 0;
    }

    private static double[] Power(double[] samples, double rateHz, int length)
    {
        var count = Math.Min(samples.Length, (int)(WindowS * rateHz));
        var windowed = new double[count];
        for (var i = 0; i < count; i++)
        {
            windowed[i] = samples[i] * (0.5 + (0.5 * Math.Cos(Math.PI * i / count)));
        }

        var (spectrum, _) = FourierTransform.Pair(windowed, [], length);
        return Array.ConvertAll(spectrum, v => (v * Complex.Conjugate(v)).Real);
    }
}
