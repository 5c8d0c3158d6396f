using Stillwall.Proofs;

namespace Stillwall.Appraisals.Proving;

/// <summary>Proof by ear: a slow sweep, a hand on each panel, and the answer.</summary>
internal static class RattleProof
{
    internal static readonly ProofInput Part = new("part");

    internal static readonly string[] How =
    [
        "Play a slow sweep from 20 to 200 Hz in a minute, up to the everyday level.",
        "Left and right side, top, bottom, front, rear: a palm on the middle of each; does it buzz under the hand?",
        "Driver's frame and screws, gasket, grille, terminal and its nuts, feet, accent rings: press each in turn; does a buzz stop?",
        "Wires inside: a knock that moves with the volume; a knock may also be the driver at its end. Then the room: doors, frames, lamps buzz too; touch "
            + "them before blaming the cabinet.",
        "Air: a hiss or chuffing at one place is a leak; a wet finger finds it.",
    ];

    internal static ProofOutcome Of(ProofRequest request)
    {
        var part = request.Stated(Part.Name)?.Trim() ?? "";
        var isQuiet = part.Length == 0;
        return new ProofOutcome(null, [new("heard", isQuiet ? "nothing rattled" : $"{Shown(part)} rattled")])
        {
            Notes = ["the ear's answer, at the level that was played and for what was playing; the finding takes the last answer about each part"],
            Entry = ProofOutcome.Logged(isQuiet ? Listening.NoRattle : Listening.Rattle, "slow sweep by ear", isQuiet ? "cabinet" : part),
        };
    }

    private static string Shown(string part) => new([.. part.Take(40).Select(c => char.IsControl(c) ? ' ' : c)]);
}
