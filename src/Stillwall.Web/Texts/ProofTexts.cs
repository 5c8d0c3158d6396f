namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Proof.</summary>
internal static class ProofTexts
{
    internal const string Hint = "The built thing against the plan. What was found out is stated here and beats what was assumed.";
    internal const string Compare = "Plan against what was found", What = "what", Planned = "planned", Measured = "found", Verdict = "verdict", Found = "What was found out", How = "How it is found out", Assumed = "as the cast's table";

    internal static readonly (string Key, string Label, string? Unit, double Step)[] Keys =
    [
        ("measured.system_resonance", "resonance of the finished cabinet", "Hz", 0.5), ("measured.system_q", "its Q", null, 0.01), ("measured.core_modulus", "modulus of the core", "GPa", 0.1), ("measured.core_loss_factor", "loss factor of the core", null, 0.001),
        ("measured.core_density", "density of the core", "kg/m3", 10), ("measured.fill_factor", "fill factor", null, 0.01), ("measured.leak_resistance", "leak resistance", "Pa*s/m3", 1000), ("measured.party_wall", "party wall, ten bands from 20 Hz", "dB", 1),
    ];

    internal static readonly (string Name, string Line)[] Ways =
    [
        ("Impedance", "One resistor in series, both voltages recorded: resonance and Q."), ("Tap", "The cast test bar, hung at its nodes and tapped: modulus and loss factor."), ("Hold", "Press the cone in, let go, and take the time it needs to come back: the leak."),
        ("Scales", "Weigh the cabinet every few days until nothing changes: it is dry."), ("Sweep", "A slow sweep by ear: no rattle."), ("Wall", "Play bass, read both rooms: ten level differences."),
    ];

    internal const string Resonance = "resonance", QTotal = "Q, total", QMechanical = "Q, mechanical", QElectrical = "Q, electrical", CoilResistance = "coil's resistance", CoilInductance = "coil's inductance";
    internal const string Down = "3 dB and 10 dB down", Fill = "fill factor, if the driver is as stated", NotKnown = "unknown";
    internal const string TapsThatCount = "taps that count", Bending = "first bending mode", Modulus = "Young's modulus", LossFactor = "loss factor, its supports in it", Density = "density";
    internal const string Delay = "arrived after", Harmonics = "harmonics", AboveNoise = "above the noise", NoNoise = "no noise heard";
    internal const string Near = "close to the cone: bends and slopes below some 200 Hz may be compared, levels may not; the microphone's own response is in every figure, and a phone falls off below 50 to 100 Hz";
    internal const string AtSeat = "at the seat the room counts as much as the cabinet: peaks and dips may be compared in their places, not in their heights; the microphone's own response is in every figure";
    internal const string NoWav = "the recording must come as a WAV file; choose one, or record here", TooLarge = "the recording is too large; at most 64 MB, a minute of stereo at 96 kHz in 32 bit";

    internal static string Recording(string fault) => $"the recording: {fault}";

    internal static string CountOf(int some, int all) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{some} of {all}");

    internal static string NotStated(string name) => $"{name}: is not stated; a number with its unit, as measured";

    internal static string NotWithin(string name, string text, string least, string most) => $"{name}: \"{Short(text)}\" cannot be used; {least} to {most}, the unit with it";

    internal static string NoSuchPlace(string place) => $"at: \"{Short(place)}\" is no place of the microphone; near or seat";

    internal static string TooThick(double thickness, double length) =>
        $"thickness: {Stillwall.Appraisals.Show.Number(thickness * 1e3)} mm is too thick for a length of {Stillwall.Appraisals.Show.Number(length * 1e3)} mm; at most 0.35 of it, better a quarter";

    private static string Short(string text) => new([.. text.Take(40).Select(c => char.IsControl(c) ? ' ' : c)]);
}
