using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Files.Tables;
using Stillwall.Pours;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove weight</c>: when the cast is dry.</summary>
internal static class ProveWeight
{
    internal static Verb Verb()
    {
        var file = new TextArgument("LOG.csv", "columns date and mass_kg: the cabinet on the scales, day by day");
        var json = Common.Json;
        var keeping = new Keeping();
        return new Verb("weight", "when the cast will be dry, by weighing it", "stillwall prove weight weights.csv --project my-cabinet")
        {
            Step = WorkStep.WeighIn,
            Takes = [file, json, keeping.Project],
            Do = call =>
            {
                var facts = keeping.Load(call)?.Facts();
                var name = call.Text(file)!;
                var read = WeighInTable.Read(call.Session.Read(name, WeighInTable.GreatestLength));
                if (read.Faults.Count > 0 || read.Rows.Count == 0)
                {
                    throw Refusal.Input(
                        read.Faults.Count > 0
                            ? read.Faults.Select(f => $"{Path.GetFileName(name)}:{f}")
                            : [$"{Path.GetFileName(name)}:1: has no weighing; one a line"]
                    );
                }

                var report = Of(read.Rows, facts);
                call.Session.Print(
                    call.Has(json) ? ResultJson.Write(report) : Table(report, read.Rows.Count, facts?.Show ?? new Show(false, ""), call.Session.Terminal)
                );
                CareText.Say(call.Session, WorkStep.WeighIn, facts, call.Has(json));
                return ExitCodes.Done;
            },
        };
    }

    private static DryOutReport Of(IReadOnlyList<DatedMass> rows, Facts? facts)
    {
        var stoichiometric = facts is { Mass.WetKg: { } wet, Pour: { WetInCabinetKg: { } with, DryInCabinetKg: { } without } }
            ? DryOut.StoichiometricDryMassKg(wet, with - without)
            : (double?)null;
        return DryOutReport.Of([.. rows.Select(r => (r.Date, r.MassKg))], facts?.Limits.Dryness ?? new Projects.Limits().Dryness, stoichiometric);
    }

    private static string Table(DryOutReport r, int count, Show show, Terminal terminal) =>
        Tables.Of(
            terminal,
            $"Drying, by {Show.Number(count)} weighings",
            ["", ""],
            [
                [
                    "dry",
                    r.DryMassKg is { } dry
                        ? show.Mass(dry) + (r.DryMassDoubtKg is { } doubt ? $", ± {show.Mass(doubt)} with 95 %" : "")
                        : "unknown: three days or more, until the masses bend towards an end",
                ],
                ["dry by the plan", r.StoichiometricDryMassKg is { } plan ? show.Mass(plan) : "unknown without a project that can be poured"],
                ["drying time constant", r.TimeConstantDays is { } days ? $"{Show.Number(days, 2)} days" : "unknown"],
                [
                    "ready to be sealed",
                    r.ReadyDate is { } date
                        ? date + (r.ReadyDoubtDays is { } days2 ? $", ± {Show.Number(Math.Ceiling(days2))} days with 95 %, if it goes on as it has" : "")
                        : "unknown",
                ],
            ]
        );
}
