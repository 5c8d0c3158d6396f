using Stillwall.Numerics;

namespace Stillwall.Shapes;

/// <summary>A shape that changes evenly from one ring to another: a chamfer, a cone, a countersink. Corner by corner, so that its sides are flat.</summary>
public sealed class Taper
{
    private Taper(IReadOnlyList<GridPoint> lower, IReadOnlyList<GridPoint> upper)
    {
        (LowerRing, UpperRing) = (lower, upper);
        (Lower, Upper) = (Region.OfRing(lower), Region.OfRing(upper));
    }

    /// <summary>The region at the lower end.</summary>
    public Region Lower { get; }

    /// <summary>The region at the upper end.</summary>
    public Region Upper { get; }

    internal IReadOnlyList<GridPoint> LowerRing { get; }

    internal IReadOnlyList<GridPoint> UpperRing { get; }

    /// <summary>A cone or the stump of one, upright.</summary>
    /// <param name="x">Centre across, mm.</param>
    /// <param name="y">Centre up, mm.</param>
    /// <param name="lowerDiameter">Diameter at the lower end, mm, zero or greater.</param>
    /// <param name="upperDiameter">Diameter at the upper end, mm, zero or greater.</param>
    /// <returns>The taper; its cross-sections have the areas of the circles.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative or endless diameter.</exception>
    public static Taper Discs(double x, double y, double lowerDiameter, double upperDiameter)
    {
        Require.NotNegative(lowerDiameter);
        Require.NotNegative(upperDiameter);
        var n = 4 * Region.Segments(Math.Max(0.1, Math.Max(lowerDiameter, upperDiameter) / 2));
        var step = 2 * Math.PI / n;
        var area = Math.Sqrt(step / Math.Sin(step));
        IReadOnlyList<GridPoint> Circle(double diameter) =>
            [.. Enumerable.Range(0, n).Select(i => At(x + diameter / 2 * area * Math.Cos(i * step), y + diameter / 2 * area * Math.Sin(i * step)))];
        return new Taper(Circle(lowerDiameter), Circle(upperDiameter));
    }

    /// <summary>Between two rounded rectangles, such as a plate and the same plate less its chamfer.</summary>
    /// <param name="lower">Frame at the lower end.</param>
    /// <param name="upper">Frame at the upper end.</param>
    /// <returns>The taper; the frame with the larger radius is drawn as its region is.</returns>
    /// <exception cref="ArgumentException">A frame whose edges have passed one another.</exception>
    public static Taper Frames(RoundedFrame lower, RoundedFrame upper)
    {
        ArgumentNullException.ThrowIfNull(lower);
        ArgumentNullException.ThrowIfNull(upper);
        var radius = Math.Max(lower.Radius, upper.Radius);
        var n = radius < 0.001 ? 0 : Region.Segments(radius);
        return new Taper(Corners(lower, n, nameof(lower)), Corners(upper, n, nameof(upper)));
    }

    /// <summary>The ring a share of the way up.</summary>
    internal IReadOnlyList<GridPoint> At(double share) =>
        share <= 0 ? LowerRing
        : share >= 1 ? UpperRing
        :
        [
            .. LowerRing.Zip(
                UpperRing,
                (a, b) => new GridPoint((int)Math.Round(a.X + share * ((double)b.X - a.X)), (int)Math.Round(a.Y + share * ((double)b.Y - a.Y)))
            ),
        ];

    private static GridPoint At(double x, double y) => new(Grid.Micrometres(x, nameof(x)), Grid.Micrometres(y, nameof(y)));

    private static IReadOnlyList<GridPoint> Corners(RoundedFrame f, int n, string name)
    {
        if (f.Width <= 0 || f.Height <= 0)
        {
            throw new ArgumentException(FormattableString.Invariant($"width {f.Width} mm, height {f.Height} mm; accepted: greater than zero"), name);
        }

        var r = Math.Min(f.Radius, Math.Min(f.Width, f.Height) / 2);
        (double X, double Y, double From)[] corners =
        [
            (f.Right - r, f.Bottom + r, -90),
            (f.Right - r, f.Top - r, 0),
            (f.Left + r, f.Top - r, 90),
            (f.Left + r, f.Bottom + r, 180),
        ];
        return [.. corners.SelectMany(c => n == 0 ? [(c.X, c.Y)] : Region.Quarter(c.X, c.Y, r, c.From, n)).Select(p => At(p.X, p.Y))];
    }
}
