using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Figures;
using Stillwall.Files.Charts;
using Stillwall.Files.Tables;

namespace Stillwall.Cli.Commands;

/// <summary><c>curves --walls</c>: what the walls sound beside the cone.</summary>
internal static class WallCurves
{
    private static readonly IReadOnlyList<string> Panels = ["left", "right", "top", "bottom", "front", "rear"];
    private static readonly double[] ShownHz = [20, 31.5, 50, 80, 125, 200, 315, 500, 800, 1000];

    internal static int Deliver(Invocation call, Facts facts, int perDecade, OutputOption csv, OutputOption svg, OutputOption png)
    {
        if (facts.WallCurveOf(perDecade) is not { } curve || WallSoundChart.Of(facts) is not { } chart)
        {
            throw facts.Walls.Count == 0 ? Want.OfWalls("curves --walls", facts) : Want.OfBox("curves --walls", facts);
        }

        if (call.Text(svg) is not null)
        {
            call.Deliver(svg, ChartPicture.Svg(chart));
        }
        else if (call.Text(png) is not null)
        {
            call.Deliver(
                png,
                ChartPicture.HasFont
                    ? ChartPicture.Png(chart)
                    : throw Refusal.Path(
                        "curves: no sans font on this machine to write labels with; install one (DejaVu, Liberation, Noto, Arial) or draw --svg"
                    )
            );
        }
        else if (call.Text(csv) is { } file)
        {
            call.Deliver(
                csv,
                CsvText.Write(
                    ["frequency_hz", .. Panels.Select(p => $"{p}_db"), "power_sum_db", "worst_phase_db"],
                    curve.Select(p => (IReadOnlyList<double?>)[p.FrequencyHz, .. p.PanelsDb.Select(l => (double?)l), p.PowerSumDb, p.WorstPhaseDb])
                )
            );
            Common.SayWritten(call.Session, file, curve.Count);
        }
        else
        {
            call.Session.Print(Table(facts, chart, call.Session.Terminal));
        }

        return ExitCodes.Done;
    }

    private static string Table(Facts facts, Chart chart, Terminal terminal)
    {
        var fine = facts.WallCurveOf(400)!;
        return Tables.Of(
                terminal,
                "Walls beside the cone, volume velocities",
                [">frequency", .. Panels.Select(p => ">" + p), ">all by power", ">all in step"],
                ShownHz
                    .Select(f => fine.MinBy(p => Math.Abs(Math.Log(p.FrequencyHz / f)))!)
                    .Select(p =>
                        (IReadOnlyList<string>)
                            [Show.Frequency(p.FrequencyHz), .. p.PanelsDb.Select(Show.Level), Show.Level(p.PowerSumDb), Show.Level(p.WorstPhaseDb)]
                    )
            )
            + Words.Wrapped($"{chart.Answer} Edges supported; the box pressure drives them, the front also the cone's reaction.", terminal.Width)
            + "\n";
    }
}
