using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Cabinets;

/// <summary>The figures of the box: closed forms of the lossless closed box, and what the whole network can do at the lowest note.</summary>
public sealed record BoxFigures
{
    /// <summary>Air space within the inner skins, m³; null for a ready box.</summary>
    [ComputedBy("inside-volume")]
    public double? InsideVolumeM3 { get; init; }

    /// <summary>Net air volume, m³.</summary>
    [ComputedBy("net-volume", "box.inside_volume_m3")]
    public double? NetVolumeM3 { get; init; }

    /// <summary>Effective volume, m³.</summary>
    [ComputedBy("effective-volume", "box.net_volume_m3", "box.fill_factor")]
    public double? EffectiveVolumeM3 { get; init; }

    /// <summary>Factor by which the fibre makes the air seem larger.</summary>
    [ComputedBy("fill-factor", "box.net_volume_m3")]
    public double? FillFactor { get; init; }

    /// <summary>Packing of the fibre, kg/m³; null where no mass is stated.</summary>
    [ComputedBy("fill-density", "box.net_volume_m3")]
    public double? FillDensityKgM3 { get; init; }

    /// <summary>Resonance of the closed system, Hz.</summary>
    [ComputedBy("system-resonance", "box.effective_volume_m3")]
    public double? SystemResonanceHz { get; init; }

    /// <summary>Total Q of the closed system, lossless.</summary>
    [ComputedBy("system-q", "box.effective_volume_m3")]
    public double? SystemQ { get; init; }

    /// <summary>Total Q of the closed system with the loss of the fibre.</summary>
    [ComputedBy("system-q-filled", "box.effective_volume_m3")]
    public double? SystemQFilled { get; init; }

    /// <summary>f3, the frequency 3 dB below the passband, Hz.</summary>
    [ComputedBy("f3", "box.system_resonance_hz", "box.system_q")]
    public double? F3Hz { get; init; }

    /// <summary>f10, the frequency 10 dB below the passband, Hz.</summary>
    [ComputedBy("f10", "box.system_resonance_hz", "box.system_q")]
    public double? F10Hz { get; init; }

    /// <summary>Rise of the response above the passband, dB.</summary>
    [ComputedBy("response-peak", "box.system_q")]
    public double? ResponsePeakDb { get; init; }

    /// <summary>Share of the electrical power that becomes sound.</summary>
    [ComputedBy("reference-efficiency")]
    public double? ReferenceEfficiency { get; init; }

    /// <summary>Level at 1 m for 1 W into the coil's resistance, half space, dB.</summary>
    [ComputedBy("sensitivity", "box.reference_efficiency")]
    public double? SensitivityDb { get; init; }

    /// <summary>Q of the leak; null where airtight.</summary>
    [ComputedBy("leak-q", "box.system_resonance_hz", "box.effective_volume_m3")]
    public double? LeakQ { get; init; }

    /// <summary>Lowest mode of the air inside, Hz; null where the inside is not stated.</summary>
    [ComputedBy("air-mode")]
    public double? LowestAirModeHz { get; init; }

    /// <summary>Greatest level at the lowest note, half space, at the listening distance, dB; null where a limit or the aim is not stated.</summary>
    [ComputedBy("maximum-level", "box.effective_volume_m3")]
    public double? MaxSplAtLowestDb { get; init; }

    /// <summary>Greatest level at the lowest note at the seat, dB; null where it or the room is not stated.</summary>
    [ComputedBy("maximum-level-at-seat", "box.max_spl_at_lowest_db")]
    public double? MaxSplAtSeatDb { get; init; }

    /// <summary>What limits the level at the lowest note: <c>excursion</c>, <c>coil</c> or <c>amplifier</c>; null where not known.</summary>
    public LimitedBy? LimitedByAtLowest { get; init; }

    /// <summary>Power that the wanted level takes at the lowest note, W at the rated load; null where not known.</summary>
    [ComputedBy("power-needed", "box.effective_volume_m3")]
    public double? PowerNeededW { get; init; }

    /// <summary>Least impedance the amplifier sees between 10 Hz and 1 kHz, ohm.</summary>
    [ComputedBy("minimum-impedance", "box.effective_volume_m3")]
    public double? MinimumImpedanceOhm { get; init; }

    /// <summary>Resonance of nine drivers out of ten, from and to, Hz.</summary>
    [ComputedBy("tolerance", "box.effective_volume_m3")]
    public IReadOnlyList<double>? SystemResonanceBandHz { get; init; }

    /// <summary>Total Q of nine drivers out of ten, from and to.</summary>
    [ComputedBy("tolerance", "box.effective_volume_m3")]
    public IReadOnlyList<double>? SystemQBand { get; init; }

    /// <summary>Length to print of a port, m; null without a port, or where its end corrections alone are longer.</summary>
    [ComputedBy("port-print-length")]
    public double? PortPrintLengthM { get; init; }

