using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>Draws on one sheet.</summary>
internal sealed class SheetPen
{
    /// <summary>Size of figures and notes, mm (ISO 3098: 2.5 mm, from memory).</summary>
    internal const double Small = 2.5;

    /// <summary>Size of titles of views, mm.</summary>
    internal const double Middle = 3.5;

    internal const double ArrowLength = 2.6,
        ArrowHalf = 0.45;

    private readonly List<SheetMark> marks = [];

    internal IReadOnlyList<SheetMark> Marks => marks;

    internal void Add(params IEnumerable<SheetMark> added) => marks.AddRange(added);

    internal void Group(string kind, IReadOnlyList<SheetMark> members) => marks.Add(new SheetGroup(kind, members));

    internal void Region(SheetView view, Region region, SheetFill fill, SheetLine line = SheetLine.Visible)
    {
        if (!region.IsEmpty)
        {
            marks.Add(new SheetPath(view.Rings(region), line, Closed: true, fill));
        }
    }

    internal void Lines(SheetView view, IEnumerable<SeenLine> lines, SheetLine line = SheetLine.Visible)
    {
        var chained = view.Chained(lines);
        if (chained.Count > 0)
        {
            marks.Add(new SheetPath(chained, line));
        }
    }

    internal void Circle(SheetView view, double u, double v, double diameter, SheetLine line, SheetFill fill = SheetFill.None) =>
        marks.Add(new SheetCircle(view.At(u, v), diameter / 2 * view.ScaleRatio, line, fill));

    /// <summary>Crossed centre lines that reach past a circle.</summary>
    internal void Centre(SheetView view, double u, double v, double diameter)
    {
        var (at, reach) = (view.At(u, v), diameter / 2 * view.ScaleRatio + 2);
        marks.Add(
            new SheetPath(
                [
                    [new(at.XMm - reach, at.YMm), new(at.XMm + reach, at.YMm)],
                    [new(at.XMm, at.YMm - reach), new(at.XMm, at.YMm + reach)],
                ],
                SheetLine.Centre
            )
        );
    }

    internal void Rectangle(SheetBox box, SheetLine line, SheetFill fill = SheetFill.None) =>
        marks.Add(
            new SheetPath(
                [
                    [new(box.LeftMm, box.TopMm), new(box.RightMm, box.TopMm), new(box.RightMm, box.BottomMm), new(box.LeftMm, box.BottomMm)],
                ],
                line,
                Closed: true,
                fill
            )
        );

    internal void Text(string text, double x, double y, double size = Small, SheetAnchor anchor = SheetAnchor.Start, bool bold = false) =>
        marks.Add(new SheetText(text, new SheetPoint(x, y), size, anchor, Bold: bold));

    /// <summary>Breaks a text at its spaces, as wide as there is room.</summary>
    internal static IEnumerable<string> Wrapped(string text, double room, double size = Small)
    {
        var line = "";
        foreach (var word in text.Split(' '))
        {
            if (line.Length > 0 && SheetText.WidthMm($"{line} {word}", size) > room)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        yield return line;
    }

    internal static SheetPath Line(SheetLine line, params IReadOnlyList<SheetPoint> points) => new([points], line);

    /// <summary>A closed, filled arrow head whose tip is at a place and which points along a direction of unit length.</summary>
    internal static SheetPath Arrow(SheetPoint tip, double dx, double dy)
    {
        var (x, y) = (tip.XMm - ArrowLength * dx, tip.YMm - ArrowLength * dy);
        return new SheetPath(
            [
                [tip, new(x - ArrowHalf * dy, y + ArrowHalf * dx), new(x + ArrowHalf * dy, y - ArrowHalf * dx)],
            ],
            SheetLine.None,
            Closed: true,
            SheetFill.Ink
        );
    }
}
