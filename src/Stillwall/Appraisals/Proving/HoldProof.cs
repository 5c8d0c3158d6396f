using Stillwall.Appraisals.Explaining;
using Stillwall.Cabinets;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Proving;

/// <summary>Proof by stopwatch: how slowly the cone creeps back.</summary>
internal static class HoldProof
{
    internal static readonly ProofInput Seconds = ProofInput.Quantity("seconds", new QuantityRange(Dimension.Time, (0.01, 3600)) { BareUnit = "s" });

    internal static ProofOutcome Of(ProofRequest request)
    {
        var (facts, seconds) = (request.Facts, request.Value(Seconds));
        var system = facts.System ?? throw new ProofRefusal("", $"not possible yet; {KeyNames.Missing(facts.MissingForBox)}");
        var r = HoldTest.Of(seconds, system.NetVolumeM3, system.Network);
        var (bound, said) = r.Bound switch
        {
            LeakBound.AtMost => ("at most ", "too fast for a stopwatch, which says only how leaky it is at least: find the hole, then test again"),
            LeakBound.AtLeast => ("at least ", "tighter than this test can tell"),
            _ => ("about ", "a fifth either way, by stopwatch"),
        };
        double? Again(string property, HoldTestResult other) => property == nameof(r.LeakQ) ? other.LeakQ : other.LeakResistancePaSM3;
        ProofFigure Figure(string name, string text, string property) =>
            new(
                name,
                bound + text,
                () =>
                    Why.Of(
                        facts,
                        r,
                        property,
                        f => f.System is { } s ? HoldTest.Of(seconds, s.NetVolumeM3, s.Network) : null,
                        [ProofRequest.Moved("seconds", seconds, "s", t => Again(property, HoldTest.Of(t, system.NetVolumeM3, system.Network)))]
                    )
            );
        return new ProofOutcome(
            r,
            [
                Figure("leak Q", Show.Number(r.LeakQ, 2), nameof(r.LeakQ)),
                Figure("resistance of the leak", $"{Show.Number(r.LeakResistancePaSM3 / 1e6, 2)} MPa·s/m³", nameof(r.LeakResistancePaSM3)),
            ]
        )
        {
            Notes = r.Bound == LeakBound.AtMost ? [] : [said],
            Kept = r.Bound == LeakBound.AtMost ? [] : [ProofOutcome.Measured("measured.leak_resistance", r.LeakResistancePaSM3)],
            NothingKept = r.Bound == LeakBound.AtMost ? said : null,
            Entry = ProofOutcome.Logged("hold", $"{Show.Number(seconds)} s, leak Q {(r.Bound == LeakBound.None ? "" : bound)}{Show.Number(r.LeakQ, 2)}"),
        };
    }
}
