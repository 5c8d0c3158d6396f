using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>The front or the rear: two plates, and what stands in the core between them.</summary>
/// <param name="OuterPlateM2">Area of the outer plate, its openings cut out, m².</param>
/// <param name="InnerPlateM2">Area of the inner plate, its openings cut out, m².</param>
/// <param name="CoreM2">What the cast fills between outer sleeve and openings, m².</param>
/// <param name="OpeningM2">Area of the opening that goes through the whole wall, m².</param>
/// <param name="CollarM2">Area of the collars and bosses that stand on the outer plate, m².</param>
/// <param name="PostM2">Area of the posts that stand on the outer plate, m².</param>
/// <param name="Posts">Number of posts.</param>
public sealed record PlateSection(double OuterPlateM2, double InnerPlateM2, double CoreM2, double OpeningM2, double CollarM2, double PostM2, int Posts)
{
    /// <summary>Number of openings and bosses that had to be drawn together, because they touch one another or the plate's edge.</summary>
    internal int JoinedCount { get; init; }

    /// <summary>Draws the front: driver openings with their collars, bosses for the inserts, posts on a grid of the strut pitch.</summary>
    /// <param name="sizes">Sizes of the cabinet.</param>
    /// <returns>The section; openings that reach past the front are clipped by it.</returns>
    /// <remarks>Source: our choice of collars, bosses and posts. Accuracy: areas are exact to the 1 µm grid.</remarks>
    public static PlateSection Front(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        var centres = DriverCentres(sizes);
        var openings = centres.Select(c => new Circle(c.X, c.Z, sizes.Cutout)).ToList();
        var collars = openings.Select(o => o with { Diameter = o.Diameter > 0 ? o.Diameter + 2 * BuildUp.DriverCollar : 0 }).ToList();
        var bosses = centres.SelectMany(c => Enumerable.Range(0, sizes.BoltCircle > 0 ? sizes.Bolts : 0).Select(i =>
        {
            var angle = 2 * Math.PI * (i + 0.5) / sizes.Bolts;
            return new Circle(c.X + sizes.BoltCircle / 2 * Math.Cos(angle), c.Z + sizes.BoltCircle / 2 * Math.Sin(angle), BuildUp.Boss);
        })).ToList();
        return Of(sizes, openings, [.. collars, .. bosses], []);
    }

    /// <summary>Draws the rear: the terminal's opening with its collar, the pour opening in the outer plate alone, posts.</summary>
    /// <param name="sizes">Sizes of the cabinet.</param>
    /// <returns>The section.</returns>
    /// <remarks>Source: our choice of collar, posts and places: terminal a quarter up the inside, or as low as its opening allows, pour opening as far below the top.</remarks>
    public static PlateSection Rear(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        var inside = sizes.Height - 2 * sizes.Wall;
        var up = sizes.Wall + Math.Min(inside / 2, Math.Max(inside / 4, sizes.Terminal / 2 + BuildUp.OpeningRoom));
        var terminal = new Circle(sizes.Width / 2, up, sizes.Terminal);
        var collar = terminal with { Diameter = sizes.Terminal > 0 ? sizes.Terminal + 2 * BuildUp.TerminalCollar : 0 };
        var pour = new Circle(sizes.Width / 2, sizes.Height - up, sizes.Core > 0 ? sizes.Pour : 0);
        return Of(sizes, [terminal], [collar], [pour]);
    }

    /// <summary>Centres of the drivers on the front: in the middle, or side by side along the longer side.</summary>
    /// <param name="sizes">Sizes of the cabinet.</param>
    /// <returns>The centres in x and z, mm.</returns>
    /// <remarks>Source: our choice.</remarks>
    public static IReadOnlyList<(double X, double Z)> DriverCentres(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        var n = sizes.DriverCount;
        var across = sizes.Width >= sizes.Height;
        return [.. Enumerable.Range(0, n).Select(i => (i + 0.5) / n).Select(s => across ? (sizes.Width * s, sizes.Height / 2) : (sizes.Width / 2, sizes.Height * s))];
    }

