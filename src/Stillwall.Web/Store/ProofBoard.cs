using System.Collections.Concurrent;
using Stillwall.Appraisals.Explaining;
using Stillwall.Figures;

namespace Stillwall.Web.Store;

/// <summary>One figure that a recording showed.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Text">Figure with its band and unit.</param>
/// <param name="Why">Where it comes from; null for a count.</param>
internal sealed record ProofFigure(string Name, string Text, Explanation? Why);

/// <summary>What a recording showed.</summary>
/// <param name="Kind">Which proof.</param>
/// <param name="Document">The result as the command line prints it.</param>
/// <param name="Figures">The figures.</param>
/// <param name="Warnings">What is to be kept in mind.</param>
/// <param name="Measured">Keys and values that may be kept; empty where the proof gives none.</param>
/// <param name="Chart">Measured over computed; null where there is no curve.</param>
internal sealed record ProofOutcome(
    string Kind, string Document, IReadOnlyList<ProofFigure> Figures, IReadOnlyList<string> Warnings, IReadOnlyList<(string Key, string Stated)> Measured, Chart? Chart);

/// <summary>The latest outcome of each proof of an open project, until the program ends; nothing is written. Every member may be called from any thread.</summary>
internal sealed class ProofBoard
{
    private readonly ConcurrentDictionary<string, ProofOutcome> latest = new(StringComparer.Ordinal);

    /// <summary>Told after a recording was read, on any thread.</summary>
    internal event Action? Changed;

    /// <summary>The latest outcome of a proof; null where there is none.</summary>
    internal ProofOutcome? Of(string kind) => latest.GetValueOrDefault(kind);

    internal void Take(ProofOutcome outcome)
    {
        latest[outcome.Kind] = outcome;
        Changed?.Invoke();
    }
}
