using Stillwall.Numerics;

namespace Stillwall.Neighbours;

/// <summary>What the cone's reaction does to the floor and to the cabinet's hold on it, at one frequency.</summary>
/// <param name="ReactionN">Reaction of the cone on the cabinet along its axis, N peak.</param>
/// <param name="TransmissibilityRatio">Force into the floor over reaction.</param>
/// <param name="FloorN">Force into the floor, N peak.</param>
/// <param name="ReRigidDb">Force into the floor against rigid feet, dB.</param>
/// <param name="FeetResonanceHz">Resonance of the cabinet on its feet in the cone's direction, Hz; null for rigid feet.</param>
/// <param name="FrictionN">Greatest force that friction holds, N.</param>
/// <param name="FrictionRatio">Friction over force into the floor; below 1 the cabinet walks. Null without any force.</param>
public sealed record FloorForce(
    [property: ComputedBy("cone-reaction")] double ReactionN,
    [property: ComputedBy("transmissibility", "mass.finished_kg")] double TransmissibilityRatio,
    [property: ComputedBy("floor-force", "mass.finished_kg")] double FloorN,
    [property: ComputedBy("floor-force", "mass.finished_kg")] double ReRigidDb,
    [property: ComputedBy("feet-resonance", "mass.finished_kg")] double? FeetResonanceHz,
    [property: ComputedBy("friction", "mass.finished_kg")] double FrictionN,
    [property: ComputedBy("friction", "mass.finished_kg")] double? FrictionRatio
)
{
    private const double GravityMS2 = 9.80665;

    /// <summary>
    /// Upper resonance of the cabinet on its feet, in which it rocks against its sway, Hz; null for rigid feet or where only its mass is known.
    /// </summary>
    [ComputedBy("rocking", "mass.finished_kg")]
    public double? RockingHz { get; private init; }

    /// <summary>Force at one frequency with the cabinet free to rock.</summary>
    /// <param name="excursionM">Excursion of the cone, 0 m and up, peak.</param>
    /// <param name="lossFactor">Loss factor of the feet, 1e-6 to 2.</param>
    /// <param name="frictionFactor">Coefficient of friction, above 0 to 2.</param>
    /// <remarks>
    /// Model: as the other, with the body's sway and rocking. Validity: as <see cref="Rocking"/>. Source: as there. Accuracy: as there.
    /// </remarks>
    internal static FloorForce Of(
        double frequencyHz,
        double excursionM,
        double movingMassKg,
        Rocking body,
        double lossFactor = 0.1,
        double frictionFactor = 0.3
    )
    {
        ArgumentNullException.ThrowIfNull(body);
        var rigid = Of(
            frequencyHz: frequencyHz,
            excursionM: excursionM,
            movingMassKg: movingMassKg,
            cabinetMassKg: body.MassKg,
            feetStiffness: null,
            lossFactor: lossFactor,
            frictionFactor: frictionFactor
        );
        var (ratio, (lower, upper)) = (body.TransmissibilityRatio(frequencyHz, lossFactor), body.ResonancesHz());
        var floor = rigid.ReactionN * ratio;
        return rigid with
        {
            TransmissibilityRatio = ratio,
            FloorN = floor,
            ReRigidDb = 20 * Math.Log10(ratio),
            FeetResonanceHz = lower,
            RockingHz = upper,
            FrictionRatio = floor > 0 ? rigid.FrictionN / floor : null,
        };
    }

    /// <summary>Force at one frequency.</summary>
    /// <param name="frequencyHz">Frequency, above 0 Hz.</param>
    /// <param name="excursionM">Excursion of the cone, 0 m and up, peak.</param>
    /// <param name="movingMassKg">Moving mass with its air, above 0 kg.</param>
    /// <param name="cabinetMassKg">Mass of the finished cabinet, above 0 kg.</param>
    /// <param name="feetStiffness">Stiffness of all feet together along the cone's axis, above 0 N/m; null for rigid feet.</param>
    /// <param name="lossFactor">Loss factor of the feet, 1e-6 to 2; rubber about 0.1 to 0.3 (from memory).</param>
    /// <param name="frictionFactor">Coefficient of friction, above 0 to 2; rubber on wood about 0.5, hard feet on wood 0.3 (from memory).</param>
    /// <returns>The forces.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: F = Mms ω² x; T = √[(1 + η²)/((1 − r²)² + η²)], r = f/f_feet, structural damping; friction μ M g. Validity: the cabinet moves as one
    /// along the cone's axis; rocking makes real feet softer.
    /// Source: Newton's third law; transmissibility Beranek and Vér 2006, isolation of a rigid mass (from memory), one degree of freedom; friction
    /// Coulomb. Coefficients from memory.
    /// Accuracy: exact for the model; a real floor gives way and takes less.
    /// </remarks>
    public static FloorForce Of(
        double frequencyHz,
        double excursionM,
        double movingMassKg,
        double cabinetMassKg,
        double? feetStiffness,
        double lossFactor = 0.1,
        double frictionFactor = 0.3
    )
    {
        Require.Positive(frequencyHz);
        Require.NotNegative(excursionM);
        Require.Positive(movingMassKg);
        Require.Positive(cabinetMassKg);
        Require.Positive(frictionFactor);
        var omega = 2 * Math.PI * frequencyHz;
        var reaction = movingMassKg * omega * omega * excursionM;
        var resonance = feetStiffness is { } stiffness ? FeetHz(cabinetMassKg, stiffness) : (double?)null;
        var ratio = resonance is { } hz ? Transmissibility(frequencyHz / hz, lossFactor) : 1;
        var (floor, friction) = (reaction * ratio, frictionFactor * cabinetMassKg * GravityMS2);
        return new(
            ReactionN: reaction,
            TransmissibilityRatio: ratio,
            FloorN: floor,
            ReRigidDb: 20 * Math.Log10(ratio),
            FeetResonanceHz: resonance,
            FrictionN: friction,
            FrictionRatio: floor > 0 ? friction / floor : null
        );
    }

    /// <summary>Force passed on over force applied for a mass on feet.</summary>
    /// <param name="frequencyRatio">Frequency over the resonance on the feet, 0 and up.</param>
    /// <param name="lossFactor">Loss factor of the feet, 1e-6 to 2.</param>
    /// <returns>Ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: √[(1 + η²)/((1 − r²)² + η²)]. Validity: one degree of freedom, structural damping, floor much stiffer than the feet.
    /// Source: Beranek and Vér 2006 (from memory). Accuracy: exact; 1 at r = √2 whatever the damping.
    /// </remarks>
    public static double Transmissibility(double frequencyRatio, double lossFactor)
    {
        Require.NotNegative(frequencyRatio);
        Require.Within(lossFactor, 1e-6, 2, nameof(lossFactor));
        var (apart, loss) = (1 - (frequencyRatio * frequencyRatio), lossFactor * lossFactor);
        return Math.Sqrt((1 + loss) / ((apart * apart) + loss));
    }

    private static double FeetHz(double massKg, double stiffness)
    {
        Require.Positive(stiffness);
        return Math.Sqrt(stiffness / massKg) / (2 * Math.PI);
    }
}
