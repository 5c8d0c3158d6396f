using System.Globalization;
using System.Text;
using Stillwall.Cli.Output;
using Stillwall.Files;
using Stillwall.Files.Outputs;

namespace Stillwall.Cli.Running;

/// <summary>One run: holds back what goes to standard output until it is known that the run succeeds.</summary>
internal sealed class Session(Terminal terminal) : IDisposable
{
    private const int LongestLine = 300;

    private readonly MemoryStream held = new();

    private readonly OutputSet outputs = new();

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

    /// <summary>Puts a text on standard output: what is hidden in it is made visible, only our own colours are let through.</summary>
    internal void Print(string text) => held.Write(Encoding.UTF8.GetBytes(Ink.Shown(text)));

    internal void PrintLine(string line = "") => Print(Visible.Of(line) + "\n");

    /// <summary>Asks on standard error, at once: standard output keeps to what was done.</summary>
    internal void Ask(string words)
    {
        Terminal.Error.Write(Visible.Of(words, keepsLines: true));
        Terminal.Error.Flush();
    }

    /// <summary>Says one line on standard error, at once.</summary>
    internal void Tell(string line)
    {
        Terminal.Error.Write(OneLine(line) + "\n");
        Terminal.Error.Flush();
    }

    /// <summary>Remembers the project that this run is about: no output replaces what belongs to it.</summary>
    internal void IsAbout(string projectFile) => outputs.ReadsProject(projectFile);

    /// <summary>Makes sure that an output may be written at a place.</summary>
    internal void CheckPlace(string file) => Refuse(file, outputs.CheckPlace(FullPath(file)));

    /// <summary>Makes a folder to write into where there is none.</summary>
    internal void MakeFolder(string folder)
    {
        var path = FullPath(folder);
        CheckPlace(folder);
        try
        {
            Directory.CreateDirectory(path);
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            throw Refusal.Path($"{folder}: {PathTrouble.Unmade(e)}");
        }
    }

    /// <summary>Takes what a run was asked to write: into a file, or for <c>-</c> on standard output. It is there when the run has succeeded.</summary>
    /// <param name="file">Path of the file, or <c>-</c>.</param>
    /// <param name="bytes">All of it.</param>
    /// <param name="otherHeads">For a table: header lines that the same option writes at other times.</param>
    internal void Deliver(string file, byte[] bytes, IReadOnlyList<string> otherHeads)
    {
        if (file == "-")
        {
            held.Write(bytes);
            return;
        }

        Refuse(file, outputs.Add(FullPath(file), bytes, otherHeads));
    }

    /// <summary>Takes the files of a verb that fills a folder, where its own old ones are cleared away; names what else is there.</summary>
    internal void Deliver(string folder, string verb, IReadOnlyList<MadeFile> files)
    {
        MakeFolder(folder);
        var (strangers, file, fault) = MadeFolder.Add(outputs, FullPath(folder), verb, files);
        Refuse(Path.Combine(folder, file ?? ""), fault);
        if (strangers.Count > 0)
        {
            Tell(
                $"{folder}: left as {(strangers.Count == 1 ? "it is, for no verb wrote it" : "they are, for no verb wrote them")}: "
                    + $"{string.Join(", ", strangers)}"
            );
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
            outputs.Reads(path);
            return read <= most
                ? bytes[..read]
                : throw Refusal.Input($"{shown}: is larger than {(most >> 20).ToString(CultureInfo.InvariantCulture)} MB; a smaller file");
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            throw Refusal.Path($"{shown}: {PathTrouble.Unread(e)}");
        }
    }

    /// <summary>Lets go what was held back: files first, then standard output.</summary>
    internal void Release()
    {
        if (outputs.Place() is { } trouble)
        {
            var near = Path.GetRelativePath(Terminal.Folder, trouble.File);
            Refuse(near.StartsWith("..", StringComparison.Ordinal) ? trouble.File : near, trouble.Fault);
        }

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

    public void Dispose()
    {
        outputs.Dispose();
        held.Dispose();
    }

    private static void Refuse(string file, OutputFault? fault)
    {
        if (fault is not null)
        {
            throw fault.IsInput ? Refusal.Input($"{file}: {fault.Message}") : Refusal.Path($"{file}: {fault.Message}");
        }
    }

    // EPIPE on Unix; ERROR_BROKEN_PIPE and ERROR_NO_DATA on Windows.
    private static bool IsBrokenPipe(IOException e) => OperatingSystem.IsWindows() ? (e.HResult & 0xFFFF) is 109 or 232 : e.HResult == 32;

    private static string OneLine(string text)
    {
        var line = Visible.Of(text);
        return line.Length <= LongestLine ? line : line[..(char.IsHighSurrogate(line[LongestLine - 2]) ? LongestLine - 2 : LongestLine - 1)] + "…";
    }
}
