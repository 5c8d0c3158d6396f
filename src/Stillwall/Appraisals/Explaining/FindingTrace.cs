namespace Stillwall.Appraisals.Explaining;

/// <summary>By which formula a finding's value was computed, and which other results went in; what is stated is found, not told here.</summary>
/// <param name="Value">Paths of the results that go into the value.</param>
/// <param name="Limit">Paths of the results that go into the limit.</param>
internal sealed record FindingTrace(string Formula, IReadOnlyList<string> Value, IReadOnlyList<string> Limit)
{
    private FindingTrace(string formula, IReadOnlyList<string> value)
        : this(formula, value, []) { }

    // Id of the finding; formula; results behind the value; results behind the limit. Where the worst wall or band counts, its path follows from the facts.
    private static readonly Dictionary<string, FindingTrace> ById = new(StringComparer.Ordinal)
    {
        ["brief/cabinet-fits-the-spot"] = new("spot-fit", []),
        ["brief/weight-for-the-hands-that-lift-it"] = new("finished-mass", ["mass.finished_kg"]),
        ["brief/cost"] = new("cost", ["cost.total_price"]),
        ["driver/parameters-agree-with-one-another"] = new("parameter-mismatch", []),
        ["driver/fits-the-front"] = new("front-fit", []),
        ["driver/clear-of-braces-skins-and-rear"] = new("driver-depth", []),
        ["driver/amplifier-can-drive-it"] = new("minimum-impedance", ["box.minimum_impedance_ohm"]),
        ["cabinet/system-q-as-wanted"] = new("system-q", ["box.system_q"]),
        ["cabinet/reaches-the-lowest-note"] = new("f10", ["box.f10_hz"]),
        ["cabinet/loud-enough-and-what-gives-out-first"] = new("maximum-level-at-seat", ["box.max_spl_at_seat_db", "box.max_spl_at_lowest_db"]),
        ["cabinet/airtight-enough"] = new("leak-q", ["box.leak_q"]),
        ["cabinet/fill-sensible"] = new("fill-density", ["box.fill_density_kg_m3"]),
        ["cabinet/first-air-mode-inside-above-the-working-range"] = new("air-mode", ["box.lowest_air_mode_hz"]),
        ["cabinet/tolerance-of-drivers"] = new("tolerance", ["box.system_q_band[0]", "box.system_q_band[1]"]),
        ["walls/panel-resonance-above-the-working-range"] = new("panel-modes", ["walls[].first_mode_hz"]),
        ["walls/wall-sound-below-the-cone"] = new("wall-to-cone", ["walls[].wall_to_cone_db"]),
        ["walls/not-heavier-than-it-need-be"] = new("thinnest-core", []),
        ["walls/core-keyed-to-the-skins"] = new("keyed-fraction", []),
        ["walls/inner-skin-stays-on"] = new("skin-gap", ["pour.expected_peak_c"]),
        ["walls/lifted-by-the-front-hung-by-the-rear"] = new("joint-safety", ["mass.finished_kg"]),
        ["walls/driver-screws-hold"] = new("insert-safety", ["box.net_volume_m3", "box.system_resonance_hz"]),
        ["walls/stands-without-tipping"] = new("tilt", ["mass.finished_kg"]),
        ["parts/every-part-fits-the-printer"] = new("part-size", []),
        ["parts/thin-walls-stand-while-printing"] = new("slenderness", []),
        ["parts/bridges-and-overhangs"] = new("over-air", []),
        ["parts/pieces-go-together"] = new("joint-clearance", []),
        ["parts/filament-in-stock"] = new("filament-to-have", ["print.filament_to_have_kg"], ["supplies[\"filament\"].in_stock"]),
        ["parts/longest-single-print"] = new("print-time", ["print.longest_print_seconds"]),
        ["pour/skins-bulge"] = new("skin-bulge", ["pour.skin_bulge_m"]),
        ["pour/skins-hold"] = new("skin-stress", ["pour.form_pressure_pa"]),
        ["pour/inner-sleeve-floats"] = new("sleeve-uplift", ["pour.slurry_density_kg_m3"]),
        ["pour/batch-within-pot-life"] = new("pour-clock", ["pour.cavity_volume_m3"]),
        ["pour/no-cold-joint-in-a-lift"] = new("pour-clock", ["pour.cavity_volume_m3"]),
        ["pour/powder-in-stock-with-reserve"] = new("slurry", ["pour.powder_kg"], ["supplies[\"cast powder\"].in_stock"]),
        ["pour/heat-below-softening"] = new("setting-heat", ["pour.expected_peak_c"]),
        ["pour/mix-flows-into-the-cavity"] = new("least-passage", []),
        ["pour/dry-before-it-is-sealed"] = new("dryness", ["mass.dry_shells_and_cast_kg", "pour.dry_in_cabinet_kg"]),
        ["supplies/nothing-past-its-date"] = new("days-left", []),
        ["supplies/all-to-hand-for-each-step"] = new("lacking-items", ["print.filament_to_have_kg", "pour.powder_kg"]),
        ["quiet/neighbour-at-the-everyday-level"] = new("over-curve", ["quiet.bands[].over_db"]),
        ["quiet/polite-level-with-the-equaliser"] = new("polite-level-equalised", ["quiet.loudest_polite_level_with_equaliser_db"]),
        ["quiet/force-into-the-floor-does-it-walk"] = new("floor-force", ["mass.finished_kg"]),
        ["quiet/hearing"] = new("hearing-dose", ["quiet.seat_a_db"]),
        ["quiet/matches-the-main-speakers"] = new("joining", ["box.system_resonance_hz", "box.system_q"]),
        ["proof/resonance-as-designed"] = new("as-measured", [], ["box.system_resonance_hz"]),
        ["proof/q-as-designed"] = new("as-measured", [], ["box.system_q"]),
        ["proof/core-as-assumed"] = new("as-measured", []),
        ["proof/polarity-matches-the-main-speakers"] = new("polarity-against-join", []),
        ["proof/no-rattle"] = new("as-logged", []),
        ["logbook/plan-against-actual"] = new("plan-deviation", ["mass.finished_kg", "print.print_seconds", "cost.total_price"]),
    };

    /// <summary>Every trace, by the id of its finding.</summary>
    public static IReadOnlyDictionary<string, FindingTrace> All => ById;

    /// <summary>The same with the worst wall's and the worst band's own paths in place of the open ones.</summary>
    internal FindingTrace In(Facts facts) => this with { Value = [.. Value.Select(key => Closed(key, facts))] };

    private static string Closed(string key, Facts f)
    {
        if (
            key.StartsWith("walls[].", StringComparison.Ordinal)
            && (key.EndsWith("_hz", StringComparison.Ordinal) ? (f.WorstMode?.Panel, f.WorstMode?.Case) : (f.WorstSound?.Panel, f.WorstSound?.Case))
                is ({ } panel, { } which)
        )
        {
            return $"walls.{panel}.{(which is "bonded" or "slipping" ? which : "cut_core")}.{key["walls[].".Length..]}";
        }

        return
            key.StartsWith("quiet.bands[].", StringComparison.Ordinal)
            && f.Quiet.Bands.Where(b => b.OverDb is not null).MaxBy(b => b.OverDb + (b.UncertaintyDb ?? 0)) is { } band
            ? FormattableString.Invariant($"quiet.bands[{band.BandHz}].{key["quiet.bands[].".Length..]}")
            : key;
    }
}
