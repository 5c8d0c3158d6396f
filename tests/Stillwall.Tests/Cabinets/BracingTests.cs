using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Tests.Cabinets;

/// <summary>Where braces stand, told once.</summary>
public sealed class BracingTests
{
    private static CabinetGeometry With(int braces) =>
        new Facts(VariedProjects.With(DemoProject.Project, c => c with { Braces = braces }), DemoDrivers.All).Geometry!;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Braces_leave_bays_of_equal_clear_depth(int count)
    {
        var g = With(count);
        double[] ends = [0, .. g.Bracing.FrontsMm.SelectMany(at => new[] { at, at + BuildUp.BraceThickness }), g.InsideDepthM * 1e3];
        Assert.Equal(count, g.Bracing.FrontsMm.Count);
        Assert.All(ends.Chunk(2), bay => Assert.Equal(g.ClearDepthM * 1e3, bay[1] - bay[0], 1e-9));
    }

    [Fact]
    public void Without_braces_the_whole_depth_inside_is_clear()
    {
        var g = With(0);
        Assert.Empty(g.Bracing.FrontsMm);
        Assert.Equal(g.InsideDepthM, g.ClearDepthM, 1e-12);
    }

    [Fact]
    public void A_narrow_cabinet_has_a_frame_of_a_third_of_its_inside_at_most()
    {
        var narrow = new Facts(
            VariedProjects.With(DemoProject.Project, c => c with { Outside = c.Outside! with { WidthM = 0.1 } }),
            DemoDrivers.All
        ).Sizes!;
        var bracing = Bracing.Of(narrow);
        Assert.Equal((narrow.Width - 2 * narrow.Wall) / 3, bracing.Window.Width, 1e-9);
    }
}
