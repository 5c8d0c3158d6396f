namespace Stillwall.Files.Tests;

/// <summary>Where the tests find their files.</summary>
internal static class TestData
{
    internal static string Folder(string topic) => Path.Combine(AppContext.BaseDirectory, "data", topic);

    internal static string Demo(string file)
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Stillwall.slnx")))
        {
            at = at.Parent;
        }

        return Path.Combine(at?.FullName ?? throw new InvalidOperationException("the tests run outside the repository"), "samples", "reading-room", file);
    }

    internal static TheoryData<string> Files(string topic, string ending)
    {
        var data = new TheoryData<string>();
        foreach (var file in Directory.GetFiles(Folder(topic), "*" + ending).Order(StringComparer.Ordinal))
        {
            data.Add(Path.GetFileName(file));
        }

        return data;
    }

    internal static string[] ExpectedLines(string topic, string file)
    {
        var lines = File.ReadAllText(Path.Combine(Folder(topic), Path.ChangeExtension(file, ".expected.txt")));
        return lines.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
