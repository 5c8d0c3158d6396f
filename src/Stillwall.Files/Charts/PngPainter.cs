using System.Globalization;
using SkiaSharp;
using Stillwall.Files.Outputs;

namespace Stillwall.Files.Charts;

/// <summary>Paints a picture as PNG. The only place that touches Skia, so that it is not loaded before a PNG is asked for.</summary>
internal static class PngPainter
{
    internal static byte[] Of(IEnumerable<Mark> marks, int width, int height, double scale)
    {
        using var surface =
            SKSurface.Create(new SKImageInfo((int)Math.Round(width * scale), (int)Math.Round(height * scale), SKColorType.Rgba8888, SKAlphaType.Opaque))
            ?? throw new InvalidOperationException("no room in memory for the picture");
        var fonts = MachineFonts.Find() ?? throw new InvalidOperationException("there is no sans font on this machine to write the labels with");
        using var regular = Face(fonts.Regular);
        using var bold = Face(fonts.Bold);
        surface.Canvas.Scale((float)scale);
        foreach (var mark in marks)
        {
            Paint(surface.Canvas, mark, regular, bold);
        }

        using var image = surface.Snapshot();
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return PictureMark.Put(data.ToArray());
    }

    private static SKTypeface Face(string file) => SKTypeface.FromFile(file) ?? throw new InvalidOperationException($"the font {file} cannot be read");

    private static void Paint(SKCanvas canvas, Mark mark, SKTypeface regular, SKTypeface bold)
    {
        switch (mark)
        {
            case StrokeMark s:
                Stroke(canvas, s);
                break;
            case AreaMark a:
                using (var path = Path([a.Ring], close: true))
                {
                    FillAndEdge(a.Fill, a.Edge, a.EdgeWidth, paint => canvas.DrawPath(path, paint));
                }

                break;
            case DiscMark d:
                FillAndEdge(d.Fill, d.Edge, d.EdgeWidth, paint => canvas.DrawCircle((float)d.Middle.X, (float)d.Middle.Y, (float)d.Radius, paint));
                break;
            case TextMark t:
                Text(canvas, t, t.Bold ? bold : regular);
                break;
        }
    }

    private static void Stroke(SKCanvas canvas, StrokeMark mark)
    {
        using var path = Path(mark.Lines, close: false);
        using var paint = Pen(mark.Colour, mark.Width);
        using var dash =
            mark.Dash.Length == 0 ? null : SKPathEffect.CreateDash([.. mark.Dash.Split(' ').Select(d => float.Parse(d, CultureInfo.InvariantCulture))], 0);
        paint.PathEffect = dash;
        canvas.DrawPath(path, paint);
    }

    private static void Text(SKCanvas canvas, TextMark mark, SKTypeface face)
    {
        using var font = new SKFont(face, (float)mark.Size)
        {
            Subpixel = true,
            Hinting = SKFontHinting.None,
            Edging = SKFontEdging.Antialias,
        };
        var align = mark.Anchor switch
        {
            Anchor.Middle => SKTextAlign.Center,
            Anchor.End => SKTextAlign.Right,
            _ => SKTextAlign.Left,
        };
        using var ground = Pen(mark.Ground, 4);
        using var ink = new SKPaint { Color = SKColor.Parse(mark.Colour), IsAntialias = true };
        canvas.DrawText(mark.Text, (float)mark.At.X, (float)mark.At.Y, align, font, ground);
        canvas.DrawText(mark.Text, (float)mark.At.X, (float)mark.At.Y, align, font, ink);
    }

    private static void FillAndEdge(string fill, string edge, double width, Action<SKPaint> draw)
    {
        using var inside = new SKPaint { Color = SKColor.Parse(fill), IsAntialias = true };
        draw(inside);
        if (width > 0)
        {
            using var pen = Pen(edge, width);
            draw(pen);
        }
    }

    private static SKPaint Pen(string colour, double width) =>
        new()
        {
            Color = SKColor.Parse(colour),
            IsAntialias = true,
            Style = SKPaintStyle.Stroke,
            StrokeWidth = (float)width,
            StrokeJoin = SKStrokeJoin.Round,
        };

    private static SKPath Path(IReadOnlyList<IReadOnlyList<Pixel>> lines, bool close)
    {
        var path = new SKPath();
        foreach (var line in lines)
        {
            path.MoveTo((float)line[0].X, (float)line[0].Y);
            foreach (var spot in line.Skip(1))
            {
                path.LineTo((float)spot.X, (float)spot.Y);
            }

            if (close)
            {
                path.Close();
            }
        }

        return path;
    }
}
