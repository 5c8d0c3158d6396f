using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Stillwall.Files.Projects;

/// <summary>Says in the maker's words why a text is not strict JSON.</summary>
internal static class JsonFaults
{
    internal static JsonFault Of(ReadOnlySpan<byte> utf8, JsonException trouble, int depth)
    {
        var line = (int)(trouble.LineNumber ?? 0);
        if (trouble.BytePositionInLine < 0)
        {
            return new JsonFault(line + 1, "a \\u escape names half a character; both halves of the pair, or the character itself");
        }

        var at = Math.Min(LineStart(utf8, line) + (int)(trouble.BytePositionInLine ?? 0), utf8.Length);
        if (depth >= PositionedJson.GreatestDepth - 1 && at < utf8.Length && utf8[at] is (byte)'{' or (byte)'[')
        {
            return new JsonFault(line + 1, $"brackets are nested too deeply; at most {PositionedJson.GreatestDepth} levels");
        }

        return utf8[..at].IndexOfAnyExcept(" \t\r\n"u8) < 0 && at >= utf8.Length
            ? new JsonFault(1, "is empty; one JSON object { … }")
            : new JsonFault(
                line + 1,
                depth == 0 && at < utf8.Length && utf8[..at].TrimEnd(" \t\r\n"u8).EndsWith("}"u8)
                    ? "something follows the last bracket; one JSON object"
                    : What(utf8, at)
            );
    }

    private static string What(ReadOnlySpan<byte> utf8, int at)
    {
        if (at >= utf8.Length)
        {
            return "the file ends too early; every bracket and quotation mark closed";
        }

        var before = utf8[..at].TrimEnd(" \t\r\n"u8);
        var afterComma = before.Length > 0 && before[^1] == (byte)',';
        var afterValue = before.Length > 0 && (before[^1] is (byte)'"' or (byte)'}' or (byte)']' || char.IsAsciiLetterOrDigit((char)before[^1]));
        return (char)utf8[at] switch
        {
            '/' or '#' => "comments are not accepted; strict JSON, with remarks as \"note\": \"…\"",
            '\'' => "a single quotation mark; texts and keys in double quotation marks",
            '}' or ']' when afterComma => "a comma before the closing bracket; strict JSON without trailing commas",
            >= '0' and <= '9' when afterComma => "a number after a comma where a key must stand; numbers with a decimal point",
            '"' when afterValue => $"a comma is missing before {Near(utf8, at)}; commas between entries",
            < ' ' => "a line break or control character inside a text or number; written as \\n, \\t or \\u00XX in double quotation marks",
            _ => $"{Near(utf8, at)} is not expected here; strict JSON",
        };
    }

    // The word at the fault, as far as it is one.
    private static string Near(ReadOnlySpan<byte> utf8, int at)
    {
        var rest = Encoding.UTF8.GetString(utf8[at..Math.Min(at + 60, utf8.Length)]);
        var end = 1;
        while (end < Math.Min(rest.Length, 24) && rest[end] is not (' ' or ',' or '\n' or '\r' or '\t' or '}' or ']' or ':'))
        {
            end++;
        }

        return string.Create(CultureInfo.InvariantCulture, $"‹{rest[..end]}›");
    }

    private static int LineStart(ReadOnlySpan<byte> utf8, int line)
    {
        var start = 0;
        for (var i = 0; i < line; i++)
        {
            start += utf8[start..].IndexOf((byte)'\n') + 1;
        }

        return start;
    }
}
