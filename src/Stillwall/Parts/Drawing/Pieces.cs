using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>Splits what is too large for the printer into pieces that key into one another.</summary>
/// <remarks>
/// Level cuts step up and down from quarter to quarter of the part; upright cuts step to and fro, in tall parts from height to height, in flat ones
/// along the cut. A cut that would leave loose bits is moved. Source: our choice.
/// </remarks>
internal static class Pieces
{
    private const double Far = 10_000,
        Tall = 60,
        ToothLength = 30,
        Shift = 7;

    // What a flank of a tooth gives way on the second piece, so that the pieces go together, mm.
    private const double FlankGap = 0.2;

    private const int MostShifts = 5;

    /// <summary>
    /// The pieces of a part, named and marked, of which an opening leaves something; the part itself where it fits, or where no printer is stated.
    /// </summary>
    internal static IReadOnlyList<DrawnPart> Of(Part part, PartJob job)
    {
        var drawn = part.Draft.Draw();
        var blank = job.Named ? drawn : Blank.Nameless(drawn.Solid);
        var cut = Cut(blank.Solid, job.Printer);
        return
        [
            .. cut.Select(
                (p, i) =>
                    new DrawnPart(
                        part.Kind,
                        PartNames.Of(part, i + 1, cut.Count),
                        blank.Mark(p.Solid, Words(part, i, cut.Count), p.Within),
                        part.Draft.Place?.ShiftedFirst(0, 0, p.Foot)
                    )
            ),
        ];
    }

    // A whole part says what it is, the last piece which part it belongs to, the others which piece they are.
    private static string Words(Part part, int piece, int pieces) =>
        pieces == 1 ? part.Mark
        : piece == pieces - 1 ? part.Name
        : FormattableString.Invariant($"{piece + 1}/{pieces}");

    private static IReadOnlyList<Piece> Cut(Solid solid, Printer? printer)
    {
        var whole = new Piece(solid, Everywhere, 0);
        if (printer is null || PrinterFit.SpaceMm(printer) is not { } space)
        {
            return [whole];
        }

        var size = SizeOf(solid);
        var (nx, ny, nz) = PrinterFit.Pieces(new PartSize(size.X.Length, size.Y.Length, size.Z.Length), space);
        return
        [
            .. Level(whole, nz, size)
                .SelectMany(p => Upright(p, nx, size, false))
                .SelectMany(p => Upright(p, ny, size, true))
                .Where(p => nx * ny * nz == 1 || p.Solid.FootMm is not null)
                .Select(OnBed),
        ];
    }

    private static readonly Region Everywhere = Region.RoundedRectangle(-Far, -Far, Far, Far, 0);

    private sealed record Piece(Solid Solid, Region Within, double Foot);

    private sealed record Span(double From, double To)
    {
        internal double Length => To - From;

        internal double Middle => (From + To) / 2;
    }

    private static (Span X, Span Y, Span Z) SizeOf(Solid solid)
    {
        var (box, heights) = (solid.AddedExtent!.Value, solid.AddedHeights!.Value);
        return (new(box.Left, box.Right), new(box.Bottom, box.Top), new(heights.Bottom, heights.Top));
    }

    private static IEnumerable<Piece> Level(Piece whole, int count, (Span X, Span Y, Span Z) size)
    {
        var (x, y) = (size.X.Middle, size.Y.Middle);
        Region Quarters(double gap) =>
            Region.JoinAll([Region.RoundedRectangle(-Far, -Far, x - gap, y - gap, 0), Region.RoundedRectangle(x + gap, y + gap, Far, Far, 0)]);
        var (tooth, loose) = (Quarters(0), Region.RoundedRectangle(-Far, -Far, Far, Far, 0).Cut(Quarters(-FlankGap)));
        var rest = whole.Solid;
        for (var i = 1; i < count; i++)
        {
            var at = size.Z.From + size.Z.Length * i / count;
            var (low, high) = (at - PrinterFit.Tooth, at + PrinterFit.Tooth);
            yield return whole with
            {
                Solid = rest.Between(-Far, high).Within(tooth, low, high),
            };
            rest = rest.Between(low, Far).Within(loose, low, high);
        }

        yield return whole with
        {
            Solid = rest,
        };
    }

