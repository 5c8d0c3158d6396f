using System.Globalization;
using Stillwall.Projects;

namespace Stillwall.Files.Tables;

/// <summary>One column of the drivers' table: how a cell is read and where it goes, found out once.</summary>
internal sealed class DriverColumn
{
    private readonly Action<DriverSheet, string>? setText;
    private readonly Action<DriverSheet, double?>? setNumber;
    private readonly Action<DriverSheet, int?>? setWhole;
    private readonly WithinAttribute? span;
    private readonly double perUnit;

    private DriverColumn(ModelField field)
    {
        Name = field.Column!.Name;
        span = field.Span;
        // Division by 1000 gives the double nearest to the decimal that was written; multiplication by 0.001 often misses it by a bit.
        perUnit = Math.Round(1 / field.Column.ToSi, 6);
        var setter = field.Property.SetMethod!;
        setText = field.Kind == FieldKind.Text ? setter.CreateDelegate<Action<DriverSheet, string>>() : null;
        setWhole = field.Kind == FieldKind.Whole ? setter.CreateDelegate<Action<DriverSheet, int?>>() : null;
        setNumber = setText is null && setWhole is null ? setter.CreateDelegate<Action<DriverSheet, double?>>() : null;
    }

    /// <summary>Every column, in the order of the model.</summary>
    internal static IReadOnlyList<DriverColumn> All { get; } =
    [.. ModelBlock.Of(typeof(DriverSheet)).Fields.Where(f => f.Column is not null).Select(f => new DriverColumn(f))];

    internal string Name { get; }

    /// <summary>Puts a cell into the sheet.</summary>
    /// <returns>What is wrong and what is accepted, or null.</returns>
    internal string? Read(DriverSheet sheet, string cell)
    {
        if (setText is not null)
        {
            return ReadText(sheet, cell);
        }

        if (!double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number))
        {
            return
                cell.Contains(',', StringComparison.Ordinal) && double.TryParse(cell.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out _)
                ? $"{Shown(cell)} has a decimal comma; a number with a point"
                : $"{Shown(cell)} is not a number; {Accepted}";
        }

        var si = number / perUnit;
        if (span is not null && !(si >= span.Least && si <= span.Greatest))
        {
            return $"{Text(number)} is out of range; {Accepted}";
        }

        if (setWhole is not null)
        {
            if (number != Math.Floor(number))
            {
                return $"{Text(number)} is not whole; {Accepted}";
            }

            setWhole(sheet, (int)number);
        }

        setNumber?.Invoke(sheet, si);
        return null;
    }

    private string? ReadText(DriverSheet sheet, string cell)
    {
        if (cell.Any(char.IsControl))
        {
            return $"{Shown(cell)} has a line break or control character in it; plain text";
        }

        if (cell.Length > 200)
        {
            return $"is {cell.Length.ToString(CultureInfo.InvariantCulture)} characters long; at most 200";
        }

        setText!(sheet, cell);
        return null;
    }

    private string Accepted =>
        $"a {(setWhole is null ? "" : "whole ")}number" + (span is null ? "" : $", {Text(span.Least * perUnit)} to {Text(span.Greatest * perUnit)}");

    // Nine digits hide the trace of the conversion; cells of a data sheet have four or five.
    private static string Text(double number) => number.ToString("G9", CultureInfo.InvariantCulture);

    private static string Shown(string cell) => cell.Length > 40 ? $"\"{cell[..40]}…\"" : $"\"{cell}\"";
}
