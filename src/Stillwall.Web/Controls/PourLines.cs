using Stillwall.Appraisals;

namespace Stillwall.Web.Controls;

/// <summary>One result of the pour in words.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Result">Its path in the appraisal.</param>
/// <param name="Value">Number and unit.</param>
internal sealed record PourLine(string Name, string Result, string Value);

/// <summary>The quantities of the pour.</summary>
internal static class PourLines
{
    /// <summary>Every quantity that is known.</summary>
    internal static IEnumerable<PourLine> Of(Facts facts)
    {
        var (pour, show) = (facts.Pour, facts.Show);
        (string, string, double?, Func<double, string>)[] all =
        [
            ("cavity", "pour.cavity_volume_m3", pour.CavityVolumeM3, show.Liquid), ("powder to mix, reserve counted", "pour.powder_kg", pour.PowderKg, show.Mass), ("water to mix", "pour.water_kg", pour.WaterKg, show.Mass),
            ("density of the slurry", "pour.slurry_density_kg_m3", pour.SlurryDensityKgM3, d => show.Density(d)), ("in the cabinet, wet", "pour.wet_in_cabinet_kg", pour.WetInCabinetKg, show.Mass), ("in the cabinet, dry", "pour.dry_in_cabinet_kg", pour.DryInCabinetKg, show.Mass),
            ("water that has to dry out", "pour.free_water_kg", pour.FreeWaterKg, show.Mass), ("pressure on the form", "pour.form_pressure_pa", pour.FormPressurePa, show.Pressure), ("bulge of the worst bay", "pour.skin_bulge_m", pour.SkinBulgeM, show.Small),
            ("highest lift", "pour.lift_height_m", pour.LiftHeightM, show.Length), ("hottest, expected", "pour.expected_peak_c", pour.ExpectedPeakC, show.Temperature), ("hottest if no heat left", "pour.adiabatic_peak_c", pour.AdiabaticPeakC, show.Temperature),
            ("least time to dry", "pour.dry_out_least_days", pour.DryOutLeastDays, d => $"{Show.Number(d, 2)} days"),
        ];
        return all.Where(l => l.Item3 is not null).Select(l => new PourLine(l.Item1, l.Item2, l.Item4(l.Item3!.Value)));
    }
}
