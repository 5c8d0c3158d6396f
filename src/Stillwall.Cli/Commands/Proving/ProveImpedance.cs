using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Files.Tables;
using Stillwall.Materials;
using Stillwall.Projects;
using Stillwall.Proofs.Impedances;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove impedance</c>: a driver's parameters, or what became of it in the cabinet.</summary>
internal static class ProveImpedance
{
    // Past it no leak matters, and the driver's sheet is not as exact as that.
    private const double MostLeakQ = 500;

    private static readonly (double, double) Ohms = (1e-2, 1e4);

    internal static Verb Verb()
    {
        var file = new TextArgument(
            "FILE.wav",
            "stereo: left the voltage of the source, right the voltage across the driver, the resistor between; a sweep or noise from 5 Hz up"
        );
        var reference = new QuantityOption("--reference", Dimension.Resistance, "the resistor, measured, such as \"10 ohm\"") { Span = Ohms };
        var alone = new TextOption("--alone", "FILE.wav", "the same with the driver unplugged: takes out how the two channels differ");
        var known = new QuantityOption("--alone-load", Dimension.Resistance, "a known resistor in the driver's place in that recording") { Span = Ohms };
        var massFile = new TextOption("--with-mass", "FILE.wav", "the driver in free air with a mass stuck to its cone: gives Vas and all the rest");
        var mass = new QuantityOption("--mass", Dimension.Mass, "that mass") { Span = (1e-5, 10) };
        var boxFile = new TextOption("--in-box", "FILE.wav", "instead: the driver on an airtight, empty box of known volume");
        var volume = new QuantityOption("--volume", Dimension.Volume, "that volume, the cone's hollow counted") { Span = (1e-5, 10) };
        var area = new QuantityOption("--sd", Dimension.Area, "area of the cone, for Vas: middle of the surround to middle of the surround")
        {
            Span = (1e-5, 10),
        };
        var driver = new OutputOption("--driver", "FILE", "writes the driver as it stands in a project file under \"driver\"; - is standard output");
        var csv = Common.Csv("the curve");
        var json = Common.Json;
        var keeping = new Keeping();
        return new Verb(
            "impedance",
            "resonance, Qs, resistance and inductance from two channels and one resistor; in the cabinet also fill and leak",
            "stillwall prove impedance z.wav --reference \"10 ohm\" --json"
        )
        {
            Step = WorkStep.Impedance,
            Takes = [file, reference, alone, known, massFile, mass, boxFile, volume, area, driver, csv, json, keeping.Project, keeping.Keep, keeping.Log],
            Do = call =>
            {
                call.OneOutput(json, csv, driver);
                var ohm = call.Needed(reference);
                var loaded = keeping.Load(call);
                var result = Read(call, call.Text(file)!, ohm, alone, known);
                if (call.Text(massFile) is not null || call.Text(boxFile) is not null)
                {
                    result = result with
                    {
                        Driver = Parameters(
                            call: call,
                            free: result,
                            ohm: ohm,
                            mass: (massFile, mass),
                            box: (boxFile, volume),
                            area: area,
                            alone: (alone, known)
                        ),
                    };
                }
                else if (call.Text(driver) is not null)
                {
                    throw Refusal.Input("--driver needs --with-mass or --in-box; without one of them Vas is unknown");
                }

                var facts = loaded?.Facts();
                result = facts is null ? result : InCabinet(result, facts);
                var isQuiet = call.Has(json) || new[] { csv, driver }.Any(o => call.Text(o) == "-");
                Deliver(call, result, facts?.Show ?? new Show(false, ""), (json, csv, driver), isQuiet);
                keeping.Save(call, loaded, "impedance", Note(result), [("system_resonance", [result.ResonanceHz]), ("system_q", [result.QTotal])], isQuiet);
                CareText.Say(call.Session, WorkStep.Impedance, facts, isQuiet);
                return ExitCodes.Done;
            },
        };
    }

    private static ImpedanceResult Read(Invocation call, string file, double ohm, TextOption alone, QuantityOption known)
    {
        var mismatch = call.Text(alone) is { } other ? Sounds.Load(call.Session, other) : null;
        var reading = ImpedanceRecording.Of(Sounds.Load(call.Session, file), ohm, mismatch, call.Value(known));
        Sounds.Warn(call.Session, file, reading.Warnings);
        return reading.Result ?? throw Refusal.Input($"{file}: {reading.Trouble}");
    }

    private static MeasuredDriver Parameters(
        Invocation call,
        ImpedanceResult free,
        double ohm,
        (TextOption File, QuantityOption Amount) mass,
        (TextOption File, QuantityOption Amount) box,
        QuantityOption area,
        (TextOption File, QuantityOption Load) alone
    )
    {
        var sd = call.Needed(area);
        return call.Text(mass.File) is { } loaded
            ? MeasuredDriver.ByMass(free, Read(call, loaded, ohm, alone.File, alone.Load), call.Needed(mass.Amount), sd, Air.Reference)
                ?? throw Refusal.Input($"{loaded}: the mass does not lower the resonance; a mass of about the cone's own, stuck fast to it")
            : MeasuredDriver.ByVolume(free, Read(call, call.Text(box.File)!, ohm, alone.File, alone.Load), call.Needed(box.Amount), sd, Air.Reference)
                ?? throw Refusal.Input($"{call.Text(box.File)}: the box does not raise the resonance; an airtight box smaller than the driver's Vas");
    }

