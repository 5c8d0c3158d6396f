using Stillwall.Figures;
using Stillwall.Files.Charts;
using Stillwall.Web.Texts;

namespace Stillwall.Web.Charts;

/// <summary>Charts as files: SVG, PNG, and the numbers as CSV.</summary>
internal static class ChartEndpoints
{
    private const string Svg = "svg",
        Png = "png",
        Csv = "csv";

    /// <summary>
    /// Serves the charts of a project at <c>charts/NAME.svg</c>, <c>.png</c> and <c>.csv</c>; <c>?theme=dark</c> draws in chalk on slate,
    /// <c>?former=1</c> puts the state before the last change in pencil.
    /// </summary>
    /// <param name="chartsOf">The charts for a request; null where no project is open.</param>
    /// <param name="formersOf">The same of the state before the last change; null where there is none.</param>
    internal static void MapCharts(
        this IEndpointRouteBuilder app,
        Func<HttpContext, IReadOnlyList<Chart>?> chartsOf,
        Func<HttpContext, IReadOnlyList<Chart>?> formersOf
    ) =>
        app.MapGet(
            $"/charts/{{name}}.{{kind:regex(^({Svg}|{Png}|{Csv})$)}}",
            (HttpContext context, string name, string kind, string? theme, int? former) =>
                chartsOf(context) is not { } charts ? Results.Problem(ChartTexts.NothingOpen, statusCode: StatusCodes.Status404NotFound)
                : charts.FirstOrDefault(c => c.Name == name) is not { } chart
                    ? Results.Problem(ChartTexts.UnknownChart, statusCode: StatusCodes.Status404NotFound)
                : File(
                    former == 1 ? FormerState.Of(chart, formersOf(context)?.FirstOrDefault(c => c.Name == name), ChartTexts.Before) : chart,
                    kind,
                    theme == "dark" ? ChartTheme.Dark : ChartTheme.Light
                )
        );

    private static IResult File(Chart chart, string kind, ChartTheme theme) =>
        kind switch
        {
            Svg => Results.Text(ChartPicture.Svg(chart, theme), "image/svg+xml"),
            Csv => Results.Text(ChartCsv.Write(chart), "text/csv"),
            _ => ChartPicture.HasFont
                ? Results.Bytes(ChartPicture.Png(chart, theme: theme, scale: 2), "image/png")
                : Results.Problem(ChartTexts.NoFont, statusCode: StatusCodes.Status501NotImplemented),
        };
}
