using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stillwall.Projects;

namespace Stillwall.Files.Projects;

/// <summary>Writes a project as <c>stillwall.json</c>: the model's order of keys, quantities with units, what equals its default left out.</summary>
public static class ProjectWriter
{
    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        // The file is read by people and by JSON readers, never put into a web page as it is: "°" stays "°".
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes a project.</summary>
    /// <param name="project">The project.</param>
    /// <returns>Strict JSON, two spaces of indent, line feeds, one at the end; the same bytes for the same project.</returns>
    public static string Write(Project project)
    {
        ArgumentNullException.ThrowIfNull(project);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Layout))
        {
            Block(json, project);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void Block(Utf8JsonWriter json, object record)
    {
        var block = ModelBlock.Of(record.GetType());
        json.WriteStartObject();
        foreach (var field in block.Fields)
        {
            if (field.Get(record) is { } value && (field.Required || !IsDefault(field, value, block.Defaults)))
            {
                json.WritePropertyName(field.Key);
                Value(json, field, value);
            }
        }

        json.WriteEndObject();
    }

    private static void Value(Utf8JsonWriter json, ModelField field, object value)
    {
        switch (value)
        {
            case DriverChoice { Name: { } name }:
                json.WriteStringValue(name);
                break;
            case DriverChoice { Sheet: { } sheet }:
                Block(json, sheet);
                break;
            case IReadOnlyList<double> numbers:
                List(json, numbers, number => json.WriteStringValue(Units.Write(number, field.Dimension)));
                break;
            case System.Collections.IEnumerable records when field.Kind == FieldKind.Blocks:
                List(json, records.Cast<object>(), record => Block(json, record));
                break;
            case double number when field.Kind == FieldKind.Number:
                json.WriteNumberValue(number);
                break;
            case int whole:
                json.WriteNumberValue(whole);
                break;
            default:
                Plain(json, field, value);
                break;
        }
    }

    private static void Plain(Utf8JsonWriter json, ModelField field, object value)
    {
        if (field.Kind == FieldKind.Block)
        {
            Block(json, value);
        }
        else
        {
            json.WriteStringValue(ProjectKeys.Written(field, value));
        }
    }

    private static void List<T>(Utf8JsonWriter json, IEnumerable<T> entries, Action<T> write)
    {
        json.WriteStartArray();
        foreach (var entry in entries)
        {
            write(entry);
        }

        json.WriteEndArray();
    }

    // A block that a new record would have anyway is left out when nothing in it was changed; so is an empty list that is there from the start.
    private static bool IsDefault(ModelField field, object value, object defaults) =>
        field.Get(defaults) is { } initial
        && (Equals(value, initial) || (field.Kind == FieldKind.Blocks && !((System.Collections.IEnumerable)value).Cast<object>().Any()));
}
