using Stillwall.Cabinets;
using Stillwall.Parts;

namespace Stillwall.Figures.Sheets;

/// <summary>Templates in full size for the driver and the terminal, on as many A4 sheets as it takes.</summary>
internal static class TemplateSheets
{
    /// <summary>Length of the line to be measured before a template is used, mm.</summary>
    internal const double CheckLine = 100;

    private const double Beside = 6,
        Overlap = 12,
        CheckRoom = 16,
        Cross = 5,
        CircleSides = 720;

    /// <summary>What a template shows; its centre is the origin, up is up.</summary>
    private sealed record Template(
        string Name,
        string Title,
        string Description,
        IReadOnlyList<(Circle Circle, SheetLine Line)> Circles,
        IReadOnlyList<(double X, double Y)> Centres,
        IReadOnlyList<string> Words
    )
    {
        internal double Half => Math.Max(Circles.Max(c => c.Circle.DiameterMm) / 2, Centres.Max(c => Math.Max(Math.Abs(c.X), Math.Abs(c.Y))) + Cross) + 3;
    }

    internal static IEnumerable<SheetDraft> Of(SheetJob job) => Templates(job).SelectMany(t => Tiles(job, t));

    private static IEnumerable<Template> Templates(SheetJob job)
    {
        var (s, u) = (job.Sizes, job.Units);
        if (s.Cutout > 0)
        {
            var bolts = Enumerable
                .Range(0, s.BoltCircle > 0 ? s.Bolts : 0)
                .Select(i => 2 * Math.PI * (i + 0.5) / s.Bolts)
                .Select(a => (X: s.BoltCircle / 2 * Math.Cos(a), Y: s.BoltCircle / 2 * Math.Sin(a)))
                .ToList();
            var hole = s.Bolt > 0 ? s.Bolt + BuildUp.PilotOver : 0;
            var flange = DriverBody.Of(job.Facts.Sheet).Flange;
            var (edge, line) = s.RecessDiameter > 0 ? (s.RecessDiameter, SheetLine.Visible) : (flange, SheetLine.Phantom);
            yield return new Template(
                "template-driver",
                "template for the driver",
                "the driver's cut-out, bolt circle and flange in full size",
                [
                    (new Circle(0, 0, s.Cutout), SheetLine.Visible),
                    .. bolts.Count > 0 ? [(new Circle(0, 0, s.BoltCircle), SheetLine.Centre)] : Array.Empty<(Circle, SheetLine)>(),
                    .. hole > 0 ? bolts.Select(b => (new Circle(b.X, b.Y, hole), SheetLine.Thin)) : [],
                    .. flange > s.Cutout ? [(new Circle(0, 0, edge), line)] : Array.Empty<(Circle, SheetLine)>(),
                ],
                [(0, 0), .. bolts],
                [
                    $"driver: cut out {u.Diameter(s.Cutout)}",
                    .. bolts.Count > 0
                        ? [$"{SheetUnits.Many(bolts.Count, hole > 0 ? u.Diameter(hole) : "bolts")} on {u.Diameter(s.BoltCircle)}"]
                        : Array.Empty<string>(),
                    .. flange > s.Cutout
                        ? [s.RecessDiameter > 0 ? $"recess {u.Diameter(edge)}, {u.Of(s.Sunk)} deep" : $"flange {u.Diameter(flange)}, not cut"]
                        : Array.Empty<string>(),
                ]
            );
        }

        if (job.Geometry.Rear.Layout.Openings is [{ DiameterMm: > 0 } terminal, ..])
        {
            yield return new Template(
                "template-terminal",
                "template for the terminal",
                "the terminal's opening in full size",
                [(new Circle(0, 0, terminal.DiameterMm), SheetLine.Visible)],
                [(0, 0)],
                [$"terminal: cut out {u.Diameter(terminal.DiameterMm)}", $"centre {u.Of(terminal.ZMm)} above the lower edge"]
            );
        }
    }

