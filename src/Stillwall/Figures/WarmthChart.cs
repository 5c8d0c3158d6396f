using Stillwall.Appraisals;

namespace Stillwall.Figures;

/// <summary>How warm the wall gets while the cast sets.</summary>
public static class WarmthChart
{
    private const double SecondsPerMinute = 60;

    /// <summary>The chart of a project.</summary>
    /// <param name="facts">Everything computed.</param>
    /// <returns>The chart; null where the heat is not known.</returns>
    /// <remarks>Model: <see cref="Pours.SettingHeat"/>, in metric units. Validity: as that. Source: as that. Accuracy: as that.</remarks>
    public static Chart? Of(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (facts.Warmth is not [_, ..] course || facts.Skin is not { } skin)
        {
            return null;
        }

        var (peak, gives) = (course.MaxBy(p => p.WarmestC), skin.SofteningC - facts.Limits.HeatMarginK);
        var across = Axes.Linear("time from the first water", "min", 0, course[^1].TimeS / SecondsPerMinute);
        var up = Axes.Linear(
            "temperature",
            "°C",
            Math.Min(course.Min(p => p.OuterFaceC), facts.Air.TemperatureC),
            Math.Max(peak.WarmestC, skin.SofteningC) + 5
        );
        List<ChartSeries> series =
        [
            new("outer face", StyleRole.Second, SeriesShape.Line, [.. course.Select(p => new ChartPoint(p.TimeS / SecondsPerMinute, p.OuterFaceC))]),
            new("warmest place", StyleRole.Main, SeriesShape.Line, [.. course.Select(p => new ChartPoint(p.TimeS / SecondsPerMinute, p.WarmestC))]),
        ];
        return new Chart(
            Name: "how-warm",
            Title: "How warm does the wall get?",
            Answer: $"{facts.Show.Temperature(peak.WarmestC)} after {Show.Time(peak.TimeS)}; {skin.Name.ToUpperInvariant()} softens at "
                + $"{facts.Show.Temperature(skin.SofteningC)}.",
            AnswerFrom: "pour.expected_peak_c",
            Across: across,
            Up: up,
            Series: series,
            Limits: [Axes.Level($"nearer than {Show.Number(facts.Limits.HeatMarginK)} K to where the skins soften", across.Low, across.High, gives, true, up)],
            Landmarks: [new ChartLandmark(new(peak.TimeS / SecondsPerMinute, peak.WarmestC), facts.Show.Temperature(peak.WarmestC))],
            Rules: [],
            Table: ResponseCharts.Table("temperature", across, series)
        );
    }
}
