using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cabinets;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove hold</c>: how slowly the cone creeps back.</summary>
internal static class ProveHold
{
    internal static Verb Verb()
    {
        var seconds = new QuantityOption(
            "--seconds",
            Dimension.None,
            "time in which the cone creeps 63 % of the way back, s, after ten seconds pressed in and let go"
        )
        {
            Span = (0.01, 3600),
        };
        var json = Common.Json;
        var keeping = new Keeping();
        return new Verb(
            "hold",
            "press the cone in for ten seconds and let go: how tight is the cabinet",
            "stillwall prove hold --seconds 2.1 --project my-cabinet --keep --log 2026-11-30"
        )
        {
            Step = WorkStep.HoldTest,
            Takes = [seconds, json, keeping.Project, keeping.Keep, keeping.Log],
            Do = call =>
            {
                var time = call.Needed(seconds);
                var loaded = keeping.Load(call) ?? LoadedProject.Load(call.Session, null);
                var facts = loaded.Facts();
                var system = facts.System ?? throw Want.OfBox("prove hold", facts);
                var result = HoldTest.Of(time, system.NetVolumeM3, system.Network);
                if (call.Has(keeping.Keep) && result.Bound == "at most")
                {
                    throw Refusal.Input(
                        $"prove hold: {Show.Number(time)} s is too fast for a stopwatch and says only how leaky it is at least; nothing to keep: find the "
                            + "hole, then test again"
                    );
                }

                call.Session.Print(call.Has(json) ? ResultJson.Write(result) : Table(result, time, call.Session.Terminal));
                keeping.Save(
                    call,
                    loaded,
                    "hold",
                    $"{Show.Number(time)} s, leak Q {(result.Bound == "none" ? "" : result.Bound + " ")}{Show.Number(result.LeakQ, 2)}",
                    [("leak_resistance", [result.LeakResistancePaSM3])],
                    call.Has(json)
                );
                CareText.Say(call.Session, WorkStep.HoldTest, facts, call.Has(json));
                return ExitCodes.Done;
            },
        };
    }

    private static string Said(string bound) =>
        bound switch
        {
            "at most" => ": too fast for a stopwatch; look for the hole",
            "at least" => ": tighter than this test can tell",
            _ => ", a fifth either way",
        };

    private static string Table(HoldTestResult r, double time, Terminal terminal) =>
        Tables.Of(
            terminal,
            $"Hold test: {Show.Number(time)} s",
            ["", ""],
            [
                ["leak Q", $"{(r.Bound == "none" ? "about" : r.Bound)} {Show.Number(r.LeakQ, 2)}{Said(r.Bound)}"],
                ["resistance of the leak", $"{(r.Bound == "none" ? "" : r.Bound + " ")}{Show.Number(r.LeakResistancePaSM3 / 1e6, 2)} MPa·s/m³"],
            ]
        );
}
