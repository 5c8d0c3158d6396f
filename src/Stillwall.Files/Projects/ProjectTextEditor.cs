using System.Globalization;
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
        var field =
            ProjectKeys.Find(dottedKey)
            ?? throw new ArgumentException($"{dottedKey}: no such key{NearestWord.Suggest(dottedKey, ProjectKeys.AllKeys())}", nameof(dottedKey));
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
    /// <exception cref="ArgumentException">
    /// The text is not a JSON object, the key leads through something that is no block, or a bare number that is none.
    /// </exception>
    public static string Set(string json, string dottedKey, string newValueText, bool bareNumber)
    {
        ArgumentNullException.ThrowIfNull(newValueText);
        return Replace(json, dottedKey, bareNumber ? Number(dottedKey, newValueText) : Quoted(newValueText));
    }

    /// <summary>Takes one value or one entry of a list out, so that its default holds again. What is left empty by it goes with it.</summary>
    /// <param name="json">Text of the project file.</param>
    /// <param name="dottedKey">Keys from the root, joined by points; an entry of a list by its index from 0.</param>
    /// <returns>The changed text.</returns>
    /// <exception cref="ArgumentException">The text is not a JSON object, or does not state the key.</exception>
    public static string Remove(string json, string dottedKey)
    {
        var (bom, text, root) = Parsed(json);
        ArgumentNullException.ThrowIfNull(dottedKey);
        JsonPiece at = root;
        (int From, int To)? cut = null;
        foreach (var step in Steps(dottedKey))
        {
            var pieces = Pieces(at);
            var found = pieces.FindIndex(p => p.Step == step);
            if (found < 0)
            {
                throw new ArgumentException($"{dottedKey}: is not stated", nameof(dottedKey));
            }

            // Of nested pieces that hold nothing else, the outermost goes.
            if (cut is null || pieces.Count > 1)
            {
                cut =
                    found + 1 < pieces.Count
                        ? (pieces[found].Start, pieces[found + 1].Start)
                        : (found > 0 ? pieces[found - 1].Value.End : pieces[found].Start, pieces[found].Value.End);
            }

            at = pieces[found].Value;
        }

        return bom + Spliced(text, cut!.Value.From, cut.Value.To, "");
    }

    /// <summary>Adds an entry at the end of a list of blocks, which is made where there is none.</summary>
    /// <param name="json">Text of the project file.</param>
    /// <param name="list">Key of the list, such as <c>logbook</c>.</param>
    /// <param name="entry">Keys and values of the entry as a person states them, in order.</param>
    /// <returns>The changed text.</returns>
    /// <exception cref="ArgumentException">The text is not a project file, or has something else under that key.</exception>
    public static string Append(string json, string list, IReadOnlyList<(string Key, string Stated)> entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        var fields = ProjectKeys.Find(list)?.Block ?? throw new ArgumentException($"{list} is no list of blocks", nameof(list));
        string Value((string Key, string Stated) e) =>
            fields.Find(e.Key) is { } field && ProjectKeys.IsBare(field, e.Stated) ? Number(e.Key, e.Stated) : Quoted(e.Stated);
        var written = $"{{ {string.Join(", ", entry.Select(e => $"{Quoted(e.Key)}: {Value(e)}"))} }}";
        var (bom, text, root) = Parsed(json);
        return bom
            + root.Find(list) switch
            {
                null => Inserted(text, root, list, $"[ {written} ]"),
                { Value: JsonList { Items: [.., var last] } } => Spliced(
                    text,
                    last.End,
                    last.End,
                    $",{(Gap(text, last.Start) is { Length: > 0 } gap ? gap : " ")}{written}"
                ),
                { Value: JsonList empty } => Spliced(text, empty.Start + 1, empty.Start + 1, $" {written} "),
                _ => throw new ArgumentException($"{list} is no list", nameof(json)),
            };
    }

    /// <summary>What a key holds; null where it is not stated.</summary>
    internal static JsonPiece? Find(string json, string dottedKey) =>
        Steps(dottedKey).Aggregate((JsonPiece?)Parsed(json).Root, (at, step) => at is null ? null : Pieces(at).Find(p => p.Step == step).Value);

    private static List<(string Step, int Start, JsonPiece Value)> Pieces(JsonPiece at) =>
        at switch
        {
            JsonBlock block => [.. block.Entries.Select(e => (e.Key, e.Start, e.Value))],
            JsonList list => [.. list.Items.Select((item, i) => (Index(i), item.Start, item))],
            _ => [],
        };

    private static (string Bom, byte[] Text, JsonBlock Root) Parsed(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        var bom = json.StartsWith('\uFEFF') ? "\uFEFF" : "";
        var text = Encoding.UTF8.GetBytes(json[bom.Length..]);
        var (root, fault) = PositionedJson.Parse(text);
        return root is JsonBlock block
            ? (bom, text, block)
            : throw new ArgumentException($"line {fault?.Line ?? 1}: {fault?.Message ?? "is not a block of keys"}", nameof(json));
    }

    private static string Replace(string json, string dottedKey, string value)
    {
        ArgumentNullException.ThrowIfNull(dottedKey);
        var (bom, text, block) = Parsed(json);
        var keys = Steps(dottedKey);
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

            var inner = entry.Value;
            if (inner is JsonList list)
            {
                var index = keys[++i];
                inner = list.Items.Where((_, n) => Index(n) == index).FirstOrDefault();
            }

            block = inner as JsonBlock ?? throw new ArgumentException($"{string.Join('.', keys[..(i + 1)])} is not a block of keys", nameof(dottedKey));
        }
    }

    private static string Index(int i) => string.Create(CultureInfo.InvariantCulture, $"[{i}]");

    // "stock[1].amount" in steps: the list, its second entry, the key in it.
    private static string[] Steps(string dottedKey) => dottedKey.Replace("[", ".[", StringComparison.Ordinal).Split('.');

    private static string Nested(string[] keys, string value) => keys.Reverse().Aggregate(value, (inner, key) => $"{{ {Quoted(key)}: {inner} }}");

    // The new entry goes after the last one, set off from it as that one is from what stands before it.
    private static string Inserted(byte[] text, JsonBlock block, string key, string value)
    {
        var entry = $"{Quoted(key)}: {value}";
        if (block.Entries.Count == 0)
        {
            return Spliced(text, block.Start, block.End, $"{{ {entry} }}");
        }

        var last = block.Entries[^1];
        var space = Gap(text, last.Start);
        return Spliced(text, last.Value.End, last.Value.End, "," + (block.Entries.Count == 1 && space.Length == 0 ? " " : space) + entry);
    }

    // The white space before a piece, so that the next one is set off in the same way.
    private static string Gap(byte[] text, int start)
    {
        var from = start;
        while (from > 0 && text[from - 1] is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n')
        {
            from--;
        }

        return Encoding.UTF8.GetString(text, from, start - from);
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
