using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Stillwall.Files.Tests.Hostile;

/// <summary>Spoils the text of a project or of a table of drivers in the ways that people, editors and ill will do.</summary>
internal static partial class Mutation
{
    private static readonly string[] Values =
    [
        "null",
        "true",
        "[]",
        "{}",
        "-0",
        "1e308",
        "-1e308",
        "5e-324",
        "1e400",
        "0",
        "-1",
        "\"NaN\"",
        "NaN",
        "Infinity",
        "\"-∞ mm\"",
        "\"1e308 m\"",
        "\"5e-324 m\"",
        "\"NaN mm\"",
        "\"256\u202Fmm\"",
        "\"20 °C\"",
        "\"4 Ω\"",
        "\"8 m²\"",
        "\"3,2 m\"",
        "\"1e-999 m\"",
        "\"12 parsec\"",
        "\"\"",
        "\"\\u0000\"",
        "\"\\ud800\"",
        "\"\\u202egpj\"",
        "\"../../etc/passwd\"",
        "\"/dev/zero\"",
        "\"\\\\\\\\server\\\\share\"",
        "\"a\\u0000b\"",
        "\"=1+1\"",
        "\"<script>\"",
        "\"{0}\"",
        "\"%s%n\"",
        "\"own\"",
        "[null]",
        "[[[[\"1 m\"]]]]",
        "{\"a\":{\"b\":{\"c\":1}}}",
        "1E5",
        "01",
        "0x10",
        "'x'",
    ];

    private static readonly string[] Units = ["mm", "m", "in", "ft3", "L", "ohm", "degC", "dB", "kg", "Pa", "s", "Hz", "%", "µm", "m²", "pc", ""];

    private static readonly string[] Cells =
    [
        "",
        "NaN",
        "∞",
        "-1",
        "0",
        "1e308",
        "1e-320",
        "3,5",
        "\"",
        "\"\"",
        "\"a\"\"b\"",
        "\"a,b\"",
        "=cmd()",
        "Dunlin 8",
        "\0",
        "\u202E",
        "\ud83d",
        "null",
        "1 mm",
        "9".PadRight(400, '9'),
    ];

    internal static byte[] Spoil(string text, Dice dice)
    {
        var mutations = 1 + dice.Below(3);
        for (var i = 0; i < mutations; i++)
        {
            text = Json(text, dice);
        }

        return Bytes(Encoding.UTF8.GetBytes(text), dice);
    }

    internal static byte[] SpoilTable(string text, Dice dice)
    {
        var mutations = 1 + dice.Below(3);
        for (var i = 0; i < mutations; i++)
        {
            text = Table(text, dice);
        }

        return Bytes(Encoding.UTF8.GetBytes(text), dice);
    }

    private static string Json(string text, Dice dice)
    {
        var pieces = Pieces().Matches(text);
        if (pieces.Count < 2)
        {
            return text;
        }

        var (one, other) = (pieces[dice.Below(pieces.Count)], pieces[dice.Below(pieces.Count)]);
        var (key, value) = (one.Groups["key"], one.Groups["value"]);
        return dice.Below(12) switch
        {
            0 => Put(text, value, dice.Pick(Values)),
            1 => Put(text, value, other.Groups["value"].Value),
            2 => Put(text, key, other.Groups["key"].Value),
            3 => text.Remove(one.Index, one.Length),
            4 => text.Insert(one.Index, one.Value + ", "),
            5 => Put(text, value, Scaled(value.Value, dice)),
            6 => Put(text, value, Number().Replace(value.Value, "-$0", 1)),
            7 => Put(text, value, $"\"{Number().Match(value.Value).Value} {dice.Pick(Units)}\""),
            8 => Put(text, key, $"\"{key.Value.Trim('"')[..^1]}\""),
            9 => Put(text, value, Deep(dice)),
            10 => Put(text, value, $"\"{new string(dice.Pick(['x', '9', '\u200B', 'é']), dice.Falls(0.05) ? 100_000 : 500)}\""),
            _ => Put(text, value, dice.Pick(["1e", "1", "-1e-", "\"1e"]) + dice.Below(400).ToString(CultureInfo.InvariantCulture)),
        };
    }

    private static string Table(string text, Dice dice)
    {
        var lines = text.Split('\n');
        var row = dice.Below(lines.Length);
        var cells = lines[row].Split(',');
        var at = dice.Below(cells.Length);
        switch (dice.Below(10))
        {
            case 0:
                return text.Replace("\n", "\r\n", StringComparison.Ordinal);
            case 1:
                return text.Replace(',', dice.Pick([';', '\t', '|']));
            case 2:
                cells = [.. cells, dice.Pick(Cells)];
                break;
            case 3:
                cells = cells[..at];
                break;
            case 4:
                cells[at] = Scaled(cells[at], dice);
                break;
            case 5:
                lines[row] += "\n" + lines[dice.Below(lines.Length)];
                return string.Join('\n', lines);
            case 6 when dice.Falls(0.01):
                cells[at] = new string('x', 1_000_000);
                break;
            default:
                cells[at] = dice.Pick(Cells);
                break;
        }

        lines[row] = string.Join(',', cells);
        return string.Join('\n', lines);
    }

    private static byte[] Bytes(byte[] bytes, Dice dice)
    {
        if (bytes.Length == 0 || dice.Falls(0.7))
        {
            return bytes;
        }

        var at = dice.Below(bytes.Length);
        switch (dice.Below(4))
        {
            case 0:
                return bytes[..at];
            case 1:
                bytes[at] ^= (byte)(1 << dice.Below(8));
                return bytes;
            case 2:
                return
                [
                    .. bytes[..at],
                    .. dice.Pick<byte[]>([
                        [0xED, 0xA0, 0x80],
                        [0xFF],
                        [0xC0, 0xAF],
                        [0],
                        [0xEF, 0xBB, 0xBF],
                        [0xF4, 0x90, 0x80, 0x80],
                        [0x0D],
                    ]),
                    .. bytes[at..],
                ];
            default:
                return [.. bytes[at..], .. bytes[..at]];
        }
    }

    private static string Scaled(string value, Dice dice)
    {
        var power = (dice.Falls(0.5) ? 1 : -1) * (dice.Falls(0.5) ? 1 + dice.Below(4) : 1 + dice.Below(300));
        return Number().Replace(value, $"$0e{power.ToString(CultureInfo.InvariantCulture)}", 1);
    }

    private static string Deep(Dice dice)
    {
        var depth = dice.Pick([3, 40, 70, 5000]);
        return dice.Falls(0.5)
            ? new string('[', depth) + new string(']', depth)
            : string.Concat(Enumerable.Repeat("{\"a\":", depth)) + "1" + new string('}', depth);
    }

    private static string Put(string text, Group place, string put) => string.Concat(text.AsSpan(0, place.Index), put, text.AsSpan(place.Index + place.Length));

    [GeneratedRegex("""(?<key>"[^"]*")\s*:\s*(?<value>"[^"]*"|-?[0-9][0-9.eE+-]*|\{|\[)""")]
    private static partial Regex Pieces();

    [GeneratedRegex("""-?[0-9]+(\.[0-9]+)?""")]
    private static partial Regex Number();
}
