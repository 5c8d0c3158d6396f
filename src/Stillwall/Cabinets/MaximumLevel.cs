using Stillwall.Drivers;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Cabinets;

/// <summary>What may not be exceeded when the cabinet is driven hard.</summary>
/// <param name="XmaxM">Greatest linear excursion of the cone, one way, peak, m; null where not stated.</param>
/// <param name="PassiveRadiatorXmaxM">The same of the passive radiator, m; null where it sets no limit.</param>
/// <param name="CoilVoltageV">Voltage at the coil's rated power, V rms; null where not stated.</param>
/// <param name="AmplifierVoltageV">Voltage of the amplifier at its rated power, V rms; null where not stated.</param>
public sealed record DriveLimits(double? XmaxM, double? PassiveRadiatorXmaxM, double? CoilVoltageV, double? AmplifierVoltageV);

/// <summary>The greatest voltage that all limits allow, and which of them sets it.</summary>
/// <param name="VoltageV">Voltage of the source, V rms.</param>
/// <param name="LimitedBy">What sets it.</param>
public sealed record DriveLimit(double VoltageV, LimitedBy LimitedBy);

/// <summary>What limits the level.</summary>
public enum LimitedBy
{
    /// <summary>The way that the cone can go.</summary>
    Excursion,

    /// <summary>What the coil bears.</summary>
    Coil,

    /// <summary>The amplifier's voltage.</summary>
    Amplifier,
}

/// <summary>How loud the cabinet can be, and what limits it.</summary>
public static class MaximumLevel
{
    /// <summary>Limits of a driver, a passive radiator and an amplifier.</summary>
    /// <param name="driver">The driver, or several as one.</param>
    /// <param name="passiveRadiator">The passive radiator; null where there is none.</param>
    /// <param name="amplifier">The amplifier; null where not stated.</param>
    /// <returns>The limits; what is not stated is null.</returns>
    /// <remarks>
    /// Model: coil √(P·R) with the driver's rated power, amplifier √(P·R) with its own, both at the rated load. Validity: steady sine.
    /// Source: power as voltage squared over rated load, IEC 60268-5:2003 (from memory). Accuracy: exact by definition of the ratings.
    /// </remarks>
    public static DriveLimits LimitsOf(Driver driver, PassiveRadiator? passiveRadiator, Amplifier? amplifier)
    {
        ArgumentNullException.ThrowIfNull(driver);
        return new DriveLimits(
            driver.XmaxM,
            passiveRadiator?.XmaxM,
            Volts(driver.PowerW, amplifier?.RatedLoadOhm),
            Volts(amplifier?.PowerW, amplifier?.RatedLoadOhm)
        );
    }

    /// <summary>The greatest voltage at one frequency.</summary>
    /// <param name="network">The driver in its box.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <returns>Voltage and what sets it; null where excursion, coil or amplifier is not stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not positive.</exception>
    /// <remarks>
    /// Model: the least of the voltages at which cone or passive radiator reach their excursion, the coil its power and the amplifier its voltage.
    /// Validity: the linear network up to the limits. Source: our choice of limits; displacement-limited output after Small 1972, JAES 20(10) (from
    /// memory).
    /// Accuracy: 1 to 2 dB, for real suspensions stiffen and coils warm up.
    /// </remarks>
    public static DriveLimit? VoltageAt(BoxNetwork network, DriveLimits limits, double frequencyHz)
    {
        ArgumentNullException.ThrowIfNull(network);
        return VoltageAt(network.At(frequencyHz, 1), limits);
    }

    /// <summary>The greatest level at one frequency, into a half space.</summary>
    /// <param name="network">The driver in its box.</param>
    /// <param name="limits">The limits.</param>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <param name="distanceM">Distance, m, above 0.</param>
    /// <returns>Level, dB re 20 µPa rms; null where excursion, coil or amplifier is not stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: level at the greatest voltage. Validity: as the greatest voltage. Source: our choice of limits. Accuracy: 1 to 2 dB.
    /// </remarks>
    public static double? LevelDb(BoxNetwork network, DriveLimits limits, double frequencyHz, double distanceM = 1)
    {
        ArgumentNullException.ThrowIfNull(network);
        return LevelDb(network.At(frequencyHz, 1), limits, distanceM);
    }

    /// <summary>Power that a wanted level takes.</summary>
    /// <param name="wantedDb">Wanted level, dB.</param>
    /// <param name="levelAtOneVoltDb">Level at the same place and frequency for 1 V, dB.</param>
    /// <param name="ratedLoadOhm">Load that powers are stated at, ohm, above 0.</param>
    /// <returns>Power, W, as voltage squared over the rated load.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is not positive or a level is not finite.</exception>
    /// <remarks>
    /// Model: P = 10^((wanted − level at 1 V)/10)/R. Validity: the linear network. Source: definition of the level; power at rated load after IEC
    /// 60268-5 (from memory).
    /// Accuracy: exact for the lumped model; the coil's warming is left out.
    /// </remarks>
    public static double PowerNeededW(double wantedDb, double levelAtOneVoltDb, double ratedLoadOhm)
    {
        Require.Within(wantedDb, -200, 300, nameof(wantedDb), "dB");
        Require.Within(levelAtOneVoltDb, -400, 300, nameof(levelAtOneVoltDb), "dB");
        Require.Positive(ratedLoadOhm);
        return Math.Pow(10, (wantedDb - levelAtOneVoltDb) / 10) / ratedLoadOhm;
    }

    internal static double? LevelDb(NetworkPoint atOneVolt, DriveLimits limits, double distanceM) =>
        VoltageAt(atOneVolt, limits) is { } limit ? atOneVolt.LevelDb(distanceM) + (20 * Math.Log10(limit.VoltageV)) : null;

    internal static DriveLimit? VoltageAt(NetworkPoint atOneVolt, DriveLimits limits)
    {
        if (limits is not { XmaxM: { } xmax, CoilVoltageV: { } coil, AmplifierVoltageV: { } amplifier })
        {
            return null;
        }

        var excursion = xmax / atOneVolt.ExcursionPeakM;
        if (limits.PassiveRadiatorXmaxM / atOneVolt.PassiveRadiatorExcursionPeakM is { } second)
        {
            excursion = Math.Min(excursion, second);
        }

        DriveLimit[] all = [new(excursion, LimitedBy.Excursion), new(coil, LimitedBy.Coil), new(amplifier, LimitedBy.Amplifier)];
        return all.MinBy(l => l.VoltageV);
    }

    private static double? Volts(double? powerW, double? loadOhm) => powerW * loadOhm is { } squared ? Math.Sqrt(squared) : null;
}
