using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Files.Tables;
using Stillwall.Projects;
using Stillwall.Proofs.Sweeps;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove sweep</c>: relative response by a microphone that nobody has calibrated.</summary>
internal static class ProveSweep
{
    private static readonly IReadOnlyList<string> Places = ["near", "seat"];

    // Without and with a project.
    private static readonly IReadOnlyList<string>[] Heads =
    [
        ["frequency_hz", "magnitude_db", "signal_to_noise_db"],
        ["frequency_hz", "magnitude_db", "signal_to_noise_db", "computed_db", "difference_db"],
    ];

    internal static Verb Verb()
    {
        var file = new TextArgument("RECORDED.wav", "what the microphone heard");
        var played = new TextOption("--played", "PLAYED.wav", "the file that was played, as signal sweep wrote it");
        var more = new TextOption("--more", "A.wav,B.wav", "further recordings of the same, such as places round the seat; energies are averaged");
        var points = new QuantityOption("--points-per-octave", Dimension.None, "bands in an octave; 24 where left out") { IsWhole = true, Span = (1, 96) };
        var gate = new QuantityOption("--gate", Dimension.Time, "how long is listened after the arrival; 1.5 s where left out") { Span = (0.02, 5) };
        var at = new TextOption(
            "--at",
            "PLACE",
            "where the microphone stood, for the comparison with the project: near (a finger from the cone) or seat; near where left out",
            Places
        );
        var csv = Common.Csv("the response");
        var json = Common.Json;
        var keeping = new Keeping();
        return new Verb(
            "sweep",
            "relative response, harmonics and noise from a recorded sweep, beside the computed one",
            "stillwall prove sweep heard.wav --played sweep.wav --csv response.csv"
        )
        {
            Step = WorkStep.Sweep,
            Takes = [file, played, more, points, gate, at, csv, json, keeping.Project, keeping.Log],
            Do = call =>
            {
                call.OneOutput(json, csv);
                var loaded = keeping.Load(call);
                var facts = loaded?.Facts();
                var place = call.Text(at) ?? "near";
                var result = Read(
                    call,
                    [call.Text(file)!, .. call.Text(more)?.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) ?? []],
                    call.Needed(played),
                    new SweepSettings((int)(call.Value(points) ?? 24), call.Value(gate) ?? 1.5)
                );
                var computed = facts is null ? null : Computed(facts, place, result);
                var isQuiet = call.Has(json) || call.Text(csv) == "-";
                call.Deliver(csv, Csv(result, computed), [.. Heads.Select(head => string.Join(',', head))]);
                if (call.Has(json))
                {
                    call.Session.Print(ResultJson.Write(result));
                }
                else if (!isQuiet)
                {
                    call.Session.Print(Table(result, computed, place, call.Session.Terminal));
                }

                keeping.Save(call, loaded, "sweep", $"{place}, {Show.Number(result.Points.Count)} points", [], isQuiet);
                CareText.Say(call.Session, WorkStep.Sweep, facts, isQuiet);
                return ExitCodes.Done;
            },
        };
    }

    private static SweepResult Read(Invocation call, IReadOnlyList<string> files, string played, SweepSettings settings)
    {
        var signal = Sounds.Load(call.Session, played);
        var results = new List<SweepResult>();
        foreach (var file in files)
        {
            var reading = RelativeSweep.Of(Sounds.Load(call.Session, file), signal, settings);
            Sounds.Warn(call.Session, file, reading.Warnings);
            results.Add(reading.Result ?? throw Refusal.Input($"{file}: {reading.Trouble}"));
        }

        return RelativeSweep.Mean(results);
    }

    // The computed level at the points, set to zero as the measured one is: half space near the cone, the rigid room at the seat.
    private static IReadOnlyList<SweepPoint> Computed(Facts facts, string place, SweepResult result)
    {
        var network = facts.System?.Network ?? throw Want.OfBox("prove sweep, compared with the project", facts);
        var room = place == "seat" ? facts.Room ?? throw Want.OfRoom("prove sweep, compared at the seat", facts.Project) : null;
        return ComputedShape.Of(result, network, room);
    }

    private static string Csv(SweepResult result, IReadOnlyList<SweepPoint>? computed)
    {
        return CsvText.Write(
            Heads[computed is null ? 0 : 1],
            result.Points.Select(
                (p, i) =>
                {
                    var plan = computed is not null && i < computed.Count ? (double?)computed[i].MagnitudeDb : null;
                    return (IReadOnlyList<double?>)(
                        computed is null
                            ? [p.FrequencyHz, p.MagnitudeDb, p.SignalToNoiseDb]
                            : [p.FrequencyHz, p.MagnitudeDb, p.SignalToNoiseDb, plan, p.MagnitudeDb - plan]
                    );
                }
            )
        );
    }

    private static string Table(SweepResult result, IReadOnlyList<SweepPoint>? computed, string place, Terminal terminal)
    {
        double[] shown = [10, 12.5, 16, 20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500];
        var rows = shown
            .Where(f => f >= result.Points[0].FrequencyHz * 0.97 && f <= result.Points[^1].FrequencyHz * 1.03)
            .Select(f =>
            {
                var i = Enumerable.Range(0, result.Points.Count).MinBy(k => Math.Abs(Math.Log(result.Points[k].FrequencyHz / f)));
                var (p, plan) = (result.Points[i], computed is not null && i < computed.Count ? (double?)computed[i].MagnitudeDb : null);
                return (IReadOnlyList<string>)
                    [
                        Show.Frequency(p.FrequencyHz),
                        Show.Level(p.MagnitudeDb),
                        plan is { } c ? Show.Level(c) : "",
                        plan is { } d ? Show.Level(p.MagnitudeDb - d) : "",
                        p.SignalToNoiseDb is { } snr ? Show.Level(snr) : "",
                    ];
            });
        var say =
            $"It arrived {Show.Number(result.DelayS * 1e3)} ms after the file's beginning. Harmonics: "
            + $"{(result.HarmonicDistortion is { } h ? Show.Percent(h) : "unknown")}. "
            + $"Above the noise: {(result.SignalToNoiseDb is { } snr ? Show.Level(snr) : "no noise heard")}. "
            + (
                result.ClockDoubtDb is { } clock
                    ? $"Player and recorder by clocks of their own, up to 100 ppm apart, may move a point by {Show.Number(clock, 1)} dB from 20 to 400 Hz. "
                    : ""
            )
            + (
                place == "near"
                    ? "Close to the cone the shape is that of the free field below some 200 Hz: bends and slopes may be compared with the computed curve, "
                        + "levels may not. "
                    : "At the seat the room counts as much as the cabinet: before and after may be compared, peaks and dips with the room model in their "
                        + "places, not in their heights. "
            )
            + "The microphone's own response is in every figure: a phone rolls off below 50 to 100 Hz, so what falls there may be the phone.";
        return Tables.Of(
                terminal,
                "Relative response: 0 dB is the mean from 100 to 200 Hz",
                [">frequency", ">measured", computed is null ? "" : ">computed", computed is null ? "" : ">difference", ">above noise"],
                rows
            )
            + "\n"
            + Words.Wrapped(say, terminal.Width)
            + "\n";
    }
}
