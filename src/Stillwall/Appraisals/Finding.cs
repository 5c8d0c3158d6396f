namespace Stillwall.Appraisals;

/// <summary>What a finding says of the plan.</summary>
public enum Verdict
{
    /// <summary>With room to spare.</summary>
    Holds,

    /// <summary>Within the limit, but near it or in doubt.</summary>
    Tight,

    /// <summary>Something that is needed is not stated.</summary>
    Unknown,

    /// <summary>Past the limit.</summary>
    Fails,
}

/// <summary>One stated quantity and the value that would make a finding hold.</summary>
/// <param name="Key">Key of the project file.</param>
/// <param name="Value">The value as it stands in the file: a text with its unit, or a bare number.</param>
public sealed record Change(string Key, object Value);

/// <summary>One checked statement about the plan.</summary>
/// <param name="Id">Stage and topic in kebab case.</param>
/// <param name="Stage">Stage of the job.</param>
/// <param name="Topic">What is checked.</param>
/// <param name="Verdict">What came out.</param>
/// <param name="Value">The checked value in <paramref name="Unit"/>; null when unknown.</param>
/// <param name="Limit">The limit in <paramref name="Unit"/>; null when unknown.</param>
/// <param name="Unit">SI unit of value, limit and margin; <c>1</c> for a ratio.</param>
/// <param name="Margin">Distance to the limit, positive on the good side; null when unknown.</param>
/// <param name="Because">The number and the mechanism in one sentence, or what is missing.</param>
/// <param name="Remedy">The cheapest change that would make it hold, with its number; null where it holds or nothing stated helps.</param>
/// <param name="Change">That change as keys and values; empty where it is not a stated quantity.</param>
/// <param name="Basis">Source, "common practice" or "our choice".</param>
public sealed record Finding(
    string Id,
    string Stage,
    string Topic,
    Verdict Verdict,
    double? Value,
    double? Limit,
    string Unit,
    double? Margin,
    string Because,
    string? Remedy,
    IReadOnlyList<Change> Change,
    string Basis
);
