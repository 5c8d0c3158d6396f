namespace Stillwall.Projects;

/// <summary>Kind of quantity; each has one SI unit in which it is held.</summary>
public enum Dimension
{
    /// <summary>A bare number.</summary>
    None,

    /// <summary>Pieces.</summary>
    Count,

    /// <summary>Length, m.</summary>
    Length,

    /// <summary>Area, m².</summary>
    Area,

    /// <summary>Volume, m³.</summary>
    Volume,

    /// <summary>Mass, kg.</summary>
    Mass,

    /// <summary>Time, s.</summary>
    Time,

    /// <summary>Frequency, Hz.</summary>
    Frequency,

    /// <summary>Pressure, stress or modulus, Pa.</summary>
    Pressure,

    /// <summary>Power, W.</summary>
    Power,

    /// <summary>Electrical resistance, ohm.</summary>
    Resistance,

    /// <summary>Inductance, H.</summary>
    Inductance,

    /// <summary>Level or level difference, dB.</summary>
    Level,

    /// <summary>Temperature, °C.</summary>
    Temperature,

    /// <summary>Difference of temperatures, K.</summary>
    TemperatureDifference,

    /// <summary>Stiffness, N/m.</summary>
    Stiffness,

    /// <summary>Density, kg/m³.</summary>
    Density,

    /// <summary>Mass by area, kg/m².</summary>
    SurfaceDensity,

    /// <summary>Flow of volume, m³/s.</summary>
    VolumeFlow,

    /// <summary>Force factor, N/A.</summary>
    ForceFactor,

    /// <summary>Compliance, m/N.</summary>
    Compliance,

    /// <summary>Mechanical resistance, kg/s.</summary>
    MechanicalResistance,

    /// <summary>Acoustic resistance, Pa·s/m³; a bare number is taken in this unit.</summary>
    AcousticResistance,

    /// <summary>Angle, °.</summary>
    Angle,

    /// <summary>Heat per mass, J/kg.</summary>
    SpecificHeat,

    /// <summary>Force, N.</summary>
    Force,

    /// <summary>Torque, N·m.</summary>
    Torque,
}
