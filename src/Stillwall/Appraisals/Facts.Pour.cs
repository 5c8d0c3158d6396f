using Stillwall.Cabinets;
using Stillwall.Pours;

namespace Stillwall.Appraisals;

/// <summary>The pour.</summary>
public sealed partial class Facts
{
    /// <summary>How deep the first lift buries the inner sleeve, m (our choice).</summary>
    public const double BuriedByFirstLiftM = 0.030;

    private const int MostLifts = 4;
    private const double SecondsPerDay = 86400;

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
            outerM: g.Sizes.OuterSkin * 1e-3,
            innerM: g.Sizes.InnerSkin * 1e-3,
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
        Geometry is { Sizes.Core: > 0, CavityM3: > 0 } g && CastMix is { } mix && Skin is not null && Project.Materials?.Cast is { BucketM3: { } bucket } cast
            ? new PourJob
            {
                Mix = mix,
                CavityVolumeM3 = g.CavityM3,
                ReserveRatio = Limits.CastReserve,
                LiftShares = LiftShares(g),
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
    internal double? SkinStressPa =>
        Geometry is { Sizes.Core: > 0 } g && Pour.FormPressurePa is { } pressure && Skin is not null ? Strip(g, pressure).StressPa : null;

    /// <summary>Stress with which the setting cast stretches the outer skin, Pa; null where it is not known.</summary>
    internal double? ExpansionStressPa => CastMix is { SettingStrainRatio: > 0 and var strain } && Skin is { } skin ? strain * skin.HotModulusPa : null;

    /// <summary>Weight that keeps the inner sleeve down until the first lift has set, kg; null where it is not known.</summary>
    internal double? HoldDownNeededKg
    {
        get
        {
            if (Geometry is not { Sizes.Core: > 0 } g || Pour.SlurryDensityKgM3 is not { } density || Skin is null)
            {
                return null;
            }

            var floor = g.Sizes.Outline.Inset(g.Sizes.OuterSkin + g.Sizes.Core).ToRegion().AreaM2 - g.Front.OpeningM2;
            var sleeve = Parts.Where(p => p.Name.StartsWith("inner sleeve", StringComparison.Ordinal) || p.Name == "front inner plate").Sum(p => p.MassKg ?? 0);
            return Math.Max(0, FormPressure.UpliftN(density, floor * BuriedByFirstLiftM, sleeve) / FormPressure.AtDepthPa(1, 1));
        }
    }

    /// <summary>Water that the cavity takes at the rehearsal, kg; null where there is no cavity.</summary>
    public double? RehearsalWaterKg => Pour.CavityVolumeM3 is > 0 and { } cavity ? WaterRehearsal.WaterKg(cavity) : null;

    /// <summary>What the scales must be able to weigh; empty where the pour cannot be planned.</summary>
    public IReadOnlyList<ScaleNeed> ScaleNeeds =>
        Clock is { } plan && Mass.WetKg is > 0 and { } wet && Pour.DryInCabinetKg is > 0 and { } dry && Core is { } core
            ? Scales.Of(plan, wet, dry, Limits.Dryness, core.DensityKgM3 * PourClock.TestBarVolumeM3)
            : [];

    /// <summary>Mass of the last weigh-in of the cabinet in the logbook, kg; null without one.</summary>
    internal double? LastWeighInKg => CabinetWeighIns.OrderBy(e => e.Date).LastOrDefault()?.MassKg;

    /// <summary>Weigh-ins of the cabinet in the logbook.</summary>
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

    private PourFigures ComputePour()
    {
        if (Geometry is not { Sizes.Core: > 0, CavityM3: > 0 } g || CastMix is not { } mix || PowderPerWater is not { } ratio)
        {
            return new PourFigures { CavityVolumeM3 = Geometry is { } drawing ? Math.Max(0, drawing.CavityM3) : null };
        }

        var air = Air.TemperatureC;
        var slurry = SlurryC(mix, ratio);
        var mixed = Mix.FromVolume(mix, g.CavityM3 * (1 + Limits.CastReserve), ratio, slurry);
        var inside = Mix.FromVolume(mix, g.CavityM3, ratio, slurry);
        var heat = Skin is { } skin
            ? SettingHeat.Expected(
                mix: mix,
                figures: mixed,
                coreM: g.CoreM,
                skin: skin,
                outerM: g.Sizes.OuterSkin * 1e-3,
                innerM: g.Sizes.InnerSkin * 1e-3,
                airC: air,
                slurryC: slurry
            )
            : null;
        double? lift = Skin is null ? null : LiftHeightsM(g).Max();
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
            SkinBulgeM = pressure is { } p ? BulgeM(g, p) : null,
            LiftHeightM = lift,
            AdiabaticPeakC = mixed.AdiabaticPeakC,
            AdiabaticPeakRangeC = mixed.AdiabaticPeakRangeC,
            ExpectedPeakC = heat?.ExpectedPeakC,
            PeakTimeS = heat?.PeakTimeS,
            PeakOuterFaceC = heat?.OuterFaceC,
            ThickestPlaceM = g.ThickestPlaceM,
            DryOutLeastDays = DryOut.FirstStageS(inside.FreeWaterKg, g.Rear.Layout.OuterOnly.Sum(c => c.AreaM2) + g.DryingHoles.OpenM2) / SecondsPerDay,
            DurationS = Clock?.DurationS,
            Batches = Clock?.Batches ?? [],
        };
    }

