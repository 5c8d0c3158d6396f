using System.Collections.Concurrent;
using Stillwall.Appraisals.Explaining;
using Stillwall.Figures;
using Stillwall.Files.Projects;
using Stillwall.Projects;
using Stillwall.Proofs.Sweeps;

namespace Stillwall.Web.Proving;

/// <summary>One figure that a proof showed.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Text">Figure with its band and unit.</param>
/// <param name="Why">Where it comes from, worked out when it is asked for; null for a count and for words.</param>
internal sealed record ProofFigure(string Name, string Text, Func<Explanation>? Why);

/// <summary>What a proof showed.</summary>
/// <param name="Kind">Which proof.</param>
/// <param name="Document">The result as the command line prints it.</param>
/// <param name="Figures">The figures.</param>
/// <param name="Warnings">What is to be kept in mind.</param>
/// <param name="Measured">Keys and values that may be kept; empty where the proof gives none.</param>
/// <param name="Entry">Keys and values of its entry in the logbook, without the day.</param>
internal sealed record ProofOutcome(
    string Kind,
    string Document,
    IReadOnlyList<ProofFigure> Figures,
    IReadOnlyList<string> Warnings,
    IReadOnlyList<(string Key, string Stated)> Measured,
    IReadOnlyList<(string Key, string Stated)> Entry
)
{
    /// <summary>Measured over computed; null where there is no curve.</summary>
    internal Chart? Chart { get; init; }

    /// <summary>Block that the measured values take the place of; null where they are set one by one.</summary>
    internal string? Block { get; init; }

    /// <summary>The single sweeps that were averaged, and where the microphone stood.</summary>
    internal (string Place, IReadOnlyList<SweepResult> Sweeps)? Averaged { get; init; }

    /// <summary>Whether a project states everything that may be kept, and its logbook tells it.</summary>
    internal bool IsIn(Project project, string text) => Entry.Count > 0 && project.Logbook.Any(Tells) && States(text);

    /// <summary>Keys that change where it is kept.</summary>
    internal IEnumerable<string> Keys => Measured.Select(m => m.Key).Append("logbook");

    /// <summary>The text with what may be kept and the entry of that day.</summary>
    internal string WrittenInto(string text, string date)
    {
        if (Block is not null && HasBlock(text))
        {
            text = ProjectTextEditor.Remove(text, Block);
        }

        text = Measured.Aggregate(text, (t, m) => ProjectTextEditor.SetStated(t, m.Key, m.Stated));
        return ProjectTextEditor.Append(text, "logbook", [("date", date), .. Entry]);
    }

    private bool HasBlock(string text)
    {
        using var document = System.Text.Json.JsonDocument.Parse(text);
        return document.RootElement.TryGetProperty(Block!, out _);
    }

    private bool Tells(LogEntry entry)
    {
        string? Said(string key) => Entry.FirstOrDefault(e => e.Key == key).Stated;
        return entry.Kind == Said("kind")
            && entry.Part == Said("part")
            && entry.Note == Said("note")
            && (
                Said("mass") is not { } mass
                || (entry.MassKg is { } kg && Units.TryRead(mass, Dimension.Mass, out var stated, out _) && Math.Abs(kg - stated) < 1e-9)
            );
    }

    private bool States(string text)
    {
        try
        {
            return Measured.All(m => ProjectTextEditor.SetStated(text, m.Key, m.Stated) == text);
        }
        catch (ArgumentException)
        {
            // A block is asked for where the project names a driver.
            return false;
        }
    }
}

/// <summary>
/// The latest outcome of each proof of an open project, until the program ends; nothing is written. Every member may be called from any thread.
/// </summary>
internal sealed class ProofBoard
{
    private readonly ConcurrentDictionary<string, ProofOutcome> latest = new(StringComparer.Ordinal);

    /// <summary>Told after a proof was read, on any thread.</summary>
    internal event Action? Changed;

    /// <summary>The latest outcome of a proof; null where there is none.</summary>
    internal ProofOutcome? Of(string kind) => latest.GetValueOrDefault(kind);

    /// <summary>The charts of all of them.</summary>
    internal IEnumerable<Chart> Charts => latest.Values.Select(o => o.Chart).OfType<Chart>();

    internal void Take(ProofOutcome outcome)
    {
        latest[outcome.Kind] = outcome;
        Changed?.Invoke();
    }
}
