using Stillwall.Numerics;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Taps;

namespace Stillwall.Tests.Proofs;

public sealed class TapTests
{
    private static readonly TestBar Thick = new(0.16, 0.04, 0.04, 0.2688),
        Thin = new(0.3, 0.03, 0.012, 0.1188);

    [Fact]
    public void The_modulus_is_that_of_worked_bars()
    {
        var rows = SciPy.Table(SciPy.Folder, "bars.csv");
        Assert.Equal(2, rows.Count);
        Assert.All(rows, r => Assert.Equal(1, new TestBar(r[0], r[1], r[2], r[3], r[5]).ModulusPa(r[4]) / r[6], 5e-6));
    }

    [Fact]
    public void The_correction_is_that_of_the_exact_beam()
    {
        var rows = SciPy.Table(SciPy.Folder, "timoshenko.csv");
        Assert.Equal(6, rows.Count);

        // Without the correction E = 0.9465·m·f²/b·(L/t)³; the beam's own constant is 0.946415 (48π²/4.7300407⁴).
        Assert.All(rows, r => Assert.Equal(1, new TestBar(1, 1, r[1], 1, r[0]).ModulusPa(1) / (0.9465 / (r[1] * r[1] * r[1])) / r[2], 0.004));
    }

    [Theory]
    [InlineData(48000, 0.01)]
    [InlineData(44100, 0.004)]
    [InlineData(96000, 0.03)]
    public void Clean_bars_are_read_within_their_tolerance(double rate, double loss)
    {
        foreach (var (bar, modulus) in new[] { (Thick, 3.5671e9), (Thin, 2.8657e9), (new TestBar(0.2, 0.04, 0.02, 0.2), 6e9) })
        {
            foreach (var onsets in new[] { new[] { 0.0 }, [0.4], [0.3, 1.0, 1.8, 2.5, 3.2] })
            {
                var reading = TapTest.Of(Taps(bar, modulus, loss, rate, onsets).Rounded(16), bar);
                Assert.True(reading.Result is not null, $"{bar}, {onsets.Length}: {reading.Trouble}");
                var result = reading.Result;
                Assert.Equal(1, result.YoungsModulusPa / modulus, 0.001);
                Assert.Equal(1, result.LossFactor / loss, 0.02);
                Assert.Equal(onsets.Length, result.Taps.Count);
            }
        }
    }

    [Fact]
    public void Hum_and_hiss_do_not_move_the_figures()
    {
        foreach (var (bar, modulus) in new[] { (Thick, 3.5671e9), (Thin, 2.8657e9) })
        {
            var result = TapTest.Of(Taps(bar, modulus, 0.01, 48000, [0.5, 1.3, 2.1]).WithNoise(-60, 4).WithHum(-60).Rounded(16), bar).Result!;
            Assert.Equal(1, result.YoungsModulusPa / modulus, 0.002);
            Assert.Equal(1, result.LossFactor / 0.01, 0.03);
        }
    }

    [Fact]
    public void A_tap_far_from_the_others_is_named_and_left_out()
    {
        var odd = Taps(Thick, 3.9e9, 0.03, 48000, [1.1]);
        var mixed = Taps(Thick, 3.5671e9, 0.01, 48000, [0.3, 1.9, 2.7, 3.5])
            .Map((x, _, t) => x + odd.Channels[0].ElementAtOrDefault((int)Math.Round(t * 48000)));
        var reading = TapTest.Of(mixed, Thick);
        Assert.Equal(1, reading.Result!.YoungsModulusPa / 3.5671e9, 0.001);
        Assert.Contains(reading.Warnings, w => w.StartsWith("tap 2 at 1.10 s is left out", StringComparison.Ordinal));
    }

    [Fact]
    public void The_band_of_the_loss_factor_holds_the_truth_in_88_to_99_of_a_hundred_recordings()
    {
        var inside = InTheirBands(recordings: 200, noiseDb: -50);
        Assert.InRange(inside.Hertz, 176, 198);
        Assert.InRange(inside.Loss, 176, 198);
    }

    [Fact]
    public void Caliper_and_scales_are_in_the_band_of_the_modulus()
    {
        var result = TapTest.Of(Taps(Thick, 3.5671e9, 0.01, 48000, [0.3, 1, 2]), Thick, 1e-4, 1e-3).Result!;

        // By hand: 1.96/√3·√((1/268.8)² + (3·0.1/160)² + (0.1/40)² + (3·0.1/40)²).
        Assert.Equal(0.01009, result.Uncertainty.YoungsModulusPa / result.YoungsModulusPa, 2e-4);
    }

    [Fact]
    public void Of_two_bars_only_a_difference_beyond_the_noise_counts()
    {
        BarFigures Bar(double modulus, double loss) =>
            TapTest.Of(Taps(Thick, modulus, loss, 48000, [0.3, 1, 2]).WithNoise(-60, 7), Thick).Result is { } r
                ? new BarFigures(r.Figures, r.Uncertainty)
                : throw new InvalidOperationException();
        var differences = BarComparison.Of(Bar(3.5e9, 0.010), Bar(3.52e9, 0.014));
        Assert.False(differences[0].IsBeyondNoise);
        Assert.True(differences[1].IsBeyondNoise);
        Assert.Equal(0.4, differences[1].DifferenceRatio, 0.03);
    }

