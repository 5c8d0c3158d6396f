namespace Stillwall.Files.Projects;

/// <summary>Paths of files that belong to a project folder.</summary>
public static class FolderPath
{
    /// <summary>Finds a file within a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="name">Path of the file as the project names it, relative to the folder.</param>
    /// <returns>Its full path; null where <c>..</c>, an absolute path or a link on the way leads out of the folder, or where it is no path.</returns>
    public static string? Inside(string folder, string name)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(name);
        try
        {
            var home = Path.GetFullPath(folder);
            var file = Path.GetFullPath(Path.Combine(home, name));
            return Within(home, file) && !LinksOut(home, file) ? file : null;
        }
        catch (Exception e) when (PathTrouble.Is(e))
        {
            return null;
        }
    }

    /// <summary>Name of the folder of a project that holds what was measured.</summary>
    internal const string Measurements = "measurements";

    private const int MostLinks = 40;

    /// <summary>A path with every link on the way followed; what is not there yet stands in it as it was named.</summary>
    /// <exception cref="IOException">Links lead round in a circle.</exception>
    internal static string Real(string path) => Real(Path.GetFullPath(path), 0);

    private static string Real(string full, int links)
    {
        var at = Path.GetPathRoot(full)!;
        foreach (var part in full[at.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            at = Path.Combine(at, part);
            if (new FileInfo(at).LinkTarget is not null)
            {
                at = links < MostLinks ? Real(File.ResolveLinkTarget(at, returnFinalTarget: false)!.FullName, links + 1) : throw new IOException();
            }
        }

        return at;
    }

    private static bool LinksOut(string home, string file)
    {
        var at = home;
        foreach (var part in Path.GetRelativePath(home, file).Split(Path.DirectorySeparatorChar))
        {
            at = Path.Combine(at, part);
            if (
                new FileInfo(at).LinkTarget is not null
                && (File.ResolveLinkTarget(at, returnFinalTarget: true) is not { } target || !Within(home, target.FullName))
            )
            {
                return true;
            }
        }

        return false;
    }

    private static bool Within(string folder, string file) =>
        file.StartsWith(Path.TrimEndingDirectorySeparator(folder) + Path.DirectorySeparatorChar, StringComparison.Ordinal);
}
