using System.Globalization;
using Stillwall.Appraisals.Proving;
using Stillwall.Cli.Running;
using Stillwall.Files.Projects;

namespace Stillwall.Cli.Commands.Proving;

/// <summary>What a proof writes into the project: measured values, and an entry of the logbook; both at once, the former file kept.</summary>
internal sealed class Keeping
{
    private const string Logbook = "logbook";

    internal TextOption Project { get; } = new("--project", "PROJECT", "project folder or its file to compare with; without it nothing is written");

    internal Flag Keep { get; } = new("--keep", "writes what was measured into the project, where it counts instead of what was assumed");

    internal Flag DespiteDoubts { get; } = new("--despite-doubts", "with --keep: writes it although something speaks against it");

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

    /// <summary>Writes what is asked for.</summary>
    /// <param name="call">The run.</param>
    /// <param name="loaded">The project; null writes nothing.</param>
    /// <param name="outcome">What the proof shows.</param>
    /// <param name="isQuiet">Whether standard output holds something else.</param>
    internal void Save(Invocation call, LoadedProject? loaded, ProofOutcome outcome, bool isQuiet)
    {
        var (isKept, date) = (call.Has(Keep), Date(call));
        if (loaded is null || !(isKept || date is not null))
        {
            return;
        }

        if (isKept && outcome.Doubts.Count > 0 && !call.Has(DespiteDoubts))
        {
            throw Refusal.Input($"{Keep.Name}: nothing was written, for the figures are doubtful as told; {DespiteDoubts.Name} writes them all the same");
        }

        var text = outcome.WrittenInto(loaded.Text, isKept, date);
        string[] logged = date is null ? [] : [Logbook];
        if (isKept)
        {
            Changing.Save(call.Session, loaded, [.. outcome.Keys.Select(key => (key, key, text))], isQuiet, logged);
        }
        else
        {
            text = DemoMarks.Without(text, loaded.Project, logged);
            _ = loaded.With(call.Session, text);
            if (ProjectStore.Save(loaded.File, text, loaded.Text) is { } trouble)
            {
                throw Refusal.Path((trouble with { Path = loaded.Named }).ToString());
            }
        }

        if (!isQuiet && date is not null)
        {
            call.Session.PrintLine($"{Logbook}: {string.Join(", ", outcome.Entry.Where(e => e.Key is not "part").Select(e => e.Stated))}");
        }
    }

    private DateOnly? Date(Invocation call) =>
        call.Text(Log) is not { } text ? null
        : DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date
        : throw Refusal.Input($"{Log.Name}: \"{text}\" is no date; year-month-day, such as 2026-11-30");
}
