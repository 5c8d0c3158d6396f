using System.Globalization;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files;
using Stillwall.Files.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>start</c>: a new project folder.</summary>
internal static class Start
{
    internal static Verb Verb()
    {
        var folder = new TextArgument("DIR", "folder to make; one that is there must be empty");
        var demo = new Flag("--demo", "writes the demo project and asks nothing");
        return new Verb(
            "start",
            "makes a new project folder: from a terminal it asks nine questions, else it writes the demo project",
            "stillwall start my-cabinet --demo"
        )
        {
            Takes = [folder, demo],
            Do = call =>
            {
                var at = call.Text(folder)!;
                var path = call.Session.FullPath(at);
                RefuseUsed(at, path);
                var text = Embedded("demo/stillwall.json");
                var terminal = call.Session.Terminal;
                var isAsked = !call.Has(demo) && terminal.InputIsTerminal && terminal.OutputIsTerminal;
                if (isAsked)
                {
                    text = Asked(text, call.Session);
                }

                Make(at, path, text);
                call.Session.PrintLine($"{at}: {ProjectStore.FileName}, drivers.csv, stillwall.schema.json and the folder measurements");
                call.Session.Print(isAsked ? StillTheDemos(text, terminal.Width) : "every value in it is the demo's, invented: a cabinet to try things on\n");
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
        catch (Exception e) when (PathTrouble.Is(e))
        {
            throw Refusal.Path($"{at}: cannot be read ({PathTrouble.Why(e)}); a folder that is not there yet or is empty");
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
        catch (Exception e) when (PathTrouble.Is(e))
        {
            throw Refusal.Path($"{at}: {PathTrouble.Unmade(e)}");
        }

        if (ProjectStore.Save(path, text) is { } trouble)
        {
            throw Refusal.Path((trouble with { Path = at }).ToString());
        }
    }

    // Questions go to standard error: standard output keeps to what was done.
    private static string Asked(string text, Session session)
    {
        session.Ask("Nine questions. Enter keeps what stands in brackets, the end of input all the\nrest. Any unit will do.\n\n");
        var answered = new HashSet<string>(StringComparer.Ordinal);
        var isInch = false;
        foreach (var (i, question) in Question.All.Index())
        {
            if (question.Choices.Count > 0)
            {
                session.Ask($"   {Words.Wrapped(string.Join(", ", question.Choices), Math.Min(78, session.Terminal.Width), 3, 3)}\n");
            }

            if (Answered(session, ref text, $"{Count(i + 1)}. {question.Ask} [{question.Now(text)}]: ", question, answered) is not { } answer)
            {
                session.Ask("\n");
                break;
            }

            isInch |= question.Keys.Count > 1 && TypedUnits.AreInch(answer);
        }

        return DemoMarks.Put(isInch ? ProjectTextEditor.SetStated(text, "display_units", "inch") : text, answered);
    }

    // The answer that was taken, empty where the demo's value was kept; null at the end of input.
    private static string? Answered(Session session, ref string text, string prompt, Question question, HashSet<string> answered)
    {
        while (true)
        {
            session.Ask(prompt);
            var answer = session.Terminal.Input.ReadLine()?.Trim();
            if (string.IsNullOrEmpty(answer))
            {
                return answer;
            }

            (text, var keys, var fault) = question.Answer(text, answer);
            if (fault is null)
            {
                answered.UnionWith(keys);
                return answer;
            }

            session.Ask($"   {fault}\n");
        }
    }

    private static string StillTheDemos(string text, int width)
    {
        var marks = DemoMarks.Of(ProjectReader.Read(text).Project!);
        var lines = DemoMarks.ReplaceFirst(marks).Select(what => $"- {Words.Wrapped(what, width, 2, 2)}\n");
        return "\n"
            + Words.Wrapped($"{Count(marks.Count)} blocks have values that are still the demo's; a note in each names them. To replace first:", width)
            + "\n"
            + string.Concat(lines)
            + Words.Wrapped("\"stillwall set KEY VALUE\" replaces one and takes it out of the note.", width)
            + "\n\n";
    }

    private static string Count(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Embedded(string name)
    {
        using var stream = typeof(Start).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not built in");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
