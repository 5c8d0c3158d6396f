using System.Globalization;

namespace Stillwall.Projects;

/// <summary>What is accepted of one number that a person states beside the project.</summary>
internal sealed record QuantityRange(Dimension Dimension, (double Least, double Greatest) Span)
{
    /// <summary>Whether only whole numbers are accepted.</summary>
    public bool IsWhole { get; init; }

    /// <summary>Unit of a number that is stated without one; null where one must be stated.</summary>
    public string? BareUnit { get; init; }

    /// <summary>What is accepted, in words.</summary>
    public string Accepted =>
        (BareUnit is { } unit ? $"a bare number in {unit}, or {Units.Accepted(Dimension)}" : Units.Accepted(Dimension)).Replace(
            "a bare number",
            IsWhole ? "a whole number" : "a bare number",
            StringComparison.Ordinal
        ) + $", {Units.Write(Span.Least, Dimension)} to {Units.Write(Span.Greatest, Dimension)}";

    /// <summary>True when the text is accepted.</summary>
    /// <param name="value">The value in SI, when the result is true.</param>
    /// <param name="fault">What is wrong and what is accepted, when the result is false.</param>
    public bool TryRead(string text, out double value, out string fault)
    {
        ArgumentNullException.ThrowIfNull(text);
        var isNumber = double.TryParse(text.Replace('\u2212', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
        if (Dimension == Dimension.None)
        {
            var isAccepted = isNumber && (!IsWhole || value == Math.Floor(value));
            fault = isAccepted ? "" : $"{Units.Shown(text)} is not {(IsWhole ? "a whole number" : "a number")}; {Accepted}";
        }
        else
        {
            _ = Units.TryRead(isNumber && BareUnit is { } unit ? $"{text} {unit}" : text, Dimension, out value, out fault);
        }

        fault = fault.Length == 0 && !(value >= Span.Least && value <= Span.Greatest) ? $"{Units.Shown(text)} is out of range; {Accepted}" : fault;
        return fault.Length == 0;
    }
}
