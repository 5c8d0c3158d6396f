using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Appraisals.WallChoices;

namespace Stillwall.Tests.Appraisals;

public class WallChoiceTests
{
    private static readonly WallChoice Demo = WallChoice.Of(DemoProject.Project, DemoDrivers.All);

    private static readonly Facts Facts = new(DemoProject.Project, DemoDrivers.All);

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

        List<string> Failing(double core) =>
            [
                .. Appraisal
                    .WithoutRemedies(DemoProject.Project with { Cabinet = cabinet with { CoreM = Math.Round(core * 1000) / 1000 } }, DemoDrivers.All)
                    .Findings.Where(f => f.Stage is "Walls" or "Pour" && f.Verdict == Verdict.Fails)
                    .Select(f => f.Topic),
            ];
    }

    // Passage of a gyroid 0.42 L − t (from memory), the cell as large as the core and the sheet two nozzles thick; bending stiffness of one plate
    // goes with t³, a single skin being both skins in one.
    [Theory]
    [InlineData("lattice + cast", nameof(WallKind.PassageM), "cabinet.core", 0.42 * 12 / (0.42 * 12 - 1.2))]
    [InlineData("lattice + cast", nameof(WallKind.PassageM), "brief.printer.nozzle", -1.2 / (0.42 * 12 - 1.2))]
    [InlineData("single printed skin", nameof(WallKind.StiffnessNm), "cabinet.outer_skin", 3 * 0.5)]
    [InlineData("single printed skin", nameof(WallKind.StiffnessNm), "cabinet.inner_skin", 3 * 0.5)]
    public void A_kind_s_figure_moves_with_what_is_stated_as_its_closed_form_does(string kind, string property, string key, double exponent) =>
        Assert.Equal(exponent, Of(kind, property).Inputs.Single(i => i.Key == key).Sensitivity!.Value, 2e-3);

    [Fact]
    public void A_core_does_nothing_to_a_single_printed_skin() =>
        Assert.DoesNotContain(Of("single printed skin", nameof(WallKind.StiffnessNm)).Inputs, i => i.Key == "cabinet.core");

    // Of the first kind, which is the project itself, as the appraisal's own result; of the others, that one figure computed alone is the one of the
    // comparison.
    [Fact]
    public void Every_figure_of_every_kind_tells_what_one_per_cent_does()
    {
        var mass = Why.Of(Facts, "mass.finished_kg").Inputs.ToDictionary(i => i.Key, i => i.Sensitivity);
        Assert.All(
            Of("double skin + cast", nameof(WallKind.FinishedKg)).Inputs.Where(i => mass.ContainsKey(i.Key)),
            i => Assert.Equal(mass[i.Key] ?? 0, i.Sensitivity ?? 0, 1e-9)
        );
        foreach (var kind in Demo.Kinds)
        {
            foreach (
                var property in typeof(WallKind)
                    .GetProperties()
                    .Where(p => p.GetCustomAttributes(typeof(Stillwall.Numerics.ComputedByAttribute), true).Length > 0 && p.GetValue(kind) is double)
            )
            {
                var why = Of(kind.Kind, property.Name);
                Assert.Equal((double)property.GetValue(kind)!, why.Value);
                Assert.True(why.Inputs.Any(i => i.Sensitivity is not null), $"{kind.Kind}: {property.Name}");
            }
        }
    }

    [Fact]
    public void The_lightest_wall_says_what_was_tried_and_what_decided()
    {
        var (light, why) = (Demo.Lightest!, LightestWalls.Explain(Facts, Demo.Lightest!, nameof(LightestWall.StrutPitchM)));
        Assert.Equal(light.StrutPitchM, why.Value);

        // Five pitches and the stated one among them, three numbers of braces: one wall of each at least, 27 cores at most.
        Assert.InRange(light.TriedCount, 5 * 3, 6 * 3 * 27);
        Assert.Contains($"{light.TriedCount} walls tried", why.Formula, StringComparison.Ordinal);
        Assert.All(light.HeldBy, topic => Assert.Contains(topic, why.Formula, StringComparison.Ordinal));
        Assert.All(why.Inputs, i => Assert.Null(i.Sensitivity));
        Assert.Throws<ArgumentException>(() => LightestWalls.Explain(Facts, light, nameof(LightestWall.StatedPasses)));
    }

    private static Explanation Of(string kind, string property) => WallKinds.Explain(Facts, Demo.Kinds.Single(k => k.Kind == kind), property);

    [Fact]
    public void A_ready_box_has_no_walls_to_choose()
    {
        var choice = WallChoice.Of(DemoProject.Project with { Cabinet = new() { NetVolumeM3 = 0.012 } }, DemoDrivers.All);
        Assert.Empty(choice.Kinds);
        Assert.Null(choice.Lightest);
    }
}
