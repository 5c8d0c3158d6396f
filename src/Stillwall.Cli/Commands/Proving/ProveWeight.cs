using Stillwall.Appraisals.Care;
using Stillwall.Cli.Running;
using Stillwall.Files.Tables;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove weight</c>: when the cast is dry.</summary>
internal static class ProveWeight
{
    internal static Verb Verb()
    {
        var file = new TextArgument("LOG.csv", "columns date and mass_kg: the cabinet on the scales, day by day");
        var proof = new ProofVerb();
        return new Verb("weight", "when the cast will be dry, by weighing it", "stillwall prove weight weights.csv --project my-cabinet")
        {
            Step = WorkStep.WeighIn,
            Takes = [file, proof.Json, proof.Keeping.Project],
            Do = call =>
            {
                var loaded = proof.Keeping.Load(call);
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

                return proof.Run(call, "weight", loaded, request => request with { Weighings = [.. read.Rows.Select(r => (r.Date, r.MassKg))] });
            },
        };
    }
}
