using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stillwall.Projects;

namespace Stillwall.Files.Projects;

/// <summary>Changes one stated value in the text of a project file and keeps every other byte as it is.</summary>
public static class ProjectTextEditor
{
    /// <summary>Changes or adds one value as a person states it; whether it is a bare number, a text or a list follows from the key.</summary>
    /// <param name="json">Text of the project file.</param>
    /// <param name="dottedKey">Keys from the root, joined by points.</param>
    /// <param name="stated">The value, such as <c>12 mm</c>, <c>0.707</c> or <c>2.2 m, 2.9 m, 1.1 m</c>.</param>
    /// <returns>The changed text.</returns>
    /// <exception cref="ArgumentException">No such key, or the text is not a project file.</exception>
    public static string SetStated(string json, string dottedKey, string stated)
    {
        ArgumentNullException.ThrowIfNull(stated);
        var field = ProjectKeys.Find(dottedKey) ?? throw new ArgumentException($"{dottedKey}: no such key{NearestWord.Suggest(dottedKey, ProjectKeys.AllKeys())}", nameof(dottedKey));
        return field.Kind == FieldKind.Quantities
            ? Replace(json, dottedKey, $"[{string.Join(", ", stated.Split(',').Select(entry => Quoted(entry.Trim())))}]")
            : Set(json, dottedKey, stated, ProjectKeys.IsBare(field, stated));
    }

    /// <summary>Changes or adds one value.</summary>
    /// <param name="json">Text of the project file.</param>
    /// <param name="dottedKey">Keys from the root, joined by points; blocks that are not there yet are made.</param>
    /// <param name="newValueText">The new value, without quotation marks.</param>
    /// <param name="bareNumber">Whether it is written as a bare number; else as a text.</param>
    /// <returns>The changed text.</returns>
    /// <exception cref="ArgumentException">The text is not a JSON object, the key leads through something that is no block, or a bare number that is none.</exception>
    public static string Set(string json, string dottedKey, string newValueText, bool bareNumber)
    {
        ArgumentNullException.ThrowIfNull(newValueText);
        return Replace(json, dottedKey, bareNumber ? Number(dottedKey, newValueText) : Quoted(newValueText));
    }

    private static string Replace(string json, string dottedKey, string value)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(dottedKey);
        var bom = json.StartsWith('\uFEFF') ? "\uFEFF" : "";
        var text = Encoding.UTF8.GetBytes(json[bom.Length..]);
        var (root, fault) = PositionedJson.Parse(text);
        if (root is not JsonBlock block)
        {
            throw new ArgumentException($"line {fault?.Line ?? 1}: {fault?.Message ?? "is not a block of keys"}", nameof(json));
        }

        var keys = dottedKey.Split('.');
        for (var i = 0; ; i++)
        {
            var entry = block.Find(keys[i]);
            if (entry is null)
            {
                return bom + Inserted(text, block, keys[i], Nested(keys[(i + 1)..], value));
            }

            if (i == keys.Length - 1)
            {
                return bom + Spliced(text, entry.Value.Start, entry.Value.End, value);
            }

            block = entry.Value as JsonBlock ?? throw new ArgumentException($"{string.Join('.', keys[..(i + 1)])} is not a block of keys", nameof(dottedKey));
        }
    }

    private static string Nested(string[] keys, string value) =>
        keys.Reverse().Aggregate(value, (inner, key) => $"{{ {Quoted(key)}: {inner} }}");

    // The new entry goes after the last one, set off from it as that one is from what stands before it.
    private static string Inserted(byte[] text, JsonBlock block, string key, string value)
    {
        var entry = $"{Quoted(key)}: {value}";
        if (block.Entries.Count == 0)
        {
            return Spliced(text, block.Start, block.End, $"{{ {entry} }}");
        }

        var last = block.Entries[^1];
        var gap = last.Start;
        while (gap > 0 && text[gap - 1] is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n')
        {
            gap--;
        }

        var space = Encoding.UTF8.GetString(text, gap, last.Start - gap);
        return Spliced(text, last.Value.End, last.Value.End, "," + (block.Entries.Count == 1 && space.Length == 0 ? " " : space) + entry);
    }

    private static string Spliced(byte[] text, int start, int end, string put) =>
        Encoding.UTF8.GetString(text, 0, start) + put + Encoding.UTF8.GetString(text, end, text.Length - end);

    private static string Quoted(string text) => $"\"{JavaScriptEncoder.UnsafeRelaxedJsonEscaping.Encode(text)}\"";

    private static string Number(string key, string text)
    {
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(text));
        try
        {
            if (reader.Read() && reader.TokenType == JsonTokenType.Number && !reader.Read())
            {
                return text;
            }
        }
        catch (JsonException)
        {
            // Told below, with the key.
        }

        throw new ArgumentException($"{key}: \"{text}\" is not a number as JSON writes it", nameof(text));
    }
}
