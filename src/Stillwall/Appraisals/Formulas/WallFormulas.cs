namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of the walls.</summary>
internal static class WallFormulas
{
    /// <summary>Every formula of the stage.</summary>
    internal static IReadOnlyList<Formula> All { get; } =
    [
        new("clear-span", "Clear span of a panel", "inside size between the supports: walls that meet, and braces", "geometry of the cabinet; where a support begins is our choice", "exact for the geometry"),
        new("laminate-mass", "Mass of a wall per area", "sum of density × thickness", "elementary", "exact"),
        new(
            "panel-modes",
            "Frequencies of a panel",
            "f = λ/(2πa²) · √(D/m), λ of a clamped or supported plate, D of bonded or slipping layers; cut core: a strip, λ = 22.373",
            "Leissa, NASA SP-160 (1969); Rayleigh–Ritz on Legendre polynomials; Blevins (1979) for the strip",
            "0.01 % of converged thin plates"),
        new(
            "panel-deflection",
            "Deflection of a panel under even pressure",
            "w = α · p · a⁴/D",
            "Timoshenko and Woinowsky-Krieger (1959), tables 8 and 35",
            "0.05 % of converged thin plates"),
        new(
            "wall-to-cone",
            "Sound of a wall beside the cone",
            "20 log[ area · mean deflection per pascal / |1 − (f/f1)² + jη| / (V/(ρc²)) ], worst from 20 Hz to 2 × crossover",
            "one-mode model, our choice; hysteretic loss after Cremer and Heckl (from memory)",
            "± 3 dB near a resonance, from the loss factor"),
        new("joint-capacity", "What a joint carries", "strength × area", "elementary; sealant 0.1 MPa and keyed cast 0.5 MPa from memory", "a factor of two"),
        new("lift-load", "Load of lifting", "2 × mass × 9.80665", "our choice", "a knock is more"),
        new("joint-safety", "Safety factor of a joint", "capacity/load", "elementary", "as the capacity"),
    ];
}
