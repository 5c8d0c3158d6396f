using System.Globalization;

namespace Stillwall.Tests.Pours;

/// <summary>One row of tests/data/casts/gypsum.csv; cells that are empty are null.</summary>
internal sealed record GypsumRow(
    double WaterPerPowder,
    double Slurry,
    double DryComputed,
    double? DryTable,
    double? StrengthLow,
    double? StrengthHigh,
    double Porosity,
    double[] Rises
)
{
    internal static IReadOnlyList<GypsumRow> All { get; } =
    [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", "casts", "gypsum.csv")).Skip(1).Where(l => l.Length > 0).Select(Read)];

    private static GypsumRow Read(string line)
    {
        double?[] cells = [.. line.Split(',').Select(c => c.Length == 0 ? (double?)null : double.Parse(c, CultureInfo.InvariantCulture))];
        return new GypsumRow(
            cells[0]!.Value,
            cells[1]!.Value,
            cells[2]!.Value,
            cells[3],
            cells[4],
            cells[5],
            cells[6]!.Value,
            [.. cells[7..].Select(c => c!.Value)]
        );
    }
}
