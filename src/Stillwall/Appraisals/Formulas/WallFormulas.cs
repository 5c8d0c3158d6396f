namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of the walls.</summary>
internal static class WallFormulas
{
    /// <summary>Every formula of the stage.</summary>
    internal static IReadOnlyList<Formula> All { get; } =
    [
        new("clear-span", "Clear span of a panel", "inside size between the walls that meet; a brace is an elastic line across it, not a support", "geometry of the cabinet; where a support begins is our choice", "exact for the geometry"),
        new("laminate-mass", "Mass of a wall per area", "sum of density × thickness", "elementary", "exact"),
        new(
            "panel-modes",
            "Frequencies of a panel",
            "least of (bending + shear energy)/(mass + rotary inertia) over 12 × 12 polynomials in deflection and both rotations, braces as beams with mass, the front with its opening and the driver's mass on the bolt circle; cut core: a strip, f = 22.373/(2πl²) · √(D/m)",
            "Mindlin, J. Appl. Mech. 18 (1951) 31, by Rayleigh–Ritz (from memory); Blevins (1979) for the strip",
            "0.9 % of solid finite elements, 0.3 % of thin plates (Leissa, NASA SP-160) at a hundredth of the side"),
        new(
            "panel-deflection",
            "Deflection of a panel under even pressure",
            "the same plate at rest, near α · p · a⁴/D with α = 0.001265 for a clamped thin square and 0.004062 for a supported one",
            "Reissner and Mindlin plate by Rayleigh–Ritz; thin limits Timoshenko and Woinowsky-Krieger (1959), tables 8 and 35",
            "1.5 % of solid finite elements"),
        new(
            "wall-to-cone",
            "Sound of a wall beside the cone",
            "20 log[ area · mean deflection per pascal / |1 − (f/f1)² + jη| / (V/(ρc²)) ], worst from 20 Hz to 2 × crossover",
            "one-mode model, our choice; hysteretic loss after Cremer and Heckl (from memory)",
            "± 3 dB near a resonance, from the loss factor"),
        new("joint-capacity", "What a joint carries", "strength × area", "elementary; sealant 0.1 MPa and keyed cast 0.5 MPa from memory, unless the limits state others", "a factor of two"),
        new("lift-load", "Load of lifting", "2 × mass × 9.80665", "our choice", "a knock is more"),
        new("joint-safety", "Safety factor of a joint", "capacity/load", "elementary", "as the capacity"),
    ];
}
