using System.Text;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using Stillwall.Files.Drawings;
using Stillwall.Files.Json;
using Stillwall.Files.Meshes;
using Stillwall.Files.Tables;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;
using Stillwall.Web.Charts;
using Stillwall.Web.Store;
using Stillwall.Web.Viewer;

namespace Stillwall.Web.Serving;

/// <summary>What can be fetched of a project and brought to it.</summary>
internal static class ProjectFiles
{
    private const long ArchiveLimit = 64L << 20;

    /// <summary>Adds the addresses <c>/files/PROJECT/…</c>.</summary>
    internal static void MapProjectFiles(this WebApplication app)
    {
        var files = app.MapGroup("/files/{project}");
        files.MapGet(
            "/project.zip",
            (string project, Workshop workshop) => Of(workshop, project, p => File(ProjectZip.Pack(p.Folder), "application/zip", $"{p.Name}.zip"))
        );
        files.MapGet(
            "/stillwall.json",
            (string project, Workshop workshop) => Of(workshop, project, p => File(Encoding.UTF8.GetBytes(p.Now.Text), "application/json", "stillwall.json"))
        );
        files.MapGet(
            "/appraisal.json",
            (string project, Workshop workshop) => Of(workshop, project, p => Results.Text(ResultJson.Write(p.Now.Plan.Appraisal), "application/json"))
        );
        files.MapGet(
            "/equaliser.csv",
            (string project, Workshop workshop) =>
                Of(
                    workshop,
                    project,
                    p =>
                        EqualiserReport.Of(p.Now.Plan.Facts.Quiet) is { Sections.Count: > 0 } report
                            ? File(Encoding.UTF8.GetBytes(EqualiserTable.Write(report)), "text/csv", "equaliser.csv")
                            : Results.NotFound()
                )
        );
        files.MapGet(
            "/drivers.csv",
            (string project, Workshop workshop) =>
                Of(workshop, project, p => p.Now.TableText is { } table ? File(Encoding.UTF8.GetBytes(table), "text/csv", "drivers.csv") : Results.NotFound())
        );
        files.MapGet("/parts.zip", (string project, string? format, Workshop workshop) => Of(workshop, project, p => Parts(p, format ?? "3mf")));
        files.MapGet("/parts/{name}", (string project, string name, Workshop workshop) => Of(workshop, project, p => Part(p, name)));
        files.MapGet(
            "/sheets.zip",
            (string project, Workshop workshop) =>
                Of(
                    workshop,
                    project,
                    p =>
                        File(
                            ProjectZip.Pack(p.Now.Plan.Sheets.Select(s => ($"{s.Name}.svg", Encoding.UTF8.GetBytes(SheetSvg.Of(s))))),
                            "application/zip",
                            $"{p.Name}-sheets.zip"
                        )
                )
        );
        files.MapGet(
            "/sheets/{name}.svg",
            (string project, string name, Workshop workshop) =>
                Of(
                    workshop,
                    project,
                    p =>
                        p.Now.Plan.Sheets.FirstOrDefault(s => s.Name == name) is { } sheet
                            ? Results.Text(SheetSvg.Of(sheet), "image/svg+xml")
                            : Results.NotFound()
                )
        );
        files.MapCharts(
            context => Asked(context) is { } asked ? [.. asked.Now.Plan.Charts, .. asked.Proofs.Charts] : null,
            context => Asked(context)?.Before?.Plan.Charts
        );
        files.MapMeshes(context => Opened(context)?.Plan.Facts);
        files.MapProofs();
        files.MapPost("/drivers", TakeDrivers).WithMetadata(new SizeLimit(DriverTable.GreatestLength + 65536));
        app.MapPost("/files", TakeProject).WithMetadata(new SizeLimit(ArchiveLimit));
    }

    private static IResult Of(Workshop workshop, string name, Func<OpenProject, IResult> answer) =>
        workshop.Opened(name) is { } project ? answer(project) : Results.NotFound();

    private static Snapshot? Opened(HttpContext context) => Asked(context)?.Now;

    private static OpenProject? Asked(HttpContext context) =>
        context.RequestServices.GetRequiredService<Workshop>().Opened(context.GetRouteValue("project") as string ?? "");

    private static FileContentHttpResult File(byte[] bytes, string kind, string name) => TypedResults.File(bytes, kind, name);

