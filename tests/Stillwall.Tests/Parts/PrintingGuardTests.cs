using CsCheck;
using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Parts;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Tests.Parts;

/// <summary>What is laid over air, and whether the pieces go together.</summary>
public sealed class PrintingGuardTests
{
    private static readonly CabinetGeometry Demo = CabinetGeometry.Of(CabinetSizes.Of(DemoProject.Project.Cabinet, null)!);

    private static CabinetGeometry Drawn(Func<CabinetSizes, CabinetSizes> change) => CabinetGeometry.Of(change(Demo.Sizes));

    // On the drawn sleeve: a strut on the lower side reaches as far from the skin as the slope has climbed, to a stair of two layers.
    [Fact]
    public void The_slopes_of_the_struts_climb_as_far_as_they_rise()
    {
        var sleeve = DrawnCabinets.Demo.Parts.Single(p => p.Name == "outer sleeve 1 of 2").Solid;
        var place = Demo.Sizes.Outline.Inset(Demo.Sizes.OuterSkin + Demo.Sizes.Core / 2).At(Demo.Sleeve.StrutPitch / 2);
        foreach (var climbed in new[] { 3.0, 6.0, 9.0 })
        {
            bool Reaches(double far) =>
                sleeve.Layers.Single(l => l.BottomMm < climbed - 0.01 && climbed - 0.01 < l.TopMm).Region.Contains(place.X, Demo.Sizes.OuterSkin + far);
            Assert.True(Reaches(climbed - 0.6));
            Assert.False(Reaches(climbed + 0.6));
        }

        Assert.Equal(45, OverAir.Of(Demo, 0).Single(p => p.AngleDeg is not null).AngleDeg!.Value, 1e-9);
    }

    // A strut of the lower side, as wide as its head.
    [Fact]
    public void The_wings_of_a_head_reach_past_the_web_on_both_sides()
    {
        var strut = Demo.Sleeve.Struts.Select(h => h.Extent!.Value).First(e => e is { Top: < 16.1, Left: > 60, Right: < 184 });
        var head = (strut.Right - strut.Left) * 1e-3;
        var wings = OverAir.Of(Demo, 0).Single(p => p.What.Contains("heads", StringComparison.Ordinal));
        Assert.Equal(head - Demo.Sizes.Web * 1e-3, wings.SpanM!.Value, 2e-6);
    }

    [Fact]
    public void An_accent_groove_is_half_as_deep_as_the_skin_and_a_ledge_counts_twice() =>
        Assert.Equal(Demo.Sizes.OuterSkin * 1e-3, OverAir.Of(Demo, 3).Single(p => p.What.Contains("groove", StringComparison.Ordinal)).SpanM!.Value, 1e-12);

    [Fact]
    public void A_single_printed_wall_without_accents_is_laid_over_nothing() => Assert.Empty(OverAir.Of(Drawn(s => s with { Core = 0 }), 0));

    [Fact]
    public void A_core_without_room_for_heads_has_none_to_carry() =>
        Assert.DoesNotContain(OverAir.Of(Drawn(s => s with { Core = 6 }), 0), p => p.What.Contains("heads", StringComparison.Ordinal));

    // 0.3 to 0.5 % is told of PETG (from memory): one piece at either end of it.
    [Theory]
    [InlineData(0.1, 0.0004)]
    [InlineData(0.2, 0.0005)]
    [InlineData(0.3, 0.0006)]
    public void Two_pieces_of_petg_differ_by_what_lies_between_the_least_and_the_most_that_it_shrinks(double lengthM, double clearanceM)
    {
        var shorter = lengthM * (1 - 0.003) - lengthM * (1 - 0.005);
        Assert.Equal(shorter, JointClearance.UnevenM(lengthM, SkinMaterials.Petg.ShrinkageRatio), 1e-12);
        Assert.Equal(clearanceM, BuildUp.Clearance(lengthM * 1e3) * 1e-3, 1e-12);
    }

    [Fact]
    public void Petg_pieces_go_together_up_to_300_mm() =>
        Gen.Double[0.05, 0.6]
            .Sample(length => Assert.Equal(length <= 0.3, BuildUp.Clearance(length * 1e3) * 1e-3 - JointClearance.UnevenM(length, 0.004) >= 0), iter: 200);

    [Fact]
    public void The_heads_in_their_slots_have_the_gap_that_is_drawn_on_either_side()
    {
        var heads = JointClearance.Of(Demo, 0, 0.004).Single(j => j.What.Contains("heads", StringComparison.Ordinal));
        Assert.Equal(0.0006, heads.ClearanceM, 1e-12);
        Assert.Equal(0.244 - 2 * 0.014, heads.LengthM, 1e-12);
        Assert.Equal(0.216 * 0.002, heads.UnevenM, 1e-12);
    }

    [Fact]
    public void A_plastic_that_shrinks_more_leaves_less_clearance() =>
        Gen.Select(Gen.Double[0, 0.02], Gen.Double[1e-4, 0.02])
            .Sample(
                (less, more) =>
                    Assert.All(
                        JointClearance.Of(Demo, 1, less).OrderBy(j => j.What).Zip(JointClearance.Of(Demo, 1, less + more).OrderBy(j => j.What)),
                        p => Assert.True(p.Second.SpareM < p.First.SpareM)
                    ),
                iter: 50
            );

    [Fact]
    public void The_tightest_joint_comes_first()
    {
        var joints = JointClearance.Of(Demo, 3, 0.007);
        Assert.Equal(3, joints.Count);
        Assert.Equal(joints.OrderBy(j => j.SpareM), joints);
    }

    [Fact]
    public void A_negative_length_number_or_shrinkage_is_the_caller_s_mistake()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => JointClearance.UnevenM(0.1, -0.001));
        Assert.Throws<ArgumentOutOfRangeException>(() => JointClearance.Of(Demo, -1, 0.004));
        Assert.Throws<ArgumentOutOfRangeException>(() => OverAir.Of(Demo, -1));
    }
}
