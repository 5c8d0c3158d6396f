using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Stillwall.Files.Audio;

namespace Stillwall.Files.Outputs;

/// <summary>Tells an own earlier output by its content: it is of the kind that is about to be written and carries its mark.</summary>
internal static partial class OwnMark
{
    /// <summary>What drawings and pages carry in their first element.</summary>
    internal const string InMarkup = "data-made-by=\"Stillwall\"";

    // The first element of a drawing or page ends well before this.
    private const int MarkupHead = 512;

    private const int GreatestLength = WavReader.GreatestLength;

    /// <summary>Whether a file that is there may be replaced. An empty one may: there is nothing to lose.</summary>
    /// <param name="file">The file.</param>
    /// <param name="bytes">What is about to be written.</param>
    /// <param name="otherHeads">For a table: header lines that are written at other times.</param>
    internal static bool Is(string file, ReadOnlySpan<byte> bytes, IReadOnlyList<string> otherHeads)
    {
        if (new FileInfo(file).Length is var length && (length == 0 || length > GreatestLength))
        {
            return length == 0;
        }

        var there = File.ReadAllBytes(file);
        return bytes switch
        {
            [(byte)'R', (byte)'I', (byte)'F', (byte)'F', ..] => SoundMark.IsOn(there),
            [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => PictureMark.IsOn(there),
            [(byte)'<', ..] => there is [(byte)'<', ..]
                && Encoding.UTF8.GetString(there, 0, Math.Min(there.Length, MarkupHead)).Contains(InMarkup, StringComparison.Ordinal),
            [(byte)'{', ..] => Shape(there) == Shape(bytes),
            _ => IsTable(there, [FirstLine(Encoding.UTF8.GetString(bytes)), .. otherHeads]),
        };
    }

    // The same keys and units in the same places, whatever the numbers.
    private static string Shape(ReadOnlySpan<byte> text) => Numbers().Replace(Encoding.UTF8.GetString(text), "#");

    // The header, and under it nothing but numbers as they are written here: somebody else's table has notes, rounded figures, other line ends.
    private static bool IsTable(byte[] there, IReadOnlyList<string> heads)
    {
        var lines = Encoding.UTF8.GetString(there).Split('\n');
        return heads.Contains(lines[0]) && lines[^1].Length == 0 && lines[1..^1].All(line => line.Split(',').All(IsCell));
    }

    private static bool IsCell(string cell) =>
        cell.Length == 0
        || (
            double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            && number.ToString("R", CultureInfo.InvariantCulture) == cell
        );

    private static string FirstLine(string text) => text.Split('\n', 2)[0];

    [GeneratedRegex("[0-9][0-9.eE+-]*", RegexOptions.CultureInvariant)]
    private static partial Regex Numbers();
}
