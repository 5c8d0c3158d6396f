using CsCheck;
using Stillwall.Materials;
using Stillwall.Neighbours;

namespace Stillwall.Tests.Neighbours;

public class HearingTests
{
    [Fact]
    public void The_longest_times_are_the_published_ones()
    {
        foreach (var row in QuietData.Numbers("hearing", "dose.csv"))
        {
            Assert.Equal(row[1] * 60, Hearing.LongestS(row[0]), 1e-6);
            Assert.Equal(1, Hearing.DoseRatio(row[0], row[1] / 60), 1e-9);
        }
    }

    [Fact]
    public void Daily_exposures_agree_with_the_standards_examples()
    {
        foreach (var example in QuietData.Rows("hearing", "daily.csv").GroupBy(row => row[0]))
        {
            // A stretch of several samples has their mean energy.
            var day = example
                .Select(row =>
                {
                    var samples = row[1].Split(' ').Select(QuietData.Number).ToArray();
                    return new Exposure(ThirdOctaves.SumDb(samples) - (10 * Math.Log10(samples.Length)), QuietData.Number(row[2]));
                })
                .ToArray();
            Assert.Equal(QuietData.Number(example.First()[3]), Hearing.DailyExposureDb(day)!.Value, 0.06);
        }
    }

    [Fact]
    public void A_day_without_any_time_has_no_exposure() => Assert.Null(Hearing.DailyExposureDb([new Exposure(90, 0)]));

    [Fact]
    public void Three_decibels_more_halve_the_time() =>
        Gen.Double[40, 140].Sample(level => Assert.Equal(2, Hearing.LongestS(level) / Hearing.LongestS(level + 3), 1e-9));

    [Fact]
    public void Hours_beyond_a_day_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Hearing.DoseRatio(85, 25));
}
