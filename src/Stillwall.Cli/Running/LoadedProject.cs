using Stillwall.Appraisals;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Projects;

namespace Stillwall.Cli.Running;

/// <summary>A project with its candidates, ready to be computed.</summary>
/// <param name="Named">Folder or file as it was named.</param>
/// <param name="File">Full path of the project file.</param>
/// <param name="Text">Text of the project file.</param>
/// <param name="Project">The project.</param>
/// <param name="Candidates">Drivers of its table that have no fault.</param>
internal sealed record LoadedProject(string Named, string File, string Text, Project Project, IReadOnlyList<DriverSheet> Candidates)
{
    /// <summary>Loads a project and says what is wrong with it.</summary>
    /// <param name="session">The run, for warnings.</param>
    /// <param name="path">Folder or file; null is the current folder.</param>
    /// <exception cref="Refusal">It cannot be computed as it stands.</exception>
    internal static LoadedProject Load(Session session, string? path)
    {
        var named = path ?? ".";
        var stored = ProjectStore.Load(session.FullPath(named));
        if (stored.Trouble is { } trouble)
        {
            throw Refusal.Path((trouble with { Path = named }).ToString());
        }

        session.IsAbout(stored.File);
        if (stored.Reading is not { Project: { } project })
        {
            throw Refusal.Input(stored.Reading!.Faults.Select(f => f.ToString()));
        }

        var candidates = CandidatesOf(session, stored.File, project, out var warnings);
        foreach (var warning in warnings)
        {
            session.Tell($"warning: {warning}");
        }

        return new LoadedProject(named, stored.File, stored.Text!, project, candidates);
    }

    /// <summary>The same project from a changed text of its file, with its candidates; it warns of nothing that was warned of before.</summary>
    /// <exception cref="Refusal">The changed text has a fault.</exception>
    internal LoadedProject With(Session session, string text)
    {
        var reading = ProjectReader.Read(text, Path.GetFileName(File));
        return reading.Project is { } project
            ? this with
            {
                Text = text,
                Project = project,
                Candidates = CandidatesOf(session, File, project, out _),
            }
            : throw Refusal.Input(reading.Faults.Select(f => f.ToString()));
    }

    /// <summary>The line that makes the change a finding proposes.</summary>
    internal string ApplyLine(string id) =>
        Named == "." ? $"stillwall apply {id}" : $"stillwall apply {id} --project {(Named.Contains(' ', StringComparison.Ordinal) ? $"\"{Named}\"" : Named)}";

    /// <summary>Everything computed from it, each result when it is asked for.</summary>
    internal Facts Facts() => new(Project, Candidates);

    private static IReadOnlyList<DriverSheet> CandidatesOf(Session session, string path, Project project, out IReadOnlyList<Fault> warnings)
    {
        warnings = [];
        var (folder, file) = (Path.GetDirectoryName(path)!, Path.GetFileName(path));
        var chosen = project.Driver?.Name;
        if (project.Drivers is not { } table)
        {
            return chosen is null
                ? []
                : throw Refusal.Input(
                    Told(
                        file,
                        "driver",
                        $"names \"{chosen}\", but no table of drivers is stated; \"drivers\" with the name of a CSV file in the project folder"
                    )
                );
        }

        if (FolderPath.Inside(folder, table) is null)
        {
            throw Refusal.Input(Told(file, "drivers", $"\"{table}\" leads out of the project folder; a file within it"));
        }

        var read = DriverTable.Read(session.Read(Path.Combine(folder, table), DriverTable.GreatestLength, table), table);
        var fatal = chosen is null ? [] : read.Faults.Concat(read.Rows.Where(r => r.Sheet.Name == chosen).SelectMany(r => r.Faults)).ToList();
        if (fatal.Count > 0)
        {
            throw Refusal.Input(fatal.Select(f => f.ToString()));
        }

        var names = read.Rows.Select(r => r.Sheet.Name).ToList();
        if (chosen is not null && !names.Contains(chosen))
        {
            throw Refusal.Input(Told(file, "driver", $"\"{chosen}\" is not in {table}{NearestWord.Suggest(chosen, names)}; {Listed(names)}"));
        }

        warnings = [.. read.AllFaults];
        return [.. read.Rows.Where(r => r.Faults.Count == 0).Select(r => r.Sheet)];
    }

    private static string Told(string file, string key, string message) => $"{file}: {key}: {message}";

    private static string Listed(List<string> names) =>
        names.Count == 0 ? "a row of it" : $"one of {string.Join(", ", names.Take(12))}{(names.Count > 12 ? " …" : "")}";
}
