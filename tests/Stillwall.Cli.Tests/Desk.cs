using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Tests;

/// <summary>What came of one run.</summary>
internal sealed record Ran(int ExitCode, string Output, string Error)
{
    internal JsonElement Json => JsonDocument.Parse(Output).RootElement;

    internal string[] Lines => Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Cells of a CSV output, without its header.</summary>
    internal double[][] Rows =>
        [
            .. Lines
                .Skip(1)
                .Select(l =>
                    l.Split(',').Select(c => c.Length == 0 ? double.NaN : double.Parse(c, System.Globalization.CultureInfo.InvariantCulture)).ToArray()
                ),
        ];
}

/// <summary>A folder of its own with the demo project in <c>reading-room</c>, and runs in it.</summary>
internal sealed class Desk : IDisposable
{
    internal Desk()
    {
        var start = Run("start", "reading-room", "--demo");
        Assert.True(start.ExitCode == 0, start.Error);
    }

    internal string Folder { get; } = Directory.CreateTempSubdirectory("stillwall-").FullName;

    internal string Project => PathTo("reading-room/stillwall.json");

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    internal Ran Run(params IReadOnlyList<string> args) => Run(args, terminal => terminal);

    internal Ran Run(IReadOnlyList<string> args, Func<Terminal, Terminal> with, string input = "")
    {
        using var output = new MemoryStream();
        using var error = new StringWriter();
        using var typed = new StringReader(input);
        var exitCode = CliApp.Run(args, with(new Terminal(output, error, typed) { Folder = Folder }));
        return new Ran(exitCode, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }

    internal string PathTo(string file) => Path.Combine(Folder, file);

    /// <summary>Writes a file, its folders made.</summary>
    internal void Write(string file, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathTo(file))!);
        File.WriteAllText(PathTo(file), text);
    }

    /// <summary>States something in the demo project, whatever it states there now; null takes it out.</summary>
    /// <param name="key">Keys joined by points.</param>
    /// <param name="json">The value as JSON.</param>
    internal void State(string key, string? json)
    {
        var root = JsonNode.Parse(File.ReadAllText(Project))!.AsObject();
        var keys = key.Split('.');
        var block = keys[..^1].Aggregate(root, (at, k) => at[k]!.AsObject());
        block.Remove(keys[^1]);
        if (json is not null)
        {
            block.Add(keys[^1], JsonNode.Parse(json));
        }

        File.WriteAllText(Project, root.ToJsonString());
    }
}

/// <summary>Where the tests find the repository's files.</summary>
internal static class Repository
{
    internal static string Folder { get; } = Find();

    internal static string Data(string path) => Path.Combine(Folder, "tests", "data", path);

    private static string Find()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Stillwall.slnx")))
        {
            at = at.Parent;
        }

        return at?.FullName ?? throw new InvalidOperationException("the tests run outside the repository");
    }
}
