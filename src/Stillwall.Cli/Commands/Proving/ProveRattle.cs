using Stillwall.Appraisals.Care;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Proofs;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove rattle</c>: a slow sweep, a hand on each panel, and the answer.</summary>
internal static class ProveRattle
{
    private static readonly string[] Sheet =
    [
        "Play: stillwall signal sweep --out slow.wav --from 20Hz --to 200Hz --seconds 60, at the everyday level.",
        "Left and right side, top, bottom, front, rear: a palm on the middle of each; does it buzz under the hand?",
        "Driver's frame and screws, gasket, grille, terminal and its nuts, feet, accent rings: press each in turn; does a buzz stop?",
        "Wires inside: a knock that moves with the volume. Then the room: doors, frames, lamps buzz too; touch them before blaming the cabinet.",
        "Air: a hiss or chuffing at one place is a leak; a wet finger finds it.",
    ];

    internal static Verb Verb()
    {
        var heard = new TextOption("--heard", "PART", "the part that rattled");
        var none = new Flag("--none", "nothing rattled");
        var keeping = new Keeping();
        return new Verb(
            "rattle",
            "what to play and where to lay a hand; then logs the answer",
            "stillwall prove rattle --none --project my-cabinet --log 2026-11-30"
        )
        {
            Step = WorkStep.Rattle,
            Takes = [heard, none, keeping.Project, keeping.Log],
            Do = call =>
            {
                var part = call.Text(heard);
                if (part is not null && call.Has(none))
                {
                    throw Refusal.Input("prove rattle: --heard and --none are both given; one of them");
                }

                var isAnswered = part is not null || call.Has(none);
                if (isAnswered && call.Text(keeping.Log) is null)
                {
                    throw Refusal.Input("--log is missing; the day of the listening, such as 2026-11-30");
                }

                var loaded = keeping.Load(call);
                if (!isAnswered)
                {
                    call.Session.Print(string.Concat(Sheet.Select((line, i) => $"{i + 1}. {Words.Wrapped(line, call.Session.Terminal.Width, 3, 3)}\n")));
                    CareText.Say(call.Session, WorkStep.Rattle, loaded?.Facts(), isQuiet: false);
                    return ExitCodes.Done;
                }

                keeping.Save(call, loaded, part is null ? Listening.NoRattle : Listening.Rattle, "slow sweep by ear", [], isQuiet: false, part ?? "cabinet");
                return ExitCodes.Done;
            },
        };
    }
}
