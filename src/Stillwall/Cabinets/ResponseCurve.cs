using System.Text.Json.Serialization;
using Stillwall.Numerics;
using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>One row of the response: one cabinet, half space, 1 m, no room, equaliser or main speakers.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="SplDb">Level, dB re 20 µPa rms.</param>
/// <param name="PhaseDeg">Phase of the pressure against the source's voltage, without travel time, °.</param>
/// <param name="ExcursionPeakMm">Excursion of the cone, one way, peak, mm.</param>
/// <param name="BoxPressurePaRms">Pressure in the box, Pa rms.</param>
/// <param name="ImpedanceOhm">Magnitude of the impedance, ohm.</param>
/// <param name="ImpedancePhaseDeg">Phase of the impedance, °.</param>
/// <param name="GroupDelayMs">Group delay of the pressure, without travel time, ms.</param>
/// <param name="MaxSplDb">Greatest level, dB re 20 µPa rms; null where a limit is not stated.</param>
/// <param name="PortSpeedMS">Speed of the air in the ports, peak, m/s; null without a port.</param>
/// <param name="RadiatorExcursionMm">Excursion of the passive radiator, one way, peak, mm; null without one.</param>
public sealed record CurvePoint(
    double FrequencyHz,
    [property: ComputedBy("half-space-level", "box.effective_volume_m3")] double SplDb,
    [property: ComputedBy("box-network", "box.effective_volume_m3")] double PhaseDeg,
    [property: ComputedBy("box-network", "box.effective_volume_m3")] double ExcursionPeakMm,
    [property: ComputedBy("box-network", "box.effective_volume_m3")] double BoxPressurePaRms,
    [property: ComputedBy("box-network")] double ImpedanceOhm,
    [property: ComputedBy("box-network")] double ImpedancePhaseDeg,
    [property: ComputedBy("group-delay", "box.effective_volume_m3")] double GroupDelayMs,
    [property: ComputedBy("maximum-level")] double? MaxSplDb,
    [property: JsonPropertyName("port_speed_m_s"), ComputedBy("box-network")] double? PortSpeedMS,
    [property: ComputedBy("box-network")] double? RadiatorExcursionMm
);

/// <summary>The lowest impedance in a range of frequencies.</summary>
/// <param name="FrequencyHz">Where it is lowest, Hz.</param>
/// <param name="ImpedanceOhm">Its magnitude there, ohm.</param>
public sealed record ImpedanceMinimum(
    [property: ComputedBy("minimum-impedance")] double FrequencyHz,
    [property: ComputedBy("minimum-impedance")] double ImpedanceOhm
);

/// <summary>The response of the driver in its box over frequency.</summary>
public static class ResponseCurve
{
    // Half the span of the difference quotient, relative to the frequency: rounding and truncation both stay below 1e-9.
    private const double DelayStep = 1e-5;

    /// <summary>Frequencies of a curve from 10 Hz to 1 kHz.</summary>
    /// <param name="pointsPerDecade">How many in each of the two decades, 1 to 10 000.</param>
    /// <returns>f = 10·10^(k/N), k = 0 … 2N, Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of range.</exception>
    /// <remarks>
    /// Model: even steps on a logarithmic scale. Validity: any. Source: our choice of range. Accuracy: exact by definition.
    /// </remarks>
    public static IReadOnlyList<double> FrequenciesHz(int pointsPerDecade)
    {
        Require.Within(pointsPerDecade, 1, 10000, nameof(pointsPerDecade));
        return [.. Enumerable.Range(0, (2 * pointsPerDecade) + 1).Select(k => 10 * Math.Pow(10, (double)k / pointsPerDecade))];
    }

