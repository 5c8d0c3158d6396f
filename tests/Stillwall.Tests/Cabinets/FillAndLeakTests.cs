using CsCheck;
using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Projects;

namespace Stillwall.Tests.Cabinets;

public sealed class FillAndLeakTests
{
    // Recomputed independently from plane Poiseuille flow with 1.813e-5 Pa·s: slit 100 × 0.1 mm, 10 mm deep.
    private static readonly Air Handbook = Air.Reference with { ViscosityPaS = 1.813e-5 };

    [Fact]
    public void A_slit_resists_as_viscous_flow_says()
    {
        Assert.InRange(Leakage.SlitPaSM3(1e-4, 0.1, 0.01, Handbook) / 2.176e7, 1 - 3e-4, 1 + 3e-4);
    }

    [Fact]
    public void The_leak_of_a_thirty_litre_box_has_the_Q_and_the_corner_worked_out_by_hand()
    {
        var slit = Leakage.SlitPaSM3(1e-4, 0.1, 0.01, Handbook);
        var compliance = Leakage.BoxComplianceM3Pa(0.03, Handbook);
        Assert.InRange(compliance / 2.1154e-7, 1 - 1e-4, 1 + 1e-4);
        Assert.InRange(1 / (2 * Math.PI * slit * compliance), 0.03453, 0.03463);
        Assert.InRange(Leakage.LeakQ(40, 0.03, slit, Handbook), 1156, 1158);
    }

    // The network's air in the box and its leak are a first-order circuit: the leak's Q is the ratio of their currents.
    [Fact]
    public void Leak_Q_is_the_ratio_of_the_flows_into_the_air_and_through_the_leak()
    {
        var network = new BoxNetwork(SampleDrivers.Dunlin, 0.012, Air.Reference) { LeakResistancePaSM3 = 3e5 };
        var point = network.At(50, 1);
        var throughLeak = point.BoxPressurePa.Magnitude / 3e5;
        Assert.Equal(point.OutwardVolumeVelocityM3S.Magnitude / throughLeak, Leakage.LeakQ(50, 0.012, 3e5, Air.Reference), 9);
    }

    [Fact]
    public void A_measured_leak_beats_a_stated_one_and_a_half_stated_slit_is_unknown()
    {
        var slit = new Leak
        {
            GapM = 1e-4,
            LengthM = 0.7,
            DepthM = 0.008,
        };
        Assert.Equal(Leakage.SlitPaSM3(1e-4, 0.7, 0.008, Air.Reference), Leakage.Of(slit, null, Air.Reference).ResistancePaSM3);
        Assert.Equal(5e5, Leakage.Of(slit, 5e5, Air.Reference).ResistancePaSM3);
        Assert.Equal(4e5, Leakage.Of(slit with { ResistancePaSM3 = 4e5 }, null, Air.Reference).ResistancePaSM3);
        Assert.Equal(["cabinet.leak.depth"], Leakage.Of(slit with { DepthM = null }, null, Air.Reference).Missing);
        Assert.Null(Leakage.Of(null, null, Air.Reference).ResistancePaSM3);
        Assert.Empty(Leakage.Of(null, null, Air.Reference).Missing);
    }

    // An independent method: the cone creeping back is integrated in small steps of time, and its 63 % read off.
    [Fact]
    public void The_hold_test_finds_the_leak_that_let_the_cone_creep()
    {
        const double resistance = 1.7e7,
            volume = 0.013;
        var driver = SampleDrivers.Dunlin;
        var compliance = driver.SdM2 * driver.SdM2 * driver.CmsMPerN;

        // Pressed in and drained, then let go: the suspension pulls outward and thins the air; the leak lets air in until both are at rest.
        // Volumes are swept inward from rest: displaced = the cone's, taken = air lost and not yet returned.
        double taken = 1e-4,
            time = 0,
            first = 0;
        const double step = 1e-5;
        while (true)
        {
            // Force balance without mass: displaced/compliance = −pressure, pressure = −(taken − displaced)·p0/volume, isothermal.
            var stiffness = 101325 / volume;
            var displaced = taken * stiffness / (stiffness + (1 / compliance));
            first = time == 0 ? displaced : first;
            if (displaced <= first / Math.E)
            {
                break;
            }

            taken -= displaced / compliance / resistance * step;
            time += step;
        }

        Assert.InRange(HoldTest.ResistancePaSM3(time, volume, driver, Air.Reference) / resistance, 1 - 1e-3, 1 + 1e-3);
    }

