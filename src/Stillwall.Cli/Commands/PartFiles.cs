using System.Collections.Concurrent;
using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Files.Meshes;
using Stillwall.Files.Outputs;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Cli.Commands;

/// <summary><c>parts</c>: what has to be printed, as files.</summary>
internal static class PartFiles
{
    private const string Assembly = "assembly";

    internal static Verb Verb()
    {
        var project = Common.Project;
        var folder = Common.Out;
        var format = new TextOption("--format", "FORMAT", "3mf, or stl in millimetres; 3mf where left out", ["3mf", "stl"]);
        var anyway = new Flag(
            "--anyway",
            "writes also what cannot be used: parts that are not closed, are larger than the bed or collide; else nothing is written then"
        );
        var json = Common.Json;
        return new Verb(
            "parts",
            "draws every part to print and writes a file for each, and one with all in their places",
            "stillwall parts my-cabinet --out out"
        )
        {
            Takes = [project, folder, format, anyway, json],
            Do = call =>
            {
                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                var facts = loaded.Facts();
                var job = facts.PartJob ?? throw Want.OfCabinet("parts");
                var (brief, extension) = (facts.Project.Brief, call.Text(format) ?? "3mf");
                var drawn = PartDrawings.Of(job);
                var meshed = Meshed(call.Session, drawn, brief.Printer);
                var printed = meshed.Select(m => m.Figures(brief.Printer, facts.Skin?.DensityKgM3, extension)).ToList();
                var result = new PrintedParts(printed, SealantBead.Of(job), InteriorCheck.Of(job, drawn), job.Geometry.CavityM3, facts.NetVolumeM3);
                Judge(call.Session, result, facts.Show, call.Has(anyway));
                var into = call.Deliver(folder, loaded, Files(meshed, printed, extension, facts.Project.Name));
                call.Session.Print(call.Has(json) ? ResultJson.Write(result) : PartText.Of(result, into, extension, facts, call.Session.Terminal));
                return ExitCodes.Done;
            },
        };
    }

    // On every core: each part is drawn for itself, taken one by one since the sleeves are most of the work.
    private static List<MeshedPart> Meshed(Session session, IReadOnlyList<DrawnPart> parts, Projects.Printer? printer) =>
        [
            .. Partitioner
                .Create(parts, EnumerablePartitionerOptions.NoBuffering)
                .AsParallel()
                .AsOrdered()
                .WithCancellation(session.Terminal.Stop)
                .Select(part =>
                {
                    session.Terminal.Stop.ThrowIfCancellationRequested();
                    var meshed = MeshedPart.Of(part, printer);
                    if (session.Terminal.OutputIsTerminal)
                    {
                        session.Tell($"drawn: {part.Name}");
                    }

                    return meshed;
                }),
        ];

    private static void Judge(Session session, PrintedParts result, Show show, bool anyway)
    {
        var unusable = PartText.Unusable(result, show);
        if (unusable.Count > 0 && !anyway)
        {
            throw Refusal.Input(unusable.Select(line => $"parts: not written without --anyway: {line}"));
        }

        foreach (var line in unusable)
        {
            session.Tell($"parts: written anyway: {line}");
        }
    }

    private static IReadOnlyList<MadeFile> Files(List<MeshedPart> parts, List<PrintedPart> figures, string extension, string title)
    {
        var files = parts.Zip(
            figures,
            (part, figure) =>
                new MadeFile(
                    figure.File,
                    extension == "stl"
                        ? StlFile.Write(part.Surface.Mesh, part.Name)
                        : ThreeMfFile.Write([new(part.Name, part.Surface.Mesh, Placement.AsPrinted)], part.Name)
                )
        );
        return extension == "stl"
            ? [.. files]
            :
            [
                .. files,
                new MadeFile(
                    $"{Assembly}.3mf",
                    ThreeMfFile.Write([.. parts.Where(p => p.Place is not null).Select(p => new ThreeMfPart(p.Name, p.Surface.Mesh, p.Place!))], title)
                ),
            ];
    }
}
