using Stillwall.Projects;

namespace Stillwall.Appraisals.Proving;

/// <summary>One thing that a proof takes: a recording, a quantity, or words.</summary>
/// <param name="Name">Its name within the proof; a fault and an explanation speak of it by that.</param>
internal sealed record ProofInput(string Name)
{
    /// <summary>Whether it is a recording.</summary>
    public bool IsRecording { get; private init; }

    /// <summary>Whether nothing can be said without it.</summary>
    public bool IsNeeded { get; private init; }

    /// <summary>What is accepted of a quantity; null of anything else.</summary>
    public QuantityRange? Range { get; private init; }

    /// <summary>The words it may be, the first where it is left out; null where any text will do.</summary>
    public IReadOnlyList<string>? Words { get; private init; }

    internal static ProofInput Sound(string name, bool isNeeded = false) => new(name) { IsRecording = true, IsNeeded = isNeeded };

    internal static ProofInput Quantity(string name, Dimension dimension, double least, double greatest) =>
        Quantity(name, new QuantityRange(dimension, (least, greatest)));

    internal static ProofInput Quantity(string name, QuantityRange range) => new(name) { Range = range };

    internal static ProofInput OneOf(string name, params string[] words) => new(name) { Words = words };
}
