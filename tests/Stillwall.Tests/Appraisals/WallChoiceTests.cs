using Stillwall.Appraisals;
using Stillwall.Appraisals.WallChoices;

namespace Stillwall.Tests.Appraisals;

public class WallChoiceTests
{
    private static readonly WallChoice Demo = WallChoice.Of(DemoProject.Project, DemoDrivers.All);

    [Fact]
    public void The_first_kind_is_the_project_as_it_is_appraised()
    {
        var (kind, appraisal) = (Demo.Kinds[0], Appraisal.WithoutRemedies(DemoProject.Project, DemoDrivers.All));
        Assert.Equal(4, Demo.Kinds.Count);
        Assert.Equal(appraisal.Mass.FinishedKg, kind.FinishedKg);
        Assert.Equal(appraisal.Box.NetVolumeM3, kind.NetVolumeM3);
        Assert.Equal(appraisal.Cost.TotalPrice, kind.TotalPrice);
        Assert.Equal(appraisal.Print.PrintSeconds, kind.PrintSeconds);
        Assert.Equal(appraisal.Findings.Where(f => f.Stage is "Walls" or "Pour" && f.Verdict == Verdict.Fails).Select(f => f.Topic), kind.Reasons);
    }

    [Fact]
    public void Cast_makes_walls_heavy_and_quiet_and_a_single_skin_leaves_the_most_room()
    {
        var (cast, single, filled, lattice) = (Demo.Kinds[0], Demo.Kinds[1], Demo.Kinds[2], Demo.Kinds[3]);
        Assert.Equal(["double skin + cast", "single printed skin", "lattice + cast", "lattice alone"], Demo.Kinds.Select(k => k.Kind));
        Assert.True(single.NetVolumeM3 > cast.NetVolumeM3);
        Assert.True(single.WallToConeDb > cast.WallToConeDb + 20);
        Assert.True(lattice.FinishedKg < filled.FinishedKg);
        Assert.True(lattice.StiffnessNm < filled.StiffnessNm);
        Assert.Null(lattice.CanBePoured);
        Assert.False(filled.CanBePoured);
        Assert.Contains("mix flows into the cavity", filled.Reasons);
    }

    // The search is held by the appraisal: with its change nothing of walls and pour fails; with a millimetre less of core something does.
    [Fact]
    public void The_lightest_wall_passes_and_a_millimetre_less_does_not()
    {
        var light = Demo.Lightest!;
        var cabinet = DemoProject.Project.Cabinet! with { CoreM = light.CoreM, Braces = light.Braces, StrutPitchM = light.StrutPitchM };
        Assert.Empty(Failing(light.CoreM));
        Assert.Equal(light.HeldBy, Failing(light.CoreM - 0.001));
        Assert.NotEmpty(light.HeldBy);
        Assert.Equal(light.FinishedKg, new Facts(DemoProject.Project with { Cabinet = cabinet }, DemoDrivers.All).Mass.FinishedKg!.Value, 1e-9);
        Assert.True(!light.StatedPasses || light.SavedKg >= 0);

        List<string> Failing(double core) => [.. Appraisal.WithoutRemedies(DemoProject.Project with { Cabinet = cabinet with { CoreM = Math.Round(core * 1000) / 1000 } }, DemoDrivers.All)
            .Findings.Where(f => f.Stage is "Walls" or "Pour" && f.Verdict == Verdict.Fails).Select(f => f.Topic)];
    }

    [Fact]
    public void A_ready_box_has_no_walls_to_choose()
    {
        var choice = WallChoice.Of(DemoProject.Project with { Cabinet = new() { NetVolumeM3 = 0.012 } }, DemoDrivers.All);
        Assert.Empty(choice.Kinds);
        Assert.Null(choice.Lightest);
    }
}
