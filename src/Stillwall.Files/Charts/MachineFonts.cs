namespace Stillwall.Files.Charts;

/// <summary>Finds a sans font on the machine for pictures of points; the project ships none.</summary>
internal static class MachineFonts
{
    // Widespread sans families, regular and bold, in the order in which they are liked (our choice).
    private static readonly (string Regular, string Bold)[] Liked =
    [
        ("AtkinsonHyperlegible-Regular.ttf", "AtkinsonHyperlegible-Bold.ttf"),
        ("DejaVuSans.ttf", "DejaVuSans-Bold.ttf"),
        ("LiberationSans-Regular.ttf", "LiberationSans-Bold.ttf"),
        ("NotoSans-Regular.ttf", "NotoSans-Bold.ttf"),
        ("segoeui.ttf", "segoeuib.ttf"),
        ("arial.ttf", "arialbd.ttf"),
        ("Arial.ttf", "Arial Bold.ttf"),
    ];

    private static readonly string[] Folders =
    [
        "/usr/share/fonts",
        "/usr/local/share/fonts",
        "/Library/Fonts",
        "/System/Library/Fonts",
        Environment.GetFolderPath(Environment.SpecialFolder.Fonts),
        Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".fonts"),
    ];

    /// <summary>A regular and a bold font file, or null where the machine has none of the liked families.</summary>
    internal static (string Regular, string Bold)? Find()
    {
        var files = Folders
            .Where(f => f.Length > 0 && Directory.Exists(f))
            .Distinct()
            .SelectMany(f =>
                Directory.EnumerateFiles(
                    f,
                    "*.ttf",
                    new EnumerationOptions
                    {
                        RecurseSubdirectories = true,
                        IgnoreInaccessible = true,
                        MaxRecursionDepth = 6,
                    }
                )
            )
            .GroupBy(f => Path.GetFileName(f))
            .ToDictionary(g => g.Key, g => g.Order(StringComparer.Ordinal).First());
        foreach (var (regular, bold) in Liked)
        {
            if (files.TryGetValue(regular, out var found))
            {
                return (found, files.GetValueOrDefault(bold, found));
            }
        }

        return null;
    }
}
