using Stillwall.Parts;
using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>One dimensioned sheet for each kind of part: seen from above as printed, and cut.</summary>
internal static class PartSheets
{
    private const double TitleRoom = 9,
        Beside = 4,
        NoteStep = 3.8,
        Flat = 32;

    // Raster of the hidden-line comparison on the paper, mm.
    private const double Pixel = 0.12;

    internal static IEnumerable<SheetDraft> Of(SheetJob job) =>
        job.Parts.Select(part => Draw(job, part, part.Kind.Features(new FeatureJob(job.Drawing, job.Units, part.IsSplit))));

    private sealed record Plan(
        SheetPart Part,
        PartFeatures Features,
        SheetUnits Units,
        (double Left, double Bottom, double Right, double Top) Box,
        double Height
    )
    {
        private double Radius => Math.Min(Box.Right - Box.Left, Box.Top - Box.Bottom) / 8;

        internal IReadOnlyList<Length> Across =>
            Features.IsRound ? Features.Across : [.. Features.Across, new(Box.Left, Box.Right, Box.Bottom + Radius, Box.Bottom + Radius)];

        internal IReadOnlyList<Length> Up => Features.IsRound ? Features.Up : [.. Features.Up, new(Box.Bottom, Box.Top, Box.Left + Radius, Box.Left + Radius)];

        internal IReadOnlyList<Length> SectionAcross => Features.SectionAcross;

        internal IReadOnlyList<Length> SectionUp => [.. Features.SectionUp, new(0, Height, Box.Left, Box.Left)];

        internal bool Stacked(double scale) => Height * scale < Flat;

        private double LeftRoom(double scale) => Math.Max(Dimensioning.Room(Up, Units, scale), Stacked(scale) ? Dimensioning.Room(SectionUp, Units, scale) : 0);

        internal (double Left, double Below, double SectionLeft, double SectionBelow, double Right, double SectionRight) Rooms(double scale) =>
            (
                LeftRoom(scale),
                Dimensioning.Room(Across, Units, scale),
                Dimensioning.Room(SectionUp, Units, scale),
                Dimensioning.Room(SectionAcross, Units, scale),
                Dimensioning.NotesWidth(Features.Notes),
                Dimensioning.NotesWidth(Features.SectionNotes)
            );

        internal double Head(double scale) => Math.Max(TitleRoom, Dimensioning.Overhang(Up, Units, scale, Box.Top));

        internal double SectionHead(double scale) => Math.Max(TitleRoom, Dimensioning.Overhang(SectionUp, Units, scale, Height));

        internal (double Width, double Height) Needs(double scale)
        {
            var (w, d, h) = ((Box.Right - Box.Left) * scale, (Box.Top - Box.Bottom) * scale, Height * scale);
            var r = Rooms(scale);
            return Stacked(scale)
                ? (
                    r.Left + w + Math.Max(r.Right, r.SectionRight),
                    SectionHead(scale)
                        + Math.Max(h + r.SectionBelow, Dimensioning.NotesHeight(Features.SectionNotes))
                        + Head(scale)
                        + Math.Max(d + r.Below, Dimensioning.NotesHeight(Features.Notes))
                )
                : (
                    r.Left + w + r.Right + r.SectionLeft + w + r.SectionRight,
                    Math.Max(Head(scale), SectionHead(scale))
                        + Math.Max(
                            Math.Max(d + r.Below, h + r.SectionBelow),
                            Math.Max(Dimensioning.NotesHeight(Features.Notes), Dimensioning.NotesHeight(Features.SectionNotes))
                        )
                );
        }
    }

