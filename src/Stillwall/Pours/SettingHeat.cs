using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>How warm the wall gets while the core sets.</summary>
/// <param name="ExpectedPeakC">Peak temperature, °C.</param>
/// <param name="PeakAtS">When, s from the first water.</param>
public sealed record SettingHeat(
    [property: ComputedBy("expected-peak", "cabinet.core", "cabinet.outer_skin", "cabinet.inner_skin", "materials.cast.powder_per_water")] double ExpectedPeakC,
    [property: ComputedBy("expected-peak", "cabinet.core")] double PeakAtS)
{
    /// <summary>Heat that still air takes from a face, W/(m²·K), radiation counted (common practice, no source).</summary>
    public const double LossWM2K = 8;

    /// <summary>Expected peak of core and skins together.</summary>
    /// <param name="cast">Kind of mix.</param>
    /// <param name="mix">One mix of it, for its heat capacity and volume.</param>
    /// <param name="coreM">Thickness of the core, m, above 0.</param>
    /// <param name="skinsM">Thickness of both skins, m, zero or greater.</param>
    /// <param name="skin">The plastic.</param>
    /// <param name="airC">Temperature of the air, °C.</param>
    /// <returns>Peak and its time; null where the heat of setting is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: one temperature for the whole wall, heat released evenly between initial set and the end of warming, loss at the outer skin alone while the inner sleeve is
    /// closed. Validity: walls thin enough to be one temperature (h·t/k under 0.2); thick places run hotter, up to the adiabatic peak.
    /// Source: lumped heat balance, any textbook. Accuracy: the adiabatic peak bounds it; the heat of setting alone scatters by ±9 %.
    /// </remarks>
    public static SettingHeat? Of(CastMix cast, Mix mix, double coreM, double skinsM, SkinMaterial skin, double airC)
    {
        ArgumentNullException.ThrowIfNull(cast);
        ArgumentNullException.ThrowIfNull(mix);
        ArgumentNullException.ThrowIfNull(skin);
        Require.Positive(coreM);
        Require.NotNegative(skinsM);
        if (mix.AdiabaticPeakC is not { } adiabatic)
        {
            return null;
        }

        var core = mix.HeatCapacityJK / mix.SlurryVolumeM3 * coreM;
        var wall = core + skinsM * skin.DensityKgM3 * skin.SpecificHeatJKgK;
        var decay = wall / LossWM2K;
        var release = cast.Times.HeatEndS - cast.Times.InitialSetS;
        var rise = (adiabatic - airC) * core / wall * decay / release * (1 - Math.Exp(-release / decay));
        return new SettingHeat(airC + rise, cast.Times.HeatEndS);
    }
}
