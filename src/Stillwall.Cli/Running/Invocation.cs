using System.CommandLine;
using Stillwall.Projects;

namespace Stillwall.Cli.Running;

/// <summary>What a verb was called with.</summary>
internal sealed record Invocation(Session Session, ParseResult Parsed)
{
    internal bool Has(Flag flag) => Parsed.GetValue(flag);

    internal string? Text(TextArgument argument) => Parsed.GetValue(argument);

    /// <summary>The value of an option; null where it is not given.</summary>
    /// <exception cref="Refusal">It is none of the words that it may be.</exception>
    internal string? Text(TextOption option)
    {
        var text = Parsed.GetValue(option);
        return text is not null && option.Words is { } words && !words.Contains(text) ? throw NotOneOf(option.Name, text, words) : text;
    }

    /// <summary>An option as it was typed; null where it is not given.</summary>
    internal string? Text(QuantityOption option) => Parsed.GetValue(option);

    /// <summary>The value of an option in SI; null where it is not given.</summary>
    /// <exception cref="Refusal">It is not what the option accepts.</exception>
    internal double? Value(QuantityOption option) => Parsed.GetValue(option) is { } text ? option.Read(text) : null;

    /// <summary>The value of an option that must be given, in SI.</summary>
    /// <exception cref="Refusal">It is not given, or not what the option accepts.</exception>
    internal double Needed(QuantityOption option) => Value(option) ?? throw Refusal.Input($"{option.Name} is missing; {option.Accepted}");

    /// <summary>The value of an option that must be given.</summary>
    /// <exception cref="Refusal">It is not given, or none of the words that it may be.</exception>
    internal string Needed(TextOption option) => Text(option) ?? throw Refusal.Input($"{option.Name} is missing; {(option.Words is { } words ? OneOf(words) : option.HelpName)}");

    /// <summary>Refuses a word and says which there are.</summary>
    internal static Refusal NotOneOf(string what, string word, IReadOnlyList<string> words) =>
        Refusal.Input($"{what}: \"{word}\" is not known{NearestWord.Suggest(word, words)}; {OneOf(words)}");

    /// <summary>Makes sure that standard output is asked to hold one thing only.</summary>
    /// <exception cref="Refusal">It is asked to hold more.</exception>
    internal void OneOutput(Flag json, params TextOption[] files)
    {
        var wanted = files.Where(f => Text(f) == "-").Select(f => $"{f.Name} -").Concat(Has(json) ? [json.Name] : Array.Empty<string>()).ToList();
        if (wanted.Count > 1)
        {
            throw Refusal.Input($"{string.Join(" and ", wanted)}: standard output holds one thing only; a file name for the other");
        }
    }

    private static string OneOf(IReadOnlyList<string> words) => words.Count == 1 ? words[0] : $"one of {string.Join(", ", words)}";
}
