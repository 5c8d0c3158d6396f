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
        var points = Axes.FrequenciesHz(HighHz, 170).Select(f => network.At(f, volts)).ToList();
        List<ChartSeries> series = [];
        if (network.SecondCone is not null)
        {
            series.Add(new ChartSeries("the second cone", StyleRole.Second, SeriesShape.Line, [.. points.Select(p => new ChartPoint(p.FrequencyHz, p.SecondConeExcursionPeakM!.Value * 1e3))]));
        }

        var main = points.Select(p => new ChartPoint(p.FrequencyHz, p.ExcursionPeakM * 1e3)).ToList();
        series.Add(new ChartSeries($"at the amplifier's full {Show.Number(volts)} V", StyleRole.Main, SeriesShape.Line, main));
        double? xmax = network.Driver.XmaxM * 1e3;
        var up = Axes.Linear("excursion of the cone, one way, peak", "mm", 0, Math.Max(1.1 * series.Max(s => s.Points.Max(p => p.Y)), 1.25 * (xmax ?? 0)));
        var lowest = facts.Project.Brief.Aim?.LowestHz is { } l and > 10 and < HighHz ? l : (double?)null;
        return new Chart("how-far", "How far does the cone move?", Answer(main, xmax, volts), across, up, series,
            xmax is { } x ? [Axes.Level($"past the cone's {Show.Number(x)} mm", across.Low, across.High, x, true, up)] : [],
            lowest is { } f ? [new ChartLandmark(new(f, network.At(f, volts).ExcursionPeakM * 1e3), $"{Show.Number(network.At(f, volts).ExcursionPeakM * 1e3)} mm at {Show.Frequency(f)}")] : [],
            [], ResponseCharts.Table("excursion", across, series));
    }

    private static string Answer(List<ChartPoint> line, double? xmaxMm, double volts)
    {
        if (xmaxMm is not { } xmax)
        {
            return $"At {Show.Number(volts)} V up to {Show.Number(line.Max(p => p.Y))} mm; how far it may move is not stated.";
        }

        var last = line.FindLastIndex(p => p.Y > xmax);
        return last < 0
            ? $"The cone stays within its {Show.Number(xmax)} mm at the amplifier's full {Show.Number(volts)} V."
            : last == line.Count - 1
                ? $"At the amplifier's full {Show.Number(volts)} V the cone is past its {Show.Number(xmax)} mm throughout."
                : $"At the amplifier's full {Show.Number(volts)} V the cone passes its {Show.Number(xmax)} mm below {Show.Frequency(Crossing(line[last], line[last + 1], xmax))}.";
    }

    private static double Crossing(ChartPoint a, ChartPoint b, double y) => a.X * Math.Pow(b.X / a.X, (y - a.Y) / (b.Y - a.Y));
}
