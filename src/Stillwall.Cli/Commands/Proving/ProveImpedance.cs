using System.Text.Json;
using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Proving;
using Stillwall.Cli.Running;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Proofs.Impedances;

namespace Stillwall.Cli.Commands.Proving;

/// <summary><c>prove impedance</c>: a driver's parameters, or what became of it in the cabinet.</summary>
internal static class ProveImpedance
{
    internal static Verb Verb()
    {
        static Brings Of(string input, string option, string description) => ProofVerb.Quantity("driver", input, option, description);
        var file = new TextArgument(
            "FILE.wav",
            "stereo: left the voltage of the source, right the voltage across the driver, the resistor between; a sweep or noise from 5 Hz up"
        );
        var withMass = new TextOption("--with-mass", "FILE.wav", "the driver in free air with a mass stuck to its cone: gives Vas and all the rest");
        var inBox = new TextOption("--in-box", "FILE.wav", "instead: the driver on an airtight, empty box of known volume");
        var driver = new OutputOption("--driver", "FILE", "writes the driver as it stands in a project file under \"driver\"; - is standard output");
        var csv = Common.Csv("the curve");
        var proof = new ProofVerb([
            new Brings("recording", file),
            Of("reference", "--reference", "the resistor, measured, such as \"10 ohm\""),
            new Brings("alone", new TextOption("--alone", "FILE.wav", "the same with the driver unplugged: takes out how the two channels differ")),
            Of("load", "--alone-load", "a known resistor in the driver's place in that recording"),
            Of("coil", "--coil-resistance", "the coil's resistance by a meter; touch the leads together first and take off what they show"),
            Of("coil_tolerance", "--coil-tolerance", "how far that may be off; 0.15 ohm where left out"),
            new Brings("mass", withMass),
            Of("added", "--mass", "that mass"),
            new Brings("box", inBox),
            Of("volume", "--volume", "that volume, the cone's hollow counted"),
            Of("sd", "--sd", "area of the cone, for Vas: middle of the surround to middle of the surround"),
        ])
        {
            Outputs = [driver, csv],
        };
        return new Verb(
            "impedance",
            "resonance, Qs, resistance and inductance from two channels and one resistor; in the cabinet also fill and leak",
            "stillwall prove impedance z.wav --reference \"10 ohm\" --json"
        )
        {
            Step = WorkStep.Impedance,
            Takes = proof.All,
            Do = call =>
            {
                call.OneOutput(proof.Json, csv, driver);
                var isDriver = call.Text(withMass) is not null || call.Text(inBox) is not null;
                return isDriver || call.Text(driver) is null
                    ? proof.Run(call, isDriver ? "driver" : "impedance", proof.Keeping.Load(call), written: outcome => Deliver(call, outcome, csv, driver))
                    : throw Refusal.Input("--driver needs --with-mass or --in-box; without one of them Vas is unknown");
            },
        };
    }

    private static void Deliver(Invocation call, ProofOutcome outcome, OutputOption csv, OutputOption driver)
    {
        call.Deliver(
            csv,
            CsvText.Write(
                ["frequency_hz", "impedance_ohm", "impedance_phase_deg", "coherence_fraction", "fitted_ohm", "computed_ohm"],
                ((ImpedanceResult)outcome.Result!).Curve.Select(p =>
                    (IReadOnlyList<double?>)[p.FrequencyHz, p.ImpedanceOhm, p.ImpedancePhaseDeg, p.CoherenceFraction, p.FittedOhm, p.ComputedOhm]
                )
            )
        );
        if (call.Text(driver) is not null)
        {
            using var project = JsonDocument.Parse(outcome.WrittenInto("{}", isKept: true, day: null));
            call.Deliver(driver, project.RootElement.GetProperty(outcome.Block!).GetRawText() + "\n");
        }
    }
}
