using System.Globalization;
using System.Text;
using CsvHelper;
using Stillwall.Files.Projects;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Files.Tables;

/// <summary>One row of the drivers' table.</summary>
/// <param name="Line">Line in the file on which it begins, from 1.</param>
/// <param name="Sheet">The data sheet, as far as its cells could be read.</param>
/// <param name="Faults">What is wrong with the row; a row with faults is not fit to be ranked.</param>
public sealed record DriverRow(int Line, DriverSheet Sheet, IReadOnlyList<Fault> Faults);

/// <summary>The candidate drivers: the contents of <c>drivers.csv</c>.</summary>
/// <param name="Rows">The rows, in the order of the file.</param>
/// <param name="Faults">What is wrong with the table as a whole: its header, its size, its encoding.</param>
public sealed record DriverTable(IReadOnlyList<DriverRow> Rows, IReadOnlyList<Fault> Faults)
{
    /// <summary>Most rows that are read.</summary>
    public const int MostRows = 20_000;

    /// <summary>Most bytes that a table may have: 16 MB.</summary>
    public const int GreatestLength = 16 << 20;

    /// <summary>Columns that must be there and filled in every row.</summary>
    public static IReadOnlyList<string> Needed { get; } = ["name", "re_ohm", "fs_hz", "qms", "qes", "vas_l", "sd_cm2"];

    /// <summary>Everything that is wrong, of the table first, then row by row.</summary>
    public IEnumerable<Fault> AllFaults => Faults.Concat(Rows.SelectMany(r => r.Faults));

    /// <summary>Reads the table from the bytes of its file.</summary>
    /// <param name="bytes">UTF-8, with or without a byte order mark, at most <see cref="GreatestLength"/>.</param>
    /// <param name="file">Name of the file, for the faults.</param>
    /// <returns>Rows and faults.</returns>
    public static DriverTable Read(ReadOnlySpan<byte> bytes, string file = "drivers.csv")
    {
        if (bytes.Length > GreatestLength)
        {
            return new DriverTable([], [new Fault(file, 1, "$", $"is too long; at most {GreatestLength >> 20} MB")]);
        }

        return PositionedJson.EncodingFault(bytes) is { } fault
            ? new DriverTable([], [new Fault(file, fault.Line, "$", fault.Message)])
            : Read(Encoding.UTF8.GetString(bytes), file);
    }

    /// <summary>Reads the table from a text.</summary>
    /// <param name="text">Header and rows: comma, decimal point, columns in any order; cells may be quoted.</param>
    /// <param name="file">Name of the file, for the faults.</param>
    /// <returns>Rows and faults.</returns>
    public static DriverTable Read(string text, string file = "drivers.csv")
    {
        ArgumentNullException.ThrowIfNull(text);
        return new DriverTableReader(file).Read(text.StartsWith('\uFEFF') ? text[1..] : text);
    }
}

/// <summary>One reading of a drivers' table: the faults gather here, nothing outlives it.</summary>
internal sealed class DriverTableReader(string file)
{
    private const int LongestCell = 10_000;

    // Four times what there is to be known of a driver (our choice).
    private const int MostColumns = 100;

    private readonly List<Fault> tableFaults = [];
    private readonly List<DriverRow> rows = [];
    private readonly HashSet<int> misquoted = [];
    private readonly Dictionary<string, int> lineOfName = new(StringComparer.Ordinal);
    private DriverColumn?[] columns = [];
    private bool[] needed = [];

    internal DriverTable Read(string text)
    {
        var options = new CsvReaderOptions
        {
            Separator = ',',
            HasHeader = false,
            TrimWhitespace = true,
            TrackLineNumbers = true,
            // One quotation mark that is not closed then spoils its own line and no other.
            AllowLineBreaksInQuotes = false,
            OnMalformedRecord = record => misquoted.Add((int)record.LineNumber),
        };
        using var cells = CsvReader.FromText(text, options);
        var hasHeader = false;
        while ((tableFaults.Count == 0 || rows.Count < DriverTable.MostRows) && cells.Read())
        {
            var line = (int)cells.LineNumber;
            if (IsBlank(cells))
            {
                continue;
            }

            if (!hasHeader)
            {
                hasHeader = true;
                if (!Header(cells, line))
                {
                    break;
                }
            }
            else if (rows.Count == DriverTable.MostRows)
            {
                Tell(tableFaults, line, "$", $"has more than {Count(DriverTable.MostRows)} rows; at most {Count(DriverTable.MostRows)}");
            }
            else
            {
                rows.Add(Row(cells, line));
            }
        }

        if (!hasHeader)
        {
            Tell(tableFaults, 1, "$", $"is empty; a header with {string.Join(", ", DriverTable.Needed)}");
        }

        return new DriverTable(rows, tableFaults);
    }

