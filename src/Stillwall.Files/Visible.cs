using System.Globalization;
using System.Text;

namespace Stillwall.Files;

/// <summary>Makes visible what would break a line, hide itself, turn the writing round or steer a terminal.</summary>
public static class Visible
{
    /// <summary>Shows hidden characters by their codes.</summary>
    /// <param name="text">A text from anywhere.</param>
    /// <param name="keepsLines">Whether line feeds stay, for a text of several lines.</param>
    /// <returns>The text, each hidden character as <c>\u001b</c>: what JSON takes for the same character.</returns>
    /// <exception cref="ArgumentNullException">No text.</exception>
    public static string Of(string text, bool keepsLines = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        var shown = new StringBuilder(text.Length);
        for (int at = 0, used; at < text.Length; at += used)
        {
            var isWhole = Rune.DecodeFromUtf16(text.AsSpan(at), out var rune, out used) == System.Buffers.OperationStatus.Done;
            if (isWhole && ((keepsLines && rune.Value == '\n') || !IsHidden(rune)))
            {
                shown.Append(text, at, used);
                continue;
            }

            foreach (var c in text.AsSpan(at, used))
            {
                shown.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture));
            }
        }

        return shown.ToString();
    }

    private static bool IsHidden(Rune rune) =>
        Rune.GetUnicodeCategory(rune)
            is UnicodeCategory.Control
                or UnicodeCategory.Format
                or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator
                or UnicodeCategory.Surrogate
                or UnicodeCategory.PrivateUse
                or UnicodeCategory.OtherNotAssigned;
}
