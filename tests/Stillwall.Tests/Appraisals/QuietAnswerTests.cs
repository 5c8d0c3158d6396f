using Stillwall.Appraisals;
using Stillwall.Neighbours;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>The neighbour question in a few numbers, worked by hand.</summary>
public sealed class QuietAnswerTests
{
    private static readonly Project At62 = new()
    {
        FormatVersion = 1,
        Brief = new Brief { Everyday = new Everyday { LevelDb = 62 } },
    };

    // 4 dB over at 50 Hz, give or take 13; 1 dB under at 80 Hz, give or take 20: at 50 Hz it breaks first, at worst 80 Hz is 19 dB over.
    [Fact]
    public void The_band_that_breaks_first_and_the_worst_case_are_not_always_the_same_band()
    {
        var answer = QuietAnswer.Of(At62, Asked([Band(50, 4, 13), Band(80, -1, 20), Band(20, null, 8)], 58, 60))!;
        Assert.Equal((62, 58, 60), (answer.EverydayDb, answer.PoliteDb, answer.EqualisedDb));
        Assert.Equal((50, 13.0), (answer.FirstBandHz, answer.FirstBandDoubtDb));
        Assert.Equal(43, answer.WorstCasePoliteDb, 1e-12);
    }

    [Fact]
    public void Without_a_curve_or_a_level_there_is_no_answer()
    {
        Assert.Null(QuietAnswer.Of(At62, Asked([Band(50, null, 13)], 58, 60)));
        Assert.Null(QuietAnswer.Of(new Project { FormatVersion = 1 }, Asked([Band(50, 4, 13)], 58, 60)));
    }

    [Fact]
    public void The_demo_is_polite_at_its_everyday_level()
    {
        var facts = new Facts(DemoProject.Project, DemoDrivers.All);
        var answer = QuietAnswer.Of(facts.Project, facts.Quiet)!;
        Assert.True(answer.PoliteDb > answer.EverydayDb);
        Assert.True(answer.WorstCasePoliteDb < answer.PoliteDb);
        Assert.Equal(facts.Quiet.Bands.MaxBy(b => b.OverDb)!.BandHz, answer.FirstBandHz);
    }

    private static QuietBand Band(double hz, double? over, double doubt) => new(hz, 50, 50, 30, 20, doubt, 20, over);

    private static Quiet Asked(IReadOnlyList<QuietBand> bands, double polite, double equalised) => new(bands, polite, [], equalised, 0, 40, 40, 50, []);
}
