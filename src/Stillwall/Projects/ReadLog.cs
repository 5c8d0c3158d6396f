namespace Stillwall.Projects;

/// <summary>Notes which values of the stated model are read while something is computed.</summary>
internal sealed class ReadLog
{
    private static readonly AsyncLocal<ReadLog?> Current = new();

    private static int running;

    private readonly ulong[] words = new ulong[ReadSet.Words];

    /// <summary>Computes something, and says what was read for it.</summary>
    /// <param name="compute">What to compute; work that it hands to other threads counts too.</param>
    internal static (T Value, ReadSet Reads) During<T>(Func<T> compute)
    {
        var (outer, log) = (Current.Value, new ReadLog());
        Current.Value = log;
        Interlocked.Increment(ref running);
        try
        {
            return (compute(), new ReadSet(log.words));
        }
        finally
        {
            Interlocked.Decrement(ref running);
            Current.Value = outer;
        }
    }

    /// <summary>Computes something whose reading counts for nothing.</summary>
    internal static T Unnoted<T>(Func<T> compute)
    {
        var outer = Current.Value;
        Current.Value = null;
        try
        {
            return compute();
        }
        finally
        {
            Current.Value = outer;
        }
    }

    /// <summary>Notes that one value was read.</summary>
    internal static void Note(Type block, string property)
    {
        if (Volatile.Read(ref running) > 0 && Current.Value is { } log && ReadSet.PlaceOf(block, property) is { } place)
        {
            Interlocked.Or(ref log.words[place / 64], 1UL << (place % 64));
        }
    }

    /// <summary>Notes that what was read for an earlier result counts for this one too.</summary>
    internal static void Note(ReadSet reads)
    {
        if (Volatile.Read(ref running) > 0 && Current.Value is { } log)
        {
            reads.AddTo(log.words);
        }
    }
}
