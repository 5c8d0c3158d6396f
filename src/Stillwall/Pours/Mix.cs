using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>One mix of powder and water: what goes in, what comes out wet and dry, and how warm it gets.</summary>
/// <param name="PowderKg">Powder, kg.</param>
/// <param name="WaterKg">Water, kg.</param>
/// <param name="SlurryVolumeM3">Volume of the slurry, m³.</param>
/// <param name="SlurryDensityKgM3">Density of the slurry, kg/m³.</param>
/// <param name="WetMassKg">Mass on the day it is poured, kg.</param>
/// <param name="DryMassKg">Mass when all free water is gone, kg.</param>
/// <param name="FreeWaterKg">Water that is not bound and has to leave, kg.</param>
/// <param name="DryDensityKgM3">Density when dry, the volume being fixed at mixing, kg/m³.</param>
/// <param name="Porosity">Share of the dry volume that is pores.</param>
/// <param name="AdiabaticPeakC">Temperature when no heat is lost, °C; null where the heat of setting is not known.</param>
/// <param name="AdiabaticPeakRangeC">That temperature with the least and the greatest heat that sources give, °C; null likewise.</param>
/// <param name="PowderRich">Whether there is less water than the powder could bind: some of it stays powder, and no free water is left.</param>
public sealed record MixFigures(
    [property: ComputedBy("slurry", "pour.cavity_volume_m3")] double PowderKg,
    [property: ComputedBy("slurry", "pour.cavity_volume_m3")] double WaterKg,
    [property: ComputedBy("slurry", "pour.cavity_volume_m3")] double SlurryVolumeM3,
    [property: ComputedBy("slurry")] double SlurryDensityKgM3,
    [property: ComputedBy("slurry", "pour.powder_kg", "pour.water_kg")] double WetMassKg,
    [property: ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg")] double DryMassKg,
    [property: ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg")] double FreeWaterKg,
    [property: ComputedBy("dry-density")] double DryDensityKgM3,
    [property: ComputedBy("porosity")] double Porosity,
    [property: ComputedBy("adiabatic-peak")] double? AdiabaticPeakC,
    [property: ComputedBy("adiabatic-peak")] IReadOnlyList<double>? AdiabaticPeakRangeC,
    bool PowderRich
);

/// <summary>Mixing: powder and water in, slurry and cast out.</summary>
public static class Mix
{
    /// <summary>The mix that a mass of powder makes.</summary>
    /// <param name="mix">Kind of mix.</param>
    /// <param name="powderKg">Powder, kg, above 0.</param>
    /// <param name="powderPerWaterRatio">Mass of powder for one of water, 0.1 to 50.</param>
    /// <param name="airC">Temperature that the slurry starts from, −40 to 60 °C: the room's, or <see cref="SlurryC"/> with water of another.</param>
    /// <returns>The mix.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: slurry = powder/ρp + water/998; dry = powder + bound water; free = water − bound, never negative; dry density = dry/slurry volume; ΔT =
    /// heat/(dry·c + free·4180).
    /// Validity: no air stirred in, all powder sets; where water is short only the share that it reaches sets. Source: stoichiometry of hemihydrate
    /// (145.149 and 172.171 g/mol); heats and densities stand with the mixes.
    /// Accuracy: dry density within 2 % of Glass Tips 2009 for water ratios of 0.38 to 0.74; purity of the powder ± 3 %.
    /// </remarks>
    public static MixFigures FromPowder(CastMix mix, double powderKg, double powderPerWaterRatio, double airC = 20)
    {
        ArgumentNullException.ThrowIfNull(mix);
        Require.Positive(powderKg);
        Require.Within(powderPerWaterRatio, 0.1, 50, nameof(powderPerWaterRatio));
        Require.Within(airC, -40, 60, nameof(airC), "°C");
        var water = powderKg / powderPerWaterRatio;
        var volume = powderKg / mix.PowderDensityKgM3 + water / CastMixes.WaterDensityKgM3;
        var wanted = mix.BoundWaterRatio * powderKg;
        var bound = Math.Min(water, wanted);
        var (dry, free) = (powderKg + bound, water - bound);
        var set = wanted > 0 ? bound / wanted : 1;
        double Peak(double heatJKg) => airC + set * powderKg * heatJKg / (dry * mix.Thermal.SpecificHeatJKgK + free * CastMixes.WaterSpecificHeatJKgK);
        return new MixFigures(
            PowderKg: powderKg,
            WaterKg: water,
            SlurryVolumeM3: volume,
            SlurryDensityKgM3: (powderKg + water) / volume,
            WetMassKg: powderKg + water,
            DryMassKg: dry,
            FreeWaterKg: free,
            DryDensityKgM3: dry / volume,
            Porosity: Porosity(mix, dry, volume, set),
            AdiabaticPeakC: mix.Heat is { } heat ? Peak(heat.HeatJKg) : null,
            AdiabaticPeakRangeC: mix.Heat is { } range ? [Peak(range.LowJKg), Peak(range.HighJKg)] : null,
            PowderRich: water < wanted
        );
    }

    /// <summary>Temperature of the slurry when powder and water have met.</summary>
    /// <param name="mix">Kind of mix.</param>
    /// <param name="powderPerWaterRatio">Mass of powder for one of water, 0.1 to 50.</param>
    /// <param name="powderC">Temperature of the powder, −40 to 60 °C.</param>
    /// <param name="waterC">Temperature of the water, 0 to 60 °C.</param>
    /// <returns>Temperature, °C, between the two.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: balance of heat, powder with the specific heat of the set solid (our choice). Validity: before it sets. Source: elementary; water 4180
    /// J/(kg·K). Accuracy: 1 K; heat of wetting and the bucket are left out.
    /// </remarks>
    public static double SlurryC(CastMix mix, double powderPerWaterRatio, double powderC, double waterC)
    {
        ArgumentNullException.ThrowIfNull(mix);
        Require.Within(powderPerWaterRatio, 0.1, 50, nameof(powderPerWaterRatio));
        Require.Within(powderC, -40, 60, nameof(powderC), "°C");
        Require.Within(waterC, 0, 60, nameof(waterC), "°C");
        var powder = powderPerWaterRatio * mix.Thermal.SpecificHeatJKgK;
        var met = (powder * powderC + CastMixes.WaterSpecificHeatJKgK * waterC) / (powder + CastMixes.WaterSpecificHeatJKgK);
        return Math.Clamp(met, Math.Min(powderC, waterC), Math.Max(powderC, waterC));
    }

    /// <summary>The mix that fills a volume.</summary>
    /// <param name="mix">Kind of mix.</param>
    /// <param name="slurryVolumeM3">Volume of slurry, m³, above 0.</param>
    /// <param name="powderPerWaterRatio">Mass of powder for one of water, 0.1 to 50.</param>
    /// <param name="airC">Temperature that the slurry starts from, −40 to 60 °C: the room's, or <see cref="SlurryC"/> with water of another.</param>
    /// <returns>The mix.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: <see cref="FromPowder"/> turned round, powder = volume/(1/ρp + 1/(998·ratio)). Validity: as that. Source: as that. Accuracy: as that.
    /// </remarks>
    public static MixFigures FromVolume(CastMix mix, double slurryVolumeM3, double powderPerWaterRatio, double airC = 20)
    {
        ArgumentNullException.ThrowIfNull(mix);
        Require.Positive(slurryVolumeM3);
        Require.Within(powderPerWaterRatio, 0.1, 50, nameof(powderPerWaterRatio));
        var powder = slurryVolumeM3 / (1 / mix.PowderDensityKgM3 + 1 / (CastMixes.WaterDensityKgM3 * powderPerWaterRatio));
        return FromPowder(mix, powder, powderPerWaterRatio, airC);
    }

    /// <summary>The mix that fills a cavity and leaves a reserve.</summary>
    /// <param name="mix">Kind of mix.</param>
    /// <param name="cavityM3">Volume of the cavity, m³, above 0.</param>
    /// <param name="reserveRatio">What is mixed over it, as a ratio, 0 or more.</param>
    /// <param name="powderPerWaterRatio">Mass of powder for one of water, 0.1 to 50.</param>
    /// <param name="airC">Temperature that the slurry starts from, −40 to 60 °C.</param>
    /// <returns>The mix.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: <see cref="FromVolume"/> of the cavity and its reserve. Validity: as that. Source: as that. Accuracy: as that.</remarks>
    public static MixFigures WithReserve(CastMix mix, double cavityM3, double reserveRatio, double powderPerWaterRatio, double airC = 20)
    {
        Require.NotNegative(reserveRatio);
        return FromVolume(mix, cavityM3 * (1 + reserveRatio), powderPerWaterRatio, airC);
    }

    // What did not set is still powder, at the powder's density.
    private static double Porosity(CastMix mix, double dryKg, double volumeM3, double set)
    {
        var solid = set >= 1 ? dryKg / mix.SolidDensityKgM3 : set * dryKg / mix.SolidDensityKgM3 + (1 - set) * dryKg / mix.PowderDensityKgM3;
        return Math.Max(0, 1 - solid / volumeM3);
    }
}
