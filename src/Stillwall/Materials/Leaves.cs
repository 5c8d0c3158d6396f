using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Materials;

/// <summary>Walls of which only the mass is known: one limp leaf, or two with air between them.</summary>
public static class Leaves
{
    // Sound from all sides instead of straight on, in third-octaves.
    private const double FieldDb = 5.5;

    private const int PointsPerBand = 15;

    /// <summary>Sound reduction of one limp leaf in the ten third-octaves 20 to 160 Hz.</summary>
    /// <param name="leafKgM2">Mass per area, above 0 kg/m².</param>
    /// <param name="air">The air.</param>
    /// <returns>Sound reduction, dB; not below 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A mass that is not above zero.</exception>
    /// <remarks>
    /// Model: <see cref="Partitions.MassLawDb"/>. Validity: far below the leaf's critical frequency; a small heavy wall does better, one at its own
    /// resonance worse.
    /// Source: Bies, Hansen and Howard 2018, Eq. 7.40 and 7.42. Accuracy: up to 8 dB more than the same book's table 7.6 gives heavy brick at 63 Hz.
    /// </remarks>
    public static IReadOnlyList<double> OneDb(double leafKgM2, Air air) =>
        [.. ThirdOctaves.Bands.Select(band => Mean(band, f => Math.Pow(10, -(Partitions.MassLawDb(f, leafKgM2, air, 0) / 10))))];

    /// <summary>Sound reduction of two limp leaves with air between them in the ten third-octaves 20 to 160 Hz.</summary>
    /// <param name="firstKgM2">Mass per area of one leaf, above 0 kg/m².</param>
    /// <param name="secondKgM2">Mass per area of the other, above 0 kg/m².</param>
    /// <param name="gapM">Clear distance, above 0 m.</param>
    /// <param name="air">The air.</param>
    /// <returns>Sound reduction, dB; not below 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero.</exception>
    /// <remarks>
    /// Model: the mean over the band of <see cref="TransmissionRatio"/>, less 5.5 dB for sound from all sides. Validity: no studs or ties, empty
    /// cavity, leaves far below their critical frequency; around the resonance worse than one leaf of both masses.
    /// Source: layers in series, Bies, Hansen and Howard 2018, chapter 7 (from memory); the field correction on two leaves is our choice. Accuracy:
    /// exact for the model; 6 dB of built walls (from memory).
    /// </remarks>
    public static IReadOnlyList<double> TwoDb(double firstKgM2, double secondKgM2, double gapM, Air air) =>
        [.. ThirdOctaves.Bands.Select(band => Mean(band, f => TransmissionRatio(f, firstKgM2, secondKgM2, gapM, air)))];

    /// <summary>Share of the sound power that two limp leaves let through, straight on.</summary>
    /// <param name="frequencyHz">Frequency, above 0 Hz.</param>
    /// <param name="firstKgM2">Mass per area of one leaf, above 0 kg/m².</param>
    /// <param name="secondKgM2">Mass per area of the other, above 0 kg/m².</param>
    /// <param name="gapM">Clear distance, above 0 m.</param>
    /// <param name="air">The air.</param>
    /// <returns>Transmitted over incident power, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero.</exception>
    /// <remarks>
    /// Model: mass, layer of air, mass as chain matrices: τ = |2/(A + B/Z + C Z + D)|², Z = ρc. Validity: plane waves straight on, limp leaves, no
    /// loss. Source: chain matrices of plane layers (from memory).
    /// Accuracy: exact for the model: the mass law of both masses for no gap, all but transparent at the resonance of two equal leaves.
    /// </remarks>
    public static double TransmissionRatio(double frequencyHz, double firstKgM2, double secondKgM2, double gapM, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(frequencyHz);
        Require.Positive(firstKgM2);
        Require.Positive(secondKgM2);
        Require.Positive(gapM);
        var omega = 2 * Math.PI * frequencyHz;
        var (sine, cosine) = Math.SinCos(omega * gapM / air.SpeedOfSoundMS);

        // Impedances of the leaves over that of the air.
        var impedance = air.DensityKgM3 * air.SpeedOfSoundMS;
        var (first, second) = (new Complex(0, omega * firstKgM2 / impedance), new Complex(0, omega * secondKgM2 / impedance));
        var spring = Complex.ImaginaryOne * sine;
        var a = cosine + (first * spring);
        var b = (a * second) + spring + (first * cosine);
        var d = (spring * second) + cosine;
        var sum = a + b + spring + d;
        return 4 / ((sum.Real * sum.Real) + (sum.Imaginary * sum.Imaginary));
    }

    private static double Mean(ThirdOctave band, Func<double, double> transmitted) =>
        Math.Max(0, (-10 * Math.Log10(ThirdOctaves.FrequenciesHz(band, PointsPerBand).Average(transmitted))) - FieldDb);
}
