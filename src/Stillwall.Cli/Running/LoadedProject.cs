using Stillwall.Appraisals;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Projects;

namespace Stillwall.Cli.Running;

/// <summary>A project with its candidates, ready to be computed.</summary>
/// <param name="Path">Folder or file as it was named.</param>
/// <param name="Text">Text of the project file.</param>
/// <param name="Project">The project.</param>
/// <param name="Candidates">Drivers of its table that have no fault.</param>
internal sealed record LoadedProject(string Path, string Text, Project Project, IReadOnlyList<DriverSheet> Candidates)
{
    private const int GreatestTable = 16 << 20;

    /// <summary>Loads a project and says what is wrong with it.</summary>
    /// <param name="session">The run, for warnings.</param>
    /// <param name="path">Folder or file; null is the current folder.</param>
    /// <exception cref="Refusal">It cannot be computed as it stands.</exception>
    internal static LoadedProject Load(Session session, string? path)
    {
        var at = path ?? ".";
        var stored = ProjectStore.Load(at);
        if (stored.Trouble is { } trouble)
        {
            throw Refusal.Path(trouble.ToString());
        }

        if (stored.Reading is not { Project: { } project })
        {
            throw Refusal.Input(stored.Reading!.Faults.Select(f => f.ToString()));
        }

        var file = System.IO.Path.GetFileName(stored.File);
        return new LoadedProject(at, stored.Text!, project, CandidatesOf(session, stored.Folder, file, project));
    }

    /// <summary>The same project from a changed text of its file, with its candidates.</summary>
    /// <exception cref="Refusal">The changed text has a fault.</exception>
    internal LoadedProject With(Session session, string text)
    {
        var file = Directory.Exists(Path) ? System.IO.Path.Combine(Path, ProjectStore.FileName) : Path;
        var name = System.IO.Path.GetFileName(file);
        var reading = ProjectReader.Read(text, name);
        return reading.Project is { } project
            ? this with { Text = text, Project = project, Candidates = CandidatesOf(session, System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(file))!, name, project) }
            : throw Refusal.Input(reading.Faults.Select(f => f.ToString()));
    }

    /// <summary>Everything computed from it, each result when it is asked for.</summary>
    internal Facts Facts() => new(Project, Candidates);

    private static IReadOnlyList<DriverSheet> CandidatesOf(Session session, string folder, string file, Project project)
    {
        var chosen = project.Driver?.Name;
        if (project.Drivers is not { } table)
        {
            return chosen is null ? [] : throw Refusal.Input(Fault(file, "driver", $"names \"{chosen}\", but no table of drivers is stated; \"drivers\" with the name of a CSV file in the project folder"));
        }

        if (!IsInside(folder, table))
        {
            throw Refusal.Input(Fault(file, "drivers", $"\"{table}\" leads out of the project folder; a file within it"));
        }

        var read = DriverTable.Read(Session.Read(System.IO.Path.Combine(folder, table), GreatestTable), table);
        var fatal = chosen is null ? [] : read.Faults.Concat(read.Rows.Where(r => r.Sheet.Name == chosen).SelectMany(r => r.Faults)).ToList();
        if (fatal.Count > 0)
        {
            throw Refusal.Input(fatal.Select(f => f.ToString()));
        }

        var names = read.Rows.Select(r => r.Sheet.Name).ToList();
        if (chosen is not null && !names.Contains(chosen))
        {
            throw Refusal.Input(Fault(file, "driver", $"\"{chosen}\" is not in {table}{NearestWord.Suggest(chosen, names)}; {Named(names)}"));
        }

        foreach (var fault in read.AllFaults)
        {
            session.Tell($"warning: {fault}");
        }

        return [.. read.Rows.Where(r => r.Faults.Count == 0).Select(r => r.Sheet)];
    }

    private static string Fault(string file, string key, string message) => $"{file}: {key}: {message}";

    private static string Named(List<string> names) => names.Count == 0 ? "a row of it" : $"one of {string.Join(", ", names.Take(12))}{(names.Count > 12 ? " …" : "")}";

    // Neither ".." nor an absolute path nor a link on the way may lead out.
    private static bool IsInside(string folder, string table)
    {
        try
        {
            var home = System.IO.Path.GetFullPath(folder);
            var at = home;
            if (!Within(home, System.IO.Path.GetFullPath(System.IO.Path.Combine(home, table))))
            {
                return false;
            }

            foreach (var part in System.IO.Path.GetRelativePath(home, System.IO.Path.GetFullPath(System.IO.Path.Combine(home, table))).Split(System.IO.Path.DirectorySeparatorChar))
            {
                at = System.IO.Path.Combine(at, part);
                if (new FileInfo(at).LinkTarget is not null && (File.ResolveLinkTarget(at, returnFinalTarget: true) is not { } target || !Within(home, target.FullName)))
                {
                    return false;
                }
            }

            return true;
        }
        catch (Exception e) when (Session.IsOfThePath(e))
        {
            return false;
        }
    }

    private static bool Within(string folder, string file) =>
        file.StartsWith(System.IO.Path.TrimEndingDirectorySeparator(folder) + System.IO.Path.DirectorySeparatorChar, StringComparison.Ordinal);
}
