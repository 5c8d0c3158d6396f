using CsCheck;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Ranking;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

public sealed class RankingTests
{
    private static readonly RankedDrivers Demo = Ranking.Of(DemoProject.Project, DemoDrivers.All);

    [Fact]
    public void Every_candidate_comes_back_once()
    {
        Assert.Equal(DemoDrivers.All.Select(d => d.Name).Order(StringComparer.Ordinal), Demo.Drivers.Select(d => d.Name).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("Dunlin 8")]
    [InlineData("Wren 5")]
    [InlineData("Curlew 8")]
    [InlineData("Godwit 8")]
    [InlineData("Coot 8")]
    [InlineData("Teal 8")]
    [InlineData("Bittern 10")]
    public void A_candidate_is_judged_as_the_appraisal_of_a_project_with_that_driver_judges_it(string name)
    {
        var ranked = Demo.Drivers.Single(d => d.Name == name);
        var appraisal = Appraisal.WithoutRemedies(DemoProject.Project with { Driver = new DriverChoice(name, null) }, DemoDrivers.All);
        var judged = appraisal.Findings.Where(f => Ranking.FindingIds.Contains(f.Id)).ToList();
        Assert.Equal(7, judged.Count);
        var known = judged.Where(f => f.Verdict != Verdict.Unknown).ToList();
        Assert.Equal(known.Max(f => f.Verdict), ranked.Verdict);
        Assert.Equal(known.Where(f => f.Verdict == Verdict.Fails).Concat(known.Where(f => f.Verdict == Verdict.Tight)).Select(f => f.Because), ranked.Reasons);
        Assert.Equal(ranked.Reasons, ranked.ReasonIds.Select(id => judged.Single(f => f.Id == id).Because));
        Assert.Equal(judged.Where(f => f.Verdict == Verdict.Unknown).Select(f => f.Topic), ranked.Unjudged);
        var box = appraisal.Box;
        Assert.Equal(
            (box.SystemResonanceHz, box.SystemQ, box.F3Hz, box.F10Hz, box.MaxSplAtLowestDb, box.LimitedByAtLowest),
            (ranked.SystemResonanceHz, ranked.SystemQ, ranked.F3Hz, ranked.F10Hz, ranked.MaxSplAtLowestDb, ranked.LimitedByAtLowest)
        );
    }

    [Fact]
    public void The_order_is_by_verdict_then_level_then_price_then_name()
    {
        foreach (var (a, b) in Demo.Drivers.Zip(Demo.Drivers.Skip(1)))
        {
            var (levelA, levelB) = (a.MaxSplAtLowestDb ?? double.MinValue, b.MaxSplAtLowestDb ?? double.MinValue);
            Assert.True(
                a.Verdict < b.Verdict
                    || (a.Verdict == b.Verdict && (levelA > levelB || (levelA == levelB && (a.Price ?? double.MaxValue) <= (b.Price ?? double.MaxValue)))),
                $"{a.Name} stands before {b.Name}"
            );
        }
    }

    [Fact]
    public void Equals_stand_cheapest_first_without_a_price_last_and_else_by_name()
    {
        var dunlin = DemoDrivers.All.Single(d => d.Name == "Dunlin 8");
        DriverSheet[] equals =
        [
            dunlin with
            {
                Name = "d",
                Price = null,
            },
            dunlin with
            {
                Name = "c",
                Price = 7,
            },
            dunlin with
            {
                Name = "b",
                Price = 7,
            },
            dunlin with
            {
                Name = "a",
                Price = 9,
            },
        ];
        Assert.Equal(["b", "c", "a", "d"], Ranking.Of(DemoProject.Project, equals).Drivers.Select(d => d.Name));
    }

    [Fact]
    public void The_front_is_whatever_no_cheaper_or_equally_dear_driver_outdoes_in_level()
    {
        Check(Demo.Drivers);
        Assert.Contains(Demo.Drivers, d => d.Front);
        var dunlin = DemoDrivers.All.Single(d => d.Name == "Dunlin 8");
        Gen.Select(Gen.Int[1, 5], Gen.Int[2, 6], (price, xmax) => (price, xmax))
            .Array[1, 12]
            .Sample(
                draws => Check(Ranking.Of(Quiet, [.. draws.Select((d, i) => dunlin with { Name = $"{i}", Price = d.price, XmaxM = d.xmax * 1e-3 })]).Drivers),
                iter: 50
            );

        static void Check(IReadOnlyList<RankedDriver> drivers)
        {
            Assert.All(
                drivers,
                d =>
                    Assert.Equal(
                        d.Verdict != Verdict.Fails
                            && d is { Price: not null, MaxSplAtLowestDb: not null }
                            && !drivers.Any(o => o.Price <= d.Price && o.MaxSplAtLowestDb > d.MaxSplAtLowestDb),
                        d.Front
                    )
            );
        }
    }

    [Fact]
    public void A_stated_net_volume_is_the_same_for_every_candidate_and_resonance_and_Q_follow_Small()
    {
        // Small 1972: fc = fs √(1 + Vas/V), Qtc = Qts √(1 + Vas/V); air at 20 °C and 101 325 Pa, to which Vas refers.
        var ranked = Ranking.Of(ReadyBox, DemoDrivers.All).Drivers;
        foreach (var sheet in DemoDrivers.All)
        {
            var rise = Math.Sqrt(1 + sheet.VasM3!.Value / 0.024);
            var line = ranked.Single(d => d.Name == sheet.Name);
            Assert.Equal(sheet.FsHz!.Value * rise, line.SystemResonanceHz!.Value, 1e-6);
            Assert.Equal(rise * sheet.Qms!.Value * sheet.Qes!.Value / (sheet.Qms.Value + sheet.Qes.Value), line.SystemQ!.Value, 1e-9);
        }
    }

    [Fact]
    public void A_driver_that_takes_more_room_inside_resonates_higher()
    {
        var dunlin = DemoDrivers.All.Single(d => d.Name == "Dunlin 8");
        var ranked = Ranking
            .Of(DemoProject.Project, [dunlin, dunlin with { Name = "fat", DisplacementM3 = dunlin.DisplacementM3 * 2 }])
            .Drivers.ToDictionary(d => d.Name);
        Assert.True(ranked["fat"].SystemResonanceHz > ranked["Dunlin 8"].SystemResonanceHz);
    }

    [Fact]
    public void What_cannot_be_judged_is_named_and_the_rest_still_counts()
    {
        var bare = Ranking.Of(ReadyBox with { Brief = new Brief() }, [DemoDrivers.All[0]]).Drivers.Single();
        Assert.Equal(Verdict.Holds, bare.Verdict);
        Assert.Equal(6, bare.Unjudged.Count);
        var nothing = Ranking.Of(ReadyBox, [new DriverSheet { Name = "Ouzel 8" }]).Drivers.Single();
        Assert.Equal((Verdict.Unknown, 7, false), (nothing.Verdict, nothing.Unjudged.Count, nothing.Front));
    }

    [Fact]
    public void A_driver_much_too_large_is_refused_with_every_reason()
    {
        var pelican = Demo.Drivers.Single(d => d.Name == "Pelican 12");
        Assert.Equal(Verdict.Fails, pelican.Verdict);
        Assert.Contains(pelican.Reasons, r => r.Contains("of room", StringComparison.Ordinal));
        Assert.True(pelican.Reasons.Count >= 2);
    }

    [Theory]
    [InlineData("Coot 8")]
    [InlineData("Smew 8")]
    [InlineData("Ruff 6")]
    public void A_driver_whose_sheet_contradicts_itself_is_refused_for_that(string name)
    {
        var line = Demo.Drivers.Single(d => d.Name == name);
        Assert.Equal(Verdict.Fails, line.Verdict);
        Assert.Contains(line.Reasons, r => r.Contains("from what its other figures give", StringComparison.Ordinal));
    }

    [Fact]
    public void Top_takes_the_best_and_changes_none_of_them()
    {
        Assert.Equal(
            Demo.Drivers.Take(3).Select(d => (d.Name, d.Front)),
            Ranking.Of(DemoProject.Project, DemoDrivers.All, 3).Drivers.Select(d => (d.Name, d.Front))
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => Ranking.Of(DemoProject.Project, DemoDrivers.All, 0));
    }

    // In half space at 2 m this much is within reach of some of the drawn excursions.
    private static Project Quiet => ReadyBox with { Brief = ReadyBox.Brief with { Aim = ReadyBox.Brief.Aim! with { LevelDb = 80 } } };

    private static Project ReadyBox =>
        DemoProject.Project with
        {
            Cabinet = new Cabinet { NetVolumeM3 = 0.024 },
            Driver = null,
        };
}
