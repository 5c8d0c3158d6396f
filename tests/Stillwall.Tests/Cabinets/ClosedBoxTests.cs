using CsCheck;
using Stillwall.Cabinets;
using Stillwall.Drivers;
using Stillwall.Materials;

namespace Stillwall.Tests.Cabinets;

public sealed class ClosedBoxTests
{
    // Second-order high-pass: values follow from Small 1972, JAES 20(10), recomputed independently from the polynomial to four digits.
    [Theory]
    [InlineData(0.5, 1.5538, 0.6801, 0)]
    [InlineData(0.57735027, 1.2720, 0.6273, 0)]
    [InlineData(0.70710678, 1.0000, 0.5774, 0)]
    [InlineData(0.8, 0.8972, 0.5567, 0.213)]
    [InlineData(1.0, 0.7862, 0.5314, 1.249)]
    [InlineData(1.1, 0.7567, 0.5239, 1.833)]
    [InlineData(1.2, 0.7358, 0.5183, 2.412)]
    public void Corners_and_peak_follow_the_published_table(double q, double f3, double f10, double peakDb)
    {
        Assert.InRange(ClosedBox.F3Hz(1, q) - f3, -1e-4, 1e-4);
        Assert.InRange(ClosedBox.F10Hz(1, q) - f10, -1e-4, 1e-4);
        Assert.InRange(ClosedBox.ResponsePeakDb(q) - peakDb, -6e-4, 6e-4);
    }

    // 112.09 dB: ρ = 1.18 kg/m³ and c = 345 m/s as in Small 1972, JAES 20(5); 112.16 dB: 1.204 and 343.2.
    [Theory]
    [InlineData(1.18, 345, 112.09)]
    [InlineData(1.204, 343.2, 112.16)]
    public void One_acoustic_watt_is_as_loud_as_published(double density, double speed, double level)
    {
        var air = new Air(20, 101325, speed, density, 1.81e-5);
        Assert.InRange(ClosedBox.AcousticWattLevelDb(air) - level, -0.005, 0.005);
    }

    // The constant of Small 1972, JAES 20(5): η₀ = 9.64e-10·fs³·Vas/Qes with Vas in litres and c = 345 m/s; 9.614e-7 per m³ to four digits.
    [Fact]
    public void Efficiency_has_the_constant_of_Small()
    {
        var air = new Air(20, 101325, 345, 1.18, 1.81e-5);
        var driver = SampleDrivers.Dunlin;
        var constant = ClosedBox.ReferenceEfficiency(driver, air) * driver.Qes / (Math.Pow(driver.FsHz, 3) * driver.VasInM3(air));
        Assert.InRange(constant, 9.6135e-7, 9.6145e-7);
    }

    [Fact]
    public void A_larger_box_lowers_the_resonance_and_the_Q() =>
        Gen.Select(SampleDrivers.Any, SampleDrivers.AnyVolume, Gen.Double[1.01, 4])
            .Sample(
                (driver, volume, growth) =>
                {
                    var small = ClosedBox.ComplianceRatio(driver, volume, Air.Reference);
                    var large = ClosedBox.ComplianceRatio(driver, volume * growth, Air.Reference);
                    return ClosedBox.ResonanceHz(driver.FsHz, large) < ClosedBox.ResonanceHz(driver.FsHz, small)
                        && ClosedBox.SystemQ(driver.Qts, large) < ClosedBox.SystemQ(driver.Qts, small);
                }
            );

    [Fact]
    public void The_corners_lie_where_the_network_has_fallen_by_as_much() =>
        Gen.Select(SampleDrivers.Any, SampleDrivers.AnyVolume)
            .Sample(
                (driver, volume) =>
                {
                    var lossless = driver with { LeH = 0 };
                    var network = new BoxNetwork(lossless, volume, Air.Reference);
                    var ratio = ClosedBox.ComplianceRatio(lossless, volume, Air.Reference);
                    var (fc, q) = (ClosedBox.ResonanceHz(lossless.FsHz, ratio), ClosedBox.SystemQ(lossless.Qts, ratio));
                    var passband = PassbandDb(network);
                    Assert.InRange(network.At(ClosedBox.F3Hz(fc, q), 1).LevelDb() - passband + (10 * Math.Log10(2)), -1e-6, 1e-6);
                    Assert.InRange(network.At(ClosedBox.F10Hz(fc, q), 1).LevelDb() - passband + 10, -1e-6, 1e-6);
                }
            );

    // The efficiency comes from Small's formula, the level from the network: two ways to one number.
    [Fact]
    public void Sensitivity_is_what_the_network_gives_far_above_the_resonance() =>
        Gen.Select(SampleDrivers.Any, SampleDrivers.AnyVolume)
            .Sample(
                (driver, volume) =>
                {
                    var network = new BoxNetwork(driver with { LeH = 0 }, volume, Air.Reference);
                    var sensitivity = ClosedBox.SensitivityDb(ClosedBox.ReferenceEfficiency(driver, Air.Reference), Air.Reference);
                    Assert.InRange(PassbandDb(network) + (10 * Math.Log10(driver.ReOhm)) - sensitivity, -1e-6, 1e-6);
                }
            );

