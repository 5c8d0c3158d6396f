namespace Stillwall.Tests.Rules;

/// <summary>Files stay short, data is read, and the project speaks of itself alone.</summary>
public sealed class FileTests
{
    // What is written by hand: the program, the page's markup, its scripts and style sheets.
    private static readonly string[] Written = ["*.cs", "*.razor", "*.js", "*.mjs", "*.ts", "*.css"];

    [Fact]
    public void A_source_file_stays_under_400_lines_and_a_test_file_under_600()
    {
        var tooLong = Repository
            .Sources("src")
            .Concat(Repository.Files("src", "*.razor"))
            .Select(f => (File: f, Limit: 400))
            .Concat(Repository.Sources("tests").Concat(Repository.Sources("bench")).Select(f => (File: f, Limit: 600)))
            .Select(f => (f.File, f.Limit, Lines: File.ReadLines(f.File).Count()))
            .Where(f => f.Lines > f.Limit)
            .Select(f => $"{Repository.Relative(f.File)}: {f.Lines} lines, at most {f.Limit}")
            .ToList();
        Assert.True(tooLong.Count == 0, "take out what stands by itself into a file named after it:\n" + string.Join("\n", tooLong));
    }

    [Fact]
    public void A_line_is_at_most_160_characters_long()
    {
        var written = new[] { "src", "tests", "bench" }
            .SelectMany(folder => Written.SelectMany(pattern => Repository.Files(folder, pattern)))
            .ToList();
        Assert.Contains(written, file => file.EndsWith(".razor", StringComparison.Ordinal));
        var tooLong = written
            .SelectMany(file => File.ReadLines(file).Select((line, i) => (file, Number: i + 1, line.Length)).Where(l => l.Length > 160))
            .Select(l => $"{Repository.Relative(l.file)}:{l.Number}: {l.Length}")
            .ToList();
        Assert.True(tooLong.Count == 0, "break the line where a thought ends:\n" + string.Join("\n", tooLong));
    }

    [Fact]
    public void Every_data_file_is_read_by_a_test()
    {
        var tests = string.Join('\n', Repository.Sources("tests").Concat(Repository.Files("tests/data", "*cases.json")).Select(File.ReadAllText));
        var files = DataFiles();
        Assert.True(files.Count > 50);
        var unread = files.Where(f => !IsNamed(f, tests)).Select(Repository.Relative).ToList();
        Assert.True(
            unread.Count == 0,
            "read the file in a test (by its name, by its folder and a pattern, or in a list of cases that a test reads), or delete it:\n"
                + string.Join("\n", unread)
        );
    }

    [Fact]
    public void Every_topic_of_data_says_where_it_comes_from()
    {
        var silent = Directory
            .GetDirectories(Path.Combine(Repository.Root, "tests", "data"))
            .Where(d => !File.Exists(Path.Combine(d, "README.md")))
            .Select(Repository.Relative)
            .ToList();
        Assert.True(
            silent.Count == 0,
            "add a README.md that names the solver or the source of each file, and how many digits it promises:\n" + string.Join("\n", silent)
        );
    }

    [Fact]
    public void The_project_speaks_of_itself_alone()
    {
        // Written in pieces, so that this file does not name them.
        string[] banned = ["/wo" + "rk/", "/ho" + "me/", "share" + "d/", "git" + "lab", "TO" + "DO", "FIX" + "ME", "Co-Author" + "ed"];
        var wrong = new[] { "src", "tests", "docs", "samples", "bench" }
            .SelectMany(folder =>
                new[] { "*.cs", "*.md", "*.json", "*.csv", "*.csproj", "*.js", "*.css", "*.razor" }.SelectMany(pattern => Repository.Files(folder, pattern))
            )
            .Where(file => Path.GetFileName(file) is not ("packages.lock.json" or "package-lock.json"))
            .SelectMany(file =>
                banned.Where(word => File.ReadAllText(file).Contains(word, StringComparison.Ordinal)).Select(word => $"{Repository.Relative(file)}: {word}")
            )
            .ToList();
        Assert.True(wrong.Count == 0, "say it without naming a place on somebody's machine, or finish it:\n" + string.Join("\n", wrong));
    }

    private static IReadOnlyList<string> DataFiles() => [.. Repository.Files("tests/data", "*").Where(f => Path.GetFileName(f) != "README.md")];

    // By its own name, with or without its ending; or its folder is named where a pattern picks the files of one ending ("projects/broken", ".json").
    private static bool IsNamed(string file, string tests)
    {
        var name = Path.GetFileName(file);
        var folder = Path.GetRelativePath(Path.Combine(Repository.Root, "tests", "data"), Path.GetDirectoryName(file)!).Replace('\\', '/');
        var ending = name.EndsWith(".expected.txt", StringComparison.Ordinal) ? ".expected.txt" : Path.GetExtension(name);
        var stem = name.Split('.')[0];
        return tests.Contains($"\"{stem}\"", StringComparison.Ordinal)
            || tests.Contains($"\"{name}\"", StringComparison.Ordinal)
            || tests.Contains($"/{name}\"", StringComparison.Ordinal)
            || (
                folder.Contains('/', StringComparison.Ordinal)
                && tests.Contains($"\"{folder}\"", StringComparison.Ordinal)
                && tests.Contains(ending, StringComparison.Ordinal)
            );
    }
}
