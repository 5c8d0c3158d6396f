using System.Numerics;
using Stillwall.Materials;

namespace Stillwall.Cabinets;

/// <summary>The network's answer at one frequency; everything is rms except where it says peak.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="ImpedanceOhm">What the source is loaded with, ohm.</param>
/// <param name="ConeVelocityMS">Velocity of the cone, outward positive, m/s rms.</param>
/// <param name="BoxPressurePa">Pressure in the box, Pa rms.</param>
/// <param name="OutwardVolumeVelocityM3S">Volume velocity of cone, leak, ports and passive radiator together, m³/s rms.</param>
/// <param name="Air">The air.</param>
public sealed record NetworkPoint(
    double FrequencyHz,
    Complex ImpedanceOhm,
    Complex ConeVelocityMS,
    Complex BoxPressurePa,
    Complex OutwardVolumeVelocityM3S,
    Air Air
)
{
    /// <summary>Mean velocity of the air in the ports, outward positive, m/s rms; null without a port.</summary>
    public Complex? PortVelocityMS { get; init; }

    /// <summary>Velocity of the passive radiator, outward positive, m/s rms; null without one.</summary>
    public Complex? PassiveRadiatorVelocityMS { get; init; }

    /// <summary>Excursion of the cone, one way, peak, m.</summary>
    public double ExcursionPeakM => PeakM(ConeVelocityMS);

    /// <summary>Speed of the air in the ports, peak, m/s; null without a port.</summary>
    public double? PortSpeedPeakMS => PortVelocityMS is { } velocity ? Math.Sqrt(2) * velocity.Magnitude : null;

    /// <summary>Excursion of the passive radiator, one way, peak, m; null without one.</summary>
    public double? PassiveRadiatorExcursionPeakM => PassiveRadiatorVelocityMS is { } velocity ? PeakM(velocity) : null;

    /// <summary>Pressure into a half space, without travel time.</summary>
    /// <param name="distanceM">Distance, m, above 0.</param>
    /// <returns>Pressure, Pa rms.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not positive.</exception>
    /// <remarks>Model: p = jωρU/(2πr). Validity: far field of a small source. Source: see <see cref="FarField"/>. Accuracy: exact in the limit.</remarks>
    public Complex PressurePa(double distanceM = 1) => FarField.HalfSpacePressurePa(OutwardVolumeVelocityM3S, FrequencyHz, distanceM, Air);

    /// <summary>Level into a half space.</summary>
    /// <param name="distanceM">Distance, m, above 0.</param>
    /// <returns>Level, dB re 20 µPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not positive.</exception>
    /// <remarks>Model: 20 lg(p/20 µPa). Validity: far field of a small source. Source: IEC 61672-1. Accuracy: exact by definition.</remarks>
    public double LevelDb(double distanceM = 1) => FarField.LevelDb(PressurePa(distanceM).Magnitude);

    /// <summary>Phase of the pressure against the source's voltage, without travel time, −180 to 180°.</summary>
    public double PhaseDeg => PressurePa().Phase * 180 / Math.PI;

    private double PeakM(Complex velocity) => Math.Sqrt(2) * velocity.Magnitude / (2 * Math.PI * FrequencyHz);
}
