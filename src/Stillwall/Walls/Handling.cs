using Stillwall.Numerics;
using Stillwall.Shapes;

namespace Stillwall.Walls;

/// <summary>One joint that carries the cabinet.</summary>
/// <param name="Joint">Name.</param>
/// <param name="CapacityN">What it carries, N.</param>
/// <param name="LoadN">What hangs on it, N.</param>
/// <param name="SafetyFactor">Capacity over load.</param>
public sealed record JointFigures(
    string Joint,
    [property: ComputedBy("joint-capacity", "parts[].volume_m3")] double CapacityN,
    [property: ComputedBy("lift-load", "mass.finished_kg")] double LoadN,
    [property: ComputedBy("joint-safety", "parts[].volume_m3", "mass.finished_kg")] double SafetyFactor
);

/// <summary>Joints under the weight of the cabinet, lifted by its front and hung by its rear.</summary>
public static class Joints
{
    /// <summary>Weights that lifting with a jerk comes to (our choice).</summary>
    public const double LiftFactor = 2;

    /// <summary>Load on a joint that carries the whole cabinet while it is lifted by the front or hung by the rear.</summary>
    /// <param name="massKg">Mass, kg, above 0.</param>
    /// <returns>Load, N.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The mass is not positive.</exception>
    /// <remarks>
    /// Model: twice the weight. Validity: lifting by hand. Source: our choice. Accuracy: a knock against a door frame is more.
    /// </remarks>
    public static double LiftLoadN(double massKg)
    {
        Require.Positive(massKg);
        return LiftFactor * massKg * StandardGravity.AccelerationMS2;
    }

    /// <summary>Safety factor of a joint.</summary>
    /// <param name="joint">Name.</param>
    /// <param name="areaM2">Area that carries, m²; keyed area for cast against plastic.</param>
    /// <param name="strengthPa">Strength of that area, Pa, for sealant and keyed cast as the limits state it.</param>
    /// <param name="loadN">Load, N, above 0.</param>
    /// <returns>The joint's figures.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: strength × area over load, evenly spread. Validity: short joints; peeling carries far less. Source: elementary; strengths from memory.
    /// Accuracy: a factor of two.
    /// </remarks>
    public static JointFigures Of(string joint, double areaM2, double strengthPa, double loadN)
    {
        Require.NotNegative(areaM2);
        Require.NotNegative(strengthPa);
        Require.Positive(loadN);
        var capacity = areaM2 * strengthPa;
        return new JointFigures(joint, capacity, loadN, capacity / loadN);
    }
}

/// <summary>Threaded inserts that hold the driver.</summary>
public static class Inserts
{
    /// <summary>Friction of a dry screw in the torque rule (common practice).</summary>
    public const double NutFactor = 0.2;

    /// <summary>Pull of a screw at its torque.</summary>
    /// <param name="torqueNm">Torque, N·m, 0 or more.</param>
    /// <param name="diameterM">Diameter of the thread, m, above 0.</param>
    /// <returns>Pull, N.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: F = T/(0.2 d). Validity: dry steel screws in metal inserts. Source: common practice (short torque rule), from memory. Accuracy: ± 30 %.
    /// </remarks>
    public static double PreloadN(double torqueNm, double diameterM)
    {
        Require.NotNegative(torqueNm);
        Require.Positive(diameterM);
        return torqueNm / (NutFactor * diameterM);
    }

    /// <summary>Low end of what heat-set inserts in printed plastic hold before they pull out.</summary>
    /// <param name="diameterM">Diameter of the thread, m, above 0.</param>
    /// <returns>Pull-out force, N: 600 for M4, 1000 for M5; null for threads that no figure is at hand for.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not positive.</exception>
    /// <remarks>
    /// Model: a table of two. Validity: heat-set brass inserts in PLA or PETG. Source: from memory, M4 0.6–1.5 kN, M5 1–2 kN. Accuracy: wide scatter:
    /// one's own pull test replaces it.
    /// </remarks>
    public static double? PullOutN(double diameterM)
    {
        Require.Positive(diameterM);
        return Math.Round(diameterM.InMillimetres(), 3) switch
        {
            4 => 600,
            5 => 1000,
            _ => null,
        };
    }

    /// <summary>Load on one insert: the pull of its screw and its share of what pushes the driver out.</summary>
    /// <param name="preloadN">Pull of the screw, N.</param>
    /// <param name="boxPressurePa">Peak box pressure, Pa.</param>
    /// <param name="coneAreaM2">Area of the cone, m².</param>
    /// <param name="coneReactionN">Peak force that the moving mass throws on the frame, N.</param>
    /// <param name="screws">Screws that share it, at least 1.</param>
    /// <returns>Load, N.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: preload + (p·S + F)/n, as if the gasket gave no relief. Validity: even circle of screws. Source: our choice, on the high side.
    /// Accuracy: a tightened joint adds less of the outer force.
    /// </remarks>
    public static double LoadN(double preloadN, double boxPressurePa, double coneAreaM2, double coneReactionN, int screws)
    {
        Require.NotNegative(preloadN);
        Require.NotNegative(boxPressurePa);
        Require.NotNegative(coneAreaM2);
        Require.NotNegative(coneReactionN);
        Require.Within(screws, 1, 100, nameof(screws));
        return preloadN + (boxPressurePa * coneAreaM2 + coneReactionN) / screws;
    }

