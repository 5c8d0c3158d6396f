using System.Numerics;
using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Proofs.Impedances;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Signals;
using Stillwall.Tests.Cabinets;

namespace Stillwall.Tests.Proofs;

/// <summary>Recordings made from known circuits, with the troubles of real ones.</summary>
public sealed class ImpedanceTests
{
    private const double Rate = 24000,
        Reference = 10;

    private static readonly ImpedanceModel Demo = new(3.55, 30, 5.5, 3.55 * 5.5 / 0.475, 1.2e-3),
        Sharp = new(6, 22, 15, 6 * 15 / 0.4, 0.8e-3),
        Small = new(3.2, 90, 3, 3.2 * 3 / 0.7, 0.1e-3),
        Boxed = new(3.55, 52, 3.2, 3.55 * 3.2 / 0.8, 1.2e-3);

    public static TheoryData<string> Sources => ["sweep", "short sweep", "wide sweep", "bare sweep", "pink noise", "white noise"];

    [Theory]
    [MemberData(nameof(Sources))]
    public void A_clean_recording_gives_the_circuit_back(string source)
    {
        foreach (var model in new[] { Demo, Sharp, Small, Boxed })
        {
            Near(model, ImpedanceRecording.Of(Recorded(model, Source(source, Rate), Rate), Reference), 0.005);
        }
    }

