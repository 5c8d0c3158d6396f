using Stillwall.Appraisals;
using Stillwall.Appraisals.Ranking;

namespace Stillwall.Figures;

/// <summary>Price against level of the ranked drivers.</summary>
internal static class BestBuyChart
{
    /// <summary>What does louder cost.</summary>
    /// <param name="drivers">The ranked drivers, in their order.</param>
    /// <returns>The chart; null where no driver has both a price and a level.</returns>
    /// <remarks>
    /// Model: the ranking's own numbers; the line steps along the best buys; those that fail are marked without their names, which the table has. Source:
    /// our choice of picture.
    /// </remarks>
    public static Chart? Of(IReadOnlyList<RankedDriver> drivers, Show show, double? wantedDb = null)
    {
        ArgumentNullException.ThrowIfNull(drivers);
        ArgumentNullException.ThrowIfNull(show);
        var drawn = drivers.Where(d => d is { Price: > 0, MaxSplAtLowestDb: not null }).ToList();
        if (drawn.Count == 0)
        {
            return null;
        }

        var levels = drawn.Select(d => d.MaxSplAtLowestDb!.Value).Concat(wantedDb is { } w ? [w] : []).ToList();
        var across = Axes.Linear("price", show.Currency, drawn.Min(d => d.Price!.Value) * 0.85, drawn.Max(d => d.Price!.Value) * 1.1);
        var up = Axes.Linear("greatest level at the lowest note", "dB", levels.Min() - 2, levels.Max() + 2);
        var best = drawn.Where(d => d.Front).OrderBy(d => d.Price).ToList();
        return new Chart(
            Name: "price-and-level",
            Title: "What does louder cost?",
            Answer: Answer(best, drivers.Count - drawn.Count, show),
            AnswerFrom: "box.max_spl_at_lowest_db",
            Across: across,
            Up: up,
            Series: best.Count > 1 ? [new ChartSeries("nothing cheaper is louder", StyleRole.Main, SeriesShape.Line, Steps(best))] : [],
            Limits: wantedDb is { } wanted ? [Axes.Level($"below the {Show.Level(wanted)} wanted", across.Low, across.High, wanted, false, up)] : [],
            Landmarks:
            [
                .. drawn.Select(d => new ChartLandmark(
                    new ChartPoint(d.Price!.Value, d.MaxSplAtLowestDb!.Value),
                    d.Verdict == Verdict.Fails ? "" : d.Name,
                    MarkOf(d.Verdict),
                    !d.Front
                )
                {
                    Name = d.Name,
                }),
            ],
            Rules: [],
            Table: new ChartTable(
                ["driver", $"price, {show.Currency}", "level, dB", "verdict", "front"],
                [
                    .. drivers.Select(d =>
                        new[]
                        {
                            d.Name,
                            d.Price is { } p ? Show.Number(p) : "",
                            d.MaxSplAtLowestDb is { } l ? Show.Number(l) : "",
                            Word(d.Verdict),
                            d.Front ? "yes" : "no",
                        }
                    ),
                ]
            )
        );
    }

    private static string Answer(List<RankedDriver> best, int left, Show show)
    {
        var said =
            best.Count == 0
                ? "No driver holds in this cabinet."
                : $"Most level for the money: {Bargain(best[0], show)}{(best.Count > 1 ? $", up to {Bargain(best[^1], show)}" : "")}.";
        return left == 0 ? said : $"{said} {left} without a price or a level {(left == 1 ? "is" : "are")} not drawn.";
    }

    private static string Bargain(RankedDriver driver, Show show) =>
        $"{driver.Name}, {Show.Level(driver.MaxSplAtLowestDb!.Value)} for {show.Money(driver.Price!.Value)}";

    private static List<ChartPoint> Steps(List<RankedDriver> best)
    {
        List<ChartPoint> steps = [new(best[0].Price!.Value, best[0].MaxSplAtLowestDb!.Value)];
        foreach (var next in best.Skip(1))
        {
            steps.Add(new ChartPoint(next.Price!.Value, steps[^1].Y));
            steps.Add(new ChartPoint(next.Price!.Value, next.MaxSplAtLowestDb!.Value));
        }

        return steps;
    }

    private static LandmarkMark MarkOf(Verdict verdict) =>
        verdict switch
        {
            Verdict.Holds => LandmarkMark.Holds,
            Verdict.Tight => LandmarkMark.Tight,
            Verdict.Fails => LandmarkMark.Fails,
            _ => LandmarkMark.Unknown,
        };

    private static string Word(Verdict verdict) =>
        verdict switch
        {
            Verdict.Holds => "holds",
            Verdict.Tight => "tight",
            Verdict.Fails => "fails",
            _ => "unknown",
        };
}
