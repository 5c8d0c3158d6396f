using System.Globalization;
using System.Reflection;
using Stillwall.Appraisals.Findings;
using Stillwall.Appraisals.Formulas;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Explaining;

/// <summary>Explains results: inputs, formula, source and what each input does to them.</summary>
public static class Why
{
    private static readonly (string Ending, string Unit)[] Units =
    [
        ("_pa_s_m3", "Pa*s/m3"), ("_kg_m3", "kg/m3"), ("_kg_m2", "kg/m2"), ("_m_per_pa", "m/Pa"), ("_n_per_m", "N/m"), ("_t_m", "N/A"), ("_m_s", "m/s"), ("_pa_rms", "Pa"), ("_ms", "ms"), ("_nm", "N*m"), ("_mm", "mm"), ("_m3", "m3"), ("_m2", "m2"), ("_kg", "kg"), ("_hz", "Hz"), ("_db", "dB"), ("_pa", "Pa"),
        ("_ohm", "ohm"), ("_h", "H"), ("_seconds", "s"), ("_days", "d"), ("_deg", "deg"), ("_m", "m"), ("_s", "s"), ("_w", "W"), ("_v", "V"), ("_n", "N"), ("_c", "degC"), ("_k", "K"),
    ];

    /// <summary>Explains one number of the appraisal.</summary>
    /// <param name="facts">The project's facts.</param>
    /// <param name="result">
    /// Its path in the machine-readable appraisal, lines of lists by name or index (<c>box.system_q</c>, <c>walls.front.bonded.first_mode_hz</c>,
    /// <c>quiet.bands[63].neighbour_db</c>), or the id of a finding for its value;
    /// <c>findings["pour/skins-bulge"].limit</c> and <c>.margin</c> for the two others.
    /// </param>
    /// <returns>The explanation.</returns>
    /// <exception cref="ArgumentException">There is no such result; the message names the nearest.</exception>
    /// <remarks>
    /// Model: each stated number is moved by 1 % either way and the result computed anew, everything else as stated; a driver's parameter within its own set
    /// (fs, Qms, Qes, Vas or Bl, Mms, Cms, Rms, with Re and Sd). Validity: small changes; a result in steps has none. Source: central differences, any numerical textbook.
    /// Accuracy: 0.1 % of smooth closed forms.
    /// </remarks>
    public static Explanation Of(Facts facts, string result) => Of(new MovedFacts(facts ?? throw new ArgumentNullException(nameof(facts))), result);

