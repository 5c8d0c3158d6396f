using Stillwall.Cabinets;
using Stillwall.Parts;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>The cabinet as it stands: from the front and the rear, and cut through its middle both ways.</summary>
internal sealed class AssemblySheets
{
    private const double Pixel = 0.12,
        TitleRoom = 9,
        LegendLeft = Sheet.Filing + 6;

    // Upper edge of the legend at the foot of the A3 sheet, mm.
    private static readonly double LegendTop = SheetDraft.A3.Height - Sheet.Margin - 22;

    private readonly SheetJob job;
    private readonly CabinetSizes s;
    private readonly IReadOnlyList<IndexedMesh> meshes;
    private readonly IReadOnlyList<Solid> stacks;

    internal AssemblySheets(SheetJob job, IReadOnlyList<IndexedMesh> meshes)
    {
        (this.job, s, this.meshes) = (job, job.Sizes, meshes);
        stacks = [.. job.Placed.Select(p => InCabinet.Of(p.Part)).OfType<Solid>()];
    }

    internal IEnumerable<SheetDraft> All()
    {
        yield return Draw(
            name: "assembly",
            title: "assembly, front and section",
            description: "the cabinet from the front, and cut from front to rear",
            width: s.Width + s.Depth,
            height: s.Height,
            beside: 92,
            draw: (pen, scale, left, bottom) =>
            {
                Front(pen, new SheetView(left, bottom, scale, (0, 0, s.Width, s.Height)));
                SideSection(pen, new SheetView(left + (s.Width * scale) + 38, bottom, scale, (0, 0, s.Depth, s.Height)));
            }
        );
        yield return Draw(
            name: "assembly-plan",
            title: "assembly, plan section and rear",
            description: "the cabinet cut level through its middle, and from the rear",
            width: s.Width * 2,
            height: Math.Max(s.Depth, s.Height),
            beside: 140,
            draw: (pen, scale, left, bottom) =>
            {
                PlanSection(pen, new SheetView(left, bottom, scale, (0, 0, s.Width, s.Depth)));
                Rear(pen, new SheetView(left + (s.Width * scale) + 56, bottom, scale, (-s.Width, 0, 0, s.Height)));
            }
        );
    }

    private SheetDraft Draw(
        string name,
        string title,
        string description,
        double width,
        double height,
        double beside,
        Action<SheetPen, double, double, double> draw
    )
    {
        const double above = 62;
        ((double Width, double Height) Paper, double Scale)[] ways =
        [
            (SheetDraft.A3, 1),
            (SheetDraft.A3, 0.5),
            (SheetDraft.A3, 0.2),
            (SheetDraft.A3, 0.1),
            (SheetDraft.A3, 0.05),
            (SheetDraft.A3, 0.02),
        ];
        var (paper, scale) = ways.FirstOrDefault(
            w => width * w.Scale + beside <= w.Paper.Width - 30 && height * w.Scale + above <= w.Paper.Height - 20 - TitleBlock.Height,
            ways[^1]
        );
        var (pen, frame) = (new SheetPen(), SheetDraft.FrameOf(paper));
        var left = frame.LeftMm + 32 + Math.Max(0, frame.RightMm - frame.LeftMm - beside - width * scale) / 2;
        draw(pen, scale, left, frame.TopMm + TitleRoom + 12 + height * scale);
        ScaleBar(pen, frame, scale);
        Legend(pen, frame);
        var block = job.Block(title, "assembly", scale, Materials, job.Facts.Mass.FinishedKg is { } kg ? $"{job.Facts.Show.Mass(kg)} finished" : "not known");
        return new SheetDraft(
            Name: name,
            Title: title,
            Description: description,
            WidthMm: paper.Width,
            HeightMm: paper.Height,
            ScaleRatio: scale,
            Parts: [],
            Marks: pen.Marks,
            Block: block
        );
    }

    private string Materials =>
        string.Join(
            ", ",
            new[] { job.Facts.Skin?.Name.ToUpperInvariant(), s.Core > 0 ? job.Facts.CastMix?.Name.Replace('-', ' ') : null }
                .OfType<string>()
                .DefaultIfEmpty("not stated")
        );

