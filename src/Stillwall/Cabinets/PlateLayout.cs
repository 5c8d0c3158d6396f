namespace Stillwall.Cabinets;

/// <summary>Where things are on the front or the rear, in the cabinet's x and z.</summary>
/// <param name="Openings">Openings through the whole wall.</param>
/// <param name="Collars">Collars round the openings, between the plates; their outer edges.</param>
/// <param name="Bosses">Bosses for threaded inserts, between the plates.</param>
/// <param name="Pilots">Holes for the inserts, from the front face.</param>
/// <param name="PourOpenings">Opening in the outer plate through which the mix goes in.</param>
/// <param name="Vents">One vent for each bay, in the outer plate.</param>
/// <param name="DryOuts">Openings in the outer plate through which the cast dries; lids close them.</param>
internal sealed record PlateLayout(
    IReadOnlyList<Circle> Openings,
    IReadOnlyList<Circle> Collars,
    IReadOnlyList<Circle> Bosses,
    IReadOnlyList<Circle> Pilots,
    IReadOnlyList<Circle> PourOpenings,
    IReadOnlyList<Circle> Vents,
    IReadOnlyList<Circle> DryOuts,
    IReadOnlyList<Circle> Posts
)
{
    /// <summary>Recesses for the drivers' flanges, from the front face; none where no recess is stated or no flange is known.</summary>
    public IReadOnlyList<Circle> Recesses { get; init; } = [];

    /// <summary>Everything that is cut through the outer plate alone, but for the inserts' holes.</summary>
    public IEnumerable<Circle> OuterOnly => [.. PourOpenings, .. Vents, .. DryOuts];

    /// <summary>Everything that stands between the plates, but for the posts.</summary>
    public IEnumerable<Circle> Standing => [.. Collars, .. Bosses];

    /// <summary>Lays out the front: driver openings with their collars, bosses for the inserts, posts on a grid of the strut pitch.</summary>
    /// <remarks>Source: our choice of collars, bosses and posts.</remarks>
    public static PlateLayout Front(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        var centres = DriverCentres(sizes);
        var openings = centres.Select(c => new Circle(c.X, c.Z, sizes.Cutout)).ToList();
        var bosses = centres
            .SelectMany(c =>
                Enumerable
                    .Range(0, sizes.BoltCircle > 0 ? sizes.Bolts : 0)
                    .Select(i =>
                    {
                        var angle = 2 * Math.PI * (i + 0.5) / sizes.Bolts;
                        return new Circle(c.X + sizes.BoltCircle / 2 * Math.Cos(angle), c.Z + sizes.BoltCircle / 2 * Math.Sin(angle), BuildUp.Boss);
                    })
            )
            .ToList();
        IReadOnlyList<Circle> pilots = sizes.Bolt > 0 ? [.. bosses.Select(b => b with { DiameterMm = sizes.Bolt + BuildUp.PilotOver })] : [];
        return new PlateLayout(
            Openings: openings,
            Collars: [.. openings.Select(o => o.Grown(BuildUp.DriverCollar))],
            Bosses: bosses,
            Pilots: pilots,
            PourOpenings: [],
            Vents: [],
            DryOuts: [],
            Posts: []
        )
        {
            Recesses = sizes.RecessDiameter > 0 ? [.. centres.Select(c => new Circle(c.X, c.Z, sizes.RecessDiameter))] : [],
        }.WithPosts(sizes);
    }

    /// <summary>
    /// Lays out the rear: the terminal's opening with its collar, in the outer plate alone the pour opening, vents and openings for drying; posts.
    /// </summary>
    /// <remarks>
    /// Source: our choice: terminal a quarter up the inside, or as low as its opening allows, pour opening as far below the top, a vent in the middle
    /// of each bay, openings for drying in a column at either side.
    /// </remarks>
    public static PlateLayout Rear(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        var inside = sizes.Height - 2 * sizes.Wall;
        var up = sizes.Wall + Math.Min(inside / 2, Math.Max(inside / 4, sizes.Terminal / 2 + BuildUp.OpeningRoom));
        var terminal = new Circle(sizes.Width / 2, up, sizes.Terminal);
        var pour = new Circle(sizes.Width / 2, sizes.Height - up, sizes.Core > 0 ? sizes.Pour : 0);
        var layout = new PlateLayout(
            Openings: [terminal],
            Collars: [terminal.Grown(BuildUp.TerminalCollar)],
            Bosses: [],
            Pilots: [],
            PourOpenings: [pour],
            Vents: [],
            DryOuts: [],
            Posts: []
        );
        return sizes.Core <= 0 ? layout : (layout with { Vents = VentsOf(sizes), DryOuts = DryOutsOf(sizes, [.. layout.Collars, pour]) }).WithPosts(sizes);
    }

    /// <summary>Centres of the drivers on the front: in the middle, or side by side along the longer side.</summary>
    /// <remarks>Source: our choice.</remarks>
    public static IReadOnlyList<(double X, double Z)> DriverCentres(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        var n = sizes.DriverCount;
        var across = sizes.Width >= sizes.Height;
        return
        [
            .. Enumerable
                .Range(0, n)
                .Select(i => (i + 0.5) / n)
                .Select(s => across ? (sizes.Width * s, sizes.Height / 2) : (sizes.Width / 2, sizes.Height * s)),
        ];
    }

    // In the middle of each bay, and in the middle of what the tongue leaves of the core.
    private static IReadOnlyList<Circle> VentsOf(CabinetSizes sizes)
    {
        var clear = sizes.Core - (sizes.HasTongue ? sizes.JointClearance + BuildUp.TongueThickness : 0);
        var struts = SleeveSection.StrutPlaces(sizes);
        var outwards = clear / 2 - sizes.Core / 2;
        return
        [
            .. struts
                .Places.Select(p => struts.Path.At(p - struts.Pitch / 2))
                .Select(at => new Circle(at.X + outwards * at.AlongY, at.Y - outwards * at.AlongX, Math.Min(BuildUp.Vent, clear - 1))),
        ];
    }

    private static IReadOnlyList<Circle> DryOutsOf(CabinetSizes sizes, IReadOnlyList<Circle> avoid)
    {
        var inner = sizes.Outline.Inset(sizes.OuterSkin + sizes.Core);
        var room = BuildUp.DryOutRoom;
        var diameter = Math.Min(BuildUp.DryOut, Math.Min((inner.Width - 2 * room) / 4, inner.Height - 2 * room));
        if (diameter < BuildUp.Vent * 2)
        {
            return [];
        }

        var rows = (int)((inner.Height - room) / (diameter + room));
        var columns = new[] { inner.Left + room + diameter / 2, inner.Right - room - diameter / 2 };
        return
        [
            .. columns
                .SelectMany(x => Enumerable.Range(0, rows).Select(i => new Circle(x, inner.Bottom + inner.Height * (i + 0.5) / rows, diameter)))
                .Where(c => c.DistanceTo(inner) >= room / 2 && avoid.All(a => a.DiameterMm <= 0 || c.DistanceTo(a) >= room)),
        ];
    }

    private PlateLayout WithPosts(CabinetSizes sizes)
    {
        if (sizes.Core <= 0)
        {
            return this;
        }

        var inner = sizes.Outline.Inset(sizes.OuterSkin + sizes.Core);
        var avoid = Standing.Concat(OuterOnly).Where(c => c.DiameterMm > 0).ToList();
        var grid = Grid(inner.Left, inner.Right, sizes.StrutPitch)
            .SelectMany(x => Grid(inner.Bottom, inner.Top, sizes.StrutPitch).Select(z => new Circle(x, z, 0)));
        return this with
        {
            Posts =
            [
                .. grid.Where(p => p.DistanceTo(inner with { Radius = 0 }) >= BuildUp.PostRoom && avoid.All(c => p.DistanceTo(c) >= BuildUp.PostRoom))
                    .Select(p => p with { DiameterMm = BuildUp.Post }),
            ],
        };
    }

    private static IEnumerable<double> Grid(double from, double to, double pitch)
    {
        var n = Math.Max(1, (int)Math.Ceiling((to - from) / pitch) - 1);
        return Enumerable.Range(1, n).Select(i => from + (to - from) * i / (n + 1));
    }
}
