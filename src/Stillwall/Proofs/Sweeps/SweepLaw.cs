using Stillwall.Proofs.Signals;

namespace Stillwall.Proofs.Sweeps;

/// <summary>Recognises an exponential sweep by its zeros.</summary>
internal static class SweepLaw
{
    // Zeros that follow the law within 2 % of frequency on average; fewer than these are no sweep (our choice).
    private const double MostMissRatio = 0.02,
        LeastSpanRatio = 2;
    private const int FewestZeros = 40;

    // Closer zeros are not placed well enough by a straight line between two samples.
    private const double ShortestGap = 4;

    /// <summary>Highest frequency to which a sweep is followed, over the rate.</summary>
    internal const double FollowedRatio = 1 / (2 * ShortestGap);

    /// <summary>The sweep, as far up as it is followed; null where the signal is none.</summary>
    internal static ExponentialSweep? Of(double[] samples, double rateHz)
    {
        var zeros = Zeros(samples);
        if (zeros.Count < FewestZeros)
        {
            return null;
        }

        // Logarithm of the frequency between neighbouring zeros as a straight line over time; each weighs as long as it lasts, so that the many fast
        // ones do not rule.
        var points = Enumerable
            .Range(0, zeros.Count - 1)
            .Select(i =>
                (Time: (zeros[i] + zeros[i + 1]) / 2 / rateHz, Log: Math.Log(rateHz / (2 * (zeros[i + 1] - zeros[i]))), Weight: zeros[i + 1] - zeros[i])
            )
            .TakeWhile(p => p.Weight >= ShortestGap)
            .ToList();
        if (points.Count < FewestZeros)
        {
            return null;
        }

        var total = points.Sum(p => p.Weight);
        var (time, log) = (points.Sum(p => p.Weight * p.Time) / total, points.Sum(p => p.Weight * p.Log) / total);
        var slope = points.Sum(p => p.Weight * (p.Time - time) * (p.Log - log)) / points.Sum(p => p.Weight * (p.Time - time) * (p.Time - time));
        var miss = Math.Sqrt(points.Sum(p => p.Weight * Math.Pow(p.Log - log - (slope * (p.Time - time)), 2)) / total);
        double At(double t) => Math.Exp(log + (slope * (t - time)));
        var (start, end) = (zeros[0] / rateHz, zeros[points.Count] / rateHz);
        return miss < MostMissRatio && slope > 0 && At(end) > LeastSpanRatio * At(start) ? new ExponentialSweep(At(start), At(end), end - start) : null;
    }

    // Places where the signal changes its sign, between samples; silence has none.
    private static List<double> Zeros(double[] samples)
    {
        var least = 1e-4 * samples.Max(Math.Abs);
        var (zeros, last) = (new List<double>(), -1);
        for (var i = 0; i < samples.Length; i++)
        {
            if (Math.Abs(samples[i]) <= least)
            {
                continue;
            }

            if (last >= 0 && Math.Sign(samples[i]) != Math.Sign(samples[last]))
            {
                zeros.Add(last + ((i - last) * samples[last] / (samples[last] - samples[i])));
            }

            last = i;
        }

        return zeros;
    }
}
