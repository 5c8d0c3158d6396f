using System.Text;
using System.Text.Json;

namespace Stillwall.Files.Projects;

/// <summary>A piece of a JSON text that knows where it stands: line from 1, bytes from 0.</summary>
internal abstract record JsonPiece(int Line, int Start, int End);

/// <summary>A text, number, true, false or null.</summary>
internal sealed record JsonScalar(int Line, int Start, int End, JsonTokenType Type, string Text) : JsonPiece(Line, Start, End);

/// <summary>A list.</summary>
internal sealed record JsonList(int Line, int Start, int End, IReadOnlyList<JsonPiece> Items) : JsonPiece(Line, Start, End);

/// <summary>A block of keys; a key that stands there twice is in it twice.</summary>
internal sealed record JsonBlock(int Line, int Start, int End, IReadOnlyList<JsonEntry> Entries) : JsonPiece(Line, Start, End)
{
    internal JsonEntry? Find(string key) => Entries.FirstOrDefault(e => e.Key == key);
}

/// <summary>One key of a block and what it holds.</summary>
internal sealed record JsonEntry(string Key, int Line, int Start, JsonPiece Value);

/// <summary>What is wrong with a text that is not JSON.</summary>
internal sealed record JsonFault(int Line, string Message);

/// <summary>Reads strict JSON (RFC 8259) into pieces that know their place.</summary>
internal static class PositionedJson
{
    internal const int GreatestDepth = 32;

    internal const int GreatestLength = 4 * 1024 * 1024;

    private static readonly JsonReaderOptions Strict = new() { MaxDepth = GreatestDepth };

    internal static (JsonPiece? Root, JsonFault? Fault) Parse(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > GreatestLength)
        {
            return (null, new JsonFault(1, $"is too long; at most {GreatestLength / 1024 / 1024} MB"));
        }

        if (EncodingFault(utf8) is { } fault)
        {
            return (null, fault);
        }

        var cursor = new Cursor(utf8);
        try
        {
            cursor.Next();
            var root = Value(ref cursor);
            cursor.Next();
            return (root, null);
        }
        catch (JsonException trouble)
        {
            return (null, JsonFaults.Of(utf8, trouble, cursor.Depth));
        }
    }

    /// <summary>Why bytes are not UTF-8, or null where they are.</summary>
    internal static JsonFault? EncodingFault(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length >= 2 && (utf8[..2] is [0xFF, 0xFE] or [0xFE, 0xFF]))
        {
            return new JsonFault(1, "is written in UTF-16; UTF-8");
        }

        if (System.Text.Unicode.Utf8.IsValid(utf8))
        {
            return null;
        }

        var at = 0;
        while (Rune.DecodeFromUtf8(utf8[at..], out _, out var length) == System.Buffers.OperationStatus.Done)
        {
            at += length;
        }

        return new JsonFault(1 + utf8[..at].Count((byte)'\n'), $"the byte 0x{utf8[at]:x2} is not UTF-8; a file saved as UTF-8");
    }

    private static JsonPiece Value(ref Cursor cursor) =>
        cursor.Type switch
        {
            JsonTokenType.StartObject => Block(ref cursor),
            JsonTokenType.StartArray => List(ref cursor),
            _ => new JsonScalar(cursor.Line, cursor.Start, cursor.End, cursor.Type, cursor.Text()),
        };

    private static JsonList List(ref Cursor cursor)
    {
        var (line, start) = (cursor.Line, cursor.Start);
        var items = new List<JsonPiece>();
        while (cursor.Next() && cursor.Type != JsonTokenType.EndArray)
        {
            items.Add(Value(ref cursor));
        }

        return new JsonList(line, start, cursor.End, items);
    }

    private static JsonBlock Block(ref Cursor cursor)
    {
        var (line, start) = (cursor.Line, cursor.Start);
        var entries = new List<JsonEntry>();
        while (cursor.Next() && cursor.Type != JsonTokenType.EndObject)
        {
            var (key, keyLine, keyStart) = (cursor.Text(), cursor.Line, cursor.Start);
            cursor.Next();
            entries.Add(new JsonEntry(key, keyLine, keyStart, Value(ref cursor)));
        }

        return new JsonBlock(line, start, cursor.End, entries);
    }

    // The reader, counting lines on the way.
    private ref struct Cursor(ReadOnlySpan<byte> utf8)
    {
        private readonly ReadOnlySpan<byte> all = utf8;
        private Utf8JsonReader reader = new(utf8, Strict);
        private int counted;

        internal int Line { get; private set; } = 1;

        internal readonly JsonTokenType Type => reader.TokenType;

        internal readonly int Depth => reader.CurrentDepth;

        internal readonly int Start => (int)reader.TokenStartIndex;

        internal readonly int End => (int)reader.BytesConsumed;

        internal bool Next()
        {
            var read = reader.Read();
            Line += all[counted..Start].Count((byte)'\n');
            counted = Start;
            return read;
        }

        internal readonly string Text()
        {
            if (reader.TokenType is not (JsonTokenType.String or JsonTokenType.PropertyName))
            {
                return Encoding.UTF8.GetString(reader.ValueSpan);
            }

            try
            {
                return reader.GetString()!;
            }
            catch (InvalidOperationException)
            {
                throw new JsonException("half a surrogate pair", null, Line - 1, -1);
            }
        }
    }
}
