namespace Stillwall.Files.Outputs;

/// <summary>
/// Tells what is no file but takes bytes: a pipe, a terminal, the null device. It is written to as it is, for nothing can be put in its place.
/// </summary>
internal static class Device
{
    /// <summary>Opens a device; null where the path is no device.</summary>
    internal static FileStream? Open(string path)
    {
        if (
            OperatingSystem.IsWindows()
                ? path.StartsWith(@"\\.\", StringComparison.Ordinal)
                : path.StartsWith("/dev/", StringComparison.Ordinal) && !path.StartsWith("/dev/shm/", StringComparison.Ordinal)
        )
        {
            return Opened(path);
        }

        // A pipe says that it is empty, as an empty file does; only opened can they be told apart. A pipe nobody reads from is waited for, as its writer would.
        if (new FileInfo(path) is not { Exists: true, Length: 0 })
        {
            return null;
        }

        var stream = Opened(path);
        if (!stream.CanSeek)
        {
            return stream;
        }

        stream.Dispose();
        return null;
    }

    private static FileStream Opened(string path) => new(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
}
