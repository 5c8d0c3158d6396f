using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace Stillwall.Shapes;

/// <content>Many shapes at once, by a sweep of our own, for slabs.</content>
internal sealed partial class Region
{
    private const double SliverMicrometres = 1;

    /// <summary>What a rule keeps of this region and others.</summary>
    /// <param name="others">The others; what lies in any of them is within the second side.</param>
    /// <param name="keeps">Whether to keep a place that is within this region, and within any other.</param>
    /// <returns>The region, without slivers: rings whose mean width is about 2 µm or less (area under 1 µm times their length) go.</returns>
    internal Region Combine(IReadOnlyList<Region> others, Func<bool, bool, bool> keeps)
    {
        if (others.Count == 0 && keeps(true, false))
        {
            return this;
        }

        var found = RingSweep.Combine(Rings, others.SelectMany(o => o.Rings), keeps, node: true) is { } traced ? OfTraced(traced, simplify: true) : null;
        return found ?? Overlaid(JoinAll(others), keeps);
    }

    /// <summary>
    /// What of this region lies within each of others, drawn through the same points: a border that the parts have in common is the same edges in
    /// all.
    /// </summary>
    /// <returns>The common parts in the order of the others, without slivers.</returns>
    internal IReadOnlyList<Region> PartsWithin(IReadOnlyList<Region> others)
    {
        var settled = Noder.Settled([.. others.Prepend(this).SelectMany(r => r.Rings).SelectMany(RingSweep.EdgesOf).Distinct()]);
        IReadOnlyList<GridPoint[]> Through(Region region) =>
            [.. region.Rings.Select(ring => RingSweep.EdgesOf(ring).SelectMany(e => settled[e].SkipLast(1)).ToArray())];
        var own = Through(this);
        return
        [
            .. others.Select(other =>
                (RingSweep.Combine(own, Through(other), (a, b) => a && b, node: false) is { } traced ? OfTraced(traced, simplify: false) : null)
                ?? Intersect(JoinAll(other.Pieces()))
            ),
        ];
    }

    /// <summary>The region within rings that a sweep has traced, without slivers; null where they do not fit into one another.</summary>
    internal static Region? OfTraced(IReadOnlyList<GridPoint[]> rings, bool simplify)
    {
        var kept = WithoutSlivers(rings);
        return OfRings(simplify ? WithoutNeedlessPoints(kept) : kept);
    }

    private Region Overlaid(Region other, Func<bool, bool, bool> keeps) =>
        keeps(true, true) ? (keeps(true, false) ? Join(other) : Intersect(other)) : Cut(other);

    // Outer rings run counter-clockwise; a hole belongs to the smallest outer ring that it lies in. Null where a hole lies in none.
    private static Region? OfRings(IReadOnlyList<GridPoint[]> rings)
    {
        var sized = rings.Select(r => (Ring: r, Line: Line(r), Area: TwiceArea(r))).ToList();
        var shells = sized
            .Where(r => r.Area > 0)
            .OrderBy(r => r.Area)
            .Select(r => (r.Line, Box: r.Line.EnvelopeInternal, Holes: new List<LinearRing>()))
            .ToList();
        foreach (var hole in sized.Where(r => r.Area < 0))
        {
            var box = hole.Line.EnvelopeInternal;
            var around = shells.Count == 1 ? 0 : shells.FindIndex(s => s.Box.Contains(box) && LiesIn(hole.Line, s.Line));
            if (around < 0)
            {
                return null;
            }

            shells[around].Holes.Add(hole.Line);
        }

        var polygons = shells.Select(s => Factory.CreatePolygon(s.Line, [.. s.Holes])).ToArray();
        return polygons.Length switch
        {
            0 => Empty,
            1 => new Region(polygons[0]) { rings = rings },
            _ => new Region(Factory.CreateMultiPolygon(polygons)) { rings = rings },
        };
    }

    // The rings do not cross, so the first corner, or else the first middle of an edge, that is not on the other's border decides.
    private static bool LiesIn(LinearRing hole, LinearRing shell)
    {
        var corners = hole.Coordinates;
        var middles = corners.Zip(corners.Skip(1), (a, b) => new Coordinate((a.X + b.X) / 2, (a.Y + b.Y) / 2));
        return corners
                .Concat(middles)
                .Select(c => PointLocation.LocateInRing(c, shell.Coordinates))
                .FirstOrDefault(at => at != Location.Boundary, Location.Exterior) == Location.Interior;
    }

    private static LinearRing Line(GridPoint[] ring)
    {
        var line = new Coordinate[ring.Length + 1];
        for (var i = 0; i <= ring.Length; i++)
        {
            line[i] = new Coordinate(ring[i % ring.Length].X, ring[i % ring.Length].Y);
        }

        return Factory.CreateLinearRing(line);
    }

    private static IReadOnlyList<GridPoint[]> WithoutSlivers(IReadOnlyList<GridPoint[]> rings)
    {
        var gone = rings.Where(IsSliver).ToHashSet();
        if (gone.Count == 0)
        {
            return rings;
        }

        var shells = gone.Where(r => TwiceArea(r) > 0).Select(Line).ToList();
        return [.. rings.Where(r => !gone.Contains(r) && (TwiceArea(r) > 0 || !shells.Exists(s => LiesIn(Line(r), s))))];
    }

    // A point in line with its neighbours goes, unless rings touch there.
    private static IReadOnlyList<GridPoint[]> WithoutNeedlessPoints(IReadOnlyList<GridPoint[]> rings)
    {
        static bool InLine(GridPoint[] ring, int i) => GridPoint.Turn(ring[(i + ring.Length - 1) % ring.Length], ring[i], ring[(i + 1) % ring.Length]) == 0;
        var inLine = rings.SelectMany(ring => ring.Where((_, i) => InLine(ring, i))).ToHashSet();
        if (inLine.Count == 0)
        {
            return rings;
        }

        var touched = rings.SelectMany(r => r).Where(inLine.Contains).GroupBy(p => p).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet();
        return [.. rings.Select(ring => ring.Where((p, i) => !inLine.Contains(p) || !InLine(ring, i) || touched.Contains(p)).ToArray())];
    }

    private static bool IsSliver(GridPoint[] ring)
    {
        var length = 0.0;
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            length += Math.Sqrt(Math.Pow((double)b.X - a.X, 2) + Math.Pow((double)b.Y - a.Y, 2));
        }

        return Math.Abs(TwiceArea(ring)) <= 2 * SliverMicrometres * length;
    }

    private static long TwiceArea(GridPoint[] ring)
    {
        var area = 0L;
        for (var i = 1; i + 1 < ring.Length; i++)
        {
            area += GridPoint.Turn(ring[0], ring[i], ring[i + 1]);
        }

        return area;
    }
}
