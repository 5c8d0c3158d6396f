namespace Stillwall.Proofs.Recordings;

/// <summary>Whether a channel can be trusted.</summary>
/// <param name="PeakFraction">Greatest magnitude, full scale at 1.</param>
/// <param name="RmsFraction">Root mean square about the mean, full scale at 1.</param>
/// <param name="OffsetFraction">Mean, full scale at 1.</param>
/// <param name="IsClipped">Whether peaks are cut off.</param>
public sealed record ChannelHealth(double PeakFraction, double RmsFraction, double OffsetFraction, bool IsClipped)
{
    // Below the noise of any sound card that is plugged in (our choice).
    private const double SilentFraction = 3e-5;

    // A cut peak stands still: samples within 1 % of the greatest are nearly as many as those within 4 %, where a sine has half as many (our choice of 0.65).
    private const double NearFraction = 0.01, WiderFraction = 0.04, CrowdedShare = 0.65, LeastShare = 0.002, SquareShare = 0.8;
    private const int LeastRun = 3, LeastRuns = 2;

    /// <summary>Whether nothing is on the channel.</summary>
    public bool IsSilent => RmsFraction < SilentFraction;

    /// <summary>Whether the sound stands far off the middle: more than 1 % of full scale, or a tenth of its own strength.</summary>
    public bool HasOffset => Math.Abs(OffsetFraction) > Math.Max(0.01, 0.1 * RmsFraction);

    /// <summary>Looks at one channel.</summary>
    /// <param name="samples">Its samples, at least one.</param>
    /// <param name="stepFraction">Smallest step between two samples, full scale at 1.</param>
    /// <returns>Its health.</returns>
    /// <exception cref="ArgumentException">No sample.</exception>
    /// <remarks>
    /// Model: a peak is cut off where three or more equal samples stand at the extreme and the way there was more than four steps, twice or more; or where samples crowd
    /// about the extreme more than those of a sine do. Validity: sounds, not squares. Source: our choice. Accuracy: finds a sine cut by 0.2 dB or more.
    /// </remarks>
    public static ChannelHealth Of(double[] samples, double stepFraction)
    {
        ArgumentNullException.ThrowIfNull(samples);
        ArgumentOutOfRangeException.ThrowIfZero(samples.Length, nameof(samples));
        var mean = samples.Average();
        var rms = Math.Sqrt(samples.Sum(x => (x - mean) * (x - mean)) / samples.Length);
        var (least, greatest) = (samples.Min(), samples.Max());
        var isClipped = rms >= SilentFraction && !IsSquare(samples, least, greatest) && (Stands(samples, greatest, 4 * stepFraction) || Stands(samples, least, 4 * stepFraction) || Crowds(samples, mean, greatest) || Crowds(samples, mean, least));
        return new ChannelHealth(Math.Max(Math.Abs(least), Math.Abs(greatest)), rms, mean, isClipped);
    }

    // Two values in turn, as in some noises, are meant so.
    private static bool IsSquare(double[] samples, double least, double greatest)
    {
        var near = NearFraction * (greatest - least);
        return samples.Count(x => x <= least + near || x >= greatest - near) > SquareShare * samples.Length;
    }

    private static bool Stands(double[] samples, double extreme, double way)
    {
        var runs = 0;
        for (var i = 1; i < samples.Length && runs < LeastRuns; i++)
        {
            if (samples[i] != extreme || samples[i - 1] == extreme)
            {
                continue;
            }

            var end = i;
            while (end < samples.Length && samples[end] == extreme)
            {
                end++;
            }

            runs += end - i >= LeastRun && Math.Abs(extreme - samples[i - 1]) > way ? 1 : 0;
            i = end;
        }

        return runs >= LeastRuns;
    }

    private static bool Crowds(double[] samples, double mean, double extreme)
    {
        var height = extreme - mean;
        var (near, wider) = (0, 0);
        foreach (var x in samples)
        {
            var below = (extreme - x) / height;
            near += below <= NearFraction ? 1 : 0;
            wider += below <= WiderFraction ? 1 : 0;
        }

        return near > LeastShare * samples.Length && near > CrowdedShare * wider;
    }
}
