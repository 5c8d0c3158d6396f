using System.Globalization;
using System.Text;

namespace Stillwall.Files.Projects;

/// <summary>One thing that is wrong with a file, told in one line.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Line">Line in the file, from 1.</param>
/// <param name="Path">Where in the file: keys joined by points, or a column; <c>$</c> is the whole file.</param>
/// <param name="Message">What is wrong; what is accepted.</param>
public sealed record Fault(string File, int Line, string Path, string Message)
{
    /// <summary>Most characters that a line may have.</summary>
    public const int LongestLine = 300;

    private const int LongestFile = 60, LongestPath = 80;

    /// <summary>The fault in one line of at most <see cref="LongestLine"/> characters, control characters made visible.</summary>
    /// <returns><c>file:line: path: what; what is accepted</c>.</returns>
    public override string ToString()
    {
        var file = Visible(File);
        var path = Visible(Path);
        var place = $"{(file.Length > LongestFile ? "…" + Tail(file, LongestFile - 1) : file)}:{Line.ToString(CultureInfo.InvariantCulture)}: {Head(path, LongestPath)}: ";
        return place + Head(Visible(Message), LongestLine - place.Length);
    }

    // What would break the line, hide itself or turn the writing round is shown by its code.
    private static string Visible(string text)
    {
        if (text.All(c => c is >= ' ' and <= '~'))
        {
            return text;
        }

        var shown = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            var isPair = char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]);
            if (isPair)
            {
                shown.Append(text, i, 2);
                i++;
            }
            else if (IsHidden(text[i]))
            {
                shown.Append("\\u").Append(((int)text[i]).ToString("x4", CultureInfo.InvariantCulture));
            }
            else
            {
                shown.Append(text[i]);
            }
        }

        return shown.ToString();
    }

    private static bool IsHidden(char c) => char.GetUnicodeCategory(c)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned;

    private static string Head(string text, int longest)
    {
        if (text.Length <= longest)
        {
            return text;
        }

        var end = longest - 1;
        return text[..(char.IsHighSurrogate(text[end - 1]) ? end - 1 : end)] + "…";
    }

    private static string Tail(string text, int longest)
    {
        var start = text.Length - longest;
        return text[(char.IsLowSurrogate(text[start]) ? start + 1 : start)..];
    }
}
