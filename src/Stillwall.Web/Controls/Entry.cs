using System.Globalization;
using System.Text.RegularExpressions;
using Stillwall.Projects;

namespace Stillwall.Web.Controls;

/// <summary>Turns what a person types into a stated value and back.</summary>
internal static partial class Entry
{
    private const int Digits = 6;

    /// <summary>Unit in which a key is shown.</summary>
    /// <param name="wished">Unit that the place wants; null for the usual one.</param>
    internal static string UnitOf(ModelField field, string? wished, bool inch) =>
        (wished, inch) switch
        {
            _ when field.Dimension == Dimension.None => "",
            ("mm", true) => "in",
            ("m", true) => "ft",
            ("kg", true) => "lb",
            ("g", true) => "oz",
            ("m2", true) => "ft2",
            ("m3", true) => "ft3",
            ("degC", true) => "degF",
            ({ } unit, _) => unit,
            (null, _) => Units.Of(field.Dimension) is [var first, ..] ? first.Name : "",
        };

    /// <summary>Id of a key's field on the page.</summary>
    internal static string IdOf(string key) => "f-" + key.Replace('.', '-').Replace('_', '-').Replace('[', '-').Replace("]", "", StringComparison.Ordinal);

    /// <summary>A stated value as it stands in a field.</summary>
    internal static string Shown(ModelField field, object? value, string unit) =>
        value switch
        {
            null => "",
            double number => Number(number, field.Dimension, unit),
            IReadOnlyList<double> numbers => string.Join("; ", numbers.Select(n => Number(n, field.Dimension, unit))),
            Amount { Dimension: Dimension.Length, Value: >= 1 } amount => $"{Number(amount.Value, Dimension.Length, "m")} m",
            DriverChoice choice => choice.Name ?? "",
            _ => ProjectKeys.Written(field, value),
        };

    /// <summary>What is typed, as it would stand in the file.</summary>
    internal static string Stated(ModelField field, string typed, string unit) =>
        field.Kind switch
        {
            FieldKind.Quantity => WithUnit(field, Pointed(typed), unit),
            FieldKind.Quantities => string.Join(", ", Parts(typed).Select(part => WithUnit(field, Pointed(part), unit))),
            FieldKind.Number or FieldKind.Whole => Pointed(typed),
            _ => typed.Trim(),
        };

    /// <summary>What is wrong with a stated value by itself; null where nothing is.</summary>
    internal static string? Fault(ModelField field, string stated)
    {
        var parts = field.Kind == FieldKind.Quantities ? stated.Split(", ") : [stated];
        if (field.Count is { } count && parts.Length != count)
        {
            return $"{parts.Length} entries; {field.Accepted}";
        }

        return parts
            .Select(part => field.TryRead(part, ProjectKeys.IsBare(field, part), out _, out var fault) ? null : fault)
            .FirstOrDefault(f => f is not null);
    }

    private static string[] Parts(string typed) => typed.Contains(';', StringComparison.Ordinal) ? typed.Split(';') : Commas().Split(typed.Trim());

    private static string Number(double si, Dimension dimension, string unit)
    {
        var found = Units.Of(dimension).FirstOrDefault(u => u.Name == unit);
        var value = found is null ? si : (si - found.Offset * found.Factor) / found.Factor;
        value = found is { Offset: not 0 } ? FromSi(si, found) : value;
        return value == 0
            ? "0"
            : Math.Round(value, Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 12)).ToString(CultureInfo.InvariantCulture);
    }

    private static double FromSi(double si, Unit unit) => (si - unit.Offset) / unit.Factor;

    private static string WithUnit(ModelField field, string typed, string unit) =>
        field.Dimension != Dimension.None && unit.Length > 0 && double.TryParse(typed, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            ? $"{typed} {unit}"
            : typed;

    // A comma between figures is a point, unless there is a point already.
    private static string Pointed(string typed) => typed.Contains('.', StringComparison.Ordinal) ? typed.Trim() : Comma().Replace(typed.Trim(), "$1.$2");

    [GeneratedRegex(@"(\d),(\d)", RegexOptions.CultureInvariant)]
    private static partial Regex Comma();

    [GeneratedRegex(@",\s+|\s{2,}", RegexOptions.CultureInvariant)]
    private static partial Regex Commas();
}
