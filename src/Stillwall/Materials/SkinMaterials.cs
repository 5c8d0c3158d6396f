using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Materials;

/// <summary>A plastic that skins are printed of.</summary>
/// <param name="Name">Name as in the project file: <c>pla</c>, <c>petg</c>, <c>asa</c>, <c>abs</c> or <c>own</c>.</param>
/// <param name="DensityKgM3">Density, kg/m³.</param>
/// <param name="ModulusPa">Young's modulus at room temperature, Pa.</param>
/// <param name="HotModulusFactor">Share of the modulus that is left while the cast sets warm against it (our choice).</param>
/// <param name="Poisson">Poisson's ratio.</param>
/// <param name="SofteningC">Deflection temperature at 0.45 MPa, °C.</param>
/// <param name="StrengthPa">Bending strength across the layers, Pa; the tensile strength across layers stands in for it.</param>
/// <param name="LossFactor">Loss factor at room temperature.</param>
/// <param name="SpecificHeatJKgK">Specific heat, J/(kg·K).</param>
/// <param name="ConductivityWMK">Thermal conductivity, W/(m·K).</param>
/// <param name="ExpansionPerK">Linear thermal expansion, 1/K.</param>
/// <param name="ShrinkageRatio">Linear shrinkage of the print while cooling, as a ratio.</param>
/// <param name="Basis">Where the figures come from.</param>
public sealed record SkinMaterial(
    string Name,
    double DensityKgM3,
    double ModulusPa,
    double HotModulusFactor,
    double Poisson,
    double SofteningC,
    double StrengthPa,
    double LossFactor,
    double SpecificHeatJKgK,
    double ConductivityWMK,
    double ExpansionPerK,
    double ShrinkageRatio,
    string Basis
)
{
    /// <summary>Modulus while the cast sets against the skin, Pa.</summary>
    public double HotModulusPa => HotModulusFactor * ModulusPa;
}

/// <summary>The plastics that are known, as data.</summary>
/// <remarks>
/// Density, modulus and strength across the layers are the middle or the lower end of what data sheets and papers on printed specimens span, whose names
/// are not on record; the scatter between spools and printers is 20 %. They and all the rest are from memory. The hot modulus factor of one half is our
/// choice: head and warmth meet some 10 K under the softening temperature.
/// </remarks>
public static class SkinMaterials
{
    private const double Warm = 0.5;

    /// <summary>Polylactic acid: stiff, and the first to soften.</summary>
    public static SkinMaterial Pla { get; } =
        new(
            Name: "pla",
            DensityKgM3: 1240,
            ModulusPa: 3.5e9,
            HotModulusFactor: Warm,
            Poisson: 0.36,
            SofteningC: 53,
            StrengthPa: 35e6,
            LossFactor: 0.02,
            SpecificHeatJKgK: 1800,
            ConductivityWMK: 0.13,
            ExpansionPerK: 68e-6,
            ShrinkageRatio: 0.003,
            Basis: "from memory of data sheets: 1.22–1.26 g/cm³, 3–4 GPa, 35–45 MPa across layers, deflection temperature 53 °C"
        );

    /// <summary>Glycol-modified polyester: the usual choice.</summary>
    public static SkinMaterial Petg { get; } =
        new(
            Name: "petg",
            DensityKgM3: 1270,
            ModulusPa: 2.0e9,
            HotModulusFactor: Warm,
            Poisson: 0.38,
            SofteningC: 67,
            StrengthPa: 25e6,
            LossFactor: 0.03,
            SpecificHeatJKgK: 1200,
            ConductivityWMK: 0.20,
            ExpansionPerK: 60e-6,
            ShrinkageRatio: 0.004,
            Basis: "from memory of data sheets: 1.25–1.29 g/cm³, 2–3 GPa, 25–38 MPa across layers, deflection temperature 65–70 °C"
        );

    /// <summary>Acrylonitrile styrene acrylate: stands sun and warmth; its figures are all from memory.</summary>
    public static SkinMaterial Asa { get; } =
        new(
            Name: "asa",
            DensityKgM3: 1070,
            ModulusPa: 2.2e9,
            HotModulusFactor: Warm,
            Poisson: 0.37,
            SofteningC: 90,
            StrengthPa: 20e6,
            LossFactor: 0.03,
            SpecificHeatJKgK: 1400,
            ConductivityWMK: 0.18,
            ExpansionPerK: 90e-6,
            ShrinkageRatio: 0.006,
            Basis: "from memory: 2.0–2.4 GPa, 35–50 MPa, half of it across layers, 90–98 °C"
        );

    /// <summary>Acrylonitrile butadiene styrene.</summary>
    public static SkinMaterial Abs { get; } =
        new(
            Name: "abs",
            DensityKgM3: 1040,
            ModulusPa: 2.1e9,
            HotModulusFactor: Warm,
            Poisson: 0.37,
            SofteningC: 90,
            StrengthPa: 20e6,
            LossFactor: 0.03,
            SpecificHeatJKgK: 1400,
            ConductivityWMK: 0.18,
            ExpansionPerK: 90e-6,
            ShrinkageRatio: 0.007,
            Basis: "from memory of data sheets: 1.04 g/cm³, 2.1 GPa, 40 MPa, half of it across layers, deflection temperature 85–95 °C"
        );

    /// <summary>Every known plastic, in the order of the project file's words.</summary>
    public static IReadOnlyList<SkinMaterial> All { get; } = [Pla, Petg, Asa, Abs];

    /// <summary>Finds a plastic by its name in the project file.</summary>
    /// <param name="name">Name.</param>
    /// <returns>The plastic, or null where none has that name.</returns>
    public static SkinMaterial? Find(string name) => All.FirstOrDefault(m => m.Name == name);

    /// <summary>The plastic that a project states: by name, or by figures of its own.</summary>
    /// <param name="stated">What the project states; absent gives null.</param>
    /// <returns>The plastic, or null where it is not stated or its own figures are missing.</returns>
    public static SkinMaterial? Of(Projects.Materials? stated) =>
        stated?.Skin switch
        {
            null => null,
            "own" => stated.SkinOwn is null ? null : FromOwn(stated.SkinOwn),
            var name => Find(name),
        };

    /// <summary>A plastic of one's own: what is stated, and for the rest what plastics have in common.</summary>
    /// <param name="own">Stated figures.</param>
    /// <returns>The plastic.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A stated figure is not positive.</exception>
    /// <remarks>
    /// Model: loss factor 0.03, specific heat 1300 J/(kg·K), conductivity 0.18 W/(m·K), expansion 70e-6 per kelvin and shrinkage 0.4 % stand in for
    /// what is not asked.
    /// Validity: unfilled printing plastics. Source: our choice, the middle of the known plastics. Accuracy: a factor of 1.5 on what stands in.
    /// </remarks>
    public static SkinMaterial FromOwn(OwnSkin own)
    {
        ArgumentNullException.ThrowIfNull(own);
        Require.Positive(own.DensityKgM3);
        Require.Positive(own.ModulusPa);
        Require.Positive(own.StrengthPa);
        return new SkinMaterial(
            Name: "own",
            DensityKgM3: own.DensityKgM3,
            ModulusPa: own.ModulusPa,
            HotModulusFactor: Warm,
            Poisson: own.Poisson,
            SofteningC: own.SofteningC,
            StrengthPa: own.StrengthPa,
            LossFactor: 0.03,
            SpecificHeatJKgK: 1300,
            ConductivityWMK: 0.18,
            ExpansionPerK: 70e-6,
            ShrinkageRatio: 0.004,
            Basis: "stated; the rest our choice"
        );
    }
}
