using Stillwall.Appraisals.Explaining;
using Stillwall.Pours;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Proving;

/// <summary>Proof by scales: when the cast will be dry, by weighings with their days or by those of the logbook.</summary>
internal static class WeightProof
{
    internal static readonly ProofInput Mass = ProofInput.Quantity("mass", Dimension.Mass, 0.01, 1000);

    internal static ProofOutcome Of(ProofRequest request)
    {
        var (facts, show) = (request.Facts, request.Facts.Show);
        var now = request.Weighings is null ? request.Value(Mass) : (double?)null;
        var weighings = request.Weighings ?? [.. facts.CabinetWeighIns.Select(e => (e.Date, e.MassKg!.Value))];
        var r = DryOutReport.Of(weighings, facts.Limits.Dryness, facts.Mass.DryShellsAndCastKg);
        ProofFigure Figure(string name, string text, string property) => new(name, text, () => Why.Of(facts, r, property));
        return new ProofOutcome(
            r,
            [
                .. now is { } kg ? [new ProofFigure("on the scales", show.Mass(kg))] : Array.Empty<ProofFigure>(),
                new("weighings with a day", Show.Number(weighings.Count)),
                Figure(
                    "dry",
                    r.DryMassKg is { } dry
                        ? show.Mass(dry) + (r.DryMassDoubtKg is { } doubt ? $" ± {show.Mass(doubt)}" : "")
                        : "unknown: three days or more, until the masses bend towards an end",
                    nameof(r.DryMassKg)
                ),
                Figure(
                    "dry by the plan",
                    r.StoichiometricDryMassKg is { } plan ? show.Mass(plan) : "unknown without a project that can be poured",
                    nameof(r.StoichiometricDryMassKg)
                ),
                Figure(
                    "drying time constant",
                    r.TimeConstantDays is { } days ? $"{Show.Number(days, 2)} days" : "unknown",
                    nameof(r.TimeConstantDays)
                ),
                new("ready to be sealed", Ready(r)),
            ]
        )
        {
            Caption = r.DryMassDoubtKg is null ? "" : "± is half of the 95 % band",
            Notes = now is null ? [] : ["this weighing counts once it is logged with its day"],
            Entry = now is null ? [] : [("kind", "weigh-in"), ("part", "cabinet"), ("mass", request.Stated(Mass.Name)!)],
        };
    }

    private static string Ready(DryOutReport r) =>
        r.ReadyDate is not { } date ? "unknown"
        : r.ReadyDoubtDays is { } days ? $"{date} ± {Show.Number(Math.Ceiling(days))} days, if it goes on as it has"
        : date;
}
