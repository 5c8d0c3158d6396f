using Stillwall.Appraisals;
using Stillwall.Appraisals.Proving;
using Stillwall.Projects;
using Stillwall.Proofs.Signals;

namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Proof.</summary>
internal static class ProofTexts
{
    internal const string Hint = "The built thing against the plan. What was found out is stated here and beats what was assumed.";
    internal const string Compare = "Plan against what was found",
        What = "what",
        Planned = "planned",
        Measured = "found",
        Verdict = "verdict",
        Found = "What was found out",
        Assumed = "as the cast's table",
        Same = "same",
        Opposite = "opposite";

    internal static readonly (string Key, string Label, string? Unit, double Step)[] Keys =
    [
        ("measured.system_resonance", "resonance of the finished cabinet", "Hz", 0.5),
        ("measured.system_q", "Q of the finished cabinet", null, 0.01),
        ("measured.core_modulus", "modulus of the core", "GPa", 0.1),
        ("measured.core_loss_factor", "loss factor of the core", null, 0.001),
        ("measured.core_density", "density of the core", "kg/m3", 10),
        ("measured.fill_factor", "fill factor", null, 0.01),
        ("measured.leak_resistance", "leak resistance", "Pa*s/m3", 1000),
        ("measured.party_wall", "party wall, ten bands from 20 Hz", "dB", 1),
        ("measured.polarity", "polarity against the main speakers", null, 0),
    ];

    internal const string Checklist = "What is proved and what is missing",
        Need = "needs",
        Done = "done",
        Missing = "missing";

    internal static readonly (string Name, string Line, string Needs, string Shows)[] Ways =
    [
        ("Impedance", "Resonance and Q, without a microphone.", "a sound card and one resistor", "measured.system_resonance"),
        ("Tap", "Modulus and loss factor of the cast.", "the cast test bar, a phone, scales, a caliper", "measured.core_modulus"),
        ("Hold", "Press the cone in, let go, time how long it takes to come back: the leak.", "a stopwatch", "measured.leak_resistance"),
        ("Scales", "Weigh the cabinet every few days until nothing changes: it is dry.", "scales, the logbook", "weigh-in"),
        ("Rattle", "A slow sweep by ear, a hand on each panel.", "the sweep, an ear, the logbook", "no rattle"),
        ("Wall", "Play bass, record both rooms: ten level differences.", "a phone", "measured.party_wall"),
        ("Polarity", "Which way the first push goes, against the main speakers.", "one microphone, the pulses", "measured.polarity"),
    ];

    internal const string NoWav = "the recording must come as a WAV file; choose one, or record here",
        TooLarge = "the recording is too large; at most 64 MB, a minute of stereo at 96 kHz in 32 bit";

    internal static string PlannedOf(string topic) => $"planned: {topic}";

    /// <summary>What an input is called; a recording's file is named by it, and a fault begins with it.</summary>
    internal static string Label(string kind, string input) => Labels.GetValueOrDefault($"{kind}.{input}") ?? Labels[input];

    /// <summary>What stands in a field to begin with: what is usual, or is taken where nothing is stated.</summary>
    internal static string Example(string kind, string input, DriverSheet? sheet) =>
        input == "sd" && sheet?.SdM2 is { } area ? Units.Write(area, Dimension.Area) : Examples.GetValueOrDefault($"{kind}.{input}", "");

    /// <summary>Why an input cannot be used, in one line.</summary>
    internal static string Fault(string kind, AboutInput about) =>
        about.Input.Length == 0 ? about.Sentence
        : about.Index == 0 ? $"{Label(kind, about.Input)}: {about.Sentence}"
        : $"{Label(kind, about.Input)} {Show.Number(about.Index + 1)}: {about.Sentence}";

    /// <summary>All that is to be kept in mind.</summary>
    internal static IEnumerable<string> Said(ProofOutcome outcome) =>
        outcome.Warnings.Select(w => w.Sentence).Distinct().Concat(outcome.Remarks);

    private static readonly Dictionary<string, string> Labels = new(StringComparer.Ordinal)
    {
        ["recording"] = "recording",
        ["driver.recording"] = "free driver",
        ["polarity.recording"] = "cabinet",
        ["wall.recording"] = "this side",
        ["alone"] = "the resistor alone",
        ["driver.mass"] = "with the mass",
        ["box"] = "on the box",
        ["there"] = "other side",
        ["background"] = "background there",
        ["main"] = "main speaker",
        ["reference"] = "resistor, measured",
        ["load"] = "resistor in the driver's place",
        ["coil"] = "coil by a meter",
        ["coil_tolerance"] = "± of the meter",
        ["added"] = "added mass",
        ["volume"] = "volume of the box",
        ["sd"] = "cone's area, Sd",
        ["length"] = "length",
        ["width"] = "width",
        ["thickness"] = "thickness",
        ["mass"] = "mass",
        ["poisson"] = "Poisson's ratio",
        ["caliper"] = "caliper may be off by",
        ["scales"] = "scales may be off by",
        ["points"] = "points in an octave",
        ["gate"] = "listened to after the arrival",
        ["at"] = "microphone",
        ["near"] = "close to the cone",
        ["seat"] = "at the seat",
        ["average"] = "average with those before",
        ["seconds"] = "time to creep back",
        ["part"] = "part that rattled; empty: none",
    };