    [Fact]
    public void A_hold_test_too_fast_or_too_slow_for_a_stopwatch_is_only_a_bound()
    {
        var network = new BoxNetwork(SampleDrivers.Dunlin, 0.015, Air.Reference);
        var (fast, timed, slow) = (HoldTest.Of(0.1, 0.013, network), HoldTest.Of(2, 0.013, network), HoldTest.Of(60, 0.013, network));
        Assert.Equal((LeakBound.AtMost, LeakBound.None, LeakBound.AtLeast), (fast.Bound, timed.Bound, slow.Bound));
        Assert.Equal(10, slow.LeakResistancePaSM3 / fast.LeakResistancePaSM3, 9);
        Assert.Equal(4, timed.LeakQ / fast.LeakQ, 9);
    }

    [Fact]
    public void More_fibre_makes_the_box_seem_larger_but_never_beyond_the_isothermal_limit() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[0.001, 20])
            .Sample((density, more) => FibreFill.Factor(density) is >= 1 and < 1.4 && FibreFill.Factor(density + more) > FibreFill.Factor(density));

    // The stated rule by hand, at its common packing of 16 kg/m³: 1 + 0.25(1 − e⁻²) = 1.2162.
    [Fact]
    public void Fibre_by_mass_displaces_air_enlarges_the_box_and_adds_loss()
    {
        var effect = FibreFill.Of(0.02, new Fill { MassKg = 0.32 }, null)!;
        Assert.Equal(1.2162, effect.FillFactor, 4);
        Assert.Equal(1.2162 * (0.02 - (0.32 / 1380)), effect.EffectiveVolumeM3, 5);
        Assert.True(effect.IsLossy);
        Assert.Equal(16, effect.DensityKgM3!.Value, 9);
    }

    [Fact]
    public void A_stated_factor_takes_nothing_off_and_adds_no_loss_and_a_measured_one_beats_it()
    {
        var stated = FibreFill.Of(0.02, new Fill { Factor = 1.2 }, null)!;
        Assert.Equal((1.2, 0.024, false), (stated.FillFactor, stated.EffectiveVolumeM3, stated.IsLossy));
        Assert.Equal(1.1 * 0.02, FibreFill.Of(0.02, new Fill { Factor = 1.2 }, 1.1)!.EffectiveVolumeM3, 12);
        Assert.Equal(1.1 * (0.02 - (0.138 / 1380)), FibreFill.Of(0.02, new Fill { MassKg = 0.138 }, 1.1)!.EffectiveVolumeM3, 12);
        Assert.Equal(new FillEffect(1, 0, 0.02, null, false), FibreFill.Of(0.02, null, null));
    }

    [Fact]
    public void Fibre_that_leaves_no_air_has_no_effect_to_state()
    {
        Assert.Null(FibreFill.Of(0.001, new Fill { MassKg = 1.38 }, null));
        Assert.Null(FibreFill.Of(-0.001, null, null));
    }

    [Fact]
    public void Fibre_brings_the_mechanical_Q_down_to_its_limit_and_no_further() =>
        Gen.Select(SampleDrivers.Any, SampleDrivers.AnyVolume)
            .Sample(
                (driver, volume) =>
                {
                    var loss = FibreFill.LossKgS(driver, volume, Air.Reference);
                    var alone = driver.Qms * Math.Sqrt(1 + ClosedBox.ComplianceRatio(driver, volume, Air.Reference));
                    var filled = alone * driver.RmsKgS / (driver.RmsKgS + loss);
                    Assert.InRange(filled / Math.Min(alone, 3.5), 1 - 1e-9, 1 + 1e-9);
                }
            );
}
