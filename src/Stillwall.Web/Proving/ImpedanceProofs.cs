using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Cabinets;
using Stillwall.Figures;
using Stillwall.Files.Json;
using Stillwall.Materials;
using Stillwall.Projects;
using Stillwall.Proofs.Impedances;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Proving;

/// <summary>Proofs by one resistor: the cabinet's impedance, and the driver's own parameters.</summary>
internal static class ImpedanceProofs
{
    private const double LeastOhm = 1e-2,
        MostOhm = 1e4;

    // What two recordings decide, and what is derived from it, is not taken from the old sheet.
    private static readonly string[] Decided = ["name", "note", "re", "le", "fs", "qms", "qes", "qts", "vas", "sd", "bl", "mms", "cms", "rms"];

    internal static ProofOutcome Of(ProofRequest request)
    {
        var (facts, warnings) = (request.Facts, new List<string>());
        var r = Read(request, ProofRequest.Main, warnings);
        if (facts.System is { } system)
        {
            r = r with
            {
                Cabinet = CabinetProof.Of(r, system.Network, system.NetVolumeM3),
                Curve = [.. r.Curve.Select(p => p with { ComputedOhm = system.Network.At(p.FrequencyHz, 1).ImpedanceOhm.Magnitude })],
            };
        }

        var figures = Figures(request, r);
        if (r.Cabinet is { } c)
        {
            var recorded = ProofRequest.Recorded(request.Sound());
            ProofFigure Figure(string name, string text, string property) => new(name, text, () => OfCabinet(facts, recorded, r, c, property));
            figures.Add(Figure(ProofTexts.Down3, Show.Frequency(c.F3Hz), nameof(c.F3Hz)));
            figures.Add(Figure(ProofTexts.Down10, Show.Frequency(c.F10Hz), nameof(c.F10Hz)));
            figures.Add(
                Figure(
                    ProofTexts.Fill,
                    c is { FillFactor: { } fill, FillFactorBandFactor: { } band } ? Bands.Of(fill, band) : ProofTexts.NotKnown,
                    nameof(c.FillFactor)
                )
            );
        }

        var note = $"{Show.Frequency(r.ResonanceHz)}, Q {Show.Number(r.QTotal)}, Re {Show.Number(r.DcResistanceOhm)} ohm";
        return new ProofOutcome(
            ProofReader.Impedance,
            ResultJson.Write(r),
            figures,
            [.. request.Odd, .. warnings],
            [ProofRequest.Kept("measured.system_resonance", r.ResonanceHz), ProofRequest.Kept("measured.system_q", r.QTotal)],
            ProofReader.Entry("impedance", note)
        )
        {
            Chart = ProofCharts.Impedance(r),
        };
    }

    internal static ProofOutcome DriverOf(ProofRequest request)
    {
        var (facts, warnings) = (request.Facts, new List<string>());
        var area = request.Quantity("sd", Dimension.Area, 1e-5, 10);
        var isByMass = request.Has("mass");
        if (!isByMass && !request.Has("box"))
        {
            throw new ProofRefusal(ProofTexts.MassOrBox);
        }

        var amount = isByMass ? request.Quantity("added", Dimension.Mass, 1e-5, 10) : request.Quantity("volume", Dimension.Volume, 1e-5, 10);
        var free = Read(request, ProofRequest.Main, warnings);
        var other = Read(request, isByMass ? "mass" : "box", warnings);
        var d = Of(free, other, amount, area) ?? throw new ProofRefusal(isByMass ? ProofTexts.MassTooSmall : ProofTexts.BoxTooLarge);
        MeasuredDriver? Of(ImpedanceResult one, ImpedanceResult two, double added, double sd) =>
            isByMass ? MeasuredDriver.ByMass(one, two, added, sd, Air.Reference) : MeasuredDriver.ByVolume(one, two, added, sd, Air.Reference);
        var (recorded, resistor) = (ProofRequest.Recorded(request.Sound()), Resistor(request));
        ProofFigure Figure(string name, string text, string property) =>
            new(
                name,
                text,
                () =>
                {
                    double? Again(MeasuredDriver? m) =>
                        property switch
                        {
                            nameof(d.VasM3) => m?.VasM3,
                            nameof(d.MmsKg) => m?.MmsKg,
                            _ => m?.BlTM,
                        };
                    return Why.Of(
                        facts,
                        d,
                        property,
                        null,
                        [
                            recorded,
                            ProofRequest.Moved("resonance_hz", free.ResonanceHz, "Hz", f => Again(Of(free with { ResonanceHz = f }, other, amount, area))),
                            ProofRequest.Moved(
                                "other_resonance_hz",
                                other.ResonanceHz,
                                "Hz",
                                f => Again(Of(free, other with { ResonanceHz = f }, amount, area))
                            ),
                            ProofRequest.Moved("added", amount, isByMass ? "kg" : "m3", m => Again(Of(free, other, m, area))),
                            ProofRequest.Moved("sd_m2", area, "m2", s => Again(Of(free, other, amount, s))),
                            resistor(ohm => Again(Of(free with { DcResistanceOhm = free.DcResistanceOhm * ohm }, other, amount, area))),
                        ]
                    );
                }
            );
        List<ProofFigure> figures =
        [
            .. Figures(request, free),
            Figure(ProofTexts.Vas, Bands.Of(d.VasM3 * 1e3, d.VasBandM3 * 1e3, "L"), nameof(d.VasM3)),
            Figure(ProofTexts.MovingMass, facts.Show.Mass(d.MmsKg), nameof(d.MmsKg)),
            Figure(ProofTexts.ForceFactor, $"{Show.Number(d.BlTM)} N/A", nameof(d.BlTM)),
        ];
        var note = $"driver: fs {Show.Frequency(d.FsHz)}, Qms {Show.Number(d.Qms)}, Qes {Show.Number(d.Qes)}, Vas {Show.Number(d.VasM3 * 1e3)} L";
        return new ProofOutcome(
            ProofReader.Driver,
            ResultJson.Write(free with { Driver = d }),
            figures,
            [.. request.Odd, .. warnings, ProofTexts.AsDriver],
            Sheet(facts.Sheet, d),
            ProofReader.Entry("impedance", note, "driver")
        )
        {
            Block = "driver",
        };
    }

