using System.Text.Json.Serialization;
using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Cabinets;

/// <summary>What a hold test says of the leak.</summary>
/// <param name="LeakResistancePaSM3">Resistance of the leak, or the bound of it, Pa·s/m³.</param>
/// <param name="LeakQ">Q of the leak, or the bound of it, at the system's resonance.</param>
/// <param name="Bound">Whether the stopwatch says no more than a bound.</param>
public sealed record HoldTestResult(
    [property: JsonPropertyName("leak_resistance_pa_s_m3"), ComputedBy("hold-test", "recording.seconds", "box.net_volume_m3")] double LeakResistancePaSM3,
    [property: ComputedBy("leak-q", "recording.seconds", "box.net_volume_m3", "box.system_resonance_hz", "box.effective_volume_m3")] double LeakQ,
    LeakBound Bound
);

/// <summary>What a hold test tells where its time is outside what a stopwatch can.</summary>
public enum LeakBound
{
    /// <summary>The figure itself.</summary>
    None,

    /// <summary>The figure or less: the cabinet leaks at least so much.</summary>
    AtMost,

    /// <summary>The figure or more.</summary>
    AtLeast,
}

/// <summary>The press-in-and-let-go test: how slowly the cone creeps back tells how tight the box is.</summary>
public static class HoldTest
{
    /// <summary>Shortest creep that a stopwatch can time, s (our choice).</summary>
    public const double ShortestS = 0.5;

    /// <summary>Longest creep that ten seconds of holding can prepare, s (our choice).</summary>
    public const double LongestS = 5;

    /// <summary>Resistance of the leak from the time of creep.</summary>
    /// <param name="seconds">Time to creep 63 % of the way back, s, above 0.</param>
    /// <param name="airVolumeM3">Volume of the air in the box, m³, above 0.</param>
    /// <param name="driver">The driver, or several as one.</param>
    /// <param name="air">The air.</param>
    /// <returns>Resistance, Pa·s/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: R = S/(V/p₀ + Vas/(ρc²)): the box, isothermal for so slow a motion, and the suspension empty through the leak together.
    /// Validity: 0.5 to 5 s after ten seconds pressed in. Source: our own derivation. Accuracy: 20 % by stopwatch; surrounds creep by themselves.
    /// </remarks>
    public static double ResistancePaSM3(double seconds, double airVolumeM3, Driver driver, Air air)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(seconds);
        Require.Positive(airVolumeM3);
        return seconds / ((airVolumeM3 / air.PressurePa) + (driver.SdM2 * driver.SdM2 * driver.CmsMPerN));
    }

    /// <summary>What the test says: the leak, or a bound where the time is outside what a stopwatch can tell.</summary>
    /// <param name="seconds">Time to creep 63 % of the way back, s, above 0.</param>
    /// <param name="airVolumeM3">Volume of the air in the box, m³, above 0.</param>
    /// <param name="network">The driver in its box.</param>
    /// <returns>The leak or its bound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: below 0.5 s the leak is at least as open as at 0.5 s, above 5 s at least as tight as at 5 s. Validity: as the resistance.
    /// Source: our choice of bounds. Accuracy: as the resistance.
    /// </remarks>
    public static HoldTestResult Of(double seconds, double airVolumeM3, BoxNetwork network)
    {
        ArgumentNullException.ThrowIfNull(network);
        Require.Positive(seconds);
        var bound =
            seconds < ShortestS ? LeakBound.AtMost
            : seconds > LongestS ? LeakBound.AtLeast
            : LeakBound.None;
        var resistance = ResistancePaSM3(Math.Clamp(seconds, ShortestS, LongestS), airVolumeM3, network.Driver, network.Air);
        var resonance = ClosedBox.ResonanceHz(network.Driver.FsHz, ClosedBox.ComplianceRatio(network.Driver, network.EffectiveVolumeM3, network.Air));
        return new HoldTestResult(resistance, Leakage.LeakQ(resonance, network.EffectiveVolumeM3, resistance, network.Air), bound);
    }
}
