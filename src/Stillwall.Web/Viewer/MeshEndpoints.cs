using Stillwall.Appraisals;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Viewer;

/// <summary>The parts in their places, as bytes for the view that turns them.</summary>
internal static class MeshEndpoints
{
    /// <summary>Serves the parts of a project as <c>assembly</c>; see <see cref="AssemblyMeshes"/>.</summary>
    /// <param name="factsOf">Everything computed for a request; null where no project is open.</param>
    internal static void MapMeshes(this IEndpointRouteBuilder app, Func<HttpContext, Facts?> factsOf) =>
        app.MapGet(
            "/assembly",
            (HttpContext context) =>
                factsOf(context) is not { } facts ? Results.Problem(ChartTexts.NothingOpen, statusCode: StatusCodes.Status404NotFound)
                : AssemblyMeshes.Of(facts) is not { } meshes ? Results.Problem(ViewerTexts.NoCabinet, statusCode: StatusCodes.Status404NotFound)
                : Bytes(context, meshes)
        );

    private static IResult Bytes(HttpContext context, AssemblyMeshes meshes)
    {
        context.Response.Headers.CacheControl = "no-store";
        return Results.Bytes(meshes.Bytes, "application/octet-stream");
    }
}
