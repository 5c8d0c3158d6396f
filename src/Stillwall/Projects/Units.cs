using System.Globalization;

namespace Stillwall.Projects;

/// <summary>One unit: its name, the kind of quantity it measures, and how it becomes SI.</summary>
/// <param name="Name">Name as written, case matters.</param>
/// <param name="Dimension">Kind of quantity.</param>
/// <param name="Factor">SI value of one unit.</param>
/// <param name="Offset">SI value of zero units (temperatures only).</param>
public sealed record Unit(string Name, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>The power of ten that the factor is, or null where it is none or the unit has an offset.</summary>
    public int? PowerOfTen { get; } = Offset == 0 ? ExponentOf(Factor) : null;

    private static int? ExponentOf(double factor)
    {
        var exponent = (int)Math.Round(Math.Log10(factor));
        return double.Parse("1e" + exponent.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) == factor ? exponent : null;
    }
}

/// <summary>The table of units that people may write, in ASCII and typographic form.</summary>
/// <remarks>
/// Source: SI brochure 2019, and NIST SP 811 appendix B for inch, foot, pound and gallon (from memory; exact by definition).
/// </remarks>
public static class Units
{
    internal const double Inch = 0.0254,
        Foot = 0.3048,
        CubicFoot = Foot * Foot * Foot,
        Gallon = 231 * Inch * Inch * Inch,
        Pound = 0.45359237,
        PoundForce = 4.4482216152605,
        Psi = PoundForce / (Inch * Inch),
        BtuPerPound = 2326,
        Minute = 60,
        Hour = 3600,
        Day = 86400;

