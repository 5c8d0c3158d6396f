namespace Stillwall.Figures.Sheets;

/// <summary>What a title block says.</summary>
/// <param name="Scale">Scale, such as 1:2.</param>
internal sealed record TitleBlockText(string Project, string Title, string Kind, string Material, string Mass, string Scale, string Units, string Tolerance);

/// <summary>
/// Frame and title block, after ISO 5457 and ISO 7200 (from memory): 180 mm wide, lower right; no date and no person, which the project does not
/// state.
/// </summary>
internal static class TitleBlock
{
    internal const double Width = 180;

    internal const double Height = 30;

    private const double LabelSize = 1.8,
        ValueSize = 2.8;

    /// <summary>Draws frame and block on a sheet whose pages are not yet counted.</summary>
    internal static IEnumerable<SheetMark> Draw(SheetBox frame, TitleBlockText text, int number, int of)
    {
        var pen = new SheetPen();
        pen.Rectangle(frame, SheetLine.Frame);
        var (left, top) = (frame.RightMm - Math.Min(Width, frame.RightMm - frame.LeftMm), frame.BottomMm - Height);
        var width = frame.RightMm - left;
        pen.Rectangle(new SheetBox(left, top, frame.RightMm, frame.BottomMm), SheetLine.Visible, SheetFill.Paper);
        var pages = FormattableString.Invariant($"{number} of {of}");
        var row = top;
        foreach (
            var (height, cells) in new[]
            {
                (10.0, new[] { (0.38, "project", text.Project), (0.44, "title", text.Title), (0.18, "document", text.Kind) }),
                (10.0, [(0.46, "material", text.Material), (0.24, "mass", text.Mass), (0.12, "scale", text.Scale), (0.18, "sheet", pages)]),
                (10.0, [(0.46, "units", text.Units), (0.54, "tolerances", text.Tolerance)]),
            }
        )
        {
            var x = left;
            foreach (var (share, label, value) in cells)
            {
                pen.Add(SheetPen.Line(SheetLine.Thin, new(x, row), new(x, row + height)));
                pen.Text(label, x + 1.2, row + 2.8, LabelSize);
                var (bold, room) = (label == "title", share * width - 2.4);
                var size = Math.Clamp(Math.Floor(ValueSize * room / SheetText.WidthMm(value + " ", ValueSize, bold) * 10) / 10, LabelSize, ValueSize);
                pen.Text(Shortened(value, size, room, bold), x + 1.2, row + 7.8, size, bold: bold);
                x += share * width;
            }

            row += height;
            pen.Add(SheetPen.Line(SheetLine.Thin, new(left, Math.Min(row, frame.BottomMm)), new(frame.RightMm, Math.Min(row, frame.BottomMm))));
        }

        return [new SheetGroup("title-block", pen.Marks)];
    }

    /// <summary>A text as far as there is room.</summary>
    internal static string Shortened(string text, double size, double room, bool bold = false)
    {
        var shown = text;
        while (shown.Length > 2 && SheetText.WidthMm(shown, size, bold) > room)
        {
            shown = shown.TrimEnd('…')[..^1] + "…";
        }

        return shown;
    }
}
