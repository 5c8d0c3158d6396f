using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Tests.Cabinets;

/// <summary>The feet stand at one list of places: what is drawn is what is judged.</summary>
public sealed class FootingTests
{
    // By hand: 244 mm wide and high, R 100: feet 22 mm from the middle, the middle of the mass 122 mm + 8 mm up: arctan(22/130) = 9.6°, and 10° is asked.
    [Fact]
    public void A_wide_rounding_brings_the_feet_together_and_it_tips()
    {
        var round = Rounded(0.1);
        var finding = Appraisal.WithoutRemedies(round, DemoDrivers.All).Findings.Single(f => f.Id == "walls/stands-without-tipping");
        Assert.Equal(Math.Atan(22.0 / 130) * 180 / Math.PI, finding.Value!.Value, 0.05);
        Assert.Equal(Verdict.Fails, finding.Verdict);
    }

    [Theory]
    [InlineData(0.005)]
    [InlineData(0.03)]
    [InlineData(0.1)]
    public void The_feet_are_drawn_where_the_cabinet_is_held_to_stand(double radiusM)
    {
        var facts = new Facts(Rounded(radiusM), DemoDrivers.All);
        var (sizes, cabinet) = (facts.Sizes!, facts.Project.Cabinet!);
        var drawn = PartDrawings
            .Of(facts.PartJob!)
            .Where(p => p.Name.StartsWith("foot", StringComparison.Ordinal))
            .Select(p => p.Place!.Apply(new Stillwall.Shapes.MeshPoint(0, 0, 0)))
            .Select(c => (Math.Round((double)c.X / 1000, 3), Math.Round((double)c.Y / 1000, 3)))
            .Order();
        var places = Footing.Of(sizes, cabinet.Feet).Places(sizes).Select(c => (Math.Round(c.XMm, 3), Math.Round(c.YMm, 3))).Order();
        Assert.Equal(places, drawn);
    }

    [Fact]
    public void Without_feet_it_stands_on_the_flat_of_its_bottom()
    {
        var sizes = new Facts(Rounded(0.03), DemoDrivers.All).Sizes!;
        Assert.Equal(new Footing(30, 0, 0), Footing.Of(sizes, null));
    }

    private static Project Rounded(double radiusM) =>
        DemoProject.Project with
        {
            Cabinet = DemoProject.Project.Cabinet! with { Outside = DemoProject.Project.Cabinet.Outside! with { CornerRadiusM = radiusM } },
        };
}
