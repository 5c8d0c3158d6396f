using Stillwall.Parts;
using Stillwall.Shapes;

namespace Stillwall.Figures.Sheets;

/// <summary>The cabinet exploded along its depth, seen from the front right above.</summary>
internal static class ExplodedSheet
{
    private const double Pixel = 0.15,
        LabelStep = 4.5;

    private sealed record MovedPart(SheetPart Part, IndexedMesh Mesh)
    {
        internal bool IsBelow => Part.Kind.Exploding is { Down: > 0 };
    }

    internal static SheetDraft Draw(SheetJob job, IReadOnlyList<(SheetPart Equal, IndexedMesh Mesh)> parts)
    {
        var (paper, look) = (SheetDraft.A3, Look.Isometric);
        var frame = SheetDraft.FrameOf(paper);
        var moved = Apartly(parts);
        var meshes = moved.Select(p => p.Mesh).ToList();
        var box = LineView.BoxOf(meshes, look);
        var (roomX, roomY) = (frame.RightMm - frame.LeftMm - 24, frame.BottomMm - frame.TopMm - 30);
        var scale = Math.Min(roomX / (box.Right - box.Left), roomY / (box.Top - box.Bottom));
        var view = new SheetView(
            frame.LeftMm + 8 + (roomX - (box.Right - box.Left) * scale) / 2,
            frame.BottomMm - 10 - (roomY - (box.Top - box.Bottom) * scale) / 2,
            scale,
            box
        );
        var seen = LineView.Of(meshes, look, Pixel / scale);
        var pen = new SheetPen();
        pen.Group(
            "bodies",
            [
                .. seen.Outlines()
                    .OrderBy(o => o.Key)
                    .Select(o => new SheetPath(
                        [.. o.Value.Select(ring => (IReadOnlyList<SheetPoint>)[.. ring.Select(p => view.At(p.U, p.V))])],
                        SheetLine.None,
                        Closed: true,
                        SheetFill.Body
                    )),
            ]
        );
        foreach (var mesh in meshes)
        {
            pen.Lines(view, seen.Lines(mesh), SheetLine.Thin);
        }

        Labels(pen, view, seen, moved, frame);
        var block = job.Block(
            "exploded view",
            "assembly",
            0,
            "as on the parts' sheets",
            job.Facts.Mass.ShellsKg is { } kg ? $"{job.Facts.Show.Mass(kg)} plastic" : "not known"
        ) with
        {
            Tolerance = "–",
        };
        return new SheetDraft(
            Name: "exploded",
            Title: "exploded view",
            Description: "the parts of the cabinet exploded along its depth, seen from the front right above, each with its name",
            WidthMm: paper.Width,
            HeightMm: paper.Height,
            ScaleRatio: 0,
            Parts: [],
            Marks: pen.Marks,
            Block: block
        );
    }

    private static List<MovedPart> Apartly(IReadOnlyList<(SheetPart Equal, IndexedMesh Mesh)> parts)
    {
        var shifts = ExplodedPlaces.Of([
            .. parts.Select(p => new PlacedPart(p.Equal.Kind, p.Mesh.Points.Min(c => c.Y).OffGrid(), p.Mesh.Points.Max(c => c.Y).OffGrid())),
        ]);
        return
        [
            .. parts
                .Zip(shifts, (p, shift) => new MovedPart(p.Equal, p.Mesh.Placed(Placement.AsPrinted.Shifted(0, shift.YMm, shift.ZMm))))
                .OrderBy(p => p.IsBelow)
                .ThenBy(p => p.Mesh.Points.Min(c => c.Y)),
        ];
    }

    // Names stand above and to the left, where nothing is drawn; those of the feet below.
    private static void Labels(SheetPen pen, SheetView view, LineView seen, List<MovedPart> moved, SheetBox frame)
    {
        var taken = new List<SheetBox>();
        foreach (var equal in moved.GroupBy(p => p.Part))
        {
            var words = SheetUnits.Many(equal.Key.Parts.Count, equal.Key.Kind.Name);
            var places = moved
                .Index()
                .Where(p => p.Item.Part == equal.Key)
                .Select(p => seen.EndsOf(p.Index))
                .OfType<((double U, double V) Top, (double U, double V) Bottom)>()
                .ToList();
            if (places.Count == 0)
            {
                continue;
            }

            var down = equal.First().IsBelow;
            var target = down ? places.OrderBy(p => p.Bottom.V).First().Bottom : places.OrderByDescending(p => p.Top.V - p.Top.U * 0.3).First().Top;
            var tip = view.At(target.U, target.V);
            for (var i = 0; i < 120; i++)
            {
                var (aside, away) = (7 + i % 6 * LabelStep, 6 + i / 6 * LabelStep);
                var text = new SheetText(
                    words,
                    new SheetPoint(tip.XMm + (down ? aside : -aside), tip.YMm + (down ? away + 2 : -away)),
                    SheetPen.Middle,
                    down ? SheetAnchor.Start : SheetAnchor.End
                );
                var box = text.Box;
                if (
                    frame.Contains(box)
                    && !taken.Exists(box.Overlaps)
                    && seen.IsFree(view.U(box.LeftMm - 1), view.V(box.BottomMm + 1), view.U(box.RightMm + 1), view.V(box.TopMm - 1))
                )
                {
                    taken.Add(new SheetBox(box.LeftMm - 1, box.TopMm - 1, box.RightMm + 1, box.BottomMm + 1));
                    pen.Group(
                        "leader",
                        [
                            SheetPen.Line(SheetLine.Thin, new(text.At.XMm + (down ? -1 : 1), text.At.YMm - 1.2), tip),
                            new SheetCircle(tip, 0.4, SheetLine.None, SheetFill.Ink),
                            text,
                        ]
                    );
                    break;
                }
            }
        }
    }
}
