using Stillwall.Appraisals;
using Stillwall.Proofs.Impedances;
using Stillwall.Proofs.Sweeps;

namespace Stillwall.Figures;

/// <summary>What was measured over what was computed.</summary>
public static class ProofCharts
{
    private const double HighHz = 500,
        LeastDb = -40,
        MostDb = 20;

    /// <summary>The measured impedance over the computed one.</summary>
    /// <param name="result">What was measured, with the computed curve beside it.</param>
    /// <returns>The chart.</returns>
    /// <remarks>Source: as the points; nothing is smoothed.</remarks>
    public static Chart Impedance(ImpedanceResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var across = Axes.Frequency(HighHz);
        var points = result.Curve.Where(p => IsWithin(p.FrequencyHz)).ToList();
        var measured = points.Select(p => new ChartPoint(p.FrequencyHz, p.ImpedanceOhm)).ToList();
        var computed = points.Where(p => p.ComputedOhm is not null).Select(p => new ChartPoint(p.FrequencyHz, p.ComputedOhm!.Value)).ToList();
        var all = measured.Concat(computed).Select(p => p.Y).Where(y => y > 0).ToList();
        var up = Axes.Logarithmic("impedance", "ohm", all.Min() * 0.8, all.Max() * 1.25);
        return Chart(
            name: "proof-impedance",
            title: "What does the amplifier feel, measured?",
            answer: $"Measured resonance: {Show.Frequency(result.ResonanceHz)}, with a Q of {Show.Number(result.QTotal)}.",
            answerFrom: "proof.impedance[0]",
            quantity: "impedance",
            across: across,
            up: up,
            computed: computed,
            measured: measured
        );
    }

    /// <summary>The measured response over the computed one, both 0 dB from 100 to 200 Hz.</summary>
    /// <param name="result">What was measured.</param>
    /// <param name="computed">The computed shape; null where the box is not known.</param>
    /// <returns>The chart.</returns>
    /// <remarks>Source: as the points; what lies below −40 dB is drawn at the foot.</remarks>
    public static Chart Sweep(SweepResult result, IReadOnlyList<SweepPoint>? computed)
    {
        ArgumentNullException.ThrowIfNull(result);
        var (measured, plan) = (Line(result.Points), Line(computed ?? []));
        var all = measured.Concat(plan).Select(p => p.Y).DefaultIfEmpty(0).ToList();
        var up = Axes.Linear("relative level", "dB", Math.Min(-10, all.Min()), Math.Max(5, all.Max()));
        return Chart(
            name: "proof-sweep",
            title: "How low, measured?",
            answer: "The microphone's own response is in the measured line: compare bends and slopes, not levels.",
            answerFrom: "proof.sweep[0]",
            quantity: "relative level",
            across: Axes.Frequency(HighHz),
            up: up,
            computed: plan,
            measured: measured
        );
    }

    private static Chart Chart(
        string name,
        string title,
        string answer,
        string answerFrom,
        string quantity,
        ChartAxis across,
        ChartAxis up,
        List<ChartPoint> computed,
        List<ChartPoint> measured
    )
    {
        List<ChartSeries> series = [new ChartSeries("measured", StyleRole.Main, SeriesShape.Line, measured)];
        if (computed.Count > 1)
        {
            series.Insert(0, new ChartSeries("computed", StyleRole.Second, SeriesShape.Line, computed));
        }

        return new Chart(
            Name: name,
            Title: title,
            Answer: answer,
            AnswerFrom: answerFrom,
            Across: across,
            Up: up,
            Series: series,
            Limits: [],
            Landmarks: [],
            Rules: [],
            Table: ResponseCharts.Table(quantity, across, series)
        );
    }

    private static List<ChartPoint> Line(IEnumerable<SweepPoint> points) =>
        [.. points.Where(p => IsWithin(p.FrequencyHz)).Select(p => new ChartPoint(p.FrequencyHz, Math.Clamp(p.MagnitudeDb, LeastDb, MostDb)))];

    private static bool IsWithin(double hertz) => hertz is >= 10 and <= HighHz;
}
