using System.Collections.Concurrent;
using Stillwall.Appraisals.Proving;
using Stillwall.Figures;

namespace Stillwall.Web.Proving;

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

    internal IEnumerable<Chart> Charts => latest.Values.Select(o => o.Chart).OfType<Chart>();

    internal void Take(ProofOutcome outcome)
    {
        latest[outcome.Kind] = outcome;
        Changed?.Invoke();
    }
}
