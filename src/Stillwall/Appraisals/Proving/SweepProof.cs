using Stillwall.Appraisals.Explaining;
using Stillwall.Figures;
using Stillwall.Projects;
using Stillwall.Proofs.Sweeps;

namespace Stillwall.Appraisals.Proving;

/// <summary>Proof by a sweep that was played and recorded, once or several times.</summary>
internal static class SweepProof
{
    // More are not averaged: whoever asks keeps them meanwhile (our choice).
    private const int MostSweeps = 32;

    private static readonly ProofInput Main = ProofInput.Sound("recording", isNeeded: true),
        Played = ProofInput.Sound("played", isNeeded: true),
        At = ProofInput.OneOf("at", "near", "seat"),
        Points = ProofInput.Quantity("points", new QuantityRange(Dimension.None, (1, 96)) { IsWhole = true }),
        Gate = ProofInput.Quantity("gate", Dimension.Time, 0.02, 5),
        Average = new("average");

    internal static readonly ProofInput[] Inputs = [Main, Played, At, Points, Gate, Average];

    internal static ProofOutcome Of(ProofRequest request)
    {
        var (place, facts) = (request.Word(At), request.Facts);
        var settings = new SweepSettings();
        settings = new SweepSettings((int)(request.Perhaps(Points) ?? settings.PointsPerOctaveCount), request.Perhaps(Gate) ?? settings.GateS);
        var (played, sounds, warnings) = (request.Sound(Played), request.Sounds(Main.Name), new List<AboutInput>());
        var sweeps = new List<SweepResult>(Earlier(request, place));
        foreach (var (i, sound) in sounds.Index())
        {
            var reading = RelativeSweep.Of(sound, played, settings);
            warnings.AddRange(ProofOutcome.About(Main, reading.Warnings, i));
            sweeps.Add(ProofRefusal.Said(Main, reading.Result, reading.Trouble, i));
        }

        if (sounds.Count == 0 || sweeps.Count > MostSweeps)
        {
            throw sounds.Count == 0
                ? ProofRequest.Missing(Main)
                : new ProofRefusal("", $"more than {Show.Number(MostSweeps)} recordings are not averaged; begin anew");
        }

        var r = RelativeSweep.Mean(sweeps);
        var (computed, missing) = Computed(facts, r, place == "seat");
        ExplainedInput[] beside = [ProofRequest.Recorded(sounds[0]), new("recording.played", "the sweep as played", "1", null)];
        ProofFigure Figure(string name, string text, string property) => new(name, text, () => Why.Of(facts, r, property, null, beside));
        return new ProofOutcome(
            r,
            [
                Figure("arrived after", $"{Show.Number(r.DelayS * 1e3)} ms", nameof(r.DelayS)),
                Figure("harmonics", r.HarmonicDistortion is { } h ? Show.Percent(h) : "unknown", nameof(r.HarmonicDistortion)),
                Figure("above the noise", r.SignalToNoiseDb is { } snr ? Show.Level(snr) : "no noise heard", nameof(r.SignalToNoiseDb)),
                Figure(
                    "two clocks may move it, 20 to 400 Hz",
                    r.ClockDoubtDb is { } clock ? $"up to {Show.Number(clock, 1)} dB" : "unknown",
                    nameof(r.ClockDoubtDb)
                ),
                new("recordings averaged", Show.Number(sweeps.Count)),
            ]
        )
        {
            Warnings = warnings,
            Notes = [.. request.Plan is null || missing is null ? [] : new[] { ImpedanceProof.NotCompared(missing) }, Concluded(place), Microphone],
            Entry = ProofOutcome.Logged("sweep", $"{place}, {Show.Number(r.Points.Count)} points, {Show.Number(sweeps.Count)} averaged"),
            Chart = ProofCharts.Sweep(r, computed),
            Sweeps = new AveragedSweeps(place, sweeps, r, computed),
        };
    }

    private const string Microphone =
        "the microphone's own response is in every figure: a phone rolls off below 50 to 100 Hz, so what falls there may be the phone";

    private static string Concluded(string place) =>
        place == "near"
            ? "close to the cone the shape is that of the free field below some 200 Hz: bends and slopes may be compared with the computed curve, levels may "
                + "not"
            : "at the seat the room counts as much as the cabinet: before and after may be compared, peaks and dips with the room model in their places, "
                + "not in their heights";

    // The level at the points, set to zero as the measured one is: half space near the cone, the rigid room at the seat.
    private static (IReadOnlyList<SweepPoint>? Shape, string? Missing) Computed(Facts facts, SweepResult result, bool isSeat) =>
        facts.System is not { } system ? (null, KeyNames.Missing(facts.MissingForBox))
        : isSeat && facts.Room is null ? (null, KeyNames.Missing(facts.MissingForRoom))
        : (ComputedShape.Of(result, system.Network, isSeat ? facts.Room : null), null);

    private static IReadOnlyList<SweepResult> Earlier(ProofRequest request, string place) =>
        request.Stated(Average.Name) is { Length: > 0 } && request.Before?.Sweeps is { } before && before.Place == place ? before.Singles : [];
}
