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
}
