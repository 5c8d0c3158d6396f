using System.Collections.Concurrent;
using System.Reflection;
using Stillwall.Files;
using Stillwall.Files.Projects;

namespace Stillwall.Web.Store;

/// <summary>The folder in which projects are kept, and those that are open.</summary>
internal sealed class Workshop : IDisposable
{
    private const string DemoName = "reading-room",
        FirstName = "cabinet";

    private readonly ConcurrentDictionary<string, OpenProject> open = new(StringComparer.Ordinal);
    private readonly Lock gate = new();
    private readonly TimeProvider clock;
    private readonly string? given;
    private string? current;

    /// <summary>Prepares the workshop; nothing is opened yet.</summary>
    /// <param name="folder">Folder in which projects are kept; null for one of the user's own.</param>
    /// <param name="project">Project folder to open first; null for the first there is, or the demo.</param>
    internal Workshop(string? folder, string? project, TimeProvider clock)
    {
        this.clock = clock;
        given = project is null ? null : Path.GetFullPath(project);
        if (given is not null && File.Exists(given))
        {
            given = Path.GetDirectoryName(given);
        }

        Folder = Path.GetFullPath(
            folder
                ?? (given is not null ? Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(given)) : null)
                ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), "Stillwall", "projects")
        );
    }

    /// <summary>Full path of the folder in which projects are kept.</summary>
    internal string Folder { get; }

    /// <summary>Names of the project folders that are there.</summary>
    internal IReadOnlyList<string> Names
    {
        get
        {
            try
            {
                return Directory.Exists(Folder)
                    ?
                    [
                        .. Directory
                            .GetDirectories(Folder)
                            .Where(d => File.Exists(Path.Combine(d, ProjectStore.FileName)))
                            .Select(d => Path.GetFileName(d)!)
                            .Order(StringComparer.Ordinal),
                    ]
                    : [];
            }
            catch (Exception e) when (PathTrouble.Is(e))
            {
                return [];
            }
        }
    }

    /// <summary>The project that a page opens on; the demo is made on the first start.</summary>
    internal (OpenProject? Project, IReadOnlyList<string> Faults) Current()
    {
        lock (gate)
        {
            if (current is null && given is not null)
            {
                return Open(given, FirstNameOf(given));
            }

            if (current is null && Names is [var first, ..])
            {
                return Find(first);
            }

            return current is not null ? Find(current)
                : MakeDemo() is { } fault ? (null, [fault])
                : Find(DemoName);
        }
    }

    /// <summary>Computes what a page opens on, so that it is there when the first page asks.</summary>
    internal void ComputeFirst() => _ = Current().Project?.Now.Plan.Question(0);

    /// <summary>A project by the name of its folder; it becomes the one that pages open on.</summary>
    internal (OpenProject? Project, IReadOnlyList<string> Faults) Find(string name)
    {
        if (open.TryGetValue(name, out var found))
        {
            current = name;
            return (found, []);
        }

        return IsName(name) ? Open(Path.Combine(Folder, name), name) : (null, [$"\"{name}\" is no name of a project folder"]);
    }

    /// <summary>A project that is open already, by the name of its folder; null where it is not.</summary>
    internal OpenProject? Opened(string name) => open.GetValueOrDefault(name);

    /// <summary>Makes a copy of a project under another name.</summary>
    /// <returns>Why not; null when it is done.</returns>
    internal string? Duplicate(OpenProject project, string name) =>
        Make(
            name,
            folder =>
            {
                foreach (var (path, file) in ProjectZip.FilesOf(project.Folder))
                {
                    Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(folder, path))!);
                    File.Copy(file, Path.Combine(folder, path));
                }
            }
        );

    /// <summary>Unpacks an archive as a project of that name.</summary>
    /// <returns>Why not; null when it is done.</returns>
    internal string? Import(string name, Stream archive) =>
        Make(
            name,
            folder =>
            {
                ProjectZip.Unpack(archive, folder);
                var stored = ProjectStore.Load(folder);
                if (stored.Trouble is { } trouble)
                {
                    throw new InvalidDataException(trouble.Message);
                }

                if (stored.Reading!.Faults is [var fault, ..])
                {
                    throw new InvalidDataException(fault.ToString());
                }
            }
        );

    /// <summary>Makes a project from the demo.</summary>
    /// <returns>Why not; null when it is done.</returns>
    internal string? MakeDemo(string name = DemoName) =>
        Make(
            name,
            folder =>
            {
                Directory.CreateDirectory(Path.Combine(folder, "measurements"));
                File.WriteAllText(Path.Combine(folder, "drivers.csv"), Embedded("demo/drivers.csv"));
                File.WriteAllText(Path.Combine(folder, "stillwall.schema.json"), ProjectSchema.Write());
                File.WriteAllText(Path.Combine(folder, ProjectStore.FileName), Embedded("demo/stillwall.json"));
            }
        );

    /// <summary>Whether a name can be that of a project folder: letters, figures, blanks, points, dashes and underscores.</summary>
    internal static bool IsName(string name) =>
        name.Length is > 0 and <= 80 && name == name.Trim() && name[0] != '.' && name.All(c => char.IsLetterOrDigit(c) || c is ' ' or '.' or '-' or '_');

    public void Dispose()
    {
        foreach (var project in open.Values)
        {
            project.Dispose();
        }
    }

    private static string FirstNameOf(string folder) => Path.GetFileName(Path.TrimEndingDirectorySeparator(folder)) is { Length: > 0 } name ? name : FirstName;

    private (OpenProject? Project, IReadOnlyList<string> Faults) Open(string folder, string name)
    {
        lock (gate)
        {
            if (open.TryGetValue(name, out var there))
            {
                current = name;
                return (there, []);
            }

            var (project, faults) = OpenProject.Open(folder, clock);
            if (project is not null)
            {
                open[name] = project;
                current = name;
            }

            return (project, faults);
        }
    }

    private string? Make(string name, Action<string> fill)
    {
        if (!IsName(name))
        {
            return $"\"{name}\" is no name for a folder; letters, figures, blanks, points, dashes and underscores, 80 at most";
        }

        var folder = Path.Combine(Folder, name);
        if (Path.Exists(folder))
        {
            return $"\"{name}\" is there already; another name";
        }

        var draft = Path.Combine(Folder, $".{Path.GetRandomFileName()}");
        try
        {
            Directory.CreateDirectory(draft);
            fill(draft);
            Directory.Move(draft, folder);
            return null;
        }
        catch (Exception e) when (PathTrouble.Is(e) || e is InvalidDataException)
        {
            Discard(draft);
            return e is InvalidDataException ? e.Message : $"\"{name}\" {PathTrouble.Unmade(e)}";
        }
    }

    private static void Discard(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            // A hidden draft stays behind; no project is touched.
        }
    }

    private static string Embedded(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
