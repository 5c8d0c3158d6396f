using Stillwall.Materials;

namespace Stillwall.Neighbours;

/// <summary>Everything that the neighbour's level is held against, as shares of the limit: single bands, and weighted sums of them.</summary>
internal sealed class Politeness
{
    private readonly double[] alone;
    private readonly List<double[]> sums;

    private Politeness(double[] alone, List<double[]> sums) => (this.alone, this.sums) = (alone, sums);

    /// <summary>Whether there is anything to be held against.</summary>
    public bool IsStated => sums.Count > 0 || alone.Any(share => share > 0);

    /// <summary>The limits of levels next door.</summary>
    /// <param name="neighbourDb">Level next door in each band, dB; null where not known.</param>
    /// <param name="curveDb">Curve with its allowance; null where none.</param>
    /// <param name="limitADb">Greatest A-weighted level, dB; null where none.</param>
    /// <param name="limitCDb">Greatest C-weighted level, dB; null where none.</param>
    public static Politeness Of(IReadOnlyList<double?> neighbourDb, IReadOnlyList<double?>? curveDb, double? limitADb, double? limitCDb)
    {
        double[] alone = [.. neighbourDb.Select((level, i) => level - curveDb?[i] is { } over ? Power(over) : 0)];
        var sums = new List<double[]>();
        Add(sums, neighbourDb, limitADb, Weightings.ADb);
        Add(sums, neighbourDb, limitCDb, Weightings.CDb);
        return new(alone, sums);
    }

    /// <summary>Greatest excess over any of the limits, dB.</summary>
    /// <param name="kept">Share of each band's power that an equaliser lets through; null for none.</param>
    public double OverDb(IReadOnlyList<double>? kept = null)
    {
        var greatest = 0.0;
        for (var i = 0; i < alone.Length; i++)
        {
            greatest = Math.Max(greatest, kept is null ? alone[i] : alone[i] * kept[i]);
        }

        foreach (var shares in sums)
        {
            var sum = 0.0;
            for (var i = 0; i < shares.Length; i++)
            {
                sum += kept is null ? shares[i] : shares[i] * kept[i];
            }

            greatest = Math.Max(greatest, sum);
        }

        return 10 * Math.Log10(greatest);
    }

    /// <summary>Weighted level of the bands together, dB; null where none is known.</summary>
    /// <remarks>Source: elementary, energy sum.</remarks>
    public static double? WeightedDb(IReadOnlyList<double?> levelsDb, Func<double, double> weightingDb)
    {
        var known = levelsDb
            .Zip(ThirdOctaves.Bands)
            .Where(pair => pair.First is not null)
            .Select(pair => pair.First!.Value + weightingDb(pair.Second.CentreHz))
            .ToList();
        return known.Count == 0 ? null : ThirdOctaves.SumDb(known);
    }

    private static void Add(List<double[]> sums, IReadOnlyList<double?> levelsDb, double? limitDb, Func<double, double> weightingDb)
    {
        if (limitDb is { } limit && levelsDb.Any(level => level is not null))
        {
            sums.Add([.. levelsDb.Zip(ThirdOctaves.Bands, (level, band) => level is { } known ? Power(known + weightingDb(band.CentreHz) - limit) : 0)]);
        }
    }

    private static double Power(double db) => Math.Pow(10, db / 10);
}
