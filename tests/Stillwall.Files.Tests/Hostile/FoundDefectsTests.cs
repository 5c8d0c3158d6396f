using Stillwall.Appraisals;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>What hostile cases found once, each by itself.</summary>
public class FoundDefectsTests
{
    [Fact]
    public void Bays_of_a_few_millimetres_between_braces_are_appraised() =>
        AssertAppraised(c => c with { Outside = c.Outside! with { DepthM = 0.13 }, Braces = 10 });

    [Fact]
    public void Eight_drivers_that_run_into_one_another_are_appraised_with_little_drawing() =>
        AssertAppraised(c =>
            c with
            {
                Outside = new Outside
                {
                    WidthM = 2,
                    DepthM = 2,
                    HeightM = 2,
                    CornerRadiusM = 1,
                },
                DriverCount = 8,
                StrutPitchM = 0.024,
            }
        );

    [Fact]
    public void A_core_of_a_millimetre_is_appraised() => AssertAppraised(c => c with { CoreM = 0.001, StrutPitchM = 0.01 });

    private static void AssertAppraised(Func<Cabinet, Cabinet> change)
    {
        var project = DemoProject.Project with { Cabinet = change(DemoProject.Project.Cabinet!) };
        Assert.Empty(ProjectChecks.Of(project));
        Assert.Null(Checked.Appraisal(Appraisal.Of(project, DemoDrivers.All)));
    }
}
