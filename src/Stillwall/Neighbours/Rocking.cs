using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Neighbours;

/// <summary>A rigid cabinet on elastic feet that sways along the cone's axis and rocks about its middle.</summary>
/// <param name="InertiaKgM2">Moment of inertia about the middle, across the cone's axis, kg·m².</param>
/// <param name="MiddleM">Height of the middle above the feet, m.</param>
/// <param name="BaseM">Distance between front and rear feet, m.</param>
/// <param name="ConeM">Height of the cone's axis above the middle, m.</param>
/// <param name="AlongNPerM">Stiffness of all feet together along the cone's axis, N/m.</param>
/// <param name="UpNPerM">Stiffness of all feet together up and down, N/m.</param>
internal sealed record Rocking(double MassKg, double InertiaKgM2, double MiddleM, double BaseM, double ConeM, double AlongNPerM, double UpNPerM)
{
    // Rubber blocks in compression against shear, from memory: three times as stiff where they may bulge freely, more where they are flat.
    private const double UpOverAlongRatio = 4;

    /// <summary>A box whose mass is taken as even, the cone in the middle of its front.</summary>
    /// <param name="baseM">Distance between front and rear feet, above 0 m.</param>
    /// <param name="alongNPerM">Stiffness of all feet together along the cone's axis, above 0 N/m.</param>
    /// <param name="upNPerM">The same up and down, above 0 N/m; null takes four times the other.</param>
    /// <remarks>
    /// Model: J = M (d² + h²)/12. Validity: a full block; walls heavier than the inside have up to twice that. Source: block of even mass, elementary;
    /// ratio of stiffnesses from memory. Accuracy: a tenth on the resonances.
    /// </remarks>
    public static Rocking OfBox(double massKg, double depthM, double heightM, double baseM, double alongNPerM, double? upNPerM = null)
    {
        Require.Positive(massKg);
        Require.Positive(depthM);
        Require.Positive(heightM);
        Require.Positive(baseM);
        Require.Positive(alongNPerM);
        var up = upNPerM ?? UpOverAlongRatio * alongNPerM;
        Require.Positive(up, nameof(upNPerM));
        return new(
            MassKg: massKg,
            InertiaKgM2: massKg * ((depthM * depthM) + (heightM * heightM)) / 12,
            MiddleM: heightM / 2,
            BaseM: baseM,
            ConeM: 0,
            AlongNPerM: alongNPerM,
            UpNPerM: up
        );
    }

    /// <summary>Force along the cone's axis into the floor over the cone's reaction.</summary>
    /// <param name="lossFactor">Loss factor of the feet, 1e-6 to 2.</param>
    /// <remarks>
    /// Model: M ẍ = F − K u, J θ̈ = −h K u − Kv (b/2)² θ − e F, u = x + hθ at the feet, K and Kv with (1 + jη); T = |K u/F|. Validity: small
    /// movements, stiff floor, feet in two rows.
    /// Source: elementary, a rigid body; one degree of freedom for stiff feet up and down. Accuracy: exact for the model.
    /// </remarks>
    public double TransmissibilityRatio(double frequencyHz, double lossFactor)
    {
        Require.Positive(frequencyHz);
        Require.Within(lossFactor, 1e-6, 2, nameof(lossFactor));
        var square = Math.Pow(2 * Math.PI * frequencyHz, 2);
        var loss = new Complex(1, lossFactor);
        var (along, turn) = (AlongNPerM * loss, UpNPerM * BaseM * BaseM / 4 * loss);
        var (a, b, d) = (along - (MassKg * square), along * MiddleM, (along * MiddleM * MiddleM) + turn - (InertiaKgM2 * square));
        var determinant = (a * d) - (b * b);
        var (sway, tilt) = ((d + (b * ConeM)) / determinant, (-b - (a * ConeM)) / determinant);
        return (along * (sway + (MiddleM * tilt))).Magnitude;
    }

    /// <summary>The two resonances on the feet, sway and rocking coupled.</summary>
    /// <remarks>Model: det = 0 without loss. Source: as there. Accuracy: exact for the model.</remarks>
    public (double LowerHz, double UpperHz) ResonancesHz()
    {
        var turn = UpNPerM * BaseM * BaseM / 4;
        var (sum, product) = ((AlongNPerM / MassKg) + (((AlongNPerM * MiddleM * MiddleM) + turn) / InertiaKgM2), AlongNPerM * turn / (MassKg * InertiaKgM2));
        var root = Math.Sqrt(Math.Max(0, (sum * sum / 4) - product));

        // The smaller root by the product of both, so that no digits are lost.
        var upper = (sum / 2) + root;
        return (Math.Sqrt(product / upper) / (2 * Math.PI), Math.Sqrt(upper) / (2 * Math.PI));
    }
}
