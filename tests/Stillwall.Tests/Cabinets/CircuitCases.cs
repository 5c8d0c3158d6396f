using System.Globalization;
using System.Text.Json;
using Stillwall.Cabinets;
using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Projects;

namespace Stillwall.Tests.Cabinets;

/// <summary>The systems of tests/data/circuit.</summary>
internal static class CircuitCases
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "data", "circuit");

    internal static (BoxNetwork Network, double Volts) Read(string name)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, "cases.json")));
        var system = document.RootElement.EnumerateArray().Single(c => c.GetProperty("name").GetString() == name);
        var box = system.GetProperty("box");
        var network = new BoxNetwork(DriverOf(system.GetProperty("driver")), Number(box, "volume_m3") * (Optional(box, "fill_factor") ?? 1), Air.Reference)
        {
            LeakResistancePaSM3 = Optional(box, "leak_resistance"),
            Port = box.TryGetProperty("port", out var port)
                ? new PortPath(Number(port, "area_m2"), Number(port, "length_m"), 1, Number(port, "resistance"))
                : null,
            PassiveRadiator = box.TryGetProperty("passive", out var cone)
                ? new PassiveRadiator
                {
                    SdM2 = Number(cone, "Sd"),
                    MmsKg = Number(cone, "Mms"),
                    CmsMPerN = Number(cone, "Cms"),
                    RmsKgS = Number(cone, "Rms"),
                }
                : null,
        };
        return (network, Number(system, "volts_rms"));
    }

    internal static IReadOnlyList<Dictionary<string, double>> Rows(string name)
    {
        var lines = File.ReadAllLines(Path.Combine(Folder, name + ".csv"));
        var header = lines[0].Split(',');
        return
        [
            .. lines
                .Skip(1)
                .Select(line => header.Zip(line.Split(','), (h, c) => (h, c)).ToDictionary(p => p.h, p => double.Parse(p.c, CultureInfo.InvariantCulture))),
        ];
    }

    private static Driver DriverOf(JsonElement driver) =>
        SampleDrivers.Mechanical(
            Number(driver, "Re"),
            Number(driver, "Le"),
            Number(driver, "Bl"),
            Number(driver, "Mms"),
            Number(driver, "Cms"),
            Number(driver, "Rms"),
            Number(driver, "Sd")
        );

    private static double Number(JsonElement element, string key) => element.GetProperty(key).GetDouble();

    private static double? Optional(JsonElement element, string key) => element.TryGetProperty(key, out var value) ? value.GetDouble() : null;
}
