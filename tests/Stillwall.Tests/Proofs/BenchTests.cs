using System.Numerics;
using Stillwall.Numerics;
using Stillwall.Proofs.PartyWalls;
using Stillwall.Proofs.Polarities;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;
using Stillwall.Proofs.Spectra;

namespace Stillwall.Tests.Proofs;

/// <summary>Signals, channels, party wall and polarity.</summary>
public sealed class BenchTests
{
    [Fact]
    public void A_sweep_passes_every_frequency_at_its_time()
    {
        var sweep = new ExponentialSweep(10, 1000, 8);
        var samples = sweep.Samples(48000, -6);
        Assert.Equal(384000, samples.Length);
        Assert.InRange(samples.Max(), 0.5, 0.502);

        // Half-way through, the geometric mean: 100 Hz; counted by its zeros over a tenth of a second.
        var zeros = Enumerable.Range(192000 - 2400, 4800).Count(i => samples[i] >= 0 != samples[i + 1] >= 0);
        Assert.InRange(zeros, 19, 21);
        Assert.Equal(8 / Math.Log(100) * Math.Log(2), sweep.HarmonicLeadS(2), 1e-12);
    }

    [Fact]
    public void Octaves_of_pink_noise_carry_equal_energy_and_nothing_lies_outside()
    {
        var samples = TestSignals.PinkNoise(20, 320, 20, 6000, -3);
        Assert.Equal(Math.Pow(10, -0.15), samples.Max(Math.Abs), 1e-9);
        var spectrum = CrossSpectrum.Of(samples, samples, 6000, 16384);
        double Octave(double from) =>
            10 * Math.Log10(FractionalOctaves.MeanEnergy(spectrum.FirstPower, spectrum.SpacingHz, new OctaveBand(from * 1.4, from, 2 * from)) * from);
        Assert.All(new double[] { 40, 80 }, f => Assert.Equal(Octave(80), Octave(f), 0.5));
        Assert.InRange(Octave(5) - Octave(80), -400, -40);
        Assert.InRange(Octave(700) - Octave(80), -400, -40);
        Assert.Equal(samples, TestSignals.PinkNoise(20, 320, 20, 6000, -3));
    }

    [Fact]
    public void The_two_bands_of_a_level_pair_are_equally_loud()
    {
        var pair = TestSignals.LevelPair(80, 8, 6000, -6);
        double Rms(int turn) => Math.Sqrt(pair[(turn * 12000)..((turn + 1) * 12000)].Average(x => x * x));
        Assert.Equal(1, Rms(1) / Rms(0), 0.02);
        Assert.Equal(1, Rms(2) / Rms(1), 0.02);
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(1)]
    [InlineData(6)]
    public void A_sine_cut_by_a_little_is_clipped_and_a_whole_one_is_not(double cutDb)
    {
        foreach (var hertz in new[] { 20.0, 440 })
        {
            double[] whole = [.. Enumerable.Range(0, 48000).Select(i => Math.Round(0.7 * Math.Sin(2 * Math.PI * hertz * i / 48000.0) * 32768) / 32768)];
            var most = 0.7 * Math.Pow(10, -cutDb / 20);
            Assert.False(ChannelHealth.Of(whole, Math.Pow(2, -15)).IsClipped);
            Assert.True(ChannelHealth.Of(Array.ConvertAll(whole, x => Math.Clamp(x, -most, most)), Math.Pow(2, -15)).IsClipped);
        }
    }

    [Fact]
    public void Noise_music_and_decays_are_not_clipped()
    {
        var random = new SeededGenerator(2);
        double[] noise = [.. Enumerable.Range(0, 48000).Select(_ => 0.1 * Synthetic.Gaussian(random))];
        double[] decay = [.. Enumerable.Range(0, 48000).Select(i => 0.9 * Math.Exp(-i / 5000.0) * Math.Sin(0.3 * i))];
        Assert.All(
            new[] { noise, decay, TestSignals.PinkNoise(10, 1000, 5, 12000, 0), new ExponentialSweep(5, 1000, 5).Samples(48000, 0) },
            s => Assert.False(ChannelHealth.Of(s, 1e-7).IsClipped)
        );
        Assert.True(ChannelHealth.Of(Array.ConvertAll(noise, x => Math.Clamp(x, -0.25, 0.25)), 1e-7).IsClipped);
    }

