using Stillwall.Appraisals.Care;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove polarity</c>: do two speakers push the same way.</summary>
internal static class ProvePolarity
{
    internal static Verb Verb()
    {
        var proof = new ProofVerb(
            new Brings("recording", new TextArgument("FILE.wav", "signal pulses, recorded close to the cabinet's cone")),
            new Brings("main", new TextOption("--against", "FILE.wav", "the same, recorded close to a main speaker's woofer with the same microphone"))
        );
        return new Verb(
            "polarity",
            "which way the first push goes, and whether the main speakers go the same way",
            "stillwall prove polarity cabinet.wav --against main.wav"
        )
        {
            Step = WorkStep.Polarity,
            Takes = proof.All,
            Do = call => proof.Run(call, "polarity", proof.Keeping.Load(call)),
        };
    }
}
