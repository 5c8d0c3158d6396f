using Stillwall.Appraisals;
using Stillwall.Cabinets;

namespace Stillwall.Figures;

/// <summary>The response relative to its passband.</summary>
internal static class HowLowChart
{
    private const double HighHz = 500;
    private const double Volts = 2.83;

    internal static Chart Of(Facts facts, BoxSystem system, Facts? before)
    {
        var across = Axes.Frequency(HighHz);
        var lossless = Lossless(system.Network);
        var passband = PassbandDb(system.Network);
        var main = Line(lossless, passband);
        var up = Axes.Linear("level relative to the passband", "dB", -30, Math.Max(3, main.Max(p => p.Y) + 2)) with { High = Math.Max(4, main.Max(p => p.Y) + 2), Ticks = [-30, -20, -10, 0] };
        List<ChartSeries> series = [Band(lossless, passband)];
        if (before?.System is { } former)
        {
            series.Add(new ChartSeries("before", StyleRole.Pencil, SeriesShape.Line, Line(Lossless(former.Network), PassbandDb(former.Network))));
        }

        series.Add(new ChartSeries("with leak, fill and coil", StyleRole.Second, SeriesShape.Line, Line(system.Network, passband)));
        series.Add(new ChartSeries("this cabinet, nine of ten drivers in the band", StyleRole.Main, SeriesShape.Line, main));
        var aim = facts.Project.Brief.Aim;
        return new Chart("how-low", "How low?", Answer(facts, aim?.LowestHz), across, up, series, LimitsOf(aim?.LowestHz, across, up), Landmarks(facts, system.Network),
            aim?.CrossoverHz is { } x and > 10 and < HighHz ? [new ChartRule(x, $"{Show.Frequency(x)}, the mains take over")] : [],
            ResponseCharts.Table("response", across, [.. series.Where(s => s.Shape == SeriesShape.Line)]));
    }

    // Leak, fill loss and inductance have no part in the closed forms of f3 and f10.
    private static BoxNetwork Lossless(BoxNetwork network) => network with { LeakResistancePaSM3 = null, FillLossKgS = 0, Driver = network.Driver with { LeH = 0 } };

    private static double PassbandDb(BoxNetwork network) =>
        ClosedBox.SensitivityDb(ClosedBox.ReferenceEfficiency(network.Driver, network.Air), network.Air) + (10 * Math.Log10(Volts * Volts / network.Driver.ReOhm));

    private static List<ChartPoint> Line(BoxNetwork network, double passbandDb) =>
        [.. Axes.FrequenciesHz(HighHz, 170).Select(f => new ChartPoint(f, network.At(f, Volts).LevelDb() - passbandDb))];

    private static ChartSeries Band(BoxNetwork lossless, double passbandDb)
    {
        var band = Tolerance.ResponseOf(lossless, Axes.FrequenciesHz(HighHz, 68), Volts);
        return new ChartSeries("", StyleRole.Band, SeriesShape.Area, [.. band.Select(b => new ChartPoint(b.FrequencyHz, b.LowSplDb - passbandDb))])
        {
            UpperPoints = [.. band.Select(b => new ChartPoint(b.FrequencyHz, b.HighSplDb - passbandDb))],
        };
    }

    private static IReadOnlyList<ChartLimit> LimitsOf(double? lowestHz, ChartAxis across, ChartAxis up) => lowestHz is not { } lowest || lowest <= across.Low || lowest >= across.High
        ? []
        : [new ChartLimit($"from {Show.Frequency(lowest)} up, not below −10 dB", [new(lowest, up.Low), new(lowest, -10), new(across.High, -10)], [new(lowest, up.Low), new(lowest, -10), new(across.High, -10), new(across.High, up.Low)])];

    // With a port or a second cone the closed forms do not hold, so neither do their marks.
    private static IReadOnlyList<ChartLandmark> Landmarks(Facts facts, BoxNetwork network) => network.Port is null && network.SecondCone is null && facts.Box is { F3Hz: { } f3, F10Hz: { } f10 }
        ? [.. new ChartLandmark[] { new(new(f10, -10), $"10 dB under at {Show.Frequency(f10)}"), new(new(f3, -10 * Math.Log10(2)), $"3 dB under at {Show.Frequency(f3)}") }.Where(l => l.At.X is > 10 and < HighHz)]
        : [];

    private static string Answer(Facts facts, double? lowestHz)
    {
        var said = facts.Box.F10Hz is { } f10 ? $"To {Show.Frequency(f10)} at 10 dB under" : "The box is not known";
        return lowestHz is { } lowest ? $"{said}; your lowest note is {Show.Frequency(lowest)}." : $"{said}.";
    }
}
