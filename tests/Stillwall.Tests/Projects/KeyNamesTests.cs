using Stillwall.Appraisals;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Tests.Projects;

/// <summary>A sentence names the thing in a maker's words, and the key in brackets.</summary>
public sealed class KeyNamesTests
{
    [Theory]
    [InlineData("brief.aim.lowest", "lowest note")]
    [InlineData("brief.amplifier.minimum_load", "minimum load of the amplifier")]
    [InlineData("brief.room", "room")]
    [InlineData("driver.vas", "Vas of the driver")]
    [InlineData("driver.bolt_circle", "bolt circle of the driver")]
    [InlineData("cabinet.leak.gap", "gap of the leak")]
    [InlineData("measured.polarity", "polarity against the main speakers")]
    public void A_key_is_called_what_a_maker_calls_the_thing(string key, string words) => Assert.Equal(words, KeyNames.Of(key));

    [Theory]
    [InlineData("driver", "not stated yet: driver")]
    [InlineData("driver.depth", "not stated yet: depth of the driver (driver.depth)")]
    [InlineData("measured.system_q", "not measured yet: Q of the finished cabinet (measured.system_q)")]
    [InlineData("no candidate is called \"Rail 8\"", "no candidate is called \"Rail 8\"")]
    public void What_is_missing_is_told_with_its_key_and_a_reason_stays_as_it_is(string missing, string sentence) =>
        Assert.Equal(sentence, KeyNames.Missing(missing));

    [Fact]
    public void Several_reasons_are_told_together_and_none_twice() =>
        Assert.Equal(
            "not stated yet: driver, room (brief.room); the core is full of struts; not measured yet: fill factor (measured.fill_factor)",
            KeyNames.Together([
                KeyNames.Missing("driver"),
                "the core is full of struts",
                KeyNames.Missing("brief.room"),
                KeyNames.Missing("driver"),
                KeyNames.Missing("measured.fill_factor"),
            ])
        );

    [Fact]
    public void No_finding_makes_a_sentence_of_a_key()
    {
        var bare = new Project { FormatVersion = 1 };
        foreach (var finding in Appraisal.Of(bare, []).Findings.Concat(Appraisal.Of(DemoProject.Project with { Driver = null }, DemoDrivers.All).Findings))
        {
            Assert.DoesNotMatch(@"(^|[^(\w])[a-z]+[._][a-z_.]+ (is|are) ", finding.Because);
        }
    }

    [Fact]
    public void A_former_name_leads_to_the_present_one()
    {
        Assert.Equal(" (now called \"brief.main_speakers.corner\")", NearestWord.Suggest("brief.mains.corner", ProjectKeys.AllKeys()));
        Assert.Equal(" (now called \"cabinet.passive_radiator\")", NearestWord.Suggest("cabinet.second_cone", ProjectKeys.AllKeys()));
        Assert.Equal(" (now called \"main_speakers_ripple\")", NearestWord.Suggest("mains_ripple", ["leak_q", "main_speakers_ripple"]));
        Assert.Equal(" (did you mean \"core\"?)", NearestWord.Suggest("coer", ["core", "name"]));
    }
}