    private static readonly Dictionary<string, string> Examples = new(StringComparer.Ordinal)
    {
        ["impedance.reference"] = "10 ohm",
        ["driver.reference"] = "10 ohm",
        ["tap.length"] = "160 mm",
        ["tap.width"] = "40 mm",
        ["tap.thickness"] = "40 mm",
        ["tap.poisson"] = "0.2",
        ["tap.caliper"] = "0.1 mm",
        ["tap.scales"] = "1 g",
        ["sweep.points"] = "24",
        ["sweep.gate"] = "1.5 s",
        ["hold.seconds"] = "2.1 s",
        ["weight.mass"] = "9.42 kg",
    };

    internal const string BadParts = "parts: does not fit what was sent; name and length of each recording";
    internal const string ImpedanceNeeds =
        "Stereo: left the voltage of the source, right the voltage across the driver, the resistor between them; play the sweep above at low volume.";
    internal const string TapNeeds = "Five single taps in the middle of the bar, hung or laid on foam at 0.22 of its length from each end.";
    internal const string SweepNeeds =
        "Any microphone, uncalibrated, a finger from the cone or at the seat. The sweep runs from 5 Hz to 1 kHz in ten seconds; recording begins a second "
        + "before it.";
    internal const string DriverNeeds =
        "The driver by itself, held firmly, cone upright, after the resistor; then the same with a mass stuck to its cone, or on an airtight box of known "
        + "volume. A mass that comes loose can tear the cone: begin softly, and with the sound off while you fix it.";
    internal const string WallNeeds =
        "The same noise on both sides, ten seconds or more each, one microphone at one gain; then the neighbour's room with nothing playing. Ask first: "
        + "it is the neighbour's room, and the noise is theirs too.";
    internal const string PolarityNeeds =
        "The pulses, recorded a finger from the cabinet's cone, then from a main speaker's woofer, at one gain with one microphone. Begin softly: a pulse "
        + "is a push of the whole cone.";
    internal const string HoldNeeds =
        "Press the cone in evenly with both hands for ten seconds, on its stiff rim and not on the dust cap, let go, and time how long it creeps until a "
        + "third of the way is left.";
    internal const string WeightNeeds = "The cabinet on the scales every few days, at the same place.";
    internal const string FetchPulses = "Download the pulses",
        FetchNoise = "Download the noise",
        FetchSlow = "Download the slow sweep",
        IfAny = ", if any";
    internal const string Day = "day",
        NoDay = "the day is missing; such as 2026-11-30",
        LogIt = "Log it",
        Logged = "Logged",
        LogHint = "adds an entry to the logbook; undo takes it back";
    internal const string File = " (WAV)",
        ReadIt = "Analyse",
        WorkOut = "Calculate",
        PlayAndRecord = "Play and record",
        Stop = "Stop",
        Input = "input",
        FetchSweep = "Download the sweep";
    internal const string Keep = "Keep",
        KeepDespite = "Keep despite the doubts",
        Doubts = "Doubtful",
        Kept = "Kept",
        KeepHint = "writes it as found out, where it counts instead of what was assumed, and into the logbook; undo takes it back";

    internal static object Script =>
        new
        {
            reading = "The recording is being read.",
            done = "Read.",
            noFile = "Choose a recording first.",
            lost = "The program does not answer.",
            playing = "Recording; the sweep plays after a second.",
            stopped = "Stopped; nothing was kept.",
            clipped = "The input is overloaded: turn it down and record again; the figures cannot be relied on.",
            quiet = "The input is faint: turn it up or go closer.",
            silent = "Nothing came in: is it the right microphone, and is it on?",
            processed = "The browser does not say that these are off: {0}. They would change the recording; record with another browser or program and "
                + "bring the file.",
            refused = "The browser may not use the microphone; allow it for this page, or bring a file.",
            none = "No microphone is found; plug one in, or bring a file.",
            failed = "Recording failed: {0}",
        };

    internal const string BoundWhy = "how far the sweep may drive it";

    internal static string Bound(DriveBound? bound, Show show) =>
        bound is { } b
            ? $"At {Show.Frequency(b.FrequencyHz)} the cone reaches its limit with {Show.Number(b.VoltageV, 2)} "
                + $"V rms at the terminals ({Show.Level(b.LevelDb)} at {show.Distance(1)}): keep to half of that."
            : "How much voltage the cone can take is not known: the driver's excursion limit or the box is not stated.";

    internal static string Keeping(string what) => $"kept: {what}";
}
