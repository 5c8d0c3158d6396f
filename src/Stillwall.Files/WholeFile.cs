namespace Stillwall.Files;

/// <summary>Steps by which a file is replaced whole: written beside, then renamed.</summary>
internal static class WholeFile
{
    /// <summary>Writes a draft down to the disk. The step is told after each thing that is done to the disk, so that a test can break off there.</summary>
    internal static void Write(string draft, ReadOnlySpan<byte> bytes, Action? step = null)
    {
        using var stream = new FileStream(draft, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        step?.Invoke();
        stream.Write(bytes[..(bytes.Length / 2)]);
        step?.Invoke();
        stream.Write(bytes[(bytes.Length / 2)..]);
        stream.Flush(flushToDisk: true);
        step?.Invoke();
    }

    internal static void TakePermissions(string file, params string[] drafts)
    {
        if (!OperatingSystem.IsWindows())
        {
            foreach (var draft in drafts)
            {
                File.SetUnixFileMode(draft, File.GetUnixFileMode(file));
            }
        }
    }

    internal static bool Says(string file, ReadOnlySpan<byte> bytes) =>
        new FileInfo(file) is { Exists: true } found && found.Length == bytes.Length && File.ReadAllBytes(file).AsSpan().SequenceEqual(bytes);

    internal static void Discard(string draft)
    {
        try
        {
            File.Delete(draft);
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            // The draft stays behind; the file it was to replace is untouched, and that is what the caller is told about.
        }
    }
}
