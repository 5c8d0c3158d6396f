using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>The front or the rear: two plates, and what stands in the core between them.</summary>
/// <param name="OuterPlateM2">Area of the outer plate, its openings cut out, m².</param>
/// <param name="InnerPlateM2">Area of the inner plate, its openings cut out, m².</param>
/// <param name="CoreM2">What the cast fills between outer sleeve and openings, m².</param>
/// <param name="OpeningM2">Area of the opening that goes through the whole wall, m².</param>
/// <param name="CollarM2">Area of the collars and bosses that stand on the outer plate, m².</param>
/// <param name="TongueM2">Area of the tongue that stands on the outer plate inside the sleeve, m².</param>
internal sealed record PlateSection(
    double OuterPlateM2,
    double InnerPlateM2,
    double CoreM2,
    double OpeningM2,
    double CollarM2,
    double TongueM2,
    PlateLayout Layout
)
{
    // A drawn disc strays less than this from its circle, mm.
    private const double Stray = 0.1;

    /// <summary>Area of the posts that stand on the outer plate, m².</summary>
    public double PostM2 => Layout.Posts.Sum(p => p.AreaM2);

    public int Posts => Layout.Posts.Count;

    /// <summary>Area of the holes for inserts, m².</summary>
    public double PilotM2 => Layout.Pilots.Sum(p => p.AreaM2);

    /// <summary>Area of the recesses for the flanges in the face, openings and holes for inserts left out, m².</summary>
    public double RecessM2 { get; private init; }

    /// <summary>The same within the inner plate's outline, where a single printed wall may be recessed past its outer skin, m².</summary>
    public double DeepRecessM2 { get; private init; }

    /// <summary>Number of openings and bosses that had to be drawn together, because they touch one another or the plate's edge.</summary>
    internal int JoinedCount { get; init; }

    /// <summary>Draws the front.</summary>
    /// <returns>The section; openings that reach past the front are clipped by it.</returns>
    /// <remarks>Source: <see cref="PlateLayout.Front"/>. Accuracy: areas are exact to the 1 µm grid, the tongue's to a part in a thousand.</remarks>
    public static PlateSection Front(CabinetSizes sizes) => Of(sizes, PlateLayout.Front(sizes), SleeveSection.StrutPlaces(sizes).Places.Count);

    /// <summary>Draws the rear.</summary>
    /// <remarks>Source: <see cref="PlateLayout.Rear"/>. Accuracy: areas are exact to the 1 µm grid.</remarks>
    public static PlateSection Rear(CabinetSizes sizes) => Of(sizes, PlateLayout.Rear(sizes), 0);

    private static PlateSection Of(CabinetSizes sizes, PlateLayout layout, int notches)
    {
        var (outer, cavity, inner) = (sizes.Outline.Inset(0), sizes.Outline.Inset(sizes.OuterSkin), sizes.Outline.Inset(sizes.OuterSkin + sizes.Core));
        var joined = 0;
        double Common(RoundedFrame plate, IEnumerable<Circle> circles)
        {
            var (areaM2, touching) = CommonAreaM2(plate, [.. circles]);
            joined += touching;
            return areaM2;
        }

        // What the recesses take besides what is open already.
        double Recessed(RoundedFrame plate) =>
            layout.Recesses.Count == 0
                ? 0
                : Common(plate, [.. layout.Openings, .. layout.Pilots, .. layout.Recesses]) - Common(plate, [.. layout.Openings, .. layout.Pilots]);

        var throughInner = Common(inner, layout.Openings);
        var blocked = sizes.Core > 0 ? Common(cavity, layout.Standing) : 0;
        var section = new PlateSection(
            OuterPlateM2: outer.ToRegion().AreaM2 - Common(outer, layout.Openings) - Common(outer, layout.OuterOnly.Concat(layout.Pilots)),
            InnerPlateM2: inner.ToRegion().AreaM2 - throughInner,
            CoreM2: 0,
            OpeningM2: throughInner,
            CollarM2: sizes.Core > 0 ? Math.Max(0, blocked - Common(cavity, layout.Openings)) : 0,
            TongueM2: TongueAreaM2(sizes, notches),
            Layout: layout
        );
        return section with
        {
            CoreM2 = sizes.Core > 0 ? cavity.ToRegion().AreaM2 - blocked - section.PostM2 : 0,
            RecessM2 = Recessed(outer),
            DeepRecessM2 = Recessed(inner),
            JoinedCount = joined,
        };
    }

    private static double TongueAreaM2(CabinetSizes sizes, int notches)
    {
        var from = sizes.OuterSkin + sizes.JointClearance;
        return sizes.HasTongue
            ? sizes.Outline.Inset(from).ToRegion().AreaM2
                - sizes.Outline.Inset(from + BuildUp.TongueThickness).ToRegion().AreaM2
                - (notches * (sizes.Web + 2 * BuildUp.TongueGap) * BuildUp.TongueThickness).InSquareMetres()
            : 0;
    }

    // A disc that lies apart from the others and within the plate counts by itself; only those that touch one another or the plate's edge are drawn together.
    private static (double AreaM2, int Touching) CommonAreaM2(RoundedFrame plate, IReadOnlyList<Circle> circles)
    {
        var all = circles.Where(c => c.DiameterMm > 0 && !circles.Any(other => IsHidden(c, other))).Distinct().ToList();
        var single = all.Where(c => c.DistanceTo(plate) > Stray && all.All(other => other == c || c.DistanceTo(other) > Stray)).ToHashSet();
        var touching = all.Where(c => !single.Contains(c)).Select(c => c.ToRegion()).ToArray();

        // Rounding to the grid must not make the common part larger than the plate.
        var whole = plate.ToRegion();
        var common = single.Sum(c => c.AreaM2) + (touching.Length == 0 ? 0 : whole.Combine(touching, (within, disc) => within && disc).AreaM2);
        return (Math.Min(whole.AreaM2, common), touching.Length);
    }

    private static bool IsHidden(Circle one, Circle behind) => one.DistanceTo(behind) < -one.DiameterMm - Stray;
}
