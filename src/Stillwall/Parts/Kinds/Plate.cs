using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A plate of the front or the rear, printed with its outer face down.</summary>
internal abstract class Plate : PartKind
{
    private protected Plate() { }

    /// <summary>Size of an outer plate with what stands on it; without a core of the whole wall with its tongues.</summary>
    private protected static PartSize OuterSize(CabinetSizes s) =>
        new(s.Width, s.Height, s.Core > 0 ? s.OuterSkin + s.Core : s.Wall + BuildUp.TongueHeight);

    /// <summary>Size of an inner plate with its tongues.</summary>
    private protected static PartSize InnerSize(CabinetSizes s)
    {
        var hidden = 2 * (s.OuterSkin + s.Core);
        return new PartSize(s.Width - hidden, s.Height - hidden, s.InnerSkin + BuildUp.TongueHeight);
    }

    /// <summary>Sealant along the middle of the outer skin's end.</summary>
    private protected static SealedJoint OuterSeal(PartJob job, string between) =>
        new(SealingTurn.OuterSkins, between, job.Sizes.Outline.Inset(job.Sizes.OuterSkin / 2).Length);

    /// <summary>Sealant along the middle of the inner skin's end.</summary>
    private protected static SealedJoint InnerSeal(PartJob job, string between) =>
        new(SealingTurn.InnerSkins, between, job.Sizes.Outline.Inset(job.Sizes.OuterSkin + job.Sizes.Core + job.Sizes.InnerSkin / 2).Length);

    /// <summary>Sealant round what is screwed into the openings.</summary>
    private protected static IEnumerable<SealedJoint> OpeningSeals(IEnumerable<Circle> openings, string what) =>
        openings.Where(o => o.DiameterMm > 0).Select(o => new SealedJoint(SealingTurn.Openings, what, Math.PI * o.DiameterMm));

    /// <summary>The tongue of an outer plate, all round inside the outer sleeve; empty in a thin core.</summary>
    internal static Region Tongue(CabinetSizes sizes)
    {
        var from = sizes.OuterSkin + sizes.JointClearance;
        return sizes.HasTongue ? Sleeve.Ring(sizes, from, from + BuildUp.TongueThickness) : Region.Empty;
    }

    private protected static Blank Outer(PartJob job, PlateLayout layout, Region tongue, Func<Region, Region> turn)
    {
        var s = job.Sizes;
        var (openings, cavity) = (Discs(layout.Openings), s.Outline.Inset(s.OuterSkin).ToRegion());
        var solid = Solid.Empty.Add(s.Outline.Inset(0).ToRegion(), 0, s.OuterSkin);
        if (s.Core <= 0)
        {
            solid = Tongued(solid.Add(cavity, s.OuterSkin, s.Wall), s, s.Wall, turn(openings)).Cut(turn(openings), 0, s.Wall);
            return Blank.NamedOnTop(solid, cavity.Cut(turn(openings)).Cut(turn(Discs(layout.Recesses))).Cut(InnerTongues(s)), s.Wall);
        }

        var standing = Region.JoinAll([Discs(layout.Standing).Intersect(cavity), Discs(layout.Posts)]);
        solid = solid
            .Add(turn(standing), s.OuterSkin, s.OuterSkin + s.Core)
            .Add(turn(tongue), s.OuterSkin, s.OuterSkin + BuildUp.TongueHeight)
            .Cut(turn(openings), 0, s.OuterSkin + s.Core)
            .Cut(turn(Discs(layout.OuterOnly)), 0, s.OuterSkin);
        // Under a flange the plate is thin enough without letters.
        var free = s.Outline.Inset(s.OuterSkin + s.Core).ToRegion().Cut(Region.JoinAll([standing, openings, Discs(layout.OuterOnly), Discs(layout.Recesses)]));
        return Blank.NamedOnTop(solid, turn(free), s.OuterSkin);
    }

