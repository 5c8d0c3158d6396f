namespace Stillwall.Appraisals.Explaining;

/// <summary>By which formula and from what a finding's value was computed, and what its limit rests on.</summary>
/// <param name="Formula">Id of the formula of the value.</param>
/// <param name="Value">Inputs of the value: keys of the project, of the driver, or paths of results.</param>
/// <param name="Limit">Inputs of the limit; none where it is zero by its nature.</param>
public sealed record FindingTrace(string Formula, IReadOnlyList<string> Value, IReadOnlyList<string> Limit)
{
    private static readonly string[] Skins = ["cabinet.outer_skin", "cabinet.inner_skin"];
    private static readonly string[] Walls = [.. Skins, "cabinet.core"];
    private static readonly string[] Front = ["cabinet.outside.width", "cabinet.outside.height", "cabinet.outside.corner_radius"];
    private static readonly string[] Outside = [.. Front, "cabinet.outside.depth"];
    private static readonly string[] Clock = ["materials.cast.soak", "materials.cast.stir", "materials.cast.pour_rate", "materials.cast.bucket", "materials.cast.people", "pour.cavity_volume_m3", "limits.cast_reserve", "cabinet.outside.depth", "limits.bulge"];
    private static readonly string[] WantedQ = ["brief.aim.system_q", "brief.aim.system_q_tolerance"];
    private static readonly string[] PotLife = ["materials.cast.pot_life", "materials.cast.mix"];

