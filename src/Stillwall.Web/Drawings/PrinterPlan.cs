using Stillwall.Appraisals;
using Stillwall.Web.Texts;
using static Stillwall.Web.Drawings.Pen;
using Stillwall.Shapes;

namespace Stillwall.Web.Drawings;

/// <summary>The printer's plate from above and its height beside it, to scale, with the largest part on it.</summary>
internal static class PrinterPlan
{
    private const double Left = 58,
        Top = 22,
        Most = 200;

    /// <summary>Draws the view; null where the printer's build space is not stated.</summary>
    internal static View? Of(Facts facts)
    {
        if (facts.Project.Brief.Printer is not { BuildWidthM: { } width, BuildDepthM: { } depth, BuildHeightM: { } height } printer)
        {
            return null;
        }

        var pen = new Pen();
        var unit = facts.Show.SizeUnit;
        var scale = Most / Math.Max(Math.Max(width, depth), height);
        var (w, d, h) = (width * scale, depth * scale, height * scale);
        var m = printer.EdgeMarginM * scale;
        var bottom = Top + Math.Max(d, h);
        var side = Left + w + 62;
        pen.Path("plate", Square(Left, bottom - d, w, d))
            .Path("hidden", Square(Left + m, bottom - d + m, w - 2 * m, d - 2 * m))
            .Path("plate", Square(side, bottom - h, 46, h));
        if (facts.Parts.Count > 0)
        {
            var largest = facts.Parts.MaxBy(p => p.SizeM[0] * p.SizeM[1])!;
            var tallest = facts.Parts.MaxBy(p => p.SizeM[2])!;
            var (pw, pd) = (largest.SizeM[0] * scale, largest.SizeM[1] * scale);
            pen.Path("outline", Rounded(Left + (w - pw) / 2, bottom - d / 2 - pd / 2, pw, pd, (facts.Sizes?.Radius ?? 0).InMetres() * scale))
                .Text("t2", Left + w / 2, bottom - d / 2 + 4, largest.Name.Split(" 1 of")[0], "middle")
                .Box("seen", side + 6, bottom - tallest.SizeM[2] * scale, 34, tallest.SizeM[2] * scale);
        }

        pen.Across(true, Left, Left + w, bottom + 30, bottom + 3, 56)
            .Up(true, bottom - d, bottom, 24, Left - 3, 34)
            .Up(true, bottom - h, bottom, side + 84, side + 49, 34);
        pen.Text("tb", Left, Top - 6, $"{DrawingTexts.Printer}, {unit}");
        return new View(
            Width: side + 114,
            Height: bottom + 44,
            Title: DrawingTexts.PrinterTitle,
            Description: DrawingTexts.PrinterTitle,
            Svg: pen.Svg,
            Fields:
            [
                new(Key: "brief.printer.build_width", Label: DrawingTexts.BuildWidth, X: Left + w / 2, Y: bottom + 30, Unit: unit, Characters: 5, Step: 1),
                new(Key: "brief.printer.build_depth", Label: DrawingTexts.BuildDepth, X: 24, Y: bottom - d / 2, Unit: unit, Characters: 5, Step: 1),
                new(Key: "brief.printer.build_height", Label: DrawingTexts.BuildHeight, X: side + 84, Y: bottom - h / 2, Unit: unit, Characters: 5, Step: 1),
            ],
            Marks: [new("parts/every-part-fits-the-printer", Left + w / 2, bottom - d / 2 + 28)]
        );
    }
}
