using System.Text;
using Stillwall.Files;

namespace Stillwall.Web.Drawings;

/// <summary>A place where a stated value is edited on a drawing.</summary>
/// <param name="Label">What it is, for those who do not see the drawing.</param>
/// <param name="X">Middle across, in drawing units.</param>
/// <param name="Y">Middle down, in drawing units.</param>
/// <param name="Unit">Unit of the number; empty for none.</param>
/// <param name="Step">What an arrow key adds.</param>
internal sealed record FieldPlace(string Key, string Label, double X, double Y, string Unit, int Characters = 4, double Step = 1);

/// <summary>A place where a finding about a size is marked.</summary>
/// <param name="X">Middle across, in drawing units.</param>
/// <param name="Y">Middle down, in drawing units.</param>
internal sealed record MarkPlace(string Id, double X, double Y);

/// <summary>Words and figures at a place of a drawing.</summary>
/// <param name="Pieces">What stands there, from left to right.</param>
/// <param name="X">Place across, in drawing units.</param>
/// <param name="Y">Middle down, in drawing units.</param>
/// <param name="Anchor">What of the text is at that place: <c>start</c>, <c>middle</c> or <c>end</c>.</param>
internal sealed record FigurePlace(IReadOnlyList<FigurePiece> Pieces, double X, double Y, string Anchor, string Css);

/// <summary>A figure on a drawing, or words beside it.</summary>
/// <param name="Of">Path of the result, id of a finding or key of the project file; null for words.</param>
internal sealed record FigurePiece(string Text, string? Of = null, string Name = "", string Unit = "");

/// <summary>One view of a drawing: lines as SVG, fields, figures and marks above it.</summary>
/// <param name="Description">The same in a sentence, for those who do not see it.</param>
internal sealed record View(
    double Width,
    double Height,
    string Title,
    string Description,
    string Svg,
    IReadOnlyList<FieldPlace> Fields,
    IReadOnlyList<MarkPlace> Marks
)
{
    /// <summary>Figures that say why, above the lines.</summary>
    internal IReadOnlyList<FigurePlace> Figures { get; init; } = [];
}

/// <summary>Draws lines, texts and dimensions as SVG. Every text is escaped.</summary>
internal sealed class Pen
{
    // The middle of a line of text stands so far above its foot.
    private const double ArrowLength = 8,
        ArrowHalf = 1.7,
        HalfLetter = 4;

    private readonly StringBuilder svg = new();
    private readonly List<FigurePlace> figures = [];

    internal IReadOnlyList<FigurePlace> Figures => figures;

    internal string Svg => svg.ToString();

    internal static string N(double value) => Markup.N(value);