    // Slow steps as a bass line or a signal generator has them: from corner to corner at once, ramped, through a low-pass of the first order and of
    // the second (Q 0.5), sagging as behind a coupling capacitor, with noise.
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Slow_steps_below_full_scale_are_not_clipped(double peak)
    {
        const double rate = 12000;
        double[] square = [.. Enumerable.Range(0, 60000).Select(i => i / 300 % 2 == 0 ? peak : -peak)];
        double[] stairs = [.. Enumerable.Range(0, 60000).Select(i => peak * (new[] { 0, 0.5, 1, 0.5, 0, -0.5, -1, -0.5 }[i / 300 % 8]))];
        double[] OnePole(double[] x, double hertz)
        {
            var (y, a) = (new double[x.Length], Math.Exp(-2 * Math.PI * hertz / rate));
            for (var i = 1; i < x.Length; i++)
            {
                y[i] = (a * y[i - 1]) + ((1 - a) * x[i]);
            }

            return y;
        }

        double[] Sag(double[] x)
        {
            var low = OnePole(x, 1.5);
            return [.. x.Select((v, i) => 0.8 * (v - low[i]))];
        }

        var random = new SeededGenerator(5);
        double[][] slow =
        [
            square,
            stairs,
            OnePole(square, 200),
            OnePole(square, 60),
            OnePole(OnePole(square, 150), 150),
            OnePole(stairs, 200),
            Sag(square),
            Sag(OnePole(square, 300)),
            Array.ConvertAll(OnePole(square, 200), x => x + (1e-4 * Synthetic.Gaussian(random))),
            Array.ConvertAll(square, x => x + (1e-3 * Synthetic.Gaussian(random))),
        ];
        Assert.All(
            slow.Index(),
            s => Assert.False(ChannelHealth.Of(Array.ConvertAll(s.Item, x => Math.Round(x * 32768) / 32768), Math.Pow(2, -15)).IsClipped, $"signal {s.Index}")
        );
    }

    // Cut off before it was turned down: still clipped, though far below full scale; 3 to 12 dB over.
    [Theory]
    [InlineData(3)]
    [InlineData(12)]
    public void What_was_cut_off_and_then_turned_down_is_still_clipped(double overDb)
    {
        foreach (var hertz in new[] { 20.0, 50, 440 })
        {
            var amplitude = Math.Pow(10, overDb / 20);
            double[] cut =
            [
                .. Enumerable
                    .Range(0, 96000)
                    .Select(i => Math.Round(0.4 * Math.Clamp(amplitude * Math.Sin(2 * Math.PI * hertz * i / 48000.0), -1, 1) * 32768) / 32768),
            ];
            Assert.True(ChannelHealth.Of(cut, Math.Pow(2, -15)).IsClipped, $"{hertz} Hz");
        }
    }

    [Fact]
    public void The_level_difference_is_what_was_taken_away()
    {
        var random = new SeededGenerator(4);
        double[] here = [.. Enumerable.Range(0, 240000).Select(_ => 0.1 * Synthetic.Gaussian(random))];
        var there = Array.ConvertAll(here, x => x * 0.05);
        var reading = LevelDifference.Of(Mono(here), Mono(there), null);
        Assert.Equal(10, reading.Bands.Count);
        Assert.All(reading.Bands, b => Assert.Equal(26.02, b.DifferenceDb, 0.01));
        Assert.Contains(reading.Warnings, w => w.Contains("background", StringComparison.Ordinal));
    }

    [Fact]
    public void The_background_is_taken_off_as_far_as_ISO_16283_lets()
    {
        var random = new SeededGenerator(4);
        double[] Noise(double rms) => [.. Enumerable.Range(0, 480000).Select(_ => rms * Synthetic.Gaussian(random))];
        var (here, background) = (Noise(0.1), Noise(0.002));
        double[] Heard(double share) => [.. here.Zip(Noise(0.002), (x, n) => (share * x) + n)];

        // Sound twice the background's strength: 7 dB above it together, so the correction brings back 20 lg 25.
        var corrected = LevelDifference.Of(Mono(here), Mono(Heard(0.04)), Mono(background));
        Assert.All(corrected.Bands.Where(b => b.BandHz >= 63 && !b.IsAtLeast), b => Assert.Equal(27.96, b.DifferenceDb, 1.0));

        // Nothing comes through: 1.3 dB and no more.
        var hidden = LevelDifference.Of(Mono(here), Mono(Heard(0)), Mono(background));
        Assert.All(hidden.Bands, b => Assert.True(b.IsAtLeast));
        Assert.All(hidden.Bands.Where(b => b.BandHz >= 63), b => Assert.Equal(33.98 + 1.3, b.DifferenceDb, 1.2));
    }

    [Fact]
    public void The_first_swing_tells_which_way_a_closed_box_goes()
    {
        var pulses = TestSignals.Pulses(3, 48000, -6);
        static Complex Box(double f)
        {
            var s = new Complex(0, f / 50);
            return s * s / ((s * s) + (s / 0.7) + 1) / new Complex(1, f / 500);
        }

        var up = Mono(Synthetic.Through(pulses, 48000, Box), 48000).WithNoise(-70, 1);
        Assert.True(Polarity.Of(up).IsPositive);
        Assert.False(Polarity.Of(up.Map((x, _, _) => -x)).IsPositive);
        Assert.NotNull(Polarity.Of(up.Map((x, _, _) => 0 * x).WithNoise(-40, 2)).Trouble);
    }

    private static Recording Mono(double[] samples, double rate = 12000) => new(rate, [samples], 1e-7);
}