    /// <summary>The curve from 10 Hz to 1 kHz.</summary>
    /// <param name="network">The driver in its box.</param>
    /// <param name="limits">What may not be exceeded.</param>
    /// <param name="volts">Voltage of the source, V rms, above 0.</param>
    /// <param name="pointsPerDecade">How many points in each decade, 1 to 10 000.</param>
    /// <returns>One row per frequency.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    /// <remarks>
    /// Model: the lumped network at every frequency. Validity: as the network's; above the first air mode of the box it is only a guide.
    /// Source: see <see cref="BoxNetwork.At"/>. Accuracy: 0.01 dB of a general circuit solver.
    /// </remarks>
    public static IReadOnlyList<CurvePoint> Of(BoxNetwork network, DriveLimits limits, double volts, int pointsPerDecade = 40)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(limits);
        return [.. FrequenciesHz(pointsPerDecade).Select(f => PointAt(network, limits, f, volts))];
    }

    /// <summary>One row of the response.</summary>
    /// <param name="network">The driver in its box.</param>
    /// <param name="limits">What may not be exceeded.</param>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <param name="volts">Voltage of the source, V rms, above 0.</param>
    /// <returns>The row.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: the lumped network. Validity: as the network's. Source: see <see cref="BoxNetwork.At"/>. Accuracy: 0.01 dB of a general circuit solver.
    /// </remarks>
    public static CurvePoint PointAt(BoxNetwork network, DriveLimits limits, double frequencyHz, double volts)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(limits);
        var point = network.At(frequencyHz, volts);
        return new CurvePoint(
            FrequencyHz: frequencyHz,
            SplDb: point.LevelDb(),
            PhaseDeg: point.PhaseDeg,
            ExcursionPeakMm: point.ExcursionPeakM.InMillimetres(),
            BoxPressurePaRms: point.BoxPressurePa.Magnitude,
            ImpedanceOhm: point.ImpedanceOhm.Magnitude,
            ImpedancePhaseDeg: point.ImpedanceOhm.Phase * 180 / Math.PI,
            GroupDelayMs: GroupDelayS(network, frequencyHz) * 1000,
            MaxSplDb: MaximumLevel.LevelDb(network, limits, frequencyHz),
            PortSpeedMS: point.PortSpeedPeakMS,
            RadiatorExcursionMm: point.PassiveRadiatorExcursionPeakM?.InMillimetres()
        );
    }

    /// <summary>Group delay of the pressure, without travel time.</summary>
    /// <param name="network">The driver in its box.</param>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <returns>−dφ/dω, s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    /// <remarks>
    /// Model: phase of the ratio of two pressures 0.001 % either side, over the step in ω; so it never wraps. Validity: any frequency.
    /// Source: definition of group delay; our choice of the difference quotient. Accuracy: 1e-7 of the closed form for a lossless closed box.
    /// </remarks>
    public static double GroupDelayS(BoxNetwork network, double frequencyHz)
    {
        ArgumentNullException.ThrowIfNull(network);
        Require.Positive(frequencyHz);
        var above = frequencyHz * (1 + DelayStep);
        var below = frequencyHz * (1 - DelayStep);
        var ratio = network.At(above, 1).PressurePa() / network.At(below, 1).PressurePa();
        return -ratio.Phase / (2 * Math.PI * (above - below));
    }

    /// <summary>The lowest impedance that the amplifier meets.</summary>
    /// <param name="network">The driver in its box.</param>
    /// <param name="lowestHz">Start of the range, Hz, above 0.</param>
    /// <param name="highestHz">End of the range, Hz, above the start.</param>
    /// <returns>The lowest impedance and where it is.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The range is empty.</exception>
    /// <remarks>
    /// Model: 400 points on a logarithmic scale, then a search between the neighbours of the lowest. Validity: the lumped network.
    /// Source: impedance judged by its lowest value in the range used, IEC 60268-5:2003 (from memory). Accuracy: 1e-6 of the network's own minimum.
    /// </remarks>
    public static ImpedanceMinimum MinimumImpedance(BoxNetwork network, double lowestHz = 10, double highestHz = 1000)
    {
        ArgumentNullException.ThrowIfNull(network);
        Require.Positive(lowestHz);
        Require.Within(highestHz, Math.BitIncrement(lowestHz), double.MaxValue, nameof(highestHz), "Hz");
        const int steps = 400;
        double At(double position) => lowestHz * Math.Pow(highestHz / lowestHz, Math.Clamp(position, 0, steps) / steps);
        double Ohm(double position) => network.ImpedanceOhm(At(position)).Magnitude;
        var (best, least) = (0, double.PositiveInfinity);
        for (var k = 0; k <= steps; k++)
        {
            if (Ohm(k) is var ohm && ohm < least)
            {
                (best, least) = (k, ohm);
            }
        }

        double low = best - 1,
            high = best + 1;
        for (var i = 0; i < 60; i++)
        {
            var third = (high - low) / 3;
            (low, high) = Ohm(low + third) <= Ohm(high - third) ? (low, high - third) : (low + third, high);
        }

        return new ImpedanceMinimum(At((low + high) / 2), Ohm((low + high) / 2));
    }
}
