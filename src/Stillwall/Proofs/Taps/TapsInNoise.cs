using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Proofs.Taps;

/// <summary>Finds taps that noise hides from the ear but not from one frequency: short spectra, each line against its own median.</summary>
internal static class TapsInNoise
{
    // Spectra 40 ms long, an eighth of that apart. Of noise alone the greatest of a million lines stays under 20 medians; a tap counts from 40, and 6
    // dB over what was before it (our choice).
    private const double WindowS = 0.04,
        Clear = 40,
        Rise = 4;
    private const int Steps = 8;

    // The onset is placed by the envelope over eight periods, a period at a time.
    private const double EnvelopePeriods = 8;

    /// <summary>Where taps begin, as numbers of samples.</summary>
    internal static List<int> Find(double[] samples, double rateHz, double leastHz, double greatestHz)
    {
        var window = FourierTransform.PowerOfTwo((int)(WindowS * rateHz));
        var hop = window / Steps;
        var frames = Frames(samples, window, hop);
        if (frames.Count < 2 * Steps)
        {
            return [];
        }

        var (from, to) = (Math.Max(1, (int)(leastHz * window / rateHz)), Math.Min(frames[0].Length - 1, (int)(greatestHz * window / rateHz)));
        var (line, ratios) = Clearest(frames, from, to);
        var onsets = new List<int>();
        for (var k = 0; k < ratios.Length; k++)
        {
            var isTop = ratios[k] >= ratios[Math.Max(0, k - Steps)..Math.Min(ratios.Length, k + Steps + 1)].Max();
            if (isTop && ratios[k] > Clear && (k <= Steps || ratios[k] > Rise * ratios[k - Steps - 1]))
            {
                onsets.Add(Onset(samples, k * hop, window, line * rateHz / window, rateHz));
            }
        }

        return [.. onsets.Distinct()];
    }

    private static List<double[]> Frames(double[] samples, int window, int hop)
    {
        double[] hann = [.. Enumerable.Range(0, window).Select(i => 0.5 - (0.5 * Math.Cos(2 * Math.PI * (i + 0.5) / window)))];
        var (frames, part) = (new List<double[]>(), new double[window]);
        for (var start = 0; start + window <= samples.Length; start += hop)
        {
            for (var i = 0; i < window; i++)
            {
                part[i] = samples[start + i] * hann[i];
            }

            var (spectrum, _) = FourierTransform.Pair(part, [], window);
            frames.Add(Array.ConvertAll(spectrum, v => (v * Complex.Conjugate(v)).Real));
        }

        return frames;
    }

    // The line that once stands highest above its own median, and its course in medians.
    private static (int Line, double[] Ratios) Clearest(List<double[]> frames, int from, int to)
    {
        var (best, line, course) = (-1.0, from, Array.Empty<double>());
        var greatest = frames.Max(f => f.Max());
        for (var k = from; k <= to; k++)
        {
            double[] powers = [.. frames.Select(f => f[k])];
            var most = powers.Max();
            Array.Sort(powers);
            var median = Math.Max(powers[powers.Length / 2], 1e-12 * greatest);
            if (most / median > best)
            {
                (best, line) = (most / median, k);
                course = [.. frames.Select(f => f[k] / median)];
            }
        }

        return (line, course);
    }

    private static int Onset(double[] samples, int start, int window, double hertz, double rateHz)
    {
        var (period, length) = (Math.Max(1, (int)Math.Round(rateHz / hertz)), (int)Math.Round(EnvelopePeriods * rateHz / hertz));
        var (best, at) = (-1.0, start);
        for (var from = Math.Max(0, start - window); from <= Math.Min(start + window, samples.Length - length); from += period)
        {
            var sum = Complex.Zero;
            for (var i = 0; i < length; i++)
            {
                sum += samples[from + i] * Complex.FromPolarCoordinates(1, -2 * Math.PI * hertz * i / rateHz);
            }

            (best, at) = sum.Magnitude > best ? (sum.Magnitude, from) : (best, at);
        }

        return at;
    }
}
