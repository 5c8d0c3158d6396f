using Stillwall.Parts.Kinds;
using Stillwall.Pours;

namespace Stillwall.Appraisals;

/// <summary>The pour.</summary>
public sealed partial class Facts
{
    private readonly Fact<PourFigures> pour;
    private readonly Fact<PourPlan?> clock;
    private readonly Fact<PourBench?> bench;
    private readonly Fact<IReadOnlyList<(double TimeS, double WarmestC, double OuterFaceC)>> warmth;
    private readonly Fact<CastFigures> cast;

    /// <summary>The pour plan.</summary>
    public PourFigures Pour => pour.Value;

    /// <summary>The pour moment by moment; null where something it needs is not known.</summary>
    public PourBench? Bench => bench.Value;

    /// <summary>
    /// How warm the wall gets over time from the first water of its bucket, s and °C: the warmest place, the outer face; empty where it is not known.
    /// </summary>
    public IReadOnlyList<(double TimeS, double WarmestC, double OuterFaceC)> Warmth => warmth.Value;

    private IReadOnlyList<(double TimeS, double WarmestC, double OuterFaceC)> ComputeWarmth()
    {
        if (Geometry is not { Sizes.Core: > 0, CavityM3: > 0 } g || CastMix is not { } mix || PowderPerWater is not { } ratio || Skin is not { } skin)
        {
            return [];
        }

        var slurry = SlurryC(mix, ratio);
        var mixed = Mix.FromVolume(mix, g.CavityM3, ratio, slurry);
        return SettingHeat.Course(
            mix: mix,
            figures: mixed,
            coreM: g.CoreM,
            skin: skin,
            outerM: g.OuterSkinM,
            innerM: g.InnerSkinM,
            airC: Air.TemperatureC,
            slurryC: slurry
        );
    }

    private double SlurryC(Materials.CastMix mix, double ratio) =>
        Project.Materials?.Cast?.WaterTemperatureC is { } water ? Mix.SlurryC(mix, ratio, Air.TemperatureC, water) : Air.TemperatureC;

    /// <summary>What stands beside the pour plan.</summary>
    public CastFigures Cast => cast.Value;

    /// <summary>The pour as a clock; null where something it needs is not known.</summary>
    internal PourPlan? Clock => clock.Value;

    private PourJob? Job =>
        Form is { Geometry: var g } form && CastMix is { } mix && Project.Materials?.Cast is { BucketM3: { } bucket } cast
            ? new PourJob
            {
                Mix = mix,
                CavityVolumeM3 = g.CavityM3,
                ReserveRatio = Limits.CastReserve,
                LiftShares = form.LiftShares(form.LiftHeightsM(Limits.BulgeM)),
                BucketM3 = bucket,
                SoakS = cast.SoakS,
                StirS = cast.StirS,
                PourRateM3S = cast.PourRateM3S,
                People = cast.People,
            }
            : null;

    /// <summary>Pot life, as stated or as usual for the mix, s.</summary>
    internal double PotLifeS => CastMix?.Times.PotLifeS ?? 0;

    /// <summary>Bending stress of the worst skin at a strut, Pa; null where it is not known.</summary>
    internal double? SkinStressPa => Pour.FormPressurePa is { } pressure ? Form?.StressPa(pressure) : null;

    /// <summary>Stress with which the setting cast stretches the outer skin, Pa; null where it is not known.</summary>
    internal double? ExpansionStressPa => CastMix is { } mix && Skin is { } skin ? SkinBulge.StretchPa(mix.SettingStrainRatio, skin.HotModulusPa) : null;

    /// <summary>Weight that keeps the inner sleeve down until the first lift has set, kg; null where it is not known.</summary>
    internal double? HoldDownNeededKg =>
        Pour.SlurryDensityKgM3 is { } density && Form is { } form
            ? (form with { SlurryDensityKgM3 = density }).HoldDownKg(Parts.Where(p => p.Kind is InnerSleeve or FrontInnerPlate).Sum(p => p.MassKg ?? 0))
            : null;

    /// <summary>Water that the cavity takes at the rehearsal, kg; null where there is no cavity.</summary>
    public double? RehearsalWaterKg => Pour.CavityVolumeM3 is > 0 and { } cavity ? WaterRehearsal.WaterKg(cavity) : null;

