using System.Globalization;
using System.Text.Json;
using Stillwall.Walls;

namespace Stillwall.Tests.Walls;

/// <summary>Reads the plates under tests/data/plates.</summary>
internal static class PlateData
{
    internal static string[][] Rows(string file) =>
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "data", "plates", file)).Skip(1).Where(l => l.Length > 0).Select(l => l.Split(','))];

    internal static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    internal static SolidCase Solid(string name)
    {
        var row = Rows("plates.csv").Single(r => r[0] == name);
        using var cases = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "data", "plates", "plate-cases.json")));
        var stated = cases.RootElement.EnumerateArray().Single(c => c.GetProperty("name").GetString() == name);
        var materials = stated.GetProperty("materials");
        var layers = stated
            .GetProperty("layers")
            .EnumerateArray()
            .Select(layer =>
            {
                var material = materials.GetProperty(layer.GetProperty("material").GetString()!);
                return new Layer(
                    layer.GetProperty("thickness_m").GetDouble(),
                    material.GetProperty("E").GetDouble(),
                    material.GetProperty("nu").GetDouble(),
                    material.GetProperty("rho").GetDouble()
                );
            });
        return new SolidCase(
            [.. layers],
            stated.GetProperty("length_m").GetDouble(),
            stated.GetProperty("width_m").GetDouble(),
            stated.GetProperty("edges").GetString() == "clamped" ? PanelEdges.Clamped : PanelEdges.Supported,
            [.. row[1..7].Select(Number)],
            Number(row[8]) / Number(row[7])
        );
    }
}

/// <summary>One case that was solved with solid elements.</summary>
internal sealed record SolidCase(
    IReadOnlyList<Layer> Layers,
    double LengthM,
    double WidthM,
    PanelEdges Edges,
    IReadOnlyList<double> ModesHz,
    double CentreDeflectionMPerPa
);
