using System.Globalization;
using System.Text;
using Stillwall.Files;

namespace Stillwall.Cli.Running;

/// <summary>One run: holds back what goes to standard output until it is known that the run succeeds.</summary>
internal sealed class Session(Terminal terminal) : IDisposable
{
    private const int LongestLine = 300;

    private readonly MemoryStream held = new();

    internal Terminal Terminal { get; } = terminal;

    /// <summary>Full path of what a person named.</summary>
    /// <exception cref="Refusal">It is no path.</exception>
    internal string FullPath(string path)
    {
        try
        {
            return Path.GetFullPath(path.Length == 0 ? throw new ArgumentException("empty", nameof(path)) : path, Terminal.Folder);
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            throw Refusal.Path($"\"{path}\": is not a path; a folder or a file");
        }
    }

    /// <summary>Puts a text on standard output.</summary>
    internal void Print(string text) => held.Write(Encoding.UTF8.GetBytes(text));

    internal void PrintLine(string line = "") => Print(line + "\n");

    /// <summary>Says one line on standard error, at once.</summary>
    internal void Tell(string line)
    {
        Terminal.Error.Write(OneLine(line) + "\n");
        Terminal.Error.Flush();
    }

    /// <summary>Makes a folder where there is none.</summary>
    internal void MakeFolder(string folder)
    {
        try
        {
            Directory.CreateDirectory(FullPath(folder));
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            throw Refusal.Path($"{folder}: cannot be made ({PathTrouble.Why(e)}); a folder in one that may be written");
        }
    }

    /// <summary>Writes what a run was asked to write, into a file or, for <c>-</c>, on standard output.</summary>
    /// <param name="file">Path of the file, or <c>-</c>.</param>
    /// <param name="text">Its text.</param>
    internal void Deliver(string file, string text) => Deliver(file, Encoding.UTF8.GetBytes(text));

    /// <inheritdoc cref="Deliver(string, string)"/>
    internal void Deliver(string file, ReadOnlySpan<byte> bytes)
    {
        if (file == "-")
        {
            held.Write(bytes);
            return;
        }

        var path = FullPath(file);
        try
        {
            File.WriteAllBytes(path, bytes);
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            throw Refusal.Path($"{file}: cannot be written ({PathTrouble.Why(e)}); a file in a folder that is there and may be written");
        }
    }

    /// <summary>Reads a file that a person named.</summary>
    internal byte[] Read(string file, int most, string? shown = null)
    {
        var path = FullPath(file);
        shown ??= file;
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            var bytes = new byte[stream.CanSeek ? Math.Min(stream.Length, most + 1) : most + 1];
            var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return read <= most ? bytes[..read] : throw Refusal.Input($"{shown}: is larger than {(most >> 20).ToString(CultureInfo.InvariantCulture)} MB; a smaller file");
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            throw Refusal.Path($"{shown}: {(e is FileNotFoundException or DirectoryNotFoundException ? "is not there" : $"cannot be read ({PathTrouble.Why(e)})")}; a file that may be read");
        }
    }

    /// <summary>Lets go what was held back.</summary>
    internal void Release()
    {
        try
        {
            held.WriteTo(Terminal.Output);
            Terminal.Output.Flush();
            held.SetLength(0);
        }
        catch (IOException e) when (!IsBrokenPipe(e))
        {
            throw Refusal.Path($"standard output: cannot be written ({PathTrouble.Why(e)})");
        }
        catch (IOException)
        {
            // Whoever was reading has seen enough.
        }
    }

    public void Dispose() => held.Dispose();

    // EPIPE on Unix; ERROR_BROKEN_PIPE and ERROR_NO_DATA on Windows.
    private static bool IsBrokenPipe(IOException e) => OperatingSystem.IsWindows() ? (e.HResult & 0xFFFF) is 109 or 232 : e.HResult == 32;

    // What would break the line or hide itself is shown by its code.
    private static string OneLine(string text)
    {
        var line = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            var isHidden = char.IsControl(c) || char.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;
            line.Append(isHidden ? $"\\u{(int)c:x4}" : c);
        }

        return line.Length <= LongestLine ? line.ToString() : line.ToString(0, char.IsHighSurrogate(line[LongestLine - 2]) ? LongestLine - 2 : LongestLine - 1) + "…";
    }
}