    // Id of the finding; formula; inputs of value; inputs of limit. Where the worst wall or band counts, its path follows from the facts.
    private static readonly Dictionary<string, FindingTrace> ById = new(StringComparer.Ordinal)
    {
        ["brief/cabinet-fits-the-spot"] = new("spot-fit", [.. Outside, "brief.spot.clearance", "brief.spot.plug_space"], ["brief.spot.width", "brief.spot.height", "brief.spot.depth"]),
        ["brief/weight-for-the-hands-that-lift-it"] = new("finished-mass", ["mass.finished_kg"], ["limits.lift_mass"]),
        ["brief/cost"] = new("cost", ["cost.total_price"], ["budget"]),
        ["driver/parameters-agree-with-one-another"] = new("parameter-mismatch", ["driver.bl", "driver.mms", "driver.qts", "driver.fs", "driver.qms", "driver.qes", "driver.vas", "driver.re", "driver.sd"], ["limits.parameter_mismatch"]),
        ["driver/fits-the-front"] = new("front-fit", [.. Front, .. Walls, "driver.cutout", "driver.flange", "driver.bolt_circle", "driver.bolt", "cabinet.openings.recess"], []),
        ["driver/clear-of-braces-skins-and-rear"] = new("driver-depth", ["driver.depth", "limits.magnet_clearance"], ["cabinet.outside.depth", .. Walls, "cabinet.braces", "driver.magnet_diameter", "cabinet.openings.recess"]),
        ["driver/amplifier-can-drive-it"] = new("minimum-impedance", ["box.minimum_impedance_ohm"], ["brief.amplifier.minimum_load"]),
        ["cabinet/system-q-as-wanted"] = new("system-q", ["box.system_q"], WantedQ),
        ["cabinet/reaches-the-lowest-note"] = new("f10", ["box.f10_hz"], ["brief.aim.lowest"]),
        ["cabinet/loud-enough-and-what-gives-out-first"] = new("maximum-level-at-seat", ["box.max_spl_at_seat_db", "box.max_spl_at_lowest_db"], ["brief.aim.level"]),
        ["cabinet/airtight-enough"] = new("leak-q", ["box.leak_q"], ["limits.leak_q"]),
        ["cabinet/fill-sensible"] = new("fill-density", ["box.fill_density_kg_m3"], ["limits.fill_density_low", "limits.fill_density_high"]),
        ["cabinet/first-air-mode-inside-above-the-working-range"] = new("air-mode", ["box.lowest_air_mode_hz"], ["brief.aim.crossover", "limits.air_mode_ratio"]),
        ["cabinet/tolerance-of-drivers"] = new("tolerance", ["box.system_q_band[0]", "box.system_q_band[1]"], WantedQ),
        ["walls/panel-resonance-above-the-working-range"] = new("panel-modes", ["walls[].first_mode_hz"], ["brief.aim.crossover", "limits.panel_mode_ratio"]),
        ["walls/wall-sound-below-the-cone"] = new("wall-to-cone", ["walls[].wall_to_cone_db"], ["limits.wall_to_cone"]),
        ["walls/not-heavier-than-it-need-be"] = new("thinnest-core", ["cabinet.core"], [.. Outside, .. Walls, "materials.skin", "materials.cast.mix", "brief.aim.crossover", "limits.panel_mode_ratio", "limits.wall_to_cone"]),
        ["walls/core-keyed-to-the-skins"] = new("keyed-fraction", [.. Front, .. Walls, "cabinet.strut_pitch"], ["limits.keyed_fraction"]),
        ["walls/inner-skin-stays-on"] = new("skin-gap", [.. Front, .. Walls, "materials.cast.mix", "pour.expected_peak_c", "brief.air.temperature"], ["cabinet.strut_pitch", "limits.keyed_fraction"]),
        ["walls/lifted-by-the-front-hung-by-the-rear"] = new("joint-safety", ["mass.finished_kg", .. Front, .. Walls, "cabinet.strut_pitch", "driver.cutout", "driver.bolt_circle", "limits.keyed_strength", "limits.sealant_strength"], ["limits.joint_safety"]),
        ["walls/driver-screws-hold"] = new("insert-safety", ["driver.bolt", "driver.bolts", "driver.sd", "driver.mms", "driver.xmax", "box.net_volume_m3", "box.system_resonance_hz", "driver.cutout", "driver.flange", "limits.insert_pull_out", "limits.screw_torque"], ["limits.insert_safety", "limits.gasket_pressure"]),
        ["walls/stands-without-tipping"] = new("tilt", [.. Outside, "mass.finished_kg", "driver.mass", "driver.depth"], ["limits.tilt"]),
        ["parts/every-part-fits-the-printer"] = new("part-size", [.. Outside, "brief.printer.edge_margin"], ["brief.printer.build_width", "brief.printer.build_depth", "brief.printer.build_height"]),
        ["parts/thin-walls-stand-while-printing"] = new("slenderness", ["cabinet.outside.depth", .. Walls, "cabinet.strut_pitch", "brief.printer.build_height"], ["limits.span_ratio", "limits.wall_height_ratio"]),
        ["parts/bridges-and-overhangs"] = new("over-air", ["cabinet.core", "cabinet.outer_skin", "cabinet.strut_pitch", "cabinet.accents.rings", "cabinet.openings.recess"], ["limits.bridge", "limits.overhang"]),
        ["parts/pieces-go-together"] = new("joint-clearance", [.. Front, .. Walls, "cabinet.braces", "cabinet.accents.rings", "materials.skin"], []),
        ["parts/filament-in-stock"] = new("filament-to-have", ["print.filament_to_have_kg"], ["supplies[\"filament\"].in_stock"]),
        ["parts/longest-single-print"] = new("print-time", ["print.longest_print_seconds"], ["limits.longest_print"]),
        ["pour/skins-bulge"] = new("skin-bulge", ["pour.skin_bulge_m"], ["limits.bulge"]),
        ["pour/skins-hold"] = new("skin-stress", ["pour.form_pressure_pa", "cabinet.strut_pitch", .. Front, .. Walls], ["materials.skin", "materials.cast.mix", "limits.skin_strength"]),
        ["pour/inner-sleeve-floats"] = new("sleeve-uplift", ["pour.slurry_density_kg_m3", .. Front, .. Walls, "driver.cutout", "materials.skin"], ["materials.cast.hold_down"]),
        ["pour/batch-within-pot-life"] = new("pour-clock", Clock, PotLife),
        ["pour/no-cold-joint-in-a-lift"] = new("pour-clock", Clock, PotLife),
        ["pour/powder-in-stock-with-reserve"] = new("slurry", ["pour.powder_kg"], ["supplies[\"cast powder\"].in_stock"]),
        ["pour/heat-below-softening"] = new("setting-heat", ["pour.expected_peak_c"], ["materials.skin", "limits.heat_margin"]),
        ["pour/mix-flows-into-the-cavity"] = new("least-passage", ["cabinet.core"], ["limits.passage", "materials.cast.grain", "materials.cast.mix"]),
        ["pour/dry-before-it-is-sealed"] = new("dryness", ["logbook", "mass.dry_shells_and_cast_kg", "pour.dry_in_cabinet_kg"], ["limits.dryness"]),
        ["supplies/nothing-past-its-date"] = new("days-left", ["stock", "pour_date"], []),
        ["supplies/all-to-hand-for-each-step"] = new("lacking-items", ["stock", "print.filament_to_have_kg", "pour.powder_kg"], []),
        ["quiet/neighbour-at-the-everyday-level"] = new("over-curve", ["quiet.bands[].over_db"], ["limits.neighbour_over"]),
        ["quiet/polite-level-with-the-equaliser"] = new("polite-level-equalised", ["quiet.loudest_polite_level_with_equaliser_db"], ["brief.everyday.level"]),
        ["quiet/force-into-the-floor-does-it-walk"] = new("floor-force", ["mass.finished_kg", "cabinet.feet.kind", "cabinet.feet.stiffness", "brief.aim.lowest"], []),
        ["quiet/hearing"] = new("hearing-dose", ["quiet.seat_a_db", "brief.everyday.hours"], []),
        ["quiet/matches-the-main-speakers"] = new("joining", ["brief.main_speakers.corner", "brief.main_speakers.q", "brief.main_speakers.sensitivity", "brief.aim.crossover", "box.system_resonance_hz", "box.system_q"], ["limits.main_speakers_ripple"]),
        ["proof/resonance-as-designed"] = new("as-measured", ["measured.system_resonance"], ["box.system_resonance_hz", "limits.proof_resonance"]),
        ["proof/q-as-designed"] = new("as-measured", ["measured.system_q"], ["box.system_q", "limits.proof_q"]),
        ["proof/core-as-assumed"] = new("as-measured", ["measured.core_modulus", "measured.core_loss_factor"], ["materials.cast.mix", "materials.cast.powder_per_water", "limits.proof_modulus"]),
        ["proof/polarity-matches-the-main-speakers"] = new("polarity-against-join", ["measured.polarity", "brief.main_speakers.corner", "brief.aim.crossover"], []),
        ["proof/no-rattle"] = new("as-logged", ["logbook"], []),
        ["logbook/plan-against-actual"] = new("plan-deviation", ["logbook", "mass.finished_kg", "print.print_seconds", "cost.total_price"], []),
    };

