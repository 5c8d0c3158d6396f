using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Projects;

namespace Stillwall.Walls;

/// <summary>One screw of the driver in its threaded insert, and what all of them leave on the gasket.</summary>
/// <param name="GasketPa">Pressure on the gasket, Pa; null where opening or flange is not known.</param>
internal sealed record DriverScrews(double TorqueNM, double LoadN, double PullOutN, double Safety, double? GasketPa)
{
    // Our choice: 0.2 N·m for an M5 screw, in proportion to its diameter; an excursion limit where none is stated.
    private const double TorquePerMetreN = 30,
        UsualXmaxM = 0.01;

    /// <summary>The screws; null where thread, number or pull-out are not known.</summary>
    /// <param name="netM3">Net volume of the box, m³; null where it is not known: no box pressure is counted then.</param>
    /// <param name="resonanceHz">Resonance of the driver in its box, Hz; null for the driver's own.</param>
    /// <param name="limits">Torque and pull-out as stated.</param>
    /// <remarks>
    /// Model: at the excursion limit x the box pressure is ρc²·S·x/V, static compression of the net volume, and the moving mass throws m·ω²·x at the
    /// resonance; both add to the pull of the screw. Validity: an even circle of screws. Source: elementary; torque and usual excursion are our choice.
    /// Accuracy: as <see cref="Inserts"/>, wide scatter.
    /// </remarks>
    public static DriverScrews? Of(DriverSheet sheet, Driver driver, Air air, double? netM3, double? resonanceHz, Limits limits)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(limits);
        if (sheet is not { BoltM: { } bolt, Bolts: > 0 and { } screws } || (limits.InsertPullOutN ?? Inserts.PullOutN(bolt)) is not { } pullOut)
        {
            return null;
        }

        var x = driver.XmaxM ?? UsualXmaxM;
        var pressure = netM3 is > 0 and { } net ? air.BulkModulusPa * driver.SdM2 * x / net : 0;
        var omega = 2 * Math.PI * (resonanceHz ?? driver.FsHz);
        var torque = limits.ScrewTorqueNM ?? TorquePerMetreN * bolt;
        var (preload, reaction) = (Inserts.PreloadN(torque, bolt), driver.MmsKg * omega * omega * x);
        var load = Inserts.LoadN(preload, pressure, driver.SdM2, reaction, screws);
        double? gasket =
            sheet is { CutoutM: { } opening, FlangeM: { } flange } && flange > opening
                ? Gasket.PressurePa(preload, screws, pressure * driver.SdM2 + reaction, opening, flange)
                : null;
        return new DriverScrews(torque, load, pullOut, Inserts.SafetyFactor(pullOut, load), gasket);
    }
}
