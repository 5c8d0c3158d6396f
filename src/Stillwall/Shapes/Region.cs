using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using Stillwall.Numerics;
using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Shapes;

/// <summary>A flat region of whole micrometres: what a slab is made of. Knows no stage.</summary>
/// <remarks>
/// Sizes come in as millimetres and are rounded to 1 µm. Arcs are drawn as polygons that stray at most 20 µm from the arc and
/// enclose its exact area (to the grid), so that volumes from areas are those of the true shape.
/// </remarks>
internal sealed partial class Region
{
    private const double SquareMetresPerSquareMicrometre = 1e-12,
        ChordMillimetres = 0.02,
        LeastRadius = 0.001;

    private const int MostPointsFloating = 400;

    private static readonly GeometryFactory Factory = new(new PrecisionModel(1));
    private static readonly PrecisionModel Floating = new();

    private readonly Geometry geometry;

    private Region(Geometry geometry)
    {
        this.geometry = geometry;
        AreaM2 = geometry.Area * SquareMetresPerSquareMicrometre;
    }

    /// <summary>The region with nothing in it.</summary>
    public static Region Empty { get; } = new(Factory.CreatePolygon());

    public double AreaM2 { get; }

    /// <summary>A rectangle with rounded corners.</summary>
    /// <param name="top">Upper edge, mm, beyond the lower.</param>
    /// <param name="radius">Radius of the corners, mm; 0 to half the shorter side.</param>
    /// <returns>The region; empty where the edges have passed one another.</returns>
    public static Region RoundedRectangle(double left, double bottom, double right, double top, double radius)
    {
        Require.NotNegative(radius);
        if (right <= left || top <= bottom)
        {
            return Empty;
        }

        // A radius within the grid is none: the corners stay where they are.
        var r = radius < LeastRadius ? 0 : Math.Min(radius, Math.Min(right - left, top - bottom) / 2);
        var corners = new (double X, double Y, double From)[]
        {
            (right - r, bottom + r, -90),
            (right - r, top - r, 0),
            (left + r, top - r, 90),
            (left + r, bottom + r, 180),
        };
        return Polygon(corners.SelectMany(c => Quarter(c.X, c.Y, r, c.From)));
    }

    /// <summary>The region; empty for no diameter.</summary>
    /// <param name="diameter">Diameter, mm, zero or greater.</param>
    public static Region Disc(double x, double y, double diameter)
    {
        Require.NotNegative(diameter);
        if (diameter <= 0.002)
        {
            return Empty;
        }

        var n = 4 * Segments(diameter / 2);
        var step = 2 * Math.PI / n;
        var r = diameter / 2 * Math.Sqrt(step / Math.Sin(step));
        return Polygon(Enumerable.Range(0, n).Select(i => (x + r * Math.Cos(i * step), y + r * Math.Sin(i * step))));
    }

    /// <summary>The region; empty where fewer than three different corners are left on the grid.</summary>
    /// <param name="corners">Corners in order, mm; the last joins the first.</param>
    public static Region Polygon(IEnumerable<(double X, double Y)> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        var ring = new List<Coordinate>();
        foreach (var (x, y) in corners)
        {
            var at = new Coordinate(Math.Round(x * MicrometresPerMillimetre), Math.Round(y * MicrometresPerMillimetre));
            if (ring.Count == 0 || !ring[^1].Equals2D(at))
            {
                ring.Add(at);
            }
        }

        if (ring.Count > 1 && ring[^1].Equals2D(ring[0]))
        {
            ring.RemoveAt(ring.Count - 1);
        }

        if (ring.Count < 3)
        {
            return Empty;
        }

        ring.Add(ring[0].Copy());
        return new Region(Factory.CreatePolygon([.. ring]));
    }

    /// <summary>What lies in both regions.</summary>
    public Region Intersect(Region other) => Overlay(other, SpatialFunction.Intersection);

    /// <summary>What lies in either region.</summary>
    public Region Join(Region other) => Overlay(other, SpatialFunction.Union);

    /// <summary>What lies in this region and not in the other.</summary>
    public Region Cut(Region other) => Overlay(other, SpatialFunction.Difference);

    /// <summary>Whether a point lies in the region or on its edge.</summary>
    public bool Contains(double x, double y) =>
        geometry.Covers(Factory.CreatePoint(new Coordinate(x * MicrometresPerMillimetre, y * MicrometresPerMillimetre)));

    /// <summary>Whether the boxes round two regions touch: a quick look before an overlay.</summary>
    /// <returns>False where the regions certainly have nothing in common.</returns>
    public bool MayTouch(Region other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return geometry.EnvelopeInternal.Intersects(other.geometry.EnvelopeInternal);
    }

    // Floating overlay, rounded to the grid, is three times faster than an overlay on the grid and nearly always valid; where it is not, the slower one is.
    private Region Overlay(Region other, SpatialFunction operation)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (
            geometry.NumPoints + other.geometry.NumPoints <= MostPointsFloating
            && Rounded(OverlayNG.Overlay(geometry, other.geometry, operation, Floating)) is { } quick
        )
        {
            return new Region(quick);
        }

        return new Region(new OverlayNG(geometry, other.geometry, Factory.PrecisionModel, operation) { AreaResultOnly = true }.GetResult());
    }

    private static Geometry? Rounded(Geometry drawn)
    {
        var rounded = Factory.CreateGeometry(drawn);
        rounded.Apply(new ToPlace(c => (c.X, c.Y) = (Math.Round(c.X), Math.Round(c.Y))));
        rounded.GeometryChanged();
        return rounded is IPolygonal && rounded.IsValid ? rounded : null;
    }

    private sealed class ToPlace(Action<Coordinate> move) : ICoordinateFilter
    {
        public void Filter(Coordinate coord) => move(coord);
    }

    internal static int Segments(double radius) => Math.Max(4, (int)Math.Ceiling(Math.PI / 4 / Math.Acos(1 - Math.Min(0.5, ChordMillimetres / radius))));

    // The ends of a quarter lie on the arc, where the straight sides begin; the points between lie slightly outside it, so that
    // the area is the arc's: (n−2)/2·s² sin θ + r·s sin θ = π r²/4 for the radius s of those points.
    private static IEnumerable<(double X, double Y)> Quarter(double x, double y, double radius, double fromDegrees) =>
        radius < LeastRadius ? [(x, y)] : Quarter(x, y, radius, fromDegrees, Segments(radius));

    // With so many sides, also where the radius is none: tapers join arcs of different radius side by side.
    internal static IEnumerable<(double X, double Y)> Quarter(double x, double y, double radius, double fromDegrees, int n)
    {
        var step = Math.PI / 2 / n;
        var a = (n - 2) / 2.0;
        var between = radius * (Math.Sqrt(1 + a * Math.PI / Math.Sin(step)) - 1) / (2 * a);
        return Enumerable
            .Range(0, n + 1)
            .Select(i =>
            {
                var angle = fromDegrees * Math.PI / 180 + i * step;
                var r = i == 0 || i == n ? radius : between;
                return (x + r * Math.Cos(angle), y + r * Math.Sin(angle));
            });
    }
}
