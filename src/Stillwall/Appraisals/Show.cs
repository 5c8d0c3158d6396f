using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Appraisals;

/// <summary>Writes numbers for people: with a unit, with sensible digits, metric or inch.</summary>
/// <param name="Inch">Whether sizes and masses are shown in inches and pounds.</param>
/// <param name="Currency">Currency of prices.</param>
public sealed record Show(bool Inch, string Currency)
{
    /// <summary>The way a project wants its numbers.</summary>
    /// <param name="project">The project.</param>
    /// <returns>The writer.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public static Show Of(Project project)
    {
        ArgumentNullException.ThrowIfNull(project);
        return new Show(project.DisplayUnits == "inch", project.Currency);
    }

    /// <summary>A length.</summary>
    /// <param name="metres">Length, m.</param>
    /// <returns>Millimetres, or inches.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public string Length(double metres) => Inch ? $"{Digits(metres / 0.0254, 3)} in" : $"{Digits(metres * 1e3, 3)} mm";

    /// <summary>A volume.</summary>
    /// <param name="cubicMetres">Volume, m³.</param>
    /// <returns>Litres, or cubic feet.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public string Volume(double cubicMetres) => Inch ? $"{Digits(cubicMetres / 0.028316846592, 3)} ft³" : $"{Digits(cubicMetres * 1e3, 3)} L";

    /// <summary>A mass.</summary>
    /// <param name="kilograms">Mass, kg.</param>
    /// <returns>Kilograms or grams, or pounds.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public string Mass(double kilograms) => Inch ? $"{Digits(kilograms / 0.45359237, 3)} lb" : kilograms < 0.9995 ? $"{Digits(kilograms * 1e3, 3)} g" : $"{Digits(kilograms, 3)} kg";

    /// <summary>A frequency.</summary>
    /// <param name="hertz">Frequency, Hz.</param>
    /// <returns>Hertz.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public static string Frequency(double hertz) => $"{Digits(hertz, 3)} Hz";

    /// <summary>A level or a level difference.</summary>
    /// <param name="decibels">Level, dB.</param>
    /// <returns>Decibels with one decimal.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public static string Level(double decibels) => $"{Fixed(decibels, 1)} dB";

    /// <summary>A temperature.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <returns>Degrees Celsius, or Fahrenheit beside inches.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public string Temperature(double celsius) => Inch ? $"{Fixed(celsius * 1.8 + 32, 0)} °F" : $"{Fixed(celsius, 0)} °C";

    /// <summary>A time.</summary>
    /// <param name="seconds">Time, s.</param>
    /// <returns>Seconds, minutes or hours.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public static string Time(double seconds) => Math.Abs(seconds) switch
    {
        < 90 => $"{Digits(seconds, 2)} s",
        < 7200 => $"{Digits(seconds / 60, 2)} min",
        < 4 * 86400 => $"{Digits(seconds / 3600, 2)} h",
        _ => $"{Digits(seconds / 86400, 2)} days",
    };

    /// <summary>A sum of money.</summary>
    /// <param name="amount">The sum, in the project's currency.</param>
    /// <returns>Whole units; two decimals below twenty.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public string Money(double amount) => $"{Fixed(amount, Math.Abs(amount) is > 0 and < 20 ? 2 : 0)} {Currency}";

    /// <summary>A ratio as a percentage.</summary>
    /// <param name="ratio">The ratio.</param>
    /// <returns>Per cent.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public static string Percent(double ratio) => $"{Digits(ratio * 100, 2)} %";

    /// <summary>A bare number.</summary>
    /// <param name="value">The number.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    /// <returns>The number.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public static string Number(double value, int digits = 3) => Digits(value, digits);

    /// <summary>A stated quantity of any kind.</summary>
    /// <param name="si">The value in SI.</param>
    /// <param name="dimension">Kind of quantity.</param>
    /// <returns>Number and unit.</returns>
    /// <remarks>Source: our choice of digits.</remarks>
    public string Stated(double si, Dimension dimension) => dimension switch
    {
        Dimension.Length => Length(si),
        Dimension.Volume => Volume(si),
        Dimension.Mass => Mass(si),
        Dimension.Frequency => Frequency(si),
        Dimension.Level => Level(si),
        Dimension.Temperature => Temperature(si),
        Dimension.Time => Time(si),
        Dimension.None => Digits(si, 4),
        _ => Units.Write(double.Parse(si.ToString("G3", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), dimension),
    };

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