    // Small 1972, JAES 20(10) (from memory): |H| of x²/(x² − 1 − jx/Q) with x = f/fc.
    [Fact]
    public void The_relative_response_of_the_closed_form_is_that_of_the_network() =>
        Gen.Select(SampleDrivers.Any, SampleDrivers.AnyVolume, SampleDrivers.AnyFrequency)
            .Sample(
                (driver, volume, frequency) =>
                {
                    var network = new BoxNetwork(driver with { LeH = 0 }, volume, Air.Reference);
                    var ratio = ClosedBox.ComplianceRatio(driver, volume, Air.Reference);
                    var (x, q) = (frequency / ClosedBox.ResonanceHz(driver.FsHz, ratio), ClosedBox.SystemQ(driver.Qts, ratio));
                    var expected = 20 * Math.Log10(x * x / Math.Sqrt(Math.Pow(x * x - 1, 2) + Math.Pow(x / q, 2)));
                    Assert.InRange(network.At(frequency, 1).LevelDb() - PassbandDb(network) - expected, -1e-6, 1e-6);
                }
            );

    [Fact]
    public void The_volume_for_a_wanted_Q_gives_that_Q() =>
        Gen.Select(SampleDrivers.Any, Gen.Double[1.01, 4])
            .Sample(
                (driver, growth) =>
                {
                    var volume = ClosedBox.VolumeForSystemQM3(driver, driver.Qts * growth, Air.Reference)!.Value;
                    Assert.Equal(driver.Qts * growth, ClosedBox.SystemQ(driver.Qts, ClosedBox.ComplianceRatio(driver, volume, Air.Reference)), 9);
                }
            );

    [Fact]
    public void The_volume_for_a_wanted_corner_gives_that_corner_and_a_smaller_box_does_not() =>
        Gen.Select(SampleDrivers.Any, Gen.Double[0.5, 4])
            .Sample(
                (driver, share) =>
                {
                    var wanted = driver.FsHz * share;
                    Check(ClosedBox.VolumeForF10M3(driver, wanted, Air.Reference), v => F10(driver, v), wanted);
                    Check(ClosedBox.VolumeForF3M3(driver, wanted, Air.Reference), v => F3(driver, v), wanted);
                }
            );

    [Fact]
    public void No_box_is_offered_for_a_corner_that_none_reaches()
    {
        var driver = SampleDrivers.Dunlin;
        var reached = Enumerable.Range(0, 2000).Min(k => F10(driver, 1e-4 * Math.Pow(10, k / 200.0)));
        Assert.Null(ClosedBox.VolumeForF10M3(driver, reached * 0.999, Air.Reference));
        Assert.NotNull(ClosedBox.VolumeForF10M3(driver, reached * 1.001, Air.Reference));
        Assert.Null(ClosedBox.VolumeForSystemQM3(driver, driver.Qts, Air.Reference));
    }

    [Fact]
    public void Warm_air_is_as_stiff_as_cold_air_at_the_same_pressure()
    {
        // ρc² = γp: the temperature cancels, the pressure does not.
        var (cold, warm, thin) = (Air.At(0, 101325), Air.At(40, 101325), Air.At(20, 80000));
        Assert.Equal(ClosedBox.ComplianceRatio(SampleDrivers.Dunlin, 0.01, cold), ClosedBox.ComplianceRatio(SampleDrivers.Dunlin, 0.01, warm), 9);
        Assert.True(ClosedBox.ComplianceRatio(SampleDrivers.Dunlin, 0.01, thin) < ClosedBox.ComplianceRatio(SampleDrivers.Dunlin, 0.01, cold));
    }

    [Fact]
    public void A_caller_hears_what_is_accepted()
    {
        var fault = Assert.Throws<ArgumentOutOfRangeException>(() => ClosedBox.F3Hz(40, 0));
        Assert.Equal("systemQ", fault.ParamName);
        Assert.Contains("greater than zero", fault.Message, StringComparison.Ordinal);
    }

    // Far enough above the resonance for the roll-off to have vanished.
    private static double PassbandDb(BoxNetwork network) => network.At(1e8, 1).LevelDb();

    private static void Check(double? volume, Func<double, double> corner, double wanted)
    {
        if (volume is { } found)
        {
            Assert.InRange(corner(found) / wanted, 1 - 1e-6, 1 + 1e-6);
            Assert.True(corner(found * 0.99) > wanted, "a smaller box reaches as low");
        }
    }

    private static double F10(Driver driver, double volume) => Corner(driver, volume, ClosedBox.F10Hz);

    private static double F3(Driver driver, double volume) => Corner(driver, volume, ClosedBox.F3Hz);

    private static double Corner(Driver driver, double volume, Func<double, double, double> of)
    {
        var ratio = ClosedBox.ComplianceRatio(driver, volume, Air.Reference);
        return of(ClosedBox.ResonanceHz(driver.FsHz, ratio), ClosedBox.SystemQ(driver.Qts, ratio));
    }
}
