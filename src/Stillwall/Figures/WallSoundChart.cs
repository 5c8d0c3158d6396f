using Stillwall.Appraisals;
using Stillwall.Walls;

namespace Stillwall.Figures;

/// <summary>What the walls sound beside the cone.</summary>
public static class WallSoundChart
{
    private const double FloorDb = -100;

    /// <summary>The chart of a project.</summary>
    /// <param name="facts">Everything computed.</param>
    /// <returns>The chart; null where walls or box are not known.</returns>
    /// <remarks>Model: <see cref="WallCurve"/>, all panels by power and in step. Validity: as that. Source: as that. Accuracy: as that.</remarks>
    public static Chart? Of(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (facts.WallCurveOf(160) is not { } curve)
        {
            return null;
        }

        var across = new ChartAxis("frequency", "Hz", true, WallCurve.LowHz, WallCurve.HighHz, [20, 30, 50, 70, 100, 200, 300, 500, 1000]);
        var limit = facts.Limits.WallToConeDb;
        var up = Axes.Linear(
            "walls beside the cone",
            "dB",
            Math.Max(FloorDb, curve.Min(p => p.PowerSumDb)),
            Math.Max(limit + 5, curve.Max(p => p.WorstPhaseDb))
        );
        List<ChartSeries> series =
        [
            new(
                "all walls in step, the worst",
                StyleRole.Second,
                SeriesShape.Line,
                [.. curve.Select(p => new ChartPoint(p.FrequencyHz, Math.Max(up.Low, p.WorstPhaseDb)))]
            ),
            new("all walls by power", StyleRole.Main, SeriesShape.Line, [.. curve.Select(p => new ChartPoint(p.FrequencyHz, Math.Max(up.Low, p.PowerSumDb)))]),
        ];
        var highest = facts.WorkingRangeHz(2) is { } twice ? Math.Clamp(twice, WallCurve.LowHz, WallCurve.HighHz) : WallCurve.HighHz;
        var worst = curve.Where(p => p.FrequencyHz <= highest * 1.0001).MaxBy(p => p.PowerSumDb) ?? curve[0];
        var loudest = curve.MaxBy(p => p.PowerSumDb)!;
        return new Chart(
            Name: "how-quiet-are-the-walls",
            Title: "How quiet are the walls?",
            Answer: $"Up to {Show.Frequency(highest)} all walls together stay {Show.Level(-worst.PowerSumDb)} below the cone; they are loudest at "
                + $"{Show.Frequency(loudest.FrequencyHz)}.",
            AnswerFrom: "walls/wall-sound-below-the-cone",
            Across: across,
            Up: up,
            Series: series,
            Limits: [Axes.Level($"louder than {Show.Number(-limit)} dB below the cone", across.Low, highest, limit, true, up)],
            Landmarks:
            [
                new ChartLandmark(new(loudest.FrequencyHz, loudest.PowerSumDb), $"{Show.Level(loudest.PowerSumDb)} at {Show.Frequency(loudest.FrequencyHz)}"),
            ],
            Rules: [],
            Table: ResponseCharts.Table("level", across, series)
        );
    }
}
