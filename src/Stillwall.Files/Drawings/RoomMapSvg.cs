using System.Globalization;
using System.Text;
using Stillwall.Appraisals;
using Stillwall.Neighbours.Rooms;
using static Stillwall.Files.Markup;

namespace Stillwall.Files.Drawings;

/// <summary>Plan of a room as SVG, coloured by level in steps of 3 dB: one unit is one millimetre on paper.</summary>
internal static class RoomMapSvg
{
    private const double Plan = 150,
        Left = 20,
        Top = 24,
        Key = 34,
        StepDb = 3;

    private const string Ink = SheetSvg.Ink,
        Soft = "#62686B",
        Paper = "#FBFAF6";

    // From where it is quiet to where it is loud: chalk to form-ply to ink; told apart in grey too.
    private static readonly (double R, double G, double B)[] Shades = [(251, 250, 246), (238, 222, 196), (224, 176, 116), (170, 104, 44), (104, 52, 20)];

    /// <summary>Draws a map.</summary>
    /// <param name="map">The map.</param>
    /// <param name="show">How sizes are written.</param>
    /// <returns>The text of the file; the same map gives the same bytes.</returns>
    internal static string Of(RoomMap map, Show show)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(show);
        var scale = Plan / Math.Max(map.Room.WidthM, map.Room.LengthM);
        var (wide, high) = (map.Room.WidthM * scale, map.Room.LengthM * scale);
        var (sheetWide, sheetHigh) = (Math.Max(Left + wide + Key + 16, 120), Top + Math.Max(high, 90) + 26);
        var (title, said) = ($"The room at {Show.Frequency(map.FrequencyHz)}", Said(map));
        var look = $"font-family=\"{SheetSvg.Fonts}\" font-size=\"4\" fill=\"{Ink}\"";
        var text = new StringBuilder(Head(sheetWide, sheetHigh, "mm", look, title, said));
        text.Append(CultureInfo.InvariantCulture, $"<rect width=\"{N(sheetWide)}\" height=\"{N(sheetHigh)}\" fill=\"{Paper}\"/>\n");
        text.Append(CultureInfo.InvariantCulture, $"<text x=\"{N(Left)}\" y=\"10\" font-size=\"5.5\" font-weight=\"700\">{Escaped(title)}</text>\n");
        text.Append(CultureInfo.InvariantCulture, $"<text x=\"{N(Left)}\" y=\"17\" fill=\"{Soft}\">{Escaped(said)}</text>\n");
        var upper = Math.Ceiling((map.LevelsDb.Max(row => row.Max()) - map.MeanDb) / StepDb) * StepDb;
        Cells(text, map, wide, high, upper);
        text.Append(
            CultureInfo.InvariantCulture,
            $"<rect x=\"{N(Left)}\" y=\"{N(Top)}\" width=\"{N(wide)}\" height=\"{N(high)}\" fill=\"none\" stroke=\"{Ink}\" stroke-width=\"1.2\"/>\n"
        );
        Marks(text, map.Room, scale, high);
        Sizes(text, map.Room, show, wide, high);
        Steps(text, upper, Left + wide + 8);
        return text.Append("</svg>\n").ToString();
    }

    private static string Said(RoomMap map) => $"seat {Show.Level(map.SeatDb - map.MeanDb)} against the mean of the room; colour: level against that mean";

    // Cells of one shade side by side are one strip, a hair wider than their place so that no seam shows.
    private static void Cells(StringBuilder text, RoomMap map, double wide, double high, double upper)
    {
        var rows = map.LevelsDb.Count;
        text.Append("<g shape-rendering=\"crispEdges\">\n");
        for (var row = 0; row < rows; row++)
        {
            var steps = map.LevelsDb[row].Select(level => Step(level - map.MeanDb, upper)).ToArray();
            var y = Top + high - ((row + 1) * high / rows);
            for (var from = 0; from < steps.Length;)
            {
                var to = from + 1;
                while (to < steps.Length && steps[to] == steps[from])
                {
                    to++;
                }

                text.Append(
                    CultureInfo.InvariantCulture,
                    $"<rect x=\"{N(Left + (from * wide / steps.Length))}\" y=\"{N(y)}\" width=\"{N(((to - from) * wide / steps.Length) + 0.05)}\" "
                        + $"height=\"{N((high / rows) + 0.05)}\" fill=\"{Colour(steps[from])}\"/>\n"
                );
                from = to;
            }
        }

        text.Append("</g>\n");
    }

    private static void Marks(StringBuilder text, RoomGeometry room, double scale, double high)
    {
        double X(double x) => Left + (x * scale);
        double Y(double y) => Top + high - (y * scale);
        var (cabinetX, cabinetY, seatX, seatY) = (X(room.Cabinet.XM), Y(room.Cabinet.YM), X(room.Seat.XM), Y(room.Seat.YM));
        text.Append(
            CultureInfo.InvariantCulture,
            $"<rect x=\"{N(cabinetX - 4)}\" y=\"{N(cabinetY - 4)}\" width=\"8\" height=\"8\" fill=\"{Paper}\" stroke=\"{Ink}\" "
                + $"stroke-width=\"0.7\"/>\n<circle cx=\"{N(cabinetX)}\" cy=\"{N(cabinetY)}\" r=\"2.4\" fill=\"none\" stroke=\"{Ink}\" stroke-width=\"0.5\"/>\n"
        );
        text.Append(
            CultureInfo.InvariantCulture,
            $"<circle cx=\"{N(seatX)}\" cy=\"{N(seatY)}\" r=\"4\" fill=\"{Paper}\" stroke=\"{Ink}\" stroke-width=\"0.7\"/>\n<circle cx=\"{N(seatX)}\" "
                + $"cy=\"{N(seatY)}\" r=\"1.2\" fill=\"{Ink}\"/>\n"
        );
        Label(text, "cabinet", cabinetX, cabinetY, room.Cabinet.XM < room.WidthM / 2);
        Label(text, "seat", seatX, seatY, room.Seat.XM < room.WidthM / 2);
    }

    private static void Label(StringBuilder text, string word, double x, double y, bool toRight) =>
        text.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{N(x + (toRight ? 6 : -6))}\" y=\"{N(y + 1.4)}\"{(toRight ? "" : AtEnd)} stroke=\"{Paper}\" stroke-width=\"1.4\" "
                + $"stroke-linejoin=\"round\" paint-order=\"stroke\">{word}</text>\n"
        );

    private static void Sizes(StringBuilder text, RoomGeometry room, Show show, double wide, double high)
    {
        text.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{N(Left + (wide / 2))}\" y=\"{N(Top + high + 7)}\"{AtMiddle}>{Escaped($"width {show.Distance(room.WidthM)}")}</text>\n"
        );
        text.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{N(Left - 5)}\" y=\"{N(Top + (high / 2))}\"{AtMiddle} transform=\"rotate(-90 {N(Left - 5)} "
                + $"{N(Top + (high / 2))})\">{Escaped($"length {show.Distance(room.LengthM)}")}</text>\n"
        );
        text.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{N(Left)}\" y=\"{N(Top + Math.Max(high, 90) + 16)}\" "
                + $"fill=\"{Soft}\">{Escaped($"at ears' height, {show.Distance(room.Seat.ZM)}; rigid walls: a real room blurs it")}</text>\n"
        );
    }

    private static void Steps(StringBuilder text, double upper, double x)
    {
        text.Append(CultureInfo.InvariantCulture, $"<text x=\"{N(x)}\" y=\"{N(Top + 3)}\" fill=\"{Soft}\">against mean</text>\n");
        for (var step = 0; step < Shown; step++)
        {
            var (y, top) = (Top + 6 + (step * 9), Show.Number(upper - (step * StepDb)));
            var label = step == Shown - 1 ? $"under {top} dB" : $"{Show.Number(upper - ((step + 1) * StepDb))} to {top} dB";
            text.Append(
                CultureInfo.InvariantCulture,
                $"<rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"7\" height=\"9\" fill=\"{Colour(step)}\" stroke=\"{Ink}\" stroke-width=\"0.2\"/>\n<text "
                    + $"x=\"{N(x + 9)}\" y=\"{N(y + 6)}\">{Escaped(label)}</text>\n"
            );
        }
    }

    private const int Shown = 9;

    private static int Step(double level, double upper) => Math.Clamp((int)Math.Floor((upper - level) / StepDb), 0, Shown - 1);

    // The loudest step is the darkest.
    private static string Colour(int step)
    {
        var at = (1 - (step / (Shown - 1.0))) * (Shades.Length - 1);
        var (low, part) = (Math.Min((int)at, Shades.Length - 2), at - Math.Min((int)at, Shades.Length - 2));
        string Mixed(Func<(double R, double G, double B), double> of) =>
            ((int)Math.Round(of(Shades[low]) + (part * (of(Shades[low + 1]) - of(Shades[low]))))).ToString("X2", CultureInfo.InvariantCulture);
        return $"#{Mixed(s => s.R)}{Mixed(s => s.G)}{Mixed(s => s.B)}";
    }
}
