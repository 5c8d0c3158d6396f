using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Neighbours.Rooms;

/// <summary>What a small closed room gives at low frequency: below its first mode the whole room is pressed evenly, like the air in a box.</summary>
public static class PressureZone
{
    /// <summary>Level of an airtight rigid room above the half space, for the same source.</summary>
    /// <param name="frequencyHz">Frequency, above 0 Hz; far below the room's first mode.</param>
    /// <param name="volumeM3">Volume of the room, above 0 m³.</param>
    /// <param name="distanceM">Distance in the half space, above 0 m.</param>
    /// <param name="air">The air.</param>
    /// <returns>Gain, dB; it rises by 12 dB for each octave down.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero.</exception>
    /// <remarks>
    /// Model: p_room = ρc²U/(jωV), p_half = jωρU/(2πr): 20 log10[2πr c²/(ω²V)]. Validity: an airtight room with rigid walls, below its first mode;
    /// doors, windows and light walls take most of it.
    /// Source: uniform mode of Kuttruff 2000, chapter 3; half space Kinsler 2000, chapter 7 (from memory). Accuracy: exact for the model; a real room
    /// has gaps.
    /// </remarks>
    public static double GainDb(double frequencyHz, double volumeM3, double distanceM, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(frequencyHz);
        Require.Positive(volumeM3);
        Require.Positive(distanceM);
        var (omega, c) = (2 * Math.PI * frequencyHz, air.SpeedOfSoundMS);
        return 20 * Math.Log10(2 * Math.PI * distanceM * c * c / (omega * omega * volumeM3));
    }

    /// <summary>Frequency at which room and half space give the same; below it the room adds.</summary>
    /// <param name="volumeM3">Volume of the room, above 0 m³.</param>
    /// <param name="distanceM">Distance in the half space, above 0 m.</param>
    /// <param name="air">The air.</param>
    /// <returns>Frequency, Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero.</exception>
    /// <remarks>Model: <see cref="GainDb"/> = 0: f = c √(2πr/V)/(2π). Validity: as there. Source: as there. Accuracy: as there.</remarks>
    public static double CornerHz(double volumeM3, double distanceM, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(volumeM3);
        Require.Positive(distanceM);
        return air.SpeedOfSoundMS * Math.Sqrt(2 * Math.PI * distanceM / volumeM3) / (2 * Math.PI);
    }
}
