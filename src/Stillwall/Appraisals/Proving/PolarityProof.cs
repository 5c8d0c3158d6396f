using Stillwall.Numerics;
using Stillwall.Proofs.Polarities;

namespace Stillwall.Appraisals.Proving;

/// <summary>Proof of which way the cabinet pushes.</summary>
internal static class PolarityProof
{
    private const string OneAlone = "one microphone alone does not say which way is out; a recording of a main speaker too";

    private static readonly ProofInput Main = ProofInput.Sound("recording", isNeeded: true),
        MainSpeaker = ProofInput.Sound("main");

    internal static readonly ProofInput[] Inputs = [Main, MainSpeaker];

    internal static ProofOutcome Of(ProofRequest request)
    {
        var isPositive = IsPositive(request, Main);
        bool? isSame = request.Sounds(MainSpeaker.Name).Count > 0 ? IsPositive(request, MainSpeaker) == isPositive : null;
        var swing = isPositive ? "up" : "down";
        var report = new PolarityReport(isPositive, isSame);
        return isSame is not { } same
            ? new ProofOutcome(report, [new("first swing", swing)])
            {
                NothingKept = OneAlone,
                Entry = ProofOutcome.Logged("polarity", $"first swing {swing}"),
            }
            : new ProofOutcome(report, [new("first swing", swing), new("against the main speaker", same ? "the same way" : "the other way")])
            {
                Notes =
                [
                    "the two recordings are compared with each other, by one microphone at one place before each cone; which way is outward stays unknown",
                    .. same ? [] : new[] { "the two push against each other: swap the two wires of one of them, unless the plan wants it so" },
                ],
                Kept = [("measured.polarity", (same ? Projects.Polarity.Same : Projects.Polarity.Opposite).Word())],
                Entry = ProofOutcome.Logged("polarity", $"first swing {swing}, {(same ? "as" : "against")} the main speaker"),
            };
    }

    private static bool IsPositive(ProofRequest request, ProofInput input)
    {
        var reading = Polarity.Of(request.Sound(input));
        return reading.IsPositive ?? throw new ProofRefusal(input.Name, reading.Trouble!);
    }
}
