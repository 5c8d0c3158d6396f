namespace Stillwall.Walls;

/// <summary>The thinnest core that still does what the walls must do.</summary>
/// <param name="CoreM">Its thickness, m; as stated where no thinner one does.</param>
/// <param name="SavedKg">Dry cast that it saves, kg.</param>
public sealed record ThinnerCore(double CoreM, double SavedKg)
{
    // Less cast than this is not poured between skins (our choice).
    private const double LeastM = 0.002;

    /// <summary>Looks for it.</summary>
    /// <param name="leastModeHz">Least first mode, Hz; null where it does not matter.</param>
    /// <param name="greatestDb">Greatest sound of a wall beside the cone, dB.</param>
    /// <remarks>
    /// Model: <see cref="WallSet.ThinnestCoreM"/>; the cast in proportion to the core. Validity: skins as they are. Source: our choice. Accuracy: mass within a
    /// few per cent, for struts and keys shrink with the core.
    /// </remarks>
    internal static ThinnerCore Of(
        WallSet set,
        double? leastModeHz,
        double greatestDb,
        double boxComplianceM3PerPa,
        double crossoverHz,
        double dryCastKg
    )
    {
        ArgumentNullException.ThrowIfNull(set);
        var stated = set.Geometry.CoreM;
        var thinnest = set.ThinnestCoreM(LeastM, Math.Max(LeastM, stated), leastModeHz, greatestDb, boxComplianceM3PerPa, crossoverHz) ?? stated;
        return new ThinnerCore(thinnest, dryCastKg * (1 - thinnest / stated));
    }
}