    // A piece of a quarter may begin at the height of a tooth: what was added there may be cut away, so the drawn slabs tell.
    private static Piece OnBed(Piece piece)
    {
        var foot = piece.Solid.AddedHeights!.Value.Bottom == 0 && piece.Within == Everywhere ? 0 : piece.Solid.FootMm!.Value;
        return piece with { Solid = piece.Solid.Lifted(-foot), Foot = foot };
    }

    private static IEnumerable<Piece> Upright(Piece whole, int count, (Span X, Span Y, Span Z) size, bool alongX)
    {
        var span = alongX ? size.Y : size.X;
        var rest = whole;
        for (var i = 1; i < count; i++)
        {
            var (lesser, greater) = CutClean(rest, span.From + span.Length * i / count, alongX);
            yield return lesser;
            rest = greater;
        }

        yield return rest;
    }

    private static (Piece Lesser, Piece Greater) CutClean(Piece whole, double at, bool alongX)
    {
        (Piece Lesser, Piece Greater)? first = null;
        for (var i = 0; i <= 2 * MostShifts; i++)
        {
            var tried = Cut(whole, at + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * Shift, alongX);
            if (Connections.Pieces(tried.Lesser.Solid).Count == 1 && Connections.Pieces(tried.Greater.Solid).Count == 1)
            {
                return tried;
            }

            first ??= tried;
        }

        return first!.Value;
    }

    private static (Piece Lesser, Piece Greater) Cut(Piece whole, double at, bool alongX)
    {
        var ends = whole.Solid.AddedHeights!.Value;
        if (ends.Top - ends.Bottom <= Tall)
        {
            var side = Side(at, alongX, ToothLength);
            var gap = FlankGap;
            return (
                whole with
                {
                    Solid = whole.Solid.Within(side),
                    Within = whole.Within.Intersect(side),
                },
                whole with
                {
                    Solid = whole.Solid.Within(Everywhere.Cut(side.Offset(gap))),
                    Within = whole.Within.Cut(side.Offset(gap)),
                }
            );
        }

        var (lesser, greater) = (whole.Solid, whole.Solid);
        var steps = Math.Max(2, (int)Math.Round((ends.Top - ends.Bottom) / ToothLength));
        for (var i = 0; i < steps; i++)
        {
            var (from, to) = (ends.Bottom + (ends.Top - ends.Bottom) * i / steps, ends.Bottom + (ends.Top - ends.Bottom) * (i + 1) / steps);
            var side = Side(at + (i % 2 == 0 ? PrinterFit.Tooth : -PrinterFit.Tooth), alongX, 0);
            lesser = lesser.Within(side, from, to);
            greater = greater.Within(Everywhere.Cut(side), from, to);
        }

        return (whole with { Solid = lesser }, whole with { Solid = greater });
    }

    // Everything before a cut: a half plane, its edge straight or with teeth.
    private static Region Side(double at, bool alongX, double tooth)
    {
        var edge = new List<(double Along, double At)>();
        if (tooth <= 0)
        {
            edge.AddRange([(-Far, at), (Far, at)]);
        }
        else
        {
            for (var (along, i) = (-1000.0, 0); along < 1000; along += tooth, i++)
            {
                var d = at + (i % 2 == 0 ? PrinterFit.Tooth : -PrinterFit.Tooth);
                edge.AddRange([(along, d), (along + tooth, d)]);
            }
        }

        edge.AddRange([(Far, -Far), (-Far, -Far)]);
        return Region.Polygon(edge.Select(p => alongX ? (p.Along, p.At) : (p.At, p.Along)));
    }
}
