using System.Numerics;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Stillwall.Neighbours;

namespace Stillwall.Tests.Neighbours;

public class FloorForceTests
{
    [Fact]
    public void Spikes_pass_on_all_of_the_cones_reaction()
    {
        // 0.05 kg at 40 Hz and 5 mm peak: 0.05 · (2π·40)² · 0.005 = 15.791 N; 12 kg at 0.3 hold 35.304 N.
        var force = FloorForce.Of(40, 0.005, 0.05, 12, null);
        Assert.Equal(15.791, force.ReactionN, 0.001);
        Assert.Equal(force.ReactionN, force.FloorN);
        Assert.Equal(0, force.ReRigidDb);
        Assert.Equal(35.304, force.FrictionN, 0.001);
        Assert.Equal(35.304 / 15.791, force.FrictionRatio!.Value, 0.001);
        Assert.Null(force.FeetResonanceHz);
    }

    [Fact]
    public void Soft_pads_isolate_above_the_square_root_of_two_times_their_resonance()
    {
        // 9 kN/m under 12 kg: 4.3587 Hz. At 40 Hz r² = 84.2: 1/(r² − 1) = −38.4 dB without loss.
        var force = FloorForce.Of(40, 0.005, 0.05, 12, 9000, 0.001);
        Assert.Equal(4.3587, force.FeetResonanceHz!.Value, 0.0001);
        Assert.Equal(-38.40, force.ReRigidDb, 0.01);
    }

    [Fact]
    public void At_the_square_root_of_two_the_feet_neither_help_nor_harm() =>
        Gen.Double[0.001, 2].Sample(loss => Assert.Equal(1, FloorForce.Transmissibility(Math.Sqrt(2), loss), 1e-9));

    [Fact]
    public void At_resonance_little_loss_means_much_force() => Assert.Equal(10.05, FloorForce.Transmissibility(1, 0.1), 0.001);

    [Fact]
    public void Softer_feet_pass_on_less_above_their_resonance() =>
        Gen.Select(Gen.Double[1e3, 1e5], Gen.Double[0.1, 0.9])
            .Sample(
                (stiffness, share) =>
                {
                    var f = 1.5 * Math.Sqrt(stiffness / 12) / (2 * Math.PI);
                    Assert.True(FloorForce.Of(f, 0.001, 0.05, 12, stiffness * share).FloorN < FloorForce.Of(f, 0.001, 0.05, 12, stiffness).FloorN);
                }
            );

    [Fact]
    public void A_cone_at_rest_cannot_make_the_cabinet_walk() => Assert.Null(FloorForce.Of(40, 0, 0.05, 12, 9000).FrictionRatio);

