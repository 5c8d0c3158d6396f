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

    /// <summary>Whether only whole numbers are accepted.</summary>
    internal bool IsWhole { get; init; }

    /// <summary>Least and greatest accepted value, SI: far past what anybody needs, short of where numbers overflow (our choice).</summary>
    internal required (double Least, double Greatest) Span { get; init; }

    /// <summary>Reads a value.</summary>
    /// <exception cref="Refusal">It is not what is accepted.</exception>
    internal double Read(string text)
    {
        var value =
            Dimension == Dimension.None ? Bare(text)
            : Units.TryRead(text, Dimension, out var si, out var fault) ? si
            : throw Refusal.Input($"{Name}: {fault}");
        return value >= Span.Least && value <= Span.Greatest ? value : throw Refusal.Input($"{Name}: \"{text}\" is out of range; {Accepted}");
    }

    /// <summary>What is accepted, in words.</summary>
    internal string Accepted =>
        Units.Accepted(Dimension).Replace("a bare number", IsWhole ? "a whole number" : "a bare number", StringComparison.Ordinal)
        + $", {Units.Write(Span.Least, Dimension)} to {Units.Write(Span.Greatest, Dimension)}";

    private double Bare(string text)
    {
        var isNumber =
            double.TryParse(text.Replace('\u2212', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number);
        return isNumber && (!IsWhole || number == Math.Floor(number))
            ? number
            : throw Refusal.Input($"{Name}: \"{text}\" is not {(IsWhole ? "a whole number" : "a number")}; {Accepted}");
    }
}