    /// <summary>What the scales must be able to weigh; empty where the pour cannot be planned.</summary>
    public IReadOnlyList<ScaleNeed> ScaleNeeds =>
        Clock is { } plan && Mass.WetKg is > 0 and { } wet && Pour.DryInCabinetKg is > 0 and { } dry && Core is { } core
            ? Scales.Of(plan, wet, dry, Limits.Dryness, core.DensityKgM3 * TestBarMould.BarM3)
            : [];

    /// <summary>Mass of the last weigh-in of the cabinet in the logbook, kg; null without one.</summary>
    internal double? LastWeighInKg => CabinetWeighIns.OrderBy(e => e.Date).LastOrDefault()?.MassKg;

    internal IEnumerable<Projects.LogEntry> CabinetWeighIns =>
        Project.Logbook.Where(e => e.Kind == "weigh-in" && (e.Part is null or "cabinet") && e.MassKg > 0);

    /// <summary>What stands between the project and its pour plan.</summary>
    internal string MissingForPour =>
        Geometry is null ? "cabinet.outside"
        : Geometry.Sizes.Core <= 0 ? "a single printed wall has nothing to pour"
        : Geometry.CavityM3 <= 0 ? "struts and keys fill the core"
        : CastMix is null ? "materials.cast.mix"
        : Skin is null ? "materials.skin"
        : Project.Materials?.Cast?.BucketM3 is null ? "materials.cast.bucket"
        : "the bucket would have to be filled more than a thousand times";

    /// <summary>What stands between the project and the heat of setting.</summary>
    internal string MissingForHeat => CastMix is { Heat: null } ? "the heat of setting of this mix is not known" : MissingForPour;

    // The skins as a form for the mix at the usual temperature; null where the wall or its mix is not known.
    private Formwork? Form =>
        Geometry is { Sizes.Core: > 0, CavityM3: > 0 } g && Skin is { } skin && CastMix is { } mix && PowderPerWater is { } ratio
            ? new Formwork(g, skin, Mix.FromPowder(mix, 1, ratio).SlurryDensityKgM3)
            : null;

    private IReadOnlyList<double>? LiftHeightsM => Form?.LiftHeightsM(Limits.BulgeM);

    private PourFigures ComputePour()
    {
        if (Geometry is not { Sizes.Core: > 0, CavityM3: > 0 } g || CastMix is not { } mix || PowderPerWater is not { } ratio)
        {
            return new PourFigures { CavityVolumeM3 = Geometry is { } drawing ? Math.Max(0, drawing.CavityM3) : null };
        }

        var slurry = SlurryC(mix, ratio);
        var mixed = Mix.WithReserve(mix, g.CavityM3, Limits.CastReserve, ratio, slurry);
        var inside = Mix.FromVolume(mix, g.CavityM3, ratio, slurry);
        var heat = Skin is { } skin
            ? SettingHeat.Expected(
                mix: mix,
                figures: mixed,
                coreM: g.CoreM,
                skin: skin,
                outerM: g.OuterSkinM,
                innerM: g.InnerSkinM,
                airC: Air.TemperatureC,
                slurryC: slurry
            )
            : null;
        var lift = LiftHeightsM?.Max();
        double? pressure = lift is { } head ? FormPressure.AtDepthPa(mixed.SlurryDensityKgM3, head) : null;
        return new PourFigures
        {
            CavityVolumeM3 = g.CavityM3,
            PowderKg = mixed.PowderKg,
            WaterKg = mixed.WaterKg,
            SlurryDensityKgM3 = mixed.SlurryDensityKgM3,
            WetMassKg = mixed.WetMassKg,
            DryMassKg = mixed.DryMassKg,
            FreeWaterKg = mixed.FreeWaterKg,
            WetInCabinetKg = inside.WetMassKg,
            DryInCabinetKg = inside.DryMassKg,
            FormPressurePa = pressure,
            SkinBulgeM = pressure is { } p ? Form?.BulgeM(p) : null,
            LiftHeightM = lift,
            AdiabaticPeakC = mixed.AdiabaticPeakC,
            AdiabaticPeakRangeC = mixed.AdiabaticPeakRangeC,
            ExpectedPeakC = heat?.ExpectedPeakC,
            PeakTimeS = heat?.PeakTimeS,
            PeakOuterFaceC = heat?.OuterFaceC,
            ThickestPlaceM = g.ThickestPlaceM,
            DryOutLeastDays = DryOut.FirstStageDays(inside.FreeWaterKg, g.DryingAreaM2),
            DurationS = Clock?.DurationS,
            Batches = Clock?.Batches ?? [],
        };
    }
}
