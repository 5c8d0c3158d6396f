using Stillwall.Appraisals;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Controls;

/// <summary>One result in words.</summary>
public sealed record FigureLine(string Name, string Result, string Value);

/// <summary>Results that a stage lists.</summary>
internal static class FigureLines
{
    /// <summary>Every quantity of the pour that is known.</summary>
    internal static IEnumerable<FigureLine> OfPour(Facts facts)
    {
        var (pour, show) = (facts.Pour, facts.Show);
        return Known([
            (PourTexts.Cavity, "pour.cavity_volume_m3", pour.CavityVolumeM3, show.Liquid),
            (PourTexts.RehearsalWater, "cast.rehearsal_water_kg", facts.Cast.RehearsalWaterKg, show.Mass),
            (PourTexts.PowderToMix, "pour.powder_kg", pour.PowderKg, show.Mass),
            (PourTexts.WaterToMix, "pour.water_kg", pour.WaterKg, show.Mass),
            (PourTexts.SlurryDensity, "pour.slurry_density_kg_m3", pour.SlurryDensityKgM3, d => show.Density(d)),
            (PourTexts.WetInCabinet, "pour.wet_in_cabinet_kg", pour.WetInCabinetKg, show.Mass),
            (PourTexts.DryInCabinet, "pour.dry_in_cabinet_kg", pour.DryInCabinetKg, show.Mass),
            (PourTexts.FreeWater, "pour.free_water_kg", pour.FreeWaterKg, show.Mass),
            (PourTexts.FormPressure, "pour.form_pressure_pa", pour.FormPressurePa, show.Pressure),
            (PourTexts.SkinBulge, "pour.skin_bulge_m", pour.SkinBulgeM, show.Small),
            (PourTexts.HighestLift, "pour.lift_height_m", pour.LiftHeightM, show.Length),
            (PourTexts.ExpectedPeak, "pour.expected_peak_c", pour.ExpectedPeakC, show.Temperature),
            (PourTexts.AdiabaticPeak, "pour.adiabatic_peak_c", pour.AdiabaticPeakC, show.Temperature),
            (PourTexts.LeastDays, "pour.dry_out_least_days", pour.DryOutLeastDays, d => PourTexts.Days(Show.Number(d, 2))),
        ]);
    }

    /// <summary>Every figure of the closed box that is known.</summary>
    internal static IEnumerable<FigureLine> OfBox(Facts facts)
    {
        var (box, show) = (facts.Box, facts.Show);
        return Known([
            (CabinetTexts.Inside, "box.inside_volume_m3", box.InsideVolumeM3, show.Volume),
            (CabinetTexts.Net, "box.net_volume_m3", box.NetVolumeM3, show.Volume),
            (CabinetTexts.Effective, "box.effective_volume_m3", box.EffectiveVolumeM3, show.Volume),
            (CabinetTexts.FillFactor, "box.fill_factor", box.FillFactor, f => Show.Number(f)),
            (CabinetTexts.Resonance, "box.system_resonance_hz", box.SystemResonanceHz, Show.Frequency),
            (CabinetTexts.Q, "box.system_q", box.SystemQ, q => Show.Number(q)),
            (CabinetTexts.QFilled, "box.system_q_filled", box.SystemQFilled, q => Show.Number(q)),
            (CabinetTexts.F3, "box.f3_hz", box.F3Hz, Show.Frequency),
            (CabinetTexts.F10, "box.f10_hz", box.F10Hz, Show.Frequency),
            (CabinetTexts.Peak, "box.response_peak_db", box.ResponsePeakDb, Show.Level),
            (CabinetTexts.Sensitivity, "box.sensitivity_db", box.SensitivityDb, Show.Level),
            (CabinetTexts.LeakQ, "box.leak_q", box.LeakQ, q => Show.Number(q)),
            (CabinetTexts.AirMode, "box.lowest_air_mode_hz", box.LowestAirModeHz, Show.Frequency),
            (CabinetTexts.LevelAtLowest, "box.max_spl_at_lowest_db", box.MaxSplAtLowestDb, Show.Level),
            (CabinetTexts.LevelAtSeat, "box.max_spl_at_seat_db", box.MaxSplAtSeatDb, Show.Level),
            (CabinetTexts.PowerNeeded, "box.power_needed_w", box.PowerNeededW, w => $"{Show.Number(w)} W"),
            (CabinetTexts.LeastImpedance, "box.minimum_impedance_ohm", box.MinimumImpedanceOhm, o => $"{Show.Number(o)} ohm"),
            (CabinetTexts.PortLength, "box.port_print_length_m", box.PortPrintLengthM, show.Length),
        ]);
    }

    private static IEnumerable<FigureLine> Known(IEnumerable<(string Name, string Result, double? Value, Func<double, string> Text)> all) =>
        all.Where(l => l.Value is not null).Select(l => new FigureLine(l.Name, l.Result, l.Text(l.Value!.Value)));
}
