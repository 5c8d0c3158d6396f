using Stillwall.Appraisals;
using Stillwall.Web.Texts;
using static Stillwall.Web.Drawings.Pen;
using Stillwall.Shapes;

namespace Stillwall.Web.Drawings;

/// <summary>The six walls unfolded, to scale, each with its lowest resonance and its level against the cone.</summary>
internal static class Unfolded
{
    private const double Margin = 14,
        MostAcross = 520,
        MostUp = 380;

    /// <summary>Draws the view; null where the walls are not known.</summary>
    internal static View? Of(Facts facts)
    {
        if (facts.Geometry is not { Sizes: var s } || facts.Walls.Count == 0)
        {
            return null;
        }

        var pen = new Pen();
        var scale = Math.Min(MostAcross / (2 * s.Width + 2 * s.Depth), MostUp / (s.Height + 2 * s.Depth));
        var (w, d, h) = (s.Width * scale, s.Depth * scale, s.Height * scale);
        var (x0, y0) = (Margin, Margin + d);
        foreach (
            var (panel, x, y, across, up) in new[]
            {
                ("left", x0, y0, d, h),
                ("front", x0 + d, y0, w, h),
                ("right", x0 + d + w, y0, d, h),
                ("rear", x0 + 2 * d + w, y0, w, h),
                ("top", x0 + d, y0 - d, w, d),
                ("bottom", x0 + d, y0 + h, w, d),
            }
        )
        {
            Panel(pen: pen, facts: facts, name: panel, x: x, y: y, across: across, up: up);
        }

        return new View(
            Width: 2 * w + 2 * d + 2 * Margin,
            Height: h + 2 * d + 2 * Margin,
            Title: WallTexts.UnfoldedTitle,
            Description: WallTexts.UnfoldedTitle,
            Svg: pen.Svg,
            Fields: [],
            Marks: []
        )
        {
            Figures = pen.Figures,
        };
    }

    private static void Panel(Pen pen, Facts facts, string name, double x, double y, double across, double up)
    {
        pen.Path("panel", Square(x, y, across, up));
        if (facts.Walls.FirstOrDefault(p => p.Panel == name) is not { } wall)
        {
            pen.Text("t2", x + across / 2, y + up / 2, name, "middle");
            return;
        }

        var scale = Math.Min(across / Math.Max(wall.WidthM, wall.HeightM).InMillimetres(), up / Math.Max(wall.WidthM, wall.HeightM).InMillimetres());
        var (pw, ph) = name is "top" or "bottom"
            ? (wall.HeightM.InMillimetres() * scale, wall.WidthM.InMillimetres() * scale)
            : (wall.WidthM.InMillimetres() * scale, wall.HeightM.InMillimetres() * scale);
        pen.Path(
            "hidden",
            Square(x + across / 2 - Math.Min(pw, across - 8) / 2, y + up / 2 - Math.Min(ph, up - 8) / 2, Math.Min(pw, across - 8), Math.Min(ph, up - 8))
        );
        if (name == "front" && facts.Sizes is { } s)
        {
            foreach (var (cx, cz) in Cabinets.PlateLayout.DriverCentres(s))
            {
                pen.Circle("phantom", x + cx * across / s.Width, y + up - cz * up / s.Height, s.Cutout / 2 * across / s.Width);
            }
        }

        // Each figure is of the case that is the worst for it.
        var cases = wall.Applying(facts.IsKeyed).ToList();
        var (lowest, loudest) = (cases.MinBy(c => c.Figures.FirstModeHz), cases.MaxBy(c => c.Figures.WallToConeDb));
        List<FigurePiece> pieces =
        [
            new($"{name}\n"),
            new(Show.Frequency(lowest.Figures.FirstModeHz), $"walls.{name}.{lowest.Key}.first_mode_hz", WallTexts.ModeOf(name)),
        ];
        if (loudest.Figures.WallToConeDb is { } level)
        {
            pieces.AddRange([new("\n"), new(Show.Level(level), $"walls.{name}.{loudest.Key}.wall_to_cone_db", WallTexts.SoundOf(name))]);
        }

        pen.Figure("lines", x + across / 2, y + up / 2, "middle", [.. pieces]);
    }
}
