using System.Globalization;
using Stillwall.Projects;
using UnitsNet;

namespace Stillwall.Files.Tests.Projects;

/// <summary>Our table of units against UnitsNet 5, unit by unit, for every unit that UnitsNet knows.</summary>
public class UnitOracleTests
{
    private static readonly Dictionary<(string Unit, Dimension Dimension), Func<double, double>> Oracle = new()
    {
        [("mm", Dimension.Length)] = v => Length.FromMillimeters(v).Meters,
        [("m", Dimension.Length)] = v => Length.FromMeters(v).Meters,
        [("cm", Dimension.Length)] = v => Length.FromCentimeters(v).Meters,
        [("um", Dimension.Length)] = v => Length.FromMicrometers(v).Meters,
        [("in", Dimension.Length)] = v => Length.FromInches(v).Meters,
        [("\"", Dimension.Length)] = v => Length.FromInches(v).Meters,
        [("ft", Dimension.Length)] = v => Length.FromFeet(v).Meters,
        [("cm2", Dimension.Area)] = v => Area.FromSquareCentimeters(v).SquareMeters,
        [("m2", Dimension.Area)] = v => Area.FromSquareMeters(v).SquareMeters,
        [("mm2", Dimension.Area)] = v => Area.FromSquareMillimeters(v).SquareMeters,
        [("in2", Dimension.Area)] = v => Area.FromSquareInches(v).SquareMeters,
        [("ft2", Dimension.Area)] = v => Area.FromSquareFeet(v).SquareMeters,
        [("L", Dimension.Volume)] = v => Volume.FromLiters(v).CubicMeters,
        [("l", Dimension.Volume)] = v => Volume.FromLiters(v).CubicMeters,
        [("mL", Dimension.Volume)] = v => Volume.FromMilliliters(v).CubicMeters,
        [("ml", Dimension.Volume)] = v => Volume.FromMilliliters(v).CubicMeters,
        [("m3", Dimension.Volume)] = v => Volume.FromCubicMeters(v).CubicMeters,
        [("cm3", Dimension.Volume)] = v => Volume.FromCubicCentimeters(v).CubicMeters,
        [("mm3", Dimension.Volume)] = v => Volume.FromCubicMillimeters(v).CubicMeters,
        [("in3", Dimension.Volume)] = v => Volume.FromCubicInches(v).CubicMeters,
        [("ft3", Dimension.Volume)] = v => Volume.FromCubicFeet(v).CubicMeters,
        [("gal", Dimension.Volume)] = v => Volume.FromUsGallons(v).CubicMeters,
        [("kg", Dimension.Mass)] = v => Mass.FromKilograms(v).Kilograms,
        [("g", Dimension.Mass)] = v => Mass.FromGrams(v).Kilograms,
        [("mg", Dimension.Mass)] = v => Mass.FromMilligrams(v).Kilograms,
        [("t", Dimension.Mass)] = v => Mass.FromTonnes(v).Kilograms,
        [("lb", Dimension.Mass)] = v => Mass.FromPounds(v).Kilograms,
        [("oz", Dimension.Mass)] = v => Mass.FromOunces(v).Kilograms,
        [("s", Dimension.Time)] = v => Duration.FromSeconds(v).Seconds,
        [("ms", Dimension.Time)] = v => Duration.FromMilliseconds(v).Seconds,
        [("min", Dimension.Time)] = v => Duration.FromMinutes(v).Seconds,
        [("h", Dimension.Time)] = v => Duration.FromHours(v).Seconds,
        [("d", Dimension.Time)] = v => Duration.FromDays(v).Seconds,
        [("Hz", Dimension.Frequency)] = v => Frequency.FromHertz(v).Hertz,
        [("kHz", Dimension.Frequency)] = v => Frequency.FromKilohertz(v).Hertz,
        [("Pa", Dimension.Pressure)] = v => Pressure.FromPascals(v).Pascals,
        [("hPa", Dimension.Pressure)] = v => Pressure.FromHectopascals(v).Pascals,
        [("kPa", Dimension.Pressure)] = v => Pressure.FromKilopascals(v).Pascals,
        [("MPa", Dimension.Pressure)] = v => Pressure.FromMegapascals(v).Pascals,
        [("GPa", Dimension.Pressure)] = v => Pressure.FromGigapascals(v).Pascals,
        [("mbar", Dimension.Pressure)] = v => Pressure.FromMillibars(v).Pascals,
        [("bar", Dimension.Pressure)] = v => Pressure.FromBars(v).Pascals,
        [("psi", Dimension.Pressure)] = v => Pressure.FromPoundsForcePerSquareInch(v).Pascals,
        [("W", Dimension.Power)] = v => (double)Power.FromWatts(v).Watts,
        [("mW", Dimension.Power)] = v => (double)Power.FromMilliwatts(v).Watts,
        [("kW", Dimension.Power)] = v => (double)Power.FromKilowatts(v).Watts,
        [("ohm", Dimension.Resistance)] = v => ElectricResistance.FromOhms(v).Ohms,
        [("Ω", Dimension.Resistance)] = v => ElectricResistance.FromOhms(v).Ohms,
        [("mohm", Dimension.Resistance)] = v => ElectricResistance.FromMilliohms(v).Ohms,
        [("mΩ", Dimension.Resistance)] = v => ElectricResistance.FromMilliohms(v).Ohms,
        [("kohm", Dimension.Resistance)] = v => ElectricResistance.FromKiloohms(v).Ohms,
        [("kΩ", Dimension.Resistance)] = v => ElectricResistance.FromKiloohms(v).Ohms,
        [("H", Dimension.Inductance)] = v => ElectricInductance.FromHenries(v).Henries,
        [("mH", Dimension.Inductance)] = v => ElectricInductance.FromMillihenries(v).Henries,
        [("uH", Dimension.Inductance)] = v => ElectricInductance.FromMicrohenries(v).Henries,
        [("dB", Dimension.Level)] = v => Level.FromDecibels(v).Decibels,
        [("degC", Dimension.Temperature)] = v => Temperature.FromDegreesCelsius(v).DegreesCelsius,
        [("°C", Dimension.Temperature)] = v => Temperature.FromDegreesCelsius(v).DegreesCelsius,
        [("K", Dimension.Temperature)] = v => Temperature.FromKelvins(v).DegreesCelsius,
        [("degF", Dimension.Temperature)] = v => Temperature.FromDegreesFahrenheit(v).DegreesCelsius,
        [("°F", Dimension.Temperature)] = v => Temperature.FromDegreesFahrenheit(v).DegreesCelsius,
        [("K", Dimension.TemperatureDifference)] = v => TemperatureDelta.FromKelvins(v).Kelvins,
        [("N/m", Dimension.Stiffness)] = v => ForcePerLength.FromNewtonsPerMeter(v).NewtonsPerMeter,
        [("kN/m", Dimension.Stiffness)] = v => ForcePerLength.FromKilonewtonsPerMeter(v).NewtonsPerMeter,
        [("N/mm", Dimension.Stiffness)] = v => ForcePerLength.FromNewtonsPerMillimeter(v).NewtonsPerMeter,
        [("kg/m3", Dimension.Density)] = v => Density.FromKilogramsPerCubicMeter(v).KilogramsPerCubicMeter,
        [("g/L", Dimension.Density)] = v => Density.FromGramsPerLiter(v).KilogramsPerCubicMeter,
        [("kg/L", Dimension.Density)] = v => Density.FromKilogramsPerLiter(v).KilogramsPerCubicMeter,
        [("g/cm3", Dimension.Density)] = v => Density.FromGramsPerCubicCentimeter(v).KilogramsPerCubicMeter,
        [("lb/ft3", Dimension.Density)] = v => Density.FromPoundsPerCubicFoot(v).KilogramsPerCubicMeter,
        [("kg/m2", Dimension.SurfaceDensity)] = v => AreaDensity.FromKilogramsPerSquareMeter(v).KilogramsPerSquareMeter,
        [("g/cm2", Dimension.SurfaceDensity)] = v => AreaDensity.FromGramsPerSquareMeter(v * 1e4).KilogramsPerSquareMeter,
        [("lb/ft2", Dimension.SurfaceDensity)] = v => Mass.FromPounds(v).Kilograms / Area.FromSquareFeet(1).SquareMeters,
        [("L/min", Dimension.VolumeFlow)] = v => VolumeFlow.FromLitersPerMinute(v).CubicMetersPerSecond,
        [("L/s", Dimension.VolumeFlow)] = v => VolumeFlow.FromLitersPerSecond(v).CubicMetersPerSecond,
        [("mL/s", Dimension.VolumeFlow)] = v => VolumeFlow.FromMillilitersPerSecond(v).CubicMetersPerSecond,
        [("m3/s", Dimension.VolumeFlow)] = v => VolumeFlow.FromCubicMetersPerSecond(v).CubicMetersPerSecond,
        [("deg", Dimension.Angle)] = v => Angle.FromDegrees(v).Degrees,
        [("°", Dimension.Angle)] = v => Angle.FromDegrees(v).Degrees,
        [("rad", Dimension.Angle)] = v => Angle.FromRadians(v).Degrees,
        [("kJ/kg", Dimension.SpecificHeat)] = v => SpecificEnergy.FromKilojoulesPerKilogram(v).JoulesPerKilogram,
        [("J/kg", Dimension.SpecificHeat)] = v => SpecificEnergy.FromJoulesPerKilogram(v).JoulesPerKilogram,
        [("N", Dimension.Force)] = v => Force.FromNewtons(v).Newtons,
        [("kN", Dimension.Force)] = v => Force.FromKilonewtons(v).Newtons,
        [("lbf", Dimension.Force)] = v => Force.FromPoundsForce(v).Newtons,
        [("N*m", Dimension.Torque)] = v => Torque.FromNewtonMeters(v).NewtonMeters,
        [("N m", Dimension.Torque)] = v => Torque.FromNewtonMeters(v).NewtonMeters,
        [("Nm", Dimension.Torque)] = v => Torque.FromNewtonMeters(v).NewtonMeters,
        [("in*lbf", Dimension.Torque)] = v => Torque.FromPoundForceInches(v).NewtonMeters,
        [("in lbf", Dimension.Torque)] = v => Torque.FromPoundForceInches(v).NewtonMeters,
    };

