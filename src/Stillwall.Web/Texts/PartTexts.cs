using Stillwall.Appraisals;
using Stillwall.Figures.Sheets;
using Stillwall.Projects;

namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Parts.</summary>
internal static class PartTexts
{
    internal const string Hint = "Everything to print, as it stands on the printer's bed.",
        Nothing = "The cabinet's sizes and walls are needed before its parts can be drawn; see Cabinet.";
    internal const string All3mf = "All parts, 3MF",
        AllStl = "All parts, STL",
        AllSheets = "All sheets, SVG",
        List = "Parts",
        Part = "part",
        Size = "size as printed",
        Mass = "mass",
        Time = "least time",
        Fits = "fits the printer",
        Files = "file",
        Turned = "The parts in their places",
        Yes = "yes",
        No = "no";
    internal const string Least = "Times are a floor: volume over flow, and a pause at each layer. STL is in millimetres.",
        Sheets = "Sheets",
        ActualSize = "Print at actual size, not fitted to the page; then the scales are true. On a template, measure the check line first.";

    internal static string MassOf(string part) => $"mass of the {part}";

    internal static string TimeOf(string part) => $"least time of the {part}";

    internal static string SizeOf(string part) => $"size of the {part}";

    /// <summary>What the printing takes altogether.</summary>
    internal static IEnumerable<(string Text, string Of, string What)> Totals(Facts facts)
    {
        var (print, show) = (facts.Print, facts.Show);
        (double? Value, Func<double, string> Text, string Of, string What)[] all =
        [
            (print.FilamentKg, show.Mass, "print.filament_kg", "of plastic"),
            (print.FilamentToHaveKg, show.Mass, "print.filament_to_have_kg", "to have"),
            (print.HonestPrintSeconds?[0], s => $"{Math.Round(s / Units.Hour)} h", "print.honest_print_seconds[0]", "of printing at least"),
            (print.HonestPrintSeconds?[1], s => $"{Math.Round(s / Units.Hour)} h", "print.honest_print_seconds[1]", "of printing at most"),
        ];
        return all.Where(t => t.Value is not null).Select(t => (t.Text(t.Value!.Value), t.Of, t.What));
    }

    /// <summary>Paper and scale of a sheet.</summary>
    internal static string Paper(Sheet sheet) =>
        $"{(Math.Max(sheet.WidthMm, sheet.HeightMm) > 300 ? "A3" : "A4")}{(sheet.ScaleRatio > 0 ? $", {sheet.ScaleName}" : "")}";
}
