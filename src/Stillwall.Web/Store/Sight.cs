using Stillwall.Appraisals;

namespace Stillwall.Web.Store;

/// <summary>What a stage draws.</summary>
/// <param name="Former">The state before it, in pencil; null where there is none.</param>
/// <param name="Turn">Counts whatever happened: who depends on this draws anew.</param>
internal sealed record Sight(OpenProject Project, Snapshot Shown, Snapshot? Former, int Turn)
{
    /// <summary>Everything computed.</summary>
    internal Facts Facts => Shown.Plan.Facts;

    /// <summary>How numbers are written.</summary>
    internal Show Show => Facts.Show;
}
