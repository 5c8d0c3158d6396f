using Stillwall.Cli.Running;
using Stillwall.Files;

namespace Stillwall.Cli.Commands;

/// <summary>Does something again whenever a project's files are saved.</summary>
internal static class Watching
{
    // Short enough to feel at once, long enough to cost nothing.
    private const int PauseMs = 250;

    /// <summary>Goes on until the run is stopped; a project that cannot be used for the moment is told and waited for.</summary>
    internal static int Of(Session session, string? project, Action once)
    {
        var at = session.FullPath(project ?? ".");
        if (!Path.Exists(at))
        {
            throw Refusal.Path($"{project}: is not there; a project folder or its file");
        }

        var folder = Directory.Exists(at) ? at : Path.GetDirectoryName(at)!;
        while (!session.Terminal.Stop.IsCancellationRequested)
        {
            var seen = Stamp(folder);
            Try(session, once);
            session.Release();
            while (Stamp(folder) == seen && !session.Terminal.Stop.WaitHandle.WaitOne(PauseMs))
            {
                // Nothing was saved yet.
            }

            if (!session.Terminal.Stop.IsCancellationRequested)
            {
                session.PrintLine();
            }
        }

        return ExitCodes.Done;
    }

    private static void Try(Session session, Action once)
    {
        try
        {
            once();
        }
        catch (Refusal refusal)
        {
            foreach (var line in refusal.Lines)
            {
                session.Tell(line);
            }
        }
    }

    // Name, size and time of everything that is stated; a folder that goes away for a moment is only another state of it.
    private static string Stamp(string folder)
    {
        try
        {
            return string.Join(
                '\n',
                new DirectoryInfo(folder)
                    .EnumerateFiles()
                    .Where(f => f.Extension is ".json" or ".csv")
                    .OrderBy(f => f.Name, StringComparer.Ordinal)
                    .Select(f => FormattableString.Invariant($"{f.Name} {f.Length} {f.LastWriteTimeUtc.Ticks}"))
            );
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            return "";
        }
    }
}
