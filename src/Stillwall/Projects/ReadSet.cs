using System.Collections;
using System.Collections.Frozen;

namespace Stillwall.Projects;

/// <summary>A set of values of the stated model, each by the record that holds it and its property; entries of a list count as one.</summary>
internal sealed class ReadSet
{
    private static readonly FrozenDictionary<(Type Block, string Property), int> Places = AllPlaces();

    private readonly ulong[] words;

    internal ReadSet(ulong[] words) => this.words = words;

    /// <summary>How many words of 64 places a set has; the last place is <see cref="Soundness"/>.</summary>
    internal static int Words { get; } = (Places.Count / 64) + 1;

    /// <summary>Nothing.</summary>
    internal static ReadSet None { get; } = new(new ulong[Words]);

    /// <summary>Whether the project is free of contradictions, which stands for all that the checks look at.</summary>
    internal static int Soundness => Places.Count;

    /// <summary>Place of a value in a set; null where the stated model has none of that name.</summary>
    internal static int? PlaceOf(Type block, string property) => Places.TryGetValue((block, property), out var place) ? place : null;

    /// <summary>Whether a value is in the set.</summary>
    internal bool Has(int place) => (words[place / 64] & (1UL << (place % 64))) != 0;

    /// <summary>Whether the two sets have a value in common.</summary>
    internal bool Meets(ReadSet other) => words.Zip(other.words).Any(w => (w.First & w.Second) != 0);

    /// <summary>Adds the set to the words of another.</summary>
    internal void AddTo(ulong[] others)
    {
        for (var i = 0; i < words.Length; i++)
        {
            if (words[i] != 0)
            {
                Interlocked.Or(ref others[i], words[i]);
            }
        }
    }

    /// <summary>The values in which two projects differ.</summary>
    internal static ReadSet Between(Project one, Project other) => ReadLog.Unnoted(() => Differences(one, other));

    /// <summary>The values in which two data sheets differ.</summary>
    internal static ReadSet Between(DriverSheet? one, DriverSheet? other) => ReadLog.Unnoted(() => Differences(one, other));

    /// <summary>The values of either set.</summary>
    internal ReadSet With(ReadSet other)
    {
        var both = (ulong[])words.Clone();
        other.AddTo(both);
        return new ReadSet(both);
    }

    /// <summary>The set and one value more.</summary>
    internal ReadSet With(int place)
    {
        var more = (ulong[])words.Clone();
        more[place / 64] |= 1UL << (place % 64);
        return new ReadSet(more);
    }

    private static ReadSet Differences(object? one, object? other)
    {
        var set = new ulong[Words];
        Compare(one, other, set);
        return new ReadSet(set);
    }

    private static void Compare(object? one, object? other, ulong[] set)
    {
        if (one is null || other is null || ReferenceEquals(one, other))
        {
            return;
        }

        var block = ModelBlock.Of(one.GetType());
        foreach (var field in block.Fields)
        {
            var (a, b) = (field.Property.GetValue(one), field.Property.GetValue(other));
            if (ReferenceEquals(a, b) || !Differ(field.Kind, a, b, set))
            {
                continue;
            }

            var place = Places[(block.Type, field.Property.Name)];
            set[place / 64] |= 1UL << (place % 64);
        }
    }

    // Whether the value itself differs; what differs inside a block is marked at its own place.
    private static bool Differ(FieldKind kind, object? one, object? other, ulong[] set)
    {
        switch (kind)
        {
            case FieldKind.Block:
                Compare(one, other, set);
                return one is null != other is null;
            case FieldKind.Driver:
                var (a, b) = ((DriverChoice?)one, (DriverChoice?)other);
                Compare(a?.Sheet, b?.Sheet, set);
                return a?.Name != b?.Name || a?.Sheet is null != b?.Sheet is null;
            case FieldKind.Blocks:
                return DifferInEntries((IList?)one, (IList?)other, set);
            case FieldKind.Quantities:
                return one is null || other is null || !((IReadOnlyList<double>)one).SequenceEqual((IReadOnlyList<double>)other);
            default:
                return !Equals(one, other);
        }
    }

    private static bool DifferInEntries(IList? one, IList? other, ulong[] set)
    {
        for (var i = 0; i < Math.Min(one?.Count ?? 0, other?.Count ?? 0); i++)
        {
            Compare(one![i], other![i], set);
        }

        return one?.Count != other?.Count;
    }

    private static FrozenDictionary<(Type, string), int> AllPlaces()
    {
        var blocks = new List<ModelBlock>();
        void Add(ModelBlock block)
        {
            if (!blocks.Contains(block))
            {
                blocks.Add(block);
                foreach (var inner in block.Fields.Select(f => f.Block).OfType<ModelBlock>())
                {
                    Add(inner);
                }
            }
        }

        Add(ModelBlock.Root);
        return blocks
            .SelectMany(b => b.Fields.Select(f => (b.Type, f.Property.Name)))
            .Select((key, place) => (key, place))
            .ToFrozenDictionary(p => p.key, p => p.place);
    }
}
