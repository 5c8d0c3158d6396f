using Stillwall.Appraisals;
using Stillwall.Web.Texts;

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
            (PourTexts.Cavity, "pour.cavity_volume_m3", pour.CavityVolumeM3, show.Liquid), (PourTexts.PowderToMix, "pour.powder_kg", pour.PowderKg, show.Mass), (PourTexts.WaterToMix, "pour.water_kg", pour.WaterKg, show.Mass),
            (PourTexts.SlurryDensity, "pour.slurry_density_kg_m3", pour.SlurryDensityKgM3, d => show.Density(d)), (PourTexts.WetInCabinet, "pour.wet_in_cabinet_kg", pour.WetInCabinetKg, show.Mass), (PourTexts.DryInCabinet, "pour.dry_in_cabinet_kg", pour.DryInCabinetKg, show.Mass),
            (PourTexts.FreeWater, "pour.free_water_kg", pour.FreeWaterKg, show.Mass), (PourTexts.FormPressure, "pour.form_pressure_pa", pour.FormPressurePa, show.Pressure), (PourTexts.SkinBulge, "pour.skin_bulge_m", pour.SkinBulgeM, show.Small),
            (PourTexts.HighestLift, "pour.lift_height_m", pour.LiftHeightM, show.Length), (PourTexts.ExpectedPeak, "pour.expected_peak_c", pour.ExpectedPeakC, show.Temperature), (PourTexts.AdiabaticPeak, "pour.adiabatic_peak_c", pour.AdiabaticPeakC, show.Temperature),
            (PourTexts.LeastDays, "pour.dry_out_least_days", pour.DryOutLeastDays, d => PourTexts.Days(Show.Number(d, 2))),
        ];
        return all.Where(l => l.Item3 is not null).Select(l => new PourLine(l.Item1, l.Item2, l.Item4(l.Item3!.Value)));
    }
}
