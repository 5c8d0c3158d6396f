using System.Reflection;
using Stillwall.Appraisals.Findings;
using Stillwall.Appraisals.Formulas;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Appraisals.Explaining;

/// <summary>Explains results: inputs, formula, source and what each input does to them.</summary>
public static class Why
{
    // The endings that are no suffix of a stated quantity, then those that are.
    private static readonly (string Ending, string Unit)[] Units =
    [
        ("_m_per_pa", "m/Pa"),
        ("_m_s", "m/s"),
        ("_pa_rms", "Pa"),
        ("_ms", "ms"),
        ("_nm", "N*m"),
        ("_mm", "mm"),
        ("_seconds", "s"),
        ("_days", "d"),
        ("_v", "V"),
        .. UnitSuffix.Table.Select(t => ($"_{UnderscoreNames.Of(t.Suffix)}", Projects.Units.SiName(t.Dimension))),
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
    /// Model: of the stated values that were read for the result each number is moved by 1 % either way, a temperature by 1 K, a count by one, a word to each
    /// other word, and the result computed anew, everything else as stated; what moves it by less than a millionth is left out. Validity: small changes.
    /// Source: central differences, Abramowitz and Stegun 1964, 25.3.21 (from memory). Accuracy: 0.1 % of smooth closed forms.
    /// </remarks>
    public static Explanation Of(Facts facts, string result) => Of(new Effects(facts ?? throw new ArgumentNullException(nameof(facts))), result);

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
        var effects = new Effects(facts);
        return [.. results.Select(result => Of(effects, result))];
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
        return OfFigure(
            facts,
            result,
            property,
            again is null ? null : f => again(f) is { } other ? ResultPath.Number(other.GetType().GetProperty(property)?.GetValue(other)) : null,
            beside
        );
    }

    /// <summary>What one per cent of a number that stands beside the project does, such as a size of a test bar.</summary>
    /// <param name="value">The number as it is stated.</param>
    /// <param name="result">The result for another number in its place; null where there is none.</param>
    /// <returns>Relative change of the result for a relative change of the number; null where either is zero or there is no result on one side.</returns>
    /// <remarks>
    /// Model: the number is moved by 1 % either way. Validity: small changes. Source: central differences, Abramowitz and Stegun 1964, 25.3.21 (from
    /// memory). Accuracy: 0.1 % of smooth closed forms.
    /// </remarks>
    public static double? Sensitivity(double value, Func<double, double?> result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return value == 0 ? null : Ratio(result(value * (1 - Movable.StepRatio)), result(value), result(value * (1 + Movable.StepRatio)));
    }

    /// <summary>The same, where the one figure alone is computed anew.</summary>
    internal static Explanation OfFigure(Facts facts, object result, string property, Func<Facts, double?>? again, IReadOnlyList<ExplainedInput>? beside = null)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (result.GetType().GetProperty(property) is not { } held || held.GetCustomAttribute<ComputedByAttribute>() is not { } computed)
        {
            throw new ArgumentException($"{property}: names no formula", nameof(property));
        }