    private static SheetDraft Draw(SheetJob job, SheetPart part, PartFeatures features)
    {
        var plan = new Plan(part, features, job.Units, part.Extent, part.HeightMm);
        var (paper, scale) = Choose(plan);
        var (frame, pen, rooms) = (SheetDraft.FrameOf(paper), new SheetPen(), plan.Rooms(scale));
        var free = frame.BottomMm - TitleBlock.Height - Beside;
        var needs = plan.Needs(scale);
        var left = frame.LeftMm + Beside + Math.Max(0, frame.RightMm - frame.LeftMm - 2 * Beside - needs.Width) / 2;
        var top = frame.TopMm + Math.Max(0, free - frame.TopMm - needs.Height) / 3;
        var (w, d, h) = ((plan.Box.Right - plan.Box.Left) * scale, (plan.Box.Top - plan.Box.Bottom) * scale, plan.Height * scale);
        var sectionBox = (plan.Box.Left, 0.0, plan.Box.Right, plan.Height);
        if (plan.Stacked(scale))
        {
            var sectionTop = top + plan.SectionHead(scale);
            var sectionBottom = sectionTop + h;
            var planTop = Math.Max(sectionBottom + rooms.SectionBelow, sectionTop + Dimensioning.NotesHeight(features.SectionNotes)) + plan.Head(scale);
            DrawSection(pen, plan, new SheetView(left + rooms.Left, sectionBottom, scale, sectionBox), planTop - TitleRoom);
            DrawPlan(pen, plan, new SheetView(left + rooms.Left, planTop + d, scale, plan.Box), free);
        }
        else
        {
            var head = top + Math.Max(plan.Head(scale), plan.SectionHead(scale));
            DrawPlan(pen, plan, new SheetView(left + rooms.Left, head + d, scale, plan.Box), free);
            DrawSection(pen, plan, new SheetView(left + rooms.Left + w + rooms.Right + rooms.SectionLeft, head + h, scale, sectionBox), free);
        }

        Remarks(pen, frame, Notes(part));
        var title = SheetUnits.Many(part.Parts.Count, part.Kind.Name);
        return new SheetDraft(
            Name: part.Kind.Name.Replace(' ', '-'),
            Title: title,
            Description: $"{title}: seen from above as printed, and cut, with dimensions",
            WidthMm: paper.Width,
            HeightMm: paper.Height,
            ScaleRatio: scale,
            Parts: part.Printed,
            Marks: pen.Marks,
            Block: BlockOf(job, part, title, scale)
        )
        {
            Kind = part.Kind,
        };
    }

    private static TitleBlockText BlockOf(SheetJob job, SheetPart part, string title, double scale)
    {
        var (skin, mass) = (job.Facts.Skin, part.Parts[0].Solid.VolumeM3 * job.Facts.Skin?.DensityKgM3);
        var each = part.Parts.Count > 1 ? " each" : "";
        return job.Block(
            title,
            "part",
            scale,
            skin is null ? "not stated" : $"{skin.Name.ToUpperInvariant()}, printed",
            mass is { } kg ? job.Facts.Show.Mass(kg) + each : "not known"
        );
    }

    private static ((double Width, double Height) Paper, double Scale) Choose(Plan plan)
    {
        var small = Math.Max(plan.Box.Right - plan.Box.Left, plan.Box.Top - plan.Box.Bottom) <= 50;
        ((double, double) Paper, double Scale)[] ways =
        [
            .. small ? [(SheetDraft.A4, 2.0)] : Array.Empty<((double, double), double)>(),
            (SheetDraft.A4, 1),
            (SheetDraft.A4, 0.5),
            (SheetDraft.A3, 0.5),
            (SheetDraft.A4, 0.2),
            (SheetDraft.A3, 0.2),
            (SheetDraft.A3, 0.1),
            (SheetDraft.A3, 0.05),
            (SheetDraft.A3, 0.02),
        ];
        return ways.FirstOrDefault(way => Fits(plan, way.Paper, way.Scale), ways[^1]);
    }

    private static bool Fits(Plan plan, (double Width, double Height) paper, double scale)
    {
        var (frame, needs) = (SheetDraft.FrameOf(paper), plan.Needs(scale));
        return needs.Width <= frame.RightMm - frame.LeftMm - 2 * Beside && needs.Height <= frame.BottomMm - frame.TopMm - TitleBlock.Height - Beside;
    }

