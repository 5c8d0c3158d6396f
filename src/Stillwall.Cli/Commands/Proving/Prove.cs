using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove</c>: the built thing against the plan.</summary>
internal static class Prove
{
    internal static Verb Verb() =>
        new(
            "prove",
            "proves the build by what is on the bench: sound card and resistor, phone, scales, caliper, stopwatch, ear",
            "stillwall prove impedance z.wav --reference \"10 ohm\" --project my-cabinet --keep --log 2026-11-30"
        )
        {
            Takes =
            [
                ProveImpedance.Verb(),
                ProveSweep.Verb(),
                ProveWall.Verb(),
                ProveTap.Verb(),
                ProveHold.Verb(),
                ProveWeight.Verb(),
                ProveRattle.Verb(),
                ProvePolarity.Verb(),
            ],
        };
}
