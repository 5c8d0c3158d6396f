using System.Text;

namespace Stillwall.Cli.Output;

/// <summary>Sets words into lines.</summary>
internal static class Words
{
    /// <summary>Breaks a text at its spaces.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Greatest length of a line, characters.</param>
    /// <param name="taken">Characters of the first line that are taken already.</param>
    /// <param name="indent">Spaces before every later line.</param>
    /// <returns>The lines, joined by line feeds; none at the end.</returns>
    internal static string Wrapped(string text, int width, int taken = 0, int indent = 0)
    {
        var lines = new StringBuilder();
        var length = taken;
        var isFirst = true;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
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
}
