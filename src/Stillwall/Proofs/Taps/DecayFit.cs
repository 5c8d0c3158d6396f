using System.Numerics;

namespace Stillwall.Proofs.Taps;

/// <summary>Fits a decaying sinusoid.</summary>
/// <param name="DecayPerS">Decay of the amplitude, nepers a second.</param>
/// <param name="DecayDeviationPerS">Standard deviation of the decay, nepers a second.</param>
internal sealed record DecayFit(double FrequencyHz, double DecayPerS, double FrequencyDeviationHz, double DecayDeviationPerS)
{
    // Eight periods under a Hann window: blind to the mirror frequency and to the next mode, open to any decay of the bar (our choice).
    private const double WindowPeriods = 8;

    // How far above the noise the envelope must stand, and how many of its points there must be.
    private const double AboveNoise = 3;
    private const int FewestPoints = 5;

    // Points half a window apart share a sixth of their amplitude on either side: 1 + 2/36.
    private const double SharedFactor = 1 + (2.0 / 36);

    /// <summary>Loss factor: decrement over π.</summary>
    internal double LossFactor => DecayPerS / (Math.PI * FrequencyHz);

    /// <summary>Fits; null where nothing decays there.</summary>
    /// <param name="samples">The sound after the tap.</param>
    /// <param name="aboutHz">Frequency to look at, within a sixteenth of it.</param>
    /// <param name="noise">Mean magnitude of the envelope where nothing sounds; 0 where that is not known.</param>
    internal static DecayFit? Of(ReadOnlySpan<double> samples, double rateHz, double aboutHz, double noise)
    {
        var fit = Once(samples, rateHz, aboutHz, noise);
        return fit is null ? null : Once(samples, rateHz, fit.FrequencyHz, noise) ?? fit;
    }

    /// <summary>Mean magnitude of the envelope of a stretch of sound.</summary>
    /// <remarks>Source: elementary.</remarks>
    internal static double NoiseOf(ReadOnlySpan<double> samples, double rateHz, double aboutHz)
    {
        var (envelope, _) = Envelope(samples, rateHz, aboutHz);
        return envelope.Length == 0 ? 0 : envelope.Average(z => z.Magnitude);
    }

    private static DecayFit? Once(ReadOnlySpan<double> samples, double rateHz, double aboutHz, double noise)
    {
        var (all, stepS) = Envelope(samples, rateHz, aboutHz);
        var tail = all.Length >= 12 ? all[(all.Length * 3 / 4)..].Average(z => z.Magnitude) : 0;
        var floor = AboveNoise * Math.Max(noise, Math.Min(tail, all.Length == 0 ? 0 : all[0].Magnitude / 100));
        var count = 0;
        while (count < all.Length && all[count].Magnitude > floor)
        {
            count++;
        }

        return count < FewestPoints ? null : Lines(all[..count], stepS, aboutHz);
    }

    // Logarithm of the envelope as a straight line: its slope is the decay and what is left of the frequency. Weights first from the points, then
    // from the line.
    private static DecayFit? Lines(Complex[] z, double stepS, double aboutHz)
    {
        var (logs, phases) = (new double[z.Length], new double[z.Length]);
        for (var i = 0; i < z.Length; i++)
        {
            logs[i] = Math.Log(z[i].Magnitude);
            phases[i] = i == 0 ? z[0].Phase : phases[i - 1] + (z[i] * Complex.Conjugate(z[i - 1])).Phase;
        }

        var weights = Array.ConvertAll(z, v => v.Magnitude * v.Magnitude);
        var (level, phase) = (Line.Of(logs, weights), Line.Of(phases, weights));
        weights = [.. z.Select((_, i) => Math.Exp(2 * level.At(i)))];
        (level, phase) = (Line.Of(logs, weights), Line.Of(phases, weights));
        var decay = -level.Slope / stepS;
        if (!(decay > 0) || Math.Abs(phase.Slope) > Math.PI / 2)
        {
            return null;
        }

        var deviation = Math.Sqrt(SharedFactor) / stepS;
        return new DecayFit(
            aboutHz + (phase.Slope / (2 * Math.PI * stepS)),
            decay,
            phase.SlopeDeviation * deviation / (2 * Math.PI),
            level.SlopeDeviation * deviation
        );
    }

    private static (Complex[] Envelope, double StepS) Envelope(ReadOnlySpan<double> samples, double rateHz, double aboutHz)
    {
        var length = (int)Math.Round(WindowPeriods * rateHz / aboutHz);
        var hop = Math.Max(1, length / 2);
        var envelope = new Complex[samples.Length < length ? 0 : ((samples.Length - length) / hop) + 1];
        var turn = new Complex[length];
        for (var i = 0; i < length; i++)
        {
            turn[i] = Complex.FromPolarCoordinates((1 - Math.Cos(2 * Math.PI * (i + 0.5) / length)) / length, -2 * Math.PI * aboutHz * i / rateHz);
        }

        for (var k = 0; k < envelope.Length; k++)
        {
            var sum = Complex.Zero;
            var part = samples.Slice(k * hop, length);
            for (var i = 0; i < length; i++)
            {
                sum += part[i] * turn[i];
            }

            envelope[k] = sum * Complex.FromPolarCoordinates(1, -2 * Math.PI * aboutHz * k * hop / rateHz);
        }

        return (envelope, hop / rateHz);
    }

    /// <summary>A weighted straight line through points at 0, 1, 2 …</summary>
    private readonly record struct Line(double Start, double Slope, double SlopeDeviation)
    {
        internal double At(double x) => Start + (Slope * x);

        internal static Line Of(double[] y, double[] w)
        {
            double sw = 0,
                sx = 0,
                sy = 0;
            for (var i = 0; i < y.Length; i++)
            {
                (sw, sx, sy) = (sw + w[i], sx + (w[i] * i), sy + (w[i] * y[i]));
            }

            double mx = sx / sw,
                my = sy / sw,
                sxx = 0,
                sxy = 0;
            for (var i = 0; i < y.Length; i++)
            {
                (sxx, sxy) = (sxx + (w[i] * (i - mx) * (i - mx)), sxy + (w[i] * (i - mx) * (y[i] - my)));
            }

            var slope = sxy / sxx;
            var left = 0.0;
            for (var i = 0; i < y.Length; i++)
            {
                var miss = y[i] - my - (slope * (i - mx));
                left += w[i] * miss * miss;
            }

            return new Line(my - (slope * mx), slope, Math.Sqrt(left / Math.Max(1, y.Length - 2) / sxx));
        }
    }
}