    private static ImpedanceResult InCabinet(ImpedanceResult result, Facts facts)
    {
        var system = facts.System ?? throw Want.OfBox("prove impedance, compared with the project", facts);
        return result with
        {
            Cabinet = CabinetProof.Of(result, system.Network, system.NetVolumeM3),
            Curve = [.. result.Curve.Select(p => p with { ComputedOhm = system.Network.At(p.FrequencyHz, 1).ImpedanceOhm.Magnitude })],
        };
    }

    private static void Deliver(Invocation call, ImpedanceResult result, Show show, (Flag Json, OutputOption Csv, OutputOption Driver) outputs, bool isQuiet)
    {
        call.Deliver(
            outputs.Csv,
            CsvText.Write(
                ["frequency_hz", "impedance_ohm", "impedance_phase_deg", "coherence_fraction", "fitted_ohm", "computed_ohm"],
                result.Curve.Select(p =>
                    (IReadOnlyList<double?>)[p.FrequencyHz, p.ImpedanceOhm, p.ImpedancePhaseDeg, p.CoherenceFraction, p.FittedOhm, p.ComputedOhm]
                )
            )
        );
        if (result.Driver is { } measured)
        {
            call.Deliver(outputs.Driver, Block(measured));
        }

        if (call.Has(outputs.Json))
        {
            call.Session.Print(ResultJson.Write(result));
        }
        else if (!isQuiet)
        {
            call.Session.Print(Table(result, show, call.Session.Terminal));
        }
    }

    // As a project file states it; four digits, for no measurement here is better.
    private static string Block(MeasuredDriver d)
    {
        string Four(double value) =>
            double.Parse(value.ToString("G4", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).ToString("R", CultureInfo.InvariantCulture);
        return $$"""
            {
              "name": "measured",
              "re": "{{Four(d.ReOhm)}} ohm", "le": "{{Four(d.LeH * 1e3)}} mH", "fs": "{{Four(d.FsHz)}} Hz",
              "qms": {{Four(d.Qms)}}, "qes": {{Four(d.Qes)}}, "vas": "{{Four(d.VasM3 * 1e3)}} L", "sd": "{{Four(d.SdM2 * 1e4)}} cm2"
            }

            """.ReplaceLineEndings("\n");
    }

    private static string Note(ImpedanceResult r) => $"{Show.Frequency(r.ResonanceHz)}, Q {Show.Number(r.QTotal)}, Re {Show.Number(r.DcResistanceOhm)} ohm";

    private static string Table(ImpedanceResult r, Show show, Terminal terminal)
    {
        var u = r.Uncertainty;
        List<IReadOnlyList<string>> rows =
        [
            ["resonance", Bands.Of(r.ResonanceHz, u.ResonanceHz, "Hz")],
            ["Q, mechanical", Bands.Of(r.QMechanical, u.QMechanical)],
            ["Q, electrical", Bands.Of(r.QElectrical, u.QElectrical)],
            ["Q, total", Bands.Of(r.QTotal, u.QTotal)],
            ["coil's resistance", Bands.Of(r.DcResistanceOhm, u.DcResistanceOhm, "ohm")],
            [
                "coil's inductance",
                r.InductanceH > ImpedanceFigures.LeastInductanceH ? Bands.Of(r.InductanceH * 1e3, u.InductanceH * 1e3, "mH") : "too small to tell",
            ],
            ["peak", Bands.Of(r.PeakOhm, u.PeakOhm, "ohm")],
        ];
        if (r.Driver is { } d)
        {
            rows.AddRange([
                ["Vas", Bands.Of(d.VasM3 * 1e3, d.VasBandM3 * 1e3, "L")],
                ["moving mass", show.Mass(d.MmsKg)],
                ["force factor", $"{Show.Number(d.BlTM)} N/A"],
            ]);
        }

        if (r.Cabinet is { } c)
        {
            rows.AddRange([
                ["f3, f10 (−3, −10 dB)", $"{Show.Frequency(c.F3Hz)}, {Show.Frequency(c.F10Hz)}; no microphone needed"],
                ["effective volume", c.EffectiveVolumeM3 is { } felt ? show.Volume(felt) : "unknown: the resonance is not above the driver's own"],
                [
                    "fill factor",
                    c is { FillFactor: { } fill, FillFactorBandFactor: { } band } ? $"{Bands.Of(fill, band)}, if the driver is as stated" : "unknown",
                ],
                [
                    "leak Q",
                    (c.LeakQ is { } leak ? $"{Show.Number(leak, 2)}, " : "no leak is heard; ")
                        + (c.LeastLeakQ is { } least ? $"at least {Show.Number(Math.Min(least, MostLeakQ), 2)}" : "how tight cannot be said"),
                ],
            ]);
        }

        return Tables.Of(terminal, "Impedance: ± is the 95 % band, the resistor's own tolerance beside it", ["", ""], rows);
    }
}
