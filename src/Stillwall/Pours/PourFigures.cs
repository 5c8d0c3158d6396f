using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Pours;

/// <summary>The pour as the appraisal shows it.</summary>
/// <param name="CavityVolumeM3">Space between the skins, m³.</param>
/// <param name="PowderKg">Powder to mix, reserve included, kg.</param>
/// <param name="WaterKg">Water to mix, reserve included, kg.</param>
/// <param name="SlurryDensityKgM3">Density of the slurry, kg/m³.</param>
/// <param name="WetMassKg">Mass of all that is mixed, wet, kg.</param>
/// <param name="DryMassKg">Mass of all that is mixed, dry, kg.</param>
/// <param name="FreeWaterKg">Free water in all that is mixed, kg.</param>
/// <param name="WetInCabinetKg">Wet mass of what fills the cavity, kg.</param>
/// <param name="DryInCabinetKg">Dry mass of what fills the cavity, kg.</param>
/// <param name="FormPressurePa">Pressure at the deepest point of a lift, Pa.</param>
/// <param name="SkinBulgeM">Bulge of the worst bay there, m.</param>
/// <param name="SkinStressPa">Bending stress of the skin there, Pa.</param>
/// <param name="TieLoadNPerM">Pull on a strut that ties the skins there, N per metre of its length.</param>
/// <param name="LiftHeightM">Height of a lift, m.</param>
/// <param name="AdiabaticPeakC">Temperature when no heat is lost, °C; null where the heat of setting is not known.</param>
/// <param name="AdiabaticPeakRangeC">That temperature with the least and the greatest heat, °C; null likewise.</param>
/// <param name="ExpectedPeakC">Temperature that the wall is expected to reach, °C; null likewise.</param>
/// <param name="LongestBatchS">Longest time from a bucket's first water until it is empty, s; null where no bucket is stated.</param>
/// <param name="LongestGapS">Longest pause between two buckets of one lift, s; null where no bucket is stated.</param>
/// <param name="DurationS">From the first water until the last bucket is empty, s; null where no bucket is stated.</param>
/// <param name="Batches">The buckets, in order; null where no bucket is stated.</param>
public sealed record PourFigures(
    [property: ComputedBy("cavity-between-skins", "cabinet.outside", "cabinet.core", "cabinet.outer_skin", "cabinet.inner_skin", "cabinet.strut_pitch")] double CavityVolumeM3,
    [property: ComputedBy("slurry", "pour.cavity_volume_m3", "limits.cast_reserve", "materials.cast.powder_per_water")] double PowderKg,
    [property: ComputedBy("slurry", "pour.cavity_volume_m3", "limits.cast_reserve", "materials.cast.powder_per_water")] double WaterKg,
    [property: ComputedBy("slurry", "materials.cast.mix", "materials.cast.powder_per_water")] double SlurryDensityKgM3,
    [property: ComputedBy("slurry", "pour.powder_kg", "pour.water_kg")] double WetMassKg,
    [property: ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg", "materials.cast.mix")] double DryMassKg,
    [property: ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg", "materials.cast.mix")] double FreeWaterKg,
    [property: ComputedBy("slurry", "pour.cavity_volume_m3", "materials.cast.powder_per_water")] double WetInCabinetKg,
    [property: ComputedBy("stoichiometry", "pour.cavity_volume_m3", "materials.cast.powder_per_water")] double DryInCabinetKg,
    [property: ComputedBy("form-pressure", "pour.slurry_density_kg_m3", "pour.lift_height_m")] double FormPressurePa,
    [property: ComputedBy("skin-bulge", "cabinet.strut_pitch", "cabinet.outer_skin", "cabinet.inner_skin", "materials.skin", "pour.form_pressure_pa")] double SkinBulgeM,
    [property: ComputedBy("skin-stress", "cabinet.strut_pitch", "cabinet.outer_skin", "cabinet.inner_skin", "pour.form_pressure_pa")] double SkinStressPa,
    [property: ComputedBy("tie-load", "cabinet.strut_pitch", "pour.form_pressure_pa")] double TieLoadNPerM,
    [property: ComputedBy("lift-height", "cabinet.strut_pitch", "cabinet.outer_skin", "cabinet.inner_skin", "materials.skin", "pour.slurry_density_kg_m3", "limits.bulge")] double LiftHeightM,
    [property: ComputedBy("adiabatic-peak", "materials.cast.mix", "materials.cast.powder_per_water", "brief.air.temperature")] double? AdiabaticPeakC,
    [property: ComputedBy("adiabatic-peak", "materials.cast.mix", "materials.cast.powder_per_water", "brief.air.temperature")] IReadOnlyList<double>? AdiabaticPeakRangeC,
    [property: ComputedBy("setting-heat", "materials.cast.mix", "materials.cast.powder_per_water", "cabinet.core", "cabinet.outer_skin", "cabinet.inner_skin", "brief.air.temperature")] double? ExpectedPeakC,
    [property: ComputedBy("pour-clock", "materials.cast.soak", "materials.cast.stir", "materials.cast.pour_rate", "materials.cast.bucket")] double? LongestBatchS,
    [property: ComputedBy("pour-clock", "materials.cast.soak", "materials.cast.stir", "materials.cast.pour_rate", "materials.cast.people")] double? LongestGapS,
    [property: ComputedBy("pour-clock", "materials.cast.soak", "materials.cast.stir", "materials.cast.pour_rate", "materials.cast.people")] double? DurationS,
    IReadOnlyList<PourBatch>? Batches);

/// <summary>What a pour is worked out from: the shells as they are, and what the project states.</summary>
public sealed record PourInput
{
    /// <summary>Kind of mix, with the ratio and times that hold.</summary>
    public required CastMix Mix { get; init; }

    /// <summary>How the mix is handled.</summary>
    public required Cast Handling { get; init; }

    /// <summary>Plastic of the skins.</summary>
    public required SkinMaterial Skin { get; init; }

    /// <summary>Space between the skins, m³.</summary>
    public required double CavityVolumeM3 { get; init; }

    /// <summary>Height of that space as it stands for the pour, m.</summary>
    public required double CavityHeightM { get; init; }

    /// <summary>Thickness of the outer skin, m.</summary>
    public required double OuterSkinM { get; init; }

    /// <summary>Thickness of the cast, m.</summary>
    public required double CoreM { get; init; }

    /// <summary>Thickness of the inner skin, m.</summary>
    public required double InnerSkinM { get; init; }

    /// <summary>Clear width between two struts where it is widest, m.</summary>
    public required double BayM { get; init; }

    /// <summary>Distance of struts, m.</summary>
    public required double PitchM { get; init; }

    /// <summary>Cast mixed beyond the cavity, as a ratio.</summary>
    public double ReserveRatio { get; init; } = 0.10;

    /// <summary>Greatest bulge of a skin, m; lifts are chosen so that it is kept.</summary>
    public double BulgeLimitM { get; init; } = 0.0003;

    /// <summary>Temperature of the room, °C.</summary>
    public double AirC { get; init; } = 20;
}

/// <summary>Works out a whole pour.</summary>
public static class Pouring
{
    /// <summary>Least height of a lift, m: what buries the foot of the inner sleeve (our choice).</summary>
    public const double LeastLiftM = 0.030;

    /// <summary>The pour of a cabinet.</summary>
    /// <param name="input">What it is worked out from.</param>
    /// <returns>The figures; what needs a bucket is null where none is stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: <see cref="Mix"/>, <see cref="FormPressure"/>, <see cref="SkinBulge"/>, <see cref="SettingHeat"/> and <see cref="PourClock"/>; equal lifts, as few as keep the thinner skin's bulge within its limit, none under 30 mm.
    /// Validity: as those; a cavity of the same section all the way up, so that equal lifts take equal shares. Source: as those; the lifts are our choice. Accuracy: as those.
    /// </remarks>
    public static PourFigures Of(PourInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var (mix, ratio, skin) = (input.Mix, input.Mix.PowderPerWaterRatio, input.Skin);
        var cabinet = Mix.FromVolume(mix, input.CavityVolumeM3, ratio, input.AirC);
        var all = Mix.FromVolume(mix, input.CavityVolumeM3 * (1 + input.ReserveRatio), ratio, input.AirC);
        var thin = Math.Min(input.OuterSkinM, input.InnerSkinM);
        var bears = SkinBulge.GreatestPressurePa(input.BayM, input.BulgeLimitM, thin, skin.HotModulusPa, skin.Poisson) / FormPressure.AtDepthPa(all.SlurryDensityKgM3, 1);
        var lifts = FormPressure.Lifts(input.CavityHeightM, Math.Max(LeastLiftM, bears));
        var height = input.CavityHeightM / lifts;
        var pressure = FormPressure.AtDepthPa(all.SlurryDensityKgM3, height);
        var bulge = SkinBulge.Skin(pressure, input.BayM, input.PitchM, thin, skin.HotModulusPa, skin.Poisson);
        var plan = Plan(input, lifts);
        return new PourFigures(
            input.CavityVolumeM3, all.PowderKg, all.WaterKg, all.SlurryDensityKgM3, all.WetMassKg, all.DryMassKg, all.FreeWaterKg, cabinet.WetMassKg, cabinet.DryMassKg,
            pressure, bulge.BulgeM, bulge.StressPa, bulge.TieLoadNPerM, height, all.AdiabaticPeakC, all.AdiabaticPeakRangeC,
            SettingHeat.Expected(mix, all, input.CoreM, skin, input.OuterSkinM, input.InnerSkinM, input.AirC)?.ExpectedPeakC,
            plan?.LongestBatchS, plan?.LongestGapS, plan?.DurationS, plan?.Batches);
    }

    /// <summary>The pour of a cabinet on a clock.</summary>
    /// <param name="input">What it is worked out from.</param>
    /// <param name="lifts">Number of equal lifts, 1 to 1000.</param>
    /// <returns>The plan, or null where no bucket is stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: <see cref="PourClock"/> with equal lifts. Validity: as that. Source: as that. Accuracy: as that.</remarks>
    public static PourPlan? Plan(PourInput input, int lifts)
    {
        ArgumentNullException.ThrowIfNull(input);
        Require.Within(lifts, 1, 1000, nameof(lifts));
        return input.Handling.BucketM3 is not { } bucket ? null : PourClock.Plan(new PourJob
        {
            Mix = input.Mix,
            CavityVolumeM3 = input.CavityVolumeM3,
            ReserveRatio = input.ReserveRatio,
            LiftShares = [.. Enumerable.Repeat(1.0 / lifts, lifts)],
            BucketM3 = bucket,
            SoakS = input.Handling.SoakS,
            StirS = input.Handling.StirS,
            PourRateM3S = input.Handling.PourRateM3S,
            People = input.Handling.People,
        });
    }
}
