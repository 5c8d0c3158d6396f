namespace Stillwall.Web.Texts;

/// <summary>Texts of the list of projects.</summary>
internal static class ProjectTexts
{
    internal const string IsOpen = "open",
        Open = "Open it",
        This = "The open project",
        Export = "Export as an archive",
        File = "The project file",
        CopyName = "Name of the copy",
        Duplicate = "Duplicate";
    internal const string Import = "Import a project",
        Archive = "An archive that was exported",
        DemoName = "Name of a new project from the demo",
        Demo = "Start from the demo";

    internal static string In(string folder) => $"Kept in {folder}.";
}
