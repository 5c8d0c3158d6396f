using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Materials;

/// <summary>The set cast as the walls feel it: assumed from its mix, or measured.</summary>
/// <param name="DensityKgM3">Density, kg/m³.</param>
/// <param name="ModulusPa">Young's modulus, Pa.</param>
/// <param name="ModulusLowPa">Least believable modulus, Pa; the modulus itself once it is measured.</param>
/// <param name="ModulusHighPa">Greatest believable modulus, Pa; the modulus itself once it is measured.</param>
/// <param name="Poisson">Poisson's ratio.</param>
/// <param name="LossFactor">Loss factor.</param>
/// <param name="CompressivePa">Compressive strength, Pa, or null where it is not known.</param>
public sealed record CoreMaterial(
    double DensityKgM3,
    double ModulusPa,
    double ModulusLowPa,
    double ModulusHighPa,
    double Poisson,
    double LossFactor,
    double? CompressivePa
)
{
    /// <summary>The dry cast of a mix at the density that its water left behind.</summary>
    /// <param name="mix">The mix.</param>
    /// <param name="dryDensityKgM3">Dry density, 100 to 10 000 kg/m³.</param>
    /// <returns>The core.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is outside its range.</exception>
    /// <remarks>
    /// Model: E = E₁(ρ/ρ₁)ⁿ, σ = σ₁ exp(b(ρ − ρ₁)/ρ of the solid); density over solid density is one less the porosity. Validity: dry, within a
    /// factor of 1.6 of the reference density.
    /// Source: power and exponential laws of porosity from memory; the anchors stand with the mixes.
    /// Accuracy: strength of gypsum within 10 % of Glass Tips 2009 between 33 and 54 % porosity; the modulus carries its own band.
    /// </remarks>
    public static CoreMaterial Dry(CastMix mix, double dryDensityKgM3)
    {
        ArgumentNullException.ThrowIfNull(mix);
        Require.Within(dryDensityKgM3, 100, 10000, nameof(dryDensityKgM3), "kg/m³");
        var known = mix.Strength;
        var modulus = known.ModulusPa * Math.Pow(dryDensityKgM3 / known.ReferenceDensityKgM3, known.ModulusExponentFactor);
        var compressive = known.CompressivePa * Math.Exp(known.PorosityFactor * (dryDensityKgM3 - known.ReferenceDensityKgM3) / mix.SolidDensityKgM3);
        return new CoreMaterial(
            DensityKgM3: dryDensityKgM3,
            ModulusPa: modulus,
            ModulusLowPa: modulus * known.BandLowFactor,
            ModulusHighPa: modulus * known.BandHighFactor,
            Poisson: known.Poisson,
            LossFactor: known.LossFactor,
            CompressivePa: compressive
        );
    }

    /// <summary>The same cast while it is still wet: half as stiff and strong for gypsum.</summary>
    /// <param name="mix">The mix.</param>
    /// <param name="wetDensityKgM3">Density with the free water in it, kg/m³.</param>
    /// <returns>The wet core.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive.</exception>
    /// <remarks>
    /// Model: modulus and strength times the mix's wet factor. Validity: soaked cast. Source: half of the strength dried at 45 °C, Gypsum &amp; Lime
    /// 1954; the modulus falls likewise, Kishitani and Hirai 1977. Accuracy: ± a third.
    /// </remarks>
    public CoreMaterial Wet(CastMix mix, double wetDensityKgM3)
    {
        ArgumentNullException.ThrowIfNull(mix);
        Require.Positive(wetDensityKgM3);
        var factor = mix.Strength.WetFactor;
        return this with
        {
            DensityKgM3 = wetDensityKgM3,
            ModulusPa = factor * ModulusPa,
            ModulusLowPa = factor * ModulusLowPa,
            ModulusHighPa = factor * ModulusHighPa,
            CompressivePa = factor * CompressivePa,
        };
    }

    /// <summary>The core with what was measured in place of what was assumed.</summary>
    /// <param name="measured">What was measured; absent, or absent figures, leave the assumption.</param>
    /// <returns>The core.</returns>
    public CoreMaterial With(Measured? measured) =>
        this with
        {
            DensityKgM3 = measured?.CoreDensityKgM3 ?? DensityKgM3,
            ModulusPa = measured?.CoreModulusPa ?? ModulusPa,
            ModulusLowPa = measured?.CoreModulusPa ?? ModulusLowPa,
            ModulusHighPa = measured?.CoreModulusPa ?? ModulusHighPa,
            LossFactor = measured?.CoreLossFactor ?? LossFactor,
        };
}
