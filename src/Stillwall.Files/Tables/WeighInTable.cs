using System.Globalization;
using System.Text;

namespace Stillwall.Files.Tables;

/// <summary>One weighing of a log.</summary>
/// <param name="Date">Day.</param>
/// <param name="MassKg">Mass on the scales, kg.</param>
public sealed record DatedMass(DateOnly Date, double MassKg);

/// <summary>Weighings that were read.</summary>
/// <param name="Rows">The weighings in the order of the file.</param>
/// <param name="Faults">What is wrong, one line each: line number, what, what is accepted.</param>
public sealed record WeighInReading(IReadOnlyList<DatedMass> Rows, IReadOnlyList<string> Faults);

/// <summary>Reads a log of weighings: CSV with the columns <c>date</c> and <c>mass_kg</c>.</summary>
public static class WeighInTable
{
    /// <summary>Largest file that is read, bytes.</summary>
    public const int GreatestLength = 1 << 20;

    private const double LeastKg = 1e-3,
        GreatestKg = 1e4;

    /// <summary>Reads a log.</summary>
    /// <param name="bytes">All of the file, UTF-8.</param>
    /// <returns>The weighings, or what is wrong with the file.</returns>
    public static WeighInReading Read(ReadOnlySpan<byte> bytes)
    {
        var lines = Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        var head = lines[0].Split(',').Select(c => c.Trim()).ToArray();
        var (date, mass) = (Array.IndexOf(head, "date"), Array.IndexOf(head, "mass_kg"));
        if (date < 0 || mass < 0)
        {
            return new WeighInReading([], [$"1: has no column {(date < 0 ? "date" : "mass_kg")}; a header with date and mass_kg"]);
        }

        var (rows, faults) = (new List<DatedMass>(), new List<string>());
        for (var i = 1; i < lines.Length; i++)
        {
            var cells = lines[i].Split(',').Select(c => c.Trim()).ToArray();
            if (lines[i].Trim().Length == 0)
            {
                continue;
            }

            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            if (cells.Length != head.Length)
            {
                faults.Add(
                    $"{number}: has {cells.Length.ToString(CultureInfo.InvariantCulture)} cells; {head.Length.ToString(CultureInfo.InvariantCulture)}, as "
                        + "in the header"
                );
            }
            else if (!DateOnly.TryParseExact(cells[date], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
            {
                faults.Add($"{number}: date: \"{cells[date]}\" is no date; year-month-day, such as 2026-11-16");
            }
            else if (!double.TryParse(cells[mass], NumberStyles.Float, CultureInfo.InvariantCulture, out var kg) || !(kg >= LeastKg && kg <= GreatestKg))
            {
                faults.Add($"{number}: mass_kg: \"{cells[mass]}\" is no mass; a bare number of kilograms, 0.001 to 10000");
            }
            else
            {
                rows.Add(new DatedMass(day, kg));
            }
        }

        return new WeighInReading(rows, faults);
    }
}
