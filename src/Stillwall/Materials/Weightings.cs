using Stillwall.Numerics;

namespace Stillwall.Materials;

/// <summary>Frequency weightings of sound level meters.</summary>
public static class Weightings
{
    // Pole frequencies from fL = 10^1.5, fH = 10^3.9, fA = 10^2.45 Hz and D² = ½ (IEC 61672-1, annex E).
    private const double F1Hz = 20.598997057568145;
    private const double F2Hz = 107.65264864304628;
    private const double F3Hz = 737.8622307362899;
    private const double F4Hz = 12194.217147998012;

    // What makes the weighting zero at 1 kHz.
    private static readonly double AAtOneKilohertzDb = 20 * Math.Log10(RawA(1000));
    private static readonly double CAtOneKilohertzDb = 20 * Math.Log10(RawC(1000));

    /// <summary>A-weighting at a frequency.</summary>
    /// <param name="frequencyHz">Frequency, above 0 Hz; the exact mid-band one for a band.</param>
    /// <returns>Weighting, dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency that is not above zero.</exception>
    /// <remarks>
    /// Model: A(f) = 20 log10 { f4² f⁴ / [(f²+f1²)(f²+f2²)^½(f²+f3²)^½(f²+f4²)] } − A(1 kHz). Validity: 10 Hz to 20 kHz.
    /// Source: IEC 61672-1:2013, annex E. Accuracy: within 0.1 dB of its table 3, which is rounded to 0.1 dB.
    /// </remarks>
    public static double ADb(double frequencyHz)
    {
        Require.Positive(frequencyHz);
        return (20 * Math.Log10(RawA(frequencyHz))) - AAtOneKilohertzDb;
    }

    /// <summary>C-weighting at a frequency.</summary>
    /// <param name="frequencyHz">Frequency, above 0 Hz; the exact mid-band one for a band.</param>
    /// <returns>Weighting, dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency that is not above zero.</exception>
    /// <remarks>
    /// Model: C(f) = 20 log10 { f4² f² / [(f²+f1²)(f²+f4²)] } − C(1 kHz). Validity: 10 Hz to 20 kHz.
    /// Source: IEC 61672-1:2013, annex E. Accuracy: within 0.1 dB of its table 3, which is rounded to 0.1 dB.
    /// </remarks>
    public static double CDb(double frequencyHz)
    {
        Require.Positive(frequencyHz);
        return (20 * Math.Log10(RawC(frequencyHz))) - CAtOneKilohertzDb;
    }

    private static double RawA(double f) => RawC(f) * f * f / Math.Sqrt(((f * f) + (F2Hz * F2Hz)) * ((f * f) + (F3Hz * F3Hz)));

    private static double RawC(double f) => F4Hz * F4Hz * f * f / (((f * f) + (F1Hz * F1Hz)) * ((f * f) + (F4Hz * F4Hz)));
}
