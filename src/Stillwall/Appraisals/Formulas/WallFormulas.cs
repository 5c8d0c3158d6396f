namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of the walls.</summary>
internal static class WallFormulas
{
    private const string Kinds = "as the stated walls; the kinds and the gyroid's stiffness are our choice, bounds from memory",
        Lattice = "as the stated walls; a lattice alone a factor of 1.5";

    /// <summary>Every formula of the stage.</summary>
    internal static IReadOnlyList<Formula> All { get; } =
    [
        new(
            "clear-span",
            "Clear span of a panel",
            "inside size between the walls that meet; a brace is an elastic line across it, not a support",
            "geometry of the cabinet; where a support begins is our choice",
            "exact for the geometry"
        ),
        new("laminate-mass", "Mass of a wall per area", "sum of density × thickness", "elementary", "exact"),
        new(
            "panel-modes",
            "Frequencies of a panel",
            "least of (bending + shear energy)/(mass + rotary inertia) over 12 × 12 polynomials in deflection and both rotations, braces as beams with "
                + "mass, the front with its opening and the driver's mass on the bolt circle; cut core: a strip, f = 22.373/(2πl²) · √(D/m)",
            "Mindlin 1951 (from memory) by Rayleigh–Ritz; Blevins 1979 for the strip",
            "0.9 % of solid finite elements, 0.3 % of thin plates (Leissa 1969) at a hundredth of the side"
        ),
        new(
            "panel-deflection",
            "Deflection of a panel under even pressure",
            "the same plate at rest, near α · p · a⁴/D with α = 0.001265 for a clamped thin square and 0.004062 for a supported one",
            "Reissner and Mindlin plate by Rayleigh–Ritz; thin limits Timoshenko and Woinowsky-Krieger 1959, tables 8 and 35 (from memory)",
            "1.5 % of solid finite elements"
        ),
        new(
            "wall-to-cone",
            "Sound of a wall relative to the cone",
            "20 log[ area · mean deflection per pascal / |1 − (f/f1)² + jη| / (V/(ρc²)) ], worst from 20 Hz to 2 × crossover",
            "one-mode model, our choice; hysteretic loss after Cremer and Heckl 1988 (from memory)",
            "± 3 dB near a resonance, from the loss factor"
        ),
        new(
            "joint-capacity",
            "What a joint carries",
            "strength × area",
            "elementary; sealant 0.1 MPa and keyed cast 0.5 MPa from memory, unless the limits state others",
            "a factor of two"
        ),
        new("lift-load", "Load of lifting", "2 × mass × 9.80665", "our choice", "a knock is more"),
        new("joint-safety", "Safety factor of a joint", "capacity/load", "elementary", "as the capacity"),
        new(
            "kind-stiffness",
            "Bending stiffness of a kind of wall",
            "layers bonded: Σ E/(1 − ν²) · ∫ z² dz about the neutral plane; a single skin has both skins in one, a lattice one cell of a sheet gyroid "
                + "across the core, two nozzles thick",
            Kinds,
            Lattice
        ),
        new(
            "kind-mode",
            "Lowest resonance of a kind of wall",
            "lowest mode of the worst panel and case with the layers of that kind, in the same outside",
            Kinds,
            Lattice
        ),
        new(
            "kind-sound",
            "Sound of a kind of wall relative to the cone",
            "worst panel and case with the layers of that kind, worst from 20 Hz to 2 × crossover",
            Kinds,
            "± 3 dB near a resonance; " + Lattice
        ),
        new(
            "kind-mass",
            "Finished mass with a kind of wall",
            "the appraisal's sum for that kind; a lattice: mass as drawn + (share of the core × room between the skins − struts) × density of the plastic "
                + "+ more or less cast",
            Kinds,
            "5 %"
        ),
        new(
            "kind-volume",
            "Net air volume with a kind of wall",
            "as the cabinet's, with the thickness of that wall",
            "geometry of the drawn cabinet",
            "as the cabinet's"
        ),
        new(
            "kind-price",
            "Cost with a kind of wall",
            "sum of the prices for that kind; a lattice: filament and powder in proportion to their masses",
            "stated prices; in proportion is our choice",
            "as the prices"
        ),
        new(
            "kind-time",
            "Least printing time with a kind of wall",
            "least time for that kind; a lattice: time as drawn + more plastic/flow",
            "common practice, no source",
            "a floor: real printing takes 1.5 to 1.8 times as long"
        ),
        new(
            "kind-passage",
            "Least passage for the mix in a kind of wall",
            "core − 2 × height of a key; a lattice: 0.42 × cell − sheet",
            "geometry of the drawn section; the gyroid's 0.42 from memory",
            "5 % of a lattice"
        ),
        new(
            "lightest-wall",
            "Lightest wall that passes",
            "cores of 4 to 30 mm in millimetres, no brace to two, six strut pitches: the least finished mass with which no finding of walls and pour fails",
            "search over the findings' own rules; range and steps are our choice",
            "one step"
        ),
        new("lightest-saving", "What the lightest wall saves", "finished mass as stated − finished mass with the lightest wall", "arithmetic", "as the masses"),
    ];
}