    /// <summary>Explains many numbers at once, sharing what was computed for each moved input.</summary>
    /// <param name="facts">The project's facts.</param>
    /// <param name="results">Their paths or ids.</param>
    /// <returns>The explanations in the same order.</returns>
    /// <exception cref="ArgumentException">There is no such result; the message names the nearest.</exception>
    /// <remarks>Source: as for one result.</remarks>
    public static IReadOnlyList<Explanation> Of(Facts facts, IEnumerable<string> results)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(results);
        var moved = new MovedFacts(facts);
        return [.. results.Select(result => Of(moved, result))];
    }

    /// <summary>Explains one figure of a result that stands beside the appraisal, such as a kind of wall or what a recording showed.</summary>
    /// <param name="facts">The facts that it was computed from or compared with.</param>
    /// <param name="result">The record that holds the figure.</param>
    /// <param name="property">Name of its property, which names its formula.</param>
    /// <param name="again">Computes the record anew from changed facts, for the effect of one per cent; null where that is not asked for.</param>
    /// <param name="beside">What was stated beside it, by the keys that the formula's inputs have, such as the resistor of a recording.</param>
    /// <returns>The explanation.</returns>
    /// <exception cref="ArgumentException">The property names no formula.</exception>
    /// <remarks>Source: as for one result of the appraisal.</remarks>
    public static Explanation Of(Facts facts, object result, string property, Func<Facts, object?>? again = null, IReadOnlyList<ExplainedInput>? beside = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        return OfFigure(facts, result, property, again is null ? null : f => again(f) is { } other ? ResultPath.Number(other.GetType().GetProperty(property)?.GetValue(other)) : null, beside);
    }

    /// <summary>What one per cent of a number that stands beside the project does, such as a size of a test bar.</summary>
    /// <param name="value">The number as it is stated.</param>
    /// <param name="result">The result for another number in its place; null where there is none.</param>
    /// <returns>Relative change of the result for a relative change of the number; null where either is zero or there is no result on one side.</returns>
    /// <remarks>Model: the number is moved by 1 % either way. Validity: small changes. Source: central differences, any numerical textbook. Accuracy: 0.1 % of smooth closed forms.</remarks>
    public static double? Sensitivity(double value, Func<double, double?> result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return value == 0 ? null : MovedFacts.Ratio(result(value * (1 - MovedFacts.StepRatio)), result(value), result(value * (1 + MovedFacts.StepRatio)));
    }

    /// <summary>The same, where the one figure alone is computed anew.</summary>
    internal static Explanation OfFigure(Facts facts, object result, string property, Func<Facts, double?>? again, IReadOnlyList<ExplainedInput>? beside = null)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (result.GetType().GetProperty(property) is not { } held || held.GetCustomAttribute<ComputedByAttribute>() is not { } computed)
        {
            throw new ArgumentException($"{property}: names no formula", nameof(property));
        }

        var moved = new MovedFacts(facts);
        var found = new FoundResult(ResultPath.Snake(property), ResultPath.Number(held.GetValue(result)), result, held);
        ExplainedInput Input(string key) => beside?.FirstOrDefault(i => i.Key == key)
            ?? Explained(moved, key, f => again?.Invoke(f));
        return Told(found.Path, found, facts, computed, [.. Inputs(moved, found.Path, computed.Inputs).Select(Input)]);
    }

    /// <summary>Names of all results that can be explained: numbers of the appraisal, then the findings.</summary>
    /// <param name="facts">The project's facts.</param>
    /// <returns>Paths and ids.</returns>
    /// <remarks>Source: the appraisal's own records.</remarks>
    public static IReadOnlyList<string> Results(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return [.. ResultPath.All(facts), .. AllFindings.Rules.Select(r => r.Id), .. AllFindings.Rules.SelectMany(r => FindingPath.Known(r, facts))];
    }

    private static Explanation Of(MovedFacts moved, string result)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (FindingPath.Find(result) is { } asked)
        {
            return OfFinding(moved, result, asked);
        }

        var found = ResultPath.Find(moved.Facts, result)
            ?? throw new ArgumentException($"{result}: no such result{NearestWord.Suggest(result, Results(moved.Facts))}", nameof(result));
        if (found.ComputedBy is not { } computed)
        {
            return new Explanation(result, found.Value, UnitOf(found, moved.Facts), "names its line; nothing is computed", [], found.Owner is Neighbours.QuietBand ? "nominal third-octaves, IEC 61260-1:2014" : "our choice of points");
        }

        var inputs = Inputs(moved, found.Path, computed.Inputs).Select(key => Explained(moved, key, f => ResultPath.Find(f, found.Path)?.Value));
        return Told(result, found, moved.Facts, computed, [.. inputs]);
    }

    private static Explanation Told(string result, FoundResult found, Facts facts, ComputedByAttribute computed, IReadOnlyList<ExplainedInput> inputs)
    {
        var formula = FormulaCatalogue.Find(computed.Formula) ?? throw new InvalidOperationException($"{computed.Formula}: no such formula");
        return new Explanation(result, found.Value, UnitOf(found, facts), $"{formula.Name}: {formula.Expression}", inputs, $"{formula.Source}; accuracy: {formula.Accuracy}");
    }

    private static Explanation OfFinding(MovedFacts moved, string result, FindingPath asked)
    {
        var rule = asked.Rule;
        var judged = rule.Judge(moved.Facts);
        var trace = FindingTrace.All[rule.Id].In(moved.Facts);
        var formula = FormulaCatalogue.Find(asked.Which switch { "limit" => FindingFormulas.Limit, "margin" => FindingFormulas.Margin, _ => trace.Formula })!;
        IReadOnlyList<string> declared = asked.Which switch { "limit" => trace.Limit, "margin" => [.. trace.Value, .. trace.Limit], _ => trace.Value };
        IEnumerable<ExplainedInput> ends = asked.Which == "margin" ? [new(FindingPath.Named(rule, "value"), judged.Value, judged.Unit, null), new(FindingPath.Named(rule, "limit"), judged.Limit, judged.Unit, null)] : [];
        // A parameter is moved within its own set, the others following: what the sheet prints twice can then no longer disagree.
        var isMoved = trace.Formula != "parameter-mismatch" || asked.Which == "limit";
        var inputs = Inputs(moved, "findings", declared).Select(key => Explained(moved, key, f => asked.Of(rule.Judge(f)))).Select(i => isMoved ? i : i with { Sensitivity = null });
        return new Explanation(
            result, asked.Of(judged), judged.Unit, $"{formula.Name}: {formula.Expression}; {rule.Topic}: {judged.Because}", [.. ends, .. inputs],
            $"{rule.Basis}; formula: {formula.Source}; accuracy: {formula.Accuracy}");
    }

    private static ExplainedInput Explained(MovedFacts moved, string key, Func<Facts, double?> result) =>
        ResultPath.Find(moved.Facts, key) is { } other
            ? new ExplainedInput(key, other.Value, UnitOf(other, moved.Facts), null)
            : new ExplainedInput(key, Plain(moved.ValueOf(key)), StatedUnit(key), moved.Sensitivity(key, result));

    // The coherent unit of its kind; a price or a budget is in the project's currency and a bare number in the file.
    private static string StatedUnit(string key) => ProjectKeys.Find(key) is { Dimension: not Dimension.None and var dimension }
        ? Projects.Units.Of(dimension).First(u => u is { Factor: 1, Offset: 0 }).Name
        : "1";

    private static object? Plain(object? value) => value switch
    {
        double or int or string => value,
        DateOnly date => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        _ => null,
    };

    // Keys that say nothing to whoever does not want what they ask for.
    private static readonly string[] OptIn = ["cabinet.openings.recess", "cabinet.openings.drying_hole"];

    // The direct inputs, then the stated numbers behind those that are results.
    private static IReadOnlyList<string> Inputs(MovedFacts moved, string path, IReadOnlyList<string> declared)
    {
        var direct = declared.SelectMany(key => Spelt(moved, path, key)).Where(key => !OptIn.Contains(key) || moved.ValueOf(key) is not null).ToList();
        var all = new List<string>(direct);
        for (var i = 0; i < all.Count; i++)
        {
            // Of a list as a whole its first line tells what stands behind it.
            if (ResultPath.Find(moved.Facts, all[i].Replace("[]", "[0]", StringComparison.Ordinal)) is { ComputedBy: { } deeper } found)
            {
                all.AddRange(deeper.Inputs.SelectMany(key => Spelt(moved, found.Path, key)).Where(key => !all.Contains(key)).ToList());
            }
        }

        return [.. all.Where((key, i) => i < direct.Count || moved.ValueOf(key) is double).Distinct()];
    }

    // A block stands for its stated numbers; an open bracket for the line that the result is in.
    private static IEnumerable<string> Spelt(MovedFacts moved, string path, string key)
    {
        var open = key.IndexOf("[]", StringComparison.Ordinal);
        if (open >= 0)
        {
            var list = key[..open] + "[";
            return path.StartsWith(list, StringComparison.Ordinal) ? [list + path[list.Length..path.IndexOf(']', list.Length)] + "]" + key[(open + 2)..]] : [key];
        }

        return ProjectKeys.Find(key) is { Kind: FieldKind.Block, Block: { } block }
            ? block.Fields.Select(f => $"{key}.{f.Key}").Where(k => moved.ValueOf(k) is double or int or string && !k.EndsWith(".note", StringComparison.Ordinal))
            : [key];
    }

    private static string UnitOf(FoundResult found, Facts facts)
    {
        var name = ResultPath.Snake(found.Property.Name);
        return found.Owner is SupplyLists.SupplyLine line && !name.StartsWith("price", StringComparison.Ordinal) ? line.Unit
            : name.Contains("price", StringComparison.Ordinal) ? facts.Project.Currency
            : Units.FirstOrDefault(u => ("_" + name).EndsWith(u.Ending, StringComparison.Ordinal)) is { Unit: { } unit } ? unit : "1";
    }
}
