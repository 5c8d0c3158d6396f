using System.Globalization;
using Stillwall.Appraisals.Proving;
using Stillwall.Projects;

namespace Stillwall.Files.Projects;

/// <summary>What a proof writes into the text of a project.</summary>
internal static class ProofText
{
    /// <summary>Writes what a proof found, and its entry in the logbook.</summary>
    /// <param name="outcome">What the proof shows.</param>
    /// <param name="text">Text of the project.</param>
    /// <param name="isKept">Whether the values are written.</param>
    /// <param name="day">Day of the entry; null writes none.</param>
    /// <returns>The changed text.</returns>
    /// <exception cref="ArgumentException">The text is not a project file.</exception>
    public static string WrittenInto(this ProofOutcome outcome, string text, bool isKept, DateOnly? day)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        if (isKept && outcome.Block is { } block && ProjectTextEditor.Find(text, block) is not null)
        {
            text = ProjectTextEditor.Remove(text, block);
        }

        text = isKept ? outcome.Kept.Aggregate(text, (t, k) => ProjectTextEditor.SetStated(t, k.Key, k.Stated)) : text;
        return day is { } date
            ? ProjectTextEditor.Append(text, "logbook", [("date", date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)), .. outcome.Entry])
            : text;
    }

    /// <summary>Whether a project states all that a proof found, and its logbook tells of it.</summary>
    /// <param name="outcome">What the proof shows.</param>
    /// <param name="project">The project.</param>
    /// <param name="text">Its text.</param>
    /// <returns>True where nothing is left to keep.</returns>
    public static bool IsIn(this ProofOutcome outcome, Project project, string text)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(project);
        return outcome.Entry.Count > 0 && project.Logbook.Any(e => Tells(outcome, e)) && States(outcome, text);
    }

    private static bool Tells(ProofOutcome outcome, LogEntry entry)
    {
        string? Said(string key) => outcome.Entry.FirstOrDefault(e => e.Key == key).Stated;
        return entry.Kind == Said("kind")
            && entry.Part == Said("part")
            && entry.Note == Said("note")
            && (
                Said("mass") is not { } mass
                || (entry.MassKg is { } kg && Units.TryRead(mass, Dimension.Mass, out var stated, out _) && Math.Abs(kg - stated) < 1e-9)
            );
    }

    private static bool States(ProofOutcome outcome, string text)
    {
        try
        {
            return outcome.Kept.All(k => ProjectTextEditor.SetStated(text, k.Key, k.Stated) == text);
        }
        catch (ArgumentException)
        {
            // A block is asked for where the project names a driver.
            return false;
        }
    }
}
