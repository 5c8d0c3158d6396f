namespace Stillwall.Projects;

/// <summary>Finds the known word that a mistyped one was probably meant to be.</summary>
internal static class NearestWord
{
    /// <summary>The words of a "did you mean", or nothing where no known word is near.</summary>
    /// <returns>Text to put into a message: <c> (did you mean "core"?)</c>, or empty.</returns>
    public static string Suggest(string word, IEnumerable<string> known) => Suggest(word, Of(word, known));

    /// <summary>The words of a "did you mean" for a word that was found.</summary>
    /// <returns>Text to put into a message: <c> (did you mean "core"?)</c>, <c> (now called "main_speakers")</c>, or empty.</returns>
    public static string Suggest(string word, string? nearest)
    {
        ArgumentNullException.ThrowIfNull(word);
        return nearest is null ? ""
            : nearest == FormerNames.Now(word) ? $" (now called \"{nearest}\")"
            : $" (did you mean \"{nearest}\"?)";
    }

    /// <summary>The known word nearest to one that is not known.</summary>
    /// <returns>
    /// The nearest word, or null where none is near: more than 2 letters, or a third of the word, would have to change (our choice). What a former
    /// name is called now is always near.
    /// </returns>
    public static string? Of(string word, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(word);
        if (word.Length > 60)
        {
            return null;
        }

        var words = known.ToList();
        if (FormerNames.Now(word) is { } now && words.Contains(now))
        {
            return now;
        }

        var best = words
            .Select(k => (Word: k, Distance: Distance(word.ToLowerInvariant(), k.ToLowerInvariant())))
            .OrderBy(c => c.Distance)
            .ThenBy(c => c.Word, StringComparer.Ordinal)
            .FirstOrDefault();
        return best.Word is not null && best.Distance <= Math.Max(2, word.Length / 3) && best.Distance < best.Word.Length ? best.Word : null;
    }

    // Levenshtein 1966: least number of letters to insert, drop or change.
    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var changed = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(changed, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
