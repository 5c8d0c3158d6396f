using System.CommandLine;
using System.Text;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Output;

/// <summary>What a verb says of itself.</summary>
internal static class HelpText
{
    internal static string Of(Command command, IReadOnlyList<Option> everywhere, int width)
    {
        var text = new StringBuilder();
        var path = ParseFaults.Path(command);
        text.Append(Words.Wrapped($"{path}: {command.Description}", width)).Append("\n\n");
        text.Append($"Usage: {path}{Usage(command)}\n");
        Section(text, "Verbs", command.Subcommands.Select(c => (c.Name, c.Description ?? "")), width);
        Section(text, "Arguments", command.Arguments.Select(a => (a.Name, a.Description ?? "")), width);
        Section(text, "Options", command.Options.Where(o => !everywhere.Contains(o)).Concat(everywhere).Select(o => (Shape(o), o.Description ?? "")), width);
        if (command is Verb { Step: { } step })
        {
            text.Append($"\nTake care:\n{CareText.At(step, null, width, 2)}");
        }

        if (command is Verb { Example: var example })
        {
            text.Append($"\nExample: {example}\n");
        }
        else if (command.Subcommands.Count > 0)
        {
            text.Append($"\nExample: {path} start my-cabinet --demo, then {path} appraise my-cabinet\n");
        }

        return text.ToString();
    }

    private static string Usage(Command command)
    {
        var words = command.Subcommands.Count > 0 ? " VERB" : "";
        words += string.Concat(command.Arguments.Select(a => a.Arity.MinimumNumberOfValues == 0 ? $" [{a.Name}]" : $" {a.Name}"));
        return words + " [options]";
    }

    private static string Shape(Option option)
    {
        var names = string.Join(", ", option.Aliases.Where(a => a.Length == 2 && a != "-?").Append(option.Name));
        return option.Arity.MaximumNumberOfValues == 0 ? names : $"{names} {option.HelpName}";
    }

    private static void Section(StringBuilder text, string title, IEnumerable<(string Name, string Says)> entries, int width)
    {
        var all = entries.ToList();
        if (all.Count == 0)
        {
            return;
        }

        text.Append($"\n{title}:\n");
        var column = all.Max(e => e.Name.Length) + 4;
        foreach (var (name, says) in all)
        {
            text.Append("  ").Append(name.PadRight(column - 2)).Append(Words.Wrapped(says, width, column, column)).Append('\n');
        }
    }
}
