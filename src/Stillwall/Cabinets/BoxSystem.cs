using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Cabinets;

/// <summary>The stated cabinet's acoustics put together: network, fill and leak.</summary>
/// <param name="Network">The driver, or all of them as one, in the box.</param>
/// <param name="NetVolumeM3">Net volume it was put together for, m³.</param>
/// <param name="Fill">What the fibre does.</param>
public sealed record BoxSystem(BoxNetwork Network, double NetVolumeM3, FillEffect Fill)
{
    /// <summary>Puts driver and cabinet together.</summary>
    /// <param name="driver">One driver as resolved; the cabinet says how many there are.</param>
    /// <param name="netVolumeM3">Net volume of the box, m³.</param>
    /// <param name="cabinet">The stated cabinet, for fill, leak, ports, passive radiator and number of drivers; null is an airtight empty box.</param>
    /// <param name="measured">What was measured; it beats what is stated.</param>
    /// <param name="air">The air.</param>
    /// <returns>The system, or what is missing to know it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A stated value is out of range.</exception>
    /// <remarks>
    /// Model: equal drivers as one, fill and leak by their own models. Validity: as theirs.
    /// Source: see <see cref="BoxNetwork"/>, <see cref="FibreFill"/>, <see cref="Leakage"/>. Accuracy: as theirs.
    /// </remarks>
    public static BoxSystemResolution Of(Driver driver, double netVolumeM3, Cabinet? cabinet, Measured measured, Air air)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(measured);
        var all = driver.InParallel(cabinet?.DriverCount ?? 1);
        var leak = Leakage.Of(cabinet?.Leak, measured.LeakResistancePaSM3, air);
        var fill = FibreFill.Of(netVolumeM3, cabinet?.Fill, measured.FillFactor);
        var missing = leak.Missing.Concat(MissingOf(cabinet?.Port)).Concat(fill is null ? ["box.effective_volume_m3"] : Array.Empty<string>()).ToList();
        if (missing.Count > 0 || fill is null)
        {
            return new BoxSystemResolution(null, missing);
        }

        var network = new BoxNetwork(all, fill.EffectiveVolumeM3, air)
        {
            LeakResistancePaSM3 = leak.ResistancePaSM3,
            FillLossKgS = fill.IsLossy ? FibreFill.LossKgS(all, fill.EffectiveVolumeM3, air) : 0,
            Port = PathOf(cabinet?.Port),
            PassiveRadiator = cabinet?.PassiveRadiator?.Kept(),
        };
        return new BoxSystemResolution(new BoxSystem(network, netVolumeM3, fill), []);
    }

    private static IEnumerable<string> MissingOf(Port? port)
    {
        if (port is { LengthM: null })
        {
            yield return "cabinet.port.length";
        }

        if (port is { AreaM2: null, DiameterM: null })
        {
            yield return "cabinet.port.area";
        }
    }

    private static PortPath? PathOf(Port? port)
    {
        if (port is not { LengthM: { } length })
        {
            return null;
        }

        var area = port.AreaM2 ?? (Math.PI / 4 * port.DiameterM!.Value * port.DiameterM.Value);
        Require.Positive(area, "cabinet.port.area");
        Require.Positive(length, "cabinet.port.length");
        return new PortPath(area, length, port.Count, port.ResistancePaSM3);
    }
}

/// <summary>The cabinet's acoustics, or why they are unknown.</summary>
/// <param name="System">The system; null where something is missing.</param>
/// <param name="Missing">Keys that are missing; <c>box.effective_volume_m3</c> where no air is left in the box.</param>
public sealed record BoxSystemResolution(BoxSystem? System, IReadOnlyList<string> Missing);
