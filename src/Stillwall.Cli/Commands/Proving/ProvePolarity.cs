using Stillwall.Appraisals.Care;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Proofs.Polarities;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove polarity</c>: do two speakers push the same way.</summary>
internal static class ProvePolarity
{
    internal static Verb Verb()
    {
        var file = new TextArgument("FILE.wav", "signal pulses, recorded close to the cabinet's cone");
        var against = new TextOption("--against", "FILE.wav", "the same, recorded close to a main speaker's woofer with the same microphone");
        var json = Common.Json;
        var keeping = new Keeping();
        return new Verb(
            "polarity",
            "which way the first push goes, and whether the main speakers go the same way",
            "stillwall prove polarity cabinet.wav --against main.wav"
        )
        {
            Step = WorkStep.Polarity,
            Takes = [file, against, json, keeping.Project, keeping.Keep, keeping.Log],
            Do = call =>
            {
                var loaded = keeping.Load(call);
                if (call.Has(keeping.Keep) && call.Text(against) is null)
                {
                    throw Refusal.Input("prove polarity: --keep needs --against; one microphone alone does not say which way is out");
                }

                var isPositive = Read(call.Session, call.Text(file)!);
                bool? isSame = call.Text(against) is { } other ? Read(call.Session, other) == isPositive : null;
                var said = $"first swing {(isPositive ? "up" : "down")}";
                var more = isSame switch
                {
                    true => ", as the other: they push the same way",
                    false => ", against the other: swap the two wires of one of them",
                    _ => ": one microphone alone does not say which way is out; record a main speaker too, with --against",
                };
                if (call.Has(json))
                {
                    call.Session.Print(ResultJson.Write(new PolarityReport(isPositive, isSame)));
                }
                else
                {
                    call.Session.PrintLine(said + more);
                }

                keeping.SaveStated(
                    call,
                    loaded,
                    "polarity",
                    said
                        + (
                            isSame switch
                            {
                                true => ", as the main speaker",
                                false => ", against the main speaker",
                                _ => "",
                            }
                        ),
                    isSame is { } way ? [("polarity", way ? "same" : "opposite")] : [],
                    call.Has(json)
                );
                CareText.Say(call.Session, WorkStep.Polarity, loaded?.Facts(), call.Has(json));
                return ExitCodes.Done;
            },
        };
    }

    private static bool Read(Session session, string file)
    {
        var reading = Polarity.Of(Sounds.Load(session, file));
        return reading.IsPositive ?? throw Refusal.Input($"{file}: {reading.Trouble}");
    }
}
