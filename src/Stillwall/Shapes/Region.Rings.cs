using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.OverlayNG;
using Stillwall.Numerics;
using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Shapes;

/// <content>What solids need of a region: its edges, its pieces, moving it, growing it.</content>
internal sealed partial class Region
{
    private IReadOnlyList<GridPoint[]>? rings;

    /// <summary>Whether nothing is in the region.</summary>
    public bool IsEmpty => geometry.IsEmpty;

    /// <summary>Number of separate pieces.</summary>
    public int PieceCount => geometry.IsEmpty ? 0 : geometry.NumGeometries;

    /// <summary>The box round the region, mm; null round nothing.</summary>
    public (double Left, double Bottom, double Right, double Top)? Extent =>
        geometry.IsEmpty
            ? null
            : (
                geometry.EnvelopeInternal.MinX / MicrometresPerMillimetre,
                geometry.EnvelopeInternal.MinY / MicrometresPerMillimetre,
                geometry.EnvelopeInternal.MaxX / MicrometresPerMillimetre,
                geometry.EnvelopeInternal.MaxY / MicrometresPerMillimetre
            );

    /// <summary>The rings, run so that the region lies at the left: outer ones counter-clockwise, holes clockwise.</summary>
    internal IReadOnlyList<GridPoint[]> Rings =>
        rings ??= [.. Polygons(geometry).SelectMany(p => p.InteriorRings.Select(h => Ring(h, false)).Prepend(Ring(p.ExteriorRing, true)))];

    /// <summary>Where a level line runs within the region.</summary>
    /// <param name="y">Height of the line, mm; a line along a level edge counts as just above it.</param>
    internal IReadOnlyList<(double From, double To)> Across(double y)
    {
        var at = y * MicrometresPerMillimetre;
        var crossings = new List<double>();
        foreach (var ring in Rings)
        {
            for (var (i, a) = (0, ring[^1]); i < ring.Length; a = ring[i++])
            {
                if (a.Y <= at != ring[i].Y <= at)
                {
                    crossings.Add((a.X + (at - a.Y) / (ring[i].Y - (double)a.Y) * ((double)ring[i].X - a.X)) / MicrometresPerMillimetre);
                }
            }
        }

        crossings.Sort();
        return [.. crossings.Chunk(2).Select(c => (c[0], c[1]))];
    }

    /// <summary>Whether an upright rectangle lies wholly within the region.</summary>
    /// <returns>True where the region's edges touch it from outside at most, and its middle is within.</returns>
    internal bool Holds(double left, double bottom, double right, double top)
    {
        if (
            geometry.IsEmpty
            || !geometry.EnvelopeInternal.Contains(
                new Envelope(
                    left * MicrometresPerMillimetre,
                    right * MicrometresPerMillimetre,
                    bottom * MicrometresPerMillimetre,
                    top * MicrometresPerMillimetre
                )
            )
        )
        {
            return false;
        }

        var (l, b, r, t) = (
            left * MicrometresPerMillimetre,
            bottom * MicrometresPerMillimetre,
            right * MicrometresPerMillimetre,
            top * MicrometresPerMillimetre
        );
        foreach (var ring in Rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                if (Enters(new GridEdge(ring[i], ring[i + 1 < ring.Length ? i + 1 : 0]), l, b, r, t))
                {
                    return false;
                }
            }
        }

