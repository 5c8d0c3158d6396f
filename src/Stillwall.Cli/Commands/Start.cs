using Stillwall.Cli.Running;
using Stillwall.Files.Projects;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>start</c>: a new project folder.</summary>
internal static class Start
{
    private static readonly (string Key, string Question)[] PrinterSizes =
    [
        ("brief.printer.build_width", "build width of the printer"),
        ("brief.printer.build_depth", "build depth of the printer"),
        ("brief.printer.build_height", "build height of the printer"),
    ];

    internal static Verb Verb()
    {
        var folder = new TextArgument("DIR", "folder to make; one that is there must be empty");
        var demo = new Flag("--demo", "writes the demo project and asks nothing");
        return new Verb("start", "makes a new project folder: from a terminal it asks a few questions, else it writes the demo project", "stillwall start my-cabinet --demo")
        {
            Takes = [folder, demo],
            Do = call =>
            {
                var at = call.Text(folder)!;
                var path = call.Session.FullPath(at);
                RefuseUsed(at, path);
                var text = Embedded("demo/stillwall.json");
                var terminal = call.Session.Terminal;
                if (!call.Has(demo) && terminal.InputIsTerminal && terminal.OutputIsTerminal)
                {
                    text = Asked(text, terminal);
                }

                Make(at, path, text);
                call.Session.PrintLine($"{at}: {ProjectStore.FileName}, drivers.csv, stillwall.schema.json and the folder measurements");
                call.Session.PrintLine($"next: stillwall appraise {(at.Contains(' ', StringComparison.Ordinal) ? $"\"{at}\"" : at)}");
                return ExitCodes.Done;
            },
        };
    }

    private static void RefuseUsed(string at, string path)
    {
        try
        {
            if (File.Exists(path))
            {
                throw Refusal.Path($"{at}: is a file; a folder that is not there yet or is empty");
            }

            if (Directory.Exists(path) && Directory.EnumerateFileSystemEntries(path).Any())
            {
                throw Refusal.Input($"{at}: is not empty; a folder that is not there yet or is empty");
            }
        }
        catch (Exception e) when (Session.IsOfThePath(e))
        {
            throw Refusal.Path($"{at}: cannot be read ({Session.Why(e)}); a folder that is not there yet or is empty");
        }
    }

    private static void Make(string at, string path, string text)
    {
        try
        {
            Directory.CreateDirectory(path);
            Directory.CreateDirectory(Path.Combine(path, "measurements"));
            File.WriteAllText(Path.Combine(path, "drivers.csv"), Embedded("demo/drivers.csv"));
            File.WriteAllText(Path.Combine(path, "stillwall.schema.json"), ProjectSchema.Write());
        }
        catch (Exception e) when (Session.IsOfThePath(e))
        {
            throw Refusal.Path($"{at}: cannot be made ({Session.Why(e)}); a folder in one that may be written");
        }

        if (ProjectStore.Save(path, text) is { } trouble)
        {
            throw Refusal.Path((trouble with { Path = at }).ToString());
        }
    }

    // Questions go to standard error: standard output keeps to what was done. An empty answer keeps the demo's value.
    private static string Asked(string text, Terminal terminal)
    {
        var project = ProjectReader.Read(text).Project!;
        text = Answer(terminal, text, "name", $"name of the cabinet [{project.Name}]");
        foreach (var (key, question) in PrinterSizes)
        {
            var now = ProjectKeys.Written(ProjectKeys.Find(key)!, ProjectKeys.Get(project, key)!);
            text = Answer(terminal, text, key, $"{question} [{now}]");
        }

        return text;
    }

    private static string Answer(Terminal terminal, string text, string key, string question)
    {
        while (true)
        {
            terminal.Error.Write(question + ": ");
            terminal.Error.Flush();
            if (terminal.Input.ReadLine()?.Trim() is not { Length: > 0 } answer)
            {
                return text;
            }

            var changed = ProjectTextEditor.SetStated(text, key, answer);
            if (ProjectReader.Read(changed).Faults is not [var fault, ..])
            {
                return changed;
            }

            terminal.Error.WriteLine(fault.Message);
        }
    }

    private static string Embedded(string name)
    {
        using var stream = typeof(Start).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not built in");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
