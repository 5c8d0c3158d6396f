namespace Stillwall.Appraisals.Formulas;

/// <summary>Formulas of the pour.</summary>
internal static class PourFormulas
{
    /// <summary>Every formula of the stage.</summary>
    internal static IReadOnlyList<Formula> All { get; } =
    [
        new(
            "cavity-between-skins",
            "Cavity between the skins",
            "volume between outer and inner shell less struts and keys",
            "geometry of the parts",
            "exact for the geometry"
        ),
        new(
            "slurry",
            "Slurry of powder and water",
            "volume = powder/ρp + water/998; density = (powder + water)/volume",
            "arithmetic: balance of mass and volume, no air stirred in",
            "1 %, from stirred-in air"
        ),
        new(
            "stoichiometry",
            "Dry mass and free water",
            "dry = powder + min(water, bound · powder); free = water − bound water; 0.1862 kg per kg of hemihydrate",
            "stoichiometry: 145.149 and 172.171 g/mol",
            "± 3 % for the powder's purity"
        ),
        new(
            "dry-density",
            "Dry density",
            "dry mass/slurry volume: the volume is fixed at mixing",
            "arithmetic: balance of mass",
            "2 % of Glass Tips 2009, a transcription"
        ),
        new("porosity", "Porosity", "1 − dry density/density of the set solid", "arithmetic: balance of mass; gypsum 2320 kg/m³", "0.01"),
        new(
            "adiabatic-peak",
            "Temperature without any loss",
            "air + powder · heat/(dry · c + free water · 4180)",
            "formation enthalpies: 112 kJ/kg Blanc 2012, 118 and 133 NBS 1982 (from memory), the middle is our choice; gypsum 1080 J/(kg·K) Blanc 2012",
            "± 9 % of the rise"
        ),
        new(
            "setting-heat",
            "Expected temperature of the setting wall",
            "one-dimensional conduction through outer skin, cast and inner skin; even release from initial set to end of heat, loss at the outer skin "
                + "alone 8 W/(m²·K)",
            "heat balance in finite volumes after Crank and Nicolson 1947 (from memory); even release our choice",
            "0.1 % of the exact series of a slab, and the band of the heat, ± 9 % of the rise"
        ),
        new(
            "thickest-place",
            "Thickest place of the cavity",
            "greatest ball in the edge where front or rear core meets the side: 2√2/(1 + √2) · core = 1.17 · core",
            "geometry: a ball between two outer skins at right angles and the edge of the inner one",
            "exact for square edges; tongues and posts in them leave less"
        ),
        new("form-pressure", "Form pressure", "ρ · g · height of the lift", "ACI 347-04, 2.2.2: p = w h, full liquid head", "upper bound"),
        new(
            "lift-top",
            "Top of a lift",
            "the lifts up to it on top of one another; the first fills the front's core and buries the inner sleeve by 30 mm, the others are equal",
            "our choice",
            "exact for the geometry"
        ),
        new(
            "lift-height",
            "Height of a lift",
            "cavity height over the fewest lifts whose head keeps the bulge within its limit, none under 30 mm",
            "our choice",
            "as the bulge"
        ),
        new(
            "skin-bulge",
            "Bulge of a skin between struts",
            "p · s⁴/(384 D), hot modulus",
            "elementary beam theory",
            "exact for its model; the hot modulus is our choice"
        ),
        new("skin-stress", "Bending stress of a skin at the struts", "p · s²/(2 t²)", "elementary beam theory", "exact for its model"),
        new("tie-load", "Pull on a strut that ties the skins", "p × pitch", "elementary: balance of forces", "exact for its model"),
        new(
            "strut-bulge",
            "Bend of an untied strut",
            "p · pitch · L⁴/(384 E I), five times as much with ends that turn",
            "elementary beam theory",
            "the two ends bracket the truth"
        ),
        new(
            "pour-batches",
            "Division into buckets",
            "fewest equal buckets in each lift, each at most 0.8 of the bucket and pour rate × (pot life − soak − stir)",
            "common practice, no source; 0.8 is our choice",
            "as pot life and pour rate are known"
        ),
        new(
            "drying-holes",
            "Drying holes in the inner skin",
            "clear strips of the flat inner sides × places along the depth, 40 mm or three diameters apart; each a disc, above 8 mm with the corner of a roof",
            "geometry of the drawn cabinet; the pattern is our choice",
            "exact"
        ),
        new("hole-tape", "Tape for the drying holes", "holes × (diameter + 20 mm)", "our choice of overlap", "whole rows at a time take more"),
        new("hole-sealant", "Sealant for the drying holes", "holes × π/4 × (diameter + 6 mm)² × 1 mm", "our choice of dab", "a maker lays half as much again"),
        new(
            "rehearsal-water",
            "Water that the cavity takes",
            "cavity × 998 kg/m³",
            "density of water at 20 °C (from memory)",
            "0.1 %; the cavity itself as it was printed"
        ),
        new(
            "scales",
            "What the scales must do",
            "carry the heaviest; tell a hundredth of the least weighed, a tenth of the water that may be left, half a per cent of the test bar, down to a "
                + "step of 1, 2 or 5",
            "our choice",
            "exact"
        ),
        new(
            "drying-fit",
            "Drying by the weigh-ins",
            "mass = dry + excess · e^(−t/τ) by least squares; 95 % bands from what the fit leaves, Student's t",
            "Golub and Pereyra 1973, JCGM 100:2008 clause 5 (both from memory)",
            "as the scales, while the drying goes on as it has"
        ),
        new(
            "cast-modulus",
            "Modulus of a dry cast",
            "E₁ · (ρ/ρ₁)ⁿ",
            "power law of density and its upper anchor from memory, lower anchor Hopkins 2007, table A2; see the mix",
            "as its band"
        ),
        new(
            "cast-strength",
            "Strength of a dry cast",
            "σ₁ · exp(b · (ρ − ρ₁)/ρ of the solid)",
            "exponential law of porosity from memory, fitted to Glass Tips 2009, a transcription that names no author",
            "10 % between 33 and 54 % porosity"
        ),
        new(
            "pour-clock",
            "The pour on a clock",
            "start + soak + stir + volume/rate; the next lift starts at the final set of the one before",
            "common practice, no source; from two people on the next bucket is mixed while one is poured, our choice",
            "as pot life and pour rate are known"
        ),
    ];
}
