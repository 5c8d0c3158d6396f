using Stillwall.Numerics;

namespace Stillwall.Walls;

/// <summary>A brace that runs along the height of a panel: a beam that bends and weighs.</summary>
/// <param name="PlaceRatio">Where it stands along the width: −1 at one edge, 0 in the middle, 1 at the other edge.</param>
/// <param name="BendingNm2">Its bending stiffness, N·m², 0 or more.</param>
/// <param name="MassKgM">Its mass per length, kg/m, 0 or more.</param>
public sealed record BraceLine(double PlaceRatio, double BendingNm2, double MassKgM);

/// <summary>A round hole in the middle of a panel, and what is screwed to its rim.</summary>
/// <param name="RadiusM">Radius of the hole, m, above 0 and at most 0.47 of the shorter side.</param>
/// <param name="RimRadiusM">Radius on which it is screwed, m, at least that of the hole.</param>
/// <param name="RimMassKg">Mass of what is screwed on, kg, 0 or more.</param>
/// <param name="ConeM2">Area of the cone in it, m², whose reaction the rim bears; 0 for none.</param>
public sealed record RoundHole(double RadiusM, double RimRadiusM, double RimMassKg, double ConeM2 = 0)
{
    /// <summary>Greatest radius over the shorter side.</summary>
    public const double GreatestRatio = 0.47;

    internal void Check(double shorterM)
    {
        Require.Positive(RadiusM);
        Require.Within(RadiusM, 0, GreatestRatio * shorterM, nameof(RadiusM), "m");
        Require.Within(RimRadiusM, RadiusM, shorterM / 2, nameof(RimRadiusM), "m");
        Require.NotNegative(RimMassKg);
        Require.NotNegative(ConeM2);
    }
}

/// <summary>What holds a panel besides its edges, and what it lacks in its middle.</summary>
/// <param name="EdgeN">
/// Moment per length and radian with which supported edges resist turning, N·m per metre and radian, so N; 0 is supported, and clamped is where it
/// grows without end.
/// </param>
/// <param name="Braces">Braces along the height, the same on both sides of the middle.</param>
/// <param name="Hole">A hole in the middle; null where there is none.</param>
public sealed record PlateHold(double EdgeN, IReadOnlyList<BraceLine> Braces, RoundHole? Hole = null)
{
    /// <summary>Nothing.</summary>
    public static PlateHold None { get; } = new(0, []);

    /// <summary>Equal braces at equal distances.</summary>
    /// <param name="count">How many, 0 or more.</param>
    /// <param name="modulusPa">Young's modulus, Pa, above 0.</param>
    /// <param name="densityKgM3">Density, kg/m³, above 0.</param>
    /// <param name="thicknessM">Thickness along the width of the panel, m, above 0.</param>
    /// <param name="heightM">How far it stands into the box, m, above 0.</param>
    /// <returns>The hold, edges free to turn.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>
    /// Model: beams of EI = E·t·h³/12 and mass ρth, bending about their own middle. Validity: braces that stand in seats and are not bonded to the
    /// wall along their length; bonded ones are stiffer.
    /// Source: elementary beam theory. Accuracy: exact for its model.
    /// </remarks>
    public static PlateHold OfBraces(int count, double modulusPa, double densityKgM3, double thicknessM, double heightM)
    {
        Require.Within(count, 0, 100, nameof(count));
        Require.Positive(modulusPa);
        Require.Positive(densityKgM3);
        Require.Positive(thicknessM);
        Require.Positive(heightM);
        var bending = modulusPa * thicknessM * Math.Pow(heightM, 3) / 12;
        return new PlateHold(
            0,
            [.. Enumerable.Range(1, count).Select(i => new BraceLine(2.0 * i / (count + 1) - 1, bending, densityKgM3 * thicknessM * heightM))]
        );
    }

    internal void Check(double shorterM)
    {
        Require.NotNegative(EdgeN);
        Hole?.Check(shorterM);
        if (Hole is not null && Braces.Count > 0)
        {
            throw new ArgumentException($"{nameof(Hole)} accepted: a hole or braces, not both");
        }

        foreach (var brace in Braces)
        {
            Require.Within(brace.PlaceRatio, -1, 1, nameof(brace.PlaceRatio));
            Require.NotNegative(brace.BendingNm2);
            Require.NotNegative(brace.MassKgM);
            if (!Braces.Any(b => Math.Abs(b.PlaceRatio + brace.PlaceRatio) < 1e-9 && b.BendingNm2 == brace.BendingNm2 && b.MassKgM == brace.MassKgM))
            {
                throw new ArgumentException($"{nameof(Braces)} accepted: the same on both sides of the middle");
            }
        }
    }
}