    internal Pen Path(string css, string d, bool evenOdd = false) => Put($"<path class=\"{css}\"{(evenOdd ? " fill-rule=\"evenodd\"" : "")} d=\"{d}\"/>");

    internal Pen Line(string css, double x1, double y1, double x2, double y2) => Path(css, $"M{N(x1)} {N(y1)}L{N(x2)} {N(y2)}");

    internal Pen Box(string css, double x, double y, double width, double height) =>
        width <= 0 || height <= 0 ? this : Put($"<rect class=\"{css}\" x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(width)}\" height=\"{N(height)}\"/>");

    internal Pen Circle(string css, double x, double y, double radius) =>
        radius <= 0 ? this : Put($"<circle class=\"{css}\" cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(radius)}\"/>");

    internal Pen Text(string css, double x, double y, string text, string anchor = "start") =>
        Put($"<text class=\"{css}\" x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\">{Markup.Escaped(text)}</text>");

    /// <summary>Words and figures that say why, at the place of a text.</summary>
    internal Pen Figure(string css, double x, double y, string anchor, params FigurePiece[] pieces)
    {
        figures.Add(new FigurePlace(pieces, x, y - HalfLetter, anchor, css));
        return this;
    }

    /// <summary>A line from a place to a label, ending in a dot.</summary>
    internal Pen Leader(double fromX, double fromY, double toX, double toY) => Line("lead", fromX, fromY, toX, toY).Circle("dot", toX, toY, 1.7);

    /// <summary>A size across, with its extension lines, and a gap for its number.</summary>
    /// <param name="isStated">Whether it is stated here; else it follows.</param>
    /// <param name="gap">Width of the gap; 0 where the number stands beside the line.</param>
    internal Pen Across(bool isStated, double x1, double x2, double y, double fromY, double gap)
    {
        var (line, arrow) = isStated ? ("de", "ae") : ("dr", "ar");
        var middle = (x1 + x2) / 2;
        Line("ext", x1, fromY, x1, y + 4).Line("ext", x2, fromY, x2, y + 4);
        if (x2 - x1 < 2 * ArrowLength + 6)
        {
            return Line(line, x1 - 14, y, x1, y)
                .Line(line, x2, y, x2 + 14, y)
                .ArrowAcross(arrow, x1, y, -1)
                .ArrowAcross(arrow, x2, y, 1)
                .Line(line, x1, y, x2, y);
        }

        _ = gap <= 0 || gap > x2 - x1 - 4 ? Line(line, x1, y, x2, y) : Line(line, x1, y, middle - gap / 2, y).Line(line, middle + gap / 2, y, x2, y);
        return ArrowAcross(arrow, x1, y, 1).ArrowAcross(arrow, x2, y, -1);
    }

    /// <summary>A size up and down.</summary>
    internal Pen Up(bool isStated, double y1, double y2, double x, double fromX, double gap)
    {
        var (line, arrow) = isStated ? ("de", "ae") : ("dr", "ar");
        var middle = (y1 + y2) / 2;
        Line("ext", fromX, y1, x - 4, y1).Line("ext", fromX, y2, x - 4, y2);
        if (y2 - y1 < 2 * ArrowLength + 6)
        {
            return Line(line, x, y1 - 14, x, y2 + 14).ArrowUp(arrow, x, y1, -1).ArrowUp(arrow, x, y2, 1);
        }

        _ = gap > y2 - y1 - 4 ? Line(line, x, y1, x, y2) : Line(line, x, y1, x, middle - gap / 2).Line(line, x, middle + gap / 2, x, y2);
        return ArrowUp(arrow, x, y1, 1).ArrowUp(arrow, x, y2, -1);
    }

    /// <summary>An arrowhead at a place, the way it points away from: 1 to the right, −1 to the left.</summary>
    internal Pen ArrowAcross(string css, double x, double y, int body) =>
        Path(css, $"M{N(x)} {N(y)}L{N(x + body * ArrowLength)} {N(y - ArrowHalf)}L{N(x + body * ArrowLength)} {N(y + ArrowHalf)}Z");

    internal Pen ArrowUp(string css, double x, double y, int body) =>
        Path(css, $"M{N(x)} {N(y)}L{N(x - ArrowHalf)} {N(y + body * ArrowLength)}L{N(x + ArrowHalf)} {N(y + body * ArrowLength)}Z");

    /// <summary>Outline of a rectangle with round corners, for a path.</summary>
    internal static string Rounded(double x, double y, double width, double height, double radius)
    {
        var r = Math.Max(0, Math.Min(radius, Math.Min(width, height) / 2));
        var (w, h, a) = (N(width - 2 * r), N(height - 2 * r), N(r));
        return $"M{N(x + r)} {N(y)}h{w}a{a} {a} 0 0 1 {a} {a}v{h}a{a} {a} 0 0 1 -{a} {a}h-{w}a{a} {a} 0 0 1 -{a} -{a}v-{h}a{a} {a} 0 0 1 {a} -{a}z";
    }

    internal static string Square(double x, double y, double width, double height) => $"M{N(x)} {N(y)}h{N(width)}v{N(height)}h-{N(width)}z";

    internal Pen Put(string markup)
    {
        svg.Append(markup);
        return this;
    }
}
