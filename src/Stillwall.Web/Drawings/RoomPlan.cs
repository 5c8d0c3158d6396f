using Stillwall.Appraisals;
using Stillwall.Web.Texts;
using static Stillwall.Web.Drawings.Pen;
using Stillwall.Shapes;

namespace Stillwall.Web.Drawings;

/// <summary>The room from above, to scale, with the cabinet and the seat.</summary>
internal static class RoomPlan
{
    private const double Left = 62,
        Top = 22,
        MostAcross = 210,
        MostUp = 262;

    /// <summary>Draws the view; null where the room's width or length is not stated.</summary>
    internal static View? Of(Facts facts)
    {
        if (facts.Project.Brief.Room is not { WidthM: { } width, LengthM: { } length } room)
        {
            return null;
        }

        var pen = new Pen();
        var scale = Math.Min(MostAcross / width, MostUp / length);
        var (w, h) = (width * scale, length * scale);
        double X(double x) => Left + x * scale;
        double Y(double y) => Top + h - y * scale;
        pen.Path("brick", Square(Left - 11, Top - 11, w + 22, h + 22) + Square(Left, Top, w, h), true).Path("wall", Square(Left, Top, w, h));
        var (cabinet, seat) = (room.CabinetAtM, room.SeatAtM);
        if (cabinet is [var cx, var cy, ..])
        {
            var (across, deep) = facts.Sizes is { } s ? (s.Width.InMetres(), s.Depth.InMetres()) : (0.25, 0.25);
            pen.Path("cabinetplan", Square(X(cx - across / 2), Y(cy), across * scale, deep * scale))
                .Line("lead", X(cx), Y(cy), X(cx) + 26, Y(cy) - 22)
                .Text("t", X(cx) + 29, Y(cy) - 24, DrawingTexts.Cabinet);
        }

        if (seat is [var sx, var sy, ..])
        {
            pen.Circle("thing fillp", X(sx), Y(sy), 0.14 * scale)
                .Path("thing", $"M{N(X(sx) - .3 * scale)} {N(Y(sy) - .2 * scale)}v{N(.45 * scale)}h{N(.6 * scale)}v{N(-.45 * scale)}")
                .Text("t", X(sx) - .38 * scale, Y(sy) + 4, DrawingTexts.Seat, "end");
            if (cabinet is [var fx, var fy, ..])
            {
                pen.Line("axis", X(fx), Y(fy), X(sx), Y(sy))
                    .Figure(
                        "size",
                        (X(fx) + X(sx)) / 2 + 8,
                        (Y(fy) + Y(sy)) / 2,
                        "start",
                        new FigurePiece($"({facts.Show.Distance(facts.Standing.SeatM ?? 0)})", "standing.seat_m", DrawingTexts.SeatAway)
                    );
            }
        }

        pen.Text("tb", Left + 10, Top + 20, $"{DrawingTexts.Room}, m");
        pen.Across(true, Left, Left + w, Top + h + 34, Top + h + 13, 60).Up(true, Top, Top + h, 24, Left - 13, 34);
        return new View(
            Width: Left + MostAcross + 30,
            Height: Top + h + 48,
            Title: DrawingTexts.RoomTitle,
            Description: DrawingTexts.RoomTitle,
            Svg: pen.Svg,
            Fields:
            [
                new(Key: "brief.room.width", Label: DrawingTexts.RoomWidth, X: Left + w / 2, Y: Top + h + 34, Unit: "m", Characters: 4, Step: 0.1),
                new(Key: "brief.room.length", Label: DrawingTexts.RoomLength, X: 24, Y: Top + h / 2, Unit: "m", Characters: 4, Step: 0.1),
            ],
            Marks: []
        )
        {
            Figures = pen.Figures,
        };
    }
}
