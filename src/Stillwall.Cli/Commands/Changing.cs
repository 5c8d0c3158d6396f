using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Projects;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary>Saves a changed project and says what came of it.</summary>
internal static class Changing
{
    private const string NotStated = "not stated";

    /// <summary>Checks, saves and compares.</summary>
    /// <param name="session">The run.</param>
    /// <param name="before">The project as it was.</param>
    /// <param name="changes">Key, value as stated or nothing where it is taken out, and text of the file after that change, one after the other.</param>
    /// <param name="isQuiet">Whether standard output holds something else, so that nothing is said.</param>
    /// <param name="beside">Keys that changed with them and are said elsewhere.</param>
    /// <returns>The exit code.</returns>
    /// <exception cref="Refusal">The changed file has a fault, or cannot be written; the file is then as it was.</exception>
    internal static int Save(
        Session session,
        LoadedProject before,
        IReadOnlyList<(string Key, string Stated, string Text)> changes,
        bool isQuiet = false,
        params IReadOnlyList<string> beside
    )
    {
        var after = before.With(session, DemoMarks.Without(changes[^1].Text, before.Project, [.. changes.Select(c => c.Key), .. beside]));
        var (was, now) = (Appraisal.WithoutRemedies(before.Project, before.Candidates), Appraisal.Of(after.Project, after.Candidates));
        if (ProjectStore.Save(before.File, after.Text, before.Text) is { } trouble)
        {
            throw Refusal.Path((trouble with { Path = before.Named }).ToString());
        }

        if (isQuiet)
        {
            return ExitCodes.Done;
        }

        foreach (var (key, stated, _) in changes)
        {
            session.PrintLine(Said(before, after, key, stated));
        }

        var changed = now.Findings.Zip(was.Findings, (n, w) => (Now: n, Was: w)).Where(p => p.Now.Verdict != p.Was.Verdict).ToList();
        var text = new AppraisalText(after, session.Terminal);
        foreach (var (n, w) in changed)
        {
            session.Print(text.Changed(w, n));
        }

        if (changed.Count == 0)
        {
            session.PrintLine("no verdict changes");
        }

        return ExitCodes.Done;
    }

    /// <summary>A block in words.</summary>
    internal static string Words(StatedBlock block) =>
        block.EntryCount is { } entries ? Count(entries, "entry", "entries") : $"the whole block with {Count(block.ValueCount, "value", "values")}";

    private static string Said(LoadedProject before, LoadedProject after, string key, string stated) =>
        stated.Length == 0 && StatedBlock.Of(before.Text, key) is { } block
            ? $"{key}: {Words(block)} taken out"
            : $"{key}: {Shown(before, key)} → {Shown(after, key)}";

    private static string Shown(LoadedProject loaded, string key) =>
        StatedBlock.Of(loaded.Text, key) is { } block ? Words(block)
        : ProjectKeys.Find(key)!.Kind is FieldKind.Block or FieldKind.Blocks ? NotStated
        : Written(loaded.Project, key);

    private static string Count(int count, string one, string several) => $"{count.ToString(CultureInfo.InvariantCulture)} {(count == 1 ? one : several)}";

    private static string Written(Project project, string key) =>
        ProjectKeys.Get(project, key) switch
        {
            null => NotStated,
            IReadOnlyList<double> numbers => string.Join(", ", numbers.Select(n => Show.Of(project).Kept(n, ProjectKeys.Find(key)!.Dimension))),
            double number => Show.Of(project).Kept(number, ProjectKeys.Find(key)!.Dimension),
            DriverChoice choice => choice.Name ?? "a data sheet written in place",
            var value => ProjectKeys.Written(ProjectKeys.Find(key)!, value),
        };
}
