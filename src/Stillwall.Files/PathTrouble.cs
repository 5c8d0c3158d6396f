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
            ArgumentOutOfRangeException => "it would be larger than the system allows",
            ArgumentException => "a character that no path may have",
            IOException when IsFull(e.HResult) => "the disk is full",
            _ => "the system refuses",
        };
    }

    /// <summary>That a file is not read, why, and what is accepted.</summary>
    internal static string Unread(Exception e) =>
        (e is FileNotFoundException or DirectoryNotFoundException ? "is not there" : $"cannot be read ({Why(e)})") + "; a file that may be read";

    /// <summary>That a folder is not made, why, and what is accepted.</summary>
    internal static string Unmade(Exception e) => $"cannot be made ({Why(e)}); a folder in one that may be written";

    // ENOSPC and EDQUOT on Unix; ERROR_HANDLE_DISK_FULL and ERROR_DISK_FULL on Windows.
    private static bool IsFull(int code) => OperatingSystem.IsWindows() ? (code & 0xFFFF) is 39 or 112 : code is 28 or 122 or 69;
}
