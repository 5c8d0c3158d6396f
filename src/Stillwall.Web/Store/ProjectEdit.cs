using Stillwall.Files.Projects;

namespace Stillwall.Web.Store;

/// <summary>A change of the text of a project.</summary>
/// <param name="Of">The changed text; throws where it cannot be made, with what is wrong.</param>
internal sealed record ProjectEdit(IReadOnlyList<string> Keys, Func<string, string> Of)
{
    /// <summary>States values, as <c>stillwall set</c> does.</summary>
    internal static ProjectEdit Setting(IReadOnlyList<(string Key, string Stated)> changes) =>
        new([.. changes.Select(c => c.Key)], text => changes.Aggregate(text, (t, c) => ProjectTextEditor.SetStated(t, c.Key, c.Stated)));

    /// <summary>Takes a value or an entry of a list out.</summary>
    internal static ProjectEdit Removing(string key) => new([key], text => ProjectTextEditor.Remove(text, key));

    /// <summary>Adds an entry to a list.</summary>
    internal static ProjectEdit Adding(string list, IReadOnlyList<(string Key, string Stated)> entry) =>
        new([list], text => ProjectTextEditor.Append(text, list, entry));
}
