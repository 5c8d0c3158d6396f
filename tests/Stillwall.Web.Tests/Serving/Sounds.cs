using System.Numerics;
using Stillwall.Files.Audio;
using Stillwall.Numerics;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;

namespace Stillwall.Web.Tests.Serving;

/// <summary>Recordings for the proof, each from a formula.</summary>
internal static class Sounds
{
    internal const double ResonanceHz = 49, Q = 0.72;

    private const double Rate = 12000;

    /// <summary>A closed box's impedance after 10 ohm: Re + Rm/(1 + jQms(f/f0 − f0/f)), the coil without inductance; Qes = Qms·Re/Rm.</summary>
    internal static byte[] Impedance()
    {
        const double re = 3.55, qms = 9, qes = 0.7826;
        var source = new ExponentialSweep(5, 1000, 6).Samples(Rate, -6);
        return Wav(Rate, source, Through(source, Rate, f =>
        {
            var z = re + (re * qms / qes / new Complex(1, qms * ((f / ResonanceHz) - (ResonanceHz / f))));
            return z / (z + 10);
        }));
    }

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

    /// <summary>What a closed box of <see cref="ResonanceHz"/> and <see cref="Q"/> makes of a played file, with silence round it.</summary>
    internal static byte[] Heard(byte[] played)
    {
        var sound = WavReader.Read(played).Recording!;
        return Wav(sound.RateHz, Through(TestSignals.WithSilence(sound.Channels[0], sound.RateHz, 0.8, 2), sound.RateHz, f =>
        {
            var s = new Complex(0, f / ResonanceHz);
            return 0.5 * s * s / ((s * s) + (s / Q) + 1);
        }));
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
