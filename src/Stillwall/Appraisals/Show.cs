using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Appraisals;

/// <summary>Writes numbers for people: with a unit, with sensible digits (our choice), metric or inch; what goes in is SI.</summary>
/// <param name="Inch">Whether sizes and masses are shown in inches and pounds.</param>
internal sealed record Show(bool Inch, string Currency)
{
    /// <summary>Unit of the sizes of a drawing.</summary>
    internal string SizeUnit => Inch ? "in" : "mm";

    /// <summary>How many of that unit a metre has.</summary>
    internal double SizesPerMetre => Inch ? 1 / Units.Inch : 1e3;

    /// <summary>The way a project wants its numbers.</summary>
    public static Show Of(Project project)
    {
        ArgumentNullException.ThrowIfNull(project);
        return new Show(project.DisplayUnits == DisplayUnits.Inch, project.Currency);
    }

    /// <summary>What limits the level, in words.</summary>
    public static string Limit(Cabinets.LimitedBy? limit) =>
        limit switch
        {
            Cabinets.LimitedBy.Excursion => "the cone's excursion",
            Cabinets.LimitedBy.Coil => "the coil",
            _ => "the amplifier",
        };

    public string Length(double metres) => Inch ? $"{Inches(metres / Units.Inch)} in" : $"{Digits(metres * 1e3, 3)} mm";

    /// <summary>A small length, such as the way of a cone.</summary>
    /// <returns>Millimetres, or inches, with two digits.</returns>
    public string Small(double metres) => Inch ? $"{Digits(metres / Units.Inch, 2)} in" : $"{Digits(metres * 1e3, 2)} mm";

    /// <summary>Litres, below a tenth of one millilitres; or cubic feet.</summary>
    public string Volume(double cubicMetres) =>
        !Inch ? (cubicMetres != 0 && Math.Abs(cubicMetres) < 1e-4 ? $"{Digits(cubicMetres * 1e6, 3)} mL" : $"{Digits(cubicMetres * 1e3, 3)} L")
        : Math.Abs(cubicMetres) < 0.05 * Units.CubicFoot ? $"{Digits(cubicMetres / Units.CubicFoot * 1728, 3)} in³"
        : $"{Digits(cubicMetres / Units.CubicFoot, 3)} ft³";

    /// <summary>A volume of something that is poured.</summary>
    /// <returns>Litres, or US gallons and fluid ounces.</returns>
    /// <remarks>Source: our choice of digits; NIST SP 811 appendix B for the gallon (from memory; exact by definition).</remarks>
    public string Liquid(double cubicMetres) =>
        !Inch ? Volume(cubicMetres)
        : Math.Abs(cubicMetres) < 0.25 * Units.Gallon ? $"{Digits(cubicMetres / Units.Gallon * 128, 3)} fl oz"
        : $"{Digits(cubicMetres / Units.Gallon, 3)} gal";

    /// <summary>A distance across a room, or a length of cable.</summary>
    public string Distance(double metres) => Inch ? $"{Digits(metres / Units.Foot, 3)} ft" : $"{Digits(metres, 3)} m";

    /// <summary>Pascals with a fitting prefix, or pounds per square inch.</summary>
    public string Pressure(double pascals) =>
        Inch
            ? Psi(pascals / Units.Psi)
            : Math.Abs(pascals) switch
            {
                >= 1e9 => $"{Digits(pascals / 1e9, 2)} GPa",
                >= 1e5 => $"{Digits(pascals / 1e6, 2)} MPa",
                >= 100 => $"{Digits(pascals / 1e3, 2)} kPa",
                _ => $"{Digits(pascals, 2)} Pa",
            };

    /// <summary>Kilograms per cubic metre, or pounds per cubic foot.</summary>
    public string Density(double kilogramsPerCubicMetre, int digits = 3) =>
        Inch ? $"{Digits(kilogramsPerCubicMetre * Units.CubicFoot / Units.Pound, digits)} lb/ft³" : $"{Digits(kilogramsPerCubicMetre, digits)} kg/m³";

    /// <summary>A mass by area.</summary>
    /// <returns>Kilograms per square metre, or pounds per square foot.</returns>
    public string SurfaceDensity(double kilogramsPerSquareMetre) =>
        Inch ? $"{Digits(kilogramsPerSquareMetre * Units.Foot * Units.Foot / Units.Pound, 3)} lb/ft²" : $"{Digits(kilogramsPerSquareMetre, 3)} kg/m²";

    public string Force(double newtons) => Inch ? $"{Digits(newtons / Units.PoundForce, 2)} lbf" : $"{Digits(newtons, 2)} N";

