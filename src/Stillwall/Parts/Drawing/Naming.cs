using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>Cuts the name of a part into it, where there is room for letters.</summary>
internal static class Naming
{
    /// <summary>Height of the smallest letters that print, mm.</summary>
    internal const double LeastHeight = 4;

    private const double Clear = 1.5,
        Step = 4;

    /// <summary>Cuts a name into the top of a part: in the largest letters, at the first place from below, that lie wholly on a face.</summary>
    /// <returns>The part with its name, or as it was where nothing fits.</returns>
    internal static Solid OnTop(Solid solid, string name, Region face, double top)
    {
        if (face.Extent is not { } box)
        {
            return solid;
        }

        foreach (var height in (double[])[8, 6, 5, LeastHeight])
        {
            var width = Lettering.WidthMm(name, height);
            foreach (var (x, y) in Places(box, width, height))
            {
                if (face.Holds(x - Clear, y - Clear, x + width + Clear, y + height + Clear))
                {
                    return solid.Cut(Lettering.Text(name, height).Moved(x, y), top - Lettering.Depth, top);
                }
            }
        }

        return solid;
    }

    /// <summary>Cuts a name into an upright face that looks towards greater y; it reads from there.</summary>
    /// <returns>The part with its name, or as it was where the name is longer than the face.</returns>
    internal static Solid OnUprightFace(Solid solid, string name, double middleX, double faceY, double foot, double height, double room, double layer)
    {
        var width = Lettering.WidthMm(name, height);
        if (height < LeastHeight || width > room || foot < 0)
        {
            return solid;
        }

        // Strokes stand half their width out below and above the letters' lines.
        var text = Lettering.Text(name, height);
        var rows = (int)Math.Ceiling((height + Lettering.Stroke) / layer);
        var (low, step) = (-Lettering.Stroke / 2, (height + Lettering.Stroke) / rows);
        for (var i = 0; i < rows; i++)
        {
            var cut = text.Across(low + (i + 0.5) * step);
            var boxes = Region.JoinAll(
                cut.Select(e => Region.RoundedRectangle(middleX + width / 2 - e.To, faceY - Lettering.Depth, middleX + width / 2 - e.From, faceY + 0.1, 0))
            );
            solid = solid.Cut(boxes, foot + low + i * step, foot + low + (i + 1) * step);
        }

        return solid;
    }

    private static IEnumerable<(double X, double Y)> Places((double Left, double Bottom, double Right, double Top) box, double width, double height)
    {
        for (var y = box.Bottom + Clear; y + height + Clear <= box.Top; y += Step)
        {
            var middle = (box.Left + box.Right - width) / 2;
            for (var away = 0.0; middle - away >= box.Left; away += 2 * Step)
            {
                yield return (middle - away, y);
                if (away > 0)
                {
                    yield return (middle + away, y);
                }
            }
        }
    }
}
