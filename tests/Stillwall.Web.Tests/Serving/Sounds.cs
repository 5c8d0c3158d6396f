using System.Numerics;
using Stillwall.Files.Audio;
using Stillwall.Numerics;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;

namespace Stillwall.Web.Tests.Serving;

/// <summary>Recordings for the proof, each from a formula.</summary>
internal static class Sounds
{
    internal const double ResonanceHz = 49,
        Q = 0.72;

    private const double Rate = 12000;

    /// <summary>A closed box's impedance after 10 ohm: Re + Rm/(1 + jQms(f/f0 − f0/f)), the coil without inductance; Qes = Qms·Re/Rm.</summary>
    internal static byte[] Impedance() => Impedance(ResonanceHz, 9, 0.7826);

    /// <summary>The same of any resonance; the right channel may be weaker by a factor.</summary>
    internal static byte[] Impedance(double resonanceHz, double qms, double qes, double right = 1)
    {
        const double re = 3.55;
        var source = new ExponentialSweep(5, 1000, 6).Samples(Rate, -6);
        return Wav(
            Rate,
            source,
            Through(
                source,
                Rate,
                f =>
                {
                    var z = re + (re * qms / qes / new Complex(1, qms * ((f / resonanceHz) - (resonanceHz / f))));
                    return right * z / (z + 10);
                }
            )
        );
    }

    /// <summary>The resistor with nothing after it: both channels hear the source, the right one weaker by a factor.</summary>
    internal static byte[] Alone(double right)
    {
        var source = new ExponentialSweep(5, 1000, 6).Samples(Rate, -6);
        return Wav(Rate, source, Array.ConvertAll(source, x => right * x));
    }

    /// <summary>Noise at a strength.</summary>
    internal static byte[] Noise(double strength, ulong seed = 3)
    {
        var random = new SeededGenerator(seed);
        return Wav(Rate, [.. Enumerable.Range(0, 10 * (int)Rate).Select(_ => strength * (random.Next() - 0.5))]);
    }

    /// <summary>The polarity pulses after a closed box, pushed one way or the other.</summary>
    internal static byte[] Pulses(double sign) =>
        Wav(
            48000,
            Through(
                TestSignals.Pulses(3, 48000, -6),
                48000,
                f =>
                {
                    var s = new Complex(0, f / ResonanceHz);
                    return sign * s * s / ((s * s) + (s / Q) + 1) / new Complex(1, f / 500);
                }
            )
        );

    /// <summary>Three taps of 2500 Hz with a loss factor of 0.01.</summary>
    internal static byte[] Taps()
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

        return Wav(Rate, samples);
    }

    /// <summary>
    /// What a closed box of <see cref="ResonanceHz"/> and <see cref="Q"/> makes of a played file, with silence round it; full scale cuts off.
    /// </summary>
    internal static byte[] Heard(byte[] played, double strength = 0.5)
    {
        var sound = WavReader.Read(played).Recording!;
        return Wav(
            sound.RateHz,
            Array.ConvertAll(
                Through(
                    TestSignals.WithSilence(sound.Channels[0], sound.RateHz, 0.8, 2),
                    sound.RateHz,
                    f =>
                    {
                        var s = new Complex(0, f / ResonanceHz);
                        return strength * s * s / ((s * s) + (s / Q) + 1);
                    }
                ),
                x => Math.Clamp(x, -1, 1)
            )
        );
    }

    private static byte[] Wav(double rate, params double[][] channels) => WavWriter.Write(new Recording(rate, channels, 0), WavSamples.Bits16);

    private static double[] Through(double[] samples, double rate, Func<double, Complex> response)
    {
        var length = 2 * FourierTransform.PowerOfTwo(samples.Length);
        var (spectrum, _) = FourierTransform.Pair(samples, [], length);
        for (var k = 0; k < spectrum.Length; k++)
        {
            spectrum[k] *= response(Math.Max(1e-3, k * rate / length));
        }

        spectrum[0] = spectrum[^1] = 0;
        return FourierTransform.Signal(spectrum)[..samples.Length];
    }
}
