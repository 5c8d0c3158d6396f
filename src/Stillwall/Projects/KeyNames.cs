namespace Stillwall.Projects;

/// <summary>What a key of the project file means, in the words a maker knows: a sentence names the thing, and the key in brackets.</summary>
internal static class KeyNames
{
    // What the rule below would put badly. The rule: "brief.amplifier.power" is the "power of the amplifier".
    private static readonly Dictionary<string, string> Said = new(StringComparer.Ordinal)
    {
        ["budget"] = "your budget",
        ["pour_date"] = "day of the pour",
        ["stock"] = "what is on the shelf",
        ["prices"] = "prices",
        ["driver"] = "driver",
        ["brief.spot"] = "spot where the cabinet will stand",
        ["brief.aim"] = "what you want to hear",
        ["brief.aim.lowest"] = "lowest note",
        ["brief.aim.crossover"] = "crossover to the main speakers",
        ["brief.aim.level"] = "level at the lowest note",
        ["brief.everyday"] = "everyday level",
        ["brief.everyday.level"] = "everyday level",
        ["brief.everyday.hours"] = "hours of listening a day",
        ["brief.everyday.quiet_hours.level"] = "level in the quiet hours",
        ["brief.amplifier.power"] = "power of the amplifier",
        ["brief.amplifier.rated_load"] = "load at which the amplifier's power is rated",
        ["brief.amplifier.minimum_load"] = "minimum load of the amplifier",
        ["brief.main_speakers.corner"] = "lower corner of the main speakers",
        ["brief.printer.flow_mm3_s"] = "flow of the printer",
        ["brief.room.cabinet_at"] = "place of the cabinet in the room",
        ["brief.room.seat_at"] = "place of your seat in the room",
        ["brief.neighbour"] = "wall to the neighbour",
        ["brief.neighbour.partition"] = "kind of wall to the neighbour",
        ["brief.neighbour.area"] = "area of the wall to the neighbour",
        ["brief.neighbour.room_volume"] = "volume of the neighbour's room",
        ["brief.neighbour.decay_time"] = "decay time of the neighbour's room",
        ["brief.neighbour.curve"] = "level that may be heard next door",
        ["brief.neighbour.leaf"] = "mass by area of the wall to the neighbour",
        ["brief.neighbour.second_leaf"] = "mass by area of the wall's other leaf",
        ["brief.neighbour.gap"] = "gap between the leaves of the wall to the neighbour",
        ["cabinet.outside"] = "outside size, skins and core of the cabinet",
        ["cabinet.fill.mass"] = "mass of the fill",
        ["materials.skin"] = "plastic of the skins",
        ["materials.cast.mix"] = "mix of the cast",
        ["materials.cast.bucket"] = "size of the mixing bucket",
        ["materials.cast.hold_down"] = "weight that holds the inner sleeve down",
        ["driver.cutout"] = "cut-out of the driver",
        ["driver.bolt"] = "screw size of the driver",
        ["driver.xmax"] = "Xmax of the driver",
        ["measured.system_resonance"] = "resonance of the finished cabinet",
        ["measured.system_q"] = "Q of the finished cabinet",
        ["measured.core_modulus"] = "modulus of the cast's test bar",
        ["measured.core_loss_factor"] = "loss factor of the cast's test bar",
        ["measured.core_density"] = "density of the cast's test bar",
        ["measured.fill_factor"] = "fill factor",
        ["measured.leak_resistance"] = "leak of the finished cabinet",
        ["measured.party_wall"] = "level difference through the wall to the neighbour",
        ["measured.polarity"] = "polarity against the main speakers",
        ["box.effective_volume_m3"] = "a net volume with air left in it",
    };

    private const string NotStated = "not stated yet: ",
        NotMeasured = "not measured yet: ";

    private static readonly string[] Begins = [NotStated, NotMeasured];

    // Trade symbols keep their letters.
    private static readonly string[] Symbols = ["Re", "Le", "Qms", "Qes", "Qts", "Vas", "Sd", "Bl", "Mms", "Cms", "Rms", "Q"];

    /// <summary>What a key means, in words.</summary>
    /// <returns>Words without an article, such as "lowest note".</returns>
    public static string Of(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (Said.TryGetValue(key, out var said))
        {
            return said;
        }

        var parts = key.Split('.');
        return parts.Length == 1 || (parts.Length == 2 && parts[0] == "brief") ? Plain(parts[^1]) : $"{Plain(parts[^1])} of the {Plain(parts[^2])}";
    }

    /// <summary>Says that something is not stated yet.</summary>
    /// <param name="missing">The key that is missing; or a reason in words, which is left as it is.</param>
    /// <returns>A sentence without a full stop: what is missing, and its key in brackets.</returns>
    public static string Missing(string missing)
    {
        ArgumentNullException.ThrowIfNull(missing);
        return missing.Contains(' ', StringComparison.Ordinal) ? missing : Missing([missing]);
    }

    /// <summary>Says that some things are not stated yet.</summary>
    /// <returns>A sentence without a full stop: what is missing, each with its key in brackets; nothing where nothing is.</returns>
    public static string Missing(IReadOnlyList<string> keys)
    {
        ArgumentNullException.ThrowIfNull(keys);
        return string.Join(
            "; ",
            keys.GroupBy(k => k.StartsWith("measured.", StringComparison.Ordinal) ? NotMeasured : NotStated)
                .Select(g => g.Key + string.Join(", ", g.Select(k => Of(k) == k ? k : $"{Of(k)} ({k})")))
        );
    }

    /// <summary>Puts several reasons into one sentence, so that nothing is said twice.</summary>
    /// <param name="reasons">Sentences without a full stop, as <see cref="Missing(string)"/> gives them or in other words.</param>
    /// <returns>One sentence without a full stop: what is not stated yet, what is not measured yet, the rest.</returns>
    public static string Together(IEnumerable<string> reasons)
    {
        ArgumentNullException.ThrowIfNull(reasons);
        return string.Join(
            "; ",
            reasons
                .Distinct(StringComparer.Ordinal)
                .GroupBy(r => Begins.FirstOrDefault(b => r.StartsWith(b, StringComparison.Ordinal)) ?? r)
                .Select(g => Begins.Contains(g.Key) ? g.Key + string.Join(", ", g.Select(r => r[g.Key.Length..])) : g.Key)
        );
    }

    /// <summary>A driver's parameter by its trade symbol.</summary>
    /// <param name="parameter">Last part of its key, such as <c>bl</c>.</param>
    /// <returns>The symbol, such as Bl; any other word as it is.</returns>
    public static string Symbol(string parameter) => Symbols.FirstOrDefault(s => s.Equals(parameter, StringComparison.OrdinalIgnoreCase)) ?? parameter;

    private static string Plain(string part) => Symbol(part).Replace('_', ' ');
}
