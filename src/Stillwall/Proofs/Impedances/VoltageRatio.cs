using System.Numerics;
using Stillwall.Numerics;
using Stillwall.Proofs.Spectra;

namespace Stillwall.Proofs.Impedances;

/// <summary>Voltage across the load over the voltage of the source, on lines of equal distance.</summary>
/// <param name="SpacingHz">Distance of the lines, Hz; the first is at 0.</param>
/// <param name="Ratios">The ratio on each line.</param>
/// <param name="DeviationRatios">Standard deviation of each ratio; infinite where the source is silent.</param>
/// <param name="CoherenceFractions">Coherence on each line, 0 to 1.</param>
/// <param name="PowerDensityRatios">Power of the source on each line, over its greatest.</param>
internal sealed record VoltageRatio(double SpacingHz, Complex[] Ratios, double[] DeviationRatios, double[] CoherenceFractions, double[] PowerDensityRatios)
{
    // Segments of at most 5.5 s, and a third of the recording, so that there are several to average (our choice).
    private const int LongestSegment = 1 << 16, LeastSegment = 1 << 11;

    // Lines over which the noise is taken as even.
    private const int NoiseReach = 6;

    /// <summary>Estimates the ratio; null where the recording is too short.</summary>
    /// <param name="source">Voltage of the source, about zero.</param>
    /// <param name="load">Voltage across the load, about zero.</param>
    /// <param name="rateHz">Rate of both, Hz.</param>
    internal static VoltageRatio? Of(double[] source, double[] load, double rateHz)
    {
        var segment = Math.Min(LongestSegment, FourierTransform.PowerOfTwo(Math.Max(1, source.Length / 3)) / (BitOperations.IsPow2(Math.Max(1, source.Length / 3)) ? 1 : 2));
        if (segment < LeastSegment)
        {
            return null;
        }

        // Where a recording begins or ends in silence, silence is added, so that every moment of it counts alike.
        var (before, after) = (StartsQuiet(source) ? segment : 0, EndsQuiet(source) ? segment : 0);
        var spectrum = CrossSpectrum.Of(Padded(source, before, after), Padded(load, before, after), rateHz, segment);
        var lines = spectrum.Cross.Count;
        var (ratios, coherences) = (new Complex[lines], new double[lines]);
        var noise = new double[lines];
        for (var k = 0; k < lines; k++)
        {
            coherences[k] = spectrum.CoherenceFraction(k);
            ratios[k] = spectrum.FirstPower[k] > 0 ? spectrum.Cross[k] / spectrum.FirstPower[k] : 0;
            noise[k] = (1 - coherences[k]) * spectrum.SecondPower[k];
        }

        var greatest = spectrum.FirstPower.Max();
        var deviations = new double[lines];
        for (var k = 0; k < lines; k++)
        {
            var (from, to) = (Math.Max(0, k - NoiseReach), Math.Min(lines - 1, k + NoiseReach));
            var even = Median(noise[from..(to + 1)]);
            deviations[k] = spectrum.FirstPower[k] > 0 ? Math.Sqrt(even / spectrum.FirstPower[k] / spectrum.IndependentCount) : double.PositiveInfinity;
        }

        return new VoltageRatio(spectrum.SpacingHz, ratios, deviations, coherences, [.. spectrum.FirstPower.Select(p => greatest > 0 ? p / greatest : 0)]);
    }

    private static bool StartsQuiet(double[] source) => Rms(source.AsSpan(0, source.Length / 100)) < 0.05 * Rms(source);

    private static bool EndsQuiet(double[] source) => Rms(source.AsSpan(source.Length - (source.Length / 100))) < 0.05 * Rms(source);

    private static double[] Padded(double[] samples, int before, int after) => before + after == 0 ? samples : [.. new double[before], .. samples, .. new double[after]];

    private static double Rms(ReadOnlySpan<double> samples)
    {
        var sum = 0.0;
        foreach (var x in samples)
        {
            sum += x * x;
        }

        return Math.Sqrt(sum / Math.Max(1, samples.Length));
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        return values[values.Length / 2];
    }
}