    private static IEnumerable<MeshedPart> Meshed(OpenProject project)
    {
        var (facts, printer) = (project.Now.Plan.Facts, project.Now.Project.Brief.Printer);
        return facts.PartJob is { } job ? PartDrawings.Of(job).Select(part => MeshedPart.Of(part, printer)) : [];
    }

    private static IResult Parts(OpenProject project, string format)
    {
        if (format is not ("3mf" or "stl"))
        {
            return Results.BadRequest();
        }

        var meshed = Meshed(project).ToList();
        var files = meshed.Select(m => (FileName(m.Name, format), Bytes(m, format))).ToList();
        if (format == "3mf" && meshed.Count > 0)
        {
            files.Add(
                (
                    "assembly.3mf",
                    ThreeMfFile.Write(
                        [.. meshed.Where(p => p.Place is not null).Select(p => new ThreeMfPart(p.Name, p.Surface.Mesh, p.Place!))],
                        project.Now.Project.Name
                    )
                )
            );
        }

        return meshed.Count == 0 ? Results.NotFound() : File(ProjectZip.Pack(files), "application/zip", $"{project.Name}-parts-{format}.zip");
    }

    private static IResult Part(OpenProject project, string file)
    {
        var format = file.EndsWith(".stl", StringComparison.Ordinal) ? "stl" : "3mf";
        var facts = project.Now.Plan.Facts;
        var part = facts.PartJob is { } job ? PartDrawings.Of(job).FirstOrDefault(p => FileName(p.Name, format) == file) : null;
        return part is null
            ? Results.NotFound()
            : File(Bytes(MeshedPart.Of(part, facts.Project.Brief.Printer), format), format == "stl" ? "model/stl" : "model/3mf", file);
    }

    private static byte[] Bytes(MeshedPart part, string format) =>
        format == "stl" ? StlFile.Write(part.Surface.Mesh, part.Name) : ThreeMfFile.Write([new(part.Name, part.Surface.Mesh, Placement.AsPrinted)], part.Name);

    private static string FileName(string part, string format) => $"{part.Replace(' ', '-')}.{format}";

    private static async Task<IResult> TakeDrivers(string project, HttpContext context, Workshop workshop, IAntiforgery antiforgery)
    {
        var (file, wrong) = await Brought(context, antiforgery);
        if (wrong is not null || workshop.Opened(project) is not { } opened)
        {
            return wrong ?? Results.NotFound();
        }

        using var reader = new StreamReader(file!.OpenReadStream(), Encoding.UTF8);
        var table = await reader.ReadToEndAsync(context.RequestAborted);
        var text = opened.Now.Project.Drivers is null
            ? Stillwall.Files.Projects.ProjectTextEditor.SetStated(opened.Now.Text, "drivers", "drivers.csv")
            : opened.Now.Text;
        var faults = opened.Replace(null, text, table, Texts.DriverTexts.Imported(file.FileName));
        return faults.Count == 0 ? Results.LocalRedirect("/driver?brought=1") : Results.BadRequest(faults[0]);
    }

    private static async Task<IResult> TakeProject(HttpContext context, Workshop workshop, IAntiforgery antiforgery)
    {
        var (file, wrong) = await Brought(context, antiforgery);
        if (wrong is not null)
        {
            return wrong;
        }

        var name = Path.GetFileNameWithoutExtension(file!.FileName);
        await using var stream = file.OpenReadStream();
        var fault = workshop.Import(name, stream);
        if (fault is null)
        {
            _ = workshop.Find(name);
        }

        return Results.LocalRedirect(fault is null ? "/" : $"/projects?fault={Uri.EscapeDataString(fault)}");
    }

    private static async Task<(IFormFile? File, IResult? Wrong)> Brought(HttpContext context, IAntiforgery antiforgery)
    {
        try
        {
            if (!context.Request.HasFormContentType || !await antiforgery.IsRequestValidAsync(context))
            {
                return (null, Results.BadRequest(Texts.ShellTexts.NotFromThisPage));
            }

            var form = await context.Request.ReadFormAsync(context.RequestAborted);
            return form.Files is [var file, ..] ? (file, null) : (null, Results.BadRequest(Texts.ShellTexts.NoFile));
        }
        catch (BadHttpRequestException e) when (e.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            return (null, Results.StatusCode(StatusCodes.Status413PayloadTooLarge));
        }
        catch (InvalidDataException)
        {
            return (null, Results.StatusCode(StatusCodes.Status413PayloadTooLarge));
        }
    }
}
