using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Cabinets;

/// <summary>Closed forms of a lossless closed box: no leak, no fill loss, no coil inductance, a source without resistance.</summary>
public static class ClosedBox
{
    private static readonly double HalfPowerQ = Math.Sqrt(0.5);

    /// <summary>How many times stiffer the box is than the suspension.</summary>
    /// <param name="driver">The driver, or several as one.</param>
    /// <param name="effectiveVolumeM3">Effective volume, fill factor included, m³, above 0.</param>
    /// <param name="air">The air in the box.</param>
    /// <returns>α, the compliance ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not positive.</exception>
    /// <remarks>
    /// Model: α = ρc²Sd²Cms/(kVb). Validity: box small against the wavelength, small signals. Source: Small 1972, JAES 20(10) (from memory).
    /// Accuracy: exact for the lumped model.
    /// </remarks>
    public static double ComplianceRatio(Driver driver, double effectiveVolumeM3, Air air)
    {
        ArgumentNullException.ThrowIfNull(driver);
        Require.Positive(effectiveVolumeM3);
        return driver.VasInM3(air) / effectiveVolumeM3;
    }

    /// <summary>Resonance of the driver in the box.</summary>
    /// <param name="fsHz">Resonance in free air, Hz, above 0.</param>
    /// <param name="complianceRatio">α, 0 or more.</param>
    /// <returns>fc, Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    /// <remarks>
    /// Model: fc = fs√(1 + α). Validity: lossless box, the moving mass as in free air. Source: Small 1972, JAES 20(10) (from memory).
    /// Accuracy: exact for the lumped model; real drivers scatter by 5 %.
    /// </remarks>
    public static double ResonanceHz(double fsHz, double complianceRatio)
    {
        Require.Positive(fsHz);
        Require.NotNegative(complianceRatio);
        return fsHz * Math.Sqrt(1 + complianceRatio);
    }

    /// <summary>Total Q of the driver in the box.</summary>
    /// <param name="qts">Total Q in free air, above 0.</param>
    /// <param name="complianceRatio">α, 0 or more.</param>
    /// <returns>Qtc.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    /// <remarks>
    /// Model: Qtc = Qts√(1 + α). Validity: lossless box. Source: Small 1972, JAES 20(10) (from memory).
    /// Accuracy: exact for the lumped model; fill and leak lower it.
    /// </remarks>
    public static double SystemQ(double qts, double complianceRatio)
    {
        Require.Positive(qts);
        Require.NotNegative(complianceRatio);
        return qts * Math.Sqrt(1 + complianceRatio);
    }

    /// <summary>Frequency at which the response is 3 dB (half the power) under the passband.</summary>
    /// <param name="resonanceHz">fc, Hz, above 0.</param>
    /// <param name="systemQ">Qtc, above 0.</param>
    /// <returns>f3, Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: f3/fc = √{[X + √(X² + 4)]/2}, X = 1/Q² − 2. Validity: second-order high-pass. Source: Small 1972, JAES 20(10) (from memory).
    /// Accuracy: exact for the lumped model.
    /// </remarks>
    public static double F3Hz(double resonanceHz, double systemQ) => CornerHz(resonanceHz, systemQ, 2);

    /// <summary>Frequency at which the response is 10 dB (a tenth of the power) under the passband.</summary>
    /// <param name="resonanceHz">fc, Hz, above 0.</param>
    /// <param name="systemQ">Qtc, above 0.</param>
    /// <returns>f10, Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: f10/fc = √{[X + √(X² + 36)]/18}, X = 1/Q² − 2. Validity: second-order high-pass. Source: our own algebra on Small 1972, JAES 20(10).
    /// Accuracy: exact for the lumped model.
    /// </remarks>
    public static double F10Hz(double resonanceHz, double systemQ) => CornerHz(resonanceHz, systemQ, 10);

    /// <summary>How far the response rises above the passband.</summary>
    /// <param name="systemQ">Qtc, above 0.</param>
    /// <returns>The peak, dB; 0 where the response does not rise.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Q is not positive.</exception>
    /// <remarks>
    /// Model: 20 lg[Q²/√(Q² − ¼)] for Q > 1/√2, else 0. Validity: second-order high-pass. Source: Small 1972, JAES 20(10) (from memory).
    /// Accuracy: exact for the lumped model.
    /// </remarks>
    public static double ResponsePeakDb(double systemQ)
    {
        Require.Positive(systemQ);
        var squared = systemQ * systemQ;
        return systemQ <= HalfPowerQ ? 0 : 20 * Math.Log10(squared / Math.Sqrt(squared - 0.25));
    }