        return Across((bottom + top) / 2).Any(run => run.From <= left && run.To >= right);
    }

    // What is left of an edge between the left and the right side must not come between the lower and the upper.
    private static bool Enters(GridEdge edge, double left, double bottom, double right, double top)
    {
        var (a, b) = edge.From.X <= edge.To.X ? (edge.From, edge.To) : (edge.To, edge.From);
        if (b.X <= left || a.X >= right || Math.Max(a.Y, b.Y) <= bottom || Math.Min(a.Y, b.Y) >= top)
        {
            return false;
        }

        double At(double x) => a.Y + (x - a.X) / (b.X - a.X) * ((double)b.Y - a.Y);
        var (from, to) = a.X == b.X ? (a.Y, b.Y) : (At(Math.Max(left, a.X)), At(Math.Min(right, b.X)));
        return Math.Max(from, to) > bottom && Math.Min(from, to) < top;
    }

    /// <summary>Puts polygons together that stand apart or overlap, as they are: for cutting with.</summary>
    internal static Region Apart(IEnumerable<Region> regions) => new(Factory.CreateMultiPolygon([.. regions.SelectMany(r => Polygons(r.geometry))]));

    /// <summary>Puts many regions together; quick where they stand apart.</summary>
    public static Region JoinAll(IEnumerable<Region> regions)
    {
        ArgumentNullException.ThrowIfNull(regions);
        var groups = new List<Region>();
        foreach (var region in regions.Where(r => !r.IsEmpty).OrderBy(r => r.geometry.EnvelopeInternal.MinX))
        {
            var joined = region;
            for (var i = groups.Count - 1; i >= 0; i--)
            {
                if (groups[i].MayTouch(joined))
                {
                    joined = groups[i].Join(joined);
                    groups.RemoveAt(i);
                    i = groups.Count;
                }
            }

            groups.Add(joined);
        }

        return groups.Count switch
        {
            0 => Empty,
            1 => groups[0],
            _ => new Region(Factory.CreateMultiPolygon([.. groups.SelectMany(g => Polygons(g.geometry))])),
        };
    }

    /// <summary>The region grown all round, or shrunk.</summary>
    /// <param name="distance">Distance outwards, mm; negative inwards.</param>
    /// <returns>The region with round corners, on the grid; empty where nothing is left.</returns>
    public Region Offset(double distance)
    {
        Require.Within(distance, -1e4, 1e4, nameof(distance), "mm");
        var around = BufferOp.Buffer(
            geometry,
            distance * MicrometresPerMillimetre,
            new BufferParameters(Segments(Math.Max(0.1, Math.Abs(distance)))) { SimplifyFactor = 0.001 }
        );
        return new Region(PrecisionReducer.ReducePrecision(around, Factory.PrecisionModel));
    }

    public Region Moved(double x, double y)
    {
        Require.Within(x, -1e5, 1e5, nameof(x), "mm");
        Require.Within(y, -1e5, 1e5, nameof(y), "mm");
        return Changed(AffineTransformation.TranslationInstance(Math.Round(x * MicrometresPerMillimetre), Math.Round(y * MicrometresPerMillimetre)));
    }

    /// <summary>The mirror image left to right.</summary>
    public Region Mirrored(double x)
    {
        Require.Within(x, -1e5, 1e5, nameof(x), "mm");
        return Changed(new AffineTransformation(-1, 0, Math.Round(2 * x * MicrometresPerMillimetre), 0, 1, 0));
    }

    /// <summary>The region turned counter-clockwise about the origin.</summary>
    public Region Turned(int quarters)
    {
        var (cos, sin) = (((quarters % 4) + 4) % 4) switch
        {
            0 => (1, 0),
            1 => (0, 1),
            2 => (-1, 0),
            _ => (0, -1),
        };
        return Changed(new AffineTransformation(cos, -sin, 0, sin, cos, 0));
    }

    /// <summary>The separate pieces; pieces that touch in a point are separate.</summary>
    public IReadOnlyList<Region> Pieces() => PieceCount == 1 ? [this] : [.. Polygons(geometry).Select(p => new Region(p))];

    /// <summary>Whether two regions have an area in common, not only a border.</summary>
    public bool Overlaps(Region other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return !IsEmpty && MayTouch(other) && (OverlapHalfwayUp(other) || geometry.Relate(other.geometry, "T********"));
    }

    // One line across both mostly tells, and much quicker.
    private bool OverlapHalfwayUp(Region other)
    {
        var both = geometry.EnvelopeInternal.Intersection(other.geometry.EnvelopeInternal);
        var y = (both.MinY + both.MaxY) / 2 / MicrometresPerMillimetre;
        var runs = other.Across(y);
        return both.Height > 0 && Across(y).Any(a => runs.Any(b => Math.Min(a.To, b.To) > Math.Max(a.From, b.From)));
    }

    /// <summary>Whether two regions are the same, point by point.</summary>
    internal bool Same(Region other) => ReferenceEquals(this, other) || (AreaM2.Equals(other.AreaM2) && geometry.EqualsExact(other.geometry));

    /// <summary>What a pen of some width draws along lines, mm; a line of one point is a dot.</summary>
    internal static Region Strokes(IEnumerable<IReadOnlyList<(double X, double Y)>> lines, double width)
    {
        var drawn = lines
            .Select(line => line.Select(p => new Coordinate(Math.Round(p.X * MicrometresPerMillimetre), Math.Round(p.Y * MicrometresPerMillimetre))).ToArray())
            .Select(line => line.Length == 1 ? (Geometry)Factory.CreatePoint(line[0]) : Factory.CreateLineString(line))
            .ToArray();
        var around = BufferOp.Buffer(Factory.CreateGeometryCollection(drawn), width / 2 * MicrometresPerMillimetre, new BufferParameters(2));
        return new Region(PrecisionReducer.ReducePrecision(around, Factory.PrecisionModel));
    }

    /// <summary>A narrow strip round a line, or a small square round a point.</summary>
    internal static Region Along(GridPoint from, GridPoint to, double halfWidth)
    {
        var (x0, y0, x1, y1) = (
            from.X / MicrometresPerMillimetre,
            from.Y / MicrometresPerMillimetre,
            to.X / MicrometresPerMillimetre,
            to.Y / MicrometresPerMillimetre
        );
        var length = Math.Sqrt((x1 - x0) * (x1 - x0) + (y1 - y0) * (y1 - y0));
        var (ux, uy) = length > 0 ? ((x1 - x0) / length * halfWidth, (y1 - y0) / length * halfWidth) : (halfWidth, 0);
        return Polygon([(x0 - ux + uy, y0 - uy - ux), (x1 + ux + uy, y1 + uy - ux), (x1 + ux - uy, y1 + uy + ux), (x0 - ux - uy, y0 - uy + ux)]);
    }

    private static IEnumerable<Polygon> Polygons(Geometry geometry) =>
        Enumerable.Range(0, geometry.NumGeometries).Select(geometry.GetGeometryN).OfType<Polygon>().Where(p => !p.IsEmpty);

    private static GridPoint[] Ring(LineString line, bool counterClockwise)
    {
        var sequence = line.CoordinateSequence;
        var ring = new GridPoint[sequence.Count - 1];
        for (var i = 0; i < ring.Length; i++)
        {
            ring[i] = new GridPoint((int)sequence.GetX(i), (int)sequence.GetY(i));
        }

        if (Area.OfRingSigned(sequence) < 0 != counterClockwise)
        {
            Array.Reverse(ring);
        }

        return ring;
    }

    private Region Changed(AffineTransformation change) => IsEmpty ? this : new Region(change.Transform(geometry));
}
