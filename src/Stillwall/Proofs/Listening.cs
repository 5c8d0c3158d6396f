using Stillwall.Projects;

namespace Stillwall.Proofs;

/// <summary>What a slow sweep by ear brought out, as the logbook tells it.</summary>
/// <param name="Rattling">Parts that rattled when they were last listened to.</param>
/// <param name="Last">Day of the last listening.</param>
public sealed record Listening(IReadOnlyList<string> Rattling, DateOnly Last)
{
    /// <summary>Kind of the entry that something rattled.</summary>
    public const string Rattle = "rattle";

    /// <summary>Kind of the entry that nothing did.</summary>
    public const string NoRattle = "no rattle";

    private const string Whole = "cabinet";

    /// <summary>Reads the logbook.</summary>
    /// <param name="logbook">The entries, in any order.</param>
    /// <returns>What rattles still; null where nobody has listened yet.</returns>
    /// <remarks>
    /// Model: the last entry about a part counts; that nothing rattles, said of the cabinet or of no part, clears every part. Of two entries of one
    /// day the later in the list counts. Source: our choice. Accuracy: the ear's.
    /// </remarks>
    public static Listening? Of(IReadOnlyList<LogEntry> logbook)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        var heard = logbook.Where(e => Is(e, Rattle) || Is(e, NoRattle)).OrderBy(e => e.Date).ToList();
        if (heard.Count == 0)
        {
            return null;
        }

        var rattling = new List<string>();
        foreach (var entry in heard)
        {
            var part = string.IsNullOrWhiteSpace(entry.Part) ? Whole : entry.Part.Trim();
            rattling.RemoveAll(p => Same(p, part) || (Is(entry, NoRattle) && Same(part, Whole)));
            if (Is(entry, Rattle))
            {
                rattling.Add(part);
            }
        }

        return new Listening(rattling, heard[^1].Date);
    }

    private static bool Is(LogEntry entry, string kind) => Same(entry.Kind.Trim(), kind);

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