    private static IEnumerable<SheetDraft> Tiles(SheetJob job, Template template)
    {
        var (paper, frame) = (SheetDraft.A4, SheetDraft.FrameOf(SheetDraft.A4));
        var (roomX, roomY) = (frame.RightMm - frame.LeftMm - 2 * Beside, frame.BottomMm - frame.TopMm - TitleBlock.Height - CheckRoom - Beside);
        var (nx, ny) = (Count(2 * template.Half, roomX), Count(2 * template.Half, roomY));
        var (across, up) = (2 * template.Half / nx, 2 * template.Half / ny);
        for (var row = ny - 1; row >= 0; row--)
        {
            for (var column = 0; column < nx; column++)
            {
                // What the sheet shows, half the overlap beyond its own share at every seam.
                var window = (
                    Left: -template.Half + column * across - (column > 0 ? Overlap / 2 : 0),
                    Bottom: -template.Half + row * up - (row > 0 ? Overlap / 2 : 0),
                    Right: -template.Half + (column + 1) * across + (column < nx - 1 ? Overlap / 2 : 0),
                    Top: -template.Half + (row + 1) * up + (row < ny - 1 ? Overlap / 2 : 0)
                );
                var view = new SheetView(
                    frame.LeftMm + Beside + (roomX - (window.Right - window.Left)) / 2,
                    frame.TopMm + Beside + (window.Top - window.Bottom),
                    1,
                    window
                );
                var pen = new SheetPen();
                Outline(pen, view, template);
                Seams(pen, view, template, (nx, ny), (column, row));
                if (row == ny - 1 && column == 0)
                {
                    Words(pen, view, template);
                }

                Check(pen, frame);
                var number = (ny - 1 - row) * nx + column + 1;
                var title = nx * ny > 1 ? FormattableString.Invariant($"{template.Title}, {number} of {nx * ny}") : template.Title;
                var name = nx * ny > 1 ? FormattableString.Invariant($"{template.Name}-{number}") : template.Name;
                yield return new SheetDraft(
                    Name: name,
                    Title: title,
                    Description: template.Description,
                    WidthMm: paper.Width,
                    HeightMm: paper.Height,
                    ScaleRatio: 1,
                    Parts: [],
                    Marks: pen.Marks,
                    Block: job.Block(title, "template", 1, "paper", "–") with
                    {
                        Tolerance = "print at actual size; check the line of 100 mm",
                    }
                );
            }
        }
    }

    private static int Count(double size, double room) => size <= room ? 1 : (int)Math.Ceiling(size / (room - Overlap) - 1e-9);

    private static void Outline(SheetPen pen, SheetView view, Template template)
    {
        foreach (var (circle, line) in template.Circles)
        {
            if (Holds(view, circle))
            {
                pen.Circle(view, circle.XMm, circle.ZMm, circle.DiameterMm, line);
            }
            else if (Arcs(view, circle) is { Count: > 0 } arcs)
            {
                pen.Add(new SheetPath(arcs, line));
            }
        }

        foreach (var (x, y) in template.Centres)
        {
            var lines = new[] { Clipped(view, (x - Cross, y), (x + Cross, y)), Clipped(view, (x, y - Cross), (x, y + Cross)) }
                .OfType<(SheetPoint, SheetPoint)>()
                .Select(l => (IReadOnlyList<SheetPoint>)[l.Item1, l.Item2])
                .ToList();
            if (lines.Count > 0)
            {
                pen.Group("centre", [new SheetPath(lines, SheetLine.Thin)]);
            }
        }
    }

    private static bool Holds(SheetView view, Circle c) =>
        c.XMm - c.DiameterMm / 2 >= view.Box.Left
        && c.XMm + c.DiameterMm / 2 <= view.Box.Right
        && c.ZMm - c.DiameterMm / 2 >= view.Box.Bottom
        && c.ZMm + c.DiameterMm / 2 <= view.Box.Top;

    private static IReadOnlyList<IReadOnlyList<SheetPoint>> Arcs(SheetView view, Circle circle) =>
        LineChains.Of(Enumerable.Range(0, (int)CircleSides).Select(i => Clipped(view, On(circle, i), On(circle, i + 1))).OfType<(SheetPoint, SheetPoint)>());

    private static (double X, double Y) On(Circle c, int i) =>
        (c.XMm + c.DiameterMm / 2 * Math.Cos(2 * Math.PI * i / CircleSides), c.ZMm + c.DiameterMm / 2 * Math.Sin(2 * Math.PI * i / CircleSides));

