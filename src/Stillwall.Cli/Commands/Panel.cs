using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;
using Stillwall.Projects;
using Stillwall.Walls;

namespace Stillwall.Cli.Commands;

/// <summary><c>panel</c>: one wall panel.</summary>
internal static class Panel
{
    // Beyond it the panel is a strip, and the terms for its short waves no longer suffice.
    private const double GreatestSideRatio = 50;

    private static readonly IReadOnlyList<string> Edges = ["clamped", "supported"];

    internal static Verb Verb()
    {
        var layers = new TextOption("--layers", "LAYERS", "from the outside in: 2mm:petg,12mm:plaster,2mm:petg, or t:E:nu:rho in mm, Pa, -, kg/m3");
        var size = new TextOption("--size", "AxB", "clear width and height, such as 330mmx210mm; inches here give inches in the table");
        var edges = new TextOption("--edges", "EDGES", "clamped, or supported: only the deflection is zero on the edge; supported where left out", Edges);
        var turning = new QuantityOption(
            "--edge-stiffness",
            Dimension.Force,
            "moment with which supported edges resist turning, for each metre and radian, such as 20kN; none where left out"
        )
        {
            Span = (0, 1e7),
        };
        var json = Common.Json;
        return new Verb(
            "panel",
            "one wall panel: its first six modes and its deflection, layers bonded and slipping",
            "stillwall panel --layers 2mm:petg,12mm:plaster,2mm:petg --size 330mmx210mm --edges clamped"
        )
        {
            Takes = [layers, size, edges, turning, json],
            Do = call =>
            {
                var (width, height) = SizeOf(call.Needed(size));
                var stack = LayerList.Read(call.Needed(layers));
                var isClamped = call.Text(edges) == "clamped";
                var result = PanelModel.Solve(
                    stack,
                    width,
                    height,
                    isClamped ? PanelEdges.Clamped : PanelEdges.Supported,
                    HoldOf(call.Value(turning) ?? 0, isClamped)
                );
                call.Session.Print(
                    call.Has(json)
                        ? ResultJson.Write(result)
                        : Table(result, new Show(TypedUnits.AreInch(call.Text(size), call.Text(layers)), ""), call.Session.Terminal)
                );
                return ExitCodes.Done;
            },
        };
    }

    private static PlateHold HoldOf(double edgeN, bool isClamped) =>
        edgeN switch
        {
            0 => PlateHold.None,
            _ when isClamped => throw Refusal.Input("--edge-stiffness: clamped edges do not turn; leave it out, or --edges supported"),
            _ => PlateHold.None with { EdgeN = edgeN },
        };

    private static (double WidthM, double HeightM) SizeOf(string text)
    {
        var sides = text.Split('x', '×');
        if (sides.Length != 2)
        {
            throw Refusal.Input($"--size: \"{text}\" is not two sizes; two lengths and one x, such as 330mmx210mm");
        }

        var (width, height) = (Side(sides[0]), Side(sides[1]));
        return Math.Max(width, height) / Math.Min(width, height) <= GreatestSideRatio
            ? (width, height)
            : throw Refusal.Input($"--size: \"{text}\" is longer than {Show.Number(GreatestSideRatio)} times its width; a squarer panel");
    }

    private static double Side(string text) =>
        !Units.TryRead(text.Trim(), Dimension.Length, out var metres, out var fault) ? throw Refusal.Input($"--size: {fault}")
        : metres is >= 1e-3 and <= 100 ? metres
        : throw Refusal.Input($"--size: \"{text.Trim()}\" is out of range; 1 mm to 100 m");

    private static string Table(PanelResult panel, Show show, Terminal terminal)
    {
        IReadOnlyList<string> Row(string name, PanelCase c) =>
            [
                name,
                string.Join(", ", c.ModesHz.Select(f => Show.Number(f))) + " Hz",
                show.InUnit(c.CentreDeflectionMPerPa, "m/Pa", 3),
                show.InUnit(c.MeanDeflectionMPerPa, "m/Pa", 3),
            ];
        return Tables.Of(
                terminal,
                $"One panel of {show.SurfaceDensity(panel.SurfaceDensityKgM2)}",
                ["layers", "first six modes", ">deflection in the middle", ">on average"],
                [Row("bonded", panel.Bonded), Row("slipping", panel.Slipping)]
            ) + $"\n{Words.Wrapped($"basis: {PanelModel.Basis}.", terminal.Width)}\n";
    }
}
