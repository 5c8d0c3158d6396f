using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>How warm a wall gets while its cast sets.</summary>
/// <param name="ExpectedPeakC">Highest temperature of cast and skins, °C.</param>
/// <param name="PeakTimeS">When that is, from the first water, s.</param>
/// <param name="TimeConstantS">Time constant of the wall's cooling, s.</param>
public sealed record HeatFigures(
    [property: ComputedBy("setting-heat", "materials.cast.mix", "materials.cast.powder_per_water", "cabinet.core", "cabinet.outer_skin", "cabinet.inner_skin", "brief.air.temperature")] double ExpectedPeakC,
    [property: ComputedBy("setting-heat", "materials.cast.mix", "materials.cast.pot_life")] double PeakTimeS,
    [property: ComputedBy("setting-heat", "cabinet.core", "cabinet.outer_skin", "cabinet.inner_skin")] double TimeConstantS);

/// <summary>Heat of setting in a wall that loses it through its outer skin alone.</summary>
public static class SettingHeat
{
    /// <summary>Heat that the outer skin passes to still air, W/(m²·K) (common practice for upright surfaces, convection and radiation).</summary>
    public const double SurfaceLossWM2K = 8;

    /// <summary>Expected peak in a wall of skin, cast and skin.</summary>
    /// <param name="mix">The mix; its heat and its times.</param>
    /// <param name="figures">The mix as it is poured: density and water.</param>
    /// <param name="coreM">Thickness of the cast, m, above 0.</param>
    /// <param name="outer">Plastic of the skins.</param>
    /// <param name="outerM">Thickness of the outer skin, m, above 0.</param>
    /// <param name="innerM">Thickness of the inner skin, m, 0 or more.</param>
    /// <param name="airC">Temperature of the room and of everything at the start, °C.</param>
    /// <returns>The figures, or null where the heat of setting is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: the simple one. The wall is one lump of heat capacity C per area (set solid, free water, both skins), warmed evenly between initial set and end of heat by q = heat/duration and cooled by
    /// U = 1/(1/8 + t/k of the outer skin): ΔT = (q/U)(1 − e^(−UΔt/C)), highest at the end of heat. The inner sleeve is closed and loses nothing.
    /// Validity: cores up to about 25 mm, so that cast and skin are evenly warm (Biot number below 0.3). Source: lumped heat balance, e.g. Incropera, Fundamentals of Heat and Mass Transfer, chapter 5 (from memory);
    /// even release is our choice. Accuracy: within 1.5 K of a one-dimensional finite-difference wall for 8 to 20 mm of plaster; the heat itself spans ± 9 %.
    /// </remarks>
    public static HeatFigures? Expected(CastMix mix, MixFigures figures, double coreM, SkinMaterial outer, double outerM, double innerM, double airC)
    {
        ArgumentNullException.ThrowIfNull(mix);
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(outer);
        Require.Positive(coreM);
        Require.Positive(outerM);
        Require.NotNegative(innerM);
        Require.Within(airC, -40, 60, nameof(airC), "°C");
        if (mix.Heat is null)
        {
            return null;
        }

        var cast = coreM * (figures.DryMassKg * mix.Thermal.SpecificHeatJKgK + figures.FreeWaterKg * CastMixes.WaterSpecificHeatJKgK) / figures.SlurryVolumeM3;
        var capacity = cast + (outerM + innerM) * outer.DensityKgM3 * outer.SpecificHeatJKgK;
        var loss = 1 / (1 / SurfaceLossWM2K + outerM / outer.ConductivityWMK);
        var duration = mix.Times.HeatEndS - mix.Times.InitialSetS;
        var sets = figures.PowderRich ? figures.WaterKg / mix.BoundWaterRatio : figures.PowderKg;
        var heat = coreM * sets * mix.Heat.HeatJKg / figures.SlurryVolumeM3;
        var rise = heat / (loss * duration) * -Expm1(-loss * duration / capacity);
        return new HeatFigures(airC + rise, mix.Times.HeatEndS, capacity / loss);
    }

    private static double Expm1(double x) => Math.Abs(x) < 1e-5 ? x + x * x / 2 : Math.Exp(x) - 1;
}
