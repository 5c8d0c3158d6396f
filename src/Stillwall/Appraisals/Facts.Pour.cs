using Stillwall.Pours;

namespace Stillwall.Appraisals;

/// <summary>The pour.</summary>
public sealed partial class Facts
{
    /// <summary>How deep the first lift buries the inner sleeve, m (our choice).</summary>
    public const double BuriedByFirstLiftM = 0.030;

    private readonly Lazy<PourPlan> pour;

    /// <summary>The pour plan.</summary>
    public PourPlan Pour => pour.Value;

    /// <summary>How the mix is handled; null where mix, pot life or bucket is not known.</summary>
    internal Handling? Handling => Project.Materials?.Cast is { BucketM3: { } bucket } cast && CastMix is { } mix
        ? new Handling(bucket, cast.PotLifeS ?? mix.Times.PotLifeS, cast.SoakS, cast.StirS, cast.PourRateM3S, cast.People, mix.Times.FinalSetS)
        : null;

    /// <summary>The pour as a clock; null where soaking and stirring leave no time, or something is not known.</summary>
    internal PourClock? Clock => Handling is { } handling && LiftsM3 is { } lifts ? PourClock.Of(lifts, handling) : null;

    /// <summary>Longest time from first water to last drop of one batch, s.</summary>
    internal double LongestBatchS => Clock?.LongestBatchS ?? 0;

    /// <summary>Bending stress of the worst skin at a strut, Pa; null where it is not known.</summary>
    internal double? SkinStressPa => Geometry is { Sizes.Core: > 0 } g && Pour.FormPressurePa is { } pressure
        ? FormPressure.StressPa(pressure, g.Sleeve.ClearBay(g.Sizes.OuterSkin) * 1e-3, Math.Min(g.Sizes.OuterSkin, g.Sizes.InnerSkin) * 1e-3)
        : null;

    /// <summary>Weight that keeps the inner sleeve down until the first lift has set, kg; null where it is not known.</summary>
    internal double? HoldDownNeededKg
    {
        get
        {
            if (Geometry is not { Sizes.Core: > 0 } g || Pour.SlurryDensityKgM3 is not { } density || Skin is null)
            {
                return null;
            }

            var outline = g.Sizes.Outline.Inset(g.Sizes.OuterSkin + g.Sizes.Core).ToRegion().AreaM2 - g.Front.OpeningM2;
            var sleeve = Parts.Where(p => p.Name.StartsWith("inner sleeve", StringComparison.Ordinal) || p.Name == "front inner plate").Sum(p => p.MassKg ?? 0);
            return FormPressure.HoldDownKg(density, outline * BuriedByFirstLiftM, sleeve);
        }
    }

    /// <summary>Mass of the last weigh-in of the cabinet in the logbook, kg; null without one.</summary>
    internal double? LastWeighInKg => Project.Logbook
        .Where(e => e.Kind == "weigh-in" && (e.Part is null or "cabinet") && e.MassKg is not null).OrderBy(e => e.Date).LastOrDefault()?.MassKg;

    /// <summary>What stands between the project and its pour plan.</summary>
    internal string MissingForPour => Geometry is null ? "cabinet.outside"
        : Geometry.Sizes.Core <= 0 ? "a single printed wall has nothing to pour"
        : CastMix is null ? "materials.cast.mix"
        : Skin is null ? "materials.skin" : "materials.cast.bucket";

    /// <summary>What stands between the project and the heat of setting.</summary>
    internal string MissingForHeat => CastMix is { Heat: null } ? "the heat of setting of this mix is not known" : MissingForPour;

    // Slurry to mix for each lift, reserve counted. The first lift fills the front core and buries the inner sleeve; it must set before the rest presses on it.
    private IReadOnlyList<double>? LiftsM3
    {
        get
        {
            if (Geometry is not { Sizes.Core: > 0 } g || CastMix is null)
            {
                return null;
            }

            var all = g.CavityM3 * (1 + Limits.CastReserve);
            var heights = LiftHeightsM(g);
            if (heights.Count == 1)
            {
                return [all];
            }

            var ring = g.Sleeve.CoreRingM2 * BuriedByFirstLiftM;
            var first = Math.Min(0.8, (g.Front.CoreM2 * g.CoreM + ring) / g.CavityM3) * all;
            return [first, all - first];
        }
    }

    private static IReadOnlyList<double> LiftHeightsM(Cabinets.CabinetGeometry g)
    {
        var whole = g.OuterSleeveLengthM;
        var first = g.CoreM + BuriedByFirstLiftM;
        return whole <= 2 * first ? [whole] : [first, whole - first];
    }

    private PourPlan ComputePour()
    {
        if (Geometry is not { Sizes.Core: > 0 } g)
        {
            return new PourPlan(Geometry is null ? null : 0, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, []);
        }

        if (CastMix is not { } mix || PowderPerWater is not { } ratio)
        {
            return new PourPlan(g.CavityM3, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, []);
        }

        var air = Air.TemperatureC;
        var mixed = Mix.FromVolume(mix, g.CavityM3 * (1 + Limits.CastReserve), ratio, air);
        var inside = Mix.FromVolume(mix, g.CavityM3, ratio, air);
        var lift = LiftHeightsM(g).Max();
        var pressure = FormPressure.HeadPa(mixed.SlurryDensityKgM3, lift);
        var perVolume = mixed.PowderKg / mixed.SlurryVolumeM3;
        return new PourPlan(
            g.CavityM3, mixed.PowderKg, mixed.WaterKg, mixed.SlurryDensityKgM3, mixed.WetMassKg, mixed.DryMassKg, mixed.FreeWaterKg, inside.WetMassKg, inside.DryMassKg,
            pressure, SkinBulgeM(g, pressure), lift, mixed.AdiabaticPeakC, mixed.AdiabaticPeakRangeC,
            Skin is { } skin ? SettingHeat.Of(mix, mixed, g.CoreM, (g.Sizes.OuterSkin + g.Sizes.InnerSkin) * 1e-3, skin, air)?.ExpectedPeakC : null,
            DryOut.LeastTimeS(inside.FreeWaterKg, g.Rear.CoreM2) / 86400, Clock?.Seconds,
            Clock is { } clock
                ? [.. clock.Batches.Select(b => new PourBatch(b.VolumeM3 * perVolume, b.VolumeM3 * perVolume / ratio, b.StartS, b.PourByS, b.Lift))]
                : []);
    }

    // The worst of both skins; an untied strut bends with its skin, its ends taken as supported, the softer bound.
    private double? SkinBulgeM(Cabinets.CabinetGeometry g, double pressurePa)
    {
        if (Skin is not { } skin)
        {
            return null;
        }

        var span = g.Sleeve.ClearBay(g.Sizes.OuterSkin) * 1e-3;
        var strip = FormPressure.BulgeM(pressurePa, span, Math.Min(g.Sizes.OuterSkin, g.Sizes.InnerSkin) * 1e-3, skin.HotModulusPa, skin.Poisson);
        if (g.Sizes.Tied)
        {
            return strip;
        }

        var (_, supported) = FormPressure.UntiedStrutM(pressurePa, g.Sleeve.StrutPitch * 1e-3, g.ClearDepthM, Math.Max(1.2, g.Sizes.OuterSkin) * 1e-3, g.CoreM, skin.HotModulusPa);
        return strip + supported;
    }
}
