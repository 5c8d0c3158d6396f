namespace Stillwall.Proofs.Taps;

/// <summary>Finds the taps in a recording.</summary>
internal static class TapOnsets
{
    // Frames of 10 ms, half a period of 50 Hz, in which hum is as loud as in every other.
    private const double FrameS = 0.01,
        FineS = 0.001;

    // A tap stands 8 dB above what was before it, within 40 dB of the loudest, and a tenth of a second from the last (our choice).
    private const double Jump = 2.5,
        WeakestRatio = 0.01,
        ApartS = 0.1,
        FloorJump = 3,
        OnsetShare = 0.3;

    /// <summary>Where taps begin, as numbers of samples.</summary>
    internal static List<int> Find(double[] samples, double rateHz)
    {
        var (frame, fine) = (Math.Max(8, (int)(FrameS * rateHz)), Math.Max(2, (int)(FineS * rateHz)));
        var levels = Levels(samples, frame, 0, samples.Length);
        var (greatest, floor) = (levels.Max(), levels.Order().ElementAt(levels.Length / 10));
        var onsets = new List<int>();
        for (var i = 0; i < levels.Length; i++)
        {
            var before =
                i == 0 ? floor
                : i == 1 ? levels[0]
                : Math.Min(levels[i - 1], levels[i - 2]);
            var isTap = levels[i] > WeakestRatio * greatest && levels[i] > Jump * before && levels[i] > FloorJump * floor;
            var at = isTap ? Fine(samples, Math.Max(0, i - 1) * frame, Math.Min(samples.Length, (i + 2) * frame), fine) : 0;
            if (isTap && (onsets.Count == 0 || at - onsets[^1] > ApartS * rateHz))
            {
                onsets.Add(at);
            }
        }

        return onsets;
    }

    // The first millisecond of a stretch that is nearly as loud as its loudest.
    private static int Fine(double[] samples, int from, int to, int fine)
    {
        var levels = Levels(samples, fine, from, to);
        return from + (fine * Array.FindIndex(levels, l => l >= OnsetShare * levels.Max()));
    }

    // Of second differences, which hear hum less; root mean square of each frame.
    private static double[] Levels(double[] samples, int frame, int from, int to)
    {
        var levels = new double[Math.Max(1, (to - from) / frame)];
        for (var i = 0; i < levels.Length; i++)
        {
            var (start, end) = (Math.Max(1, from + (i * frame)), Math.Min(samples.Length - 1, from + ((i + 1) * frame)));
            var sum = 0.0;
            for (var j = start; j < end; j++)
            {
                var bend = samples[j + 1] - (2 * samples[j]) + samples[j - 1];
                sum += bend * bend;
            }

            levels[i] = Math.Sqrt(sum / frame);
        }

        return levels;
    }
}