    /// <summary>Newton metres, or inch pounds.</summary>
    public string Torque(double newtonMetres) =>
        Inch ? $"{Digits(newtonMetres / Units.PoundForce / Units.Inch, 2)} in·lbf" : $"{Digits(newtonMetres, 2)} N·m";

    /// <summary>The volume velocity of a source.</summary>
    /// <returns>Cubic metres, or cubic feet, a second.</returns>
    public string VolumeVelocity(double cubicMetresPerSecond) =>
        Inch ? $"{Digits(cubicMetresPerSecond / Units.CubicFoot, 3)} ft³/s" : $"{Digits(cubicMetresPerSecond, 3)} m³/s";

    /// <summary>How fast something is poured.</summary>
    public string Flow(double cubicMetresPerSecond) =>
        Inch ? $"{Digits(cubicMetresPerSecond * Units.Minute / Units.Gallon, 3)} gal/min" : $"{Digits(cubicMetresPerSecond * 1e3 * Units.Minute, 3)} L/min";

    /// <summary>Kilograms or grams, or pounds and ounces.</summary>
    public string Mass(double kilograms) =>
        Inch ? Pounds(kilograms)
        : Math.Abs(kilograms) < 0.9995 ? $"{Digits(kilograms * 1e3, 3)} g"
        : $"{Digits(kilograms, 3)} kg";

    public static string Frequency(double hertz) => $"{Digits(hertz, 3)} Hz";

    /// <summary>A level or a level difference.</summary>
    public static string Level(double decibels) => $"{Fixed(decibels, 1)} dB";

    /// <summary>Degrees Celsius, or Fahrenheit beside inches.</summary>
    public string Temperature(double celsius) => Inch ? $"{Fixed(Fahrenheit(celsius), 0)} °F" : $"{Fixed(celsius, 0)} °C";

    public static string Time(double seconds) =>
        Math.Abs(seconds) switch
        {
            < 90 => $"{Digits(seconds, 2)} s",
            < 2 * Units.Hour => $"{Digits(seconds / Units.Minute, 2)} min",
            < 4 * Units.Day => $"{Digits(seconds / Units.Hour, 2)} h",
            _ => $"{Digits(seconds / Units.Day, 2)} days",
        };

    /// <summary>From when on a stopwatch shows hours, s.</summary>
    internal const double ClockHoursFrom = 3 * Units.Hour;

    /// <summary>Minutes and seconds as a stopwatch shows them, hours before them from the third on.</summary>
    internal static string Clock(int seconds) =>
        seconds < ClockHoursFrom
            ? string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{seconds / 3600}:{seconds / 60 % 60:00}:{seconds % 60:00}");

    /// <summary>A sum of money.</summary>
    /// <returns>Whole units; two decimals below twenty.</returns>
    public string Money(double amount) => $"{Fixed(amount, Math.Abs(amount) is > 0 and < 20 ? 2 : 0)} {Currency}";

    /// <summary>A ratio as a percentage.</summary>
    public static string Percent(double ratio) => $"{Digits(ratio * 100, 2)} %";

    /// <summary>A bare number.</summary>
    public static string Number(double value, int digits = 3) => Digits(value, digits);

