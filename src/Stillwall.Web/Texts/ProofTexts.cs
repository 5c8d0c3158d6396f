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

    internal const string Resonance = "resonance",
        QTotal = "Q, total",
        QMechanical = "Q, mechanical",
        QElectrical = "Q, electrical",
        CoilResistance = "coil's resistance",
        CoilInductance = "coil's inductance";
    internal const string Down3 = "f3 (−3 dB)",
        Down10 = "f10 (−10 dB)",
        Played = "the sweep as played",
        Fill = "fill factor, if the driver is as stated",
        NotKnown = "unknown",
        TooSmall = "too small to tell";
    internal const string TapsThatCount = "taps that count",
        Bending = "first bending mode",
        Modulus = "Young's modulus",
        LossFactor = "loss factor, its supports in it",
        Density = "density";
    internal const string Delay = "arrived after",
        Harmonics = "harmonics",
        AboveNoise = "above the noise",
        NoNoise = "no noise heard";
    internal const string Near =
        "close to the cone: bends and slopes below some 200 Hz may be compared, levels may not; the microphone's own response is in every figure, and a "
        + "phone falls off below 50 to 100 Hz";
    internal const string AtSeat =
        "at the seat the room counts as much as the cabinet: peaks and dips may be compared in their places, not in their heights; the microphone's own "
        + "response is in every figure";
    internal const string NoWav = "the recording must come as a WAV file; choose one, or record here",
        TooLarge = "the recording is too large; at most 64 MB, a minute of stereo at 96 kHz in 32 bit";

    internal static string PlannedOf(string topic) => $"planned: {topic}";

    internal static string Recording(string name, string fault) => $"{Called(name)}: {fault}";

    internal static string NotBrought(string name) => $"{Called(name)}: is not there; choose its file too";

    internal static string TooMany(int most) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"more than {most} recordings are not averaged; begin anew, without averaging");

    internal static string SweepNote(string place, int count, int points) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{place}, {points} points, {count} averaged");

    internal static string Rattled(string part) => $"{Short(part)} rattled";

    internal static string MeasuredName(string? name) =>
        name is null ? "measured"
        : name.EndsWith(", measured", StringComparison.Ordinal) ? name
        : $"{name}, measured";

    private static string Called(string name) =>
        name switch
        {
            "alone" => "the recording of the resistor alone",
            "mass" => "the recording with the added mass",
            "box" => "the recording on the box",
            "there" => "the recording on the other side",
            "background" => "the recording of the background",
            "main" => "the recording of the main speaker",
            _ => "the recording",
        };

    internal static string Recorded(double seconds, double rateHz) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{seconds:0.0} s at {rateHz / 1000:0.#} kHz");

    internal static string CountOf(int some, int all) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{some} of {all}");

    internal static string NotStated(string name) => $"{name}: is not stated; a number with its unit, as measured";

    internal static string NotWithin(string name, string text, string least, string most) =>
        $"{name}: \"{Short(text)}\" cannot be used; {least} to {most}, the unit with it";

    internal static string NoSuchPlace(string place) => $"at: \"{Short(place)}\" is no place of the microphone; near or seat";

    internal static string TooThick(double thickness, double length) =>
        $"thickness: {Stillwall.Appraisals.Show.Number(thickness * 1e3)} mm is too thick for a length of {Stillwall.Appraisals.Show.Number(length * 1e3)} "
        + $"mm; at most 0.35 of it, better a quarter";

    private static string Short(string text) => new([.. text.Take(40).Select(c => char.IsControl(c) ? ' ' : c)]);

    internal const string BadParts = "parts: does not fit what was sent; name and length of each recording";
    internal const string MassOrBox = "the second recording is not there: the driver with a mass on its cone, or on a box of known volume";
    internal const string MassTooSmall = "the mass does not lower the resonance; a mass of about the cone's own, stuck fast to it",
        BoxTooLarge = "the box does not raise the resonance; an airtight box smaller than the driver's Vas";
    internal const string Vas = "Vas",
        MovingMass = "moving mass",
        ForceFactor = "force factor";
    internal const string AsDriver =
        "to keep it states the driver with these figures, and the rest as its sheet has it, in place of the named one; mass, volume and area go into Vas "
        + "as stated";
    internal const string AveragedCount = "recordings averaged",
        Clocks = "two clocks may move it, 20 to 400 Hz";
    internal const string WallTurned =
        "a band is louder on the other side than on this one by 20 dB or more, or the two are not of one gain; this side first, at one gain";
    internal const string WallSays =
        "only differences mean something, for nobody has calibrated the microphone; ± is by the length of the recordings, and several places in each "
        + "room, walked slowly, count more than that";
    internal const string AtLeast = "at least ",
        UpTo = "up to ",
        AtMost = "at most ",
        About = "about ";
    internal const string FirstSwing = "first swing",
        Up = "up",
        Down = "down",
        AgainstMainSpeaker = "against the main speaker",
        SameWay = "the same way",
        OtherWay = "the other way";
    internal const string OneMicrophone = "one microphone alone does not say which way is out; bring a recording of a main speaker too",
        TwoCones = "the two recordings are compared with each other, by one microphone at one place before each cone; which way is outward stays unknown";
    internal const string NoBox = "the leak is unknown: the box or the driver is not stated";
    internal const string LeakQ = "Q of the leak",
        LeakResistance = "resistance of the leak",
        TooFast = "too fast for a stopwatch: look for the hole, then test again; nothing to keep but the day",
        TooTight = "tighter than this test can tell",
        AFifth = "a fifth either way, by stopwatch";
    internal const string Weighed = "on the scales",
        FitOnPour = "drying, with the day it will be ready, is fitted at the stage Pour from three days on",
        Heard = "heard",
        NothingRattled = "nothing rattled";
    internal const string EarSays =
        "the ear's answer, at the level that was played and for what was playing; the finding takes the last answer about each part";

    internal const string ImpedanceTitle = "Impedance from a recording",
        TapTitle = "Tap test from a recording",
        SweepTitle = "Relative response, played and recorded";
    internal const string ImpedanceNeeds =
        "Stereo: left the voltage of the source, right the voltage across the driver, the resistor between them; play the sweep above at low volume.";
    internal const string TapNeeds = "Five single taps in the middle of the bar, hung or laid on foam at 0.22 of its length from each end.";
    internal const string SweepNeeds =
        "Any microphone, uncalibrated, a finger from the cone or at the seat. The sweep runs from 5 Hz to 1 kHz in ten seconds; recording begins a second "
        + "before it.";
    internal const string Reference = "resistor, measured",
        Length = "length",
        Width = "width",
        Thickness = "thickness",
        Mass = "mass",
        Where = "microphone",
        NearChoice = "close to the cone",
        SeatChoice = "at the seat";
    internal const string DriverTitle = "The driver's own parameters",
        WallTitle = "Through the party wall",
        PolarityTitle = "Polarity",
        HoldTitle = "Hold test",
        WeightTitle = "On the scales",
        RattleTitle = "Rattle, by ear";
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
    internal const string RattleNeeds =
        "Play the slow sweep from 20 to 200 Hz, up to the everyday level, a palm on each panel; then frame, screws, terminal, feet and wires. Touch doors "
        + "and lamps before blaming the cabinet. A knock is the driver at its end.";
    internal const string AloneFile = "the resistor alone (WAV)",
        MassFile = "with the mass (WAV)",
        BoxFile = "on the box (WAV)",
        ThereFile = "other side (WAV)",
        BackgroundFile = "background there (WAV)",
        MainFile = "main speaker (WAV)",
        HereFile = "this side (WAV)",
        FreeFile = "free driver (WAV)",
        CabinetFile = "cabinet (WAV)";
    internal const string Load = "resistor in the driver's place",
        AddedMass = "added mass",
        KnownVolume = "volume of the box",
        Area = "cone's area, Sd",
        Seconds = "time to creep back",
        Scales = "mass",
        RattlingPart = "part that rattled; empty: none";
    internal const string Average = "average with those before",
        FetchPulses = "Download the pulses",
        FetchNoise = "Download the noise",
        FetchSlow = "Download the slow sweep",
        IfAny = ", if any";
    internal const string Day = "day",
        NoDay = "the day is missing; such as 2026-11-30",
        LogIt = "Log it",
        Logged = "Logged",
        LogHint = "adds an entry to the logbook; undo takes it back";
    internal const string RecordingFile = "recording (WAV)",
        ReadIt = "Analyse",
        WorkOut = "Calculate",
        PlayAndRecord = "Play and record",
        Stop = "Stop",
        Input = "input",
        FetchSweep = "Download the sweep";
    internal const string BandCaption = "± is half of the 95 % band",
        Keep = "Keep",
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

    internal static string Bound(Stillwall.Proofs.Signals.DriveBound? bound, Stillwall.Appraisals.Show show) =>
        bound is { } b
            ? $"At {Stillwall.Appraisals.Show.Frequency(b.FrequencyHz)} the cone reaches its limit with {Stillwall.Appraisals.Show.Number(b.VoltageV, 2)} "
                + $"V rms at the terminals ({Stillwall.Appraisals.Show.Level(b.LevelDb)} at {show.Distance(1)}): keep to half of that."
            : "How much voltage the cone can take is not known: the driver's excursion limit or the box is not stated.";

    internal static string Keeping(string what) => $"kept: {what}";
}