    /// <summary>Computes the figures.</summary>
    /// <param name="system">Driver and cabinet put together.</param>
    /// <param name="aim">What is to be heard; null where not stated.</param>
    /// <param name="amplifier">The amplifier; null where not stated.</param>
    /// <param name="longestInsideM">Largest inside length, m; null where not known.</param>
    /// <param name="seatTransferDb">
    /// Level at the seat less the half-space level at 1 m, at the lowest note, allowance for real walls taken off, dB; null without a room.
    /// </param>
    /// <returns>The figures; what is not stated leaves nulls.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    /// <remarks>
    /// Model: closed forms without loss, inductance, leak or amplifier; maximum level and power from the whole network, at the seat where there is a room.
    /// Validity: as <see cref="ClosedBox"/> and <see cref="BoxNetwork"/>. Source: Small 1972, JAES 20(10), and Small 1973, JAES 21(1) (from memory).
    /// Accuracy: as theirs.
    /// </remarks>
    public static BoxFigures Of(BoxSystem system, Aim? aim, Amplifier? amplifier, double? longestInsideM = null, double? seatTransferDb = null)
    {
        ArgumentNullException.ThrowIfNull(system);
        var closed = ClosedFigures(system) with
        {
            LowestAirModeHz = longestInsideM is { } length ? AirModeHz(length, system.Network.Air) : null,
            PortPrintLengthM = system.Network.Port is { } port ? PortSize.PrintLengthM(port.LengthM, port.AreaM2) : null,
        };
        return aim?.LowestHz is { } lowest ? AtLowest(closed, system.Network, lowest, aim, amplifier, seatTransferDb) : closed;
    }

    /// <summary>Lowest mode of the air inside.</summary>
    /// <param name="longestInsideM">Largest inside length, m, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Frequency, Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive.</exception>
    /// <remarks>
    /// Model: c/(2·length), half a wavelength between rigid ends. Validity: without fibre; fibre lowers it by up to a fifth and damps it.
    /// Source: Kuttruff 2000, chapter 3. Accuracy: exact for a rectangular space with rigid walls.
    /// </remarks>
    public static double AirModeHz(double longestInsideM, Materials.Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(longestInsideM);
        return air.SpeedOfSoundMS / (2 * longestInsideM);
    }

    private static BoxFigures ClosedFigures(BoxSystem system)
    {
        var network = system.Network;
        var (driver, air) = (network.Driver, network.Air);
        var ratio = ClosedBox.ComplianceRatio(driver, network.EffectiveVolumeM3, air);
        var resonance = ClosedBox.ResonanceHz(driver.FsHz, ratio);
        var q = ClosedBox.SystemQ(driver.Qts, ratio);
        var efficiency = ClosedBox.ReferenceEfficiency(driver, air);
        var impedanceAtResonance = Math.Sqrt(driver.MmsKg * (1 + ratio) / driver.CmsMPerN);
        return new BoxFigures
        {
            NetVolumeM3 = system.NetVolumeM3,
            EffectiveVolumeM3 = network.EffectiveVolumeM3,
            FillFactor = system.Fill.FillFactor,
            FillDensityKgM3 = system.Fill.DensityKgM3,
            SystemResonanceHz = resonance,
            SystemQ = q,
            SystemQFilled = impedanceAtResonance / (driver.RmsKgS + network.FillLossKgS + (driver.BlTM * driver.BlTM / driver.ReOhm)),
            F3Hz = ClosedBox.F3Hz(resonance, q),
            F10Hz = ClosedBox.F10Hz(resonance, q),
            ResponsePeakDb = ClosedBox.ResponsePeakDb(q),
            ReferenceEfficiency = efficiency,
            SensitivityDb = ClosedBox.SensitivityDb(efficiency, air),
            LeakQ = network.LeakResistancePaSM3 is { } leak ? Leakage.LeakQ(resonance, network.EffectiveVolumeM3, leak, air) : null,
        };
    }

    private static BoxFigures AtLowest(BoxFigures closed, BoxNetwork network, double lowestHz, Aim aim, Amplifier? amplifier, double? seatTransferDb)
    {
        var limits = MaximumLevel.LimitsOf(network.Driver, network.PassiveRadiator, amplifier);
        var point = network.At(lowestHz, 1);
        var wherever = seatTransferDb is { } transfer ? point.LevelDb() + transfer : point.LevelDb(aim.DistanceM);
        return closed with
        {
            MaxSplAtLowestDb = MaximumLevel.LevelDb(point, limits, aim.DistanceM),
            MaxSplAtSeatDb = MaximumLevel.LevelDb(point, limits, 1) + seatTransferDb,
            LimitedByAtLowest = MaximumLevel.VoltageAt(point, limits)?.LimitedBy,
            PowerNeededW = aim.LevelDb is { } level && amplifier?.RatedLoadOhm is { } load ? MaximumLevel.PowerNeededW(level, wherever, load) : null,
        };
    }
}
