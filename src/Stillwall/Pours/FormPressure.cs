using Stillwall.Numerics;
using Stillwall.Walls;

namespace Stillwall.Pours;

/// <summary>What the wet mix does to the skins that hold it.</summary>
public static class FormPressure
{
    /// <summary>Pressure at the foot of a lift.</summary>
    /// <param name="densityKgM3">Density of the slurry, kg/m³, zero or greater.</param>
    /// <param name="headM">Height of the lift, m, zero or greater.</param>
    /// <returns>Pressure, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative value.</exception>
    /// <remarks>Model: p = ρ g h. Validity: a mix that flows. Source: liquid head of ACI 347. Accuracy: an upper bound once setting begins.</remarks>
    public static double HeadPa(double densityKgM3, double headM)
    {
        Require.NotNegative(densityKgM3);
        Require.NotNegative(headM);
        return densityKgM3 * StandardGravity.AccelerationMS2 * headM;
    }

    /// <summary>Bulge of a skin between two struts.</summary>
    /// <param name="pressurePa">Pressure, Pa, zero or greater.</param>
    /// <param name="spanM">Clear span, m, above 0.</param>
    /// <param name="thicknessM">Thickness of the skin, m, above 0.</param>
    /// <param name="modulusPa">Modulus of the warm skin, Pa, above 0.</param>
    /// <param name="poisson">Poisson's ratio, 0 to 0.499.</param>
    /// <returns>Deflection of the middle, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: clamped strip, p s⁴/(384 D). Validity: bulge small against thickness. Source: elementary beam theory (from memory). Accuracy: exact for the model.</remarks>
    public static double BulgeM(double pressurePa, double spanM, double thicknessM, double modulusPa, double poisson)
    {
        Require.NotNegative(pressurePa);
        Require.Positive(spanM);
        return pressurePa * Math.Pow(spanM, 4) / (384 * PlateStiffnessNM(thicknessM, modulusPa, poisson));
    }

    /// <summary>Bending stress of a skin at a strut.</summary>
    /// <param name="pressurePa">Pressure, Pa, zero or greater.</param>
    /// <param name="spanM">Clear span, m, above 0.</param>
    /// <param name="thicknessM">Thickness of the skin, m, above 0.</param>
    /// <returns>Stress, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: edge moment p s²/12 over t²/6: p s²/(2 t²). Validity: clamped strip. Source: elementary beam theory (from memory). Accuracy: exact for the model.</remarks>
    public static double StressPa(double pressurePa, double spanM, double thicknessM)
    {
        Require.NotNegative(pressurePa);
        Require.Positive(spanM);
        Require.Positive(thicknessM);
        return pressurePa * spanM * spanM / (2 * thicknessM * thicknessM);
    }

    /// <summary>Bulge of a strut that ties nothing and bends with the skin.</summary>
    /// <param name="pressurePa">Pressure, Pa, zero or greater.</param>
    /// <param name="pitchM">Distance between struts, m, above 0.</param>
    /// <param name="lengthM">Length of the strut between its ends, m, above 0.</param>
    /// <param name="webThicknessM">Thickness of its web, m, above 0.</param>
    /// <param name="webDepthM">Depth of its web, m, above 0.</param>
    /// <param name="modulusPa">Modulus of the warm skin, Pa, above 0.</param>
    /// <returns>Deflection of its middle for clamped and for supported ends, m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not positive.</exception>
    /// <remarks>Model: w L⁴/(384 E I) to 5 w L⁴/(384 E I), w = p × pitch, I = t d³/12. Validity: small deflection. Source: elementary beam theory (from memory). Accuracy: a real end lies between.</remarks>
    public static (double ClampedM, double SupportedM) UntiedStrutM(double pressurePa, double pitchM, double lengthM, double webThicknessM, double webDepthM, double modulusPa)
    {
        Require.NotNegative(pressurePa);
        Require.Positive(pitchM);
        Require.Positive(lengthM);
        Require.Positive(webThicknessM);
        Require.Positive(webDepthM);
        Require.Positive(modulusPa);
        var clamped = pressurePa * pitchM * Math.Pow(lengthM, 4) / (384 * modulusPa * webThicknessM * Math.Pow(webDepthM, 3) / 12);
        return (clamped, 5 * clamped);
    }

    /// <summary>Weight that keeps the inner sleeve from floating on the first lift.</summary>
    /// <param name="densityKgM3">Density of the slurry, kg/m³, zero or greater.</param>
    /// <param name="displacedM3">Volume of slurry the sleeve displaces, m³, zero or greater.</param>
    /// <param name="sleeveKg">Mass of the sleeve with what is fixed to it, kg, zero or greater.</param>
    /// <returns>Mass to lay on it, kg; 0 where it does not float.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative value.</exception>
    /// <remarks>Model: ρ V − m. Validity: until the lift has set. Source: Archimedes. Accuracy: exact for the displaced volume.</remarks>
    public static double HoldDownKg(double densityKgM3, double displacedM3, double sleeveKg)
    {
        Require.NotNegative(densityKgM3);
        Require.NotNegative(displacedM3);
        Require.NotNegative(sleeveKg);
        return Math.Max(0, densityKgM3 * displacedM3 - sleeveKg);
    }

    private static double PlateStiffnessNM(double thicknessM, double modulusPa, double poisson)
    {
        Require.Positive(thicknessM);
        Require.Positive(modulusPa);
        Require.Within(poisson, 0, 0.499, nameof(poisson));
        return modulusPa * Math.Pow(thicknessM, 3) / (12 * (1 - poisson * poisson));
    }
}
