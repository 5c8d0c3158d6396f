using System.Globalization;
using System.Text;

namespace Stillwall.Files.Projects;

/// <summary>Why a project's folder or file could not be used.</summary>
public enum StoreTrouble
{
    /// <summary>There is nothing at that path.</summary>
    NotThere,

    /// <summary>It is there but cannot be read.</summary>
    Unreadable,

    /// <summary>It cannot be written.</summary>
    Unwritable,

    /// <summary>Somebody else has changed it since it was read.</summary>
    Changed,
}

/// <summary>A path that cannot be used, and why.</summary>
/// <param name="Kind">Kind of trouble.</param>
/// <param name="Path">The path as given.</param>
/// <param name="Message">What is the matter, in one line.</param>
public sealed record StoreFault(StoreTrouble Kind, string Path, string Message)
{
    /// <summary>The fault in one line, control characters made visible.</summary>
    /// <returns><c>path: message</c>.</returns>
    public override string ToString() => new Fault(Path, 0, "", Message).ToString().Replace(":0: : ", ": ", StringComparison.Ordinal);
}

/// <summary>A project that was loaded, or why not.</summary>
/// <param name="Folder">Full path of the project folder; empty when the file is not there.</param>
/// <param name="File">Full path of the project file; empty when it is not there.</param>
/// <param name="Text">Text of the file as it stands there, for changes that keep the rest; null when it could not be read.</param>
/// <param name="Reading">The project or the faults of its file; null when it could not be read.</param>
/// <param name="Trouble">Why the path could not be used; null when it could.</param>
public sealed record StoredProject(string Folder, string File, string? Text, ProjectReading? Reading, StoreFault? Trouble);

/// <summary>Finds, loads and saves the project file of a folder.</summary>
public static class ProjectStore
{
    /// <summary>Name of the project file.</summary>
    public const string FileName = "stillwall.json";

    /// <summary>How many former versions are kept, as <c>stillwall.json.1</c> (the last one) and so on.</summary>
    public const int KeptVersions = 5;

    /// <summary>Loads a project.</summary>
    /// <param name="path">Its folder or its file.</param>
    /// <returns>The project with its faults, or why the path could not be used.</returns>
    public static StoredProject Load(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var (file, trouble) = Locate(path);
        if (trouble is not null)
        {
            return new StoredProject("", "", null, null, trouble);
        }

        try
        {
            var bytes = ReadAtMost(file, PositionedJson.GreatestLength + 1);
            return new StoredProject(
                Path.GetDirectoryName(file)!,
                file,
                Encoding.UTF8.GetString(bytes),
                ProjectReader.Read(bytes, Path.GetFileName(file)),
                null
            );
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            return new StoredProject("", "", null, null, new StoreFault(StoreTrouble.Unreadable, path, PathTrouble.Unread(e)));
        }
    }

    /// <summary>Replaces the project file in one step: a reader finds the former or the new text, never a part of one. The former text is kept.</summary>
    /// <param name="path">The project's folder or file; a file that is not there yet is made.</param>
    /// <param name="text">The new text.</param>
    /// <param name="expected">The text that was loaded: where the file no longer says that, it is left alone. Null saves whatever stands there.</param>
    /// <returns>Null when it is saved; else why not, and the former file is as it was.</returns>
    public static StoreFault? Save(string path, string text, string? expected = null) => Save(path, text, expected, null);

    // The step is told after each thing that is done to the disk, so that a test can break off there.
    internal static StoreFault? Save(string path, string text, string? expected, Action? step)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            var file = Target(path);
            if (Path.GetDirectoryName(file) is not { } folder || !Directory.Exists(folder))
            {
                return new StoreFault(StoreTrouble.NotThere, path, "its folder is not there; a folder that is");
            }