    [Theory]
    [MemberData(nameof(Sources))]
    public void Noise_and_hum_55_dB_down_cost_less_than_three_per_cent(string source)
    {
        foreach (var model in new[] { Demo, Boxed })
        {
            var reading = ImpedanceRecording.Of(Recorded(model, Source(source, Rate), Rate).WithNoise(-64, 3).WithHum(-64).Rounded(16), Reference);
            Near(model, reading, 0.015);
            Assert.Contains(reading.Warnings, w => w.StartsWith("there is hum (", StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData(44100)]
    [InlineData(48000)]
    [InlineData(96000)]
    public void Every_usual_rate_is_read(double rate) =>
        Near(Demo, ImpedanceRecording.Of(Recorded(Demo, Source("short sweep", rate), rate).Rounded(24), Reference), 0.005);

    [Fact]
    public void A_lossy_coil_is_recognised_and_does_not_move_the_rest()
    {
        var lossy = Demo with { InductanceH = 0.4e-3, LossyInductanceH = 0.9e-3, LossOhm = 4 };
        var reading = ImpedanceRecording.Of(Recorded(lossy, Source("sweep", Rate), Rate).WithNoise(-70, 5), Reference);
        Near(lossy, reading, 0.01);
        Assert.True(reading.Result!.Model.LossOhm > 0);
    }

    [Fact]
    public void Swapped_channels_are_found_and_put_right()
    {
        var r = Recorded(Demo, Source("sweep", Rate), Rate).WithNoise(-70, 1);
        var reading = ImpedanceRecording.Of(new Recording(Rate, [r.Channels[1], r.Channels[0]], r.StepFraction), Reference);
        Near(Demo, reading, 0.005);
        Assert.Contains(reading.Warnings, w => w.Contains("swapped", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, "left")]
    [InlineData(1, "right")]
    public void A_clipped_channel_is_named(int channel, string name)
    {
        var r = Recorded(Demo, Source("sweep", Rate), Rate);
        var most = 0.85 * r.Channels[channel].Max();
        var reading = ImpedanceRecording.Of(r.Map((x, c, _) => c == channel ? Math.Clamp(x, -most, most) : x).Rounded(16), Reference);
        Assert.Contains(reading.Warnings, w => w.Contains($"{name} channel", StringComparison.Ordinal) && w.Contains("clipped", StringComparison.Ordinal));
        Assert.DoesNotContain(ImpedanceRecording.Of(r.Rounded(16), Reference).Warnings, w => w.Contains("clipped", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, "left")]
    [InlineData(1, "right")]
    public void A_silent_channel_is_named(int channel, string name)
    {
        var reading = ImpedanceRecording.Of(Recorded(Demo, Source("sweep", Rate), Rate).Map((x, c, _) => c == channel ? 0 : x).WithNoise(-95, 2), Reference);
        Assert.Null(reading.Result);
        Assert.Contains($"{name} channel", reading.Trouble, StringComparison.Ordinal);
    }

    [Fact]
    public void An_offset_is_taken_off_and_told()
    {
        var reading = ImpedanceRecording.Of(Recorded(Demo, Source("sweep", Rate), Rate).Map((x, c, _) => x + (c == 0 ? 0.05 : -0.08)), Reference);
        Near(Demo, reading, 0.005);
        Assert.Equal(2, reading.Warnings.Count(w => w.Contains("off zero", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_recording_of_the_resistor_alone_takes_out_how_the_channels_differ()
    {
        // The right channel is 3 % louder and has a high-pass of its own at 4 Hz.
        static Complex Card(double f) => 1.03 * new Complex(0, f / 4) / new Complex(1, f / 4);
        var source = Source("sweep", Rate);
        Recording Through(Func<double, Complex> ratio) => new(Rate, [source, Synthetic.Through(source, Rate, f => Card(f) * ratio(f))], 1e-7);
        var (measured, alone) = (Through(f => Demo.AtOhm(f) / (Demo.AtOhm(f) + Reference)), Through(_ => 1));
        Near(Demo, ImpedanceRecording.Of(measured, Reference, alone), 0.01);
        var (untold, told) = (ImpedanceRecording.Of(measured, Reference).Result!, ImpedanceRecording.Of(measured, Reference, alone).Result!);
        Assert.InRange(Math.Abs(untold.PeakOhm - Demo.PeakOhm()), 0, 1.3 * untold.Uncertainty.PeakOhm);
        Assert.True(told.Uncertainty.PeakOhm < 0.1 * untold.Uncertainty.PeakOhm);
        var known = Through(_ => 5 / (5 + Reference));
        Near(Demo, ImpedanceRecording.Of(measured, Reference, known, 5), 0.01);
    }

    [Fact]
    public void What_is_no_driver_says_so()
    {
        var source = Source("sweep", Rate);
        Recording[] wrong =
        [
            new(Rate, [source], 0),
            new(Rate, [source, source, source], 0),
            new(Rate, [source[..4000], source[..4000]], 0),
            new(Rate, [source, source], 0),
            new(Rate, [source, Array.ConvertAll(source, x => x / 2)], 0),
            Recorded(Demo, source, Rate).Map((_, c, t) => 0.1 * Math.Sin((2 * Math.PI * 50 * t) + c)),
        ];
        Assert.All(
            wrong,
            r =>
            {
                var reading = ImpedanceRecording.Of(r, Reference);
                Assert.Null(reading.Result);
                Assert.NotNull(reading.Trouble);
            }
        );
    }

    [Theory]
    [InlineData("sweep")]
    [InlineData("pink noise")]
    public void The_bands_hold_the_truth_in_88_to_99_of_a_hundred_recordings(string source)
    {
        var clean = Recorded(Boxed, source == "sweep" ? new ExponentialSweep(5, 1000, 5).Samples(6000, -6) : TestSignals.PinkNoise(5, 1000, 5, 6000, -6), 6000);
        var alone = new Recording(6000, [clean.Channels[0], clean.Channels[0]], 1e-7);
        var truth = Values(Boxed.Figures());
        var inside = new int[truth.Length];
        for (ulong seed = 1; seed <= 200; seed++)
        {
            var result = ImpedanceRecording.Of(clean.WithNoise(-61, seed), Reference, alone).Result!;
            var (found, band) = (Values(result.Figures), Values(result.Uncertainty));
            for (var i = 0; i < truth.Length; i++)
            {
                inside[i] += Math.Abs(found[i] - truth[i]) <= band[i] ? 1 : 0;
            }
        }

        Assert.All(inside, i => Assert.InRange(i, 176, 198));
    }

    [Fact]
    public void An_added_mass_and_a_known_volume_give_the_driver_back()
    {
        var driver = SampleDrivers.Mechanical(3.55, 1.2e-3, 8, 0.05, 6e-4, 1.7, 0.0214);
        var source = Source("sweep", Rate);
        var alone = new Recording(Rate, [source, source], 1e-7);
        ImpedanceResult Heard(Func<double, Complex> impedance) =>
            ImpedanceRecording.Of(Synthetic.Impedance(source, Rate, Reference, impedance).WithNoise(-75, 1), Reference, alone).Result!;

        // The network in so large a box is free air; a heavier cone and a small box are the two other recordings.
        Complex At(double f, double mass, double volume) => new BoxNetwork(driver with { MmsKg = mass }, volume, Air.Reference).At(f, 1).ImpedanceOhm;
        var free = Heard(f => At(f, 0.05, 1e6));
        foreach (
            var found in new[]
            {
                MeasuredDriver.ByMass(free, Heard(f => At(f, 0.08, 1e6)), 0.03, 0.0214, Air.Reference),
                MeasuredDriver.ByVolume(free, Heard(f => At(f, 0.05, 0.012)), 0.012, 0.0214, Air.Reference),
            }
        )
        {
            Assert.Equal(1, found!.VasM3 / driver.VasM3, 0.01);
            Assert.Equal(1, found.MmsKg / 0.05, 0.01);
            Assert.Equal(1, found.BlTM / 8, 0.01);
            Assert.InRange(found.VasBandM3, 1e-7, 0.02 * found.VasM3);
        }

        Assert.Null(MeasuredDriver.ByMass(free, free, 0.03, 0.0214, Air.Reference));
        Assert.Null(MeasuredDriver.ByVolume(free, free, 0.012, 0.0214, Air.Reference));
    }

    [Fact]
    public void The_impedance_in_the_cabinet_tells_its_air_and_its_leak()
    {
        var driver = SampleDrivers.Mechanical(3.55, 1.2e-3, 8, 0.05, 6e-4, 1.7, 0.0214);
        var planned = new BoxNetwork(driver, 0.018, Air.Reference);
        var built = new BoxNetwork(driver, 0.0207, Air.Reference) { LeakResistancePaSM3 = 4e5 };
        var measured = ImpedanceRecording
            .Of(Synthetic.Impedance(Source("sweep", Rate), Rate, Reference, f => built.At(f, 1).ImpedanceOhm).WithNoise(-75, 1), Reference)
            .Result!;
        var proof = CabinetProof.Of(measured, planned, 0.018);
        Assert.Equal(1.15, proof.FillFactor!.Value, 0.01);
        Assert.Equal(1, proof.LeakResistancePaSM3!.Value / 4e5, 0.05);
        Assert.InRange(proof.LeastLeakQ!.Value, 0.9 * proof.LeakQ!.Value, proof.LeakQ.Value);
        var tight = ImpedanceRecording
            .Of(Synthetic.Impedance(Source("sweep", Rate), Rate, Reference, f => (built with { LeakResistancePaSM3 = null }).At(f, 1).ImpedanceOhm), Reference)
            .Result!;
        Assert.True(CabinetProof.Of(tight, planned, 0.018).LeakQ is null or > 300);
    }

    [Fact]
    public void The_model_is_the_network_in_free_air()
    {
        var driver = SampleDrivers.Mechanical(3.55, 1.2e-3, 8, 0.05, 6e-4, 1.7, 0.0214);
        var model = new ImpedanceModel(3.55, driver.FsHz, driver.Qms, 8 * 8 / 1.7, 1.2e-3);
        foreach (var f in new[] { 5.0, 20, 29, 60, 500 })
        {
            var expected = new BoxNetwork(driver, 1e6, Air.Reference).At(f, 1).ImpedanceOhm;
            Assert.Equal(0, (model.AtOhm(f) - expected).Magnitude / expected.Magnitude, 1e-5);
        }

        Assert.Equal(driver.Qes, model.ElectricalQ, 1e-9);
    }

    private static double[] Values(ImpedanceFigures f) => [f.ResonanceHz, f.QMechanical, f.QElectrical, f.QTotal, f.DcResistanceOhm, f.InductanceH, f.PeakOhm];

    private static void Near(ImpedanceModel truth, ImpedanceReading reading, double tolerance)
    {
        Assert.True(reading.Result is not null, reading.Trouble);
        Assert.All(
            Values(reading.Result.Figures).Zip(Values(truth.Figures())).Select((p, i) => (p, i)),
            p => Assert.Equal(1, p.p.First / p.p.Second, p.i == 5 ? 2 * tolerance : tolerance)
        );
    }

    private static Recording Recorded(ImpedanceModel model, double[] source, double rate) => Synthetic.Impedance(source, rate, Reference, model.AtOhm);

    private static double[] Source(string name, double rate) =>
        name switch
        {
            "sweep" => new ExponentialSweep(5, 1000, 10).Samples(rate, -6),
            "short sweep" => new ExponentialSweep(10, 2000, 5).Samples(rate, -6),
            "wide sweep" => new ExponentialSweep(10, 0.45 * rate, 10).Samples(rate, -6),
            "bare sweep" =>
            [
                .. Enumerable
                    .Range(0, (int)(8 * rate))
                    .Select(i => 0.5 * Math.Sin(2 * Math.PI * 10 * 8 / Math.Log(100) * (Math.Exp(i / rate * Math.Log(100) / 8) - 1))),
            ],
            "pink noise" => TestSignals.PinkNoise(5, 2000, 10, rate, -6),
            _ => White((int)(10 * rate)),
        };

    private static double[] White(int count)
    {
        var random = new Stillwall.Numerics.SeededGenerator(5);
        return [.. Enumerable.Range(0, count).Select(_ => 0.15 * Synthetic.Gaussian(random))];
    }
}
