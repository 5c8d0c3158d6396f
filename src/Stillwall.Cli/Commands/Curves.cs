using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Figures;
using Stillwall.Files.Charts;
using Stillwall.Files.Tables;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>curves</c>: the response over frequency.</summary>
internal static class Curves
{
    // Nominal third-octaves, fewer of them where the cabinet no longer works.
    private static readonly double[] ShownHz = [10, 12.5, 16, 20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 315, 500, 1000];

    internal static Verb Verb()
    {
        var project = Common.Project;
        var volts = new QuantityOption("--volts", Dimension.None, "voltage of the source, V rms; 2.83 where left out") { Span = (1e-6, 1e6) };
        var points = new QuantityOption("--points-per-decade", Dimension.None, "points in each of the two decades; 40 where left out")
        {
            IsWhole = true,
            Span = (1, 10000),
        };
        var csv = Common.Csv("every column for every point, 10 Hz to 1 kHz");
        var svg = new OutputOption(
            "--svg",
            "FILE",
            "draws the four questions: how low, how loud, how far the cone moves, what the amplifier feels; - is standard output"
        );
        var png = new OutputOption("--png", "FILE", "the same as a picture of points; - is standard output");
        var walls = new Flag("--walls", "the walls' volume velocity beside the cone's instead, 20 Hz to 1 kHz");
        return new Verb(
            "curves",
            "level, excursion, impedance and the rest over frequency: one cabinet, half space, 1 m",
            "stillwall curves my-cabinet --csv curves.csv"
        )
        {
            Takes = [project, volts, points, walls, csv, svg, png],
            Do = call =>
            {
                var facts = LoadedProject.Load(call.Session, call.Text(project)).Facts();
                var drive = call.Value(volts) ?? 2.83;
                var perDecade = (int)(call.Value(points) ?? 40);
                var file = call.Text(csv);
                if (call.Has(walls))
                {
                    return WallCurves.Deliver(call, facts, perDecade, csv, svg, png);
                }

                var network = facts.System?.Network ?? throw Want.OfBox("curves", facts);
                var limits = MaximumLevel.LimitsOf(network.Driver, network.PassiveRadiator, facts.Project.Brief.Amplifier);
                if (call.Text(svg) is not null)
                {
                    call.Deliver(svg, ChartPicture.Svg(ResponseCharts.All(facts)));
                    return ExitCodes.Done;
                }

                if (call.Text(png) is not null)
                {
                    if (!ChartPicture.HasFont)
                    {
                        throw Refusal.Path(
                            "curves: no sans font on this machine to write labels with; install one (DejaVu, Liberation, Noto, Arial) or draw --svg"
                        );
                    }

                    call.Deliver(png, ChartPicture.Png(ResponseCharts.All(facts)));
                    return ExitCodes.Done;
                }

                if (file is null)
                {
                    call.Session.Print(
                        Table([.. ShownHz.Select(f => ResponseCurve.PointAt(network, limits, f, drive))], drive, facts.Show, call.Session.Terminal)
                    );
                    return ExitCodes.Done;
                }

                var curve = ResponseCurve.Of(network, limits, drive, perDecade);
                call.Deliver(csv, Text(curve, network), Heads);
                Common.SayWritten(call.Session, file, curve.Count);
                return ExitCodes.Done;
            },
        };
    }

    private static readonly (string Name, Func<CurvePoint, double?> Cell)[] Columns =
    [
        ("frequency_hz", p => p.FrequencyHz),
        ("spl_db", p => p.SplDb),
        ("phase_deg", p => p.PhaseDeg),
        ("excursion_peak_mm", p => p.ExcursionPeakMm),
        ("box_pressure_pa_rms", p => p.BoxPressurePaRms),
        ("impedance_ohm", p => p.ImpedanceOhm),
        ("impedance_phase_deg", p => p.ImpedancePhaseDeg),
        ("group_delay_ms", p => p.GroupDelayMs),
        ("max_spl_db", p => p.MaxSplDb),
    ];

    private static readonly (string Name, Func<CurvePoint, double?> Cell)[] OfPort = [("port_speed_m_s", p => p.PortSpeedMS)],
        OfRadiator = [("radiator_excursion_mm", p => p.RadiatorExcursionMm)];

    // Of every kind of cabinet, so that a table of the same cabinet as another kind is known again.
    private static readonly IReadOnlyList<string> Heads =
    [
        .. new[] { Columns, [.. Columns, .. OfPort], [.. Columns, .. OfRadiator], [.. Columns, .. OfPort, .. OfRadiator] }.Select(all =>
            string.Join(',', all.Select(c => c.Name))
        ),
    ];

    private static string Text(IReadOnlyList<CurvePoint> curve, BoxNetwork network)
    {
        (string Name, Func<CurvePoint, double?> Cell)[] columns =
        [
            .. Columns,
            .. network.Port is null ? [] : OfPort,
            .. network.PassiveRadiator is null ? [] : OfRadiator,
        ];
        return CsvText.Write([.. columns.Select(c => c.Name)], curve.Select(p => (IReadOnlyList<double?>)[.. columns.Select(c => c.Cell(p))]));
    }

    private static string Table(IReadOnlyList<CurvePoint> points, double volts, Show show, Terminal terminal) =>
        Tables.Of(
            terminal,
            $"One cabinet, half space, {show.Distance(1)}, driven with {Show.Number(volts)} V",
            [">frequency", ">level", ">greatest level", ">cone moves", ">impedance", ">group delay"],
            points.Select(p =>
                (IReadOnlyList<string>)
                    [
                        Show.Frequency(p.FrequencyHz),
                        Show.Level(p.SplDb),
                        p.MaxSplDb is { } most ? Show.Level(most) : "unknown",
                        show.Small(p.ExcursionPeakMm / 1e3),
                        $"{Show.Number(p.ImpedanceOhm)} Ω",
                        $"{Show.Number(p.GroupDelayMs, 2)} ms",
                    ]
            )
        )
        + Words.Wrapped("greatest level: what cone, coil and amplifier allow. cone moves: one way, peak. No room, equaliser or main speakers.", terminal.Width)
        + "\n";
}
