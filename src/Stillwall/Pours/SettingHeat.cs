using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>How warm a wall gets while its cast sets.</summary>
/// <param name="ExpectedPeakC">Highest temperature of cast and skins, °C.</param>
/// <param name="OuterFaceC">Temperature of the outer face at that time, °C.</param>
/// <param name="PeakTimeS">When that is, from the first water, s.</param>
/// <param name="LostShare">Share of the heat that the wall has given to the air by then.</param>
public sealed record HeatFigures(
    [property: ComputedBy("setting-heat")] double ExpectedPeakC,
    [property: ComputedBy("setting-heat")] double OuterFaceC,
    [property: ComputedBy("setting-heat")] double PeakTimeS,
    [property: ComputedBy("setting-heat")] double LostShare
);

/// <summary>Heat of setting in a wall that loses it through its outer skin alone.</summary>
public static class SettingHeat
{
    /// <summary>Heat that the outer skin passes to still air, W/(m²·K) (common practice for upright surfaces, convection and radiation).</summary>
    public const double SurfaceLossWM2K = 8;

    /// <summary>Expected peak in a wall of skin, cast and skin.</summary>
    /// <param name="mix">The mix; its heat and its times.</param>
    /// <param name="figures">The mix as it is poured: density and water.</param>
    /// <param name="coreM">Thickness of the cast, m, above 0.</param>
    /// <param name="skin">Plastic of the skins.</param>
    /// <param name="outerM">Thickness of the outer skin, m, above 0.</param>
    /// <param name="innerM">Thickness of the inner skin, m, 0 or more.</param>
    /// <param name="airC">Temperature of the room and of the skins at the start, °C.</param>
    /// <param name="slurryC">
    /// Temperature of the slurry as it is poured, °C; the room's where left out. It counts from the initial set, as if nothing had evened out before.
    /// </param>
    /// <returns>The figures, or null where the heat of setting is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: <see cref="TransientWall"/> of outer skin, cast (set solid and free water) and inner skin, with even release from initial set to end of
    /// heat. The outer face loses 8 W/(m²·K); the inner sleeve is closed and loses nothing.
    /// Validity: walls wide against their thickness. Edges where walls meet have more outer face for their cast and stay cooler. Source:
    /// one-dimensional heat balance; even release is our choice.
    /// Accuracy: 0.1 % of the rise for its model; the heat itself spans ± 9 %, the loss to still air ± 20 %.
    /// </remarks>
    public static HeatFigures? Expected(
        CastMix mix,
        MixFigures figures,
        double coreM,
        SkinMaterial skin,
        double outerM,
        double innerM,
        double airC,
        double? slurryC = null
    )
    {
        Check(mix, figures, coreM, skin, outerM, innerM);
        Require.Within(airC, -40, 60, nameof(airC), "°C");
        if (mix.Heat is null)
        {
            return null;
        }

        var duration = mix.Times.HeatEndS - mix.Times.InitialSetS;
        var (start, power) = (slurryC ?? airC, HeatJM3(mix, figures, mix.Heat) / duration);
        if (power <= 0)
        {
            return new HeatFigures(Math.Max(airC, start), airC, mix.Times.InitialSetS, 0);
        }

        return
            TransientWall.Warm(
                Layers(mix: mix, figures: figures, coreM: coreM, skin: skin, outerM: outerM, innerM: innerM, power: power, startK: start - airC),
                duration,
                SurfaceLossWM2K
            )
                is { } warm
            ? new HeatFigures(airC + warm.PeakRiseK, airC + warm.OuterFaceRiseK, mix.Times.InitialSetS + warm.PeakTimeS, warm.LostJM2 / warm.ReleasedJM2)
            : null;
    }

    /// <summary>The same wall over time.</summary>
    /// <param name="mix">The mix; its heat and its times.</param>
    /// <param name="figures">The mix as it is poured: density and water.</param>
    /// <param name="coreM">Thickness of the cast, m, above 0.</param>
    /// <param name="skin">Plastic of the skins.</param>
    /// <param name="outerM">Thickness of the outer skin, m, above 0.</param>
    /// <param name="innerM">Thickness of the inner skin, m, 0 or more.</param>
    /// <param name="airC">Temperature of the room and of the skins at the start, °C.</param>
    /// <param name="slurryC">Temperature of the slurry as it is poured, °C; the room's where left out.</param>
    /// <returns>
    /// Time from the first water, s, and temperature of the warmest place and of the outer face, °C, from the initial set on for six times the
    /// release; empty where the heat is not known.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: <see cref="TransientWall.Course"/>. Validity: as <see cref="Expected"/>. Source: as that. Accuracy: as that.</remarks>
    public static IReadOnlyList<(double TimeS, double WarmestC, double OuterFaceC)> Course(
        CastMix mix,
        MixFigures figures,
        double coreM,
        SkinMaterial skin,
        double outerM,
        double innerM,
        double airC,
        double? slurryC = null
    )
    {
        Check(mix, figures, coreM, skin, outerM, innerM);
        var duration = mix.Times.HeatEndS - mix.Times.InitialSetS;
        return mix.Heat is { } heat && HeatJM3(mix, figures, heat) / duration is > 0 and var power
            ?
            [
                .. TransientWall
                    .Course(
                        Layers(
                            mix: mix,
                            figures: figures,
                            coreM: coreM,
                            skin: skin,
                            outerM: outerM,
                            innerM: innerM,
                            power: power,
                            startK: (slurryC ?? airC) - airC
                        ),
                        duration,
                        SurfaceLossWM2K,
                        Followed
                    )
                    .Select(p => (mix.Times.InitialSetS + p.TimeS, airC + p.WarmestK, airC + p.OuterFaceK)),
            ]
            : [];
    }

    private const int Followed = 6;

    private static void Check(CastMix mix, MixFigures figures, double coreM, SkinMaterial skin, double outerM, double innerM)
    {
        ArgumentNullException.ThrowIfNull(mix);
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(skin);
        Require.Positive(coreM);
        Require.Positive(outerM);
        Require.NotNegative(innerM);
    }

    private static List<HeatLayer> Layers(
        CastMix mix,
        MixFigures figures,
        double coreM,
        SkinMaterial skin,
        double outerM,
        double innerM,
        double power,
        double startK
    )
    {
        HeatLayer Skin(double thicknessM) => new(thicknessM, skin.ConductivityWMK, skin.DensityKgM3 * skin.SpecificHeatJKgK);
        List<HeatLayer> layers = [Skin(outerM), new(coreM, mix.Thermal.ConductivityWMK, CapacityJM3K(mix, figures), power, startK)];
        if (innerM > 0)
        {
            layers.Add(Skin(innerM));
        }

        return layers;
    }

    // What sets gives its heat; where water is short, only the share of the powder that it reaches.
    private static double HeatJM3(CastMix mix, MixFigures figures, CastHeat heat) =>
        (figures.PowderRich ? figures.WaterKg / mix.BoundWaterRatio : figures.PowderKg) * heat.HeatJKg / figures.SlurryVolumeM3;

    private static double CapacityJM3K(CastMix mix, MixFigures figures) =>
        (figures.DryMassKg * mix.Thermal.SpecificHeatJKgK + figures.FreeWaterKg * CastMixes.WaterSpecificHeatJKgK) / figures.SlurryVolumeM3;
}
