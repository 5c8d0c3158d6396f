using Stillwall.Files.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Hostile;

public class AcceptedCornersTests
{
    private const int Corners = 5_000;

    [Fact]
    public void A_project_at_the_ends_of_what_is_accepted_is_read_back_as_it_was_written() =>
        Trials.Run(
            0,
            Corners,
            seed =>
            {
                var text = ProjectWriter.Write(Accepted.Draw(new Dice(seed), DemoProject.Project));
                var reading = ProjectReader.Read(text);
                return reading.Project is not { } project ? $"refused: {reading.Faults[0]}"
                    : ProjectWriter.Write(project) != text ? "changes when it is read and written"
                    : null;
            }
        );

    [Fact]
    public void The_very_limit_that_a_message_names_is_accepted()
    {
        var cabinet = DemoProject.Project.Cabinet! with
        {
            Outside = new()
            {
                WidthM = 2,
                DepthM = 2,
                HeightM = 2,
                CornerRadiusM = 1,
            },
            CoreM = 0.2,
            StrutPitchM = 0.32,
        };
        Assert.Empty(ProjectReader.Read(ProjectWriter.Write(DemoProject.Project with { Cabinet = cabinet })).Faults);
    }

    [Fact]
    public void Braces_that_fill_the_depth_are_a_fault()
    {
        var cabinet = DemoProject.Project.Cabinet! with
        {
            Outside = new()
            {
                WidthM = 0.244,
                DepthM = 0.11,
                HeightM = 0.244,
                CornerRadiusM = 0.03,
            },
            Braces = 10,
        };
        var fault = Assert.Single(ProjectReader.Read(ProjectWriter.Write(DemoProject.Project with { Cabinet = cabinet })).Faults);
        Assert.Equal("cabinet.braces", fault.Path);
    }

    [Fact]
    public void A_price_for_next_to_nothing_is_a_fault()
    {
        var text = ProjectWriter.Write(
            DemoProject.Project with
            {
                Prices =
                [
                    new()
                    {
                        Item = "filament",
                        Cost = 22,
                        Per = new(0, Stillwall.Projects.Dimension.Mass),
                    },
                ],
            }
        );
        Assert.Equal("prices[0].per", Assert.Single(ProjectReader.Read(text).Faults).Path);
    }
}
