using CsCheck;
using Stillwall.Appraisals;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>
/// A ready box without fill against the closed-box system worked out here by other means: the second-order high-pass is searched for its corners and its peak.
/// Source of the relations fc = fs√(1 + Vas/V), Qtc = Qts√(1 + Vas/V) and η0: Small 1972, JAES 20(5), and Small 1972, JAES 20(10) (equation numbers
/// from memory).
/// </summary>
public sealed class ReadyBoxTests
{
    private static readonly Gen<(int Driver, double VolumeM3)> AnyBox = Gen.Select(Gen.Int[0, DemoDrivers.All.Count - 1], Gen.Double[0.003, 0.2]);

    [Fact]
    public void The_demo_driver_in_its_own_Vas_rises_by_the_root_of_two()
    {
        // 30 Hz in 24 L with Vas 24 L: 30√2 Hz; Qts = 5.5·0.475/5.975 = 0.43724.
        var box = Box("Dunlin 8", 0.024);
        Assert.Equal(42.4264, box.SystemResonanceHz!.Value, 0.001);
        Assert.Equal(0.61835, box.SystemQ!.Value, 0.0001);
        Assert.Equal(0.024, box.NetVolumeM3!.Value);
        Assert.Equal(0.024, box.EffectiveVolumeM3!.Value);
    }

    [Fact]
    public void Resonance_and_Q_rise_together_by_the_compliance_ratio() =>
        AnyBox.Sample(
            (driver, volumeM3) =>
            {
                var sheet = DemoDrivers.All[driver];
                var box = Box(sheet.Name, volumeM3);
                var rise = Math.Sqrt(1 + sheet.VasM3!.Value / volumeM3);
                Assert.Equal(sheet.FsHz!.Value * rise, box.SystemResonanceHz!.Value, 1e-6 * box.SystemResonanceHz.Value);
                Assert.Equal(rise / (1 / sheet.Qms!.Value + 1 / sheet.Qes!.Value), box.SystemQ!.Value, 1e-6 * box.SystemQ.Value);
            },
            iter: 30
        );

    [Fact]
    public void A_box_that_misses_the_wished_Q_says_in_which_volume_the_driver_has_it()
    {
        var judged = Appraisal
            .WithoutRemedies(VariedProjects.ReadyBox("Dunlin 8", 0.006) with { Brief = new Brief { Aim = new Aim() } }, DemoDrivers.All)
            .Findings.Single(f => f.Id == "cabinet/system-q-as-wanted");
        Assert.Equal(Verdict.Fails, judged.Verdict);

        // Vas/[(0.707/Qts)² − 1] with Qts = 5.5·0.475/5.975 and 24 L: 14.9 L (Small, JAES 20(10), 1972, solved for the volume).
        Assert.EndsWith("which this driver has in 14.9 L net", judged.Because, StringComparison.Ordinal);
        Assert.Equal(0.707, Box("Dunlin 8", 0.0149).SystemQ!.Value, 0.002);
    }

    [Fact]
    public void The_corners_are_where_the_high_pass_is_3_and_10_decibels_down() =>
        AnyBox.Sample(
            (driver, volumeM3) =>
            {
                var box = Box(DemoDrivers.All[driver].Name, volumeM3);
                var (fc, q) = (box.SystemResonanceHz!.Value, box.SystemQ!.Value);
                Assert.Equal(10 * Math.Log10(0.5), PowerDb(box.F3Hz!.Value / fc, q), 1e-6);
                Assert.Equal(-10, PowerDb(box.F10Hz!.Value / fc, q), 1e-6);
                var peak = Enumerable.Range(1, 40_000).Max(i => PowerDb(i * 0.001, q));
                Assert.Equal(Math.Max(0, peak), box.ResponsePeakDb!.Value, 1e-3);
            },
            iter: 20
        );

    [Fact]
    public void Sensitivity_follows_from_the_reference_efficiency()
    {
        // η0 = 4π²/343.2³·30³·0.024/0.475 = 1.3323e-3; one acoustic watt in a half space at 1 m is 112.16 dB with ρc of 20 °C and 101 325 Pa.
        var box = Box("Dunlin 8", 0.024);
        Assert.Equal(1.3323e-3, box.ReferenceEfficiency!.Value, 5e-7);
        Assert.Equal(112.16 + 10 * Math.Log10(1.3323e-3), box.SensitivityDb!.Value, 0.01);
    }

    [Fact]
    public void The_driver_takes_nothing_from_a_stated_net_volume()
    {
        Assert.All(DemoDrivers.All, sheet => Assert.Equal(0.05, Box(sheet.Name, 0.05).NetVolumeM3!.Value));
    }

    private static Stillwall.Cabinets.BoxFigures Box(string driver, double volumeM3) =>
        new Facts(VariedProjects.ReadyBox(driver, volumeM3), DemoDrivers.All).Box;

    // x⁴/((1 − x²)² + (x/Q)²) of the second-order high-pass, x = f/fc.
    private static double PowerDb(double x, double q) => 10 * Math.Log10(Math.Pow(x, 4) / (Math.Pow(1 - x * x, 2) + x * x / (q * q)));
}
