using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>Spoils a project as a tree, so that it stays JSON: what is then wrong is what it says.</summary>
internal static class TreeMutation
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, MaxDepth = 1000 };

    private static readonly double[] Magnitudes = [0, -0.0, -1, 1e308, 1e-308, -1e308, 5e-324, 1e9, 1e-9, 1, 1e3, 2, 50, 1e300, 0.1 + 0.2];

    private static readonly string[] Units =
    [
        "mm",
        "m",
        "in",
        "ft",
        "cm2",
        "m2",
        "L",
        "ft3",
        "m3",
        "kg",
        "g",
        "lb",
        "s",
        "min",
        "Hz",
        "kHz",
        "Pa",
        "GPa",
        "W",
        "ohm",
        "mH",
        "dB",
        "degC",
        "K",
        "N/m",
        "kN/m",
        "pc",
        "L/min",
    ];

    private static readonly string[] Names =
    [
        "../../etc/passwd",
        "/dev/zero",
        "C:\\con",
        "\\\\host\\share",
        "a\0b",
        "drivers.csv/../..",
        "\u202Egpj",
        "line\nbreak",
        "\u001b[31m",
        "{0}",
        "%s",
        "…",
        "",
        "own",
        "Dunlin 8",
        "Wren 5",
        "NaN",
        "null",
    ];

    internal static byte[] Spoil(string text, Dice dice)
    {
        var root = JsonNode.Parse(text)!.AsObject();
        var mutations = 1 + dice.Below(4);
        for (var i = 0; i < mutations; i++)
        {
            Mutate(root, dice);
        }

        return Encoding.UTF8.GetBytes(root.ToJsonString(Plain));
    }

    private static void Mutate(JsonObject root, Dice dice)
    {
        var places = Places(root).ToList();
        if (places.Count < 2)
        {
            return;
        }

        var (block, key) = dice.Pick(places);
        var (other, otherKey) = dice.Pick(places);
        switch (dice.Below(16))
        {
            case 0 or 1:
                block.Remove(key);
                break;
            case 2:
                Put(block, key, Quantity(block[key], number => number, dice.Pick(Units)));
                break;
            case 3 or 4:
                Put(block, key, Quantity(block[key], _ => dice.Pick(Magnitudes), null));
                break;
            case 5 or 6 or 7:
                Put(block, key, Quantity(block[key], number => number * Math.Pow(10, 4 * dice.Share() - 2), null));
                break;
            case 8:
                Put(block, key, Quantity(block[key], number => number * Math.Pow(10, 600 * dice.Share() - 300), null));
                break;
            case 9:
                (block[key], other[otherKey]) = (other[otherKey]?.DeepClone(), block[key]?.DeepClone());
                break;
            case 10:
                other[$"{otherKey}{dice.Pick(["s", " ", "_mm", "\u200B"])}"] = block[key]?.DeepClone();
                break;
            case 11:
                other[key] = block[key]?.DeepClone();
                break;
            case 12:
                block[key] = dice.Pick(Names);
                break;
            case 13:
                block[key] = Deep(dice.Pick([2, 20, 30, 60]));
                break;
            case 14:
                block[key] = Many(block[key], dice.Falls(0.02) ? 20_000 : 30);
                break;
            default:
                block[key] = dice.Below(1000) * dice.Pick([1, -1, 1_000_000]);
                break;
        }
    }

    private static IEnumerable<(JsonObject Block, string Key)> Places(JsonNode? node) =>
        node switch
        {
            JsonObject block => block.Select(entry => (block, entry.Key)).Concat(block.SelectMany(entry => Places(entry.Value))),
            JsonArray list => list.SelectMany(Places),
            _ => [],
        };

    private static void Put(JsonObject block, string key, JsonNode? value)
    {
        if (value is not null)
        {
            block[key] = value;
        }
    }

    // A number with or without its unit, changed; null where there is no number.
    private static JsonNode? Quantity(JsonNode? node, Func<double, double> change, string? unit)
    {
        if (node is not JsonValue value)
        {
            return null;
        }

        var written = value.TryGetValue<string>(out var text) ? text : value.ToJsonString();
        var end = written.AsSpan().LastIndexOfAny("0123456789");
        if (!double.TryParse(written.Split(' ')[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || end < 0)
        {
            return null;
        }

        var changed = change(number);
        if (!double.IsFinite(changed))
        {
            return "1e999 m";
        }

        return text is null && unit is null ? changed : $"{changed.ToString("G6", CultureInfo.InvariantCulture)} {unit ?? written.Split(' ')[^1]}";
    }

    private static JsonNode Deep(int depth)
    {
        JsonNode node = 1;
        for (var i = 0; i < depth; i++)
        {
            node = i % 2 == 0 ? new JsonArray(node) : new JsonObject { ["a"] = node };
        }

        return node;
    }

    private static JsonArray Many(JsonNode? node, int count)
    {
        var entry = node is JsonArray { Count: > 0 } list ? list[0] : node;
        return new JsonArray([.. Enumerable.Range(0, count).Select(_ => entry?.DeepClone())]);
    }
}