    /// <summary>Safety factor of an insert.</summary>
    /// <param name="pullOutN">Pull-out force, N, 0 or more.</param>
    /// <param name="loadN">Load, N, above 0.</param>
    /// <returns>Pull-out over load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: ratio. Validity: any. Source: elementary. Accuracy: as the pull-out force.</remarks>
    public static double SafetyFactor(double pullOutN, double loadN)
    {
        Require.NotNegative(pullOutN);
        Require.Positive(loadN);
        return pullOutN / loadN;
    }
}

/// <summary>The gasket between driver and front.</summary>
public static class Gasket
{
    /// <summary>Mean pressure that the screws leave on the gasket while the cone pushes the driver out.</summary>
    /// <param name="preloadN">Pull of one screw at its torque, N, 0 or more.</param>
    /// <param name="screws">Screws, at least 1.</param>
    /// <param name="outwardsN">Force of box pressure and cone that pushes the driver out, N, 0 or more.</param>
    /// <param name="innerDiameterM">Diameter of the opening, m, above 0.</param>
    /// <param name="outerDiameterM">Diameter of the flange, m, above the opening's.</param>
    /// <returns>Pressure, Pa; 0 where the driver lifts off.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: (n·F − outwards)/(π/4·(D² − d²)). Validity: an even circle of screws and a stiff flange. Source: elementary statics. Accuracy: as the
    /// torque rule, ± 30 %; between screws it is less.
    /// </remarks>
    public static double PressurePa(double preloadN, int screws, double outwardsN, double innerDiameterM, double outerDiameterM)
    {
        Require.NotNegative(preloadN);
        Require.Within(screws, 1, 100, nameof(screws));
        Require.NotNegative(outwardsN);
        Require.Positive(innerDiameterM);
        Require.Within(outerDiameterM, innerDiameterM * (1 + 1e-9), 10, nameof(outerDiameterM), "m");
        return Math.Max(0, screws * preloadN - outwardsN) / (Math.PI / 4 * (outerDiameterM * outerDiameterM - innerDiameterM * innerDiameterM));
    }
}

/// <summary>A mass at a place along the depth.</summary>
/// <param name="DepthM">Distance of its middle behind the front face, m.</param>
internal sealed record MassAt(double MassKg, double DepthM);

/// <summary>Whether the cabinet stands.</summary>
internal static class Tilt
{
    /// <summary>Distance of the centre of mass behind the front face.</summary>
    /// <param name="masses">The masses; none below 0, one above it.</param>
    /// <remarks>Model: Σ m·y/Σ m. Source: elementary statics.</remarks>
    public static double CentreDepthM(IReadOnlyList<MassAt> masses)
    {
        ArgumentNullException.ThrowIfNull(masses);
        foreach (var mass in masses)
        {
            Require.NotNegative(mass.MassKg);
        }

        var whole = masses.Sum(m => m.MassKg);
        Require.Positive(whole, nameof(masses));
        return masses.Sum(m => m.MassKg * m.DepthM) / whole;
    }

    /// <summary>Angle of a slope on which the cabinet tips over.</summary>
    /// <param name="baseHalfWidthM">Distance of the nearest tipping edge from below the centre of mass, m, 0 or more.</param>
    /// <remarks>
    /// Model: atan(half width/height). Validity: stiff feet that do not slide. Source: elementary statics. Accuracy: exact for its model.
    /// </remarks>
    public static double TippingDeg(double centreHeightM, double baseHalfWidthM)
    {
        Require.Positive(centreHeightM);
        Require.NotNegative(baseHalfWidthM);
        return Math.Atan2(baseHalfWidthM, centreHeightM) * 180 / Math.PI;
    }
}

/// <summary>The gap that setting and cooling open between cast and inner skin.</summary>
internal static class SkinGap
{
    /// <summary>Thermal expansion of printed plastic less that of gypsum, 1/K (from memory, for PETG).</summary>
    public const double PlasticOverGypsumPerK = 43e-6;

    /// <summary>Gap at an inner skin that is not keyed.</summary>
    /// <param name="settingStrainRatio">Strain of the cast while setting, as a ratio; its sign does not matter, the gap opens on one side or the other.</param>
    /// <param name="expansionDifferencePerK">Thermal expansion of the skin less that of the cast, 1/K.</param>
    /// <param name="coolingK">Fall from the setting temperature to the room's, K, 0 or more.</param>
    /// <remarks>
    /// Model: (|ε| + |Δα|·ΔT)·width/2. Validity: the skin lies free and is not held by struts. Source: strain difference, elementary; setting strain
    /// 0.19–0.22 %, Glass Tips 2009; the sum of both is our choice on the high side. Accuracy: a factor of two; 0.3 mm on 240 mm.
    /// </remarks>
    public static double GapM(double widthM, double settingStrainRatio, double expansionDifferencePerK, double coolingK)
    {
        Require.Positive(widthM);
        Require.Within(settingStrainRatio, -0.05, 0.05, nameof(settingStrainRatio));
        Require.Within(expansionDifferencePerK, -1e-3, 1e-3, nameof(expansionDifferencePerK), "1/K");
        Require.NotNegative(coolingK);
        return (Math.Abs(settingStrainRatio) + Math.Abs(expansionDifferencePerK) * coolingK) * widthM / 2;
    }
}