    // Taps of 0.4 in noise of up to a tenth of full scale: they are found, and the bands tell how good the figures are.
    [Theory]
    [InlineData(-45)]
    [InlineData(-30)]
    [InlineData(-20)]
    public void Taps_in_noise_are_read_with_wider_bands(double noiseDb)
    {
        foreach (var (bar, modulus) in new[] { (Thick, 3.5671e9), (Thin, 2.8657e9) })
        {
            var clean = Taps(bar, modulus, 0.01, 24000, [0.5, 1.3, 2.1, 2.9, 3.7]);
            var (quiet, reading) = (TapTest.Of(clean.WithNoise(-70, 1), bar).Result!, TapTest.Of(clean.WithNoise(noiseDb, 1), bar));
            Assert.True(reading.Result is not null, reading.Trouble);
            var result = reading.Result;
            Assert.Equal(5, result.Taps.Count);
            Assert.Equal(1, result.YoungsModulusPa / modulus, 0.002);
            Assert.InRange(Math.Abs(result.LossFactor - 0.01), 0, 2 * result.Uncertainty.LossFactor);
            Assert.True(result.Uncertainty.LossFactor > 2 * quiet.Uncertainty.LossFactor, "the band is no wider");
        }
    }

    [Fact]
    public void The_bands_of_taps_in_noise_hold_the_truth_in_85_of_a_hundred_recordings_or_more()
    {
        var inside = InTheirBands(recordings: 60, noiseDb: -30);
        Assert.InRange(inside.Hertz, 51, 60);
        Assert.InRange(inside.Loss, 51, 60);
    }

    private static (int Hertz, int Loss) InTheirBands(ulong recordings, double noiseDb)
    {
        var clean = Taps(Thick, 3.5671e9, 0.01, 24000, [0.4, 0.8, 1.2, 1.6]);
        var inside = (Hertz: 0, Loss: 0);
        for (ulong seed = 1; seed <= recordings; seed++)
        {
            var r = TapTest.Of(clean.WithNoise(noiseDb, seed), Thick).Result!;
            inside = (
                inside.Hertz + (Math.Abs(r.FrequencyHz - Thick.FrequencyHz(3.5671e9)) <= r.Uncertainty.FrequencyHz ? 1 : 0),
                inside.Loss + (Math.Abs(r.LossFactor - 0.01) <= r.Uncertainty.LossFactor ? 1 : 0)
            );
        }

        return inside;
    }

    [Fact]
    public void Taps_under_the_noise_are_refused_in_a_line()
    {
        var reading = TapTest.Of(Taps(Thick, 3.5671e9, 0.01, 24000, [0.4, 0.8, 1.2]).Map((x, _, _) => x * 0.01).WithNoise(-10, 2), Thick);
        Assert.Null(reading.Result);
        Assert.NotNull(reading.Trouble);
    }

    [Fact]
    public void What_is_no_tap_says_so()
    {
        var random = new SeededGenerator(3);
        double[] noise = [.. Enumerable.Range(0, 96000).Select(_ => 0.1 * Synthetic.Gaussian(random))];
        double[] tone = [.. Enumerable.Range(0, 96000).Select(i => 0.3 * Math.Sin(2 * Math.PI * 2500 * i / 48000.0))];
        foreach (var sound in new[] { noise, tone, new double[48000] })
        {
            var reading = TapTest.Of(new Recording(48000, [sound], 0), Thick);
            Assert.Null(reading.Result);
            Assert.NotNull(reading.Trouble);
        }
    }

    // The first bending modes of a free bar and one of torsion, each decaying by its loss factor.
    private static Recording Taps(TestBar bar, double modulusPa, double loss, double rate, double[] onsets)
    {
        var first = bar.FrequencyHz(modulusPa);
        (double Hz, double Loss, double Share)[] modes =
        [
            (first, loss, 1),
            (2.6 * first, 1.2 * loss, 0.6),
            (4.8 * first, 1.5 * loss, 0.2),
            (1.9 * first, loss, 0.1),
        ];
        var samples = new double[(int)(rate * (onsets[^1] + 1))];
        for (var o = 0; o < onsets.Length; o++)
        {
            for (var i = (int)Math.Ceiling(onsets[o] * rate); i < samples.Length; i++)
            {
                var t = (i / rate) - onsets[o];
                samples[i] +=
                    0.4
                    * (1 - (0.1 * o))
                    * modes.Where(m => m.Hz < rate / 2).Sum(m => m.Share * Math.Exp(-Math.PI * m.Hz * m.Loss * t) * Math.Sin(2 * Math.PI * m.Hz * t));
            }
        }

        return new Recording(rate, [samples], Math.Pow(2, -15));
    }
}
