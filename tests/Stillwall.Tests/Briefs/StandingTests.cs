using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Briefs;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Tests.Briefs;

/// <summary>What is left about the cabinet, against sums by hand.</summary>
public sealed class StandingTests
{
    private static readonly Facts Demo = new(DemoProject.Project, DemoDrivers.All);

    // By hand: (420 − 244)/2; 520 − 244 − 8 of feet; 20 + 50; Pythagoras over 1.8 m and 2.55 m.
    [Fact]
    public void The_demo_leaves_what_a_tape_measure_finds()
    {
        var s = Demo.Standing;
        Assert.Equal(0.088, s.BesideM!.Value, 1e-9);
        Assert.Equal(0.268, s.AboveM!.Value, 1e-9);
        Assert.Equal(0.070, s.BehindM, 1e-9);
        Assert.Equal(3.12130, s.SeatM!.Value, 1e-5);
    }

    [Fact]
    public void What_is_not_stated_leaves_it_open_and_a_cabinet_that_is_too_wide_leaves_less_than_nothing()
    {
        Assert.Equal(new Standing(null, null, 0, null), Standing.Of(new Brief(), 0.2, 0.2, 0));
        Assert.Equal(-0.01, Standing.Of(new Brief { Spot = new Spot { WidthM = 0.2 } }, 0.22, null, 0).BesideM!.Value, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Standing.Of(new Brief(), 0.2, 0.2, -1));
    }

    // Derivatives by hand: d ln((W − w)/2) = W/(W − w) d ln W.
    [Fact]
    public void Each_says_why()
    {
        var beside = Why.Of(Demo, "standing.beside_m");
        Assert.Equal(420.0 / (420 - 244), beside.Inputs.Single(i => i.Key == "brief.spot.width").Sensitivity!.Value, 1e-6);
        Assert.Equal(-244.0 / (420 - 244), beside.Inputs.Single(i => i.Key == "cabinet.outside.width").Sensitivity!.Value, 1e-6);
        Assert.Equal(50.0 / 70, Why.Of(Demo, "standing.behind_m").Inputs.Single(i => i.Key == "brief.spot.plug_space").Sensitivity!.Value, 1e-6);
    }
}