    private IReadOnlyList<SheetMark> Seen(Look look, SheetView view, double cut = double.MinValue, SheetLine line = SheetLine.Visible)
    {
        var seen = LineView.Of(meshes, look, Pixel / view.ScaleRatio, cut);
        return [new SheetPath(view.Chained(meshes.SelectMany(seen.Lines)), line)];
    }

    private void Front(SheetPen pen, SheetView view)
    {
        Title(pen, view, "from the front");
        pen.Group("front", Seen(Look.FrontToRear, view));
        foreach (var (x, z) in PlateLayout.DriverCentres(s))
        {
            // The driver is not in yet: what would be seen through its opening is covered.
            pen.Circle(view, x, z, s.Cutout, SheetLine.Phantom, SheetFill.Paper);
            pen.Centre(view, x, z, Math.Max(DriverBody.Of(job.Facts.Sheet).Flange, s.Cutout));
        }

        pen.Region(view, s.Outline.Inset(s.Wall).ToRegion(), SheetFill.None, SheetLine.Hidden);
        Dimensioning.Below(pen, Lowered(view, FootBottom), [new(0, s.Width, FootBottom, FootBottom)], job.Units);
        Dimensioning.AtLeft(pen, view, [new(0, s.Height, s.Outline.Radius, s.Outline.Radius)], job.Units);
    }

    private double FootBottom => job.Facts.Project.Cabinet?.Feet is null ? 0 : -BuildUp.FootHeight;

    // Dimensions under a view keep below the feet, or the driver's flange.
    private static SheetView Lowered(SheetView view, double bottom) => view with { BottomMm = view.Y(bottom), Box = view.Box with { Bottom = bottom } };

    private void SideSection(SheetPen pen, SheetView view)
    {
        Title(pen, view, "section through the middle, seen from the right");
        pen.Group("side-section", Seen(Look.RightToLeft, view, -s.Width / 2, SheetLine.Thin));
        var parts = Region.JoinAll(stacks.Select(p => TidySolid.Section(p, s.Width / 2, acrossX: true)));

        // A section of a stack has the stack's height upwards; here the depth runs to the right.
        Cuts(pen, view, Swapped(parts), (0, s.Height), c => (c.ZMm, Math.Abs(c.XMm - s.Width / 2)));
        Driver(pen, view, PlateLayout.DriverCentres(s).Where(c => Math.Abs(c.X - s.Width / 2) < 1).Select(c => c.Z));
        Dimensioning.Below(pen, Lowered(view, FootBottom), [new(0, s.Depth, FootBottom, FootBottom), .. Depths(FootBottom)], job.Units);
        WordsInside(pen, view);
    }

    // In the clear room behind the last brace, or at the foot of the sheet where that is too narrow.
    private void WordsInside(SheetPen pen, SheetView view)
    {
        var last = job.Geometry.Bracing.FrontsMm.Select(at => s.Wall + at + BuildUp.BraceThickness).DefaultIfEmpty(s.Depth * 0.45).Last();
        var (middle, y, u) = ((last + s.Depth - s.Wall) / 2, view.Y(s.Height * 0.64), job.Units);
        List<string> lines =
        [
            .. s.Core > 0
                ? [$"wall {u.Of(s.Wall)}:", $"{u.Of(s.OuterSkin)} plastic, {u.Of(s.Core)} cast,", $"{u.Of(s.InnerSkin)} plastic"]
                : (string[])[$"wall {u.Of(s.Wall)} plastic"],
            .. job.Facts.NetVolumeM3 is { } net ? ["", $"net volume {job.Facts.Show.Volume(net)}"] : Array.Empty<string>(),
        ];
        if (lines.Max(l => SheetText.WidthMm(l, SheetPen.Small)) > (s.Depth - s.Wall - last) * view.ScaleRatio - 4)
        {
            pen.Text(string.Join(" ", lines.Where(l => l.Length > 0)).Replace(" net", "; net", StringComparison.Ordinal), LegendLeft, LegendTop - 4);
            return;
        }

        var tip = view.At(middle, s.Height - s.Wall / 2);
        pen.Group(
            "leader",
            [
                SheetPen.Line(SheetLine.Thin, tip, new(tip.XMm, y - 4)),
                SheetPen.Arrow(tip, 0, -1),
                .. lines
                    .Index()
                    .Where(l => l.Item.Length > 0)
                    .Select(l => new SheetText(l.Item, new SheetPoint(tip.XMm, y + l.Index * 3.8), SheetPen.Small, SheetAnchor.Middle)),
            ]
        );
    }

