using Stillwall.Numerics;

namespace Stillwall.Shapes;

/// <summary>Letters of single strokes, drawn here for cutting names into parts: A to Z, 0 to 9, hyphen, point, slash.</summary>
internal static class Lettering
{
    /// <summary>Depth to which a name is cut, mm (our choice: two thin layers).</summary>
    public const double Depth = 0.4;

    /// <summary>Width of a stroke, mm (our choice: one line of a 0.6 mm nozzle).</summary>
    public const double Stroke = 0.6;

    private const int UnitsHigh = 6,
        UnitsWide = 4,
        Advance = 6;

    // Each letter on a grid four wide and six high; two digits are a point, a blank goes on, a semicolon lifts the pen.
    private static readonly Dictionary<char, string> Letters = new()
    {
        ['A'] = "00 04 26 44 40;02 42",
        ['B'] = "00 06 36 45 44 33 03;33 42 41 30 00",
        ['C'] = "45 36 16 05 01 10 30 41",
        ['D'] = "00 06 26 44 42 20 00",
        ['E'] = "46 06 00 40;03 33",
        ['F'] = "46 06 00;03 33",
        ['G'] = "45 36 16 05 01 10 30 41 43 23",
        ['H'] = "00 06;40 46;03 43",
        ['I'] = "20 26;10 30;16 36",
        ['J'] = "46 41 30 10 01",
        ['K'] = "00 06;46 03 40",
        ['L'] = "06 00 40",
        ['M'] = "00 06 23 46 40",
        ['N'] = "00 06 40 46",
        ['O'] = "10 01 05 16 36 45 41 30 10",
        ['P'] = "00 06 36 45 44 33 03",
        ['Q'] = "10 01 05 16 36 45 41 30 10;22 40",
        ['R'] = "00 06 36 45 44 33 03;23 40",
        ['S'] = "45 36 16 05 04 13 33 42 41 30 10 01",
        ['T'] = "06 46;26 20",
        ['U'] = "06 01 10 30 41 46",
        ['V'] = "06 20 46",
        ['W'] = "06 10 24 30 46",
        ['X'] = "00 46;06 40",
        ['Y'] = "06 23 46;23 20",
        ['Z'] = "06 46 00 40",
        ['0'] = "10 01 05 16 36 45 41 30 10;01 45",
        ['1'] = "14 26 20;10 30",
        ['2'] = "05 16 36 45 44 00 40",
        ['3'] = "06 46 23 33 42 41 30 10 01",
        ['4'] = "30 36 02 42",
        ['5'] = "46 06 03 33 42 41 30 10 01",
        ['6'] = "36 16 05 01 10 30 41 42 33 03",
        ['7'] = "06 46 10",
        ['8'] = "13 04 05 16 36 45 44 33 13 02 01 10 30 41 42 33",
        ['9'] = "10 30 41 45 36 16 05 04 13 43",
        ['-'] = "13 33",
        ['.'] = "20",
        ['/'] = "00 46",
    };

    private const string Unknown = "00 06 46 40 00";

    /// <summary>Draws a line of text that begins at the origin.</summary>
    /// <param name="text">The text; small letters are drawn as capitals, what has no letter here as a box.</param>
    /// <param name="height">Height of a letter between the middles of its strokes, mm, 4 to 200.</param>
    /// <returns>The strokes, 0.6 mm wide; empty for blanks. Mirror it where it is read from below.</returns>
    public static Region Text(string text, double height)
    {
        ArgumentNullException.ThrowIfNull(text);
        Require.Within(height, 4, 200, nameof(height), "mm");
        var unit = height / UnitsHigh;
        return Region.Strokes(text.ToUpperInvariant().SelectMany((letter, i) => Lines(letter, i * Advance, unit)), Stroke);
    }

    /// <summary>How wide a line of text is, between the middles of its outer strokes.</summary>
    public static double WidthMm(string text, double height)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? 0 : (Advance * (text.Length - 1) + UnitsWide) * height / UnitsHigh;
    }

    private static IEnumerable<IReadOnlyList<(double X, double Y)>> Lines(char letter, int shift, double unit) =>
        letter == ' '
            ? []
            : Letters
                .GetValueOrDefault(letter, Unknown)
                .Split(';')
                .Select(line => line.Split(' ').Select(p => ((p[0] - '0' + shift) * unit, (p[1] - '0') * unit)).ToList());
}
