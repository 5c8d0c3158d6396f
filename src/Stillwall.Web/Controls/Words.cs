using System.Globalization;
using System.Text.RegularExpressions;
using Stillwall.Appraisals;

namespace Stillwall.Web.Controls;

/// <summary>Small changes of wording for the page.</summary>
internal static partial class Words
{
    /// <summary>A verdict as its word and class.</summary>
    internal static string Css(Verdict verdict) =>
        verdict switch
        {
            Verdict.Holds => "holds",
            Verdict.Tight => "tight",
            Verdict.Fails => "fails",
            _ => "unknown",
        };

    /// <summary>A sentence in pieces: numbers with their units, and what stands between.</summary>
    internal static IEnumerable<(string Text, bool IsNumber)> Pieces(string sentence)
    {
        var at = 0;
        foreach (Match match in NumberWithUnit().Matches(sentence))
        {
            if (match.Index > at)
            {
                yield return (sentence[at..match.Index], false);
            }

            yield return (match.Value.Replace(' ', '\u00a0'), true);
            at = match.Index + match.Length;
        }

        if (at < sentence.Length)
        {
            yield return (sentence[at..], false);
        }
    }

    /// <summary>A quantity in two: number and unit.</summary>
    internal static (string Number, string Unit) Split(string quantity)
    {
        var blank = quantity.LastIndexOf(' ');
        return blank < 0 ? (quantity, "") : (quantity[..blank], quantity[(blank + 1)..]);
    }

    /// <summary>The first letter as a capital.</summary>
    internal static string Capital(string text) => text.Length == 0 || IsKey(text.Split(' ')[0]) ? text : char.ToUpperInvariant(text[0]) + text[1..];

    // A key of the project file keeps its letters.
    private static bool IsKey(string word) => word.TrimEnd(':', ',', ';', '.').IndexOfAny(['.', '_']) > 0;

    /// <summary>A sentence with its end.</summary>
    internal static string Sentence(string text) => text.Length == 0 ? text : Capital(text) + (text[^1] is '.' or '!' or '?' ? "" : ".");

    /// <summary>A key of the project file in words.</summary>
    internal static string Key(string key) => key.Replace("_", " ", StringComparison.Ordinal).Replace(".", ", ", StringComparison.Ordinal);

    /// <summary>A whole number.</summary>
    internal static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A place in a room, as it would stand in the file.</summary>
    internal static string Place(Neighbours.Rooms.Place place) =>
        string.Join(", ", new[] { place.XM, place.YM, place.ZM }.Select(m => Projects.Units.Write(m, Projects.Dimension.Length)));

    /// <summary>How much of a class list applies.</summary>
    internal static string If(bool holds, string name) => holds ? name : "";

    [GeneratedRegex(
        @"(?<![\w.])[±−-]?\d+(?:[.,]\d+)?(?:\s?"
            + @"(?:mm|cm|m|in|ft|L|cm²|m²|in²|ft³|kg|g|lb|oz|Hz|kHz|dB|%|°C|°F|K|W|ohm|h|min|s|days?|kPa|Pa|MPa|GPa|psi|ksi|V|A"
            + @"|EUR|USD|GBP|N|N·m|kN/m|g/L|kg/m³)(?![\w]))?",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex NumberWithUnit();
}