    private protected static Blank Inner(PartJob job, PlateLayout layout, Func<Region, Region> turn)
    {
        var s = job.Sizes;
        var (plate, openings) = (s.Outline.Inset(s.OuterSkin + s.Core).ToRegion(), turn(Discs(layout.Openings)));
        var solid = Tongued(Solid.Empty.Add(plate, 0, s.InnerSkin), s, s.InnerSkin, openings).Cut(openings, 0, s.InnerSkin);
        return Blank.NamedOnTop(
            solid,
            plate.Cut(openings).Cut(Sleeve.Ring(s, s.OuterSkin + s.Core, s.Wall + s.JointClearance + BuildUp.TongueThickness)),
            s.InnerSkin
        );
    }

    private static Solid Tongued(Solid solid, CabinetSizes sizes, double from, Region openings) =>
        solid.Add(InnerTongues(sizes).Cut(openings), from, from + BuildUp.TongueHeight);

    private static Region InnerTongues(CabinetSizes sizes)
    {
        var from = sizes.Wall + sizes.JointClearance;
        var (x, z, half) = (sizes.Width / 2, sizes.Height / 2, BuildUp.InnerTongue / 2);
        var cross = Region.JoinAll([
            Region.RoundedRectangle(x - half, 0, x + half, sizes.Height, 0),
            Region.RoundedRectangle(0, z - half, sizes.Width, z + half, 0),
        ]);
        return Sleeve.Ring(sizes, from, from + BuildUp.TongueThickness).Intersect(cross);
    }

    internal static Region Discs(IEnumerable<Circle> circles) => Region.JoinAll(circles.Distinct().Select(c => c.ToRegion()));

    /// <summary>Where the edge of a plate lies within the cabinet's outline, mm.</summary>
    /// <remarks>Source: geometry.</remarks>
    private protected static double Edge(CabinetSizes s, bool outer) => outer || s.Core <= 0 ? 0 : s.OuterSkin + s.Core;

    private protected static PartFeatures Common(FeatureJob job, bool outer, PlateLayout layout, Func<Circle, Circle> turn)
    {
        var (s, units) = (job.Sizes, job.Units);
        var edge = Edge(s, outer);
        var thick = outer
            ? s.Core > 0
                ? s.OuterSkin
                : s.Wall
            : s.InnerSkin;
        List<Callout> notes = [job.Corner(edge)];
        if (outer && s.Core > 0 && layout.Posts.Count > 0)
        {
            var post = layout.Posts.Select(turn).OrderByDescending(p => p.XMm).ThenBy(p => p.ZMm).First();
            notes.Add(
                new(
                    post.XMm + post.DiameterMm / 2,
                    post.ZMm,
                    SheetUnits.Many(layout.Posts.Count, $"post {units.Diameter(BuildUp.Post)}, {units.Of(s.Core)} high")
                )
            );
        }

        if (outer && s.Core > 0 && s.HasTongue)
        {
            notes.Add(
                new(
                    s.Width - s.OuterSkin - s.JointClearance - BuildUp.TongueThickness / 2,
                    s.Height * 0.47,
                    $"tongue {units.Of(BuildUp.TongueThickness)}, {units.Of(s.JointClearance)} clear of the sleeve"
                )
            );
        }

        if (!outer || s.Core <= 0)
        {
            notes.Add(
                new(
                    s.Width - s.Wall - s.JointClearance - BuildUp.TongueThickness / 2,
                    s.Height * 0.47,
                    $"4 tongues {units.Of(BuildUp.InnerTongue)} × {units.Of(BuildUp.TongueThickness)},",
                    $"{units.Of(s.JointClearance)} clear of the sleeve"
                )
            );
        }

        return new PartFeatures
        {
            SectionUp =
            [
                new(0, thick, edge, edge),
                .. !outer || s.HasTongue || s.Core <= 0
                    ? [new Length(thick, thick + BuildUp.TongueHeight, edge, edge + s.JointClearance)]
                    : Array.Empty<Length>(),
            ],
            Notes = notes,
        };
    }
}
