namespace Stillwall.Files.Tests.Hostile;

public class CampaignTests
{
    [Fact]
    public void A_hostile_case_is_refused_in_short_lines_or_appraised_in_finite_numbers() => Run(0, Trials.InSuite);

    // All fifty thousand take some minutes: -explicit only -class "*CampaignTests", in an optimised build.
    [Theory(Explicit = true)]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Each_of_fifty_thousand_hostile_cases_is_refused_in_short_lines_or_appraised_in_finite_numbers(int fifth) =>
        Run(fifth * Trials.Cases / 5, Trials.Cases / 5);

    private static void Run(int from, int count)
    {
        var campaign = new Campaign();
        Trials.Run(from, count, campaign.Case);
        TestContext.Current.TestOutputHelper?.WriteLine($"{campaign.AppraisedCount} of {count} appraised");
        Assert.True(campaign.AppraisedCount > count / 10, "nearly all cases are refused in reading, so that nothing is tried beyond");
    }
}