    /// <summary>A stated quantity of any kind.</summary>
    public string Stated(double si, Dimension dimension) =>
        dimension switch
        {
            Dimension.Length => Length(si),
            Dimension.Volume => Volume(si),
            Dimension.Mass => Mass(si),
            Dimension.Frequency => Frequency(si),
            Dimension.Level => Level(si),
            Dimension.Temperature => Temperature(si),
            Dimension.Time => Time(si),
            Dimension.None => Digits(si, 4),
            _ when Inch && OfInches(si, dimension) is { } text => text,
            _ => Units.Write(double.Parse(si.ToString("G3", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), dimension),
        };

    /// <summary>A quantity as it stands in the file, with all its digits; beside inches with four.</summary>
    public string Kept(double si, Dimension dimension) =>
        (Inch, dimension) switch
        {
            (true, Dimension.Length) => $"{Digits(si / Units.Inch, 4)} in",
            (true, Dimension.Mass or Dimension.Volume or Dimension.Temperature) => Stated(si, dimension),
            (true, _) when OfInches(si, dimension) is { } text => text,
            _ => Units.Write(si, dimension),
        };

    /// <summary>A result in the unit that its key names.</summary>
    /// <param name="unit">The SI unit, as <c>why</c> names it; <c>1</c> for a bare number.</param>
    /// <remarks>Source: our choice of units and digits.</remarks>
    public string InUnit(double si, string unit, int digits = 5)
    {
        var (metric, perMetric, inch, perInch) = unit switch
        {
            "m" => ("mm", 1e3, "in", 1 / Units.Inch),
            "m2" => ("cm²", 1e4, "in²", 1 / (Units.Inch * Units.Inch)),
            "m3" => ("L", 1e3, "ft³", 1 / Units.CubicFoot),
            "kg" => ("kg", 1, "lb", 1 / Units.Pound),
            "kg/m3" => ("kg/m³", 1, "lb/ft³", Units.CubicFoot / Units.Pound),
            "kg/m2" => ("kg/m²", 1, "lb/ft²", Units.Foot * Units.Foot / Units.Pound),
            "Pa" => ("kPa", 1e-3, "psi", 1 / Units.Psi),
            "m/Pa" => ("nm/Pa", 1e9, "µin/psi", 1e6 / Units.Inch * Units.Psi),
            "m3/s" => ("L/min", 1e3 * Units.Minute, "gal/min", Units.Minute / Units.Gallon),
            "K" => ("K", 1, "°F", 1.8),
            "N/m" => ("N/mm", 1e-3, "lbf/in", Units.Inch / Units.PoundForce),
            "m/N" => ("mm/N", 1e3, "in/lbf", Units.PoundForce / Units.Inch),
            "N/A" => ("N/A", 1, "lbf/A", 1 / Units.PoundForce),
            "kg/s" => ("kg/s", 1, "lb/s", 1 / Units.Pound),
            "Pa*s/m3" => ("Pa·s/m³", 1, "psi·s/ft³", Units.CubicFoot / Units.Psi),
            "J/kg" => ("kJ/kg", 1e-3, "BTU/lb", 1 / Units.BtuPerPound),
            "N*m" => ("N·m", 1, "lbf·in", 1 / (Units.PoundForce * Units.Inch)),
            "ohm" => ("ohm", 1, "ohm", 1),
            "H" => ("mH", 1e3, "mH", 1e3),
            "d" => ("days", 1, "days", 1),
            "deg" => ("°", 1, "°", 1),
            _ => (unit == "1" ? "" : unit, 1.0, unit == "1" ? "" : unit, 1.0),
        };
        return unit == "degC"
            ? Inch
                ? $"{Digits(Fahrenheit(si), digits)} °F"
                : $"{Digits(si, digits)} °C"
            : $"{Digits(si * (Inch ? perInch : perMetric), digits)} {(Inch ? inch : metric)}".TrimEnd();
    }

    // Kinds of quantity that have no writer of their own above; null where they are the same in both.
    private string? OfInches(double si, Dimension dimension) =>
        dimension switch
        {
            Dimension.Pressure => Pressure(si),
            Dimension.Density => Density(si),
            Dimension.SurfaceDensity => SurfaceDensity(si),
            Dimension.VolumeFlow => Flow(si),
            Dimension.Force => Force(si),
            Dimension.Torque => Torque(si),
            Dimension.Area
            or Dimension.Stiffness
            or Dimension.TemperatureDifference
            or Dimension.ForceFactor
            or Dimension.Compliance
            or Dimension.MechanicalResistance
            or Dimension.AcousticResistance
            or Dimension.SpecificHeat => InUnit(si, Units.SiName(dimension), 3),
            _ => null,
        };

    private static double Fahrenheit(double celsius) => celsius * 1.8 + 32;

    // Hundredths from one inch on, so that a printer's 10.08 in do not look like 10.
    private static string Inches(double inches) => Digits(inches, Math.Abs(inches) < 1 ? 3 : 3 + (int)Math.Floor(Math.Log10(Math.Abs(inches))));

    private static string Psi(double psi) => Math.Abs(psi) >= 1e4 ? $"{Digits(psi / 1e3, 3)} ksi" : $"{Digits(psi, 2)} psi";

    private static string Pounds(double kilograms) =>
        Math.Abs(kilograms) < 0.9995 * Units.Pound ? $"{Digits(kilograms / Units.Pound * 16, 3)} oz" : $"{Digits(kilograms / Units.Pound, 3)} lb";

    private static string Fixed(double value, int decimals)
    {
        var text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.').Length == 0 ? text.TrimStart('-') : text.Replace('-', '−');
    }

    // Significant digits without exponents and without trailing zeros after the point; whole numbers keep all their digits.
    private static string Digits(double value, int significant)
    {
        if (value == 0)
        {
            return "0";
        }

        var decimals = Math.Clamp(significant - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 12);
        var text = Fixed(value, decimals);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }
}
