using Stillwall.Files.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Hostile;

public class AcceptedCornersTests
{
    private const int Corners = Trials.Cases / 10;

    [Fact]
    public void A_project_at_the_ends_of_what_is_accepted_is_read_back_as_it_was_written() => Trials.Run(0, Corners, seed =>
    {
        var text = ProjectWriter.Write(Accepted.Draw(new Dice(seed), DemoProject.Project));
        var reading = ProjectReader.Read(text);
        return reading.Project is not { } project ? $"refused: {reading.Faults[0]}"
            : ProjectWriter.Write(project) != text ? "changes when it is read and written"
            : null;
    });

    [Fact]
    public void A_project_at_the_ends_of_what_is_accepted_is_appraised_in_finite_numbers() => Trials.Run(0, Trials.Appraised, seed =>
        Checked.Appraisal(Accepted.Draw(new Dice(seed), DemoProject.Project), DemoDrivers.All, withRemedies: seed % 20 == 19));
}
