using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Figures;
using Stillwall.Files.Json;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Sweeps;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>Proof by a sweep that was played and recorded, once or several times.</summary>
internal static class SweepProof
{
    // More are not averaged: the page keeps them while it is open (our choice).
    private const int MostSweeps = 32;

    internal static ProofOutcome Of(ProofRequest request, Recording played)
    {
        var (place, facts) = (request.Asked("at") ?? "near", request.Facts);
        var isSeat = place is "seat" or "near" ? place == "seat" : throw new ProofRefusal(ProofTexts.NoSuchPlace(place));
        var recordings = request.Sounds(ProofRequest.Main);
        var (sweeps, warnings) = (new List<SweepResult>(Earlier(request, place)), new List<string>());
        foreach (var recording in recordings)
        {
            var reading = RelativeSweep.Of(recording, played, new SweepSettings());
            warnings.AddRange(reading.Warnings.Except(warnings));
            sweeps.Add(ProofReader.Said(reading.Result, reading.Trouble));
        }

        if (recordings.Count == 0 || sweeps.Count > MostSweeps)
        {
            throw new ProofRefusal(recordings.Count == 0 ? ProofTexts.NotBrought(ProofRequest.Main) : ProofTexts.TooMany(MostSweeps));
        }

        var r = RelativeSweep.Mean(sweeps);
        var computed =
            facts.System is { } system && (!isSeat || facts.Room is not null) ? ComputedShape.Of(r, system.Network, isSeat ? facts.Room : null) : null;
        ExplainedInput[] beside = [ProofRequest.Recorded(recordings[0]), new("recording.played", ProofTexts.Played, "1", null)];
        ProofFigure Figure(string name, string text, string property) => new(name, text, () => Why.Of(facts, r, property, null, beside));
        return new ProofOutcome(
            ProofReader.Sweep,
            ResultJson.Write(r),
            [
                Figure(ProofTexts.Delay, $"{Show.Number(r.DelayS * 1e3)} ms", nameof(r.DelayS)),
                Figure(ProofTexts.Harmonics, r.HarmonicDistortion is { } h ? Show.Percent(h) : ProofTexts.NotKnown, nameof(r.HarmonicDistortion)),
                Figure(ProofTexts.AboveNoise, r.SignalToNoiseDb is { } snr ? Show.Level(snr) : ProofTexts.NoNoise, nameof(r.SignalToNoiseDb)),
                Figure(
                    ProofTexts.Clocks,
                    r.ClockDoubtDb is { } clock ? ProofTexts.UpTo + $"{Show.Number(clock, 1)} dB" : ProofTexts.NotKnown,
                    nameof(r.ClockDoubtDb)
                ),
                new(ProofTexts.AveragedCount, Show.Number(sweeps.Count), null),
            ],
            [.. request.Odd, .. warnings, isSeat ? ProofTexts.AtSeat : ProofTexts.Near],
            [],
            ProofReader.Entry("sweep", ProofTexts.SweepNote(place, sweeps.Count, r.Points.Count))
        )
        {
            Chart = ProofCharts.Sweep(r, computed),
            Averaged = (place, sweeps),
        };
    }

    private static IReadOnlyList<SweepResult> Earlier(ProofRequest request, string place) =>
        request.Asked("average") is { Length: > 0 } && request.Before?.Averaged is { } before && before.Place == place ? before.Sweeps : [];
}