    private static void DrawPlan(SheetPen pen, Plan plan, SheetView view, double lowest)
    {
        var mesh = SolidMesh.Of(plan.Part.Tidy).Mesh;
        pen.Text("from above, as printed", view.LeftMm, view.TopMm - 4, SheetPen.Middle);
        pen.Group("plan", Seen(mesh, Look.Down, view, double.MinValue));
        foreach (var centre in plan.Features.Centres)
        {
            pen.Centre(view, centre.XMm, centre.ZMm, centre.DiameterMm);
        }

        foreach (var circle in plan.Features.Hidden)
        {
            pen.Circle(view, circle.XMm, circle.ZMm, circle.DiameterMm, SheetLine.Hidden);
        }

        foreach (var circle in plan.Features.BoltCircles)
        {
            pen.Circle(view, circle.XMm, circle.ZMm, circle.DiameterMm, SheetLine.Centre);
        }

        CuttingPlane(pen, view, Cut(plan));
        Dimensioning.Below(pen, view, plan.Across, plan.Units);
        Dimensioning.AtLeft(pen, view, plan.Up, plan.Units);
        Dimensioning.AtRight(pen, view, plan.Features.Notes, lowest);
    }

    private static double Cut(Plan plan) => plan.Features.CutAt ?? (plan.Box.Bottom + plan.Box.Top) / 2;

    private static void DrawSection(SheetPen pen, Plan plan, SheetView view, double lowest)
    {
        var mesh = SolidMesh.Of(plan.Part.Tidy).Mesh;
        pen.Text("section A–A", view.LeftMm, view.TopMm - 4, SheetPen.Middle);
        pen.Group(
            "section",
            [
                .. Seen(mesh, Look.FrontToRear, view, Cut(plan), SheetLine.Thin),
                .. Area(view, TidySolid.Section(plan.Part.Parts[0].Solid, Cut(plan), acrossX: false)),
            ]
        );
        Dimensioning.Below(pen, view, plan.SectionAcross, plan.Units);
        Dimensioning.AtLeft(pen, view, plan.SectionUp, plan.Units);
        Dimensioning.AtRight(pen, view, plan.Features.SectionNotes, lowest);
    }

    private static IEnumerable<SheetMark> Area(SheetView view, Region cut) =>
        cut.IsEmpty ? [] : [new SheetPath(view.Rings(cut), SheetLine.Visible, Closed: true, SheetFill.Plastic)];

    private static IReadOnlyList<SheetMark> Seen(IndexedMesh mesh, Look look, SheetView view, double cut, SheetLine line = SheetLine.Visible) =>
        [new SheetPath(view.Chained(LineView.Of([mesh], look, Pixel / view.ScaleRatio, cut).Lines(mesh)), line)];

    // Ends of the cutting plane beside the view, with arrows the way one looks.
    private static void CuttingPlane(SheetPen pen, SheetView view, double at)
    {
        var y = view.Y(at);
        foreach (var (x, away) in new[] { (view.LeftMm, -1), (view.RightMm, 1) })
        {
            var tip = new SheetPoint(x + 4.5 * away, y - 4);
            pen.Group(
                "cutting-plane",
                [
                    SheetPen.Line(SheetLine.Visible, new(x + 1 * away, y), new(x + 6 * away, y)),
                    SheetPen.Line(SheetLine.Thin, new(tip.XMm, y), tip),
                    SheetPen.Arrow(tip, 0, -1),
                    new SheetText("A", new SheetPoint(x + 4.5 * away, y + 3.6), SheetPen.Middle, SheetAnchor.Middle),
                ]
            );
        }

        pen.Add(SheetPen.Line(SheetLine.Centre, new(view.LeftMm + 1, y), new(view.RightMm - 1, y)));
    }

    private static IEnumerable<string> Notes(SheetPart part)
    {
        if (part.IsSplit)
        {
            yield return $"Printed in {part.Printed.Count / part.Parts.Count} pieces that key into one another.";
        }

        yield return "Cut-in names are left out, and beyond the cut the slopes of 45° under what begins in mid-air.";
        yield return part.Parts[0].Place is null ? "Does not become part of the cabinet." : "Measure when cold.";
    }

    /// <summary>Remarks at the left of the title block, from the bottom up.</summary>
    internal static void Remarks(SheetPen pen, SheetBox frame, IEnumerable<string> remarks)
    {
        var room = frame.RightMm - frame.LeftMm - TitleBlock.Width - 6;
        var lines = remarks.SelectMany(r => SheetPen.Wrapped(r, room)).ToList();
        for (var i = 0; i < lines.Count; i++)
        {
            pen.Text(lines[i], frame.LeftMm + 3, frame.BottomMm - 3 - (lines.Count - 1 - i) * NoteStep);
        }
    }
}
