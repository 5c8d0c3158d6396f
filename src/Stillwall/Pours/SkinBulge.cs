using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>A skin between two struts under the pressure of the pour.</summary>
/// <param name="BulgeM">Deflection in the middle of the bay, m.</param>
/// <param name="StressPa">Bending stress at the struts, Pa.</param>
/// <param name="TieLoadNPerM">Pull on a strut that ties the two skins, N per metre of its length.</param>
public sealed record BulgeFigures(
    [property: ComputedBy("skin-bulge", "pour.form_pressure_pa")] double BulgeM,
    [property: ComputedBy("skin-stress", "pour.form_pressure_pa")] double StressPa,
    [property: ComputedBy("tie-load", "pour.form_pressure_pa")] double TieLoadNPerM
);

/// <summary>An untied strut that bends under the pour.</summary>
/// <param name="ClampedM">Deflection if its ends are held fast, m.</param>
/// <param name="SupportedM">Deflection if its ends may turn, m.</param>
public sealed record StrutBulge(
    [property: ComputedBy("strut-bulge", "pour.form_pressure_pa")] double ClampedM,
    [property: ComputedBy("strut-bulge", "pour.form_pressure_pa")] double SupportedM
);

/// <summary>How far skins and struts give way under the pour.</summary>
public static class SkinBulge
{
    /// <summary>A skin between two struts.</summary>
    /// <param name="pressurePa">Pressure, Pa, 0 or more.</param>
    /// <param name="bayM">Clear width between two struts, m, above 0.</param>
    /// <param name="pitchM">Distance of struts, m, at least the bay.</param>
    /// <param name="thicknessM">Thickness of the skin, m, above 0.</param>
    /// <param name="modulusPa">Young's modulus of the skin while the cast sets, Pa, above 0.</param>
    /// <param name="poisson">Poisson's ratio, 0 to 0.49.</param>
    /// <returns>Bulge, stress and tie load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: strip clamped at both struts, w = ps⁴/(384D), σ = ps²/(2t²), tie load p × pitch. Validity: long bays, bulge below half the thickness.
    /// Source: elementary beam theory; limits of Timoshenko and Woinowsky-Krieger 1959, table 35.
    /// Accuracy: exact for its model; creep of a warm skin adds, our hot modulus stands for it.
    /// </remarks>
    public static BulgeFigures Skin(double pressurePa, double bayM, double pitchM, double thicknessM, double modulusPa, double poisson)
    {
        Require.NotNegative(pressurePa);
        Require.Positive(bayM);
        Require.Within(pitchM, bayM, 100, nameof(pitchM), "m");
        return new BulgeFigures(
            pressurePa * Math.Pow(bayM, 4) / (384 * Stiffness(thicknessM, modulusPa, poisson)),
            pressurePa * bayM * bayM / (2 * thicknessM * thicknessM),
            pressurePa * pitchM
        );
    }

    /// <summary>Stress with which a cast that grows as it sets stretches the skin round it.</summary>
    /// <param name="settingStrainRatio">Strain of the setting cast, as a ratio; one that shrinks does not stretch.</param>
    /// <param name="modulusPa">Young's modulus of the skin while the cast sets, Pa, above 0.</param>
    /// <returns>Stress, Pa; null where the cast does not grow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: σ = Eε, as if the skin followed in full. Validity: bonded skin. Source: Hooke's law, elementary. Accuracy: upper bound.</remarks>
    public static double? StretchPa(double settingStrainRatio, double modulusPa)
    {
        Require.Positive(modulusPa);
        return settingStrainRatio > 0 ? settingStrainRatio * modulusPa : null;
    }

    /// <summary>A strut that does not tie the skins and so bends as a beam, carrying one pitch of skin.</summary>
    /// <param name="pressurePa">Pressure, Pa, 0 or more.</param>
    /// <param name="pitchM">Distance of struts, m, above 0.</param>
    /// <param name="lengthM">Length of the strut between its supports, m, above 0.</param>
    /// <param name="widthM">Width of its web across the pull, m, above 0.</param>
    /// <param name="depthM">Depth of its web along the pull, skin included, m, above 0.</param>
    /// <param name="modulusPa">Young's modulus while the cast sets, Pa, above 0.</param>
    /// <returns>Deflection in its middle, both ends held fast and both free to turn; the skin's own bulge comes on top.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: wL⁴/(384EI) to 5wL⁴/(384EI), w = p × pitch, I = width × depth³/12. Validity: slender straight struts. Source: elementary beam theory.
    /// Accuracy: the two ends bracket the truth.
    /// </remarks>
    public static StrutBulge UntiedStrut(double pressurePa, double pitchM, double lengthM, double widthM, double depthM, double modulusPa)
    {
        Require.NotNegative(pressurePa);
        Require.Positive(pitchM);
        Require.Positive(lengthM);
        Require.Positive(widthM);
        Require.Positive(depthM);
        Require.Positive(modulusPa);
        var clamped = pressurePa * pitchM * Math.Pow(lengthM, 4) / (384 * modulusPa * widthM * Math.Pow(depthM, 3) / 12);
        return new StrutBulge(clamped, 5 * clamped);
    }

    private static double Stiffness(double thicknessM, double modulusPa, double poisson)
    {
        Require.Positive(thicknessM);
        Require.Positive(modulusPa);
        Require.Within(poisson, 0, 0.49, nameof(poisson));
        return modulusPa * Math.Pow(thicknessM, 3) / (12 * (1 - poisson * poisson));
    }
}