    private static ImpedanceResult Read(ProofRequest request, string name, List<string> warnings)
    {
        var ohm = request.Quantity("reference", Dimension.Resistance, LeastOhm, MostOhm);
        var load = request.PerhapsQuantity("load", Dimension.Resistance, LeastOhm, MostOhm);
        var reading = ImpedanceRecording.Of(request.Sound(name), ohm, request.PerhapsSound("alone"), load);
        warnings.AddRange(reading.Warnings.Except(warnings));
        return ProofReader.Said(reading.Result, reading.Trouble, name);
    }

    // All resistances and the inductance go with the resistor, resonance and Qs do not: Z = R·H/(1 − H). Where the channels were compared on a known
    // load its ratio to the resistor counts too, and there is no such law.
    private static Func<Func<double, double?>, ExplainedInput> Resistor(ProofRequest request)
    {
        var ohm = request.Quantity("reference", Dimension.Resistance, LeastOhm, MostOhm);
        var isLoaded = request.Has("alone") && request.Asked("load") is { Length: > 0 };
        return inProportion => ProofRequest.Moved("reference_ohm", ohm, "ohm", r => isLoaded ? null : inProportion(r / ohm));
    }

    private static Explanation OfCabinet(Facts facts, ExplainedInput recorded, ImpedanceResult r, CabinetProof c, string property)
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

    private static List<ProofFigure> Figures(ProofRequest request, ImpedanceResult r)
    {
        var (u, facts, recorded, resistor) = (r.Uncertainty, request.Facts, ProofRequest.Recorded(request.Sound()), Resistor(request));
        ProofFigure Figure(string name, string text, string property) =>
            new(
                name,
                text,
                () => Why.Of(facts, r, property, null, [recorded, resistor(ohm => property is nameof(r.DcResistanceOhm) or nameof(r.InductanceH) ? ohm : 1)])
            );
        return
        [
            Figure(ProofTexts.Resonance, Bands.Of(r.ResonanceHz, u.ResonanceHz, "Hz"), nameof(r.ResonanceHz)),
            Figure(ProofTexts.QTotal, Bands.Of(r.QTotal, u.QTotal), nameof(r.QTotal)),
            Figure(ProofTexts.QMechanical, Bands.Of(r.QMechanical, u.QMechanical), nameof(r.QMechanical)),
            Figure(ProofTexts.QElectrical, Bands.Of(r.QElectrical, u.QElectrical), nameof(r.QElectrical)),
            Figure(ProofTexts.CoilResistance, Bands.Of(r.DcResistanceOhm, u.DcResistanceOhm, "ohm"), nameof(r.DcResistanceOhm)),
            Figure(
                ProofTexts.CoilInductance,
                r.InductanceH > ImpedanceFigures.LeastInductanceH ? Bands.Of(r.InductanceH * 1e3, u.InductanceH * 1e3, "mH") : ProofTexts.TooSmall,
                nameof(r.InductanceH)
            ),
        ];
    }

    // The driver as measured; what no recording tells stays as its sheet states it.
    private static List<(string, string)> Sheet(DriverSheet? old, MeasuredDriver d)
    {
        List<(string, string)> stated = [("driver.name", ProofTexts.MeasuredName(old?.Name))];
        foreach (var field in old is null ? [] : ModelBlock.Of(typeof(DriverSheet)).Fields.Where(f => !Decided.Contains(f.Key)))
        {
            if (field.Property.GetValue(old) is { } value)
            {
                stated.Add(
                    (
                        $"driver.{field.Key}",
                        field.Kind == FieldKind.Quantity ? Units.Write((double)value, field.Dimension) : Convert.ToString(value, CultureInfo.InvariantCulture)!
                    )
                );
            }
        }

        (string, double)[] found =
        [
            ("re", d.ReOhm),
            ("le", Math.Max(0, d.LeH)),
            ("fs", d.FsHz),
            ("qms", d.Qms),
            ("qes", d.Qes),
            ("vas", d.VasM3),
            ("sd", d.SdM2),
        ];
        return [.. stated, .. found.Select(f => ProofRequest.Kept($"driver.{f.Item1}", f.Item2))];
    }
}
