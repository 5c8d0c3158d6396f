using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Pours;
using Stillwall.Shapes;

namespace Stillwall.Appraisals;

/// <summary>One kind of cast in this cabinet.</summary>
/// <param name="Name">Kind of mix, at its usual ratio of powder to water.</param>
/// <param name="PowderKg">Powder to mix, reserve counted, kg.</param>
/// <param name="WaterKg">Water to mix, kg.</param>
/// <param name="DryInCabinetKg">Dry cast in the cabinet, kg.</param>
/// <param name="ModulusPa">Young's modulus when dry, Pa.</param>
/// <param name="ModulusLowPa">Least believable modulus, Pa.</param>
/// <param name="ModulusHighPa">Greatest believable modulus, Pa.</param>
/// <param name="CompressivePa">Compressive strength when dry, Pa; null where it is not known.</param>
/// <param name="WetFactor">Share of modulus and strength while it is wet.</param>
/// <param name="LossFactor">Loss factor.</param>
/// <param name="PotLifeS">Pot life, s.</param>
/// <param name="ExpectedPeakC">How warm the wall gets, °C; null where the heat of setting is not known.</param>
/// <param name="Basis">Where the figures come from.</param>
public sealed record CastKind(
    string Name,
    [property: ComputedBy("slurry", "pour.cavity_volume_m3")] double PowderKg,
    [property: ComputedBy("slurry", "pour.cavity_volume_m3")] double WaterKg,
    [property: ComputedBy("stoichiometry", "pour.cavity_volume_m3")] double DryInCabinetKg,
    [property: ComputedBy("cast-modulus", "cast.kinds[].dry_in_cabinet_kg", "pour.cavity_volume_m3")] double ModulusPa,
    [property: ComputedBy("cast-modulus", "cast.kinds[].dry_in_cabinet_kg", "pour.cavity_volume_m3")] double ModulusLowPa,
    [property: ComputedBy("cast-modulus", "cast.kinds[].dry_in_cabinet_kg", "pour.cavity_volume_m3")] double ModulusHighPa,
    [property: ComputedBy("cast-strength", "cast.kinds[].dry_in_cabinet_kg", "pour.cavity_volume_m3")] double? CompressivePa,
    double WetFactor,
    double LossFactor,
    double PotLifeS,
    [property: ComputedBy("setting-heat")] double? ExpectedPeakC,
    string Basis
);

/// <summary>The drying holes in the inner skin.</summary>
/// <param name="Count">Number of holes.</param>
/// <param name="OpenAreaM2">Area of all of them, m².</param>
/// <param name="TapeM">Tape that closes them while the cast is poured, m.</param>
/// <param name="SealantM3">Sealant that closes them for good, m³.</param>
public sealed record HoleFigures(
    [property: ComputedBy("drying-holes")] int Count,
    [property: ComputedBy("drying-holes", "cast.holes.count")] double OpenAreaM2,
    [property: ComputedBy("hole-tape", "cast.holes.count")] double TapeM,
    [property: ComputedBy("hole-sealant", "cast.holes.count")] double SealantM3
)
{
    /// <summary>Takes them from the drawing.</summary>
    internal static HoleFigures? Of(DryingHoles holes) =>
        holes.Count == 0
            ? null
            : new HoleFigures(
                holes.Count,
                holes.OpenM2,
                HoleClosing.TapeM(holes.Count, holes.DiameterMm.InMetres()),
                HoleClosing.SealantM3(holes.Count, holes.DiameterMm.InMetres())
            );
}

/// <summary>What stands beside the pour plan: the kinds of cast, the water before, the scales, the drying after.</summary>
/// <param name="RehearsalWaterKg">Water that the cavity takes at the rehearsal, kg; null where there is no cavity.</param>
/// <param name="LiftTopsM">Height of the cast after each lift, from the bottom of the form, m; empty where the pour cannot be planned.</param>
/// <param name="Scales">What the scales must be able to weigh.</param>
/// <param name="Kinds">Kinds of cast for the same cavity.</param>
/// <param name="Drying">What the weigh-ins of the logbook say; null without one.</param>
public sealed record CastFigures(
    [property: ComputedBy("rehearsal-water", "pour.cavity_volume_m3")] double? RehearsalWaterKg,
    [property: ComputedBy("lift-top", "pour.lift_height_m")] IReadOnlyList<double> LiftTopsM,
    IReadOnlyList<ScaleNeed> Scales,
    IReadOnlyList<CastKind> Kinds,
    DryOutReport? Drying
)
{
    /// <summary>The drying holes; null without any.</summary>
    public HoleFigures? Holes { get; private init; }

    /// <summary>Takes them from the facts.</summary>
    /// <param name="facts">The facts.</param>
    /// <returns>The figures; no kinds where there is no cavity.</returns>
    /// <remarks>Source: <see cref="Mix"/>, <see cref="CoreMaterial"/>, <see cref="SettingHeat"/>, <see cref="DryOut"/>.</remarks>
    public static CastFigures Of(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var weighIns = facts.CabinetWeighIns.Select(e => (e.Date, e.MassKg!.Value)).ToList();
        return new CastFigures(
            facts.RehearsalWaterKg,
            facts.Bench?.LiftTopsM ?? [],
            facts.ScaleNeeds,
            facts.RehearsalWaterKg is null ? [] : [.. CastMixes.All.Select(m => Kind(facts, m))],
            weighIns.Count == 0 ? null : DryOutReport.Of(weighIns, facts.Limits.Dryness, facts.Mass.DryShellsAndCastKg)
        )
        {
            Holes = facts.Geometry is { } drawn ? HoleFigures.Of(drawn.DryingHoles) : null,
        };
    }

    // Each at its usual ratio; the skins of the plan, or PETG where none are stated.
    private static CastKind Kind(Facts facts, CastMix mix)
    {
        var (g, air) = (facts.Geometry!, facts.Air.TemperatureC);
        var cavity = facts.Pour.CavityVolumeM3!.Value;
        var mixed = Mix.FromVolume(mix, cavity * (1 + facts.Limits.CastReserve), mix.PowderPerWaterRatio, air);
        var core = CoreMaterial.Dry(mix, mixed.DryDensityKgM3);
        return new CastKind(
            Name: mix.Name,
            PowderKg: mixed.PowderKg,
            WaterKg: mixed.WaterKg,
            DryInCabinetKg: Mix.FromVolume(mix, cavity, mix.PowderPerWaterRatio, air).DryMassKg,
            ModulusPa: core.ModulusPa,
            ModulusLowPa: core.ModulusLowPa,
            ModulusHighPa: core.ModulusHighPa,
            CompressivePa: core.CompressivePa,
            WetFactor: mix.Strength.WetFactor,
            LossFactor: core.LossFactor,
            PotLifeS: mix.Times.PotLifeS,
            ExpectedPeakC: SettingHeat
                .Expected(
                    mix: mix,
                    figures: mixed,
                    coreM: g.CoreM,
                    skin: facts.Skin ?? SkinMaterials.Petg,
                    outerM: g.Sizes.OuterSkin.InMetres(),
                    innerM: g.Sizes.InnerSkin.InMetres(),
                    airC: air
                )
                ?.ExpectedPeakC,
            Basis: mix.Basis
        );
    }
}
