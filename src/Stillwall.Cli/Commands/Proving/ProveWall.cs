using Stillwall.Appraisals.Care;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove wall</c>: level difference through the party wall.</summary>
internal static class ProveWall
{
    internal static Verb Verb()
    {
        var proof = new ProofVerb(
            new Brings("recording", new TextArgument("HERE.wav", "noise or a slow sweep, recorded in your room")),
            new Brings(
                "there",
                new TextArgument("THERE.wav", "the same, recorded in the neighbour's room with the same microphone and gain, with the neighbour's consent")
            ),
            new Brings("background", new TextOption("--background", "FILE.wav", "the neighbour's room with nothing playing"))
        );
        return new Verb(
            "wall",
            "how much less of each third-octave is next door, which replaces the table's figure for the wall",
            "stillwall prove wall here.wav there.wav --background quiet.wav --project my-cabinet --keep"
        )
        {
            Step = WorkStep.PartyWall,
            Takes = proof.All,
            Do = call => proof.Run(call, "wall", proof.Keeping.Load(call)),
        };
    }
}
