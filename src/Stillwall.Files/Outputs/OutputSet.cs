using System.Text.RegularExpressions;
using Stillwall.Files.Projects;

namespace Stillwall.Files.Outputs;

/// <summary>Why an output was not written.</summary>
/// <param name="IsInput">Whether its name is at fault, so that another one would do; else the disk or a permission is.</param>
/// <param name="Message">What is the matter and what is accepted, to stand behind the name.</param>
public sealed record OutputFault(bool IsInput, string Message)
{
    internal static OutputFault Of(Exception e) => new(false, $"cannot be written ({PathTrouble.Why(e)}); a file in a folder that is there and may be written");
}

/// <summary>
/// Everything that one command writes because an output option asked for it. The one place that decides where such an option may write: never over a
/// project's own files or what the command reads, and over nothing that is not an earlier output. Each file is written beside its place when it is
/// added, and all are put in their places at the end.
/// </summary>
/// <remarks>A hard link needs no look at its number: its name is given to the new file, and the file behind the other name stays as it is.</remarks>
public sealed partial class OutputSet : IDisposable
{
    private readonly HashSet<string> inputs = new(StringComparer.OrdinalIgnoreCase);

    private readonly HashSet<string> projects = new(StringComparer.Ordinal);

    private readonly Dictionary<string, WriterTurn> turns = new(StringComparer.Ordinal);

    private readonly List<Step> steps = [];

    /// <summary>Remembers a file that the command reads.</summary>
    /// <param name="file">Its full path.</param>
    public void Reads(string file) => inputs.Add(FolderPath.Real(file));

    /// <summary>Remembers the project that the command is about.</summary>
    /// <param name="file">Full path of the project file.</param>
    public void ReadsProject(string file) => projects.Add(file);

    /// <summary>Writes a file beside its place.</summary>
    /// <param name="path">Full path of the output.</param>
    /// <param name="bytes">All of it.</param>
    /// <param name="otherHeads">For a table: header lines that the same option writes at other times.</param>
    /// <returns>Null when it can be put in its place; else why not, and nothing has changed.</returns>
    public OutputFault? Add(string path, byte[] bytes, params IReadOnlyList<string> otherHeads) =>
        Tried(() =>
            Device.Open(path) is { } device
                ? Later(path, device, bytes)
                : Add(path, bytes, real => WholeFile.Says(real, bytes) || OwnMark.Is(real, bytes, otherHeads))
        );

    /// <summary>Whether a place is free of what must stay, before anything is written.</summary>
    /// <param name="path">Full path of a file or folder.</param>
    /// <returns>Null where it is.</returns>
    public OutputFault? CheckPlace(string path) => Tried(() => CheckPlace(path, FolderPath.Real(path)));

    /// <summary>Puts everything in its place, a file at a time; each is whole at every moment.</summary>
    /// <returns>Null when all is done; else the file that could not be put there, and why.</returns>
    public (string File, OutputFault Fault)? Place()
    {
        while (steps is [var step, ..])
        {
            try
            {
                Do(step);
                steps.RemoveAt(0);
            }
            catch (Exception e) when (PathTrouble.Is(e))
            {
                return (step.Named, OutputFault.Of(e));
            }
        }

        return null;
    }

    /// <summary>Throws away what was not put in its place.</summary>
    public void Dispose()
    {
        foreach (var step in steps)
        {
            step.Device?.Dispose();
            if (step.Draft is { } draft)
            {
                WholeFile.Discard(draft);
            }
        }

        foreach (var turn in turns.Values)
        {
            turn.Dispose();
        }

        steps.Clear();
        turns.Clear();
    }

    /// <summary>As the other; whether a file that is there is an own earlier output is for the caller to say.</summary>
    internal OutputFault? Add(string path, byte[] bytes, Func<string, bool> isOwn)
    {
        var real = FolderPath.Real(path);
        if (CheckPlace(path, real) is { } taken)
        {
            return taken;
        }

        if (steps.Any(s => string.Equals(s.Target, real, StringComparison.OrdinalIgnoreCase)))
        {
            return new OutputFault(true, "is named for two outputs; a name for each");
        }

        if (Directory.Exists(real))
        {
            throw new UnauthorizedAccessException();
        }

        if (File.Exists(real))
        {
            if (!isOwn(real))
            {
                return new OutputFault(true, "is there and is not what this option wrote; another name, or take that file away first");
            }

            if (File.GetAttributes(real).HasFlag(FileAttributes.ReadOnly))
            {
                return new OutputFault(false, "is write-protected; a file that may be written");
            }
        }

        return Turn(Path.GetDirectoryName(real)!) ?? Draft(path, real, bytes);
    }

    /// <summary>Takes an own earlier output away, when everything else is in its place.</summary>
    internal void Remove(string file) => steps.Add(new Step(file, null, file));

    /// <summary>Writes a file beside its place without asking what is there.</summary>
    internal OutputFault? Draft(string named, string real, byte[] bytes)
    {
        var draft = Path.Combine(Path.GetDirectoryName(real)!, $"stillwall-{Path.GetRandomFileName()}.draft");
        steps.Add(new Step(named, draft, real));
        WholeFile.Write(draft, bytes);
        if (File.Exists(real))
        {
            WholeFile.TakePermissions(real, draft);
        }

        return null;
    }

    /// <summary>Takes the turn to write in a folder, and clears away what a run left there that was broken off.</summary>
    internal OutputFault? Turn(string folder)
    {
        if (turns.ContainsKey(folder))
        {
            return null;
        }

        var turn = WriterTurn.Take(folder);
        turns.Add(folder, turn);
        if (turn.IsRefused)
        {
            return new OutputFault(false, "cannot be written (another program is writing in its folder); a moment later");
        }

        foreach (
            var leftover in turn.IsHeld && Directory.Exists(folder)
                ? Directory.GetFiles(folder, "stillwall-*.draft").Where(f => LeftBehind().IsMatch(Path.GetFileName(f)))
                : []
        )
        {
            WholeFile.Discard(leftover);
        }

        return null;
    }

    internal static OutputFault? Tried(Func<OutputFault?> work)
    {
        try
        {
            return work();
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            return OutputFault.Of(e);
        }
    }

    private OutputFault? CheckPlace(string path, string real) =>
        ProtectedPlace.Why(path, real, inputs, projects) is { } why ? new OutputFault(true, $"{why}, which no output replaces; another name") : null;

    private OutputFault? Later(string path, FileStream device, byte[] bytes)
    {
        steps.Add(new Step(path, null, path, device, bytes));
        return null;
    }

    private static void Do(Step step)
    {
        if (step.Device is { } device)
        {
            device.Write(step.Bytes);
            device.Dispose();
        }
        else if (step.Draft is { } draft)
        {
            File.Move(draft, step.Target, overwrite: true);
        }
        else
        {
            File.Delete(step.Target);
        }
    }

    [GeneratedRegex(@"\Astillwall-[a-z0-9]{8}\.[a-z0-9]{3}\.draft\z", RegexOptions.CultureInvariant)]
    private static partial Regex LeftBehind();

    // A draft that is moved to its place; a device with its bytes; neither where a file is taken away.
    private sealed record Step(string Named, string? Draft, string Target, FileStream? Device = null, byte[]? Bytes = null);
}
