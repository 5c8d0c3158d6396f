using Stillwall.Appraisals;
using Stillwall.Cabinets;

namespace Stillwall.Figures;

/// <summary>Impedance over frequency.</summary>
internal static class ImpedanceChart
{
    private const double HighHz = 1000;

    internal static Chart Of(Facts facts, BoxNetwork network)
    {
        var across = Axes.Frequency(HighHz);
        List<ChartPoint> line = [.. Axes.FrequenciesHz(HighHz, 400).Select(f => new ChartPoint(f, network.At(f, 1).ImpedanceOhm.Magnitude))];
        var least = ResponseCurve.MinimumImpedance(network);
        var load = facts.Project.Brief.Amplifier?.MinimumLoadOhm;
        var up = Axes.Logarithmic("impedance", "ohm", Math.Min(least.ImpedanceOhm, load ?? double.MaxValue) * 0.7, line.Max(p => p.Y) * 1.25);
        List<ChartSeries> series = [new ChartSeries("what the amplifier drives", StyleRole.Main, SeriesShape.Line, line)];
        var peak = line.Where((p, k) => k > 0 && k < line.Count - 1 && p.Y >= line[k - 1].Y && p.Y >= line[k + 1].Y)
            .Select(p => (ChartPoint?)p)
            .MaxBy(p => p!.Value.Y);
        return new Chart(
            Name: "what-the-amplifier-feels",
            Title: "What does the amplifier feel?",
            Answer: Answer(least, load),
            AnswerFrom: "box.minimum_impedance_ohm",
            Across: across,
            Up: up,
            Series: series,
            Limits: load is { } r ? [Axes.Level($"below the {Show.Number(r)} ohm the amplifier may drive", across.Low, across.High, r, false, up)] : [],
            Landmarks:
            [
                .. peak is { } top ? [new ChartLandmark(top, $"{Show.Number(top.Y)} ohm at {Show.Frequency(top.X)}")] : Array.Empty<ChartLandmark>(),
                new ChartLandmark(new(least.FrequencyHz, least.ImpedanceOhm), $"{Show.Number(least.ImpedanceOhm)} ohm at {Show.Frequency(least.FrequencyHz)}"),
            ],
            Rules: [],
            Table: ResponseCharts.Table("impedance", across, series)
        )
        {
            LineFrom = "curve.impedance_ohm",
        };
    }

    private static string Answer(ImpedanceMinimum least, double? load)
    {
        var said = $"It falls to {Show.Number(least.ImpedanceOhm)} ohm at {Show.Frequency(least.FrequencyHz)}";
        return load is { } may ? $"{said}; the amplifier may drive {Show.Number(may)} ohm." : $"{said}; what the amplifier may drive is not stated.";
    }
}
