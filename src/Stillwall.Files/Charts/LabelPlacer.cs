namespace Stillwall.Files.Charts;

/// <summary>Finds room for labels: each takes the cheapest of its places, the first that are placed have the choice.</summary>
/// <param name="within">Where labels may stand.</param>
internal sealed class LabelPlacer(Box within)
{
    // A label over another cannot be read at all; over a line it can, on its own ground.
    private const double OverLabel = 1000;
    private const double Outside = 5000;
    private const double Moved = 40;

    private readonly List<Box> labels = [];
    private readonly List<(Pixel Pixel, double Cost)> obstacles = [];

    /// <summary>A line that labels had better leave free.</summary>
    internal void Avoid(IReadOnlyList<Pixel> line, double costPerPx)
    {
        for (var i = 1; i < line.Count; i++)
        {
            var (a, b) = (line[i - 1], line[i]);
            var steps = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(Math.Pow(b.X - a.X, 2) + Math.Pow(b.Y - a.Y, 2)) / 3));
            obstacles.AddRange(
                Enumerable.Range(0, steps).Select(k => (new Pixel(a.X + ((b.X - a.X) * k / steps), a.Y + ((b.Y - a.Y) * k / steps)), costPerPx * 3))
            );
        }
    }

    /// <summary>A spot that labels must leave free.</summary>
    internal void Avoid(Box box) => labels.Add(box);

    /// <summary>Places a label at the cheapest of its places, the earlier ones preferred; null where it would cover another and may be dropped.</summary>
    internal TextMark? Place(IEnumerable<TextMark> places, bool mayDrop = false)
    {
        var best = places
            .Select((mark, rank) => (Mark: Inward(mark), Rank: rank, Was: mark.At))
            .Select(p => (p.Mark, Cost: Cost(TextWidth.BoxOf(p.Mark)) + (p.Rank * 2) + (p.Mark.At == p.Was ? 0 : Moved)))
            .MinBy(c => c.Cost);
        if (best.Mark is null || (mayDrop && best.Cost >= OverLabel))
        {
            return null;
        }

        labels.Add(TextWidth.BoxOf(best.Mark).Grown(1));
        return best.Mark;
    }

    // What would stick out is moved in; only what is wider than the plot still sticks out.
    private TextMark Inward(TextMark mark)
    {
        var box = TextWidth.BoxOf(mark);
        var across = box.Left < within.Left ? within.Left - box.Left : Math.Min(0, within.Right - box.Right);
        var down = box.Top < within.Top ? within.Top - box.Top : Math.Min(0, within.Bottom - box.Bottom);
        return across == 0 && down == 0 ? mark : mark with { At = new Pixel(mark.At.X + across, mark.At.Y + down) };
    }

    private double Cost(Box box)
    {
        var near = box.Grown(2);
        return (box.Within(within.Grown(0.01)) ? 0 : Outside)
            + (labels.Count(l => l.Overlaps(near)) * OverLabel)
            + obstacles.Where(o => near.Holds(o.Pixel)).Sum(o => o.Cost);
    }
}
