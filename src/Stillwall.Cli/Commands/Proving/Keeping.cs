using System.Globalization;
using Stillwall.Cli.Running;
using Stillwall.Files.Projects;

namespace Stillwall.Cli.Commands.Proving;

/// <summary>What a proof writes into the project: measured values, and an entry of the logbook; both at once, the former file kept.</summary>
internal sealed class Keeping
{
    internal TextOption Project { get; } = new("--project", "PROJECT", "project folder or its file to compare with; without it nothing is written");

    internal Flag Keep { get; } = new("--keep", "writes what was measured into the project, where it counts instead of what was assumed");

    internal TextOption Log { get; } = new("--log", "DATE", "adds an entry to the project's logbook, such as 2026-11-30");

    /// <summary>The project that is compared with; null where none is named.</summary>
    /// <exception cref="Refusal">Something is to be written but no project is named, or the date is none.</exception>
    internal LoadedProject? Load(Invocation call)
    {
        var path = call.Text(Project);
        if (path is null && (call.Has(Keep) || call.Text(Log) is not null))
        {
            throw Refusal.Input($"{(call.Has(Keep) ? Keep.Name : Log.Name)} needs --project; the folder to write into");
        }

        _ = Date(call);
        return path is null ? null : LoadedProject.Load(call.Session, path);
    }

    /// <summary>Writes what is asked for; prints nothing beside JSON.</summary>
    /// <param name="call">The run.</param>
    /// <param name="loaded">The project.</param>
    /// <param name="kind">Kind of the logbook's entry.</param>
    /// <param name="note">What the entry says.</param>
    /// <param name="measured">Keys below <c>measured</c> and their values in SI.</param>
    /// <param name="isQuiet">Whether standard output holds something else.</param>
    /// <param name="part">The part that the entry is about.</param>
    internal void Save(
        Invocation call,
        LoadedProject? loaded,
        string kind,
        string note,
        IReadOnlyList<(string Key, IReadOnlyList<double> Values)> measured,
        bool isQuiet,
        string? part = null
    ) =>
        SaveStated(
            call: call,
            loaded: loaded,
            kind: kind,
            note: note,
            measured: [.. measured.Select(m => (m.Key, MeasuredText.Of($"measured.{m.Key}", m.Values)))],
            isQuiet: isQuiet,
            part: part
        );

    /// <summary>As the other, the values as a project file states them.</summary>
    internal void SaveStated(
        Invocation call,
        LoadedProject? loaded,
        string kind,
        string note,
        IReadOnlyList<(string Key, string Stated)> measured,
        bool isQuiet,
        string? part = null
    )
    {
        var (text, changes) = (loaded?.Text, new List<(string Key, string Stated, string Text)>());
        if (loaded is null || text is null)
        {
            return;
        }

        foreach (var (key, stated) in call.Has(Keep) ? measured : [])
        {
            var dotted = $"measured.{key}";
            text = ProjectTextEditor.SetStated(text, dotted, stated);
            changes.Add((dotted, stated, text));
        }

        if (Date(call) is { } date)
        {
            IEnumerable<(string, string)> about = part is null ? [] : [("part", part)];
            text = ProjectTextEditor.Append(
                text,
                "logbook",
                [("date", date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)), ("kind", kind), .. about, ("note", note)]
            );
        }

        if (changes.Count > 0)
        {
            changes[^1] = changes[^1] with { Text = text };
            Changing.Save(call.Session, loaded, changes, isQuiet);
        }
        else if (text != loaded.Text)
        {
            _ = loaded.With(call.Session, text);
            if (ProjectStore.Save(loaded.File, text, loaded.Text) is { } trouble)
            {
                throw Refusal.Path((trouble with { Path = loaded.Named }).ToString());
            }
        }

        if (!isQuiet && Date(call) is not null)
        {
            call.Session.PrintLine($"logbook: {kind}, {note}");
        }
    }

    private DateOnly? Date(Invocation call) =>
        call.Text(Log) is not { } text ? null
        : DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date
        : throw Refusal.Input($"{Log.Name}: \"{text}\" is no date; year-month-day, such as 2026-11-30");
}
