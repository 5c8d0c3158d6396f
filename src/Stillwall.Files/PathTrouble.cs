using System.Security;

namespace Stillwall.Files;

/// <summary>Trouble with a path that a person named: how it is told from a defect, and how it is said.</summary>
public static class PathTrouble
{
    /// <summary>Whether an exception lies with the path or the disk behind it.</summary>
    /// <param name="e">What was thrown while a file or folder was used.</param>
    /// <returns>False for a defect.</returns>
    /// <exception cref="ArgumentNullException">Nothing was thrown.</exception>
    public static bool Is(Exception e)
    {
        ArgumentNullException.ThrowIfNull(e);
        return e is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException;
    }

    /// <summary>What is the matter, in a few words.</summary>
    /// <param name="e">What was thrown, one for which <see cref="Is"/> is true.</param>
    /// <returns>Words that stand in brackets after "cannot be read" or "cannot be written".</returns>
    /// <exception cref="ArgumentNullException">Nothing was thrown.</exception>
    public static string Why(Exception e)
    {
        ArgumentNullException.ThrowIfNull(e);
        return e switch
        {
            UnauthorizedAccessException => "no permission, or it is a folder",
            PathTooLongException => "the path is too long",
            DirectoryNotFoundException => "its folder is not there",
            FileNotFoundException => "it is not there",
            ArgumentException => "a character that no path may have",
            _ => "the system refuses",
        };
    }
}
