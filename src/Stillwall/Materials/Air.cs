using Stillwall.Numerics;

namespace Stillwall.Materials;

/// <summary>The air that sound travels in.</summary>
/// <param name="TemperatureC">Temperature, °C.</param>
/// <param name="PressurePa">Static pressure, Pa.</param>
/// <param name="SpeedOfSoundMS">Speed of sound, m/s.</param>
/// <param name="DensityKgM3">Density, kg/m³.</param>
/// <param name="ViscosityPaS">Dynamic viscosity, Pa·s.</param>
public sealed record Air(double TemperatureC, double PressurePa, double SpeedOfSoundMS, double DensityKgM3, double ViscosityPaS)
{
    /// <summary>Pressure that sound pressure levels refer to, Pa (IEC 61672-1).</summary>
    public const double ReferencePressurePa = 20e-6;

    /// <summary>Air at 20 °C and 101 325 Pa, to which Vas refers.</summary>
    public static Air Reference { get; } = At(20, 101325);

    /// <summary>Bulk modulus ρc², Pa: what a volume of air resists compression with.</summary>
    public double BulkModulusPa => DensityKgM3 * SpeedOfSoundMS * SpeedOfSoundMS;

    /// <summary>Dry air at a temperature and pressure.</summary>
    /// <param name="temperatureC">Temperature, −40 to 60 °C.</param>
    /// <param name="pressurePa">Static pressure, 30 000 to 120 000 Pa.</param>
    /// <returns>The air's properties.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: c = 343.2 √(T/293.15 K), ρ = p/(287.05 T). Validity: dry air, the humidity of a room adds up to 0.2 % to c.
    /// Source: ISO 9613-1:1993 for c; ideal gas with R = 287.05 J/(kg·K); viscosity 1.81e-5 Pa·s at 20 °C from memory, held constant.
    /// Accuracy: within 0.1 % of Cramer 1993 for dry air between 0 and 30 °C.
    /// </remarks>
    public static Air At(double temperatureC, double pressurePa)
    {
        Require.Within(temperatureC, -40, 60, nameof(temperatureC), "°C");
        Require.Within(pressurePa, 30000, 120000, nameof(pressurePa), "Pa");
        var kelvin = temperatureC + 273.15;
        return new Air(temperatureC, pressurePa, 343.2 * Math.Sqrt(kelvin / 293.15), pressurePa / (287.05 * kelvin), 1.81e-5);
    }
}
