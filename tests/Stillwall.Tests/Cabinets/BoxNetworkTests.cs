using System.Numerics;
using CsCheck;
using Stillwall.Cabinets;
using Stillwall.Materials;

namespace Stillwall.Tests.Cabinets;

public sealed class BoxNetworkTests
{
    // Thiele 1971: alignment rows 1 to 9 (from memory); the corner recomputed independently from the fourth-order polynomial.
    [Theory]
    [InlineData(2.000, 10.48, .180, 2.682)]
    [InlineData(1.730, 7.48, .209, 2.278)]
    [InlineData(1.420, 4.46, .259, 1.770)]
    [InlineData(1.230, 2.95, .303, 1.447)]
    [InlineData(1.000, 1.41421356, .38268343, 1.000)]
    [InlineData(.927, 1.055, .415, .867)]
    [InlineData(.829, .729, .466, .728)]
    [InlineData(.757, .559, .518, .643)]
    [InlineData(.716, .485, .557, .599)]
    public void Lossless_vented_alignments_have_the_corner_of_Thiele(double tuning, double compliance, double q, double corner)
    {
        var network = Vented(tuning, compliance, q);
        var f3 = CornerOf(network);
        Assert.InRange(f3 / network.Driver.FsHz / corner, 1 - 0.001, 1 + 0.001);
    }

    [Fact]
    public void The_maximally_flat_alignment_is_half_the_power_at_the_resonance()
    {
        var network = Vented(1, Math.Sqrt(2), 0.38268343236509);
        var passband = network.At(1e6, 1).LevelDb();
        Assert.InRange(network.At(network.Driver.FsHz, 1).LevelDb() - passband + (10 * Math.Log10(2)), -1e-4, 1e-4);
    }

    // Mass conservation in the box: whatever leaves it is what its air gives up.
    [Fact]
    public void All_that_flows_outward_is_what_the_air_in_the_box_gives_up() =>
        Gen.Select(SampleDrivers.AnyBox, SampleDrivers.AnyFrequency)
            .Sample(
                (network, frequency) =>
                {
                    var point = network.At(frequency, 2.83);
                    var given =
                        new Complex(0, -2 * Math.PI * frequency * Leakage.BoxComplianceM3Pa(network.EffectiveVolumeM3, Air.Reference)) * point.BoxPressurePa;
                    var scale = network.Driver.SdM2 * point.ConeVelocityMS.Magnitude;
                    Assert.InRange((point.OutwardVolumeVelocityM3S - given).Magnitude / scale, 0, 1e-9);
                }
            );

    // Conservation of energy: the power drawn is the power lost in the coil, the suspension, the fibre, the leak, the ports and the passive radiator.
    [Fact]
    public void The_power_drawn_is_the_sum_of_the_losses() =>
        Gen.Select(SampleDrivers.AnyBox, SampleDrivers.AnyFrequency)
            .Sample(
                (network, frequency) =>
                {
                    var point = network.At(frequency, 3);
                    var current = 3 / point.ImpedanceOhm;
                    var pressure = Square(point.BoxPressurePa);
                    var lost =
                        (Square(current) * network.Driver.ReOhm)
                        + (Square(point.ConeVelocityMS) * (network.Driver.RmsKgS + network.FillLossKgS))
                        + (pressure / network.LeakResistancePaSM3!.Value);
                    if (network.Port is { } port)
                    {
                        lost += Square(point.PortVelocityMS!.Value * port.TotalAreaM2) * port.ResistancePaSM3;
                    }

                    if (network.PassiveRadiator is { } cone)
                    {
                        lost += Square(point.PassiveRadiatorVelocityMS!.Value) * cone.RmsKgS;
                    }

                    Assert.InRange(3 * current.Real / lost, 1 - 1e-9, 1 + 1e-9);
                    Assert.True(point.ImpedanceOhm.Real >= network.Driver.ReOhm, "the coil's resistance is the least that is left");
                }
            );

    [Fact]
    public void A_leak_too_fine_to_matter_is_an_airtight_box() =>
        Gen.Select(SampleDrivers.Any, SampleDrivers.AnyVolume, SampleDrivers.AnyFrequency)
            .Sample(
                (driver, volume, frequency) =>
                {
                    var tight = new BoxNetwork(driver, volume, Air.Reference);
                    var leaky = tight with { LeakResistancePaSM3 = 1e15 };
                    Assert.InRange(leaky.At(frequency, 1).LevelDb() - tight.At(frequency, 1).LevelDb(), -1e-5, 1e-5);
                }
            );

