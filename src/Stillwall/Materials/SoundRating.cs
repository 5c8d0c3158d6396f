using Stillwall.Numerics;

namespace Stillwall.Materials;

/// <summary>Sound reduction of a wall as one number, with its terms for two kinds of noise.</summary>
/// <param name="WeightedDb">Weighted sound reduction index Rw, dB.</param>
/// <param name="PinkTermDb">Term C for pink noise, 100 to 3150 Hz, dB.</param>
/// <param name="TrafficTermDb">Term Ctr for traffic, 100 to 3150 Hz, dB.</param>
/// <param name="PinkTermFrom50HzDb">Term C from 50 Hz, dB; to 5000 Hz where those bands are given, else to 3150 Hz; null without the bands from 50 Hz.</param>
/// <param name="TrafficTermFrom50HzDb">Term Ctr from 50 Hz, dB; as above.</param>
/// <param name="UnfavourableSumDb">Sum of what the wall falls short of the shifted reference, dB; at most 32.</param>
public sealed record SoundRating(
    double WeightedDb,
    double PinkTermDb,
    double TrafficTermDb,
    double? PinkTermFrom50HzDb,
    double? TrafficTermFrom50HzDb,
    double UnfavourableSumDb
)
{
    private const double MostUnfavourableDb = 32;

    // ISO 717-1, 100 to 3150 Hz, and its spectra 1 (pink) and 2 (traffic). The last two of the second list are from memory; a worked example of the
    // standard bears them out.
    private static readonly double[] Reference = [33, 36, 39, 42, 45, 48, 51, 52, 53, 54, 55, 56, 56, 56, 56, 56];
    private static readonly double[] Pink = [-29, -26, -23, -21, -19, -17, -15, -13, -12, -11, -10, -9, -9, -9, -9, -9];
    private static readonly double[] PinkBelow = [-40, -36, -33];
    private static readonly double[] PinkWide = [-41, -37, -34, -30, -27, -24, -22, -20, -18, -16, -14, -13, -12, -11, -10, -10, -10, -10, -10, -10, -10];
    private static readonly double[] Traffic = [-20, -20, -18, -16, -15, -14, -13, -12, -11, -9, -8, -9, -10, -11, -13, -15];
    private static readonly double[] TrafficBelow = [-25, -23, -21];
    private static readonly double[] TrafficAbove = [-16, -18];

    /// <summary>Rates a wall.</summary>
    /// <param name="reductionDb">Sound reduction in the sixteen third-octaves 100 to 3150 Hz, −50 to 150 dB.</param>
    /// <param name="belowDb">The three from 50 to 80 Hz, or null.</param>
    /// <param name="aboveDb">The two at 4000 and 5000 Hz, or null.</param>
    /// <returns>The rating, in whole decibels.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not sixteen, three and two values within their range.</exception>
    /// <remarks>
    /// Model: the reference is shifted in steps of 1 dB as far up as the sum of what the wall falls short stays within 32 dB; Rw is its value at 500
    /// Hz; C = −10 log10 Σ 10^((L − R)/10) − Rw, rounded. Validity: measured or forecast third-octaves to 0.1 dB.
    /// Source: ISO 717-1:2020. Accuracy: by definition.
    /// </remarks>
    public static SoundRating Of(IReadOnlyList<double> reductionDb, IReadOnlyList<double>? belowDb = null, IReadOnlyList<double>? aboveDb = null)
    {
        Check(reductionDb, Reference.Length, nameof(reductionDb));
        Check(belowDb ?? PinkBelow, PinkBelow.Length, nameof(belowDb));
        Check(aboveDb ?? TrafficAbove, TrafficAbove.Length, nameof(aboveDb));
        var shift = 150;
        while (Unfavourable(reductionDb, shift) > MostUnfavourableDb)
        {
            shift--;
        }

        var weighted = Reference[7] + shift;
        double Term(IEnumerable<double> spectrum, IEnumerable<double> reduction) => Rounded(DifferenceDb(spectrum, reduction)) - weighted;
        double? Wide(double[] alone, double[] wide) =>
            belowDb is null ? null : Term(aboveDb is null ? alone : wide, [.. belowDb, .. reductionDb, .. aboveDb ?? []]);
        return new(
            weighted,
            Term(Pink, reductionDb),
            Term(Traffic, reductionDb),
            Wide([.. PinkBelow, .. Pink], PinkWide),
            Wide([.. TrafficBelow, .. Traffic], [.. TrafficBelow, .. Traffic, .. TrafficAbove]),
            Unfavourable(reductionDb, shift)
        );
    }

    /// <summary>Level difference that a wall makes for a noise whose energy sum is 0 dB, dB, not rounded.</summary>
    /// <remarks>Source: ISO 717-1:2020.</remarks>
    internal static double DifferenceDb(IEnumerable<double> spectrum, IEnumerable<double> reduction) =>
        -10 * Math.Log10(spectrum.Zip(reduction).Sum(p => Math.Pow(10, (p.First - p.Second) / 10)));

    private static double Unfavourable(IReadOnlyList<double> reduction, int shift) =>
        reduction.Zip(Reference).Sum(p => Math.Max(0, p.Second + shift - Math.Round(p.First, 1)));

    private static double Rounded(double value) => Math.Floor(value + 0.5);

    private static void Check(IReadOnlyList<double> values, int count, string name)
    {
        ArgumentNullException.ThrowIfNull(values, name);
        Require.Within(values.Count, count, count, name, "bands");
        foreach (var value in values)
        {
            Require.Within(value, -50, 150, name, "dB");
        }
    }
}

