using System.Globalization;
using Stillwall.Appraisals.Explaining;
using Stillwall.Materials;
using Stillwall.Projects;
using Stillwall.Proofs.Impedances;

namespace Stillwall.Appraisals.Proving;

/// <summary>Proof of the driver by itself: free, and with a mass on its cone or on a box of known volume.</summary>
internal static class DriverProof
{
    private static readonly ProofInput WithMass = ProofInput.Sound("mass"),
        Added = ProofInput.Quantity("added", Dimension.Mass, 1e-5, 10),
        InBox = ProofInput.Sound("box"),
        Volume = ProofInput.Quantity("volume", Dimension.Volume, 1e-5, 10),
        Area = ProofInput.Quantity("sd", Dimension.Area, 1e-5, 10);

    internal static readonly ProofInput[] Inputs = [.. ImpedanceProof.Inputs, WithMass, Added, InBox, Volume, Area];

    // What two recordings decide, and what is derived from it, is not taken from the old sheet.
    private static readonly string[] Decided = ["name", "note", "re", "le", "fs", "qms", "qes", "qts", "vas", "sd", "bl", "mms", "cms", "rms"];

    internal static ProofOutcome Of(ProofRequest request)
    {
        var (facts, area, circuit, warnings) = (request.Facts, request.Value(Area), Circuit.Of(request), new List<AboutInput>());
        var (massed, boxed) = (request.PerhapsSound(WithMass), request.PerhapsSound(InBox));
        var (isByMass, second) = (massed is not null, massed is null ? InBox : WithMass);
        var loaded =
            massed
            ?? boxed
            ?? throw new ProofRefusal("", "one recording is not enough; also the driver with a mass on its cone, or on a box of known volume");
        var amount = request.Value(isByMass ? Added : Volume);
        var sound = request.Sound(Circuit.Main);
        var readings = new[] { circuit.Read(Circuit.Main, sound, warnings), circuit.Read(second, loaded, warnings) };
        var (free, other) = (readings[0].Result!, readings[1].Result!);
        MeasuredDriver? Again(ImpedanceResult one, ImpedanceResult two, double added, double sd) =>
            isByMass ? MeasuredDriver.ByMass(one, two, added, sd, Air.Reference) : MeasuredDriver.ByVolume(one, two, added, sd, Air.Reference);
        var d = ProofRefusal.Said(
            second,
            Again(free, other, amount, area),
            isByMass
                ? "the mass does not lower the resonance; a mass of about the cone's own, stuck fast to it"
                : "the box does not raise the resonance; an airtight box smaller than the driver's Vas"
        );
        var recorded = ProofRequest.Recorded(sound);
        ProofFigure Figure(string name, string text, string property)
        {
            double? Found(MeasuredDriver? m) =>
                property switch
                {
                    nameof(d.VasM3) => m?.VasM3,
                    nameof(d.MmsKg) => m?.MmsKg,
                    _ => m?.BlTM,
                };
            return new(
                name,
                text,
                () =>
                    Why.Of(
                        facts,
                        d,
                        property,
                        null,
                        [
                            recorded,
                            ProofRequest.Moved("resonance_hz", free.ResonanceHz, "Hz", f => Found(Again(free with { ResonanceHz = f }, other, amount, area))),
                            ProofRequest.Moved(
                                "other_resonance_hz",
                                other.ResonanceHz,
                                "Hz",
                                f => Found(Again(free, other with { ResonanceHz = f }, amount, area))
                            ),
                            ProofRequest.Moved("added", amount, isByMass ? "kg" : "m3", m => Found(Again(free, other, m, area))),
                            ProofRequest.Moved("sd_m2", area, "m2", s => Found(Again(free, other, amount, s))),
                            circuit.Resistor(ohm => Found(Again(free with { DcResistanceOhm = free.DcResistanceOhm * ohm }, other, amount, area))),
                        ]
                    )
            );
        }

        return new ProofOutcome(
            free with
            {
                Driver = d,
            },
            [
                .. circuit.Figures(facts, recorded, free),
                Figure("Vas", Bands.Of(d.VasM3 * 1e3, d.VasBandM3 * 1e3, "L"), nameof(d.VasM3)),
                Figure("moving mass", facts.Show.Mass(d.MmsKg), nameof(d.MmsKg)),
                Figure("force factor", $"{Show.Number(d.BlTM)} N/A", nameof(d.BlTM)),
            ]
        )
        {
            Caption = Circuit.Caption,
            Doubts = [.. readings.SelectMany(r => r.Doubts).Distinct()],
            Warnings = warnings,
            Notes =
            [
                .. readings[0].Hints,
                "to keep it states the driver with these figures, and the rest as its sheet has it, in place of the named one; mass, volume and area go "
                    + "into Vas as stated",
            ],
            Kept = Sheet(facts.Sheet, d),
            Block = "driver",
            Entry = ProofOutcome.Logged(
                "impedance",
                $"driver: fs {Show.Frequency(d.FsHz)}, Qms {Show.Number(d.Qms)}, Qes {Show.Number(d.Qes)}, Vas {Show.Number(d.VasM3 * 1e3)} L",
                "driver"
            ),
        };
    }

    // The driver as measured; what no recording tells stays as its sheet states it.
    private static IReadOnlyList<(string, string)> Sheet(DriverSheet? old, MeasuredDriver d)
    {
        const string measured = "measured";
        var name = old?.Name is not { } was ? measured
            : was.EndsWith($", {measured}", StringComparison.Ordinal) ? was
            : $"{was}, {measured}";
        var rest = old is null
            ? []
            : ModelBlock
                .Of(typeof(DriverSheet))
                .Fields.Where(f => !Decided.Contains(f.Key))
                .Select(f => (f, Value: f.Get(old)))
                .Where(f => f.Value is not null)
                .Select(f => ($"driver.{f.f.Key}", Stated(f.f, f.Value!)));
        return
        [
            ("driver.name", name),
            .. rest,
            ProofOutcome.Measured("driver.re", d.ReOhm),
            ProofOutcome.Measured("driver.le", Math.Max(0, d.LeH)),
            ProofOutcome.Measured("driver.fs", d.FsHz),
            ProofOutcome.Measured("driver.qms", d.Qms),
            ProofOutcome.Measured("driver.qes", d.Qes),
            ProofOutcome.Measured("driver.vas", d.VasM3),
            ProofOutcome.Measured("driver.sd", d.SdM2),
        ];
    }

    private static string Stated(ModelField field, object value) =>
        field.Kind == FieldKind.Quantity ? Units.Write((double)value, field.Dimension) : Convert.ToString(value, CultureInfo.InvariantCulture)!;
}
