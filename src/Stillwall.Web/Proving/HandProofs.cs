using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Cabinets;
using Stillwall.Files.Json;
using Stillwall.Projects;
using Stillwall.Proofs;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>Proofs by stopwatch, scales, hand and ear.</summary>
internal static class HandProofs
{
    internal static ProofOutcome Hold(ProofRequest request)
    {
        var facts = request.Facts;
        var seconds = request.Quantity("seconds", Dimension.Time, 0.01, 3600);
        var system = request.Facts.System ?? throw new ProofRefusal(ProofTexts.NoBox);
        var r = HoldTest.Of(seconds, system.NetVolumeM3, system.Network);
        var bound = r.Bound switch
        {
            "at most" => ProofTexts.AtMost,
            "at least" => ProofTexts.AtLeast,
            _ => ProofTexts.About,
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
            ProofReader.Hold,
            ResultJson.Write(r),
            [
                Figure(ProofTexts.LeakQ, Show.Number(r.LeakQ, 2), nameof(r.LeakQ)),
                Figure(ProofTexts.LeakResistance, $"{Show.Number(r.LeakResistancePaSM3 / 1e6, 2)} MPa·s/m³", nameof(r.LeakResistancePaSM3)),
            ],
            [
                r.Bound switch
                {
                    "at most" => ProofTexts.TooFast,
                    "at least" => ProofTexts.TooTight,
                    _ => ProofTexts.AFifth,
                },
            ],
            r.Bound == "at most" ? [] : [ProofRequest.Kept("measured.leak_resistance", r.LeakResistancePaSM3)],
            ProofReader.Entry("hold", $"{Show.Number(seconds)} s, leak Q {(r.Bound == "none" ? "" : r.Bound + " ")}{Show.Number(r.LeakQ, 2)}")
        );
    }

    internal static ProofOutcome Weight(ProofRequest request)
    {
        var kg = request.Quantity("mass", Dimension.Mass, 0.01, 1000);
        return new ProofOutcome(
            ProofReader.Weight,
            "{}",
            [new(ProofTexts.Weighed, request.Facts.Show.Mass(kg), null)],
            [ProofTexts.FitOnPour],
            [],
            [("kind", "weigh-in"), ("part", "cabinet"), ("mass", request.Asked("mass")!)]
        );
    }

    internal static ProofOutcome Rattle(ProofRequest request)
    {
        var part = request.Asked("part")?.Trim() ?? "";
        return new ProofOutcome(
            ProofReader.Rattle,
            "{}",
            [new(ProofTexts.Heard, part.Length == 0 ? ProofTexts.NothingRattled : ProofTexts.Rattled(part), null)],
            [ProofTexts.EarSays],
            [],
            ProofReader.Entry(part.Length == 0 ? Listening.NoRattle : Listening.Rattle, "slow sweep by ear", part.Length == 0 ? "cabinet" : part)
        );
    }
}
