namespace Stillwall.Materials;

/// <summary>Published curves that a low-frequency level in a dwelling may be held against.</summary>
public static class LimitCurves
{
    private static readonly double?[] Threshold = [78.1, 68.7, 59.5, 51.1, 44.0, 37.5, 31.5, 26.5, 22.1, 17.9];
    private static readonly double?[] NightRooms = [null, null, 56, 49, 43, 41.5, 40, 38, 36, 34];

    /// <summary>Names of the published curves.</summary>
    public static IReadOnlyList<string> Names { get; } = ["hearing-threshold", "night-rooms-se-2014"];

    /// <summary>A published curve in the ten third-octaves 20 to 160 Hz.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>Levels, dB, null in a band that the curve says nothing about; null where the name is not known.</returns>
    /// <remarks>
    /// Model: printed values. Validity: a level is one thing, local rules are another; this is no judgement of what is permitted.
    /// Source: hearing threshold ISO 226:2023, Tf; night rooms the Swedish public health agency's general advice FoHFS 2014:13, indoor levels 31.5 to 160 Hz.
    /// Accuracy: as printed; people's thresholds scatter by 5 to 6 dB (from memory).
    /// </remarks>
    public static IReadOnlyList<double?>? LevelDb(string name) => name switch
    {
        "hearing-threshold" => Threshold,
        "night-rooms-se-2014" => NightRooms,
        _ => null,
    };
}
