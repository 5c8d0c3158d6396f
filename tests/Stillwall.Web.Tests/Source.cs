namespace Stillwall.Web.Tests;

/// <summary>The source tree that the tests were built from.</summary>
internal static class Source
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string folder) => File.Exists(Path.Combine(folder, "Stillwall.slnx")) ? folder : Find(Path.GetDirectoryName(folder)!);
}