            using var turn = WriterTurn.Take(file);
            return turn.IsRefused
                ? new StoreFault(StoreTrouble.Unwritable, path, "is being saved by another program; a moment later")
                : SaveInTurn(path, file, Encoding.UTF8.GetBytes(text), expected, turn.IsHeld, step);
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            return new StoreFault(StoreTrouble.Unwritable, path, $"cannot be written ({PathTrouble.Why(e)}); a folder that may be written");
        }
    }

    private static StoreFault? SaveInTurn(string path, string file, byte[] bytes, string? expected, bool isAlone, Action? step)
    {
        var former = File.Exists(file) ? File.ReadAllBytes(file) : null;
        if (expected is not null && (former is null || Encoding.UTF8.GetString(former) != expected))
        {
            return Changed(path);
        }

        if (former is not null && former.AsSpan().SequenceEqual(bytes))
        {
            return null;
        }

        if (former is not null && File.GetAttributes(file).HasFlag(FileAttributes.ReadOnly))
        {
            return new StoreFault(StoreTrouble.Unwritable, path, "is write-protected; a file that may be written");
        }

        if (isAlone)
        {
            RemoveLeftovers(file);
        }

        var (draft, kept) = (Beside(file), Beside(file));
        try
        {
            WholeFile.Write(draft, bytes, step);
            if (former is not null)
            {
                WholeFile.Write(kept, former, step);
                WholeFile.TakePermissions(file, draft, kept);
                Keep(file, former, kept, step);
            }

            // Once more, for a program that takes no turns: what it wrote meanwhile is not replaced unseen.
            if (expected is not null && !WholeFile.Says(file, former!))
            {
                WholeFile.Discard(draft);
                return Changed(path);
            }

            File.Move(draft, file, overwrite: true);
            step?.Invoke();
            return null;
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            WholeFile.Discard(draft);
            WholeFile.Discard(kept);
            throw;
        }
    }

    private static StoreFault Changed(string path) =>
        new(StoreTrouble.Changed, path, "was changed by another program since it was read; read it again, then change it");

    private static (string File, StoreFault? Trouble) Locate(string path)
    {
        try
        {
            var full = Path.GetFullPath(path);
            if (Directory.Exists(full))
            {
                var inside = Path.Combine(full, FileName);
                return File.Exists(inside) ? (inside, null) : ("", new StoreFault(StoreTrouble.NotThere, path, $"has no {FileName} in it; a project folder"));
            }

            return File.Exists(full) ? (full, null) : ("", new StoreFault(StoreTrouble.NotThere, path, "is not there; a project folder or its file"));
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            return ("", new StoreFault(StoreTrouble.NotThere, path, $"is not a path ({PathTrouble.Why(e)}); a project folder or its file"));
        }
    }

    // A link is followed, so that the file it stands for is replaced and the link stays.
    private static string Target(string path)
    {
        var full = Path.GetFullPath(path);
        var file = Directory.Exists(full) ? Path.Combine(full, FileName) : full;
        return new FileInfo(file).LinkTarget is null ? file : File.ResolveLinkTarget(file, returnFinalTarget: true)!.FullName;
    }

    // One byte beyond what the reader accepts is enough for it to refuse; a device that never ends is not read to its end.
    private static byte[] ReadAtMost(string file, int most)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[stream.CanSeek ? Math.Min(stream.Length, most) : most];
        var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return bytes[..read];
    }

    // What a save left behind that was broken off; nobody else is saving while the turn is held.
    private static void RemoveLeftovers(string file)
    {
        foreach (var leftover in Directory.GetFiles(Path.GetDirectoryName(file)!, Path.GetFileName(file) + ".*.tmp"))
        {
            WholeFile.Discard(leftover);
        }
    }

    // At no moment is there no project file, nor half a version: the former text stands in a file of its own before it is given a version's name.
    private static void Keep(string file, byte[] former, string kept, Action? step)
    {
        if (WholeFile.Says(Version(file, 1), former))
        {
            // A save that was broken off has kept it already: no version is pushed out for nothing.
            WholeFile.Discard(kept);
            return;
        }

        // Only up to the first gap, which such a save leaves too.
        var gap = Enumerable.Range(1, KeptVersions).FirstOrDefault(version => !File.Exists(Version(file, version)), KeptVersions);
        for (var version = gap - 1; version >= 1; version--)
        {
            File.Move(Version(file, version), Version(file, version + 1), overwrite: true);
            step?.Invoke();
        }

        File.Move(kept, Version(file, 1), overwrite: true);
        step?.Invoke();
    }

    private static string Beside(string file) => $"{file}.{Path.GetRandomFileName()}.tmp";

    private static string Version(string file, int version) => $"{file}.{version.ToString(CultureInfo.InvariantCulture)}";
}
