using System.Numerics;
using Stillwall.Files.Audio;
using Stillwall.Numerics;
using Stillwall.Proofs.Impedances;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;

namespace Stillwall.Cli.Tests;

/// <summary>Recordings for the verbs that read them, each from a formula.</summary>
internal static class ProofSounds
{
    private const double Rate = 12000;

    /// <summary>A driver after 10 ohm, 16 bit.</summary>
    internal static void Impedance(Desk desk, string file, double resonanceHz = 30, double creep = 0)
    {
        var ratio = resonanceHz / 30;
        var model = new ImpedanceModel(3.55, resonanceHz, 5.5 * ratio, 3.55 * 5.5 / 0.475, 1.2e-3) { CreepRatio = creep };
        var source = Sweep(5, 1000, 6);
        Write(desk, file, [source, Through(source, f => model.AtOhm(f) / (model.AtOhm(f) + 10))]);
    }

    /// <summary>Both inputs on one point.</summary>
    internal static void Alone(Desk desk, string file) => Write(desk, file, [Sweep(5, 1000, 6), Sweep(5, 1000, 6)]);

    /// <summary>The played sweep, and what a closed box makes of it.</summary>
    internal static void Sweep(Desk desk)
    {
        var played = Sweep(10, 1000, 6);
        Write(desk, "sweep.wav", [played]);
        Write(desk, "heard.wav", [Through(TestSignals.WithSilence(played, Rate, 0.8, 2), f => Box(f) * 0.5)]);
    }

    /// <summary>Three taps on a bar.</summary>
    internal static void Taps(Desk desk)
    {
        var samples = new double[(int)(2.5 * Rate)];
        foreach (var onset in new[] { 0.4, 1.1, 1.8 })
        {
            for (var i = (int)(onset * Rate); i < samples.Length; i++)
            {
                var t = (i / Rate) - onset;
                samples[i] += 0.5 * Math.Exp(-Math.PI * 2500 * 0.01 * t) * Math.Sin(2 * Math.PI * 2500 * t);
            }
        }

        Write(desk, "taps.wav", [samples]);
    }

    /// <summary>Noise here, and a twentieth of it there.</summary>
    internal static void Wall(Desk desk)
    {
        var random = new SeededGenerator(3);
        double[] here = [.. Enumerable.Range(0, 120000).Select(_ => 0.5 * (random.Next() - 0.5))];
        Write(desk, "here.wav", [here]);
        Write(desk, "there.wav", [Array.ConvertAll(here, x => x * 0.05)]);
    }

    /// <summary>The polarity pulses after a closed box, pushed one way or the other.</summary>
    internal static void Pulses(Desk desk, string file, double sign) =>
        Write(desk, file, [Through(TestSignals.Pulses(3, Rate, -6), f => sign * Box(f) / new Complex(1, f / 500))]);

    internal static void Write(Desk desk, string file, IReadOnlyList<double[]> channels) =>
        File.WriteAllBytes(desk.PathTo(file), WavWriter.Write(new Recording(Rate, channels, 0), WavSamples.Bits16));

    private static Complex Box(double f)
    {
        var s = new Complex(0, f / 49);
        return s * s / ((s * s) + (s / 0.72) + 1);
    }

    private static double[] Sweep(double from, double to, double seconds) => new ExponentialSweep(from, to, seconds).Samples(Rate, -6);

    private static double[] Through(double[] samples, Func<double, Complex> response)
    {
        var length = 2 * FourierTransform.PowerOfTwo(samples.Length);
        var (spectrum, _) = FourierTransform.Pair(samples, [], length);
        for (var k = 0; k < spectrum.Length; k++)
        {
            spectrum[k] *= response(Math.Max(1e-3, k * Rate / length));
        }

        spectrum[0] = spectrum[^1] = 0;
        return FourierTransform.Signal(spectrum)[..samples.Length];
    }
}
