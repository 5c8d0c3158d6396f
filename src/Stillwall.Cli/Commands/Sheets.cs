using System.Text;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Figures.Sheets;
using Stillwall.Files.Drawings;
using Stillwall.Files.Outputs;

namespace Stillwall.Cli.Commands;

/// <summary><c>sheets</c>: dimensioned drawings to print.</summary>
internal static class Sheets
{
    internal static Verb Verb()
    {
        var project = Common.Project;
        var folder = Common.Out;
        return new Verb(
            "sheets",
            "draws dimensioned sheets to print: assembly, exploded view, each part, templates for the openings",
            "stillwall sheets my-cabinet --out out"
        )
        {
            Takes = [project, folder],
            Do = call =>
            {
                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                var facts = loaded.Facts();
                var sheets = facts.Geometry is not null ? SheetSet.Of(facts) : throw Want.OfCabinet("sheets");
                var into = call.Deliver(
                    folder,
                    loaded,
                    [.. sheets.Select(sheet => new MadeFile(sheet.Name + ".svg", Encoding.UTF8.GetBytes(SheetSvg.Of(sheet))))]
                );
                call.Session.Print(SheetText.Of(sheets, into, call.Session.Terminal));
                return ExitCodes.Done;
            },
        };
    }

    private static class SheetText
    {
        internal static string Of(IReadOnlyList<Sheet> sheets, string folder, Terminal terminal) =>
            Tables.Of(
                terminal,
                $"Sheets in {folder}",
                ["file", "drawn", "paper", ">scale"],
                sheets.Select(s => (IReadOnlyList<string>)[s.Name + ".svg", s.Title, PaperOf(s), s.ScaleName])
            )
            + Words.Wrapped(
                "Print at actual size, not fitted to the page; then the scales are true. On a template, measure the check line first.",
                terminal.Width
            )
            + "\n";

        private static string PaperOf(Sheet sheet) => Math.Max(sheet.WidthMm, sheet.HeightMm) > 300 ? "A3" : "A4";
    }
}
