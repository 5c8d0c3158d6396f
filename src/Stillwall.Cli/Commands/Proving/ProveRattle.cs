using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Proving;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove rattle</c>: a slow sweep, a hand on each panel, and the answer.</summary>
internal static class ProveRattle
{
    private const string Play = "It is made by: stillwall signal sweep --out slow.wav --from 20Hz --to 200Hz --seconds 60.";

    internal static Verb Verb()
    {
        var heard = new TextOption("--heard", "PART", "the part that rattled");
        var none = new Flag("--none", "nothing rattled");
        var proof = new ProofVerb(new Brings("part", heard));
        return new Verb(
            "rattle",
            "what to play and where to lay a hand; then logs the answer",
            "stillwall prove rattle --none --project my-cabinet --log 2026-11-30"
        )
        {
            Step = WorkStep.Rattle,
            Takes = [heard, none, proof.Keeping.Project, proof.Keeping.Log],
            Do = call =>
            {
                var isHeard = call.Text(heard) is not null;
                if (isHeard && call.Has(none))
                {
                    throw Refusal.Input("prove rattle: --heard and --none are both given; one of them");
                }

                if (isHeard && string.IsNullOrWhiteSpace(call.Text(heard)))
                {
                    throw Refusal.Input("--heard is empty; the part that rattled, or --none");
                }

                if ((isHeard || call.Has(none)) && call.Text(proof.Keeping.Log) is null)
                {
                    throw Refusal.Input("--log is missing; the day of the listening, such as 2026-11-30");
                }

                var loaded = proof.Keeping.Load(call);
                return isHeard || call.Has(none) ? proof.Run(call, "rattle", loaded) : Ask(call.Session, loaded);
            },
        };
    }

    private static int Ask(Session session, LoadedProject? loaded)
    {
        var lines = Proof.Of("rattle").How.Select((line, i) => i == 0 ? $"{line} {Play}" : line);
        session.Print(string.Concat(lines.Select((line, i) => $"{i + 1}. {Words.Wrapped(line, session.Terminal.Width, 3, 3)}\n")));
        CareText.Say(session, WorkStep.Rattle, loaded?.Facts(), isQuiet: false);
        return ExitCodes.Done;
    }
}
