using Spectre.Console;
using Stillwall.Cli.Running;

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
    internal static string Of(Terminal terminal, string title, IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table { ShowHeaders = header.Any(h => h.Length > 0), Border = TableBorder.None };
        foreach (var head in header)
        {
            var column = new TableColumn(new Text(head.TrimStart('>'), new Style(decoration: Decoration.Dim))) { Padding = new Padding(1, 0, 2, 0), NoWrap = head.StartsWith('>') };
            table.AddColumn(head.StartsWith('>') ? column.RightAligned() : column);
        }

        foreach (var row in rows)
        {
            table.AddRow(row.Select(cell => new Text(cell)));
        }

        using var writer = new StringWriter();
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = terminal.HasColour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = terminal.HasColour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
            Out = new AnsiConsoleOutput(writer),
        });
        console.Profile.Width = terminal.Width;
        console.Profile.Capabilities.Unicode = true;
        console.Write(table);
        var lines = writer.ToString().ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(line => line.TrimEnd());
        return $"{Ink.Strong(terminal, title)}\n{string.Join('\n', lines)}\n";
    }
}
