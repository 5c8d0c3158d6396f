using Stillwall.Neighbours.Equalisers;

namespace Stillwall.Files.Tables;

/// <summary>The coefficients of an equaliser as a table: a row for each section at each sampling rate.</summary>
public static class EqualiserTable
{
    private static readonly string[] Header = ["section", "f0_hz", "q", "gain_db", "rate_hz", "b0", "b1", "b2", "a0", "a1", "a2"];

    /// <summary>The rows.</summary>
    /// <param name="report">The equaliser.</param>
    /// <returns>Values in the order of the header; none where no equaliser is needed.</returns>
    /// <exception cref="ArgumentNullException">No report.</exception>
    public static IReadOnlyList<IReadOnlyList<double?>> Rows(EqualiserReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return
        [
            .. report.Sections.SelectMany(
                (s, i) => s.Digital.Select(d => (IReadOnlyList<double?>)[i + 1, s.Section.F0Hz, s.Section.Q, s.Section.GainDb, d.RateHz, .. d.B, .. d.A])
            ),
        ];
    }

    /// <summary>The table as text.</summary>
    /// <param name="report">The equaliser.</param>
    /// <returns>Comma-separated text after RFC 4180, every digit of a coefficient in it.</returns>
    /// <exception cref="ArgumentNullException">No report.</exception>
    public static string Write(EqualiserReport report) => CsvText.Write(Header, Rows(report));
}
