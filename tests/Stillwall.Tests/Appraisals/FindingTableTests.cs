using Stillwall.Appraisals;

namespace Stillwall.Tests.Appraisals;

/// <summary>What an appraisal must judge, stage by stage, as a table.</summary>
public sealed class FindingTableTests
{
    private static readonly IReadOnlyList<Finding> Demo = Appraisal.WithoutRemedies(DemoProject.Project, DemoDrivers.All).Findings;

    // Stage, topic, id, unit of value and limit.
    public static TheoryData<string, string, string, string> Table =>
        new()
        {
            { "Brief", "cabinet fits the spot", "brief/cabinet-fits-the-spot", "m" },
            { "Brief", "weight for the hands that lift it", "brief/weight-for-the-hands-that-lift-it", "kg" },
            { "Brief", "cost", "brief/cost", "EUR" },
            { "Driver", "parameters agree with one another", "driver/parameters-agree-with-one-another", "1" },
            { "Driver", "fits the front", "driver/fits-the-front", "m" },
            { "Driver", "clear of braces, skins and rear", "driver/clear-of-braces-skins-and-rear", "m" },
            { "Driver", "amplifier can drive it", "driver/amplifier-can-drive-it", "ohm" },
            { "Cabinet", "system Q as wanted", "cabinet/system-q-as-wanted", "1" },
            { "Cabinet", "reaches the lowest note", "cabinet/reaches-the-lowest-note", "Hz" },
            { "Cabinet", "loud enough, and what gives out first", "cabinet/loud-enough-and-what-gives-out-first", "dB" },
            { "Cabinet", "airtight enough", "cabinet/airtight-enough", "1" },
            { "Cabinet", "fill sensible", "cabinet/fill-sensible", "kg/m3" },
            { "Cabinet", "first air mode inside above the working range", "cabinet/first-air-mode-inside-above-the-working-range", "Hz" },
            { "Cabinet", "tolerance of drivers", "cabinet/tolerance-of-drivers", "1" },
            { "Walls", "panel resonance above the working range", "walls/panel-resonance-above-the-working-range", "Hz" },
            { "Walls", "wall sound below the cone", "walls/wall-sound-below-the-cone", "dB" },
            { "Walls", "not heavier than it need be", "walls/not-heavier-than-it-need-be", "m" },
            { "Walls", "core keyed to the skins", "walls/core-keyed-to-the-skins", "1" },
            { "Walls", "inner skin stays on", "walls/inner-skin-stays-on", "m" },
            { "Walls", "lifted by the front, hung by the rear", "walls/lifted-by-the-front-hung-by-the-rear", "1" },
            { "Walls", "driver screws hold", "walls/driver-screws-hold", "1" },
            { "Walls", "stands without tipping", "walls/stands-without-tipping", "deg" },
            { "Parts", "every part fits the printer", "parts/every-part-fits-the-printer", "m" },
            { "Parts", "thin walls stand while printing", "parts/thin-walls-stand-while-printing", "1" },
            { "Parts", "bridges and overhangs", "parts/bridges-and-overhangs", "m" },
            { "Parts", "pieces go together", "parts/pieces-go-together", "m" },
            { "Parts", "filament in stock", "parts/filament-in-stock", "kg" },
            { "Parts", "longest single print", "parts/longest-single-print", "s" },
            { "Pour", "skins bulge", "pour/skins-bulge", "m" },
            { "Pour", "skins hold", "pour/skins-hold", "Pa" },
            { "Pour", "inner sleeve floats", "pour/inner-sleeve-floats", "kg" },
            { "Pour", "batch within pot life", "pour/batch-within-pot-life", "s" },
            { "Pour", "no cold joint in a lift", "pour/no-cold-joint-in-a-lift", "s" },
            { "Pour", "powder in stock with reserve", "pour/powder-in-stock-with-reserve", "kg" },
            { "Pour", "heat below softening", "pour/heat-below-softening", "degC" },
            { "Pour", "mix flows into the cavity", "pour/mix-flows-into-the-cavity", "m" },
            { "Pour", "dry before it is sealed", "pour/dry-before-it-is-sealed", "1" },
            { "Supplies", "nothing past its date", "supplies/nothing-past-its-date", "d" },
            { "Supplies", "all to hand for each step", "supplies/all-to-hand-for-each-step", "pc" },
            { "Quiet", "neighbour at the everyday level", "quiet/neighbour-at-the-everyday-level", "dB" },
            { "Quiet", "polite level with the equaliser", "quiet/polite-level-with-the-equaliser", "dB" },
            { "Quiet", "force into the floor; does it walk", "quiet/force-into-the-floor-does-it-walk", "dB" },
            { "Quiet", "hearing", "quiet/hearing", "1" },
            { "Quiet", "matches the main speakers", "quiet/matches-the-main-speakers", "dB" },
            { "Proof", "resonance as designed", "proof/resonance-as-designed", "Hz" },
            { "Proof", "Q as designed", "proof/q-as-designed", "1" },
            { "Proof", "core as assumed", "proof/core-as-assumed", "Pa" },
            { "Proof", "polarity matches the main speakers", "proof/polarity-matches-the-main-speakers", "pc" },
            { "Proof", "no rattle", "proof/no-rattle", "pc" },
            { "Logbook", "plan against actual", "logbook/plan-against-actual", "1" },
        };

    [Theory]
    [MemberData(nameof(Table))]
    public void The_demo_is_judged(string stage, string topic, string id, string unit)
    {
        var finding = Assert.Single(Demo, f => f.Id == id);
        Assert.Equal((stage, topic, unit), (finding.Stage, finding.Topic, finding.Unit));
    }

    [Fact]
    public void Nothing_else_is_judged_and_the_order_is_that_of_the_job() => Assert.Equal(Table.Select(row => row.Data.Item3), Demo.Select(f => f.Id));

    [Fact]
    public void Nothing_in_the_demo_fails_and_only_what_is_still_to_be_done_is_unknown()
    {
        Assert.DoesNotContain(Demo, f => f.Verdict == Verdict.Fails);
        Assert.Equal(
            [
                "pour/dry-before-it-is-sealed",
                "proof/resonance-as-designed",
                "proof/q-as-designed",
                "proof/polarity-matches-the-main-speakers",
                "proof/no-rattle",
            ],
            Demo.Where(f => f.Verdict == Verdict.Unknown).Select(f => f.Id)
        );
    }
}
