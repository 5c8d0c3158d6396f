using System.CommandLine;
using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Cli.Running;

/// <summary>An option with a quantity and its unit, or with a bare number.</summary>
internal sealed class QuantityOption : Option<string>
{
    internal QuantityOption(string name, Dimension dimension, string description)
        : base(name) => (HelpName, Description, Dimension) = (dimension == Dimension.None ? "NUMBER" : "QUANTITY", description, dimension);

    internal Dimension Dimension { get; }

    /// <summary>Whether only values above zero are accepted.</summary>
    internal bool IsPositive { get; init; }

    /// <summary>Whether only whole numbers are accepted.</summary>
    internal bool IsWhole { get; init; }

    /// <summary>Least and greatest accepted value, SI.</summary>
    internal (double Least, double Greatest)? Span { get; init; }

    /// <summary>Reads a value.</summary>
    /// <exception cref="Refusal">It is not what is accepted.</exception>
    internal double Read(string text)
    {
        var value = Dimension == Dimension.None ? Bare(text) : Units.TryRead(text, Dimension, out var si, out var fault) ? si : throw Refusal.Input($"{Name}: {fault}");
        if (IsPositive && !(value > 0))
        {
            throw Refusal.Input($"{Name}: \"{text}\" is not above zero; {Accepted}");
        }

        return Span is { } span && !(value >= span.Least && value <= span.Greatest) ? throw Refusal.Input($"{Name}: \"{text}\" is out of range; {Accepted}") : value;
    }

    /// <summary>What is accepted, in words.</summary>
    internal string Accepted => Units.Accepted(Dimension).Replace("a bare number", IsWhole ? "a whole number" : "a bare number", StringComparison.Ordinal)
        + (Span is { } span ? $", {Units.Write(span.Least, Dimension)} to {Units.Write(span.Greatest, Dimension)}" : IsPositive ? ", above 0" : "");

    private double Bare(string text)
    {
        var isNumber = double.TryParse(text.Replace('\u2212', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number);
        return isNumber && (!IsWhole || number == Math.Floor(number)) ? number : throw Refusal.Input($"{Name}: \"{text}\" is not {(IsWhole ? "a whole number" : "a number")}; {Accepted}");
    }
}