    /// <summary>Share of the electrical power that becomes sound into a half space, in the passband.</summary>
    /// <param name="driver">The driver, or several as one.</param>
    /// <param name="air">The air.</param>
    /// <returns>η₀, a ratio.</returns>
    /// <remarks>
    /// Model: η₀ = (4π²/c³)·fs³·Vas/Qes with Vas in the given air. Validity: wavelength long against the cone, power taken as V²/Re.
    /// Source: Small 1972, JAES 20(5) (from memory). Accuracy: exact for the lumped model.
    /// </remarks>
    public static double ReferenceEfficiency(Driver driver, Air air)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(air);
        return 4 * Math.PI * Math.PI / Cube(air.SpeedOfSoundMS) * Cube(driver.FsHz) * driver.VasInM3(air) / driver.Qes;
    }

    /// <summary>Level of one acoustic watt into a half space at 1 m.</summary>
    /// <param name="air">The air.</param>
    /// <returns>Level, dB re 20 µPa.</returns>
    /// <remarks>
    /// Model: p² = ρc·P/(2πr²). Validity: far field of a small source on a large wall. Source: spherical spreading, Beranek 1954, 4 (from memory).
    /// Accuracy: 112.16 dB at 20 °C; 112.09 dB with the 1.18 kg/m³ and 345 m/s of Small 1972, JAES 20(5).
    /// </remarks>
    public static double AcousticWattLevelDb(Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        var squared = air.DensityKgM3 * air.SpeedOfSoundMS / (2 * Math.PI);
        return 10 * Math.Log10(squared / Square(Air.ReferencePressurePa));
    }

    /// <summary>Level at 1 m, half space, in the passband for 1 W into the coil's resistance.</summary>
    /// <param name="referenceEfficiency">η₀, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Level, dB re 20 µPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The efficiency is not positive.</exception>
    /// <remarks>
    /// Model: level of one acoustic watt + 10 lg η₀. Validity: as the reference efficiency. Source: Small 1972, JAES 20(5) (from memory).
    /// Accuracy: exact for the lumped model; 1 W is V²/Re, not V²/rated load.
    /// </remarks>
    public static double SensitivityDb(double referenceEfficiency, Air air)
    {
        Require.Positive(referenceEfficiency);
        return AcousticWattLevelDb(air) + (10 * Math.Log10(referenceEfficiency));
    }

    /// <summary>Effective volume in which the driver has a wanted system Q.</summary>
    /// <param name="driver">The driver, or several as one.</param>
    /// <param name="wantedQ">Wanted Qtc, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Volume, fill factor included, m³; null where even the largest box leaves the Q higher.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Q is not positive.</exception>
    /// <remarks>
    /// Model: V = Vas/[(Qtc/Qts)² − 1]. Validity: lossless box. Source: inverse of Small 1972, JAES 20(10). Accuracy: exact for the lumped model.
    /// </remarks>
    public static double? VolumeForSystemQM3(Driver driver, double wantedQ, Air air)
    {
        ArgumentNullException.ThrowIfNull(driver);
        Require.Positive(wantedQ);
        return VolumeOf(driver, Square(wantedQ / driver.Qts), air);
    }

    /// <summary>Smallest effective volume in which the driver reaches down to a wanted f3.</summary>
    /// <param name="driver">The driver, or several as one.</param>
    /// <param name="wantedHz">Wanted f3, Hz, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Volume, fill factor included, m³; null where no box reaches it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    /// <remarks>
    /// Model: the f3 formula solved for 1 + α, larger root. Validity: lossless box. Source: our own algebra on Small 1972, JAES 20(10).
    /// Accuracy: exact for the lumped model.
    /// </remarks>
    public static double? VolumeForF3M3(Driver driver, double wantedHz, Air air) => VolumeForCorner(driver, wantedHz, air, 2);

    /// <summary>Smallest effective volume in which the driver reaches down to a wanted f10.</summary>
    /// <param name="driver">The driver, or several as one.</param>
    /// <param name="wantedHz">Wanted f10, Hz, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Volume, fill factor included, m³; null where no box reaches it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    /// <remarks>
    /// Model: the f10 formula solved for 1 + α, larger root. Validity: lossless box. Source: our own algebra on Small 1972, JAES 20(10).
    /// Accuracy: exact for the lumped model.
    /// </remarks>
    public static double? VolumeForF10M3(Driver driver, double wantedHz, Air air) => VolumeForCorner(driver, wantedHz, air, 10);

    // |H|² = 1/m at the corner: m = 2 is 3 dB, m = 10 is 10 dB.
    private static double CornerHz(double resonanceHz, double systemQ, double m)
    {
        Require.Positive(resonanceHz);
        Require.Positive(systemQ);
        var x = (1 / Square(systemQ)) - 2;
        return resonanceHz * Math.Sqrt((x + Math.Sqrt((x * x) + (4 * (m - 1)))) / (2 * (m - 1)));
    }

    // With t = 1 + α and a = 1/Qts² the corner satisfies 2(m−1)(f/fs)² = a − 2t + √[(a − 2t)² + 4(m−1)t²], a quadratic in t.
    private static double? VolumeForCorner(Driver driver, double wantedHz, Air air, double m)
    {
        ArgumentNullException.ThrowIfNull(driver);
        Require.Positive(wantedHz);
        var a = 1 / Square(driver.Qts);
        var b = 2 * (m - 1) * Square(wantedHz / driver.FsHz);
        var root = (b * b) + ((m - 1) * ((b * b) - (2 * a * b)));
        if (root < 0)
        {
            return null;
        }

        var t = (b + Math.Sqrt(root)) / (2 * (m - 1));
        return b - a + (2 * t) >= 0 ? VolumeOf(driver, t, air) : null;
    }

    private static double? VolumeOf(Driver driver, double t, Air air) => t > 1 ? driver.VasInM3(air) / (t - 1) : null;

    private static double Square(double value) => value * value;

    private static double Cube(double value) => value * value * value;
}
