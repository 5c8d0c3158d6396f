using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>One mix of powder and water: what it fills, weighs, binds, and how warm it would get.</summary>
/// <param name="PowderKg">Powder, kg.</param>
/// <param name="WaterKg">Water, kg.</param>
/// <param name="SlurryVolumeM3">Volume of the slurry, m³.</param>
/// <param name="SlurryDensityKgM3">Density of the slurry, kg/m³.</param>
/// <param name="WetMassKg">Mass of the slurry, kg.</param>
/// <param name="DryMassKg">Mass when set and dry, kg.</param>
/// <param name="FreeWaterKg">Water that is not bound and has to dry out, kg.</param>
/// <param name="DryDensityKgM3">Density when set and dry, the volume as mixed, kg/m³.</param>
/// <param name="Porosity">Share of pores when dry.</param>
/// <param name="AdiabaticPeakC">Peak temperature if no heat left, °C; null where the heat of setting is not known.</param>
/// <param name="AdiabaticPeakRangeC">The same for the least and greatest published heat, °C.</param>
public sealed record Mix(
    [property: ComputedBy("mix-powder", "materials.cast.powder_per_water")] double PowderKg,
    [property: ComputedBy("mix-water", "materials.cast.powder_per_water")] double WaterKg,
    [property: ComputedBy("slurry-volume", "materials.cast.powder_per_water")] double SlurryVolumeM3,
    [property: ComputedBy("slurry-density", "materials.cast.powder_per_water")] double SlurryDensityKgM3,
    [property: ComputedBy("wet-mass", "materials.cast.powder_per_water")] double WetMassKg,
    [property: ComputedBy("dry-mass", "materials.cast.powder_per_water")] double DryMassKg,
    [property: ComputedBy("free-water", "materials.cast.powder_per_water")] double FreeWaterKg,
    [property: ComputedBy("dry-density", "materials.cast.powder_per_water")] double DryDensityKgM3,
    [property: ComputedBy("porosity", "materials.cast.powder_per_water")] double Porosity,
    [property: ComputedBy("adiabatic-peak", "materials.cast.powder_per_water", "brief.air.temperature")] double? AdiabaticPeakC,
    [property: ComputedBy("adiabatic-peak", "materials.cast.powder_per_water", "brief.air.temperature")] IReadOnlyList<double>? AdiabaticPeakRangeC)
{
    /// <summary>Specific heat of what has set, J/(kg·K): gypsum (Thermoddem).</summary>
    public const double SolidHeatCapacityJKgK = 1080;

    /// <summary>Heat capacity of what is mixed, J/K.</summary>
    public double HeatCapacityJK => DryMassKg * SolidHeatCapacityJKgK + FreeWaterKg * CastMixes.WaterSpecificHeatJKgK;

    /// <summary>Mixes a mass of powder.</summary>
    /// <param name="mix">Kind of mix.</param>
    /// <param name="powderKg">Powder, kg, above 0.</param>
    /// <param name="powderPerWater">Mass of powder for one of water, 0.3 to 20.</param>
    /// <param name="airC">Temperature of powder, water and air, °C.</param>
    /// <returns>The mix; where there is less water than the powder binds, some powder stays unset and no water is free.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: volumes of grains and water add up, no air is stirred in; the powder binds its share of water; all heat stays in. Validity: full setting.
    /// Source: stoichiometry of hemihydrate and gypsum (145.149 and 172.171 g/mol); heat capacities 1080 and 4180 J/(kg·K) (Thermoddem; water from memory).
    /// Accuracy: dry density within 2 % of a published table for 0.45 to 0.74 water to powder; purity of the powder adds ±3 %.
    /// </remarks>
    public static Mix FromPowder(CastMix mix, double powderKg, double powderPerWater, double airC = 20)
    {
        ArgumentNullException.ThrowIfNull(mix);
        Require.Positive(powderKg);
        Require.Within(powderPerWater, 0.3, 20, nameof(powderPerWater));
        var water = powderKg / powderPerWater;
        var volume = powderKg / mix.PowderDensityKgM3 + water / CastMixes.WaterDensityKgM3;
        var bound = Math.Min(mix.BoundWaterRatio * powderKg, water);
        var (dry, free) = (powderKg + bound, water - bound);
        var set = mix.BoundWaterRatio > 0 ? bound / (mix.BoundWaterRatio * powderKg) : 1;
        var capacity = dry * SolidHeatCapacityJKgK + free * CastMixes.WaterSpecificHeatJKgK;
        double? Peak(double? heat) => airC + heat * set * powderKg / capacity;
        return new Mix(
            powderKg, water, volume, (powderKg + water) / volume, powderKg + water, dry, free, dry / volume, Math.Max(0, 1 - dry / volume / mix.SolidDensityKgM3),
            Peak(mix.Heat?.HeatJKg), Peak(mix.Heat?.LowJKg) is { } least && Peak(mix.Heat?.HighJKg) is { } greatest ? [least, greatest] : null);
    }

    /// <summary>Mixes a volume of slurry.</summary>
    /// <param name="mix">Kind of mix.</param>
    /// <param name="volumeM3">Volume of slurry, m³, above 0.</param>
    /// <param name="powderPerWater">Mass of powder for one of water, 0.3 to 20.</param>
    /// <param name="airC">Temperature of powder, water and air, °C.</param>
    /// <returns>The mix.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Source: as <see cref="FromPowder"/>, which it inverts. Accuracy: exact inverse.</remarks>
    public static Mix FromVolume(CastMix mix, double volumeM3, double powderPerWater, double airC = 20)
    {
        ArgumentNullException.ThrowIfNull(mix);
        Require.Positive(volumeM3);
        Require.Within(powderPerWater, 0.3, 20, nameof(powderPerWater));
        return FromPowder(mix, volumeM3 / (1 / mix.PowderDensityKgM3 + 1 / (powderPerWater * CastMixes.WaterDensityKgM3)), powderPerWater, airC);
    }
}
