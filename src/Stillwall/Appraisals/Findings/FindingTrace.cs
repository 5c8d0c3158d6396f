namespace Stillwall.Appraisals.Findings;

/// <summary>By which formula a finding's value was computed, and which other results went in; what is stated is found, not told here.</summary>
/// <param name="Formula">Id of the formula of the value.</param>
/// <param name="Value">Paths of the results that go into the value; <c>walls[]</c> and <c>quiet.bands[]</c> stand for the worst of them.</param>
/// <param name="Limit">Paths of the results that go into the limit.</param>
internal sealed record FindingTrace(string Formula, IReadOnlyList<string> Value, IReadOnlyList<string> Limit)
{
    internal FindingTrace(string formula, params IReadOnlyList<string> value)
        : this(formula, value, []) { }

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
