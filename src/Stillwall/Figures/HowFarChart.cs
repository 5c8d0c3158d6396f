using Stillwall.Appraisals;
using Stillwall.Cabinets;

namespace Stillwall.Figures;

/// <summary>Excursion of the cone at the amplifier's full voltage.</summary>
internal static class HowFarChart
{
    private const double HighHz = 500;

    internal static Chart Of(Facts facts, BoxNetwork network, double volts)
    {
        var across = Axes.Frequency(HighHz);
        var (unit, perMetre) = (facts.Show.SizeUnit, facts.Show.SizesPerMetre);
        var points = Axes.FrequenciesHz(HighHz, 170).Select(f => network.At(f, volts)).ToList();
        List<ChartSeries> series = [];
        if (network.PassiveRadiator is not null)
        {
            series.Add(
                new ChartSeries(
                    "the passive radiator",
                    StyleRole.Second,
                    SeriesShape.Line,
                    [.. points.Select(p => new ChartPoint(p.FrequencyHz, p.PassiveRadiatorExcursionPeakM!.Value * perMetre))]
                )
            );
        }

        var main = points.Select(p => new ChartPoint(p.FrequencyHz, p.ExcursionPeakM * perMetre)).ToList();
        series.Add(new ChartSeries($"at the amplifier's full {Show.Number(volts)} V", StyleRole.Main, SeriesShape.Line, main));
        string Words(double metres) => $"{Show.Number(metres * perMetre)} {unit}";
        double? xmax = network.Driver.XmaxM * perMetre;
        var up = Axes.Linear("excursion of the cone, one way, peak", unit, 0, Math.Max(1.1 * series.Max(s => s.Points.Max(p => p.Y)), 1.25 * (xmax ?? 0)));
        var lowest = facts.Project.Brief.Aim?.LowestHz is { } l and > 10 and < HighHz ? l : (double?)null;
        ChartLandmark Landmark(double frequencyHz, double excursionM) =>
            new(new(frequencyHz, excursionM * perMetre), $"{Words(excursionM)} at {Show.Frequency(frequencyHz)}");
        return new Chart(
            Name: "how-far",
            Title: "How far does the cone move?",
            Answer: Answer(points, network.Driver.XmaxM, volts, Words),
            AnswerFrom: "curve.excursion_peak_mm",
            Across: across,
            Up: up,
            Series: series,
            Limits: xmax is { } x ? [Axes.Level($"past the cone's {Words(x / perMetre)}", across.Low, across.High, x, true, up)] : [],
            Landmarks: lowest is { } f ? [Landmark(f, network.At(f, volts).ExcursionPeakM)] : [],
            Rules: [],
            Table: ResponseCharts.Table("excursion", across, series)
        );
    }

    private static string Answer(List<NetworkPoint> line, double? xmaxM, double volts, Func<double, string> words)
    {
        if (xmaxM is not { } xmax)
        {
            return $"At {Show.Number(volts)} V up to {words(line.Max(p => p.ExcursionPeakM))}; how far it may move is not stated.";
        }

        var last = line.FindLastIndex(p => p.ExcursionPeakM > xmax);
        return last < 0 ? $"The cone stays within its {words(xmax)} at the amplifier's full {Show.Number(volts)} V."
            : last == line.Count - 1 ? $"At the amplifier's full {Show.Number(volts)} V the cone is past its {words(xmax)} throughout."
            : $"At the amplifier's full {Show.Number(volts)} V the cone passes its {words(xmax)} below "
                + $"{Show.Frequency(Crossing(line[last], line[last + 1], xmax))}.";
    }

    private static double Crossing(NetworkPoint a, NetworkPoint b, double excursionM) =>
        a.FrequencyHz * Math.Pow(b.FrequencyHz / a.FrequencyHz, (excursionM - a.ExcursionPeakM) / (b.ExcursionPeakM - a.ExcursionPeakM));
}
