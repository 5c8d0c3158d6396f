using System.Numerics;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;
using Stillwall.Proofs.Spectra;
using Stillwall.Proofs.Sweeps;

namespace Stillwall.Tests.Proofs;

/// <summary>Recordings made from known responses; the truth is the response's own formula, averaged over each band.</summary>
public sealed class SweepTests
{
    private const double Rate = 24000;

    public static TheoryData<string, bool, double, double> Cases =>
        new()
        {
            { "sweep", false, -200, 0 },
            { "sweep", true, -200, 0 },
            { "sweep", false, -59, 0 },
            { "sweep", true, -59, 50 },
            { "wide", false, -59, 50 },
            { "wide", true, -200, -50 },
            { "linear", false, -200, 50 },
            { "noise", false, -200, 0 },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_response_is_right_within_three_tenths_of_a_decibel_from_20_to_400_Hz(string signal, bool hasRoom, double noiseDb, double clockPpm)
    {
        var played = Played(signal, Rate);
        var recorded = Recorded(played, Rate, f => Response(f, hasRoom), clockPpm);
        recorded = noiseDb > -100 ? recorded.WithNoise(noiseDb, 3).WithHum(noiseDb).Rounded(16) : recorded.Rounded(24);
        var reading = RelativeSweep.Of(recorded, new Recording(Rate, [played], 1e-7), new SweepSettings());
        Assert.True(reading.Result is not null, reading.Trouble);
        Near(reading.Result, f => Response(f, hasRoom), 0.3);
        Assert.Equal(1.234, reading.Result.DelayS, 2e-3);
    }

    // The same room with clocks apart: what the points move by is within what was stated without knowing the offset, and that is little.
    [Theory]
    [InlineData(50)]
    [InlineData(-50)]
    [InlineData(100)]
    public void Clocks_that_differ_move_the_points_by_no_more_than_is_stated(double ppm)
    {
        foreach (var hasRoom in new[] { false, true })
        {
            var played = Played("sweep", Rate);
            SweepResult At(double clock) =>
                RelativeSweep.Of(Recorded(played, Rate, f => Response(f, hasRoom), clock), new Recording(Rate, [played], 1e-7), new SweepSettings()).Result!;
            var (same, apart) = (At(0), At(ppm));
            var moved = same
                .Points.Zip(apart.Points)
                .Where(p => p.First.FrequencyHz is >= 20 and <= 400)
                .Max(p => Math.Abs(p.First.MagnitudeDb - p.Second.MagnitudeDb));
            Assert.InRange(apart.ClockDoubtDb!.Value, 0.8 * moved * (100 / Math.Abs(ppm)), 0.1);
            Assert.InRange(moved, 0, (1.1 * apart.ClockDoubtDb.Value) + 0.002);
        }
    }

    // Noise has no law, but two halves: the offset is read off them and taken out.
    [Theory]
    [InlineData(50)]
    [InlineData(-50)]
    [InlineData(100)]
    public void The_offset_of_two_clocks_is_read_off_noise_and_taken_out(double ppm)
    {
        var played = Played("noise", Rate);
        var recorded = Recorded(played, Rate, f => Response(f, false), ppm).WithNoise(-70, 6);
        var reading = RelativeSweep.Of(recorded, new Recording(Rate, [played], 1e-7), new SweepSettings());
        Near(reading.Result!, f => Response(f, false), 0.3);
        var told = Assert.Single(reading.Warnings, w => w.Contains("ppm", StringComparison.Ordinal));
        var found =
            double.Parse(told.Split(" ppm")[0].Split(' ')[^1], System.Globalization.CultureInfo.InvariantCulture)
            * (told.Contains("slower", StringComparison.Ordinal) ? 1 : -1);
        Assert.Equal(ppm, found, 8.0);
    }

    [Fact]
    public void Without_a_sweep_nothing_is_stated_of_the_clocks() =>
        Assert.Null(
            RelativeSweep
                .Of(Recorded(Played("noise", Rate), Rate, f => Response(f, false), 0), new Recording(Rate, [Played("noise", Rate)], 1e-7), new SweepSettings())
                .Result!.ClockDoubtDb
        );

    [Theory]
    [InlineData(44100, 48000)]
    [InlineData(96000, 44100)]
    public void Played_and_recorded_files_may_have_different_rates(double playedHz, double recordedHz)
    {
        // The same sweep, sampled at either rate.
        var reading = RelativeSweep.Of(
            Recorded(Played("sweep", recordedHz), recordedHz, f => Response(f, false), 0),
            new Recording(playedHz, [Played("sweep", playedHz)], 1e-7),
            new SweepSettings()
        );
        Near(reading.Result!, f => Response(f, false), 0.1);
    }

    [Theory]
    [InlineData(44100, 48000)]
    [InlineData(48000, 44100)]
    [InlineData(24000, 22050)]
    public void A_file_that_says_a_wrong_rate_is_refused(double true_, double said)
    {
        var recorded = Recorded(Played("sweep", true_), true_, f => Response(f, false), 0);
        var reading = RelativeSweep.Of(new Recording(said, recorded.Channels, 1e-7), new Recording(true_, [Played("sweep", true_)], 1e-7), new SweepSettings());
        Assert.Null(reading.Result);
        Assert.Contains("rate", reading.Trouble, StringComparison.Ordinal);
    }

    [Fact]
    public void Harmonics_of_a_bent_line_are_those_of_its_polynomial()
    {
        // x + 0.02x² + 0.04x³ at amplitude a: second harmonic 0.02·a/2, third 0.04·a²/4, over a fundamental of 1 + 3·0.04·a²/4 (powers of a sine).
        var played = Played("sweep", Rate);
        var bent = TestSignals.WithSilence(played, Rate, 1, 2).Select(x => x + (0.02 * x * x) + (0.04 * x * x * x)).ToArray();
        var result = RelativeSweep.Of(new Recording(Rate, [bent], 1e-7), new Recording(Rate, [played], 1e-7), new SweepSettings()).Result!;
        const double a = 0.5,
            fundamental = 1 + (0.75 * 0.04 * a * a);
        Assert.Equal(1, result.Harmonics[0].Ratio!.Value / (0.01 * a / fundamental), 0.02);
        Assert.Equal(1, result.Harmonics[1].Ratio!.Value / (0.01 * a * a / fundamental), 0.02);
        Assert.InRange(result.Harmonics[2].Ratio!.Value, 0, 1e-4);
        Assert.Equal(
            1,
            result.HarmonicDistortion!.Value / Math.Sqrt(Math.Pow(result.Harmonics[0].Ratio!.Value, 2) + Math.Pow(result.Harmonics[1].Ratio!.Value, 2)),
            0.01
        );
    }

    [Fact]
    public void More_noise_lowers_the_ratio_by_as_much()
    {
        var played = Played("sweep", Rate);
        var clean = Recorded(played, Rate, f => Response(f, false), 0);
        double At(double db) =>
            RelativeSweep.Of(clean.WithNoise(db, 9), new Recording(Rate, [played], 1e-7), new SweepSettings()).Result!.SignalToNoiseDb!.Value;
        Assert.Equal(20, At(-70) - At(-50), 1.0);
    }

    [Fact]
    public void What_does_not_hold_the_sweep_says_so()
    {
        var played = new Recording(Rate, [Played("sweep", Rate)], 1e-7);
        var random = new Stillwall.Numerics.SeededGenerator(1);
        double[][] wrong =
        [
            new double[48000],
            [.. Enumerable.Range(0, 240000).Select(_ => 0.1 * Synthetic.Gaussian(random))],
            [.. Enumerable.Range(0, 240000).Select(i => 0.3 * Math.Sin(0.05 * i))],
            new double[100],
        ];
        Assert.All(
            wrong,
            w =>
            {
                var reading = RelativeSweep.Of(new Recording(Rate, [w], 1e-7), played, new SweepSettings());
                Assert.Null(reading.Result);
                Assert.NotNull(reading.Trouble);
            }
        );
    }

    [Fact]
    public void A_clipped_recording_is_told()
    {
        var played = Played("sweep", Rate);
        var whole = Recorded(played, Rate, _ => 1, 0);
        var clipped = RelativeSweep.Of(whole.Map((x, _, _) => Math.Clamp(x, -0.2, 0.2)), new Recording(Rate, [played], 1e-7), new SweepSettings());
        Assert.Null(clipped.Trouble);
        Assert.Contains(clipped.Warnings, w => w.Contains("clipped", StringComparison.Ordinal));
    }

    [Fact]
    public void Averages_are_of_energy()
    {
        SweepResult One(double at100, double at50) => new(0, null, null, [], [new SweepPoint(50, at50, null), new SweepPoint(120, at100, null)]);
        var mean = RelativeSweep.Mean([One(0, 0), One(0, -20)]);

        // 10 lg((1 + 0.01)/2).
        Assert.Equal(-2.967, mean.Points[0].MagnitudeDb, 1e-3);
    }

    private static void Near(SweepResult result, Func<double, Complex> response, double tolerance)
    {
        double Truth(OctaveBand b) =>
            10 * Math.Log10(Enumerable.Range(0, 100).Average(i => Math.Pow(response(b.LowerHz + ((b.UpperHz - b.LowerHz) * (i + 0.5) / 100)).Magnitude, 2)));
        var half = Math.Pow(10, 0.3 / 48);
        OctaveBand Band(SweepPoint p) => new(p.FrequencyHz, p.FrequencyHz / half, p.FrequencyHz * half);
        var zero = result.Points.Where(p => p.FrequencyHz is >= 100 and <= 200).Average(p => Truth(Band(p)));
        var looked = result.Points.Where(p => p.FrequencyHz is >= 20 and <= 400).ToList();
        Assert.InRange(looked.Count, 100, 110);
        Assert.All(looked, p => Assert.Equal(Truth(Band(p)) - zero, p.MagnitudeDb, tolerance));
    }

    // A closed box and a low-pass at 700 Hz; with a room, four modes that ring for half a second and more.
    private static Complex Response(double f, bool hasRoom)
    {
        var q = new Complex(0, f / 52);
        var h = q * q / ((q * q) + (q / 0.8) + 1) / new Complex(1, f / 700);
        foreach (var (mode, sign) in hasRoom ? new[] { (34.0, 1), (44, -1), (55, 1), (71, -1) } : [])
        {
            var p = new Complex(0, f / mode);
            h += h * 0.8 * sign * (p * 0.05) / ((p * p) + (p * 0.05) + 1);
        }

        return h;
    }

    private static Recording Recorded(double[] played, double rate, Func<double, Complex> response, double clockPpm)
    {
        var heard = Synthetic.Through(TestSignals.WithSilence(played, rate, 1.234, 2), rate, response);
        return new Recording(rate, [Stretched(heard, 1 + (clockPpm * 1e-6)).Select(x => x / 2).ToArray()], 1e-7);
    }

    // Read at places a little apart, by Lagrange's polynomial through six samples.
    private static double[] Stretched(double[] samples, double by)
    {
        if (by == 1)
        {
            return samples;
        }

        var result = new double[samples.Length];
        for (var i = 3; i < samples.Length && i * by < samples.Length - 4; i++)
        {
            var (at, u) = ((int)(i * by), (i * by) - (int)(i * by));
            for (var j = -2; j <= 3; j++)
            {
                result[i] += samples[at + j] * Enumerable.Range(-2, 6).Where(m => m != j).Aggregate(1.0, (w, m) => w * (u - m) / (j - m));
            }
        }

        return result;
    }

    private static double[] Played(string signal, double rate) =>
        signal switch
        {
            "sweep" => new ExponentialSweep(10, 1000, 10).Samples(rate, -6),
            "wide" => new ExponentialSweep(10, 0.45 * rate, 10).Samples(rate, -6),
            "linear" =>
            [
                .. Enumerable.Range(0, (int)(8 * rate)).Select(i => 0.5 * Math.Sin(2 * Math.PI * ((10 * i / rate) + (1990 / 16.0 * (i / rate) * (i / rate))))),
            ],
            _ => TestSignals.PinkNoise(10, 2000, 8, rate, -6),
        };
}