    // Liang and Barsky's way: the share of a line that lies within the window.
    private static (SheetPoint From, SheetPoint To)? Clipped(SheetView view, (double X, double Y) a, (double X, double Y) b)
    {
        var (from, to) = (0.0, 1.0);
        foreach (
            var (p, q) in new[]
            {
                (a.X - b.X, a.X - view.Box.Left),
                (b.X - a.X, view.Box.Right - a.X),
                (a.Y - b.Y, a.Y - view.Box.Bottom),
                (b.Y - a.Y, view.Box.Top - a.Y),
            }
        )
        {
            if (p == 0 && q < 0)
            {
                return null;
            }

            from = p < 0 ? Math.Max(from, q / p) : from;
            to = p > 0 ? Math.Min(to, q / p) : to;
        }

        return from >= to ? null : (view.At(a.X + from * (b.X - a.X), a.Y + from * (b.Y - a.Y)), view.At(a.X + to * (b.X - a.X), a.Y + to * (b.Y - a.Y)));
    }

    // Edges where a sheet is cut or laid over, and crosses that lie on one another when it lies right.
    private static void Seams(SheetPen pen, SheetView view, Template template, (int X, int Y) count, (int X, int Y) at)
    {
        var (across, up, half) = (2 * template.Half / count.X, 2 * template.Half / count.Y, template.Half);
        if (count.X * count.Y > 1)
        {
            pen.Rectangle(new SheetBox(view.LeftMm, view.TopMm, view.RightMm, view.BottomMm), SheetLine.Thin);
        }

        for (var i = 1; i < count.Y; i++)
        {
            for (var k = 0; k < 2 && (i == at.Y || i == at.Y + 1); k++)
            {
                Mark(pen, view, -half + at.X * across + across * (0.2 + 0.6 * k), -half + i * up, (char)('a' + 2 * i - 2 + k));
            }
        }

        for (var i = 1; i < count.X; i++)
        {
            for (var k = 0; k < 2 && (i == at.X || i == at.X + 1); k++)
            {
                Mark(pen, view, -half + i * across, -half + at.Y * up + up * (0.2 + 0.6 * k), (char)('m' + 2 * i - 2 + k));
            }
        }
    }

    private static void Mark(SheetPen pen, SheetView view, double x, double y, char letter)
    {
        var p = view.At(x, y);
        pen.Group(
            "alignment",
            [
                new SheetPath(
                    [
                        [new(p.XMm - Cross, p.YMm), new(p.XMm + Cross, p.YMm)],
                        [new(p.XMm, p.YMm - Cross), new(p.XMm, p.YMm + Cross)],
                    ],
                    SheetLine.Visible
                ),
                new SheetText(letter.ToString(), new SheetPoint(p.XMm + 1.5, p.YMm - 1.5), SheetPen.Middle),
            ]
        );
    }

    // Within a large circle, beside a small one.
    private static void Words(SheetPen pen, SheetView view, Template template)
    {
        var within = template.Circles[0].Circle.DiameterMm >= 150;
        var (x, y) = within ? (view.X(0) + 8, view.Y(50)) : (view.RightMm + 10, view.TopMm + 10);
        pen.Group("up", [SheetPen.Line(SheetLine.Thin, new(x - 4, y + 12), new(x - 4, y - 4)), SheetPen.Arrow(new(x - 4, y - 4), 0, -1)]);
        foreach (var words in template.Words.Prepend("this way up"))
        {
            pen.Text(words, x, y, SheetPen.Middle);
            y += 5.5;
        }
    }

    private static void Check(SheetPen pen, SheetBox frame)
    {
        var (x, y) = (frame.LeftMm + 10, frame.BottomMm - TitleBlock.Height - 6);
        pen.Group(
            "check-line",
            [
                SheetPen.Line(SheetLine.Visible, new(x, y), new(x + CheckLine, y)),
                SheetPen.Line(SheetLine.Visible, new(x, y - 2), new(x, y + 2)),
                SheetPen.Line(SheetLine.Visible, new(x + CheckLine, y - 2), new(x + CheckLine, y + 2)),
                new SheetText("measure me: 100 mm", new SheetPoint(x + CheckLine / 2, y - 1.2), SheetPen.Middle, SheetAnchor.Middle),
            ]
        );
    }
}
