using Stillwall.Appraisals.Explaining;
using Stillwall.Figures;
using Stillwall.Proofs.Sweeps;

namespace Stillwall.Appraisals.Proving;

/// <summary>A sentence about one thing that was brought to a proof.</summary>
/// <param name="Input">The input's name; empty where it is about the whole.</param>
/// <param name="Sentence">The sentence, which goes on after what the input is called.</param>
internal sealed record AboutInput(string Input, string Sentence, int Index = 0);

/// <summary>One figure that a proof shows.</summary>
/// <param name="Text">Figure with its band and unit.</param>
/// <param name="Why">Where it comes from, worked out when it is asked for; null for a count and for words.</param>
internal sealed record ProofFigure(string Name, string Text, Func<Explanation>? Why = null);

/// <summary>Sweeps that were averaged, and what was computed beside them.</summary>
/// <param name="Computed">The computed shape; null where there is none.</param>
internal sealed record AveragedSweeps(string Place, IReadOnlyList<SweepResult> Singles, SweepResult Mean, IReadOnlyList<SweepPoint>? Computed);

/// <summary>What a proof shows, and what it would write into the project.</summary>
/// <param name="Result">The result as a record; null where the answer is words.</param>
/// <param name="Figures">The figures, in the order in which they are shown.</param>
internal sealed record ProofOutcome(object? Result, IReadOnlyList<ProofFigure> Figures)
{
    /// <summary>Name of the proof.</summary>
    public string Kind { get; internal init; } = "";

    /// <summary>What the bands hold; empty where there are none.</summary>
    public string Caption { get; init; } = "";

    /// <summary>
    /// Why the figures may be wrong by more than their bands, each with what would settle it; empty where nothing speaks against them. They stand above the
    /// figures, and keeping such figures asks twice.
    /// </summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>What is odd about what was brought.</summary>
    public IReadOnlyList<AboutInput> Warnings { get; init; } = [];

    /// <summary>What is always to be kept in mind about such figures.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Keys of the project and the values that they would get; empty where there is nothing to keep.</summary>
    public IReadOnlyList<(string Key, string Stated)> Kept { get; init; } = [];

    /// <summary>Why there is nothing to keep though such a proof has something as a rule; null where there is something.</summary>
    public string? NothingKept { get; init; }

    /// <summary>All that is to be said under the figures, beside the warnings.</summary>
    public IReadOnlyList<string> Remarks => NothingKept is { } why ? [.. Notes, why] : Notes;

    /// <summary>Block of the project that the kept values take the place of; null where they are set one by one.</summary>
    public string? Block { get; init; }

    /// <summary>Keys of the project that change where it is kept.</summary>
    public IEnumerable<string> Keys => Block is null ? Kept.Select(k => k.Key) : [Block];

    /// <summary>Keys and values of its entry in the logbook, without the day; empty where there is none.</summary>
    public IReadOnlyList<(string Key, string Stated)> Entry { get; init; } = [];

    /// <summary>Measured over computed; null where there is no curve.</summary>
    public Chart? Chart { get; init; }

    /// <summary>The sweeps behind it; null for another proof.</summary>
    public AveragedSweeps? Sweeps { get; init; }

    internal static IReadOnlyList<(string, string)> Logged(string kind, string note, string? part = null) =>
        part is null ? [("kind", kind), ("note", note)] : [("kind", kind), ("part", part), ("note", note)];

    internal static (string, string) Measured(string key, params double[] values) => (key, Projects.MeasuredText.Of(key, values));

    internal static IEnumerable<AboutInput> About(ProofInput input, IEnumerable<string> warnings, int index = 0) =>
        warnings.Select(w => new AboutInput(input.Name, w, index));
}

/// <summary>A proof that was asked for, or why it says nothing.</summary>
/// <param name="Outcome">What it shows; null where it says nothing.</param>
/// <param name="Fault">Which input cannot be used, why, and what is accepted; null where all can.</param>
internal sealed record ProofReading(ProofOutcome? Outcome, AboutInput? Fault);
