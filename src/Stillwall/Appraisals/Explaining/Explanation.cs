namespace Stillwall.Appraisals.Explaining;

/// <summary>Where one result comes from.</summary>
/// <param name="Result">Path of the result in the appraisal, or id of a finding.</param>
/// <param name="Value">The result in <paramref name="Unit"/>; null where it is not known.</param>
/// <param name="Unit">SI unit; <c>1</c> for a ratio or a count.</param>
/// <param name="Formula">What it is and how it is computed, in one line.</param>
/// <param name="Inputs">What goes in: the direct inputs first, then the stated quantities that stand behind those which are results themselves.</param>
/// <param name="Basis">Source and accuracy.</param>
public sealed record Explanation(string Result, double? Value, string Unit, string Formula, IReadOnlyList<ExplainedInput> Inputs, string Basis);

/// <summary>One input of a result.</summary>
/// <param name="Key">Key of the project file, of the driver, or path of another result.</param>
/// <param name="Value">Its value: a number in SI or a word; null where it is not stated or is a list.</param>
/// <param name="Unit">SI unit of a number; <c>1</c> for a ratio, a count or a word.</param>
/// <param name="Sensitivity">
/// Relative change of the result for a relative change of the input, everything else as stated; null for results, words, whole numbers and zero, and where
/// the result does not exist on either side.
/// </param>
public sealed record ExplainedInput(string Key, object? Value, string Unit, double? Sensitivity);