    /// <summary>Every trace, by the id of its finding.</summary>
    public static IReadOnlyDictionary<string, FindingTrace> All => ById;

    /// <summary>The same with the worst wall's and the worst band's own paths in place of the open ones.</summary>
    internal FindingTrace In(Facts facts) => this with { Value = [.. Value.Select(key => Closed(key, facts)), .. Formula == "over-air" && facts.Sizes?.Sunk > 0 ? Ring : []] };

    // What a recess makes wider than the wings of a strut.
    private static readonly string[] Ring = ["driver.flange", "driver.cutout"];

    private static string Closed(string key, Facts f)
    {
        if (key.StartsWith("walls[].", StringComparison.Ordinal) && (key.EndsWith("_hz", StringComparison.Ordinal) ? (f.WorstMode?.Panel, f.WorstMode?.Case) : (f.WorstSound?.Panel, f.WorstSound?.Case)) is ({ } panel, { } which))
        {
            return $"walls.{panel}.{(which is "bonded" or "slipping" ? which : "cut_core")}.{key["walls[].".Length..]}";
        }

        return key.StartsWith("quiet.bands[].", StringComparison.Ordinal) && f.Quiet.Bands.Where(b => b.OverDb is not null).MaxBy(b => b.OverDb + (b.UncertaintyDb ?? 0)) is { } band
            ? FormattableString.Invariant($"quiet.bands[{band.BandHz}].{key["quiet.bands[].".Length..]}")
            : key;
    }
}
