using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Files.Projects;

/// <summary>The JSON Schema of the project file, made from the stated model, for editors that complete and check.</summary>
/// <remarks>Source: JSON Schema draft 2020-12, core and validation. What needs more than one value to see is left to the reader.</remarks>
public static class ProjectSchema
{
    private const string NumberPattern = @"[-+\u2212]?(\d+\.?\d*|\.\d+)([eE][-+\u2212]?\d+)?";

    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes the schema.</summary>
    /// <returns>JSON Schema, draft 2020-12; the same bytes every time.</returns>
    public static string Write()
    {
        var definitions = new SortedDictionary<string, JsonNode>(StringComparer.Ordinal);
        var schema = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = "Stillwall project" };
        foreach (var (key, value) in Block(ModelBlock.Root, definitions).ToList())
        {
            schema[key] = value?.DeepClone();
        }

        schema["$defs"] = new JsonObject(definitions.Select(d => KeyValuePair.Create(d.Key, (JsonNode?)d.Value)));
        return schema.ToJsonString(Layout) + "\n";
    }

    private static JsonObject Block(ModelBlock block, SortedDictionary<string, JsonNode> definitions)
    {
        var properties = new JsonObject();
        foreach (var field in block.Fields)
        {
            properties[field.Key] = Field(field, definitions);
        }

        var schema = new JsonObject { ["type"] = "object", ["additionalProperties"] = false };
        var required = block.Fields.Where(f => f.Required).Select(f => (JsonNode?)JsonValue.Create(f.Key)).ToArray();
        if (required.Length > 0)
        {
            schema["required"] = new JsonArray(required);
        }

        schema["properties"] = properties;
        return schema;
    }

    private static JsonObject Field(ModelField field, SortedDictionary<string, JsonNode> definitions)
    {
        var schema = field.Kind switch
        {
            FieldKind.Quantity => Quantity(field.Dimension, definitions),
            FieldKind.Quantities => new JsonObject
            {
                ["type"] = "array",
                ["minItems"] = field.Count,
                ["maxItems"] = field.Count,
                ["items"] = Quantity(field.Dimension, definitions),
            },
            FieldKind.Number => Bare("number", field),
            FieldKind.Whole => Bare("integer", field),
            FieldKind.Date => new JsonObject { ["type"] = "string", ["pattern"] = @"^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$" },
            FieldKind.Amount => Pattern([Dimension.Count, Dimension.Mass, Dimension.Length, Dimension.Area, Dimension.Volume]),
            FieldKind.Block => Reference(field.Block!, definitions),
            FieldKind.Blocks => new JsonObject { ["type"] = "array", ["items"] = Reference(field.Block!, definitions) },
            FieldKind.Driver => new JsonObject { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "string" }, Reference(field.Block!, definitions)) },
            _ => Text(field),
        };
        schema["title"] = field.Key;
        schema["description"] = field.Accepted + Range(field);
        return schema;
    }

    private static JsonObject Text(ModelField field) =>
        field.Words.Count == 0
            ? new JsonObject { ["type"] = "string" }
            : new JsonObject { ["enum"] = new JsonArray([.. field.Words.Select(w => (JsonNode?)JsonValue.Create(w))]) };

    private static JsonObject Bare(string type, ModelField field)
    {
        var schema = new JsonObject { ["type"] = type };
        if (field.Span is { } span)
        {
            schema["minimum"] = span.Least;
            schema["maximum"] = span.Greatest;
        }

        return schema;
    }

    private static string Range(ModelField field) =>
        field.Span is { } span ? $", {Units.Write(span.Least, field.Dimension)} to {Units.Write(span.Greatest, field.Dimension)}" : "";

    private static JsonObject Reference(ModelBlock block, SortedDictionary<string, JsonNode> definitions)
    {
        var name = UnderscoreNames.Of(block.Type.Name);
        if (definitions.TryAdd(name, new JsonObject()))
        {
            definitions[name] = Block(block, definitions);
        }

        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }

    private static JsonObject Quantity(Dimension dimension, SortedDictionary<string, JsonNode> definitions)
    {
        var name = "quantity_" + UnderscoreNames.Of(dimension.ToString());
        definitions[name] =
            dimension == Dimension.AcousticResistance
                ? new JsonObject { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "number" }, Pattern([dimension])) }
                : Pattern([dimension]);
        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }

    private static JsonObject Pattern(IEnumerable<Dimension> dimensions)
    {
        var units = string.Join('|', dimensions.SelectMany(Units.Of).Select(u => UnitPattern(u.Name)).Distinct(StringComparer.Ordinal));
        return new JsonObject { ["type"] = "string", ["pattern"] = $@"^\s*{NumberPattern}\s*({units})\s*$" };
    }

    // Each character with the typographic ones that are read as it.
    private static string UnitPattern(string name)
    {
        var pattern = new StringBuilder();
        foreach (var c in name)
        {
            pattern.Append(
                c switch
                {
                    '2' => "[2\u00B2]",
                    '3' => "[3\u00B3]",
                    'u' => "[u\u00B5\u03BC]",
                    '*' => "[*\u00B7\u22C5]",
                    '\u03A9' => "[\u03A9\u2126]",
                    '"' => "[\"\u2033]",
                    ' ' => "[ \u00A0\u202F\u2009]",
                    _ => c.ToString(),
                }
            );
        }

        return pattern.ToString();
    }
}
