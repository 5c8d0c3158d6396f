using System.Text;
using static Stillwall.Files.Markup;

namespace Stillwall.Files.Charts;

/// <summary>Writes a picture as SVG.</summary>
internal static class SvgPainter
{
    private const string Fonts = "'Atkinson Hyperlegible', system-ui, 'Helvetica Neue', Arial, sans-serif";

    internal static string Of(IEnumerable<Mark> marks, double width, double height, string title, string description)
    {
        var text = new StringBuilder(Head(width, height, "", $"font-family=\"{Fonts}\"", title, description));
        foreach (var mark in marks)
        {
            text.Append(Element(mark)).Append('\n');
        }

        return text.Append("</svg>\n").ToString();
    }

    private static string Element(Mark mark) =>
        mark switch
        {
            StrokeMark s => $"<path d=\"{string.Concat(s.Lines.Select(l => Path(l)))}\" fill=\"none\" stroke=\"{s.Colour}\" stroke-width=\"{N(s.Width)}\" "
                + $"stroke-linejoin=\"round\"{(s.Dash.Length > 0 ? $" stroke-dasharray=\"{s.Dash}\"" : "")}/>",
            AreaMark a =>
                $"<path d=\"{Path(a.Ring)}Z\" fill=\"{a.Fill}\"{(a.EdgeWidth > 0 ? $" stroke=\"{a.Edge}\" stroke-width=\"{N(a.EdgeWidth)}\"" : "")}/>",
            DiscMark d => $"<circle cx=\"{N(d.Middle.X)}\" cy=\"{N(d.Middle.Y)}\" r=\"{N(d.Radius)}\" fill=\"{d.Fill}\" stroke=\"{d.Edge}\" "
                + $"stroke-width=\"{N(d.EdgeWidth)}\"/>",
            TextMark t => Text(t),
            _ => throw new ArgumentOutOfRangeException(nameof(mark), mark, "accepted: stroke, area, disc, text"),
        };

    private static string Text(TextMark t)
    {
        var anchor = t.Anchor switch
        {
            Anchor.Middle => AtMiddle,
            Anchor.End => AtEnd,
            _ => "",
        };
        return $"<text x=\"{N(t.At.X)}\" y=\"{N(t.At.Y)}\" font-size=\"{N(t.Size)}\"{anchor}{(t.Bold ? " font-weight=\"700\"" : "")} "
            + $"fill=\"{t.Colour}\" stroke=\"{t.Ground}\" stroke-width=\"4\" stroke-linejoin=\"round\" paint-order=\"stroke\">{Escaped(t.Text)}</text>";
    }

    private static string Path(IReadOnlyList<Pixel> spots) => string.Concat(spots.Select((s, i) => $"{(i == 0 ? "M" : "L")}{N(s.X)} {N(s.Y)}"));
}
