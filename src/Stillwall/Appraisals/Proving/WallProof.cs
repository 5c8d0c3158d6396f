using Stillwall.Appraisals.Explaining;
using Stillwall.Proofs.PartyWalls;

namespace Stillwall.Appraisals.Proving;

/// <summary>Proof of the party wall by one microphone on both sides.</summary>
internal static class WallProof
{
    // Accepted range of measured.party_wall.
    private const double LeastDb = -20,
        MostDb = 120;

    private static readonly ProofInput Main = ProofInput.Sound("recording", isNeeded: true),
        There = ProofInput.Sound("there", isNeeded: true),
        Background = ProofInput.Sound("background");

    internal static readonly ProofInput[] Inputs = [Main, There, Background];

    internal static ProofOutcome Of(ProofRequest request)
    {
        var facts = request.Facts;
        var (here, there, background) = (request.Sound(Main), request.Sound(There), request.PerhapsSound(Background));
        var reading = LevelDifference.Of(here, there, background);
        if (reading.Trouble is { } trouble)
        {
            throw new ProofRefusal("", trouble);
        }

        if (reading.Bands.Any(b => b.DifferenceDb is < LeastDb or > MostDb))
        {
            throw new ProofRefusal(
                There.Name,
                "a band is louder on the other side than on this one by 20 dB or more, or the two are not of one gain; this side first, at one gain"
            );
        }

        ExplainedInput[] beside =
        [
            ProofRequest.Recorded(here),
            ProofRequest.Recorded(there, There.Name),
            background is null ? new("recording.background", "unknown", "1", null) : ProofRequest.Recorded(background, Background.Name),
        ];
        return new ProofOutcome(
            reading,
            [
                .. reading.Bands.Select(b => new ProofFigure(
                    Show.Frequency(b.BandHz),
                    $"{(b.IsAtLeast ? "at least " : "")}{Bands.Of(b.DifferenceDb, b.UncertaintyDb, "dB")} "
                        + $"({Show.Level(b.SourceDb)} here, {Show.Level(b.ReceiverDb)} there)",
                    () => Why.Of(facts, b, nameof(b.DifferenceDb), null, beside)
                )),
            ]
        )
        {
            Caption = "± is half of the 95 % band by the length of the recordings",
            Warnings = [.. ProofOutcome.About(There, reading.Warnings)],
            Notes =
            [
                "levels are re full scale: only differences mean something, for nobody has calibrated the microphone; several places in each room, averaged "
                    + "by walking slowly, count more than long recordings",
            ],
            Kept = [ProofOutcome.Measured("measured.party_wall", [.. reading.Bands.Select(b => b.DifferenceDb)])],
            Entry = ProofOutcome.Logged("party wall", $"{Show.Level(reading.Bands[4].DifferenceDb)} at {Show.Frequency(reading.Bands[4].BandHz)}"),
        };
    }
}
