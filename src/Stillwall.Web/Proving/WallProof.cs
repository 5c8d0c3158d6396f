using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Explaining;
using Stillwall.Files.Json;
using Stillwall.Proofs.PartyWalls;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>Proof of the party wall by one microphone on both sides.</summary>
internal static class WallProof
{
    // Accepted range of measured.party_wall.
    private const double LeastDb = -20,
        MostDb = 120;

    internal static ProofOutcome Of(ProofRequest request)
    {
        var facts = request.Facts;
        var (here, there, background) = (request.Sound(), request.Sound("there"), request.PerhapsSound("background"));
        var reading = LevelDifference.Of(here, there, background);
        if (reading.Trouble is { } trouble)
        {
            throw new ProofRefusal(trouble);
        }

        if (reading.Bands.Any(b => b.DifferenceDb is < LeastDb or > MostDb))
        {
            throw new ProofRefusal(ProofTexts.WallTurned);
        }

        ExplainedInput[] beside =
        [
            ProofRequest.Recorded(here),
            ProofRequest.Recorded(there, "there"),
            background is null ? new("recording.background", ProofTexts.NotKnown, "1", null) : ProofRequest.Recorded(background, "background"),
        ];
        return new ProofOutcome(
            ProofReader.Wall,
            ResultJson.Write(reading),
            [
                .. reading.Bands.Select(b => new ProofFigure(
                    Show.Frequency(b.BandHz),
                    (b.IsAtLeast ? ProofTexts.AtLeast : "") + Bands.Of(b.DifferenceDb, b.UncertaintyDb, "dB"),
                    () => Why.Of(facts, b, nameof(b.DifferenceDb), null, beside)
                )),
            ],
            [.. request.Odd, .. reading.Warnings, ProofTexts.WallSays, Cautions.Of(Hazard.LocalRules)],
            [ProofRequest.Kept("measured.party_wall", [.. reading.Bands.Select(b => b.DifferenceDb)])],
            ProofReader.Entry("party wall", $"{Show.Level(reading.Bands[4].DifferenceDb)} at {Show.Frequency(reading.Bands[4].BandHz)}")
        );
    }
}
