namespace Stillwall.Files.Tests.Hostile;

public class CampaignTests
{
    [Fact]
    public void A_hostile_case_is_refused_in_short_lines_or_appraised_in_finite_numbers() => Trials.Run(0, Trials.InSuite, Campaign.Case);

    // All fifty thousand take a quarter of an hour: -explicit only -class "*CampaignTests", in an optimised build.
    [Theory(Explicit = true)]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Each_of_fifty_thousand_hostile_cases_is_refused_in_short_lines_or_appraised_in_finite_numbers(int fifth) =>
        Trials.Run(fifth * Trials.Cases / 5, Trials.Cases / 5, Campaign.Case);
}
