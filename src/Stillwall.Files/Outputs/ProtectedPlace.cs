using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Stillwall.Files.Projects;

namespace Stillwall.Files.Outputs;

/// <summary>
/// What no output may replace. Names are compared without regard to upper and lower case and to points at their end, as some file systems do: a name
/// that is refused for nothing costs another name, one that is not refused costs a project.
/// </summary>
internal static partial class ProtectedPlace
{
    private const string UsualTable = "drivers.csv";

    /// <summary>What a file is that must stay; null where it may be replaced.</summary>
    /// <param name="full">Its full path as it was named.</param>
    /// <param name="real">The same with every link on the way followed.</param>
    /// <param name="inputs">Real paths of what the command reads.</param>
    /// <param name="projects">Project files that the command is about; every project whose folder the file lies in counts besides.</param>
    internal static string? Why(string full, string real, IEnumerable<string> inputs, IEnumerable<string> projects)
    {
        if (new[] { full, real }.Select(path => ProjectName().Match(Path.GetFileName(path))).FirstOrDefault(name => name.Success) is { } name)
        {
            return name.Groups[1].Success ? "is the name of a kept version of a project" : "is the name of a project file";
        }

        var around = Around(full).Concat(Around(real)).Select(folder => Path.Combine(folder, ProjectStore.FileName)).Where(File.Exists);
        return projects.Concat(around).Distinct().Select(project => Why(full, real, project)).FirstOrDefault(why => why is not null)
            ?? (inputs.Any(input => AreSame(input, real)) ? "is read by this command" : null);
    }

    private static string? Why(string full, string real, string project)
    {
        var folder = Path.GetDirectoryName(project)!;
        if (IsAt(project))
        {
            return "is the project file";
        }

        if (Enumerable.Range(1, ProjectStore.KeptVersions).Any(version => IsAt($"{project}.{version.ToString(CultureInfo.InvariantCulture)}")))
        {
            return "is a kept version of the project";
        }

        if (IsAt(Path.Combine(folder, UsualTable)) || (TableOf(project) is { } table && FolderPath.Inside(folder, table) is { } named && IsAt(named)))
        {
            return "is the project's table of drivers";
        }

        var measured = Path.Combine(folder, FolderPath.Measurements);
        return File.Exists(real) && (IsWithin(measured, full) || IsWithin(FolderPath.Real(measured), real)) ? "is one of the project's measurements" : null;

        bool IsAt(string file) => AreSame(file, full) || AreSame(FolderPath.Real(file), real);
    }

    private static string? TableOf(string project)
    {
        // A file that is no project is a table of nobody.
        using var stream = new FileStream(project, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[Math.Min(stream.Length, PositionedJson.GreatestLength)];
        stream.ReadExactly(bytes);
        return PositionedJson.Parse(bytes).Root is JsonBlock root && root.Find("drivers")?.Value is JsonScalar { Type: JsonTokenType.String } table
            ? table.Text
            : null;
    }

    private static IEnumerable<string> Around(string file)
    {
        for (var folder = Path.GetDirectoryName(file); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            yield return folder;
        }
    }

    private static bool AreSame(string one, string other) => string.Equals(Bare(one), Bare(other), StringComparison.OrdinalIgnoreCase);

    private static bool IsWithin(string folder, string file) => file.StartsWith(Bare(folder) + Path.DirectorySeparatorChar, StringComparison.OrdinalIgnoreCase);

    private static string Bare(string path) => path.TrimEnd('.', ' ', Path.DirectorySeparatorChar);

    [GeneratedRegex(@"\Astillwall\.json(\.[0-9]+)?[. ]*\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ProjectName();
}
