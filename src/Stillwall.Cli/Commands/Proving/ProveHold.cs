using Stillwall.Appraisals.Care;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove hold</c>: how slowly the cone creeps back.</summary>
internal static class ProveHold
{
    internal static Verb Verb()
    {
        var proof = new ProofVerb(
            ProofVerb.Quantity(
                "hold",
                "seconds",
                "--seconds",
                "time in which the cone creeps 63 % of the way back, s, after ten seconds pressed in and let go"
            )
        );
        return new Verb(
            "hold",
            "press the cone in for ten seconds and let go: how tight is the cabinet",
            "stillwall prove hold --seconds 2.1 --project my-cabinet --keep --log 2026-11-30"
        )
        {
            Step = WorkStep.HoldTest,
            Takes = proof.All,
            Do = call => proof.Run(call, "hold", proof.Keeping.Load(call) ?? LoadedProject.Load(call.Session, null)),
        };
    }
}
