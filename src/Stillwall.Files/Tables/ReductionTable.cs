using System.Globalization;
using System.Text;
using Stillwall.Materials;

namespace Stillwall.Files.Tables;

/// <summary>A wall's sound reduction as a data sheet prints it: one third-octave a line.</summary>
/// <param name="ReductionDb">Sound reduction by the band's name, Hz and dB.</param>
/// <param name="Faults">What is wrong, each with its line.</param>
public sealed record ReductionTable(IReadOnlyDictionary<double, double> ReductionDb, IReadOnlyList<string> Faults)
{
    /// <summary>Largest file that is read, bytes.</summary>
    public const int GreatestLength = 1 << 20;

    /// <summary>Reads a table: columns band and reduction, one header line may stand above.</summary>
    /// <param name="bytes">The file.</param>
    /// <returns>The rows, or what is wrong with them.</returns>
    public static ReductionTable Read(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var (rows, faults) = (new Dictionary<double, double>(), new List<string>());
        var lines = Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        foreach (var (index, line) in lines.Index().Where(l => l.Item.Trim().Length > 0))
        {
            var cells = line.Split(',').Select(cell => cell.Trim().Trim('"')).ToArray();
            var isHeader = rows.Count == 0 && faults.Count == 0 && !TryNumber(cells[0], out _);
            if (!isHeader && Fault(cells, rows) is { } fault)
            {
                faults.Add($"{(index + 1).ToString(CultureInfo.InvariantCulture)}: {fault}");
            }
        }

        return new(rows, faults);
    }

    private static string? Fault(string[] cells, Dictionary<double, double> rows)
    {
        if (!TryNumber(cells[0], out var band) || !RatedWall.BandsHz.Contains(band))
        {
            return $"\"{Shortened(cells[0])}\" is no third-octave; 20, 25, 31.5 … 5000 by their names";
        }

        if (cells.Length < 2 || !TryNumber(cells[1], out var reduction) || reduction is not (>= -50 and <= 150))
        {
            return $"\"{Shortened(cells.Length < 2 ? "" : cells[1])}\" is no sound reduction; −50 to 150, in dB";
        }

        return rows.TryAdd(band, reduction) ? null : $"{band.ToString(CultureInfo.InvariantCulture)} Hz stands here twice; each band once";
    }

    private static bool TryNumber(string cell, out double number) =>
        double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);

    private static string Shortened(string cell) => cell.Length > 40 ? cell[..39] + "…" : cell;
}
