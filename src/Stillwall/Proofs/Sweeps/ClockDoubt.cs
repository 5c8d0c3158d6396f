using System.Numerics;
using Stillwall.Numerics;
using Stillwall.Proofs.Signals;
using Stillwall.Proofs.Spectra;

namespace Stillwall.Proofs.Sweeps;

/// <summary>What the clocks of player and recorder may do to a response.</summary>
internal static class ClockDoubt
{
    // Two quartz clocks of sound cards keep within this of each other (common practice, no source).
    private const double ApartRatio = 100e-6;

    private const double LowHz = 20,
        HighHz = 400;

    /// <summary>Greatest change of a point where one clock is 100 ppm faster or slower, dB; null where there is no point from 20 to 400 Hz.</summary>
    /// <param name="transfer">The deconvolved transfer function, lines 0 to half the length.</param>
    /// <param name="points">Reads the points off an answer, their bands moved by a factor.</param>
    /// <remarks>
    /// Model: a sweep at another speed arrives later by ε·L·ln(f/f1), so the clocks turn phases and no magnitude; the gate turns a little of that
    /// into levels, and every frequency is off by ε. A loudspeaker's own delay looks alike, so that the offset itself cannot be read from one sweep.
    /// Source: Farina 2000 for the law (from memory); the rest is our own. Accuracy: a tenth of itself.
    /// </remarks>
    internal static double? Of(Complex[] transfer, ExponentialSweep law, int length, Func<Response, double, IReadOnlyList<SweepPoint>> points)
    {
        Response At(double apart) => new(FourierTransform.Signal(Turned(transfer, law, Resampling.BassRateHz / length, apart)), Resampling.BassRateHz);
        var same = points(At(0), 1);
        var moved = new[] { At(-ApartRatio), At(ApartRatio) }.SelectMany(r => new[] { points(r, 1 - ApartRatio), points(r, 1 + ApartRatio) }).ToList();
        var within = Enumerable.Range(0, same.Count).Where(i => same[i].FrequencyHz is >= LowHz and <= HighHz).ToList();
        return within.Count == 0 ? null : within.Max(i => moved.Max(m => Math.Abs(m[i].MagnitudeDb - same[i].MagnitudeDb)));
    }

    // Phase whose slope over frequency is the delay: ∫ε·L·ln(f/f1)df = ε·L·f·(ln(f/f1) − 1).
    private static Complex[] Turned(Complex[] transfer, ExponentialSweep law, double spacingHz, double apart)
    {
        var turned = (Complex[])transfer.Clone();
        for (var k = 1; k < turned.Length - 1; k++)
        {
            var f = k * spacingHz;
            turned[k] *= Complex.FromPolarCoordinates(1, -2 * Math.PI * apart * law.TimeConstantS * f * (Math.Log(f / law.FromHz) - 1));
        }

        return turned;
    }
}