    [Fact]
    public void Feet_without_stiffness_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => FloorForce.Of(40, 0.005, 0.05, 12, 0));

    [Fact]
    public void A_cabinet_that_cannot_rock_is_one_mass_on_a_spring() =>
        Gen.Select(Gen.Double[5, 200], Gen.Double[1e3, 1e5], Gen.Double[0.01, 0.5])
            .Sample(
                (f, stiffness, loss) =>
                {
                    var body = Rocking.OfBox(12, 0.33, 0.244, 0.28, stiffness, 1e15);
                    Assert.Equal(FloorForce.Transmissibility(f / (Math.Sqrt(stiffness / 12) / (2 * Math.PI)), loss), body.TransmissibilityRatio(f, loss), 1e-4);
                    Assert.Equal(Math.Sqrt(stiffness / 12) / (2 * Math.PI), body.ResonancesHz().LowerHz, 1e-4);
                }
            );

    [Fact]
    public void A_steady_push_reaches_the_floor_whole_whatever_the_feet() =>
        Gen.Select(Gen.Double[-0.1, 0.1], Gen.Double[1e3, 1e5])
            .Sample(
                (cone, up) => Assert.Equal(1, (Rocking.OfBox(12, 0.33, 0.244, 0.28, 9000, up) with { ConeM = cone }).TransmissibilityRatio(0.01, 0.001), 1e-3)
            );

    [Fact]
    public void Sway_and_rocking_are_the_eigenvalues_that_a_general_solver_finds() =>
        Gen.Select(Gen.Double[1e3, 1e5], Gen.Double[1, 10], Gen.Double[0.1, 0.6], Gen.Double[-0.1, 0.1])
            .Sample(
                (along, ratio, height, cone) =>
                {
                    // MathNet.Numerics: eigenvalues of M⁻¹K and the solution of the damped system.
                    var body = Rocking.OfBox(12, 0.33, height, 0.28, along, along * ratio) with
                    {
                        ConeM = cone,
                    };
                    var (h, turn) = (height / 2, along * ratio * 0.28 * 0.28 / 4);
                    var stiffness = Matrix<double>.Build.DenseOfArray(
                        new[,]
                        {
                            { along, along * h },
                            { along * h, (along * h * h) + turn },
                        }
                    );
                    var mass = Matrix<double>.Build.DenseOfDiagonalArray([12, 12 * ((0.33 * 0.33) + (height * height)) / 12]);
                    var found = (mass.Inverse() * stiffness).Evd().EigenValues.Select(v => Math.Sqrt(v.Real) / (2 * Math.PI)).Order().ToArray();
                    Assert.Equal(found[0], body.ResonancesHz().LowerHz, 1e-6 * found[0]);
                    Assert.Equal(found[1], body.ResonancesHz().UpperHz, 1e-6 * found[1]);

                    var omega = 2 * Math.PI * 32;
                    var moving = (stiffness.ToComplex() * new Complex(1, 0.1)) - (mass * (omega * omega)).ToComplex();
                    var at = moving.Solve(MathNet.Numerics.LinearAlgebra.Vector<Complex>.Build.DenseOfArray([1, -cone]));
                    Assert.Equal((along * new Complex(1, 0.1) * (at[0] + (h * at[1]))).Magnitude, body.TransmissibilityRatio(32, 0.1), 1e-9);
                },
                iter: 50
            );

    [Fact]
    public void Rocking_makes_the_feet_softer()
    {
        var stiff = FloorForce.Of(32, 0.005, 0.05, 12, 9000);
        var free = FloorForce.Of(32, 0.005, 0.05, Rocking.OfBox(12, 0.33, 0.244, 0.28, 9000));
        Assert.True(free.FeetResonanceHz < stiff.FeetResonanceHz);
        Assert.True(free.RockingHz > stiff.FeetResonanceHz);
        Assert.Equal(stiff.ReactionN, free.ReactionN);
        Assert.Equal(free.ReactionN * free.TransmissibilityRatio, free.FloorN, 1e-12);
    }

    [Fact]
    public void Pads_that_are_suggested_have_the_stiffness_they_are_said_to_have()
    {
        // 12 kg at 32 Hz: a third is 10.667 Hz, k = 12 (2π·10.667)² = 53.90 kN/m; four pads of 6 mm and 0.5 MPa: area 1.617 cm² each, 14.35 mm
        // across; 181.9 kPa; T at r = 3 without loss 1/8 = −18.06 dB.
        var pads = PadChoice.Of(12, 32, 1e-6);
        Assert.Equal(53903, pads.StiffnessNPerM, 5.0);
        Assert.Equal(0.01435, pads.DiameterM, 0.00001);
        Assert.Equal(181.9e3, pads.LoadPa, 200.0);
        Assert.Equal(-18.06, pads.ReRigidDb, 0.01);
        Assert.Equal(pads.StiffnessNPerM, 4 * pads.ShearModulusPa * Math.PI * pads.DiameterM * pads.DiameterM / 4 / pads.ThicknessM, 1e-6);
        Assert.Equal(pads.ReRigidDb, FloorForce.Of(32, 0.005, 0.05, 12, pads.StiffnessNPerM, 1e-6).ReRigidDb, 1e-9);
    }
}
