namespace Stillwall.Web.Texts;

/// <summary>Texts that every page has.</summary>
internal static class PageTexts
{
    /// <summary>Title of the window.</summary>
    internal static string Title(string stage, string? project) =>
        project is null ? $"{stage}, {ShellTexts.Product}" : $"{stage}, {project}, {ShellTexts.Product}";
}
