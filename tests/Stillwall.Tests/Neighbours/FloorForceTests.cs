using CsCheck;
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
    public void At_the_square_root_of_two_the_feet_neither_help_nor_harm() => Gen.Double[0.001, 2].Sample(loss =>
        Assert.Equal(1, FloorForce.Transmissibility(Math.Sqrt(2), loss), 1e-9));

    [Fact]
    public void At_resonance_little_loss_means_much_force() => Assert.Equal(10.05, FloorForce.Transmissibility(1, 0.1), 0.001);

    [Fact]
    public void Softer_feet_pass_on_less_above_their_resonance() => Gen.Select(Gen.Double[1e3, 1e5], Gen.Double[0.1, 0.9]).Sample((stiffness, share) =>
    {
        var f = 1.5 * Math.Sqrt(stiffness / 12) / (2 * Math.PI);
        Assert.True(FloorForce.Of(f, 0.001, 0.05, 12, stiffness * share).FloorN < FloorForce.Of(f, 0.001, 0.05, 12, stiffness).FloorN);
    });

    [Fact]
    public void A_cone_at_rest_cannot_make_the_cabinet_walk() => Assert.Null(FloorForce.Of(40, 0, 0.05, 12, 9000).FrictionRatio);

    [Fact]
    public void Feet_without_stiffness_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => FloorForce.Of(40, 0.005, 0.05, 12, 0));
}
