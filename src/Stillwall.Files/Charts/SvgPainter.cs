using System.Globalization;
using System.Security;
using System.Text;
using Stillwall.Files.Outputs;

namespace Stillwall.Files.Charts;

/// <summary>Writes a picture as SVG: no identities, no dates, two decimals of a pixel, so that the same chart is the same bytes everywhere.</summary>
internal static class SvgPainter
{
    private const string Fonts = "'Atkinson Hyperlegible', system-ui, 'Helvetica Neue', Arial, sans-serif";

    internal static string Of(IEnumerable<Mark> marks, double width, double height, string title, string description)
    {
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" {OwnMark.InMarkup} width=\"{Px(width)}\" height=\"{Px(height)}\" viewBox=\"0 0 {Px(width)} "
                + $"{Px(height)}\" role=\"img\" font-family=\"{Fonts}\">\n"
        );
        text.Append(CultureInfo.InvariantCulture, $"<title>{Escaped(title)}</title>\n<desc>{Escaped(description)}</desc>\n");
        foreach (var mark in marks)
        {
            text.Append(Element(mark)).Append('\n');
        }

        return text.Append("</svg>\n").ToString();
    }

    private static string Element(Mark mark) =>
        mark switch
        {
            StrokeMark s => $"<path d=\"{string.Concat(s.Lines.Select(l => Path(l)))}\" fill=\"none\" stroke=\"{s.Colour}\" stroke-width=\"{Px(s.Width)}\" "
                + $"stroke-linejoin=\"round\"{(s.Dash.Length > 0 ? $" stroke-dasharray=\"{s.Dash}\"" : "")}/>",
            AreaMark a =>
                $"<path d=\"{Path(a.Ring)}Z\" fill=\"{a.Fill}\"{(a.EdgeWidth > 0 ? $" stroke=\"{a.Edge}\" stroke-width=\"{Px(a.EdgeWidth)}\"" : "")}/>",
            DiscMark d => $"<circle cx=\"{Px(d.Middle.X)}\" cy=\"{Px(d.Middle.Y)}\" r=\"{Px(d.Radius)}\" fill=\"{d.Fill}\" stroke=\"{d.Edge}\" "
                + $"stroke-width=\"{Px(d.EdgeWidth)}\"/>",
            TextMark t => Text(t),
            _ => throw new ArgumentOutOfRangeException(nameof(mark), mark, "accepted: stroke, area, disc, text"),
        };

    private static string Text(TextMark t)
    {
        var anchor = t.Anchor switch
        {
            Anchor.Middle => " text-anchor=\"middle\"",
            Anchor.End => " text-anchor=\"end\"",
            _ => "",
        };
        return $"<text x=\"{Px(t.At.X)}\" y=\"{Px(t.At.Y)}\" font-size=\"{Px(t.Size)}\"{anchor}{(t.Bold ? " font-weight=\"700\"" : "")} "
            + $"fill=\"{t.Colour}\" stroke=\"{t.Ground}\" stroke-width=\"4\" stroke-linejoin=\"round\" paint-order=\"stroke\">{Escaped(t.Text)}</text>";
    }

    private static string Path(IReadOnlyList<Spot> spots) => string.Concat(spots.Select((s, i) => $"{(i == 0 ? "M" : "L")}{Px(s.X)} {Px(s.Y)}"));

    private static string Px(double value) => value.ToString("0.##", CultureInfo.InvariantCulture) is var text && text == "-0" ? "0" : text;

    private static string Escaped(string text) => SecurityElement.Escape(text) ?? "";
}
