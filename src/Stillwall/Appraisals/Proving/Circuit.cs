using Stillwall.Appraisals.Explaining;
using Stillwall.Projects;
using Stillwall.Proofs.Impedances;
using Stillwall.Proofs.Recordings;

namespace Stillwall.Appraisals.Proving;

/// <summary>What impedance recordings are read with: the resistor, and how the two channels differ.</summary>
internal sealed record Circuit(double ReferenceOhm, Recording? Alone, double? LoadOhm, (double Ohm, double BandOhm)? Coil)
{
    internal static readonly ProofInput Main = ProofInput.Sound("recording", isNeeded: true),
        Reference = ProofInput.Quantity("reference", Dimension.Resistance, 1e-2, 1e4),
        AloneSound = ProofInput.Sound("alone"),
        Load = ProofInput.Quantity("load", Dimension.Resistance, 1e-2, 1e4),
        CoilResistance = ProofInput.Quantity("coil", Dimension.Resistance, 1e-1, 1e3),
        CoilTolerance = ProofInput.Quantity("coil_tolerance", Dimension.Resistance, 1e-3, 1e2);

    // A cheap meter and its leads, touched together first (our choice).
    private const double UsualToleranceOhm = 0.15;

    internal static Circuit Of(ProofRequest request)
    {
        var (reference, load) = (request.Value(Reference), request.Perhaps(Load));
        var tolerance = request.Perhaps(CoilTolerance) ?? UsualToleranceOhm;
        return new Circuit(reference, request.PerhapsSound(AloneSound), load, request.Perhaps(CoilResistance) is { } ohm ? (ohm, tolerance) : null);
    }

    internal ImpedanceReading Read(ProofInput input, Recording sound, List<AboutInput> warnings)
    {
        var reading = ImpedanceRecording.Of(sound, ReferenceOhm, Alone, LoadOhm, Coil);
        warnings.AddRange(ProofOutcome.About(input, reading.Warnings));
        _ = ProofRefusal.Said(input, reading.Result, reading.Trouble);
        return reading;
    }

    // All resistances and the inductance go with the resistor, resonance and Qs do not: Z = R·H/(1 − H). Where the channels were compared on a known
    // load its ratio to the resistor counts too, and there is no such law.
    internal ExplainedInput Resistor(Func<double, double?> inProportion) =>
        ProofRequest.Moved("reference_ohm", ReferenceOhm, "ohm", r => Alone is not null && LoadOhm is not null ? null : inProportion(r / ReferenceOhm));

    internal List<ProofFigure> Figures(Facts facts, ExplainedInput recorded, ImpedanceResult r)
    {
        var u = r.Uncertainty;
        ProofFigure Figure(string name, string text, string property) =>
            new(
                name,
                text,
                () =>
                    Why.Of(
                        facts,
                        r,
                        property,
                        null,
                        [recorded, Resistor(ohm => property is nameof(r.DcResistanceOhm) or nameof(r.InductanceH) or nameof(r.PeakOhm) ? ohm : 1)]
                    )
            );
        return
        [
            Figure("resonance", Bands.Of(r.ResonanceHz, u.ResonanceHz, "Hz"), nameof(r.ResonanceHz)),
            Figure("Q, total", Bands.Of(r.QTotal, u.QTotal), nameof(r.QTotal)),
            Figure("Q, mechanical", Bands.Of(r.QMechanical, u.QMechanical), nameof(r.QMechanical)),
            Figure("Q, electrical", Bands.Of(r.QElectrical, u.QElectrical), nameof(r.QElectrical)),
            Figure("coil's resistance", Bands.Of(r.DcResistanceOhm, u.DcResistanceOhm, "ohm"), nameof(r.DcResistanceOhm)),
            Figure(
                "coil's inductance",
                r.InductanceH > ImpedanceFigures.LeastInductanceH ? Bands.Of(r.InductanceH * 1e3, u.InductanceH * 1e3, "mH") : "too small to tell",
                nameof(r.InductanceH)
            ),
            Figure("peak", Bands.Of(r.PeakOhm, u.PeakOhm, "ohm"), nameof(r.PeakOhm)),
        ];
    }

    internal const string Caption = "± is half of the 95 % band, the resistor's own tolerance beside it";
}