    private static readonly Unit[] All =
    [
        new("pc", Dimension.Count, 1),
        new("pcs", Dimension.Count, 1),
        new("mm", Dimension.Length, 1e-3),
        new("m", Dimension.Length, 1),
        new("cm", Dimension.Length, 1e-2),
        new("um", Dimension.Length, 1e-6),
        new("in", Dimension.Length, Inch),
        new("\"", Dimension.Length, Inch),
        new("ft", Dimension.Length, Foot),
        new("cm2", Dimension.Area, 1e-4),
        new("m2", Dimension.Area, 1),
        new("mm2", Dimension.Area, 1e-6),
        new("in2", Dimension.Area, Inch * Inch),
        new("ft2", Dimension.Area, Foot * Foot),
        new("L", Dimension.Volume, 1e-3),
        new("l", Dimension.Volume, 1e-3),
        new("mL", Dimension.Volume, 1e-6),
        new("ml", Dimension.Volume, 1e-6),
        new("m3", Dimension.Volume, 1),
        new("cm3", Dimension.Volume, 1e-6),
        new("mm3", Dimension.Volume, 1e-9),
        new("in3", Dimension.Volume, Inch * Inch * Inch),
        new("ft3", Dimension.Volume, CubicFoot),
        new("gal", Dimension.Volume, Gallon),
        new("kg", Dimension.Mass, 1),
        new("g", Dimension.Mass, 1e-3),
        new("mg", Dimension.Mass, 1e-6),
        new("t", Dimension.Mass, 1000),
        new("lb", Dimension.Mass, Pound),
        new("oz", Dimension.Mass, Pound / 16),
        new("s", Dimension.Time, 1),
        new("ms", Dimension.Time, 1e-3),
        new("min", Dimension.Time, Minute),
        new("h", Dimension.Time, Hour),
        new("d", Dimension.Time, Day),
        new("Hz", Dimension.Frequency, 1),
        new("kHz", Dimension.Frequency, 1e3),
        new("Pa", Dimension.Pressure, 1),
        new("hPa", Dimension.Pressure, 100),
        new("kPa", Dimension.Pressure, 1e3),
        new("MPa", Dimension.Pressure, 1e6),
        new("GPa", Dimension.Pressure, 1e9),
        new("mbar", Dimension.Pressure, 100),
        new("bar", Dimension.Pressure, 1e5),
        new("psi", Dimension.Pressure, Psi),
        new("W", Dimension.Power, 1),
        new("mW", Dimension.Power, 1e-3),
        new("kW", Dimension.Power, 1e3),
        new("ohm", Dimension.Resistance, 1),
        new("Ω", Dimension.Resistance, 1),
        new("mohm", Dimension.Resistance, 1e-3),
        new("kohm", Dimension.Resistance, 1e3),
        new("mΩ", Dimension.Resistance, 1e-3),
        new("kΩ", Dimension.Resistance, 1e3),
        new("mH", Dimension.Inductance, 1e-3),
        new("H", Dimension.Inductance, 1),
        new("uH", Dimension.Inductance, 1e-6),
        new("dB", Dimension.Level, 1),
        new("degC", Dimension.Temperature, 1),
        new("°C", Dimension.Temperature, 1),
        new("K", Dimension.Temperature, 1, -273.15),
        new("degF", Dimension.Temperature, 5.0 / 9, -160.0 / 9),
        new("°F", Dimension.Temperature, 5.0 / 9, -160.0 / 9),
        new("K", Dimension.TemperatureDifference, 1),
        new("N/m", Dimension.Stiffness, 1),
        new("kN/m", Dimension.Stiffness, 1e3),
        new("N/mm", Dimension.Stiffness, 1e3),
        new("kg/m3", Dimension.Density, 1),
        new("g/L", Dimension.Density, 1),
        new("kg/L", Dimension.Density, 1e3),
        new("g/cm3", Dimension.Density, 1e3),
        new("lb/ft3", Dimension.Density, Pound / CubicFoot),
        new("kg/m2", Dimension.SurfaceDensity, 1),
        new("g/cm2", Dimension.SurfaceDensity, 10),
        new("lb/ft2", Dimension.SurfaceDensity, Pound / (Foot * Foot)),
        new("L/min", Dimension.VolumeFlow, 1e-3 / Minute),
        new("L/s", Dimension.VolumeFlow, 1e-3),
        new("mL/s", Dimension.VolumeFlow, 1e-6),
        new("m3/s", Dimension.VolumeFlow, 1),
        new("N/A", Dimension.ForceFactor, 1),
        new("T*m", Dimension.ForceFactor, 1),
        new("T m", Dimension.ForceFactor, 1),
        new("Tm", Dimension.ForceFactor, 1),
        new("mm/N", Dimension.Compliance, 1e-3),
        new("um/N", Dimension.Compliance, 1e-6),
        new("m/N", Dimension.Compliance, 1),
        new("kg/s", Dimension.MechanicalResistance, 1),
        new("N*s/m", Dimension.MechanicalResistance, 1),
        new("N s/m", Dimension.MechanicalResistance, 1),
        new("Pa*s/m3", Dimension.AcousticResistance, 1),
        new("Pa s/m3", Dimension.AcousticResistance, 1),
        new("deg", Dimension.Angle, 1),
        new("°", Dimension.Angle, 1),
        new("rad", Dimension.Angle, 180 / Math.PI),
        new("kJ/kg", Dimension.SpecificHeat, 1e3),
        new("J/kg", Dimension.SpecificHeat, 1),
        new("N", Dimension.Force, 1),
        new("kN", Dimension.Force, 1e3),
        new("lbf", Dimension.Force, PoundForce),
        new("N*m", Dimension.Torque, 1),
        new("N m", Dimension.Torque, 1),
        new("Nm", Dimension.Torque, 1),
        new("in*lbf", Dimension.Torque, PoundForce * Inch),
        new("in lbf", Dimension.Torque, PoundForce * Inch),
    ];

    private static readonly Dictionary<(string, Dimension), Unit> ByName = All.ToDictionary(u => (u.Name, u.Dimension));

    /// <summary>The units of one kind of quantity, the usual one first.</summary>
    /// <param name="dimension">Kind of quantity.</param>
    /// <returns>The units in the order in which they are offered.</returns>
    public static IReadOnlyList<Unit> Of(Dimension dimension) => [.. All.Where(u => u.Dimension == dimension)];

    /// <summary>The SI unit of one kind of quantity; <c>1</c> for a bare number.</summary>
    internal static string SiName(Dimension dimension) => All.FirstOrDefault(u => u is { Factor: 1, Offset: 0 } && u.Dimension == dimension)?.Name ?? "1";

