namespace Stillwall.Appraisals.Findings;

/// <summary>Which way a stated quantity is moved in search of a remedy.</summary>
internal enum Toward
{
    /// <summary>To greater values.</summary>
    More,

    /// <summary>To smaller values.</summary>
    Less,

    /// <summary>Both ways; the nearer that helps is taken.</summary>
    Either,

    /// <summary>Down to a common greatest value: of several keys only those that are past it move.</summary>
    Capped,
}

/// <summary>A stated quantity that may mend a finding.</summary>
/// <param name="Key">Key of the project file, stated or with a default; several joined by + are moved by the same amount, or to the same cap.</param>
/// <param name="Step">Grid on which a value is offered, SI.</param>
/// <param name="Words">What to do, with <c>{new}</c> and <c>{old}</c> where the values go.</param>
internal sealed record Lever(string Key, Toward Toward, double Step, string Words)
{
    /// <summary>The keys that are moved together.</summary>
    internal IReadOnlyList<string> Keys { get; } = Key.Split('+');

    /// <summary>Whether moving it gives up something that is wished for, which comes after every change of the plan itself.</summary>
    internal bool GivesUp =>
        Key.StartsWith("brief.aim.", StringComparison.Ordinal) || Key.StartsWith("brief.everyday.", StringComparison.Ordinal) || Key == "budget";
}

/// <summary>One row of what an appraisal judges: a pure function of everything computed, and the quantities that may mend it.</summary>
/// <param name="Basis">Source, "common practice" or "our choice".</param>
/// <param name="Trace">The formula of its value, and the results behind value and limit.</param>
/// <param name="Levers">Quantities that may mend it, the cheapest first.</param>
internal sealed record FindingRule(string Stage, string Topic, string Basis, FindingTrace Trace, Func<Facts, Judgement> Judge, params Lever[] Levers)
{
    /// <summary>
    /// Values that follow from the figures themselves, where several quantities must move by different amounts; takes the room to spare, m. They are tried
    /// like every other change.
    /// </summary>
    internal Func<Facts, double, IReadOnlyList<(string Key, double Value)>>? Direct { get; init; }

    /// <summary>Stage and topic in kebab case.</summary>
    internal string Id { get; } = $"{Kebab(Stage)}/{Kebab(Topic)}";

    /// <summary>Judges a plan and seeks no remedy.</summary>
    internal Finding Of(Facts facts)
    {
        var j = Judge(facts);
        return new Finding(
            Id: Id,
            Stage: Stage,
            Topic: Topic,
            Verdict: j.Verdict,
            Value: j.Value,
            Limit: j.Limit,
            Unit: j.Unit,
            Margin: j.Margin,
            Because: j.Because,
            Remedy: j.Remedy,
            Change: [],
            Basis: Basis
        );
    }

    private static string Kebab(string words) =>
        string.Join(
            '-',
            new string([.. words.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries)
        );
}
