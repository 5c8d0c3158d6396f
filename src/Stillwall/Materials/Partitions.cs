using Stillwall.Numerics;

namespace Stillwall.Materials;

/// <summary>Airborne sound reduction of party walls at low frequency.</summary>
public static class Partitions
{
    private const int Count = 10;

    private const double SlopeDbPerOctave = 6;

    // Octave values at 63, 125 and 250 Hz; a missing one is NaN here and never leaves this file.
    // Bies, Hansen and Howard 2018, table 7.6, "representative" values.
    private static readonly (string Name, double At63, double At125, double At250)[] Table =
    [
        ("brick-125-plastered", 30, 36, 37),
        ("brick-255-plastered", 34, 41, 45),
        ("brick-360-plastered", 36, 44, 43),
        ("brick-cavity-280", 28, 34, 34),
        ("concrete-100", 32, 37, 36),
        ("concrete-200", 36, 42, 41),
        ("concrete-300", 37, 40, 45),
        ("studs-plaster", 20, 25, 28),
        ("plasterboard-75", double.NaN, 20, 28),
    ];

    // Third-octaves 50 to 160 Hz as printed: ISO 717-1:2020 annex E.1 (heavy wall, heavy floor, lightweight wall), ISO 12354-1:2017 annex L.1 (R'
    // over a 220 mm slab with a floating floor) and L.12 (timber floor).
    private static readonly (string Name, double[] From50)[] Thirds =
    [
        ("heavy-wall", [35.3, 37.3, 39.4, 40.0, 40.0, 40.0]),
        ("heavy-floor", [34.0, 36.0, 38.1, 40.0, 40.0, 40.0]),
        ("lightweight-wall", [21.3, 23.3, 25.3, 27.0, 27.0, 27.0]),
        ("floating-floor-on-slab", [28.8, 30.4, 33.4, 35.3, 37.6, 40.0]),
        ("timber-floor", [24.6, 23.8, 33.2, 36.5, 42.2, 48.2]),
    ];

    // ISO 12999-1:2020, situation A, from 50 Hz; 8 dB below is our choice.
    private static readonly double[] Deviation = [8, 8, 8, 8, 6.8, 4.6, 3.8, 3.0, 2.7, 2.4];

    /// <summary>Names of the constructions with published values.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Table.Select(row => row.Name), .. Thirds.Select(row => row.Name)];

    /// <summary>Sound reduction of a named construction in the ten third-octaves 20 to 160 Hz.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>Sound reduction, dB; null where the name is not in the table.</returns>
    /// <remarks>
    /// Model: published third-octaves from 50 Hz as they are; or the published octave value at its mid-band frequency, straight lines over log f
    /// between them; 6 dB per octave under the lowest published one.
    /// Validity: a wall of the usual size in a house without other paths; near the wall's own resonances and below the first mode of either room the
    /// number is a guess with a band.
    /// Source: octave values Bies, Hansen and Howard 2018, table 7.6; third-octaves ISO 717-1:2020, annex E, and ISO 12354-1:2017, annex L; the
    /// interpolation and the slope below it, after the mass law, are our choice.
    /// Accuracy: <see cref="StandardDeviationDb"/>.
    /// </remarks>
    public static IReadOnlyList<double>? ReductionDb(string name)
    {
        foreach (var row in Table)
        {
            if (row.Name == name)
            {
                return [.. ThirdOctaves.Bands.Select(band => Interpolate(row.At63, row.At125, row.At250, band.CentreHz))];
            }
        }

        return Thirds.FirstOrDefault(row => row.Name == name).From50 is { } from50 ? ExtendedDb(from50) : null;
    }

    /// <summary>Ten third-octaves from those that are known, which reach up to 160 Hz.</summary>
    /// <param name="knownDb">Sound reduction in the last of the ten bands 20 to 160 Hz, dB: six of them begin at 50 Hz, three at 100 Hz; 1 to 10.</param>
    /// <returns>Sound reduction, dB; 6 dB per octave under the lowest known one, not below 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No value, or more than ten.</exception>
    /// <remarks>
    /// Model: as known; slope of the mass law below. Validity: a wall without a resonance down there. Source: the slope, after the mass law, is our
    /// choice. Accuracy: <see cref="StandardDeviationDb"/>.
    /// </remarks>
    public static IReadOnlyList<double> ExtendedDb(IReadOnlyList<double> knownDb)
    {
        ArgumentNullException.ThrowIfNull(knownDb);
        Require.Within(knownDb.Count, 1, Count, nameof(knownDb), "bands");
        var first = Count - knownDb.Count;
        return
        [
            .. ThirdOctaves.Bands.Select((band, i) => i >= first ? knownDb[i - first] : Below(knownDb[0], band.CentreHz, ThirdOctaves.Bands[first].CentreHz)),
        ];
    }