    /// <summary>Reads a quantity such as <c>"256 mm"</c>, <c>"1.1ft3"</c> or <c>"−9.5 dB"</c>.</summary>
    /// <param name="text">Number and unit; the space between them is optional, exponents are accepted, the decimal mark is a point.</param>
    /// <param name="dimension">Kind of quantity that is wanted.</param>
    /// <param name="value">The value in SI, when the result is true.</param>
    /// <param name="fault">What is wrong and what is accepted, when the result is false.</param>
    /// <returns>True when the text is a quantity of that kind.</returns>
    public static bool TryRead(string text, Dimension dimension, out double value, out string fault)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = Plain(text);
        var digits = NumberLength(plain);
        value = 0;
        var name = plain[digits..].Trim();
        var what =
            digits == 0 ? "is not a quantity"
            : name.Length == 0 ? "has no unit"
            : IsDecimalComma(name) ? "has a decimal comma, write a point"
            : !ByName.TryGetValue((name, dimension), out var unit) ? "has the wrong unit"
            : double.IsFinite(value = Si(plain[..digits], unit)) ? ""
            : "is beyond all reason";
        fault = what.Length == 0 ? "" : $"{Shown(text)} {what}; {Accepted(dimension)}";
        value = what.Length == 0 ? value : 0;
        return what.Length == 0;
    }

    /// <summary>Reads an amount of pieces, mass, length, area or volume, whichever its unit says.</summary>
    /// <param name="text">Number and unit.</param>
    /// <param name="amount">The amount, when the result is true.</param>
    /// <param name="fault">What is wrong and what is accepted, when the result is false.</param>
    /// <returns>True when the text is an amount.</returns>
    public static bool TryReadAmount(string text, out Amount amount, out string fault)
    {
        foreach (var dimension in AmountDimensions)
        {
            if (TryRead(text, dimension, out var value, out _))
            {
                amount = new Amount(value, dimension);
                fault = "";
                return true;
            }
        }

        amount = new Amount(0, Dimension.Count);
        fault = $"{Shown(text)} is not an amount; a number with pc, kg, g, lb, m, mm, ft, m2, L, mL or m3";
        return false;
    }

    /// <summary>Writes a value the way a person would state it, with as many digits as it needs.</summary>
    /// <param name="si">The value in SI.</param>
    /// <param name="dimension">Kind of quantity.</param>
    /// <returns>
    /// Number and unit, readable by <see cref="TryRead"/>; a bare number for <see cref="Dimension.None"/>. A value of up to 15 significant digits
    /// is read back exactly; one that needs more (the trace of a computation) is written with 12.
    /// </returns>
    public static string Write(double si, Dimension dimension)
    {
        if (dimension == Dimension.None)
        {
            return si.ToString("R", CultureInfo.InvariantCulture);
        }

        var unit = Usual(Math.Abs(si), dimension);
        if (unit.PowerOfTen is { } power)
        {
            return $"{Shifted(si, -power)} {unit.Name}";
        }

        var text = $"{((si - unit.Offset) / unit.Factor).ToString("G12", CultureInfo.InvariantCulture)} {unit.Name}";
        if (TryRead(text, dimension, out var back, out _) && back == si)
        {
            return text;
        }

        var plain = Of(dimension).First(u => u.PowerOfTen is not null);
        return $"{Shifted(si, -plain.PowerOfTen!.Value)} {plain.Name}";
    }

    /// <summary>Names the units accepted for one kind of quantity, for a message.</summary>
    /// <param name="dimension">Kind of quantity.</param>
    /// <returns>Words such as <c>a number with mm, m, cm, um, in, ", ft</c>.</returns>
    public static string Accepted(Dimension dimension) =>
        dimension switch
        {
            Dimension.None => "a bare number",
            Dimension.AcousticResistance => "a bare number in Pa s/m3, or a number with Pa s/m3",
            _ => $"a number with {string.Join(", ", Of(dimension).Select(u => u.Name).Distinct())}",
        };

    private static readonly Dimension[] AmountDimensions = [Dimension.Count, Dimension.Mass, Dimension.Length, Dimension.Area, Dimension.Volume];

    // Minus, micro (two), powers, middle dots (two), ohm sign, double prime, spaces that do not break or are thin (three) become the plain ones of the table.
    private static readonly (char Typographic, char Plain)[] Typographic =
    [
        ('\u2212', '-'),
        ('\u00B5', 'u'),
        ('\u03BC', 'u'),
        ('\u00B2', '2'),
        ('\u00B3', '3'),
        ('\u00B7', '*'),
        ('\u22C5', '*'),
        ('\u2126', '\u03A9'),
        ('\u2033', '"'),
        ('\u00A0', ' '),
        ('\u202F', ' '),
        ('\u2009', ' '),
    ];

    // "1,1 mm": what follows the digits is a comma and more digits.
    private static bool IsDecimalComma(string name) => name.Length > 1 && name[0] == ',' && char.IsAsciiDigit(name[1]);

    // The decimal point is moved in the text, so that "1.1 mm" is the double nearest to 0.0011 and not a product that rounds twice.
    private static double Si(string number, Unit unit)
    {
        if (unit.PowerOfTen is not { } power)
        {
            return double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture) * unit.Factor + unit.Offset;
        }

        var e = number.IndexOfAny(['e', 'E']);
        var exponent =
            e < 0 ? 0
            : int.TryParse(number.AsSpan(e + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var stated)
                ? Math.Clamp(stated, -100_000, 100_000)
            : number[e + 1] == '-' ? -100_000
            : 100_000;
        var moved = (exponent + power).ToString(CultureInfo.InvariantCulture);
        return double.Parse($"{(e < 0 ? number : number[..e])}e{moved}", NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    // The number times a power of ten, in decimal: 15 digits where they give the value back, else 12.
    private static string Shifted(double number, int power)
    {
        if (number == 0 || !double.IsFinite(number))
        {
            return number.ToString(CultureInfo.InvariantCulture);
        }

        var text = number.ToString("E14", CultureInfo.InvariantCulture);
        if (double.Parse(text, CultureInfo.InvariantCulture) != number)
        {
            text = number.ToString("E11", CultureInfo.InvariantCulture);
        }

        var e = text.IndexOf('E', StringComparison.Ordinal);
        var exponent = int.Parse(text.AsSpan(e + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture) + power;
        var sign = number < 0 ? "-" : "";
        var digits = text[..e].Replace("-", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal).TrimEnd('0');
        return sign
            + exponent switch
            {
                < -7 or > 15 => $"{digits[0]}{(digits.Length > 1 ? "." : "")}{digits[1..]}e{exponent.ToString(CultureInfo.InvariantCulture)}",
                < 0 => $"0.{new string('0', -exponent - 1)}{digits}",
                _ when digits.Length <= exponent + 1 => digits.PadRight(exponent + 1, '0'),
                _ => $"{digits[..(exponent + 1)]}.{digits[(exponent + 1)..]}",
            };
    }

    private static string Plain(string text)
    {
        var t = text.Trim();
        foreach (var (typographic, plain) in Typographic)
        {
            t = t.Replace(typographic, plain);
        }

        return t;
    }

    private static int NumberLength(string text)
    {
        var i = 0;
        int Digits()
        {
            var start = i;
            while (i < text.Length && char.IsAsciiDigit(text[i]))
            {
                i++;
            }

            return i - start;
        }

        if (i < text.Length && text[i] is '-' or '+')
        {
            i++;
        }

        var digits = Digits();
        if (i < text.Length && text[i] == '.')
        {
            i++;
            digits += Digits();
        }

        if (digits == 0)
        {
            return 0;
        }

        var end = i;
        if (i < text.Length && text[i] is 'e' or 'E')
        {
            i++;
            if (i < text.Length && text[i] is '-' or '+')
            {
                i++;
            }

            end = Digits() > 0 ? i : end;
        }

        return end;
    }

    private static Unit Usual(double size, Dimension dimension) =>
        dimension switch
        {
            Dimension.Length when size >= 10 => Named("m", dimension),
            Dimension.Time when size >= 7200 => Named("h", dimension),
            Dimension.Time when size >= 120 => Named("min", dimension),
            Dimension.Mass when size is > 0 and < 0.1 => Named("g", dimension),
            Dimension.Pressure when size >= 1e8 => Named("GPa", dimension),
            Dimension.Pressure when size >= 1e5 && size != 101325 => Named("MPa", dimension),
            _ => Of(dimension)[0],
        };

    private static Unit Named(string name, Dimension dimension) => ByName[(name, dimension)];

    internal static string Shown(string text) => ModelField.Shorten(text, isNumber: false);
}