    // Pieces are no unit; the other four kinds are not among the quantities of UnitsNet.
    private static readonly Dimension[] UnknownToTheOracle =
    [
        Dimension.None,
        Dimension.Count,
        Dimension.ForceFactor,
        Dimension.Compliance,
        Dimension.MechanicalResistance,
        Dimension.AcousticResistance,
    ];

    public static TheoryData<string, Dimension> Known()
    {
        var data = new TheoryData<string, Dimension>();
        foreach (var unit in Enum.GetValues<Dimension>().Except(UnknownToTheOracle).SelectMany(Units.Of))
        {
            data.Add(unit.Name, unit.Dimension);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Known))]
    public void A_unit_is_worth_what_another_library_says(string name, Dimension dimension)
    {
        Assert.True(Oracle.TryGetValue((name, dimension), out var expected), $"{name} is not compared with UnitsNet: add it here");
        foreach (var number in new[] { 0, 1, 1.1, 256, -7.25, 12345.678 })
        {
            Assert.True(Units.TryRead($"{number.ToString("R", CultureInfo.InvariantCulture)} {name}", dimension, out var si, out var fault), fault);
            // UnitsNet keeps some factors to eight digits only.
            Assert.Equal(expected(number), si, 1e-8 * Math.Abs(si) + 1e-12);
        }
    }
}
