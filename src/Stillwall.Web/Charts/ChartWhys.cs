using System.Globalization;

namespace Stillwall.Web.Charts;

/// <summary>Which result a cell of a chart's table comes from, where each has one of its own.</summary>
internal static class ChartWhys
{
    // Columns of the neighbour's table after the band, as in its results.
    private static readonly string[] BandResults = ["seat_db", "reduction_db", "neighbour_db", "uncertainty_db", "curve_db", "over_db"];

    /// <summary>Result behind one cell of a chart's table, and the candidate it is of; null where the whole line has one formula.</summary>
    internal static (string Result, string? Driver)? Cell(string chart, int row, int column, string head) =>
        (chart, column) switch
        {
            ("neighbour", >= 1) when column <= BandResults.Length => (
                string.Create(CultureInfo.InvariantCulture, $"quiet.bands[{row}].{BandResults[column - 1]}"),
                null
            ),
            ("price-and-level", 2) => ("box.max_spl_at_lowest_db", head),
            _ => null,
        };
}
