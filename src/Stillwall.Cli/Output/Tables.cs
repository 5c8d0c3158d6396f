using Spectre.Console;
using Stillwall.Cli.Running;
using Stillwall.Files;

namespace Stillwall.Cli.Output;

/// <summary>Tables for people.</summary>
internal static class Tables
{
    /// <summary>Sets a table.</summary>
    /// <param name="terminal">Where it is read: width and colour.</param>
    /// <param name="title">What stands above it.</param>
    /// <param name="header">Heads of the columns; all empty leaves them out. One that begins with <c>&gt;</c> is set to the right.</param>
    /// <param name="rows">Cells in the order of the heads.</param>
    /// <returns>The table, a line feed at its end.</returns>
    /// <remarks>Where the table is too wide for the terminal each row becomes a few lines: no cell is ever broken letter by letter.</remarks>
    internal static string Of(Terminal terminal, string title, IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string>> rows)
    {
        var cells = rows.Select(row => (IReadOnlyList<string>)[.. row.Select(cell => Visible.Of(cell))]).ToList();
        var lines = Beside(terminal, header, cells);
        var isWide = Beside(terminal with { HasColour = false }, header, cells).Any(l => l.Length > terminal.Width);
        return $"{Ink.Strong(terminal, Words.Wrapped(title, terminal.Width))}\n{string.Join('\n', isWide ? Below(terminal, header, cells) : lines)}\n";
    }

    private static IReadOnlyList<string> Beside(Terminal terminal, IReadOnlyList<string> header, List<IReadOnlyList<string>> rows)
    {
        var table = new Table { ShowHeaders = header.Any(h => h.Length > 0), Border = TableBorder.None };
        foreach (var head in header)
        {
            var column = new TableColumn(new Text(head.TrimStart('>'), new Style(decoration: Decoration.Dim)))
            {
                Padding = new Padding(1, 0, 2, 0),
                NoWrap = head.StartsWith('>'),
            };
            table.AddColumn(head.StartsWith('>') ? column.RightAligned() : column);
        }

        foreach (var row in rows)
        {
            table.AddRow(row.Select(cell => new Text(cell)));
        }

        using var writer = new StringWriter();
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = terminal.HasColour ? AnsiSupport.Yes : AnsiSupport.No,
                ColorSystem = terminal.HasColour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
                Interactive = InteractionSupport.No,
                Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
                Out = new AnsiConsoleOutput(writer),
            }
        );
        console.Profile.Width = Widest;
        console.Profile.Capabilities.Unicode = true;
        console.Write(table);
        return [.. Ink.Taken(writer.ToString()).ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => line.TrimEnd())];
    }

    // Names beside what they name where there are no heads; else the row's name, and under it each cell after its head.
    private static IEnumerable<string> Below(Terminal terminal, IReadOnlyList<string> header, List<IReadOnlyList<string>> rows)
    {
        if (header.All(h => h.Length == 0))
        {
            var column = rows.Max(r => r[0].Length) + 2;
            return column <= terminal.Width / 2
                ? rows.Select(r => r[0].PadRight(column) + Words.Wrapped(string.Join(' ', r.Skip(1)), terminal.Width, column, column))
                : rows.SelectMany(r => new[] { r[0], Indented(string.Join(' ', r.Skip(1)), terminal.Width, 2) });
        }

        var names = header[0].Length == 0 ? 2 : 1;
        return rows.SelectMany(r =>
        {
            var name = string.Join(' ', r.Take(names)).TrimEnd();
            var said = string.Join("; ", r.Index().Skip(names).Where(c => c.Item.Length > 0).Select(c => $"{header[c.Index].TrimStart('>')} {c.Item}"));
            return said.Length == 0 ? [name] : new[] { name, Indented(said, terminal.Width, name.Length - name.TrimStart().Length + 2) };
        });
    }

    private static string Indented(string text, int width, int indent) => new string(' ', indent) + Words.Wrapped(text, width, indent, indent);

    private const int Widest = 1000;
}
