using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Cabinets;

/// <summary>The leak as stated or measured.</summary>
/// <param name="ResistancePaSM3">Acoustic resistance, Pa·s/m³; null is airtight, or unknown where something is missing.</param>
/// <param name="Missing">Keys that a slit needs and that are not stated.</param>
public sealed record LeakEffect(double? ResistancePaSM3, IReadOnlyList<string> Missing);

/// <summary>Air that gets past the joints.</summary>
public static class Leakage
{
    /// <summary>Resistance of a narrow slit to slow flow.</summary>
    /// <param name="gapM">Width of the slit, m, above 0.</param>
    /// <param name="lengthM">Length along the joint, m, above 0.</param>
    /// <param name="depthM">Depth along the flow, m, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Resistance, Pa·s/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: R = 12μ·depth/(length·gap³), plane viscous flow. Validity: gap below the viscous boundary layer, 0.2 mm at bass frequencies.
    /// Source: Beranek 1954, 5.4 (from memory); it follows from plane Poiseuille flow. Accuracy: the gap's cube rules: 10 % of it is 30 %.
    /// </remarks>
    public static double SlitPaSM3(double gapM, double lengthM, double depthM, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(gapM);
        Require.Positive(lengthM);
        Require.Positive(depthM);
        return 12 * air.ViscosityPaS * depthM / (lengthM * gapM * gapM * gapM);
    }

    /// <summary>Acoustic compliance of the air in the box.</summary>
    /// <param name="effectiveVolumeM3">Effective volume, m³, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Compliance, m³/Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not positive.</exception>
    /// <remarks>
    /// Model: C = kVb/(ρc²). Validity: box small against the wavelength. Source: Beranek 1954, 5 (from memory). Accuracy: exact for adiabatic air.
    /// </remarks>
    public static double BoxComplianceM3Pa(double effectiveVolumeM3, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(effectiveVolumeM3);
        return effectiveVolumeM3 / air.BulkModulusPa;
    }

    /// <summary>Q of the box's leak at the system's resonance.</summary>
    /// <param name="resonanceHz">Resonance of the system, Hz, above 0.</param>
    /// <param name="effectiveVolumeM3">Effective volume, m³, above 0.</param>
    /// <param name="resistancePaSM3">Resistance of the leak, Pa·s/m³, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Leak Q; the larger the tighter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: Q = 2πfc·C·R. Validity: a leak that resists only. Source: Small 1973, JAES 21(5) (from memory). Accuracy: exact for the lumped model.
    /// </remarks>
    public static double LeakQ(double resonanceHz, double effectiveVolumeM3, double resistancePaSM3, Air air)
    {
        Require.Positive(resonanceHz);
        Require.Positive(resistancePaSM3);
        return 2 * Math.PI * resonanceHz * BoxComplianceM3Pa(effectiveVolumeM3, air) * resistancePaSM3;
    }

    /// <summary>The leak as stated, unless it was measured.</summary>
    /// <param name="leak">The stated leak; null is airtight.</param>
    /// <param name="measuredPaSM3">Resistance found by measuring, Pa·s/m³; null where not measured.</param>
    /// <param name="air">The air.</param>
    /// <returns>The leak, or what is missing to know it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A stated value is not positive.</exception>
    /// <remarks>
    /// Model: measured before stated resistance before slit. Validity: as the slit's. Source: our choice of precedence. Accuracy: as the slit's.
    /// </remarks>
    public static LeakEffect Of(Leak? leak, double? measuredPaSM3, Air air)
    {
        if ((measuredPaSM3 ?? leak?.ResistancePaSM3) is { } resistance)
        {
            Require.Positive(resistance);
            return new LeakEffect(resistance, []);
        }

        return leak switch
        {
            null or { GapM: null, LengthM: null, DepthM: null } => new LeakEffect(null, []),
            { GapM: { } gap, LengthM: { } length, DepthM: { } depth } => new LeakEffect(SlitPaSM3(gap, length, depth, air), []),
            _ => new LeakEffect(null, [.. MissingOf(leak)]),
        };
    }

    private static IEnumerable<string> MissingOf(Leak leak)
    {
        (string Key, double? Value)[] needed = [("cabinet.leak.gap", leak.GapM), ("cabinet.leak.length", leak.LengthM), ("cabinet.leak.depth", leak.DepthM)];
        return needed.Where(n => n.Value is null).Select(n => n.Key);
    }
}
