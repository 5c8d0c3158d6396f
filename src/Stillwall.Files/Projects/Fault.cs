using System.Globalization;

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

    private const int LongestFile = 60,
        LongestPath = 80;

    /// <summary>The fault in one line of at most <see cref="LongestLine"/> characters, control characters made visible.</summary>
    /// <returns><c>file:line: path: what; what is accepted</c>.</returns>
    public override string ToString()
    {
        var file = Visible.Of(File);
        var path = Visible.Of(Path);
        var place =
            $"{(file.Length > LongestFile ? "…" + Tail(file, LongestFile - 1) : file)}:{Line.ToString(CultureInfo.InvariantCulture)}: "
            + $"{Head(path, LongestPath)}: ";
        return place + Head(Visible.Of(Message), LongestLine - place.Length);
    }

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