        var found = new FoundResult(UnderscoreNames.Of(property), ResultPath.Number(held.GetValue(result)), result, held);
        ExplainedInput? Beside(string key) => beside?.FirstOrDefault(i => i.Key == key);
        var declared = computed
            .Inputs.Select(key => Beside(key) ?? OfResult(facts, found.Path, key) ?? (again is null ? AsStated(facts, key) : null))
            .OfType<ExplainedInput>();
        var stated = again is null ? [] : new Effects(facts).On(again, UnitOf(found, facts) == "dB");
        return Told(found.Path, found, facts, computed, [.. declared, .. stated.Where(s => beside?.Any(b => b.Key == s.Key) != true)]);
    }

    /// <summary>Names of all results that can be explained: numbers of the appraisal, then the findings.</summary>
    /// <param name="facts">The project's facts.</param>
    /// <returns>Paths and ids.</returns>
    /// <remarks>Source: as the appraisal.</remarks>
    public static IReadOnlyList<string> Results(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return [.. ResultPath.All(facts), .. AllFindings.Rules.Select(r => r.Id), .. AllFindings.Rules.SelectMany(r => FindingPath.Known(r, facts))];
    }

    /// <summary>One number of the appraisal or of a finding, without its explanation.</summary>
    /// <param name="facts">The project's facts.</param>
    /// <param name="result">Its path or id, as <see cref="Of(Facts, string)"/> takes it.</param>
    /// <returns>The number; null where it is not known or there is none of that name.</returns>
    /// <remarks>Source: as the appraisal.</remarks>
    public static double? ValueOf(Facts facts, string result)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(result);
        return FindingPath.Find(result) is { } asked ? asked.Of(asked.Rule.Judge(facts)) : ResultPath.Find(facts, result)?.Value;
    }

    private static Explanation Of(Effects effects, string result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var facts = effects.Facts;
        if (FindingPath.Find(result) is { } asked)
        {
            return OfFinding(effects, result, asked);
        }

        var found =
            ResultPath.Find(facts, result)
            ?? throw new ArgumentException($"{result}: no such result{NearestWord.Suggest(result, Results(facts))}", nameof(result));
        var unit = UnitOf(found, facts);
        var stated = effects.On(f => ValueOf(f, result), unit == "dB");
        if (found.ComputedBy is not { } computed)
        {
            var basis = found.Owner is Neighbours.QuietBand ? "nominal third-octaves, IEC 61260-1:2014" : "our choice of points";
            return new Explanation(result, found.Value, unit, "names its line; nothing is computed", stated, basis);
        }

        return Told(result, found, facts, computed, [.. OfResults(facts, found.Path, computed.Inputs), .. stated]);
    }

    private static Explanation Told(string result, FoundResult found, Facts facts, ComputedByAttribute computed, IReadOnlyList<ExplainedInput> inputs)
    {
        var formula = FormulaCatalogue.Find(computed.Formula) ?? throw new InvalidOperationException($"{computed.Formula}: no such formula");
        return new Explanation(
            result,
            found.Value,
            UnitOf(found, facts),
            $"{formula.Name}: {formula.Expression}",
            inputs,
            $"{formula.Source}; accuracy: {formula.Accuracy}"
        );
    }

    private static Explanation OfFinding(Effects effects, string result, FindingPath asked)
    {
        var (rule, facts) = (asked.Rule, effects.Facts);
        var judged = rule.Judge(facts);
        var trace = rule.Trace.In(facts);
        var formula = FormulaCatalogue.Find(
            asked.Which switch
            {
                "limit" => FindingFormulas.Limit,
                "margin" => FindingFormulas.Margin,
                _ => trace.Formula,
            }
        )!;
        IReadOnlyList<string> declared = asked.Which switch
        {
            "limit" => trace.Limit,
            "margin" => [.. trace.Value, .. trace.Limit],
            _ => trace.Value,
        };
        IEnumerable<ExplainedInput> ends =
            asked.Which != "margin"
                ? []
                :
                [
                    new(FindingPath.Named(rule, "value"), judged.Value, judged.Unit, null),
                    new(FindingPath.Named(rule, "limit"), judged.Limit, judged.Unit, null),
                ];
        var stated = effects.On(f => asked.Of(rule.Judge(f)), judged.Unit == "dB");
        return new Explanation(
            result,
            asked.Of(judged),
            judged.Unit,
            $"{formula.Name}: {formula.Expression}; {rule.Topic}: {judged.Because}",
            [.. ends, .. OfResults(facts, "findings", declared), .. stated],
            $"{rule.Basis}; formula: {formula.Source}; accuracy: {formula.Accuracy}"
        );
    }

    private static double? Ratio(double? low, double? middle, double? high) =>
        (high - low) / middle / (2 * Movable.StepRatio) is { } ratio && double.IsFinite(ratio) ? ratio : null;

    private static IEnumerable<ExplainedInput> OfResults(Facts facts, string path, IReadOnlyList<string> keys) =>
        keys.Select(key => OfResult(facts, path, key)).OfType<ExplainedInput>();

    private static ExplainedInput? OfResult(Facts facts, string path, string key) =>
        ResultPath.Find(facts, Spelt(path, key)) is { } other ? new ExplainedInput(Spelt(path, key), other.Value, UnitOf(other, facts), null)
        : key.Contains("[]", StringComparison.Ordinal) ? new ExplainedInput(key, null, "1", null)
        : null;

    // What is stated where nothing can be computed anew, as beside a recording.
    private static ExplainedInput? AsStated(Facts facts, string key) =>
        Movable.Of(facts).FirstOrDefault(m => m.Key == key) is { } stated ? new ExplainedInput(key, stated.Shown, StatedUnit(key), null) : null;

    /// <summary>The coherent unit of a key's kind; a price or a budget is in the project's currency and a bare number in the file.</summary>
    internal static string StatedUnit(string key) =>
        ProjectKeys.Find(key) is { } field ? Projects.Units.SiName(field.Dimension) : "1";

    // An open bracket stands for the line that the result is in.
    private static string Spelt(string path, string key)
    {
        var open = key.IndexOf("[]", StringComparison.Ordinal);
        var list = open < 0 ? "" : key[..open] + "[";
        return open >= 0 && path.StartsWith(list, StringComparison.Ordinal)
            ? list + path[list.Length..path.IndexOf(']', list.Length)] + "]" + key[(open + 2)..]
            : key;
    }

    private static string UnitOf(FoundResult found, Facts facts)
    {
        var name = UnderscoreNames.Of(found.Property.Name);
        return found.Owner is SupplyLists.SupplyLine line && !name.StartsWith("price", StringComparison.Ordinal) ? line.Unit
            : name.Contains("price", StringComparison.Ordinal) ? facts.Project.Currency
            : Units.FirstOrDefault(u => ("_" + name).EndsWith(u.Ending, StringComparison.Ordinal)) is { Unit: { } unit } ? unit
            : "1";
    }
}
