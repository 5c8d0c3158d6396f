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
        var up = Up(main);
        List<ChartSeries> series = [Band(lossless, passband)];
        if (before?.System is { } former)
        {
            series.Add(new ChartSeries("before", StyleRole.Pencil, SeriesShape.Line, Line(Lossless(former.Network), PassbandDb(former.Network))));
        }

        series.Add(new ChartSeries("with leak, fill and coil", StyleRole.Second, SeriesShape.Line, Line(system.Network, passband)));
        series.Add(new ChartSeries("this cabinet, nine of ten drivers in the band", StyleRole.Main, SeriesShape.Line, main));
        var aim = facts.Project.Brief.Aim;
        return new Chart(
            Name: "how-low",
            Title: "How low?",
            Answer: Answer(F10Hz(facts, system.Network, main), aim?.LowestHz),
            AnswerFrom: "box.f10_hz",
            Across: across,
            Up: up,
            Series: series,
            Limits: LimitsOf(aim?.LowestHz, across, up),
            Landmarks: Landmarks(facts, system.Network),
            Rules: aim?.CrossoverHz is { } x and > 10 and < HighHz ? [new ChartRule(x, $"{Show.Frequency(x)}, the main speakers take over")] : [],
            Table: ResponseCharts.Table("response", across, [.. series.Where(s => s.Shape == SeriesShape.Line)])
        )
        {
            LineFrom = "curve.spl_db",
        };
    }

    // The next whole step above 0 dB would be mostly empty paper.
    private static ChartAxis Up(List<ChartPoint> main)
    {
        var high = Math.Max(4, main.Max(p => p.Y) + 2);
        var up = Axes.Linear("level relative to the passband", "dB", -30, high);
        return up with { High = high, Ticks = [.. up.Ticks.Where(t => t <= high)] };
    }

    // Leak, fill loss and inductance have no part in the closed forms of f3 and f10.
    private static BoxNetwork Lossless(BoxNetwork network) =>
        network with
        {
            LeakResistancePaSM3 = null,
            FillLossKgS = 0,
            Driver = network.Driver with { LeH = 0 },
        };

    private static double PassbandDb(BoxNetwork network) =>
        ClosedBox.SensitivityDb(ClosedBox.ReferenceEfficiency(network.Driver, network.Air), network.Air)
        + (10 * Math.Log10(Volts * Volts / network.Driver.ReOhm));

    private static List<ChartPoint> Line(BoxNetwork network, double passbandDb) =>
        [.. Axes.FrequenciesHz(HighHz, 170).Select(f => new ChartPoint(f, network.At(f, Volts).LevelDb() - passbandDb))];

    private static ChartSeries Band(BoxNetwork lossless, double passbandDb)
    {
        var band = Tolerance.ResponseOf(lossless, Axes.FrequenciesHz(HighHz, 35), Volts);
        return new ChartSeries("", StyleRole.Band, SeriesShape.Area, [.. band.Select(b => new ChartPoint(b.FrequencyHz, b.LowSplDb - passbandDb))])
        {
            UpperPoints = [.. band.Select(b => new ChartPoint(b.FrequencyHz, b.HighSplDb - passbandDb))],
        };
    }

    private static IReadOnlyList<ChartLimit> LimitsOf(double? lowestHz, ChartAxis across, ChartAxis up) =>
        lowestHz is not { } lowest || lowest <= across.Low || lowest >= across.High
            ? []
            :
            [
                new ChartLimit(
                    $"from {Show.Frequency(lowest)} up, not below −10 dB",
                    [new(lowest, up.Low), new(lowest, -10), new(across.High, -10)],
                    [new(lowest, up.Low), new(lowest, -10), new(across.High, -10), new(across.High, up.Low)]
                ),
            ];

    // With a port or a passive radiator the closed forms do not hold, so neither do their marks.
    private static IReadOnlyList<ChartLandmark> Landmarks(Facts facts, BoxNetwork network) =>
        IsClosed(network) && facts.Box is { F3Hz: { } f3, F10Hz: { } f10 }
            ?
            [
                .. new ChartLandmark[]
                {
                    new(new(f10, -10), $"f10 {Show.Frequency(f10)}"),
                    new(new(f3, -10 * Math.Log10(2)), $"f3 {Show.Frequency(f3)}"),
                }.Where(l => l.At.X is > 10 and < HighHz),
            ]
            : [];

    private static bool IsClosed(BoxNetwork network) => network.Port is null && network.PassiveRadiator is null;

    // From where on the line stays within 10 dB of the passband; null where it does throughout, or nowhere.
    private static double? F10Hz(Facts facts, BoxNetwork network, List<ChartPoint> main)
    {
        if (IsClosed(network))
        {
            return facts.Box.F10Hz;
        }

        var last = main.FindLastIndex(p => p.Y < -10);
        return last < 0 || last == main.Count - 1
            ? null
            : main[last].X * Math.Pow(main[last + 1].X / main[last].X, (-10 - main[last].Y) / (main[last + 1].Y - main[last].Y));
    }

    private static string Answer(double? f10Hz, double? lowestHz)
    {
        var said = f10Hz is { } f10 ? $"Down to {Show.Frequency(f10)} (f10, −10 dB)" : "Its f10 lies outside 10 to 500 Hz";
        return lowestHz is { } lowest ? $"{said}; your lowest note is {Show.Frequency(lowest)}." : $"{said}.";
    }
}
