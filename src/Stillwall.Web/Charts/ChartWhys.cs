using System.Globalization;

namespace Stillwall.Web.Charts;

/// <summary>Which result a chart's answer and which its line comes from, by the chart's name.</summary>
internal static class ChartWhys
{
    private static readonly Dictionary<string, (string Answer, string Line)> ByName = new(StringComparer.Ordinal)
    {
        ["how-low"] = ("box.f10_hz", "curve.spl_db"),
        ["how-loud"] = ("cabinet/loud-enough-and-what-gives-out-first", "curve.max_spl_db"),
        ["how-far"] = ("curve.excursion_peak_mm", "curve.excursion_peak_mm"),
        ["what-the-amplifier-feels"] = ("box.minimum_impedance_ohm", "curve.impedance_ohm"),
        ["price-and-level"] = ("box.max_spl_at_lowest_db", "box.max_spl_at_lowest_db"),
        ["how-quiet-are-the-walls"] = ("walls/wall-sound-below-the-cone", "walls/wall-sound-below-the-cone"),
        ["how-warm"] = ("pour.expected_peak_c", "pour.expected_peak_c"),
        ["neighbour"] = ("quiet/neighbour-at-the-everyday-level", "quiet/neighbour-at-the-everyday-level"),
        ["proof-impedance"] = ("proof.impedance[0]", "proof.impedance[0]"),
        ["proof-sweep"] = ("proof.sweep[0]", "proof.sweep[0]"),
    };

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

    /// <summary>Result behind the answer; null for a chart that is not known.</summary>
    internal static string? Answer(string chart) => ByName.TryGetValue(chart, out var found) ? found.Answer : null;

    /// <summary>Result behind the line; null for a chart that is not known.</summary>
    internal static string? Line(string chart) => ByName.TryGetValue(chart, out var found) ? found.Line : null;
}
