namespace Stillwall.Proofs.Taps;

/// <summary>Finds the taps in a recording.</summary>
internal static class TapOnsets
{
    // Frames of 2 ms; a tap stands 12 dB above what was before it, within 40 dB of the loudest, and a tenth of a second from the last (our choice).
    private const double FrameS = 0.002, Jump = 4, WeakestRatio = 0.01, ApartS = 0.1, FloorJump = 5;
    private const int LookBack = 3;

    /// <summary>Where taps begin, as numbers of samples.</summary>
    internal static List<int> Find(double[] samples, double rateHz)
    {
        var frame = Math.Max(4, (int)(FrameS * rateHz));
        var levels = Levels(samples, frame);
        var (greatest, floor) = (levels.Max(), Quantile(levels, 0.1));
        var onsets = new List<int>();
        for (var i = 0; i < levels.Length; i++)
        {
            var before = i == 0 ? 0 : levels[Math.Max(0, i - LookBack)..i].Min();
            var isTap = levels[i] > WeakestRatio * greatest && levels[i] > Jump * before && (levels[i] > FloorJump * floor || i == 0);
            if (isTap && (onsets.Count == 0 || (i * frame) - onsets[^1] > ApartS * rateHz))
            {
                onsets.Add(i * frame);
            }
        }

        return onsets;
    }

    // Of the differences of neighbouring samples, which hear hum less.
    private static double[] Levels(double[] samples, int frame)
    {
        var levels = new double[Math.Max(1, (samples.Length - 1) / frame)];
        for (var i = 0; i < levels.Length; i++)
        {
            var sum = 0.0;
            for (var j = i * frame; j < Math.Min(samples.Length - 1, (i + 1) * frame); j++)
            {
                var step = samples[j + 1] - samples[j];
                sum += step * step;
            }

            levels[i] = Math.Sqrt(sum / frame);
        }

        return levels;
    }

    private static double Quantile(double[] values, double share) => values.Order().ElementAt((int)(share * (values.Length - 1)));
}
