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
    private const double NearFraction = 0.01,
        WiderFraction = 0.04,
        CrowdedShare = 0.65,
        LeastShare = 0.002,
        SquareShare = 0.97;
    private const int LeastRun = 3,
        LeastRuns = 2;

    // Below full scale a peak counts as cut off only where the sound ran into it: on its way it spends less time from 4 to 1 % below the top than 0.8
    // of that from 12 to 4 % below. A cut sine has 0.54 (0.2 dB cut) to 0.38, a whole one 0.67, a step that settles 1.0 to 1.3 (ln 4/ln 3). And not
    // where nearly all of the upper half stands at the top, as of steps (our choice).
    private const double FullFraction = 0.995,
        FarFraction = 0.12,
        HalfFraction = 0.45,
        SettlingShare = 0.8,
        StepShare = 20,
        MovingShare = 0.25;

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
    /// Model: a peak is cut off where three or more equal samples stand at the extreme and the way there was more than four steps, twice or more; or
    /// where samples crowd about the extreme more than those of a sine do; below full scale only where the sound ran into the extreme, so that slow
    /// steps are not taken for it. Validity: sounds, not squares. Source: our choice.
    /// Accuracy: finds a sine cut by 0.2 to some 16 dB, at full scale by more.
    /// </remarks>
    public static ChannelHealth Of(double[] samples, double stepFraction)
    {
        ArgumentNullException.ThrowIfNull(samples);
        ArgumentOutOfRangeException.ThrowIfZero(samples.Length, nameof(samples));
        var mean = samples.Average();
        var rms = Math.Sqrt(samples.Sum(x => (x - mean) * (x - mean)) / samples.Length);
        var (least, greatest) = (samples.Min(), samples.Max());
        var isClipped =
            rms >= SilentFraction
            && !IsSquare(samples, least, greatest)
            && (IsCut(samples, mean, greatest, stepFraction) || IsCut(samples, mean, least, stepFraction));
        return new ChannelHealth(Math.Max(Math.Abs(least), Math.Abs(greatest)), rms, mean, isClipped);
    }

    private static bool IsCut(double[] samples, double mean, double extreme, double stepFraction)
    {
        var isFull = Math.Abs(extreme) >= FullFraction;
        return (isFull || !IsStep(samples, mean, extreme)) && (Stands(samples, extreme, 4 * stepFraction, !isFull) || Crowds(samples, mean, extreme, !isFull));
    }

    private static bool IsStep(double[] samples, double mean, double extreme)
    {
        var (top, way) = (0, 0);
        foreach (var x in samples)
        {
            var below = (extreme - x) / (extreme - mean);
            top += below <= NearFraction ? 1 : 0;
            way += below is > NearFraction and < HalfFraction ? 1 : 0;
        }

        return top > StepShare * way;
    }

    // Two values in turn, as in some noises, are meant so.
    private static bool IsSquare(double[] samples, double least, double greatest)
    {
        var near = NearFraction * (greatest - least);
        return samples.Count(x => x <= least + near || x >= greatest - near) > SquareShare * samples.Length;
    }

    private static bool Stands(double[] samples, double extreme, double way, bool hasToMove)
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

            // A step comes from a standstill; a sound that is cut off was on its way.
            var isMoving = !hasToMove || i < 2 || Math.Abs(samples[i - 1] - samples[i - 2]) > MovingShare * Math.Abs(extreme - samples[i - 1]);
            runs += end - i >= LeastRun && isMoving && Math.Abs(extreme - samples[i - 1]) > way ? 1 : 0;
            i = end;
        }

        return runs >= LeastRuns;
    }

    private static bool Crowds(double[] samples, double mean, double extreme, bool hasToMove)
    {
        var height = extreme - mean;
        var (near, wider, far) = (0, 0, 0);
        foreach (var x in samples)
        {
            var below = (extreme - x) / height;
            near += below <= NearFraction ? 1 : 0;
            wider += below <= WiderFraction ? 1 : 0;
            far += below <= FarFraction ? 1 : 0;
        }

        return near > LeastShare * samples.Length && near > CrowdedShare * wider && (!hasToMove || wider - near < SettlingShare * (far - wider));
    }
}
