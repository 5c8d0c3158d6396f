using Stillwall.Appraisals;

namespace Stillwall.Figures;

/// <summary>A ranked driver as the chart of price and level needs it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Price">Its price, in the project's currency; null where not stated.</param>
/// <param name="LevelDb">Its greatest level at the lowest note, dB; null where not known.</param>
/// <param name="Verdict">What is said of it.</param>
/// <param name="OnFront">Whether no driver that costs less or the same is louder.</param>
public sealed record FrontDriver(string Name, double? Price, double? LevelDb, Verdict Verdict, bool OnFront);

/// <summary>Price against level of the ranked drivers.</summary>
public static class FrontChart
{
    /// <summary>What does louder cost.</summary>
    /// <param name="drivers">The ranked drivers, in their order.</param>
    /// <param name="show">How numbers are written.</param>
    /// <param name="wantedDb">Level wanted, dB; null where not stated.</param>
    /// <returns>The chart; null where no driver has both a price and a level.</returns>
    /// <remarks>
    /// Model: the ranking's own numbers; the line steps along the drivers of the front; those that fail are marked without their names, which the
    /// table has. Validity: as the ranking's. Source: our choice of picture. Accuracy: as the ranking's.
    /// </remarks>
    public static Chart? Of(IReadOnlyList<FrontDriver> drivers, Show show, double? wantedDb = null)
    {
        ArgumentNullException.ThrowIfNull(drivers);
        ArgumentNullException.ThrowIfNull(show);
        var drawn = drivers.Where(d => d is { Price: > 0, LevelDb: not null }).ToList();
        if (drawn.Count == 0)
        {
            return null;
        }

        var levels = drawn.Select(d => d.LevelDb!.Value).Concat(wantedDb is { } w ? [w] : []).ToList();
        var across = Axes.Linear("price", show.Currency, drawn.Min(d => d.Price!.Value) * 0.85, drawn.Max(d => d.Price!.Value) * 1.1);
        var up = Axes.Linear("greatest level at the lowest note", "dB", levels.Min() - 2, levels.Max() + 2);
        var front = drawn.Where(d => d.OnFront).OrderBy(d => d.Price).ToList();
        return new Chart(
            Name: "price-and-level",
            Title: "What does louder cost?",
            Answer: Answer(front, drivers.Count - drawn.Count, show),
            Across: across,
            Up: up,
            Series: front.Count > 1 ? [new ChartSeries("nothing cheaper is louder", StyleRole.Main, SeriesShape.Line, Steps(front))] : [],
            Limits: wantedDb is { } wanted ? [Axes.Level($"below the {Show.Level(wanted)} wanted", across.Low, across.High, wanted, false, up)] : [],
            Landmarks:
            [
                .. drawn.Select(d => new ChartLandmark(
                    new ChartPoint(d.Price!.Value, d.LevelDb!.Value),
                    d.Verdict == Verdict.Fails ? "" : d.Name,
                    MarkOf(d.Verdict),
                    !d.OnFront
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
                            d.LevelDb is { } l ? Show.Number(l) : "",
                            Word(d.Verdict),
                            d.OnFront ? "yes" : "no",
                        }
                    ),
                ]
            )
        );
    }

    private static string Answer(List<FrontDriver> front, int left, Show show)
    {
        var said =
            front.Count == 0
                ? "No driver holds in this cabinet."
                : $"Most level for the money: {Bargain(front[0], show)}{(front.Count > 1 ? $", up to {Bargain(front[^1], show)}" : "")}.";
        return left == 0 ? said : $"{said} {left} without a price or a level {(left == 1 ? "is" : "are")} not drawn.";
    }

    private static string Bargain(FrontDriver driver, Show show) => $"{driver.Name}, {Show.Level(driver.LevelDb!.Value)} for {show.Money(driver.Price!.Value)}";

    private static List<ChartPoint> Steps(List<FrontDriver> front)
    {
        List<ChartPoint> steps = [new(front[0].Price!.Value, front[0].LevelDb!.Value)];
        foreach (var next in front.Skip(1))
        {
            steps.Add(new ChartPoint(next.Price!.Value, steps[^1].Y));
            steps.Add(new ChartPoint(next.Price!.Value, next.LevelDb!.Value));
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
