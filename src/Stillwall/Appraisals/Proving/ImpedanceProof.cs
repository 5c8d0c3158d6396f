using Stillwall.Appraisals.Explaining;
using Stillwall.Cabinets;
using Stillwall.Figures;
using Stillwall.Projects;
using Stillwall.Proofs.Impedances;

namespace Stillwall.Appraisals.Proving;

/// <summary>Proof by one resistor: what became of the driver in the cabinet.</summary>
internal static class ImpedanceProof
{
    // Past it no leak matters, and the driver's sheet is not as exact as that.
    private const double MostLeakQ = 500;

    internal static readonly ProofInput[] Inputs =
    [
        Circuit.Main,
        Circuit.Reference,
        Circuit.AloneSound,
        Circuit.Load,
        Circuit.CoilResistance,
        Circuit.CoilTolerance,
    ];

    internal static ProofOutcome Of(ProofRequest request)
    {
        var (facts, circuit, warnings) = (request.Facts, Circuit.Of(request), new List<AboutInput>());
        var sound = request.Sound(Circuit.Main);
        var recorded = ProofRequest.Recorded(sound);
        var reading = circuit.Read(Circuit.Main, sound, warnings);
        var r = InCabinet(reading.Result!, facts.System);
        return new ProofOutcome(r, [.. circuit.Figures(facts, recorded, r), .. r.Cabinet is { } c ? OfCabinet(facts, recorded, r, c) : []])
        {
            Caption = Circuit.Caption,
            Warnings = warnings,
            Doubts = reading.Doubts,
            Notes =
            [
                .. reading.Hints,
                .. request.Plan is null || r.Cabinet is not null ? [] : new[] { NotCompared(KeyNames.Missing(facts.MissingForBox)) },
            ],
            Kept = [ProofOutcome.Measured("measured.system_resonance", r.ResonanceHz), ProofOutcome.Measured("measured.system_q", r.QTotal)],
            Entry = ProofOutcome.Logged(
                "impedance",
                $"{Show.Frequency(r.ResonanceHz)}, Q {Show.Number(r.QTotal)}, Re {Show.Number(r.DcResistanceOhm)} ohm"
            ),
            Chart = ProofCharts.Impedance(r),
        };
    }

    internal static string NotCompared(string missing) => $"not compared with the project; {missing}";

    private static ImpedanceResult InCabinet(ImpedanceResult r, BoxSystem? system) =>
        system is null
            ? r
            : r with
            {
                Cabinet = CabinetProof.Of(r, system.Network, system.NetVolumeM3),
                Curve = [.. r.Curve.Select(p => p with { ComputedOhm = system.Network.At(p.FrequencyHz, 1).ImpedanceOhm.Magnitude })],
            };

    private static IEnumerable<ProofFigure> OfCabinet(Facts facts, ExplainedInput recorded, ImpedanceResult r, CabinetProof c)
    {
        ProofFigure Figure(string name, string text, string property) => new(name, text, () => Explained(facts, recorded, r, c, property));
        yield return Figure("f3 (−3 dB)", Show.Frequency(c.F3Hz), nameof(c.F3Hz));
        yield return Figure("f10 (−10 dB)", Show.Frequency(c.F10Hz), nameof(c.F10Hz));
        yield return Figure(
            "effective volume",
            c.EffectiveVolumeM3 is { } felt ? facts.Show.Volume(felt) : "unknown: the resonance is not above the driver's own",
            nameof(c.EffectiveVolumeM3)
        );
        yield return Figure(
            "fill factor, if the driver is as stated",
            c is { FillFactor: { } fill, FillFactorBandFactor: { } band } ? Bands.Of(fill, band) : "unknown",
            nameof(c.FillFactor)
        );
        yield return new ProofFigure(
            "leak Q",
            (c.LeakQ is { } leak ? $"{Show.Number(leak, 2)}, " : "no leak is heard; ")
                + (c.LeastLeakQ is { } least ? $"at least {Show.Number(Math.Min(least, MostLeakQ), 2)}" : "how tight cannot be said")
        );
    }

    private static Explanation Explained(Facts facts, ExplainedInput recorded, ImpedanceResult r, CabinetProof c, string property)
    {
        double? Again(double hertz, double q) =>
            property switch
            {
                nameof(c.F3Hz) => ClosedBox.F3Hz(hertz, q),
                nameof(c.F10Hz) => ClosedBox.F10Hz(hertz, q),
                _ => null,
            };
        return Why.Of(
            facts,
            c,
            property,
            f => f.System is { } system ? CabinetProof.Of(r, system.Network, system.NetVolumeM3) : null,
            [
                recorded,
                ProofRequest.Moved("resonance_hz", r.ResonanceHz, "Hz", f => Again(f, r.QTotal)),
                ProofRequest.Moved("q_total", r.QTotal, "1", q => Again(r.ResonanceHz, q)),
            ]
        );
    }
}
