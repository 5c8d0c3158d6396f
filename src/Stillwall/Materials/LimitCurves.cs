namespace Stillwall.Materials;

/// <summary>One published curve in the ten third-octaves 20 to 160 Hz.</summary>
/// <param name="Name">Its name in the project file.</param>
/// <param name="Words">What it is, in a few words.</param>
/// <param name="Source">The publication.</param>
/// <param name="IsFromMemory">Whether its figures come from memory, for want of the publication; such a curve is shown with that mark.</param>
/// <param name="LevelDb">Levels, dB; null in a band that the curve says nothing about.</param>
public sealed record LimitCurve(string Name, string Words, string Source, bool IsFromMemory, IReadOnlyList<double?> LevelDb);

/// <summary>Published curves that a low-frequency level in a dwelling may be held against.</summary>
public static class LimitCurves
{
    /// <summary>Every published curve; those from memory last.</summary>
    public static IReadOnlyList<LimitCurve> All { get; } =
    [
        new(
            "hearing-threshold",
            "what a good ear just hears",
            "ISO 226:2023, threshold of hearing",
            false,
            [78.1, 68.7, 59.5, 51.1, 44.0, 37.5, 31.5, 26.5, 22.1, 17.9]
        ),
        new(
            "hearing-threshold-2003",
            "what a good ear just hears, by the former edition",
            "ISO 226:2003, threshold of hearing",
            false,
            [78.5, 68.7, 59.5, 51.1, 44.0, 37.5, 31.5, 26.5, 22.1, 17.9]
        ),
        new(
            "night-rooms-se-2014",
            "a guide value for all living rooms",
            "FoHMFS 2014:13, Public Health Agency of Sweden",
            false,
            [null, null, 56, 49, 43, 41.5, 40, 38, 36, 34]
        ),
        new(
            "night-rooms-fi-2003",
            "a guide value for bedrooms at night",
            "Asumisterveysohje 2003 (Finland), one hour at night",
            true,
            [74, 64, 56, 49, 44, 42, 40, 38, 36, 34]
        ),
        new(
            "night-rooms-uk-2005",
            "a guide value for bedrooms at night",
            "Moorhouse, Waddington and Adams 2005, Defra NANR45",
            true,
            [74, 64, 56, 49, 43, 42, 40, 38, 36, 34]
        ),
        new("audibility-nl-1999", "what one ear in ten just hears", "NSG 1999 (Netherlands)", true, [74, 62, 55, 46, 39, 33, 27, 22, null, null]),
        new("threshold-de-1997", "what counts as just heard", "DIN 45680:1997, threshold", true, [71, 63, 55.5, 48, 40.5, 33.5, 28, 23.5, null, null]),
    ];

    /// <summary>Names of the published curves.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. All.Select(curve => curve.Name)];

    /// <summary>A published curve.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>The curve; null where the name is not known.</returns>
    public static LimitCurve? Find(string name) => All.FirstOrDefault(curve => curve.Name == name);

    /// <summary>A published curve in the ten third-octaves 20 to 160 Hz.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>Levels, dB, null in a band that the curve says nothing about; null where the name is not known.</returns>
    /// <remarks>
    /// Model: printed values. Validity: a level is one thing, local rules are another; this is no judgement of what is permitted.
    /// Source: as each curve says; those marked so are from memory and were not compared with the publication.
    /// Accuracy: as printed; people's thresholds scatter by 5 to 6 dB (from memory).
    /// </remarks>
    public static IReadOnlyList<double?>? LevelDb(string name) => Find(name)?.LevelDb;
}
