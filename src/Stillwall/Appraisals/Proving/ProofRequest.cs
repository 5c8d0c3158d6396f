using Stillwall.Appraisals.Explaining;
using Stillwall.Projects;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Taps;
using static System.FormattableString;

namespace Stillwall.Appraisals.Proving;

/// <summary>What a maker brings to a proof.</summary>
/// <param name="Stated">What is stated, as it was typed, by the input's name; null or empty where it is left out.</param>
/// <param name="Sounds">The recordings by the input's name; none where it is left out.</param>
internal sealed record ProofRequest(Func<string, string?> Stated, Func<string, IReadOnlyList<Recording>> Sounds, Facts? Plan)
{
    // Where there is no project nothing is compared, and numbers are shown as they are by default.
    private static readonly Facts NoPlan = new(new Project { FormatVersion = 1 }, []);

    /// <summary>The latest outcome of the same proof, whose sweeps may be averaged with; null where there is none.</summary>
    public ProofOutcome? Before { get; init; }

    /// <summary>Another bar to compare a tap test with; null without one.</summary>
    public BarFigures? OtherBar { get; init; }

    /// <summary>Days and masses of the cabinet, kg, in place of the logbook's; null takes those.</summary>
    public IReadOnlyList<(DateOnly Date, double MassKg)>? Weighings { get; init; }

    internal Facts Facts => Plan ?? NoPlan;

    internal double Value(ProofInput input) => Perhaps(input) ?? throw Missing(input);

    internal double? Perhaps(ProofInput input) =>
        Stated(input.Name) is not { Length: > 0 } text ? null
        : input.Range!.TryRead(text, out var value, out var fault) ? value
        : throw new ProofRefusal(input.Name, fault);

    internal string Word(ProofInput input)
    {
        var words = input.Words!;
        var word = Stated(input.Name) is { Length: > 0 } text ? text : words[0];
        return words.Contains(word)
            ? word
            : throw new ProofRefusal(input.Name, $"{Units.Shown(word)} is not known{NearestWord.Suggest(word, words)}; one of {string.Join(", ", words)}");
    }

    internal Recording Sound(ProofInput input) => PerhapsSound(input) ?? throw Missing(input);

    internal Recording? PerhapsSound(ProofInput input) => Sounds(input.Name) is [var first, ..] ? first : null;

    internal static ProofRefusal Missing(ProofInput input) =>
        new(input.Name, $"is missing; {(input.IsRecording ? "a recording, as a WAV file" : input.Range!.Accepted)}");

    /// <summary>A recording as an input of a figure.</summary>
    internal static ExplainedInput Recorded(Recording recording, string name = "") =>
        new(name.Length == 0 ? "recording" : $"recording.{name}", Invariant($"{recording.DurationS:0.0} s at {recording.RateHz / 1000:0.#} kHz"), "1", null);

    /// <summary>A number that went in, with what one per cent of it does.</summary>
    internal static ExplainedInput Moved(string key, double value, string unit, Func<double, double?> result) =>
        new($"recording.{key}", value, unit, Why.Sensitivity(value, result));
}

/// <summary>Why an input cannot be used.</summary>
internal sealed class ProofRefusal(string input, string sentence, int index = 0) : Exception
{
    internal AboutInput Fault { get; } = new(input, sentence, index);

    /// <summary>What a reading says.</summary>
    internal static T Said<T>(ProofInput input, T? result, string? trouble, int index = 0)
        where T : class => result ?? throw new ProofRefusal(input.Name, trouble ?? "", index);
}
