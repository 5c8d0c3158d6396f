using CsCheck;
using Stillwall.Walls;

namespace Stillwall.Tests.Walls;

public class HandlingTests
{
    // Standard gravity 9.80665 m/s² (CGPM 1901).
    [Fact]
    public void Lifting_puts_twice_the_weight_on_a_joint()
    {
        Assert.Equal(2 * 12 * 9.80665, Joints.LiftLoadN(12), 1e-9);
    }

    [Fact]
    public void A_bed_of_sealant_carries_by_its_area_and_bare_plastic_carries_nothing()
    {
        var load = Joints.LiftLoadN(12);
        // 240 mm square, 10 mm wide, 0.1 MPa: 4 × 0.24 × 0.01 m² → 960 N.
        Assert.Equal(960 / load, Joints.Of("rear", 0.0096, 0.1e6, load).SafetyFactor, 1e-9);
        Assert.Equal(0, Joints.Of("inner skin", 0.05, 0, load).SafetyFactor);
    }

    [Fact]
    public void A_heavier_cabinet_has_less_safety_at_every_joint()
    {
        Gen.Select(Gen.Double[1, 40], Gen.Double[1.01, 3], Gen.Double[1e-4, 0.1])
            .Sample(
                (mass, more, area) =>
                    Assert.Equal(
                        more,
                        Joints.Of("j", area, 0.5e6, Joints.LiftLoadN(mass)).SafetyFactor
                            / Joints.Of("j", area, 0.5e6, Joints.LiftLoadN(mass * more)).SafetyFactor,
                        1e-9
                    )
            );
    }

    // The short torque rule worked by hand: 0.8 N·m on M4 → 1000 N.
    [Fact]
    public void The_torque_rule_gives_the_pull_of_a_screw()
    {
        Assert.Equal(1000, Inserts.PreloadN(0.8, 0.004), 1e-9);
        Assert.Equal(1000 + (200 * 0.0214 + 40) / 8, Inserts.LoadN(1000, 200, 0.0214, 40, 8), 1e-9);
    }

    [Fact]
    public void An_insert_of_unknown_size_has_no_pull_out_force()
    {
        Assert.Equal(600, Inserts.PullOutN(0.004));
        Assert.Equal(1000, Inserts.PullOutN(0.005));
        Assert.Null(Inserts.PullOutN(0.0063));
        Assert.Equal(4, Inserts.SafetyFactor(600, 150), 1e-9);
    }

    // By hand: eight screws of 150 N less 200 N outwards on a ring of 186 to 222 mm, π/4·(0.222² − 0.186²) = 0.011536 m².
    [Fact]
    public void The_gasket_keeps_what_the_screws_pull_less_what_the_cone_pushes()
    {
        Assert.Equal(1000 / 0.0115358, Gasket.PressurePa(150, 8, 200, 0.186, 0.222), 5.0);
        Assert.Equal(0, Gasket.PressurePa(20, 8, 200, 0.186, 0.222));
        Assert.Throws<ArgumentOutOfRangeException>(() => Gasket.PressurePa(150, 8, 200, 0.222, 0.186));
    }

    // By hand: 3 kg at the front and 1 kg at 0.4 m balance at 0.1 m.
    [Fact]
    public void Masses_balance_at_their_centre()
    {
        Assert.Equal(0.1, Tilt.CentreDepthM([new MassAt(3, 0), new MassAt(1, 0.4)]), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => Tilt.CentreDepthM([new MassAt(0, 0.2)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tilt.CentreDepthM([new MassAt(-1, 0.2), new MassAt(2, 0)]));
    }

    [Fact]
    public void A_cube_tips_at_half_a_right_angle_and_a_taller_box_sooner()
    {
        Assert.Equal(45, Tilt.TippingDeg(0.15, 0.15), 1e-9);
        Gen.Select(Gen.Double[0.05, 0.5], Gen.Double[0.05, 0.5], Gen.Double[1.01, 3])
            .Sample((height, half, more) => Assert.True(Tilt.TippingDeg(height * more, half) < Tilt.TippingDeg(height, half)));
    }

    // The figure of practice: 0.3 mm on 240 mm for 0.2 % of setting and some twelve kelvin of cooling with 43e-6 between PETG and gypsum.
    [Fact]
    public void An_unkeyed_skin_of_240_mm_parts_by_three_tenths()
    {
        Assert.Equal(0.0003, SkinGap.GapM(0.24, 0.002, 43e-6, 11.6), 1e-6);
        Assert.Equal(SkinGap.GapM(0.24, 0.002, 43e-6, 11.6), SkinGap.GapM(0.24, -0.002, 43e-6, 11.6));
    }

    [Fact]
    public void The_lightest_core_is_the_first_millimetre_that_passes()
    {
        Gen.Int[1, 60]
            .Sample(first =>
            {
                var found = LightestCore.FindM(t => t > (first - 0.5) / 1000, 0.001, 0.04);
                Assert.Equal(first <= 40 ? first / 1000.0 : null, found);
            });
    }

    [Fact]
    public void The_lightest_core_of_a_real_wall_passes_and_one_millimetre_less_does_not()
    {
        bool Passes(double core) =>
            PanelModel
                .Solve([new Layer(0.002, 2e9, 0.38, 1270), new Layer(core, 4.3e9, 0.2, 1130), new Layer(0.002, 2e9, 0.38, 1270)], 0.3, 0.24, PanelEdges.Clamped)
                .Slipping.ModesHz[0] > 400;
        var found = LightestCore.FindM(Passes, 0.002, 0.05)!.Value;
        Assert.True(Passes(found) && !Passes(found - LightestCore.StepM));
    }

    [Fact]
    public void Nonsense_is_refused_with_its_range()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Joints.LiftLoadN(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tilt.TippingDeg(double.NaN, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => LightestCore.FindM(_ => true, 0.02, 0.01));
    }
}