    private static PlateSection Of(CabinetSizes sizes, IReadOnlyList<Circle> openings, IReadOnlyList<Circle> collars, IReadOnlyList<Circle> outerOnly)
    {
        var (outer, cavity, inner) = (sizes.Outline.Inset(0), sizes.Outline.Inset(sizes.OuterSkin), sizes.Outline.Inset(sizes.OuterSkin + sizes.Core));
        var posts = sizes.Core > 0 ? PostCount(inner, sizes.StrutPitch, [.. collars, .. outerOnly]) : 0;
        var post = posts * Math.PI / 4 * BuildUp.Post * BuildUp.Post * 1e-6;
        var joined = 0;
        double Common(RoundedFrame plate, IReadOnlyList<Circle> circles)
        {
            var (areaM2, touching) = CommonAreaM2(plate, circles);
            joined += touching;
            return areaM2;
        }

        var throughInner = Common(inner, openings);
        var blocked = sizes.Core > 0 ? Common(cavity, collars) : 0;
        return new PlateSection(
            outer.ToRegion().AreaM2 - Common(outer, openings) - Common(outer, outerOnly),
            inner.ToRegion().AreaM2 - throughInner,
            sizes.Core > 0 ? cavity.ToRegion().AreaM2 - blocked - post : 0,
            throughInner, sizes.Core > 0 ? blocked - Common(cavity, openings) : 0, post, posts)
        {
            JoinedCount = joined,
        };
    }

    // A disc that lies apart from the others and within the plate counts by itself; only those that touch one another or the plate's edge are drawn together.
    private static (double AreaM2, int Touching) CommonAreaM2(RoundedFrame plate, IReadOnlyList<Circle> circles)
    {
        var all = circles.Where(c => c.Diameter > 0 && !circles.Any(c.IsHiddenBy)).Distinct().ToList();
        var single = all.Where(c => c.IsWithin(plate) && all.All(other => other == c || c.IsApartFrom(other))).ToHashSet();
        var touching = all.Where(c => !single.Contains(c)).Select(c => c.ToRegion()).ToArray();
        return (single.Sum(c => c.ToRegion().AreaM2) + (touching.Length == 0 ? 0 : plate.ToRegion().Intersect(Joined(touching)).AreaM2), touching.Length);
    }

    // By halves: the many circles of several drivers joined one after another would make each join as long as all before it.
    private static Region Joined(ReadOnlySpan<Region> regions)
    {
        var half = regions.Length / 2;
        return regions.Length == 1 ? regions[0] : Joined(regions[..half]).Join(Joined(regions[half..]));
    }

    private static int PostCount(RoundedFrame inner, double pitch, IReadOnlyList<Circle> avoid)
    {
        var room = BuildUp.PostRoom;
        double[] Grid(double from, double to)
        {
            var n = Math.Max(1, (int)Math.Ceiling((to - from) / pitch) - 1);
            return [.. Enumerable.Range(1, n).Select(i => from + (to - from) * i / (n + 1))];
        }

        return Grid(inner.Left, inner.Right).Sum(x => Grid(inner.Bottom, inner.Top).Count(z =>
            Math.Min(Math.Min(x - inner.Left, inner.Right - x), Math.Min(z - inner.Bottom, inner.Top - z)) >= room
            && avoid.All(c => c.Diameter <= 0 || Math.Sqrt((x - c.X) * (x - c.X) + (z - c.Z) * (z - c.Z)) >= c.Diameter / 2 + room)));
    }

    private sealed record Circle(double X, double Z, double Diameter)
    {
        // A drawn disc strays less than this from the circle, mm.
        private const double Stray = 0.1;

        internal Region ToRegion() => Region.Disc(X, Z, Diameter);

        internal bool IsApartFrom(Circle other) => From(other) > (Diameter + other.Diameter) / 2 + Stray;

        internal bool IsHiddenBy(Circle other) => From(other) < (other.Diameter - Diameter) / 2 - Stray;

        // Inside the straight sides, and inside the arc of a corner where its centre lies in one.
        internal bool IsWithin(RoundedFrame plate)
        {
            var (fromSide, fromEnd) = (Math.Min(X - plate.Left, plate.Right - X), Math.Min(Z - plate.Bottom, plate.Top - Z));
            var (intoX, intoZ) = (Math.Max(0, plate.Radius - fromSide), Math.Max(0, plate.Radius - fromEnd));
            var room = intoX > 0 && intoZ > 0 ? plate.Radius - Math.Sqrt(intoX * intoX + intoZ * intoZ) : Math.Min(fromSide, fromEnd);
            return room > Diameter / 2 + Stray;
        }

        private double From(Circle other) => Math.Sqrt((X - other.X) * (X - other.X) + (Z - other.Z) * (Z - other.Z));
    }
}
