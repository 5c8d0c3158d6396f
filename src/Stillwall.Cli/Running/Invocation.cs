using System.CommandLine;
using System.Text;
using Stillwall.Files.Outputs;
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
    internal string Needed(TextOption option) =>
        Text(option) ?? throw Refusal.Input($"{option.Name} is missing; {(option.Words is { } words ? OneOf(words) : option.HelpName)}");

    /// <summary>Refuses a word and says which there are.</summary>
    internal static Refusal NotOneOf(string what, string word, IReadOnlyList<string> words) =>
        Refusal.Input($"{what}: \"{word}\" is not known{NearestWord.Suggest(word, words)}; {OneOf(words)}");

    /// <summary>Makes sure that standard output is asked to hold one thing only.</summary>
    /// <exception cref="Refusal">It is asked to hold more.</exception>
    internal void OneOutput(Flag json, params OutputOption[] files)
    {
        var wanted = files.Where(f => Text(f) == "-").Select(f => $"{f.Name} -").Concat(Has(json) ? [json.Name] : Array.Empty<string>()).ToList();
        if (wanted.Count > 1)
        {
            throw Refusal.Input($"{string.Join(" and ", wanted)}: standard output holds one thing only; a file name for the other");
        }
    }

    /// <summary>Makes sure, before anything is computed, that no output option names what must stay.</summary>
    /// <exception cref="Refusal">One does.</exception>
    internal void CheckOutputs()
    {
        foreach (var file in Parsed.CommandResult.Command.Options.OfType<OutputOption>().Select(Text).OfType<string>().Where(file => file != "-"))
        {
            Session.CheckPlace(file);
        }
    }

    /// <summary>Delivers what an output option asked for, where it is given.</summary>
    /// <param name="option">The option.</param>
    /// <param name="text">All of the file.</param>
    /// <param name="otherHeads">For a table: header lines that the same option writes at other times.</param>
    internal void Deliver(OutputOption option, string text, params IReadOnlyList<string> otherHeads) =>
        Deliver(option, Encoding.UTF8.GetBytes(text), otherHeads);

    /// <inheritdoc cref="Deliver(OutputOption, string, IReadOnlyList{string})"/>
    internal void Deliver(OutputOption option, byte[] bytes, params IReadOnlyList<string> otherHeads)
    {
        if (Text(option) is { } file)
        {
            Session.Deliver(file, bytes, otherHeads);
        }
    }

    /// <summary>Delivers the files of a verb that fills a folder.</summary>
    /// <param name="option">The option that names the folder; where it is not given, <c>out</c> in the project folder.</param>
    /// <param name="loaded">The project.</param>
    /// <param name="files">The files.</param>
    /// <returns>The folder as it was named.</returns>
    internal string Deliver(OutputOption option, LoadedProject loaded, IReadOnlyList<MadeFile> files)
    {
        var folder = Text(option) ?? Path.Combine(Path.GetDirectoryName(loaded.File)!, "out");
        Session.Deliver(folder, Parsed.CommandResult.Command.Name, files);
        return folder;
    }

    private static string OneOf(IReadOnlyList<string> words) => words.Count == 1 ? words[0] : $"one of {string.Join(", ", words)}";
}