    // The first lift fills the front core and buries the inner sleeve; it must set before the rest presses on it. The rest goes in as few lifts as
    // keep the bulge within its limit, four at most (our choice).
    private IReadOnlyList<double> LiftHeightsM(CabinetGeometry g)
    {
        var whole = g.OuterSleeveLengthM;
        var first = g.CoreM + BuriedByFirstLiftM;
        if (whole <= 2 * first)
        {
            return [whole];
        }

        var density = Mix.FromPowder(CastMix!, 1, PowderPerWater!.Value).SlurryDensityKgM3;
        var bears = Limits.BulgeM / BulgeM(g, FormPressure.AtDepthPa(density, 1));
        var rest = Math.Min(MostLifts, FormPressure.Lifts(whole - first, Math.Max(0.001, bears)));
        return [first, .. Enumerable.Repeat((whole - first) / rest, rest)];
    }

    private IReadOnlyList<double> LiftShares(CabinetGeometry g)
    {
        var heights = LiftHeightsM(g);
        if (heights.Count == 1)
        {
            return [1];
        }

        var first = Math.Min(0.8, (g.Front.CoreM2 * g.CoreM + g.Sleeve.CoreRingM2 * BuriedByFirstLiftM) / g.CavityM3);
        return [first, .. Enumerable.Repeat((1 - first) / (heights.Count - 1), heights.Count - 1)];
    }

    private BulgeFigures Strip(CabinetGeometry g, double pressurePa)
    {
        // Struts thicker than their distance leave no bay; the skin is then held all over.
        var bay = Math.Max(1e-5, g.ClearBayM);
        BulgeFigures Of(double skin, double left)
        {
            var whole = SkinBulge.Skin(pressurePa, bay, g.Sleeve.StrutPitch * 1e-3, skin * 1e-3, Skin!.HotModulusPa, Skin.Poisson);
            return whole with { BulgeM = whole.BulgeM / left, StressPa = whole.StressPa / left };
        }

        // A row of drying holes leaves so much of the inner skin to bend.
        var (outer, inner) = (Of(g.Sizes.OuterSkin, 1), Of(g.Sizes.InnerSkin, g.DryingHoles.LeftRatio));
        return outer with { BulgeM = Math.Max(outer.BulgeM, inner.BulgeM), StressPa = Math.Max(outer.StressPa, inner.StressPa) };
    }

    // The worst of both skins; an untied strut bends with its skin, its ends taken as supported, the softer bound.
    private double BulgeM(CabinetGeometry g, double pressurePa)
    {
        var strip = Strip(g, pressurePa).BulgeM;
        var web = g.Sizes.Web * 1e-3;
        return g.Sizes.Tied
            ? strip
            : strip + SkinBulge.UntiedStrut(pressurePa, g.Sleeve.StrutPitch * 1e-3, g.ClearDepthM, web, g.CoreM, Skin!.HotModulusPa).SupportedM;
    }
}
