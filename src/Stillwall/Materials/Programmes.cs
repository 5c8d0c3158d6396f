using Stillwall.Numerics;

namespace Stillwall.Materials;

/// <summary>What is played: how its energy is spread over the ten third-octaves 20 to 160 Hz.</summary>
public static class Programmes
{
    private static readonly (string Name, double[] ShapeDb, double CrestDb)[] Table =
    [
        ("speech", [-50, -45, -40, -34, -28, -22, -14, -6, 0, 0], 15),
        ("acoustic-music", [-30, -24, -17, -11, -7, -4, -2, -1, 0, 0], 18),
        ("music", [-18, -12, -7, -3, 0, 0, 0, -1, -2, -3], 14),
        ("deep-music", [-5, -3, -1, 0, 0, 0, -2, -4, -6, -8], 12),
        ("pink", [0, 0, 0, 0, 0, 0, 0, 0, 0, 0], 12),
    ];

    private const double UsualCrestDb = 14;

    /// <summary>Names of the programmes with a spectrum of their own.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Table.Select(row => row.Name)];

    /// <summary>Relative band levels of a programme, the energy sum of the ten bands being 0 dB.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <returns>Relative level of each band, dB; null where the name is not known.</returns>
    /// <remarks>
    /// Model: long-term electrical spectrum in third-octaves. Validity: a rough average; one record may be 10 dB from it in a band.
    /// Source: pink is equal energy in every third-octave by definition; speech, acoustic music and music are from memory of long-term spectra,
    /// rounded, our choice.
    /// Accuracy: not checked against a publication.
    /// </remarks>
    public static IReadOnlyList<double>? SpectrumDb(string name)
    {
        var row = Table.FirstOrDefault(entry => entry.Name == name);
        return row.ShapeDb is null ? null : Normalised(row.ShapeDb);
    }

    /// <summary>How far the peaks of a programme's bass rise above its long-term level.</summary>
    /// <param name="name">Name of a programme.</param>
    /// <returns>Crest, dB; 14 dB for a programme of one's own.</returns>
    /// <remarks>
    /// Model: one figure a programme. Validity: bass alone, over a whole record; a drum alone is more. Source: from memory, rounded; four standard
    /// deviations of noise are 12 dB. Accuracy: not checked against a publication; records differ by 6 dB.
    /// </remarks>
    public static double CrestDb(string name) => Table.FirstOrDefault(entry => entry.Name == name) is { Name: not null } row ? row.CrestDb : UsualCrestDb;

    /// <summary>A spectrum shifted so that the energy sum of its bands is 0 dB.</summary>
    /// <param name="spectrumDb">Relative level of each of the ten bands, dB.</param>
    /// <returns>The shifted levels, dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not ten finite values.</exception>
    /// <remarks>Model: L − 10 log10 Σ 10^(L/10). Validity: any spectrum. Source: definition of the level, ISO 1683:2015. Accuracy: exact.</remarks>
    public static IReadOnlyList<double> Normalised(IReadOnlyList<double> spectrumDb)
    {
        ArgumentNullException.ThrowIfNull(spectrumDb);
        Require.Within(spectrumDb.Count, ThirdOctaves.Bands.Count, ThirdOctaves.Bands.Count, nameof(spectrumDb), "bands");
        foreach (var level in spectrumDb)
        {
            Require.Within(level, -1000, 1000, nameof(spectrumDb), "dB");
        }

        var sum = ThirdOctaves.SumDb(spectrumDb);
        return [.. spectrumDb.Select(level => level - sum)];
    }
}
