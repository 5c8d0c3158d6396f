using System.Globalization;
using System.Text;
using Stillwall.Figures.Sheets;
using static Stillwall.Files.Markup;

namespace Stillwall.Files.Drawings;

/// <summary>Sheets as SVG: one unit is one millimetre on paper.</summary>
internal static class SheetSvg
{
    internal const string Fonts = "Helvetica, Arial, 'Liberation Sans', sans-serif";

    internal const string Ink = "#23282B";

    private const string Paper = "#FFFFFF",
        Body = "#F0ECE3";

    // Hatching of what is cut: lines at 45° for plastic, dots for cast (ISO 128-3 leaves materials to the drawer; from memory).
    private const string Patterns =
        "<defs>"
        + "<pattern id=\"plastic\" width=\"1\" height=\"1\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><rect width=\"1\" "
        + "height=\"1\" fill=\"#FFFFFF\"/><path d=\"M0 0V1\" stroke=\"#23282B\" stroke-width=\"0.36\"/></pattern>"
        + "<pattern id=\"cast\" width=\"2\" height=\"2\" patternUnits=\"userSpaceOnUse\"><rect width=\"2\" height=\"2\" fill=\"#EDE8DC\"/><circle "
        + "cx=\"0.5\" cy=\"0.5\" r=\"0.2\" fill=\"#6B6558\"/><circle cx=\"1.5\" cy=\"1.5\" r=\"0.13\" fill=\"#6B6558\"/></pattern>"
        + "</defs>\n";

    /// <summary>Writes a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>The text of the file, its size stated in millimetres; the same sheet gives the same bytes.</returns>
    /// <exception cref="ArgumentNullException">No sheet.</exception>
    public static string Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var look = $"font-family=\"{Fonts}\" stroke-linecap=\"round\" stroke-linejoin=\"round\"";
        var text = new StringBuilder(Head(sheet.WidthMm, sheet.HeightMm, "mm", look, sheet.Title, sheet.Description)).Append(Patterns);
        text.Append(CultureInfo.InvariantCulture, $"<rect width=\"{N(sheet.WidthMm)}\" height=\"{N(sheet.HeightMm)}\" fill=\"{Paper}\"/>\n");
        foreach (var mark in sheet.Marks)
        {
            Write(text, mark);
        }

        return text.Append("</svg>\n").ToString();
    }

    private static void Write(StringBuilder text, SheetMark mark)
    {
        switch (mark)
        {
            case SheetGroup group:
                text.Append(CultureInfo.InvariantCulture, $"<g class=\"{Escaped(group.Kind)}\">\n");
                foreach (var member in group.Marks)
                {
                    Write(text, member);
                }

                text.Append("</g>\n");
                break;
            case SheetPath path:
                var lines = string.Concat(path.Lines.Select(l => Path(l, path.Closed)));
                var rule = path.Lines.Count > 1 && path.Fill != SheetFill.None ? " fill-rule=\"evenodd\"" : "";
                text.Append(CultureInfo.InvariantCulture, $"<path d=\"{lines}\"{Look(path.Line, path.Fill)}{rule}/>\n");
                break;
            case SheetCircle circle:
                text.Append(
                    CultureInfo.InvariantCulture,
                    $"<circle cx=\"{N(circle.Centre.XMm)}\" cy=\"{N(circle.Centre.YMm)}\" r=\"{N(circle.RadiusMm)}\"{Look(circle.Line, circle.Fill)}/>\n"
                );
                break;
            case SheetText written:
                Write(text, written);
                break;
        }
    }

    private static void Write(StringBuilder text, SheetText written)
    {
        var anchor = written.Anchor switch
        {
            SheetAnchor.Middle => AtMiddle,
            SheetAnchor.End => AtEnd,
            _ => "",
        };
        var (x, y) = (N(written.At.XMm), N(written.At.YMm));
        var turned = written.Upright ? $" transform=\"rotate(-90 {x} {y})\"" : "";
        text.Append(
            CultureInfo.InvariantCulture,
            $"<text x=\"{x}\" y=\"{y}\" font-size=\"{N(written.SizeMm)}\"{anchor}{turned}{(written.Bold ? " font-weight=\"700\"" : "")} "
                + $"fill=\"{Ink}\">{Escaped(written.Text)}</text>\n"
        );
    }

    // Widths: wide 0.35 mm and narrow 0.18 mm, two steps of ISO 128-2 apart; the frame 0.7 mm (from memory).
    private static string Look(SheetLine line, SheetFill fill)
    {
        var inside = fill switch
        {
            SheetFill.Plastic => "url(#plastic)",
            SheetFill.Cast => "url(#cast)",
            SheetFill.Body => Body,
            SheetFill.Paper => Paper,
            SheetFill.Ink => Ink,
            _ => "none",
        };
        var (width, dash) = line switch
        {
            SheetLine.Visible => ("0.35", ""),
            SheetLine.Frame => ("0.7", ""),
            SheetLine.Hidden => ("0.18", "2 1"),
            SheetLine.Centre => ("0.18", "6 1 0.4 1"),
            SheetLine.Phantom => ("0.18", "6 1 0.4 1 0.4 1"),
            _ => ("0.18", ""),
        };
        return $" fill=\"{inside}\""
            + (line == SheetLine.None ? "" : $" stroke=\"{Ink}\" stroke-width=\"{width}\"{(dash.Length > 0 ? $" stroke-dasharray=\"{dash}\"" : "")}");
    }

    private static string Path(IReadOnlyList<SheetPoint> points, bool closed) =>
        string.Concat(points.Select((p, i) => $"{(i == 0 ? "M" : i == 1 ? "L" : " ")}{N(p.XMm)} {N(p.YMm)}")) + (closed ? "Z" : "");
}