/// <summary>A wall known by its third-octaves: its rating, and the row that a project states.</summary>
/// <param name="Rating">The rating; null where the sixteen bands 100 to 3150 Hz are not all there.</param>
/// <param name="ReductionDb">Sound reduction in the ten third-octaves 20 to 160 Hz, dB; null where 160 Hz is not there.</param>
/// <param name="LowestKnownHz">Lowest band that was given without a gap up to 160 Hz, Hz; below it the slope of the mass law.</param>
public sealed record RatedWall(SoundRating? Rating, IReadOnlyList<double>? ReductionDb, double? LowestKnownHz)
{
    private static readonly double[] Nominal =
    [
        20,
        25,
        31.5,
        40,
        50,
        63,
        80,
        100,
        125,
        160,
        200,
        250,
        315,
        400,
        500,
        630,
        800,
        1000,
        1250,
        1600,
        2000,
        2500,
        3150,
        4000,
        5000,
    ];

    /// <summary>Names of the third-octaves that count, Hz.</summary>
    public static IReadOnlyList<double> BandsHz => Nominal;

    /// <summary>What is known of a wall by some of its third-octaves.</summary>
    /// <param name="reductionDb">Sound reduction by the band's name, Hz and dB; bands that are not among <see cref="BandsHz"/> are left out.</param>
    /// <returns>The wall.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A reduction outside −50 to 150 dB.</exception>
    /// <remarks>
    /// Model: <see cref="SoundRating.Of"/> and <see cref="Partitions.ExtendedDb"/>. Validity: as there. Source: ISO 717-1:2020; the slope below the
    /// lowest band is our choice. Accuracy: by definition.
    /// </remarks>
    public static RatedWall Of(IReadOnlyDictionary<double, double> reductionDb)
    {
        ArgumentNullException.ThrowIfNull(reductionDb);
        double[]? Span(double from, double to) =>
            Nominal.Where(band => band >= from && band <= to).ToArray() is var bands && bands.All(reductionDb.ContainsKey)
                ? [.. bands.Select(band => reductionDb[band])]
                : null;
        var low = Nominal.Where(band => band <= 160).Reverse().TakeWhile(reductionDb.ContainsKey).Reverse().ToList();
        return new(
            Span(100, 3150) is { } middle ? SoundRating.Of(middle, Span(50, 80), Span(4000, 5000)) : null,
            low.Count > 0 ? Partitions.ExtendedDb([.. low.Select(band => reductionDb[band])]) : null,
            low.Count > 0 ? low[0] : null
        );
    }
}
