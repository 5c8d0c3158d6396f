using System.CommandLine;
using System.CommandLine.Parsing;
using Stillwall.Projects;

namespace Stillwall.Cli.Running;

/// <summary>What is wrong with a command line, in one line with what was probably meant.</summary>
internal static class ParseFaults
{
    /// <summary>The first fault; null where there is none.</summary>
    internal static string? Of(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        var path = Path(command);
        return Directive(parsed, path)
            ?? Unmatched(parsed, command, path)
            ?? Disguised(parsed, command, path)
            ?? parsed.Errors.Select(e => Told(e, path)).FirstOrDefault();
    }

    // The parser knows words in brackets that act on itself; here they are no more than mistyped verbs.
    private static string? Directive(ParseResult parsed, string path) =>
        parsed.Tokens.FirstOrDefault(t => t.Type == TokenType.Directive) is { } token ? $"{path}: \"{token.Value}\" is not a verb; see {path} --help" : null;

    /// <summary>Names from the program to a command.</summary>
    internal static string Path(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? $"{Path(parent)} {command.Name}" : command.Name;

    private static string? Unmatched(ParseResult parsed, Command command, string path)
    {
        if (parsed.UnmatchedTokens is not [var first, ..])
        {
            return null;
        }

        return LooksLikeOption(first) ? UnknownOption(first, command, path)
            : command.Subcommands.Count > 0
                ? $"{path}: \"{first}\" is not a verb{NearestWord.Suggest(first, command.Subcommands.Select(c => c.Name))}; see {path} --help"
            : $"{path}: \"{first}\" is one word too many; see {path} --help";
    }

    // The parser takes what it does not know for a value wherever one may stand.
    private static string? Disguised(ParseResult parsed, Command command, string path)
    {
        if (parsed.Tokens.Any(t => t.Type == TokenType.DoubleDash))
        {
            return null;
        }

        foreach (var argument in command.Arguments)
        {
            if (parsed.GetResult(argument)?.Tokens.FirstOrDefault(t => LooksLikeOption(t.Value)) is { } token)
            {
                return UnknownOption(token.Value, command, path);
            }
        }

        foreach (var option in command.Options)
        {
            if (parsed.GetResult(option)?.Tokens.FirstOrDefault(t => LooksLikeOption(t.Value)) is { } token)
            {
                return $"{option.Name} needs a value before {token.Value}; see {path} --help";
            }
        }

        return null;
    }

    private static string UnknownOption(string word, Command command, string path)
    {
        var name = word.Split('=', ':')[0];
        return $"{path}: {name} is not an option{NearestWord.Suggest(name, command.Options.Select(o => o.Name).Append("--help"))}; see {path} --help";
    }

    private static string Told(ParseError error, string path) =>
        error.SymbolResult switch
        {
            OptionResult { Tokens.Count: 0 } option => $"{option.Option.Name} needs a value: {option.Option.HelpName}; see {path} --help",
            OptionResult { IdentifierTokenCount: > 1 } option =>
                $"{option.Option.Name} stands here {option.IdentifierTokenCount switch { 2 => "twice", _ => "more than twice" }}; once",
            OptionResult option => $"{option.Option.Name} takes one value; in quotation marks where it has a space in it",
            ArgumentResult argument => $"{path}: {argument.Argument.Name} is missing; see {path} --help",
            CommandResult { Command: Verb { Do: not null } } => $"{path}: {error.Message}",
            _ => $"{path}: a verb is missing; see {path} --help",
        };

    private static bool LooksLikeOption(string word) => word.Length > 1 && word[0] == '-' && (word[1] == '-' || char.IsAsciiLetter(word[1]));
}
