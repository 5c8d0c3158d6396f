using System.Text.RegularExpressions;

namespace Stillwall.Tests.Rules;

/// <summary>One source, or the words that stand instead of one.</summary>
internal sealed record SourceRow(string Label, string HowKnown, IReadOnlyList<string> Cells);

/// <summary>The table of sources, docs/sources.md, and what a text cites of it.</summary>
internal static partial class SourceTable
{
    internal static IReadOnlyList<SourceRow> Rows { get; } =
    [
        .. File.ReadLines(Path.Combine(Repository.Root, "docs", "sources.md"))
            .Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries)[1..^1])
            .Select(cells => new SourceRow(cells[0].Trim('`'), cells[^1], cells)),
    ];

    /// <summary>Rows whose label stands in a text; words instead of a source in small letters or not.</summary>
    internal static IReadOnlyList<SourceRow> In(string text) => [.. Rows.Where(row => Stands(row.Label, text))];

    /// <summary>Rows that a text names, in full or cited short: "Small 1972", "ISO 717-1".</summary>
    internal static IReadOnlyList<SourceRow> Named(string text) => [.. In(text).Concat(Citations(text).SelectMany(Cited)).Distinct()];

    /// <summary>What looks like a citation: a name and a year, a standard, or a journal's volume and year, which no label has.</summary>
    internal static IReadOnlyList<string> Citations(string text) =>
        [.. NameAndYear().Matches(text).Concat(Standard().Matches(text)).Concat(Journal().Matches(text)).Select(m => m.Value)];

    /// <summary>Rows that a citation may mean: a label that holds the name and the year, or a standard whose part or edition is left out.</summary>
    internal static IReadOnlyList<SourceRow> Cited(string citation) =>
        [
            .. Rows.Where(row =>
                Standard().IsMatch(citation)
                    ? row.Label.StartsWith(citation, StringComparison.Ordinal) && row.Label[citation.Length..] is "" or [':' or '-', ..]
                    : row.Label.Contains(citation, StringComparison.Ordinal)
            ),
        ];

    /// <summary>The text of a source file as it reads: comments and strings over several lines in one.</summary>
    internal static string Read(string file)
    {
        var text = File.ReadAllText(file);
        return file.EndsWith(".cs", StringComparison.Ordinal)
            ? Break().Replace(text, m => m.Value.Contains('+', StringComparison.Ordinal) ? "" : " ").Replace("&amp;", "&", StringComparison.Ordinal)
            : text;
    }

    private static bool Stands(string label, string text)
    {
        var compare = char.IsLower(label[0]) ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal;
        for (var at = text.IndexOf(label, compare); at >= 0; at = text.IndexOf(label, at + 1, compare))
        {
            var end = at + label.Length;
            if ((at == 0 || !char.IsLetterOrDigit(text[at - 1])) && (end == text.Length || !char.IsLetterOrDigit(text[end])))
            {
                return true;
            }
        }

        return false;
    }

    // "Hobby 1999", "W3C 2021", also as "Hobby (1999" and "Hobby, 1999", which no label reads like; not "2000:1" or "1999.5".
    [GeneratedRegex(@"\b\p{Lu}[\w’'-]*\w,? \(?(?:1[6-9]|20)\d\d\b(?![:.,-]?\d)")]
    private static partial Regex NameAndYear();

    [GeneratedRegex(@"\w+ \d+(?:\(\d+\))? \((?:1[6-9]|20)\d\d\)")]
    private static partial Regex Journal();

    [GeneratedRegex(@"\b(?:ISO/IEC|ISO|EN|IEC|ASTM|ACI|DIN|VDI|FoHMFS|NIOSH|JCGM|RFC|ECMA|NIST SP|NASA SP|NASA TN)[ -][A-Z]?-?\d[\d-]*(?::\d+)?")]
    private static partial Regex Standard();

    [GeneratedRegex("""\n\s*///? ?|"\s*\n\s*\+ "|\n\s*""")]
    private static partial Regex Break();
}
