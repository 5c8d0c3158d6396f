using System.CommandLine;
using Stillwall.Projects;

namespace Stillwall.Cli.Running;

/// <summary>An option with a quantity and its unit, or with a bare number.</summary>
internal sealed class QuantityOption : Option<string>
{
    private readonly Dimension dimension;

    internal QuantityOption(string name, Dimension dimension, string description)
        : base(name) => (HelpName, Description, this.dimension) = (dimension == Dimension.None ? "NUMBER" : "QUANTITY", description, dimension);

    /// <summary>Whether only whole numbers are accepted.</summary>
    internal bool IsWhole { get; init; }

    /// <summary>Least and greatest accepted value, SI: far past what anybody needs, short of where numbers overflow (our choice).</summary>
    internal required (double Least, double Greatest) Span { get; init; }

    private QuantityRange Range => new(dimension, Span) { IsWhole = IsWhole };

    /// <summary>Reads a value.</summary>
    /// <exception cref="Refusal">It is not what is accepted.</exception>
    internal double Read(string text) => Range.TryRead(text, out var value, out var fault) ? value : throw Refusal.Input($"{Name}: {fault}");

    /// <summary>What is accepted, in words.</summary>
    internal string Accepted => Range.Accepted;
}
