using Stillwall.Numerics;

namespace Stillwall.Neighbours;

/// <summary>Rubber pads that would suit a cabinet of a given mass.</summary>
/// <param name="StiffnessNPerM">Stiffness of all pads together in shear, N/m.</param>
/// <param name="PadCount">How many pads.</param>
/// <param name="DiameterM">Diameter of each, m.</param>
/// <param name="ThicknessM">Thickness of each, m.</param>
/// <param name="ShearModulusPa">Shear modulus of the rubber, Pa.</param>
/// <param name="LoadPa">Weight over area of each, Pa.</param>
/// <param name="ResonanceHz">Resonance of the mass on them in shear, Hz.</param>
/// <param name="ReRigidDb">What they pass on at the lowest note against rigid feet, dB.</param>
public sealed record PadChoice(
    double StiffnessNPerM,
    int PadCount,
    double DiameterM,
    double ThicknessM,
    double ShearModulusPa,
    double LoadPa,
    double ResonanceHz,
    double ReRigidDb
)
{
    private const double GravityMS2 = 9.80665;

    // The lowest note three times above the resonance leaves −18 dB (our choice).
    private const double AboveRatio = 3;

    // Soft rubber of 40 Shore A, from memory; one pad of everyday thickness.
    private const double SoftRubberPa = 0.5e6;
    private const double UsualThicknessM = 0.006;
    private const int Four = 4;

    /// <summary>Four pads for a mass and a lowest note.</summary>
    /// <param name="massKg">Mass on them, above 0 kg.</param>
    /// <param name="lowestHz">Lowest note, above 0 Hz.</param>
    /// <param name="lossFactor">Loss factor of the rubber, 1e-6 to 2.</param>
    /// <returns>The pads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: k = M (2πf/3)²; k = n G (πd²/4)/t. Validity: pads in shear, thinner than half their diameter, or they lean and are softer still; a
    /// cabinet that does not rock much. Source: shear of a block, elementary; G of soft rubber, thickness and the factor of three from memory
    /// or our choice.
    /// Accuracy: rubber scatters by a third: press one sideways with a kitchen scale before buying four.
    /// </remarks>
    public static PadChoice Of(double massKg, double lowestHz, double lossFactor = 0.1)
    {
        Require.Positive(massKg);
        Require.Positive(lowestHz);
        var resonance = lowestHz / AboveRatio;
        var stiffness = massKg * Math.Pow(2 * Math.PI * resonance, 2);
        var area = stiffness * UsualThicknessM / (Four * SoftRubberPa);
        return new(
            StiffnessNPerM: stiffness,
            PadCount: Four,
            DiameterM: Math.Sqrt(4 * area / Math.PI),
            ThicknessM: UsualThicknessM,
            ShearModulusPa: SoftRubberPa,
            LoadPa: massKg * GravityMS2 / (Four * area),
            ResonanceHz: resonance,
            ReRigidDb: 20 * Math.Log10(FloorForce.Transmissibility(AboveRatio, lossFactor))
        );
    }
}
