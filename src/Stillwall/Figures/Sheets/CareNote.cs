using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Parts;

namespace Stillwall.Figures.Sheets;

/// <summary>What to take care of, in a small box where nothing is drawn: as low and as far to the left as there is room.</summary>
internal static class CareNote
{
    private const string Title = "Take care";

    // Grid of the search, distance kept from what is drawn, room within the box, mm.
    private const double Grid = 2,
        Clear = 2,
        Inside = 1.6;

    // A column beside the title block first, then wider and flatter ones, then a narrow one.
    private static readonly double[] Widths = [78, 110, 150, 198, 60],
        Sizes = [SheetPen.Small, 2.1, 1.8];

    /// <summary>Draws it beside what is on a sheet; where there is no room for all of it, only for the worst.</summary>
    internal static IEnumerable<SheetMark> Draw(SheetDraft draft, Facts facts)
    {
        var frame = SheetDraft.FrameOf((draft.WidthMm, draft.HeightMm));
        var sentences = StepsOf(draft).SelectMany(s => Cautions.At(s, facts)).DistinctBy(c => c.Hazard).Select(c => c.Sentence).ToList();
        var taken = draft
            .Marks.SelectMany(Boxes)
            .Append(new SheetBox(frame.RightMm - TitleBlock.Width, frame.BottomMm - TitleBlock.Height, frame.RightMm, frame.BottomMm))
            .ToList();
        var ways =
            from left in Enumerable.Range(0, sentences.Count)
            from size in Sizes
            from width in Widths
            select (Count: sentences.Count - left, Size: size, Width: width);
        return ways.Select(w => Written(frame, taken, [.. sentences.Take(w.Count)], w.Size, w.Width)).OfType<SheetMark>().Take(1);
    }

    // Steps of the job at which a sheet is in the hand.
    private static IReadOnlyList<WorkStep> StepsOf(SheetDraft draft) =>
        (draft.Kind?.For, draft.Block.Kind) switch
        {
            (null, "template") => [WorkStep.Template],
            (null, _) => [WorkStep.DryFit, WorkStep.SetUp],
            (PrintedFor.WallTrial, _) => [WorkStep.WallCoupon],
            (PrintedFor.Calibration, _) => [WorkStep.CalibrationStrip],
            _ => [WorkStep.Print],
        };

    private static SheetGroup? Written(SheetBox frame, List<SheetBox> taken, IReadOnlyList<string> sentences, double size, double width)
    {
        var lines = sentences.SelectMany(s => SheetPen.Wrapped(s, width - 2 * Inside, size)).ToList();
        var step = 1.4 * size;
        if (Free(frame, taken, width, (lines.Count + 1) * step + 2 * Inside) is not { } box)
        {
            return null;
        }

        var pen = new SheetPen();
        pen.Rectangle(box, SheetLine.Thin);
        foreach (var (i, line) in lines.Prepend(Title).Index())
        {
            pen.Text(line, box.LeftMm + Inside, box.TopMm + Inside + (i + 0.78) * step, size, bold: i == 0);
        }

        return new SheetGroup("care", pen.Marks);
    }

    private static SheetBox? Free(SheetBox frame, List<SheetBox> taken, double width, double height)
    {
        for (var bottom = frame.BottomMm - Clear; bottom - height >= frame.TopMm + Clear; bottom -= Grid)
        {
            for (var left = frame.LeftMm + Clear; left + width <= frame.RightMm - Clear; left += Grid)
            {
                var with = new SheetBox(left - Clear, bottom - height - Clear, left + width + Clear, bottom + Clear);
                if (!taken.Exists(with.Overlaps))
                {
                    return new SheetBox(left, bottom - height, left + width, bottom);
                }
            }
        }

        return null;
    }

    // What is drawn takes its whole extent, a line at least its breadth.
    private static IEnumerable<SheetBox> Boxes(SheetMark mark) =>
        mark switch
        {
            SheetGroup group => group.Marks.SelectMany(Boxes),
            SheetText text => [text.Box],
            SheetCircle c => [new SheetBox(c.Centre.XMm - c.RadiusMm, c.Centre.YMm - c.RadiusMm, c.Centre.XMm + c.RadiusMm, c.Centre.YMm + c.RadiusMm)],
            SheetPath path => path
                .Lines.Where(l => l.Count > 0)
                .Select(l => new SheetBox(l.Min(p => p.XMm) - 0.1, l.Min(p => p.YMm) - 0.1, l.Max(p => p.XMm) + 0.1, l.Max(p => p.YMm) + 0.1)),
            _ => [],
        };
}
