using System.CommandLine;
using Stillwall.Appraisals.Care;

namespace Stillwall.Cli.Running;

/// <summary>One verb: what it says of itself, and what it does.</summary>
internal sealed class Verb : Command
{
    internal Verb(string name, string summary, string example)
        : base(name, summary) => Example = example;

    /// <summary>One line that can be typed.</summary>
    internal string Example { get; }

    /// <summary>Step of the job for which it is called, of which its help says what to take care of.</summary>
    internal WorkStep? Step { get; init; }

    /// <summary>Does it; null for a verb that only holds others.</summary>
    internal Func<Invocation, int>? Do { get; init; }

    /// <summary>Its arguments, options and verbs, in the order of the help text.</summary>
    internal IEnumerable<Symbol> Takes
    {
        init
        {
            foreach (var symbol in value)
            {
                Take(symbol);
            }
        }
    }

    private void Take(Symbol symbol)
    {
        switch (symbol)
        {
            case Argument argument:
                Add(argument);
                break;
            case Option option:
                Add(option);
                break;
            case Command command:
                Add(command);
                break;
        }
    }
}

/// <summary>An option that is there or not.</summary>
internal sealed class Flag : Option<bool>
{
    internal Flag(string name, string description, params string[] aliases)
        : base(name, aliases) => (Description, Arity) = (description, ArgumentArity.Zero);
}

/// <summary>An option with a text: a name, a file.</summary>
internal class TextOption : Option<string>
{
    internal TextOption(string name, string shape, string description, IReadOnlyList<string>? words = null)
        : base(name) => (HelpName, Description, Words) = (shape, description, words);

    /// <summary>The words it may be; null where any text will do.</summary>
    internal IReadOnlyList<string>? Words { get; }
}

/// <summary>An option that names what is written: a file, or a folder for many. Nothing is delivered but by one of these.</summary>
internal sealed class OutputOption : TextOption
{
    internal OutputOption(string name, string shape, string description)
        : base(name, shape, description) { }
}

/// <summary>An argument of a verb.</summary>
internal sealed class TextArgument : Argument<string>
{
    internal TextArgument(string name, string description, bool isOptional = false)
        : base(name) => (Description, Arity) = (description, isOptional ? ArgumentArity.ZeroOrOne : ArgumentArity.ExactlyOne);
}
