using System.Numerics;
using Stillwall.Numerics;
using Stillwall.Proofs.Recordings;

namespace Stillwall.Tests.Proofs;

/// <summary>Recordings made from a circuit or a bar, with the troubles that real ones have.</summary>
internal static class Synthetic
{
    /// <summary>Passes a signal through a response given over frequency, by one long transform, so that nothing wraps round.</summary>
    internal static double[] Through(double[] samples, double rateHz, Func<double, Complex> response)
    {
        var length = 2 * FourierTransform.PowerOfTwo(samples.Length);
        var (spectrum, _) = FourierTransform.Pair(samples, [], length);
        for (var k = 0; k < spectrum.Length; k++)
        {
            spectrum[k] *= k == 0 || k == spectrum.Length - 1 ? response(Math.Max(1e-3, k * rateHz / length)).Real : response(k * rateHz / length);
        }

        return FourierTransform.Signal(spectrum)[..samples.Length];
    }

    /// <summary>Source and load voltages for an impedance after a resistor.</summary>
    internal static Recording Impedance(double[] source, double rateHz, double referenceOhm, Func<double, Complex> impedance) =>
        new(rateHz, [source, Through(source, rateHz, f => impedance(f) / (impedance(f) + referenceOhm))], Math.Pow(2, -24));

    /// <summary>White noise on every channel, its root mean square in dB re full scale.</summary>
    internal static Recording WithNoise(this Recording r, double rmsDb, ulong seed)
    {
        var random = new SeededGenerator(seed);
        return r.Map((x, _, _) => x + (Math.Pow(10, rmsDb / 20) * Gaussian(random)));
    }

    /// <summary>Hum of the power line with its second and third harmonic, its root mean square in dB re full scale, stronger in the second channel.</summary>
    internal static Recording WithHum(this Recording r, double rmsDb, double mainsHz = 50) =>
        r.Map(
            (x, c, t) =>
            {
                var peak = Math.Sqrt(2) * Math.Pow(10, rmsDb / 20) * (c == 0 ? 0.5 : 1);
                return x
                    + (
                        peak
                        * (
                            Math.Sin(2 * Math.PI * mainsHz * t)
                            + (0.3 * Math.Sin(4 * Math.PI * mainsHz * t + 1))
                            + (0.5 * Math.Sin(6 * Math.PI * mainsHz * t + 2))
                        )
                    );
            }
        );

    internal static Recording Map(this Recording r, Func<double, int, double, double> sample) =>
        new(r.RateHz, [.. r.Channels.Select((channel, c) => channel.Select((x, i) => sample(x, c, i / r.RateHz)).ToArray())], r.StepFraction);

    /// <summary>Samples as a file of so many bits holds them.</summary>
    internal static Recording Rounded(this Recording r, int bits) =>
        new(
            r.RateHz,
            r.Map(
                (x, _, _) => Math.Clamp(Math.Round(x * Math.Pow(2, bits - 1)), -Math.Pow(2, bits - 1), Math.Pow(2, bits - 1) - 1) / Math.Pow(2, bits - 1)
            ).Channels,
            Math.Pow(2, 1 - bits)
        );

    /// <summary>A normal deviate, by the method of Box and Muller.</summary>
    internal static double Gaussian(SeededGenerator random) => Math.Sqrt(-2 * Math.Log(1 - random.Next())) * Math.Cos(2 * Math.PI * random.Next());
}
