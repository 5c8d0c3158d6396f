using System.Text;

namespace Stillwall.Cli.Output;

/// <summary>Sets words into lines.</summary>
internal static class Words
{
    /// <summary>Breaks a text at its spaces.</summary>
    /// <param name="text">The text; a line feed in it comes from somebody's words and is shown by its code.</param>
    /// <param name="width">Greatest length of a line, characters.</param>
    /// <param name="taken">Characters of the first line that are taken already.</param>
    /// <param name="indent">Spaces before every later line.</param>
    /// <returns>The lines, joined by line feeds; none at the end.</returns>
    internal static string Wrapped(string text, int width, int taken = 0, int indent = 0)
    {
        var lines = new StringBuilder();
        var length = taken;
        var isFirst = true;
        foreach (var word in Unbroken(text.Replace("\n", "\\u000a", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries)))
        {
            if (!isFirst && length + 1 + word.Length > width)
            {
                lines.Append('\n').Append(' ', indent);
                length = indent;
            }
            else if (!isFirst)
            {
                lines.Append(' ');
                length++;
            }

            lines.Append(word);
            length += word.Length;
            isFirst = false;
        }

        return lines.ToString();
    }

    // A number stays with its unit.
    private static IEnumerable<string> Unbroken(string[] words)
    {
        for (var i = 0; i < words.Length; i++)
        {
            var isWithUnit = i + 1 < words.Length && char.IsAsciiDigit(words[i][^1]) && Units.Contains(words[i + 1].TrimEnd('.', ',', ';', ':', ')'));
            yield return isWithUnit ? $"{words[i]} {words[++i]}" : words[i];
        }
    }

    private static readonly HashSet<string> Units = new(StringComparer.Ordinal)
    {
        "mm",
        "m",
        "in",
        "ft",
        "L",
        "gal",
        "kg",
        "g",
        "lb",
        "oz",
        "kg/m³",
        "lb/ft³",
        "°C",
        "°F",
        "kPa",
        "MPa",
        "GPa",
        "Pa",
        "psi",
        "ksi",
        "N",
        "lbf",
        "N·m",
        "Hz",
        "dB",
        "ohm",
        "W",
        "V",
        "s",
        "ms",
        "min",
        "h",
        "days",
        "%",
        "pc",
        "EUR",
    };
}