    [Fact]
    public void A_wide_open_leak_is_the_driver_in_free_air_and_takes_the_sound_away()
    {
        var open = new BoxNetwork(SampleDrivers.Dunlin, 0.012, Air.Reference) { LeakResistancePaSM3 = 1e-3 };
        var peak = open.At(SampleDrivers.Dunlin.FsHz, 1).ImpedanceOhm.Real;
        Assert.InRange(peak / (3.55 * (1 + (5.5 / 0.475))), 0.9999, 1.0001);
        Assert.True(open.At(30, 1).LevelDb() < new BoxNetwork(SampleDrivers.Dunlin, 0.012, Air.Reference).At(30, 1).LevelDb() - 60);
    }

    [Fact]
    public void Two_drivers_in_twice_the_box_are_six_decibels_louder_at_the_same_voltage_and_move_as_one_does() =>
        Gen.Select(SampleDrivers.Any, SampleDrivers.AnyVolume, SampleDrivers.AnyFrequency)
            .Sample(
                (driver, volume, frequency) =>
                {
                    var one = new BoxNetwork(driver, volume, Air.Reference).At(frequency, 2);
                    var two = new BoxNetwork(driver.InParallel(2), 2 * volume, Air.Reference).At(frequency, 2);
                    Assert.InRange(two.LevelDb() - one.LevelDb() - (20 * Math.Log10(2)), -1e-9, 1e-9);
                    Assert.InRange(two.ExcursionPeakM / one.ExcursionPeakM, 1 - 1e-9, 1 + 1e-9);
                    Assert.InRange(two.ImpedanceOhm.Magnitude / one.ImpedanceOhm.Magnitude, 0.5 - 1e-9, 0.5 + 1e-9);
                }
            );

    [Fact]
    public void Twice_the_voltage_doubles_everything_but_the_impedance() =>
        Gen.Select(SampleDrivers.AnyBox, SampleDrivers.AnyFrequency)
            .Sample(
                (network, frequency) =>
                {
                    var (one, two) = (network.At(frequency, 1), network.At(frequency, 2));
                    Assert.InRange(two.ExcursionPeakM / one.ExcursionPeakM, 2 - 1e-12, 2 + 1e-12);
                    Assert.Equal(one.ImpedanceOhm, two.ImpedanceOhm);
                }
            );

    // Positive voltage pushes the cone out: far below the resonance the cone follows the voltage, and the air in the box is drawn thin.
    [Fact]
    public void A_slow_positive_voltage_holds_the_cone_out_and_the_box_under_suction()
    {
        var point = new BoxNetwork(SampleDrivers.Dunlin, 0.012, Air.Reference).At(0.01, 1);
        var position = point.ConeVelocityMS / new Complex(0, 2 * Math.PI * 0.01);
        Assert.InRange(position.Phase, -0.001, 0.001);
        Assert.InRange(Math.Abs(point.BoxPressurePa.Phase), Math.PI - 0.001, Math.PI);
    }

    // Volume displacement of 1 litre peak, p = ρω²V/(2πr√2): 100.59, 107.63 and 116.50 dB, recomputed independently with ρ = 1.204.
    [Theory]
    [InlineData(20, 100.59)]
    [InlineData(30, 107.63)]
    [InlineData(50, 116.50)]
    public void A_litre_of_air_is_as_loud_as_the_simple_source_says(double frequency, double level)
    {
        var velocity = 2 * Math.PI * frequency * 0.001 / Math.Sqrt(2);
        Assert.InRange(FarField.LevelDb(FarField.HalfSpacePressurePa(velocity, frequency, 1, Air.Reference).Magnitude) - level, -0.006, 0.006);
    }

    private static double Square(Complex value) => (value.Real * value.Real) + (value.Imaginary * value.Imaginary);

    private static BoxNetwork Vented(double tuning, double compliance, double q)
    {
        // No mechanical loss to speak of: then Qts is Qes, and Bl sets it.
        const double mass = 0.05,
            suspension = 0.0006,
            area = 0.004;
        var force = Math.Sqrt(Math.Sqrt(mass / suspension) * 6 / q);
        var driver = SampleDrivers.Mechanical(6, 0, force, mass, suspension, 1e-9, 0.02);
        var volume = driver.VasM3 / compliance;
        var tuned = 2 * Math.PI * tuning * driver.FsHz;
        var length = area / (Air.Reference.DensityKgM3 * tuned * tuned * Leakage.BoxComplianceM3Pa(volume, Air.Reference));
        return new BoxNetwork(driver, volume, Air.Reference) { Port = new PortPath(area / 2, length, 2) };
    }

    private static double CornerOf(BoxNetwork network)
    {
        var wanted = network.At(1e6, 1).LevelDb() - (10 * Math.Log10(2));
        double high = 1000;
        while (network.At(high * 0.99, 1).LevelDb() >= wanted)
        {
            high *= 0.99;
        }

        var low = high * 0.99;
        for (var i = 0; i < 40; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = network.At(middle, 1).LevelDb() < wanted ? (middle, high) : (low, middle);
        }

        return low;
    }
}
