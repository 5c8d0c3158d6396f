namespace Stillwall.Appraisals.Explaining;

/// <summary>Where one result comes from.</summary>
/// <param name="Result">Path of the result in the appraisal, or id of a finding.</param>
/// <param name="Value">The result in <paramref name="Unit"/>; null where it is not known.</param>
/// <param name="Unit">SI unit; <c>1</c> for a ratio or a count.</param>
/// <param name="Formula">What it is and how it is computed, in one line.</param>
/// <param name="Inputs">What goes in: other results first, then every stated value that moves it, the strongest first.</param>
/// <param name="Basis">Source and accuracy.</param>
public sealed record Explanation(string Result, double? Value, string Unit, string Formula, IReadOnlyList<ExplainedInput> Inputs, string Basis);

/// <summary>One input of a result.</summary>
/// <param name="Key">Key of the project file, of the driver, or path of another result.</param>
/// <param name="Value">Its value: a number in SI or a word; null where it is not stated or is a list.</param>
/// <param name="Unit">SI unit of a number; <c>1</c> for a ratio, a count or a word.</param>
/// <param name="Sensitivity">
/// Relative change of the result for a relative change of the input, everything else as stated; for a result in dB its change in dB for one per cent of the
/// input. Null for results, words, whole numbers, dates, zero and temperatures, for a result in steps, and where the result does not exist on either side.
/// </param>
/// <param name="Acts">How it acts; null for other results, and for what was stated beside the project.</param>
public sealed record ExplainedInput(string Key, object? Value, string Unit, double? Sensitivity, Acting? Acts = null);

/// <summary>How a stated value acts on a result.</summary>
public enum Acting
{
    /// <summary>A little more of it moves the result a little.</summary>
    Smooth,

    /// <summary>The result goes in steps, as with a count, a word, a pitch or a bucket.</summary>
    Steps,

    /// <summary>A bound that the result does not reach now.</summary>
    Inactive,
}
