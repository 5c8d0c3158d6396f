using Stillwall.Projects;

namespace Stillwall.Appraisals;

/// <summary>One result: computed when it is first asked for, and it knows which stated values were read for it.</summary>
internal sealed class Fact<T>
{
    private readonly Lazy<(T Value, ReadSet Reads)> held;

    /// <summary>Prepares a result.</summary>
    /// <param name="former">The same result of the project before a change, which is taken over where nothing that it read has moved; null without one.</param>
    internal Fact(Func<T> compute, Fact<T>? former = null, Func<ReadSet>? moved = null) =>
        held = new(() => former is { held: { IsValueCreated: true } same } && !same.Value.Reads.Meets(moved!()) ? same.Value : ReadLog.During(compute));

    /// <summary>The result. What was read for it counts as read by whatever is computed from it.</summary>
    internal T Value
    {
        get
        {
            var (value, reads) = held.Value;
            ReadLog.Note(reads);
            return value;
        }
    }
}
