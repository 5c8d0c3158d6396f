using Stillwall.Numerics;
using Stillwall.Proofs.Spectra;

namespace Stillwall.Proofs.Sweeps;

/// <summary>How far the clock of the recorder is from that of the player, read off both halves of a steady sound.</summary>
internal static class ClockOffset
{
    // The halves must be one kind of sound, and each must be found clearly; a clock that is further off is none (our choice).
    private const double LeastOverlapRatio = 0.3,
        LeastProminence = 12,
        GreatestRatio = 500e-6;

    // Half the length of the interpolating kernel.
    private const int Reach = 16;

    /// <summary>Recorder's rate over the player's, less 1; null where the halves do not tell, as of a sweep.</summary>
    /// <remarks>
    /// Model: each half deconvolved by itself; the second arrives later by the offset times the distance of the halves. Source: our own. Accuracy: 5
    /// ppm on computed recordings of eight seconds.
    /// </remarks>
    internal static double? Ratio(double[] recorded, double[] played)
    {
        var half = played.Length / 2;
        var length = FourierTransform.PowerOfTwo(recorded.Length + half);
        var (first, second) = (Half(recorded, played[..half], length, 0), Half(recorded, played[half..], length, half));
        if (
            Overlap(first.Power, second.Power) < LeastOverlapRatio
            || first.Answer.Prominence() < LeastProminence
            || second.Answer.Prominence() < LeastProminence
        )
        {
            return null;
        }

        var ratio = (second.Answer.PeakS - first.Answer.PeakS) * Resampling.BassRateHz / half;
        return Math.Abs(ratio) < GreatestRatio ? ratio : null;
    }

    /// <summary>The recording as the player's clock would have taken it.</summary>
    /// <param name="ratio">Recorder's rate over the player's, less 1.</param>
    /// <remarks>Model: sinc under a Hann window, 32 samples. Source: common practice, no source. Accuracy: 0.01 dB below a third of the rate.</remarks>
    internal static double[] Removed(double[] samples, double ratio)
    {
        var moved = new double[samples.Length];
        for (var i = 0; i < moved.Length; i++)
        {
            var place = i * (1 + ratio);
            var at = (int)place;
            var sum = 0.0;
            for (var j = Math.Max(0, at - Reach + 1); j <= Math.Min(samples.Length - 1, at + Reach); j++)
            {
                var x = place - j;
                sum += samples[j] * (Math.Abs(x) < 1e-12 ? 1 : Math.Sin(Math.PI * x) / (Math.PI * x) * (0.5 + (0.5 * Math.Cos(Math.PI * x / (Reach + 1)))));
            }

            moved[i] = sum;
        }

        return moved;
    }

    private static (Response Answer, double[] Power) Half(double[] recorded, double[] played, int length, int from)
    {
        // The second half is looked for where it may be, so that its time counts from its own beginning.
        var (transfer, power) = Deconvolution.Of(recorded[Math.Min(from, recorded.Length - 1)..], played, length);
        return (new Response(FourierTransform.Signal(transfer), Resampling.BassRateHz), power);
    }

    // Share of the energy that both have at the same frequencies, in bands of a hundred lines.
    private static double Overlap(double[] one, double[] two)
    {
        double[] Bands(double[] power) => [.. Enumerable.Range(0, power.Length / 100).Select(b => power[(b * 100)..((b + 1) * 100)].Sum())];
        var (a, b) = (Bands(one), Bands(two));
        return a.Zip(b, Math.Min).Sum() / Math.Max(1e-300, a.Zip(b, Math.Max).Sum());
    }
}