    /// <summary>Sound reduction of two paths side by side.</summary>
    /// <param name="reductionDb">Sound reduction of the wall itself, dB.</param>
    /// <param name="flankingDb">Sound reduction of all other paths together, dB.</param>
    /// <returns>Apparent sound reduction, dB.</returns>
    /// <remarks>
    /// Model: −10 log10(10^(−R/10) + 10^(−F/10)). Validity: paths that do not know of one another. Source: ISO 12354-1:2017, sum over paths; one
    /// figure for all bands is our choice. Accuracy: as what is stated.
    /// </remarks>
    public static double WithFlankingDb(double reductionDb, double flankingDb) => -ThirdOctaves.SumDb([-reductionDb, -flankingDb]);

    /// <summary>Standard deviation between a forecast wall and the wall as built, in the ten third-octaves 20 to 160 Hz, dB.</summary>
    /// <remarks>Source: ISO 12999-1:2020, situation A, 50 Hz and up; 8 dB below 50 Hz is our choice.</remarks>
    public static IReadOnlyList<double> StandardDeviationDb => Deviation;

    /// <summary>Sound reduction of one limp leaf by its mass.</summary>
    /// <param name="frequencyHz">Frequency, above 0 Hz, well below the leaf's critical frequency.</param>
    /// <param name="surfaceDensityKgM2">Mass per area, above 0 kg/m².</param>
    /// <param name="air">The air.</param>
    /// <param name="fieldDb">What sound from all sides takes off: 5.5 dB in third-octaves by one book, 5 dB by another.</param>
    /// <returns>Sound reduction, dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency or mass that is not above zero.</exception>
    /// <remarks>
    /// Model: 10 log10[1 + (π f m/(ρc))²] less the field correction. Validity: limp leaf much larger than a wavelength, far below the critical
    /// frequency.
    /// Source: Bies, Hansen and Howard 2018, Eq. 7.40 and 7.42 (5.5 dB); Norton and Karczub 2003, Eq. 3.104 and 3.106 (5 dB). Accuracy: a small leaf
    /// does better at low frequency.
    /// </remarks>
    public static double MassLawDb(double frequencyHz, double surfaceDensityKgM2, Air air, double fieldDb = 5.5)
    {
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(frequencyHz);
        Require.Positive(surfaceDensityKgM2);
        Require.Within(fieldDb, 0, 10, nameof(fieldDb), "dB");
        var ratio = Math.PI * frequencyHz * surfaceDensityKgM2 / (air.DensityKgM3 * air.SpeedOfSoundMS);
        return (10 * Math.Log10(1 + (ratio * ratio))) - fieldDb;
    }

    /// <summary>Whether a list has one value for each of the ten bands.</summary>
    /// <param name="values">The list, or null.</param>
    internal static bool CoversTheBands(IReadOnlyList<double>? values) => values?.Count == Count;

    private static double Interpolate(double at63, double at125, double at250, double frequencyHz)
    {
        // Octaves of the base-ten system: 63.1, 125.9 and 251.2 Hz, a factor of 10^0.3 apart.
        var octaves = (Math.Log10(frequencyHz) - 2.1) / 0.3;
        var lowest = double.IsNaN(at63) ? 0 : -1;
        return octaves switch
        {
            >= 0 => at125 + (octaves * (at250 - at125)),
            _ when octaves >= lowest => at125 + (octaves * (at125 - at63)),
            _ => Math.Max(0, (lowest == 0 ? at125 : at63) + (SlopeDbPerOctave * (octaves - lowest))),
        };
    }

    // After the mass law, octaves of the base-ten system.
    private static double Below(double lowest, double frequencyHz, double lowestHz) =>
        Math.Max(0, lowest + (SlopeDbPerOctave * Math.Log10(frequencyHz / lowestHz) / 0.3));
}