    private void PlanSection(SheetPen pen, SheetView view)
    {
        Title(pen, view, "level section through the middle");
        pen.Group("plan-section", Seen(Look.Down, view, -s.Height / 2, SheetLine.Thin));
        var parts = Region.JoinAll(stacks.Select(p => TidySolid.Section(p, s.Height / 2, acrossX: false)));
        Cuts(pen, view, parts, (0, s.Width), c => (c.XMm, Math.Abs(c.ZMm - s.Height / 2)), swap: true);
        DriverPlan(pen, view);
        var foremost = Math.Min(0, DriverSteps().Select(b => b.From).DefaultIfEmpty(0).Min()) - BuildUp.TrimThickness;
        Dimensioning.Below(pen, Lowered(view, foremost), [new(0, s.Width, 0, 0), new(s.Wall, s.Width - s.Wall, 0, 0)], job.Units);
        Dimensioning.AtLeft(pen, view, [new(0, s.Depth, 0, 0), .. Depths(0)], job.Units);
    }

    private void Rear(SheetPen pen, SheetView view)
    {
        Title(pen, view, "from the rear");
        pen.Group("rear", Seen(Look.RearToFront, view));
        var layout = job.Geometry.Rear.Layout;
        List<Callout> notes = [];
        foreach (var terminal in layout.Openings.Where(o => o.DiameterMm > 0))
        {
            pen.Centre(view, -terminal.XMm, terminal.ZMm, terminal.DiameterMm);
            notes.Add(
                new(
                    -terminal.XMm + terminal.DiameterMm / 2 * Math.Sqrt(0.5),
                    terminal.ZMm + terminal.DiameterMm / 2 * Math.Sqrt(0.5),
                    $"terminal {job.Units.Diameter(terminal.DiameterMm)}"
                )
            );
        }

        foreach (var pour in layout.PourOpenings.Where(o => o.DiameterMm > 0))
        {
            pen.Centre(view, -pour.XMm, pour.ZMm, pour.DiameterMm);
            notes.Add(
                new(
                    -pour.XMm + pour.DiameterMm / 2 * Math.Sqrt(0.5),
                    pour.ZMm + pour.DiameterMm / 2 * Math.Sqrt(0.5),
                    $"pour {job.Units.Diameter(pour.DiameterMm)}"
                )
            );
        }

        Dimensioning.AtLeft(
            pen,
            view,
            [.. layout.Openings.Concat(layout.PourOpenings).Where(o => o.DiameterMm > 0).Select(o => new Length(0, o.ZMm, -s.Width, -s.Width))],
            job.Units
        );
        Dimensioning.AtRight(pen, view, notes, view.BottomMm);
    }

    // Where the walls and braces lie along the depth.
    private IEnumerable<Length> Depths(double edge) =>
        [new(0, s.Wall, edge, edge), .. job.Geometry.Bracing.FrontsMm.Select(at => new Length(0, s.Wall + at, edge, edge))];

    // What is cut: cast first, plastic over it; openings through front and rear stay open.
    private void Cuts(
        SheetPen pen,
        SheetView view,
        Region parts,
        (double From, double To) across,
        Func<Circle, (double At, double Away)> place,
        bool swap = false
    )
    {
        if (s.Core > 0)
        {
            var (outer, inner) = (s.OuterSkin, s.OuterSkin + s.Core);
            Region Box(double inset) => Oriented(inset, across.From + inset, s.Depth - inset, across.To - inset, swap);
            var open = Region.JoinAll(
                job.Geometry.Front.Layout.Openings.Select(o => Through(o, 0, s.Wall))
                    .Concat(job.Geometry.Rear.Layout.Openings.Select(o => Through(o, s.Depth - s.Wall, s.Depth)))
            );
            pen.Group("cast", [new SheetPath(view.Rings(Box(outer).Cut(Box(inner)).Cut(open).Cut(parts)), SheetLine.Thin, Closed: true, SheetFill.Cast)]);

            Region Through(Circle o, double from, double to)
            {
                var (at, away) = place(o);
                var half = away < o.DiameterMm / 2 ? Math.Sqrt(o.DiameterMm * o.DiameterMm / 4 - away * away) : 0;
                return half > 0 ? Oriented(from, at - half, to, at + half, swap) : Region.Empty;
            }
        }

        pen.Group("plastic", [new SheetPath(view.Rings(parts), SheetLine.Visible, Closed: true, SheetFill.Plastic)]);
    }

