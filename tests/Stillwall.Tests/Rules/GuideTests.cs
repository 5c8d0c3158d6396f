using System.Text.RegularExpressions;

namespace Stillwall.Tests.Rules;

/// <summary>Who follows the guide for contributors finds what it names.</summary>
public sealed partial class GuideTests
{
    [Fact]
    public void Every_path_that_the_guide_names_is_there()
    {
        var guide = File.ReadAllText(Path.Combine(Repository.Root, "CONTRIBUTING.md"));
        var paths = Named().Matches(guide).Select(m => m.Groups[1].Value).Distinct().ToList();
        Assert.True(paths.Count > 30);
        var missing = paths.Where(path => !IsThere(path)).ToList();
        Assert.True(missing.Count == 0, "name the file as it is called now, from the root of the repository:\n" + string.Join('\n', missing));
    }

    [Theory]
    [InlineData("src/Stillwall/Appraisals/Findings/<Stage>Findings.cs", true)]
    [InlineData("src/Stillwall/Appraisals/Findings/<Stage>Remedy.cs", false)]
    [InlineData("docs/decisions/", true)]
    [InlineData("docs/nowhere/guide.md", false)]
    public void A_word_in_angle_brackets_stands_for_any(string path, bool isThere) => Assert.Equal(isThere, IsThere(path));

    private static bool IsThere(string path)
    {
        var (folder, name) = (Path.GetDirectoryName(path)!, Placeholder().Replace(Path.GetFileName(path), "*"));
        var at = new DirectoryInfo(Path.Combine(Repository.Root, folder));
        return at.Exists && (name.Length == 0 || at.EnumerateFileSystemInfos(name).Any());
    }

    // In marks of code, with a slash and without a space.
    [GeneratedRegex("`([^`\\s]*/[^`\\s]*)`")]
    private static partial Regex Named();

    [GeneratedRegex("<[A-Za-z]+>")]
    private static partial Regex Placeholder();
}
