using Stillwall.Numerics;

namespace Stillwall.Materials;

/// <summary>One third-octave band.</summary>
/// <param name="NominalHz">Name of the band, Hz.</param>
/// <param name="CentreHz">Exact mid-band frequency, Hz.</param>
/// <param name="LowerHz">Lower band edge, Hz.</param>
/// <param name="UpperHz">Upper band edge, Hz.</param>
public sealed record ThirdOctave(double NominalHz, double CentreHz, double LowerHz, double UpperHz);

/// <summary>The ten third-octave bands from 20 to 160 Hz in which the neighbour question is asked.</summary>
public static class ThirdOctaves
{
    // Nominal names are ISO 266; the first of them, 20 Hz, lies 17 thirds under 1 kHz.
    private static readonly double[] Nominal = [20, 25, 31.5, 40, 50, 63, 80, 100, 125, 160];
    private const int FirstIndex = -17;

    /// <summary>The bands in rising order.</summary>
    public static IReadOnlyList<ThirdOctave> Bands { get; } = [.. Nominal.Select((name, i) => Band(name, FirstIndex + i))];

    /// <summary>Frequencies spread evenly over the logarithm of a band, each in the middle of its cell.</summary>
    /// <param name="band">The band.</param>
    /// <param name="count">How many, 1 to 1000.</param>
    /// <returns>The frequencies in rising order, Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A count outside its range.</exception>
    /// <remarks>
    /// Model: f = f1 (f2/f1)^((i + ½)/n): the mean of a power over these is its mean over a signal of equal energy per octave.
    /// Validity: a power that changes little within one cell. Source: band edges IEC 61260-1:2014; the midpoint rule is our choice.
    /// Accuracy: 15 points hold the third-octave of a room that decays in half a second within 0.1 dB of 150 points; longer decay is less smooth.
    /// </remarks>
    public static IReadOnlyList<double> FrequenciesHz(ThirdOctave band, int count)
    {
        ArgumentNullException.ThrowIfNull(band);
        Require.Within(count, 1, 1000, nameof(count));
        return [.. Enumerable.Range(0, count).Select(i => band.LowerHz * Math.Pow(band.UpperHz / band.LowerHz, (i + 0.5) / count))];
    }

    /// <summary>Level of several band levels together.</summary>
    /// <param name="levelsDb">Band levels, dB; at least one.</param>
    /// <returns>Energy sum, dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No level at all.</exception>
    /// <remarks>
    /// Model: 10 log10 Σ 10^(L/10). Validity: bands that do not overlap. Source: definition of the level, ISO 1683:2015. Accuracy: exact.
    /// </remarks>
    public static double SumDb(IEnumerable<double> levelsDb)
    {
        ArgumentNullException.ThrowIfNull(levelsDb);
        var all = levelsDb.ToArray();
        Require.Within(all.Length, 1, int.MaxValue, nameof(levelsDb), "levels");

        // Around the greatest level, so that no level is too small or too great for its power.
        var greatest = all.Max();
        return greatest + (10 * Math.Log10(all.Sum(level => Math.Pow(10, (level - greatest) / 10))));
    }

    // Base ten: G = 10^0.3, so a third octave is a tenth of a decade (IEC 61260-1:2014).
    private static ThirdOctave Band(double name, int index) =>
        new(name, 1000 * Math.Pow(10, index / 10.0), 1000 * Math.Pow(10, (index - 0.5) / 10), 1000 * Math.Pow(10, (index + 0.5) / 10));
}
