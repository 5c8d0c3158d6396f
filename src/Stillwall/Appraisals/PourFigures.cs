using Stillwall.Numerics;
using Stillwall.Pours;

namespace Stillwall.Appraisals;

/// <summary>The pour plan; what is not known is null.</summary>
public sealed record PourFigures
{
    /// <summary>Space the cast fills, m³.</summary>
    [ComputedBy("cavity-between-skins")]
    public double? CavityVolumeM3 { get; init; }

    /// <summary>Powder to mix, reserve counted, kg.</summary>
    [ComputedBy("slurry", "pour.cavity_volume_m3")]
    public double? PowderKg { get; init; }

    /// <summary>Water to mix, kg.</summary>
    [ComputedBy("slurry", "pour.powder_kg")]
    public double? WaterKg { get; init; }

    /// <summary>Density of the slurry, kg/m³.</summary>
    [ComputedBy("slurry")]
    public double? SlurryDensityKgM3 { get; init; }

    /// <summary>Mass of all that is mixed, kg.</summary>
    [ComputedBy("slurry", "pour.powder_kg", "pour.water_kg")]
    public double? WetMassKg { get; init; }

    /// <summary>Mass of all that is mixed when set and dry, kg.</summary>
    [ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg")]
    public double? DryMassKg { get; init; }

    /// <summary>Water that has to dry out of all that is mixed, kg.</summary>
    [ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg")]
    public double? FreeWaterKg { get; init; }

    /// <summary>Slurry in the cabinet, kg.</summary>
    [ComputedBy("slurry", "pour.cavity_volume_m3", "pour.slurry_density_kg_m3")]
    public double? WetInCabinetKg { get; init; }

    /// <summary>Set and dry cast in the cabinet, kg.</summary>
    [ComputedBy("stoichiometry", "pour.cavity_volume_m3")]
    public double? DryInCabinetKg { get; init; }

    /// <summary>Pressure at the deepest point of the highest lift, Pa.</summary>
    [ComputedBy("form-pressure", "pour.slurry_density_kg_m3", "pour.lift_height_m")]
    public double? FormPressurePa { get; init; }

    /// <summary>Bulge of the worst bay, m.</summary>
    [ComputedBy("skin-bulge", "pour.form_pressure_pa")]
    public double? SkinBulgeM { get; init; }

    /// <summary>Height of the highest lift, m.</summary>
    [ComputedBy("lift-height")]
    public double? LiftHeightM { get; init; }

    /// <summary>Peak temperature if no heat is lost, °C.</summary>
    [ComputedBy("adiabatic-peak")]
    public double? AdiabaticPeakC { get; init; }

    /// <summary>The same for the least and greatest published heat of setting, °C.</summary>
    [ComputedBy("adiabatic-peak")]
    public IReadOnlyList<double>? AdiabaticPeakRangeC { get; init; }

    /// <summary>Peak temperature expected in the wall, °C.</summary>
    [ComputedBy("setting-heat", "pour.adiabatic_peak_c")]
    public double? ExpectedPeakC { get; init; }

    /// <summary>When the wall is that warm, from the first water of its bucket, s.</summary>
    [ComputedBy("setting-heat")]
    public double? PeakTimeS { get; init; }

    /// <summary>Temperature of the outer face at that time, °C.</summary>
    [ComputedBy("setting-heat", "pour.adiabatic_peak_c")]
    public double? PeakOuterFaceC { get; init; }

    /// <summary>Greatest ball that the cavity has room for, m.</summary>
    [ComputedBy("thickest-place")]
    public double? ThickestPlaceM { get; init; }

    /// <summary>
    /// Least time to dry through the openings of the rear's outer plate, lids off, and the drying holes in the inner skin, the box open, days.
    /// </summary>
    [ComputedBy("dry-out", "pour.free_water_kg")]
    public double? DryOutLeastDays { get; init; }

    /// <summary>From the first water to the end of the last pour, s.</summary>
    [ComputedBy("pour-clock")]
    public double? DurationS { get; init; }

    /// <summary>The batches in order.</summary>
    public IReadOnlyList<PourBatch> Batches { get; init; } = [];
}
