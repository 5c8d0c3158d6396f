using System.Globalization;
using Stillwall.Numerics;
using Stillwall.Proofs;
using static Stillwall.Appraisals.Findings.Judgement;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the finished cabinet: measured and heard against computed.</summary>
internal static class ProofFindings
{
    // Accepted range of measured.fill_factor.
    private const double LeastFillFactor = 0.8,
        GreatestFillFactor = 1.5;

    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new(
            "Proof",
            "resonance as designed",
            "measured against computed; the limit is our choice",
            new("as-measured", [], ["box.system_resonance_hz"]),
            Resonance
        ),
        new("Proof", "Q as designed", "measured against computed; the limit is our choice", new("as-measured", [], ["box.system_q"]), SystemQ),
        new(
            "Proof",
            "core as assumed",
            "modulus and loss factor by the tap test (ASTM E1876-15) against the mix's; the limit is our choice",
            new("as-measured"),
            Core
        ),
        new(
            "Proof",
            "polarity matches the main speakers",
            "first swing of the polarity pulses, recorded before both cones, against the polarity of the best join; common practice, no source",
            new("polarity-against-join"),
            Polarity
        ),
        new("Proof", "no rattle", "slow sweep by ear, as the logbook states it; common practice, no source", new("as-logged"), Rattle),
    ];

    private static Judgement Resonance(Facts f)
    {
        var judged = Against(
            f: f,
            measured: f.Project.Measured.SystemResonanceHz,
            key: "measured.system_resonance",
            computed: f.Box.SystemResonanceHz,
            tolerance: f.Limits.ProofResonance,
            unit: "Hz",
            what: "resonance"
        );
        return judged.Verdict == Verdict.Fails ? judged with { Remedy = ResonanceRemedy(f, f.Project.Measured.SystemResonanceHz!.Value) } : judged;
    }

    // fc = fs √(1 + Vas/(kV)), so the measured resonance says how much air the cone feels.
    private static string ResonanceRemedy(Facts f, double measuredHz)
    {
        if (f.System is not { Network.Driver: var driver } || f.NetVolumeM3 is not { } net || measuredHz <= driver.FsHz)
        {
            return $"a closed box cannot resonate below its driver's {Show.Frequency(f.Driver?.FsHz ?? 0)}: look for a hole, then measure the driver by itself";
        }

        var feltM3 = driver.VasM3 / (Math.Pow(measuredHz / driver.FsHz, 2) - 1);
        var planned = f.Box.EffectiveVolumeM3 ?? net;
        var factor = (f.Box.FillFactor ?? 1) * feltM3 / planned;
        var felt = $"the effective volume is {f.Show.Volume(feltM3)} instead of {f.Show.Volume(planned)}: measure the driver by itself";
        return factor is >= LeastFillFactor and <= GreatestFillFactor
            ? $"{felt}; if the driver is as its sheet says, state the fill factor {Show.Number(factor)} (measured.fill_factor)"
            : $"{felt}, then weigh the cabinet full of water: no fill changes the air that much";
    }

    private static Judgement SystemQ(Facts f)
    {
        var judged = Against(
            f: f,
            measured: f.Project.Measured.SystemQ,
            key: "measured.system_q",
            computed: f.Box.SystemQ,
            tolerance: f.Limits.ProofQ,
            unit: "1",
            what: "Q"
        );
        if (judged.Verdict != Verdict.Fails)
        {
            return judged;
        }

        var (found, planned) = (f.Project.Measured.SystemQ!.Value, f.Box.SystemQ!.Value);
        return judged with
        {
            Remedy =
                found < planned
                    ? $"a further loss with a Q of {Show.Number(1 / (1 / found - 1 / planned), 2)} explains it: take fill out, or look for a leak by the "
                        + "hold test"
                    : $"the driver's Qts would have to be {Show.Number(found / planned, 3)} times what its sheet gives: measure the driver by itself, and "
                        + "the resistance of the cable",
        };
    }

    private static Judgement Against(Facts f, double? measured, string key, double? computed, double tolerance, string unit, string what)
    {
        if (measured is not { } found)
        {
            return Unknown(unit, key);
        }

        return computed is not { } planned
            ? Unknown(unit, f.MissingForBox)
            : Near(
                found,
                planned,
                tolerance * planned,
                unit,
                $"a measured {what} of {Show.Number(found)} against {Show.Number(planned)} computed; ±{Show.Percent(tolerance)} is allowed"
            );
    }

    // Stiffness and loss are held against the same share of what was assumed; the worse of those that were measured counts.
    private static Judgement Core(Facts f)
    {
        var measured = f.Project.Measured;
        if (measured is { CoreModulusPa: null, CoreLossFactor: null })
        {
            return Unknown("Pa", "measured.core_modulus");
        }

        if (f.AssumedCoreModulusPa is not { } modulus || f.CastMix is not { } mix)
        {
            return Unknown("Pa", "materials.cast.mix");
        }

        var least = 1 - f.Limits.ProofModulus;
        var loss = mix.Strength.LossFactor;
        var stiff = measured.CoreModulusPa is { } e
            ? AtLeast(e, least * modulus, "Pa", Nearness.Tenth, $"the test bar has {f.Show.Pressure(e)}; {f.Show.Pressure(modulus)} were assumed")
            : null;
        var lossy = measured.CoreLossFactor is { } eta
            ? AtLeast(eta, least * loss, "1", Nearness.Tenth, $"the test bar has a loss factor of {Show.Number(eta, 2)}; {Show.Number(loss, 2)} was assumed")
            : null;
        var worst =
            stiff is null ? lossy!
            : lossy is null || stiff.Value / stiff.Limit <= lossy.Value / lossy.Limit ? stiff
            : lossy;
        return worst.Verdict == Verdict.Fails
            ? worst with
            {
                Remedy = $"dry the bar and tap it again; every figure of the walls counts what was measured already{Loudest(f)}",
            }
            : worst;
    }

    private static string Loudest(Facts f) =>
        f.WorstSound is { } worst
            ? $": the {worst.Panel} wall is {Show.Level(Math.Abs(worst.LevelDb))} {(worst.LevelDb <= 0 ? "below" : "above")} the cone with it"
            : "";

    // The join that was computed says which way the cabinet must go; without one, the way of the main speakers.
    private static Judgement Polarity(Facts f)
    {
        if (f.Project.Measured.Polarity is not { } found)
        {
            return Unknown("pc", "measured.polarity");
        }

        var wanted = f.Joining is { Inverted: true } ? Projects.Polarity.Opposite : Projects.Polarity.Same;
        var asked = f.Joining is null ? "without a computed join the same way is asked for" : $"the best join asks for the {wanted.Word()} way";
        var judged = AtMost(
            found == wanted ? 0 : 1,
            0,
            "pc",
            Nearness.Count,
            $"the cabinet pushes {(found == Projects.Polarity.Same ? "the same way as" : "against")} the main speakers; {asked}"
        );
        return judged.Verdict == Verdict.Fails
            ? judged with
            {
                Remedy = "swap the two wires at the cabinet, or turn its polarity switch, then record the pulses again",
            }
            : judged;
    }

    private static Judgement Rattle(Facts f)
    {
        if (Listening.Of(f.Project.Logbook) is not { } heard)
        {
            return Unknown(
                "pc",
                $"nobody has listened yet: sweep slowly from 20 to 200 Hz at the everyday level, a hand on each panel, and log an entry of the kind "
                    + $"\"{Listening.NoRattle}\", or \"{Listening.Rattle}\" with its part"
            );
        }

        var day = heard.Last.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return heard.Rattling.Count == 0
            ? AtMost(0, 0, "pc", Nearness.Count, $"nothing rattled when it was last listened to, on {day}")
            : AtMost(
                heard.Rattling.Count,
                0,
                "pc",
                Nearness.Count,
                $"when it was last listened to, on {day}, this rattled: {string.Join(", ", heard.Rattling)}"
            ) with
            {
                Remedy = $"hold, damp or tighten {heard.Rattling[0]} until the note that shakes it is clean, then sweep again and log \"{Listening.NoRattle}\"",
            };
    }
}