    private static Region Oriented(double depthFrom, double from, double depthTo, double to, bool swap) =>
        swap ? Region.RoundedRectangle(from, depthFrom, to, depthTo, 0) : Region.RoundedRectangle(depthFrom, from, depthTo, to, 0);

    private static Region Swapped(Region region) => region.Turned(1).Mirrored(0);

    private IReadOnlyList<(double From, double To, double Radius)> DriverSteps() =>
        DriverBody.Of(job.Facts.Sheet) is { IsDrawn: true } body ? [.. body.Steps(s.Sunk).Select(b => (b.From, b.To, b.Diameter / 2))] : [];

    private void Driver(SheetPen pen, SheetView view, IEnumerable<double> centres)
    {
        foreach (var z in centres)
        {
            foreach (var (from, to, radius) in DriverSteps().Where(b => b.To > b.From))
            {
                pen.Region(view, Region.RoundedRectangle(from, z - radius, to, z + radius, 0), SheetFill.None, SheetLine.Phantom);
            }

            if (DriverSteps() is { Count: > 0 } body)
            {
                pen.Text("driver", view.X((body[2].To + body[2].From) / 2), view.Y(z) + 5, SheetPen.Small, SheetAnchor.Middle);
            }
        }
    }

    private void DriverPlan(SheetPen pen, SheetView view)
    {
        foreach (var (x, _) in PlateLayout.DriverCentres(s).Where(c => Math.Abs(c.Z - s.Height / 2) < 1))
        {
            foreach (var (from, to, radius) in DriverSteps().Where(b => b.To > b.From))
            {
                pen.Region(view, Region.RoundedRectangle(x - radius, from, x + radius, to, 0), SheetFill.None, SheetLine.Phantom);
            }
        }
    }

    private static void Title(SheetPen pen, SheetView view, string text) => pen.Text(text, view.LeftMm, view.TopMm - 9, SheetPen.Middle);

    // A bar of 100 mm of the thing in tenths, black and white in turn.
    private void ScaleBar(SheetPen pen, SheetBox frame, double scale)
    {
        var (x, y) = (frame.LeftMm + 6, frame.BottomMm - 10);
        var part = 10 * scale;
        var bar = new List<SheetMark>();
        for (var i = 0; i < 10; i++)
        {
            bar.Add(
                new SheetPath(
                    [
                        [new(x + i * part, y), new(x + (i + 1) * part, y), new(x + (i + 1) * part, y + 1.6), new(x + i * part, y + 1.6)],
                    ],
                    SheetLine.Thin,
                    Closed: true,
                    i % 2 == 0 ? SheetFill.Ink : SheetFill.Paper
                )
            );
        }

        pen.Group("scale-bar", bar);
        pen.Text("0", x, y + 5, SheetPen.Small, SheetAnchor.Middle);
        pen.Text(job.Units.Inch ? "100 mm" : "100", x + 10 * part, y + 5, SheetPen.Small, SheetAnchor.Middle);
    }

    private void Legend(SheetPen pen, SheetBox frame)
    {
        var x = LegendLeft;
        foreach (
            var (fill, line, words) in new[]
            {
                (SheetFill.Plastic, SheetLine.Visible, "plastic, cut"),
                (SheetFill.Cast, SheetLine.Thin, "cast, cut"),
                (SheetFill.None, SheetLine.Phantom, "driver, from its data sheet, simplified"),
            }
        )
        {
            if (fill != SheetFill.Cast || s.Core > 0)
            {
                pen.Rectangle(new SheetBox(x, frame.BottomMm - 22, x + 9, frame.BottomMm - 17), line, fill);
                pen.Text(words, x + 11, frame.BottomMm - 18.5);
                x += 16 + SheetText.WidthMm(words, SheetPen.Small);
            }
        }
    }
}
