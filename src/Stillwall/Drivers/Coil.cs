using Stillwall.Numerics;

namespace Stillwall.Drivers;

/// <summary>Copper in series with the sound: the cable, and the coil when it is hot.</summary>
public static class Coil
{
    /// <summary>Resistivity of annealed copper at 20 °C, Ω·m (IEC 60028).</summary>
    public const double CopperResistivityOhmM = 1.7241e-8;

    /// <summary>Rise of copper's resistance per kelvin, referred to 20 °C (IEC 60028).</summary>
    public const double CopperRatioPerK = 0.00393;

    /// <summary>Resistance of a two-wire copper cable, there and back.</summary>
    /// <param name="lengthM">Length of the cable, m, 0 or more.</param>
    /// <param name="sectionM2">Section of one wire, m², above 0.</param>
    /// <returns>Resistance, ohm.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    /// <remarks>
    /// Model: 2·ρ·length/section. Validity: 20 °C, low frequencies. Source: IEC 60028 for the resistivity (from memory).
    /// Accuracy: stranded wire is up to 8 % above it.
    /// </remarks>
    public static double CableResistanceOhm(double lengthM, double sectionM2)
    {
        Require.NotNegative(lengthM);
        Require.Positive(sectionM2);
        return 2 * CopperResistivityOhmM * lengthM / sectionM2;
    }

    /// <summary>The driver with its coil warmer than the 20 °C its data refer to.</summary>
    /// <param name="driver">The driver, cold.</param>
    /// <param name="riseK">Rise of the coil's temperature, 0 to 300 K.</param>
    /// <returns>The driver, hot.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="riseK"/> is out of range.</exception>
    /// <remarks>
    /// Model: Re grows by 0.393 % per kelvin. Validity: copper coils; aluminium is 0.4 %. Source: IEC 60028 for the coefficient (from memory).
    /// Accuracy: the coefficient is good to 1 %; the rise itself is an estimate, for data sheets do not state it.
    /// </remarks>
    public static Driver Heated(Driver driver, double riseK)
    {
        ArgumentNullException.ThrowIfNull(driver);
        Require.Within(riseK, 0, 300, nameof(riseK), "K");
        return driver.WithSeriesResistance(driver.ReOhm * CopperRatioPerK * riseK);
    }

    /// <summary>Level lost to a warm coil where the moving mass rules, at the same voltage.</summary>
    /// <param name="riseK">Rise of the coil's temperature, 0 to 300 K.</param>
    /// <returns>Compression, dB, 0 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="riseK"/> is out of range.</exception>
    /// <remarks>
    /// Model: 20 lg(1 + 0.00393·rise). Validity: well above the resonance and below the coil's inductive rise; at the resonance the loss is less.
    /// Source: our own algebra on the coefficient of IEC 60028 (from memory). Accuracy: an estimate, an upper bound about the resonance.
    /// </remarks>
    public static double CompressionDb(double riseK)
    {
        Require.Within(riseK, 0, 300, nameof(riseK), "K");
        return 20 * Math.Log10(1 + (CopperRatioPerK * riseK));
    }
}
