using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>The front or the rear: two plates, and what stands in the core between them.</summary>
/// <param name="OuterPlateM2">Area of the outer plate, its openings cut out, m².</param>
/// <param name="InnerPlateM2">Area of the inner plate, its openings cut out, m².</param>
/// <param name="CoreM2">What the cast fills between outer sleeve and openings, m².</param>
/// <param name="OpeningM2">Area of the opening that goes through the whole wall, m².</param>
/// <param name="CollarM2">Area of the collars and bosses that stand on the outer plate, m².</param>
/// <param name="TongueM2">Area of the tongue that stands on the outer plate inside the sleeve, m².</param>
/// <param name="Layout">Where things are.</param>
public sealed record PlateSection(double OuterPlateM2, double InnerPlateM2, double CoreM2, double OpeningM2, double CollarM2, double TongueM2, PlateLayout Layout)
{
    // Discs nearer than this to one another or to an edge are drawn together, mm.
    private const double Apart = 0.1;

    /// <summary>Area of the posts that stand on the outer plate, m².</summary>
    public double PostM2 => Layout.Posts.Sum(p => p.AreaM2);

    /// <summary>Number of posts.</summary>
    public int Posts => Layout.Posts.Count;

    /// <summary>Area of the holes for inserts, m².</summary>
    public double PilotM2 => Layout.Pilots.Sum(p => p.AreaM2);

    /// <summary>Draws the front.</summary>
    /// <param name="sizes">Sizes of the cabinet.</param>
    /// <returns>The section; openings that reach past the front are clipped by it.</returns>
    /// <remarks>Source: <see cref="PlateLayout.Front"/>. Accuracy: areas are exact to the 1 µm grid, the tongue's to a part in a thousand.</remarks>
    public static PlateSection Front(CabinetSizes sizes) => Of(sizes, PlateLayout.Front(sizes), SleeveSection.StrutPlaces(sizes).Places.Count);

    /// <summary>Draws the rear.</summary>
    /// <param name="sizes">Sizes of the cabinet.</param>
    /// <returns>The section.</returns>
    /// <remarks>Source: <see cref="PlateLayout.Rear"/>. Accuracy: areas are exact to the 1 µm grid.</remarks>
    public static PlateSection Rear(CabinetSizes sizes) => Of(sizes, PlateLayout.Rear(sizes), 0);

    private static PlateSection Of(CabinetSizes sizes, PlateLayout layout, int notches)
    {
        var (outer, cavity, inner) = (sizes.Outline.Inset(0), sizes.Outline.Inset(sizes.OuterSkin), sizes.Outline.Inset(sizes.OuterSkin + sizes.Core));
        var standing = layout.Standing.ToList();
        var blocked = CommonAreaM2(cavity, standing);
        var (tongueFrom, tongueTo) = (sizes.Outline.Inset(sizes.OuterSkin + sizes.JointClearance), sizes.Outline.Inset(sizes.OuterSkin + sizes.JointClearance + BuildUp.TongueThickness));
        var section = new PlateSection(
            outer.ToRegion().AreaM2 - CommonAreaM2(outer, layout.Openings) - CommonAreaM2(outer, [.. layout.OuterOnly, .. layout.Pilots]),
            inner.ToRegion().AreaM2 - CommonAreaM2(inner, layout.Openings),
            0, CommonAreaM2(inner, layout.Openings), sizes.Core > 0 ? blocked - CommonAreaM2(cavity, layout.Openings) : 0,
            sizes.HasTongue ? tongueFrom.ToRegion().AreaM2 - tongueTo.ToRegion().AreaM2 - notches * (sizes.Web + 2 * BuildUp.TongueGap) * BuildUp.TongueThickness * 1e-6 : 0, layout);
        return section with { CoreM2 = sizes.Core > 0 ? cavity.ToRegion().AreaM2 - blocked - section.PostM2 : 0 };
    }

    // Discs that lie apart and within the plate add up; only where they touch one another or its edge are they drawn together.
    private static double CommonAreaM2(RoundedFrame plate, IReadOnlyList<Circle> circles)
    {
        var all = circles.Where(c => c.DiameterMm > 0).ToList();
        var apart = all.All(c => c.DistanceTo(plate) > Apart) && all.Index().All(a => all.Skip(a.Index + 1).All(b => a.Item.DistanceTo(b) > Apart));
        return apart ? all.Sum(d => d.AreaM2) : plate.ToRegion().Intersect(Joined([.. all.Distinct().Select(c => c.ToRegion())])).AreaM2;
    }

    // By halves: the many circles of several drivers joined one after another would make each join as long as all before it.
    private static Region Joined(ReadOnlySpan<Region> regions)
    {
        var half = regions.Length / 2;
        return regions.Length == 1 ? regions[0] : Joined(regions[..half]).Join(Joined(regions[half..]));
    }
}