    private bool Header(CsvReader cells, int line)
    {
        var names = Enumerable.Range(0, cells.FieldCount).Select(i => cells.GetString(i)).ToArray();
        if (names.Length == 1 && names[0].AsSpan().IndexOfAny(";\t") >= 0)
        {
            Tell(tableFaults, line, "$", "columns are not separated by commas; commas between columns, points in numbers");
            return false;
        }

        if (names.Length > MostColumns)
        {
            Tell(tableFaults, line, "$", $"has {Count(names.Length)} columns; at most {Count(MostColumns)}");
            return false;
        }

        columns = new DriverColumn?[names.Length];
        var known = DriverColumn.All.Select(c => c.Name).ToArray();
        var meant = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < names.Length; i++)
        {
            columns[i] = DriverColumn.All.FirstOrDefault(c => c.Name == names[i]);
            if (columns[i] is null)
            {
                UnknownColumn(line, i, names[i], known, meant);
            }
            else if (names.AsSpan(0, i).Contains(names[i]))
            {
                Tell(tableFaults, line, names[i], "stands in the header twice; each column once");
            }
        }

        foreach (var name in DriverTable.Needed.Where(n => !names.Contains(n) && !meant.Contains(n)))
        {
            Tell(tableFaults, line, name, $"this column is missing; {string.Join(", ", DriverTable.Needed)} are needed");
        }

        needed = [.. columns.Select(c => c is not null && DriverTable.Needed.Contains(c.Name))];
        return true;
    }

    private void UnknownColumn(int line, int index, string name, string[] known, HashSet<string> meant)
    {
        if (name.Length == 0)
        {
            Tell(tableFaults, line, Position(index), "has no name in the header; the name of a column");
            return;
        }

        var nearest = NearestWord.Of(name, known);
        Tell(tableFaults, line, name, $"is not a known column{(nearest is null ? "" : $" (did you mean \"{nearest}\"?)")}; one of {string.Join(", ", known)}");
        if (nearest is not null)
        {
            meant.Add(nearest);
        }
    }

    private DriverRow Row(CsvReader cells, int line)
    {
        var sheet = new DriverSheet();
        List<Fault>? faults = null;
        void Add(string path, string message) => Tell(faults ??= [], line, path, message);

        if (misquoted.Contains(line))
        {
            Add("$", "a quotation mark stands alone; a pair round the whole cell, doubled inside it, or none");
            return new DriverRow(line, sheet, faults!);
        }

        if (cells.FieldCount > columns.Length)
        {
            Add("$", $"has {Count(cells.FieldCount)} cells for {Count(columns.Length)} columns; numbers with a point, texts with a comma in quotation marks");
            return new DriverRow(line, sheet, faults!);
        }

        for (var i = 0; i < columns.Length; i++)
        {
            var cell = i < cells.FieldCount ? cells.GetString(i) : "";
            var message =
                cell.Length > LongestCell ? "is far too long; a name or a number"
                : cell.Length > 0 ? columns[i]?.Read(sheet, cell)
                : needed[i] ? "is empty; this cell is needed"
                : null;
            if (message is not null)
            {
                Add(columns[i]?.Name ?? Position(i), message);
            }
        }

        if (Impossible(sheet) is { } impossible)
        {
            Add("sd_cm2", impossible);
        }

        if (!lineOfName.TryAdd(sheet.Name, line) && sheet.Name != Unnamed)
        {
            Add("name", $"\"{sheet.Name}\" is on line {Count(lineOfName[sheet.Name])} already; each name once");
        }

        return new DriverRow(line, sheet, faults is null ? [] : faults);
    }

    private static readonly string Unnamed = new DriverSheet().Name;

    // The cone lies within the frame: the flange where its size is stated, else the nominal size.
    private static string? Impossible(DriverSheet sheet)
    {
        if (sheet.SdM2 is not { } sdM2 || (sheet.FlangeM ?? sheet.DiameterM) is not { } frameM)
        {
            return null;
        }

        var frameM2 = Math.PI / 4 * frameM * frameM;
        return sdM2 <= frameM2
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{sdM2 * 1e4:0.##} is larger than the {(sheet.FlangeM is null ? "driver" : "flange")} of {frameM.InMillimetres():0.##} mm; "
                    + $"less than {frameM2 * 1e4:0.#}"
            );
    }

    private static bool IsBlank(CsvReader cells)
    {
        for (var i = 0; i < cells.FieldCount; i++)
        {
            if (cells.GetString(i).Length > 0)
            {
                return false;
            }
        }

        return true;
    }

    private static string Position(int index) => $"column {Count(index + 1)}";

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    private void Tell(List<Fault> faults, int line, string path, string message) => faults.Add(new Fault(file, line, path, message));
}
