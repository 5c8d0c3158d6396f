using System.Globalization;
using System.Text;

namespace Stillwall.Files.Tables;

/// <summary>Writes a table of numbers as CSV: header, comma, decimal point, line feed, no byte order mark.</summary>
public static class CsvText
{
    /// <summary>Writes a table.</summary>
    /// <param name="header">Names of the columns.</param>
    /// <param name="rows">Cells in the order of the header; an unknown value is null and becomes an empty cell.</param>
    /// <returns>The text; numbers in the shortest form that reads back as the same number.</returns>
    /// <exception cref="ArgumentException">
    /// A row of another length than the header, a number that is not finite, or a header that would need quotation.
    /// </exception>
    public static string Write(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<double?>> rows)
    {
        ArgumentNullException.ThrowIfNull(header);
        ArgumentNullException.ThrowIfNull(rows);
        if (header.FirstOrDefault(name => name.AsSpan().IndexOfAny(",\"\r\n") >= 0) is { } bad)
        {
            throw new ArgumentException($"the column \"{bad}\" would need quotation; a name without comma, quotation mark or line break", nameof(header));
        }

        var text = new StringBuilder();
        text.AppendJoin(',', header).Append('\n');
        foreach (var row in rows)
        {
            if (row.Count != header.Count)
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"a row of {row.Count} cells; {header.Count}, as in the header"),
                    nameof(rows)
                );
            }

            text.AppendJoin(',', row.Select(Cell)).Append('\n');
        }

        return text.ToString();
    }

    private static string Cell(double? value) =>
        value switch
        {
            null => "",
            { } number when double.IsFinite(number) => number.ToString("R", CultureInfo.InvariantCulture),
            { } number => throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{number} in a cell; a finite number, or null where it is unknown"),
                nameof(value)
            ),
        };
}
