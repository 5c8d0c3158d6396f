using System.CommandLine;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Proving;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Audio;
using Stillwall.Files.Json;
using Stillwall.Proofs.Recordings;

namespace Stillwall.Cli.Commands.Proving;

/// <summary>An argument or option that brings one input of a proof.</summary>
/// <param name="Input">The input's name.</param>
/// <param name="Symbol">The argument or option.</param>
/// <param name="IsList">Whether it names several files, with commas.</param>
internal sealed record Brings(string Input, Symbol Symbol, bool IsList = false);

/// <summary>Asks for a proof with what was typed, shows it and keeps what it found.</summary>
/// <param name="Takes">What brings its inputs, in the order of the help text.</param>
internal sealed record ProofVerb(params IReadOnlyList<Brings> Takes)
{
    internal Keeping Keeping { get; } = new();

    internal Flag Json { get; } = Common.Json;

    /// <summary>Options that write a file beside.</summary>
    internal IReadOnlyList<OutputOption> Outputs { get; init; } = [];

    /// <summary>All that the verb takes where its figures can be kept.</summary>
    internal IEnumerable<Symbol> All => [.. Takes.Select(t => t.Symbol), .. Outputs, Json, Keeping.Project, Keeping.Keep, Keeping.DespiteDoubts, Keeping.Log];

    /// <summary>An option for a quantity of a proof.</summary>
    internal static Brings Quantity(string kind, string input, string option, string description)
    {
        var range = Proof.Of(kind).Inputs.First(i => i.Name == input).Range!;
        var isBare = range is { Dimension: Projects.Dimension.None } or { BareUnit: not null };
        return new(input, new TextOption(option, isBare ? "NUMBER" : "QUANTITY", description));
    }

    /// <summary>The whole run.</summary>
    /// <param name="call">The run.</param>
    /// <param name="kind">Name of the proof.</param>
    /// <param name="loaded">The project; null without one.</param>
    /// <param name="also">What the request has beside recordings and quantities.</param>
    /// <param name="written">Writes the files that were asked for.</param>
    /// <param name="below">What stands below the figures.</param>
    internal int Run(
        Invocation call,
        string kind,
        LoadedProject? loaded,
        Func<ProofRequest, ProofRequest>? also = null,
        Action<ProofOutcome>? written = null,
        Func<ProofOutcome, string>? below = null
    )
    {
        var (proof, facts) = (Proof.Of(kind), loaded?.Facts());
        var request = Request(call, facts);
        var outcome = Read(call, proof, also?.Invoke(request) ?? request);
        if (call.Has(Keeping.Keep) && outcome.NothingKept is { } why)
        {
            throw Refusal.Input($"{Verb(call)}: nothing to keep; {why}");
        }

        var isQuiet = call.Has(Json) || Outputs.Any(o => call.Text(o) == "-");
        written?.Invoke(outcome);
        call.Session.Print(
            call.Has(Json) ? ResultJson.WriteProof(outcome.Result!, outcome.Doubts)
            : isQuiet ? ""
            : Text(proof, outcome, below?.Invoke(outcome) ?? "", call.Session.Terminal)
        );
        Keeping.Save(call, loaded, outcome, isQuiet);
        CareText.Say(call.Session, proof.Step, facts, isQuiet);
        return ExitCodes.Done;
    }

    private static string Verb(Invocation call) => $"prove {call.Parsed.CommandResult.Command.Name}";

    private static string? Typed(Invocation call, Symbol symbol) =>
        symbol switch
        {
            TextArgument argument => call.Text(argument),
            TextOption option => call.Text(option),
            _ => null,
        };

    private static string Text(Proof proof, ProofOutcome outcome, string below, Terminal terminal)
    {
        var title = outcome.Caption.Length == 0 ? proof.Title : $"{proof.Title}: {outcome.Caption}";
        string Sentence(string said) => Words.Wrapped($"{char.ToUpperInvariant(said[0])}{said[1..]}.", terminal.Width) + "\n";
        var (doubts, remarks) = (outcome.Doubts.Select(d => Sentence($"doubtful: {d}")).ToList(), outcome.Remarks.Select(Sentence).ToList());
        return string.Concat(doubts.Count == 0 ? doubts : doubts.Append("\n"))
            + Tables.Of(terminal, title, ["", ""], outcome.Figures.Select(f => (IReadOnlyList<string>)[f.Name, f.Text]))
            + below
            + string.Concat(remarks.Count == 0 ? remarks : remarks.Prepend("\n"));
    }

    private ProofRequest Request(Invocation call, Facts? facts) =>
        new(
            name => Takes.Where(t => t.Input == name).Select(t => Typed(call, t.Symbol)).FirstOrDefault(),
            name => [.. Files(call, name).Select(file => Sound(call.Session, file))],
            facts
        );

    private ProofOutcome Read(Invocation call, Proof proof, ProofRequest request)
    {
        var reading = proof.Read(request);
        foreach (var warning in reading.Outcome?.Warnings ?? [])
        {
            call.Session.Tell($"warning: {Named(call, proof, warning)}: {warning.Sentence}");
        }

        return reading.Outcome ?? throw Refusal.Input($"{Named(call, proof, reading.Fault!)}: {reading.Fault!.Sentence}");
    }

    private List<string> Files(Invocation call, string input) =>
        [
            .. Takes
                .Where(t => t.Input == input)
                .SelectMany(t =>
                    Typed(call, t.Symbol) is not { } text ? []
                    : t.IsList ? text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                    : [text]
                ),
        ];

    // A recording by its file, anything else by its option.
    private string Named(Invocation call, Proof proof, AboutInput about) =>
        about.Input.Length == 0 ? Verb(call)
        : proof.Inputs.First(i => i.Name == about.Input).IsRecording && Files(call, about.Input) is var files && about.Index < files.Count ? files[about.Index]
        : Takes.First(t => t.Input == about.Input).Symbol.Name;

    private static Recording Sound(Session session, string file)
    {
        var read = WavReader.Read(session.Read(file, WavReader.GreatestLength));
        foreach (var warning in read.Warnings)
        {
            session.Tell($"warning: {file}: {warning}");
        }

        return read.Recording ?? throw Refusal.Input($"{file}: {read.Fault}");
    }
}
