using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Proving;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Tables;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove sweep</c>: relative response by a microphone that nobody has calibrated.</summary>
internal static class ProveSweep
{
    // Without and with a project.
    private static readonly IReadOnlyList<string>[] Heads =
    [
        ["frequency_hz", "magnitude_db", "signal_to_noise_db"],
        ["frequency_hz", "magnitude_db", "signal_to_noise_db", "computed_db", "difference_db"],
    ];

    internal static Verb Verb()
    {
        static Brings Of(string input, string option, string description) => ProofVerb.Quantity("sweep", input, option, description);
        var csv = Common.Csv("the response");
        var proof = new ProofVerb(
            new Brings("recording", new TextArgument("RECORDED.wav", "what the microphone heard")),
            new Brings("played", new TextOption("--played", "PLAYED.wav", "the file that was played, as signal sweep wrote it")),
            new Brings(
                "recording",
                new TextOption("--more", "A.wav,B.wav", "further recordings of the same, such as places round the seat; energies are averaged"),
                IsList: true
            ),
            Of("points", "--points-per-octave", "bands in an octave; 24 where left out"),
            Of("gate", "--gate", "how long is listened after the arrival; 1.5 s where left out"),
            new Brings(
                "at",
                new TextOption(
                    "--at",
                    "PLACE",
                    "where the microphone stood, for the comparison with the project: near (a finger from the cone) or seat; near where left out"
                )
            )
        )
        {
            Outputs = [csv],
        };
        return new Verb(
            "sweep",
            "relative response, harmonics and noise from a recorded sweep, beside the computed one",
            "stillwall prove sweep heard.wav --played sweep.wav --csv response.csv"
        )
        {
            Step = WorkStep.Sweep,
            Takes = proof.All.Except([proof.Keeping.Keep]),
            Do = call =>
            {
                call.OneOutput(proof.Json, csv);
                return proof.Run(
                    call,
                    "sweep",
                    proof.Keeping.Load(call),
                    written: outcome => call.Deliver(csv, Csv(outcome.Sweeps!), [.. Heads.Select(head => string.Join(',', head))]),
                    below: outcome => "\n" + Table(outcome.Sweeps!, call.Session.Terminal)
                );
            },
        };
    }

    // Each point with its level by the plan; null where that is not computed.
    private static IEnumerable<(Stillwall.Proofs.Sweeps.SweepPoint Point, double? PlanDb)> Points(AveragedSweeps sweeps) =>
        sweeps.Mean.Points.Select((p, i) => (p, i < (sweeps.Computed?.Count ?? 0) ? (double?)sweeps.Computed![i].MagnitudeDb : null));

    private static string Csv(AveragedSweeps sweeps) =>
        CsvText.Write(
            Heads[sweeps.Computed is null ? 0 : 1],
            Points(sweeps)
                .Select(p =>
                    (IReadOnlyList<double?>)
                        [
                            p.Point.FrequencyHz,
                            p.Point.MagnitudeDb,
                            p.Point.SignalToNoiseDb,
                            .. sweeps.Computed is null ? Array.Empty<double?>() : [p.PlanDb, p.Point.MagnitudeDb - p.PlanDb],
                        ]
                )
        );

    private static string Table(AveragedSweeps sweeps, Terminal terminal)
    {
        double[] shown = [10, 12.5, 16, 20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500];
        var points = Points(sweeps).ToList();
        var rows = shown
            .Where(f => f >= points[0].Point.FrequencyHz * 0.97 && f <= points[^1].Point.FrequencyHz * 1.03)
            .Select(f =>
            {
                var (p, plan) = points.MinBy(k => Math.Abs(Math.Log(k.Point.FrequencyHz / f)));
                return (IReadOnlyList<string>)
                    [
                        Show.Frequency(p.FrequencyHz),
                        Show.Level(p.MagnitudeDb),
                        plan is { } c ? Show.Level(c) : "",
                        plan is { } d ? Show.Level(p.MagnitudeDb - d) : "",
                        p.SignalToNoiseDb is { } snr ? Show.Level(snr) : "",
                    ];
            });
        var isCompared = sweeps.Computed is not null;
        return Tables.Of(
            terminal,
            "0 dB is the mean from 100 to 200 Hz",
            [">frequency", ">measured", isCompared ? ">computed" : "", isCompared ? ">difference" : "", ">above noise"],
            rows
        );
    }
}
