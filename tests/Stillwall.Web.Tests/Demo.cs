using Stillwall.Appraisals;
using Stillwall.Files.Projects;
using Stillwall.Files.Tables;
using Stillwall.Projects;

namespace Stillwall.Web.Tests;

/// <summary>The demo project, computed.</summary>
internal static class Demo
{
    internal static Facts Facts { get; } = Of(p => p);

    internal static Facts Of(Func<Project, Project> change)
    {
        var folder = Path.Combine(Source.Root, "samples", "reading-room");
        var project = ProjectReader.Read(File.ReadAllText(Path.Combine(folder, "stillwall.json"))).Project!;
        return new Facts(
            change(project),
            [.. DriverTable.Read(File.ReadAllText(Path.Combine(folder, "drivers.csv")), "drivers.csv").Rows.Select(r => r.Sheet)]
        );
    }

    /// <summary>The same cabinet, less deep.</summary>
    internal static Facts Shallower { get; } = Of(p => p with { Cabinet = p.Cabinet! with { Outside = p.Cabinet.Outside! with { DepthM = 0.28 } } });
}
