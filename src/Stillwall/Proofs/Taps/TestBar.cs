using Stillwall.Numerics;

namespace Stillwall.Proofs.Taps;

/// <summary>A bar of rectangular section that is hung at its nodes and tapped.</summary>
/// <param name="LengthM">Length, m.</param>
/// <param name="WidthM">Width across the tap, m.</param>
/// <param name="ThicknessM">Thickness in the direction of the tap, m.</param>
/// <param name="MassKg">Mass, kg.</param>
/// <param name="Poisson">Poisson's ratio.</param>
public sealed record TestBar(double LengthM, double WidthM, double ThicknessM, double MassKg, double Poisson = 0.2)
{
    /// <summary>Density, kg/m³.</summary>
    public double DensityKgM3 => MassKg / (LengthM * WidthM * ThicknessM);

    /// <summary>Young's modulus from the frequency of the first bending mode.</summary>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <returns>Modulus, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A size, the mass, Poisson's ratio or the frequency is out of range, or the bar is thicker than 0.35 of its length.
    /// </exception>
    /// <remarks>
    /// Model: E = 0.9465·(m·f²/b)·(L³/t³)·T1, T1 = 1 + 6.585(1 + 0.0752ν + 0.8109ν²)(t/L)² − 0.868(t/L)⁴ − 8.340(1 + 0.2023ν + 2.173ν²)(t/L)⁴/[1 +
    /// 6.338(1 + 0.1408ν + 1.536ν²)(t/L)²].
    /// Validity: t/L up to about a quarter, free ends. Source: ASTM E1876-15 (the full T1 from memory). Accuracy: 0.4 % of the exact free-free
    /// Timoshenko beam up to t/L = 0.25.
    /// </remarks>
    public double ModulusPa(double frequencyHz)
    {
        Require.Positive(frequencyHz);
        return 0.9465 * MassKg * frequencyHz * frequencyHz / WidthM * Math.Pow(LengthM / ThicknessM, 3) * ShearFactor();
    }

    /// <summary>Frequency of the first bending mode for a modulus.</summary>
    /// <param name="modulusPa">Young's modulus, Pa, above 0.</param>
    /// <returns>Frequency, Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="ModulusPa"/>.</exception>
    /// <remarks>Model: <see cref="ModulusPa"/> solved for f. Validity and accuracy: as there. Source: ASTM E1876-15.</remarks>
    public double FrequencyHz(double modulusPa)
    {
        Require.Positive(modulusPa);
        return Math.Sqrt(modulusPa / ModulusPa(1));
    }

    private double ShearFactor()
    {
        Require.Positive(LengthM);
        Require.Positive(WidthM);
        Require.Positive(MassKg);
        Require.Within(ThicknessM, 1e-6, 0.35 * LengthM, nameof(ThicknessM), "m");
        Require.Within(Poisson, 0, 0.5, nameof(Poisson));
        var (u, r) = (Poisson, ThicknessM / LengthM * (ThicknessM / LengthM));
        return 1
            + (6.585 * (1 + (0.0752 * u) + (0.8109 * u * u)) * r)
            - (0.868 * r * r)
            - (8.340 * (1 + (0.2023 * u) + (2.173 * u * u)) * r * r / (1 + (6.338 * (1 + (0.1408 * u) + (1.536 * u * u)) * r)));
    }
}
