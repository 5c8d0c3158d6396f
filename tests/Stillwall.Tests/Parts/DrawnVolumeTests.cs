using Stillwall.Appraisals;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;
using Stillwall.Tests.Appraisals;
using static Stillwall.Tests.Parts.DrawnCabinets;

namespace Stillwall.Tests.Parts;

/// <summary>
/// What the drawn parts leave open, against the appraisal's figures, which come from areas times lengths: two ways to the same volume.
/// Names are left out: they are cut 0.4 mm deep and no figure counts them.
/// </summary>
public sealed class DrawnVolumeTests
{
    private static readonly Lazy<IReadOnlyList<Drawn>> Whole = new(() =>
        [
            .. new[]
            {
                ("demo", DemoProject.Project),
                ("thin core", VariedProjects.With(DemoProject.Project, c => c with { CoreM = 0.006, StrutPitchM = 0.03, Braces = 2 })),
                (
                    "thick core, small corners",
                    VariedProjects.With(DemoProject.Project, c => c with { CoreM = 0.018, Outside = c.Outside! with { CornerRadiusM = 0.024 } })
                ),
                ("recessed", VariedProjects.With(DemoProject.Project, c => c with { OuterSkinM = 0.003, Openings = c.Openings! with { RecessM = 0.002 } })),
                (
                    "drying holes",
                    VariedProjects.With(DemoProject.Project, c => c with { StrutPitchM = 0.06, Openings = c.Openings! with { DryingHoleM = 0.01 } })
                ),
                (
                    "large",
                    VariedProjects.With(
                        DemoProject.Project,
                        c => c with { Outside = c.Outside! with { WidthM = 0.3, HeightM = 0.35 }, StrutPitchM = 0.05, Braces = 3 }
                    )
                ),
            }.Select(c => Unnamed(c.Item1, c.Item2)),
        ]
    );

    // The grid of 1 µm is what is left: where pieces at a corner stand askew, chords of the skins bend by fractions of it.
    [Fact]
    public void The_space_between_the_drawn_skins_is_the_cavity_of_the_appraisal_to_a_millionth() => Assert.All(Whole.Value, HasItsCavity(1e-6));

    [Fact]
    public void The_same_goes_for_cabinets_drawn_from_a_seed() =>
        Assert.All(Seeded(120, s => s is { Width: < 260, Height: < 300, Depth: < 400 }).Take(2), HasItsCavity(1e-6));

    // Many minutes of work: -explicit only -class "*DrawnVolumeTests". In cores of a few millimetres keys lean so that their sides cross between the
    // points of the grid.
    [Fact(Explicit = true)]
    public void And_for_every_one_of_two_hundred_whose_driver_fits_to_two_millionths() =>
        Assert.All(
            Seeded(200).AsParallel().AsOrdered().Select(c => (c.Name, Share: CavityM3(c) / c.Facts.Geometry!.CavityM3)).ToList(),
            c => Assert.InRange(c.Share, 1 - 2e-6, 1 + 2e-6)
        );

    [Fact]
    public void The_air_within_the_drawn_inner_skins_is_that_of_the_appraisal_to_a_millionth() =>
        Assert.All(
            Whole.Value,
            cabinet =>
            {
                var (g, s) = (cabinet.Facts.Geometry!, cabinet.Job.Sizes);
                var inside = Solid.Empty.Add(s.Outline.Inset(s.Wall).ToRegion(), s.Wall, s.Depth - s.Wall);
                var air = Within(cabinet, inside, "inner sleeve", "front inner plate", "rear inner plate", "brace");
                Assert.InRange(air.VolumeM3 / (g.InsideM3 - g.FittingsM3 - s.Braces * g.BraceM3), 1 - 1e-6, 1 + 1e-6);
            }
        );

    [Fact]
    public void The_recessed_plate_is_drawn_as_the_figures_have_it_to_a_millionth()
    {
        var cabinet = Whole.Value.Single(c => c.Name == "recessed");
        var (g, tongue) = (cabinet.Facts.Geometry!, cabinet.Facts.Geometry!.Front.TongueM2 * 5e-3);
        var drawn = cabinet.Parts.Single(p => p.Name == "front outer plate").Solid.VolumeM3;

        // The tongue counts to a part in a thousand: at the bosses it is cut, and the figure leaves that out.
        Assert.InRange(drawn - g.OuterPlateM3(g.Front), -0.1 * tongue, 1e-3 * tongue);
        Assert.InRange(g.RecessM3(g.Front) / drawn, 0.05, 0.5);
    }

    [Fact]
    public void Names_take_less_than_a_thousandth_of_the_plastic()
    {
        var (named, unnamed) = (Demo.Parts.Sum(p => p.Solid.VolumeM3), Whole.Value[0].Parts.Sum(p => p.Solid.VolumeM3));
        Assert.InRange(unnamed / named, 1.0001, 1.001);
    }

    private static Action<Drawn> HasItsCavity(double tolerance) =>
        cabinet => Assert.InRange(CavityM3(cabinet) / cabinet.Facts.Geometry!.CavityM3, 1 - tolerance, 1 + tolerance);

    private static double CavityM3(Drawn cabinet)
    {
        var (g, s) = (cabinet.Facts.Geometry!, cabinet.Job.Sizes);
        var (within, inner) = (s.Outline.Inset(s.OuterSkin).ToRegion(), s.Outline.Inset(s.OuterSkin + s.Core).ToRegion());
        var zones = new[]
        {
            (Space: within.Cut(Discs(g.Front.Layout.Openings)), From: s.OuterSkin, To: s.OuterSkin + s.Core),
            (Space: within.Cut(inner), From: s.OuterSkin + s.Core, To: s.Depth - s.OuterSkin - s.Core),
            (Space: within.Cut(Discs(g.Rear.Layout.Openings)), From: s.Depth - s.OuterSkin - s.Core, To: s.Depth - s.OuterSkin),
        };
        var parts = cabinet
            .Parts.Where(p => p.Name.Contains("sleeve", StringComparison.Ordinal) || p.Name.Contains("plate", StringComparison.Ordinal))
            .Select(p => InCabinet.Of(p)!)
            .ToList();
        var pilots = g.Front.PilotM2 * (Math.Min(10 + s.Sunk, s.OuterSkin + s.Core - 1) - s.OuterSkin) * 1e-3;

        // Between the end of the keys' closer stand and the next, the skin lacks its drying holes alone.
        var skin =
            g.DryingHoles.Count > 0 ? new[] { (Space: inner.Cut(s.Outline.Inset(s.Wall).ToRegion()), From: s.Wall + 80, To: s.Depth - s.Wall - 80) } : [];
        return zones.Concat(skin).Sum(z => (z.Space.AreaM2 * (z.To - z.From) * 1e-3) - parts.Sum(p => TakenM3(p, z.Space, z.From, z.To))) - pilots;
    }

    // A driver too large for its front collides with the sides, and then drawing and figures count what is in one another differently.
    private static IEnumerable<Drawn> Seeded(int most, Func<Stillwall.Cabinets.CabinetSizes, bool>? which = null) =>
        VariedProjects
            .Sound()
            .Take(most)
            .Select((p, i) => (Project: p, Name: $"cabinet {i}", Geometry: new Facts(p, DemoDrivers.All).Geometry))
            .Where(c =>
                c.Geometry is { Sizes.Core: > 0 } g
                && (which is null || which(g.Sizes))
                && g.Front.Layout.Standing.Concat(g.Rear.Layout.Standing).All(o => o.DistanceTo(g.Sizes.Outline.Inset(g.Sizes.Wall + 2)) >= 0)
            )
            .Select(c => Unnamed(c.Name, c.Project));

    // Layer by layer: together on one grid, parts above one another would bend each other's edges.
    private static double TakenM3(Solid part, Region space, double from, double to) =>
        part.Between(from, to).Layers.Sum(l => l.Region.Intersect(space).AreaM2 * (l.TopMm - l.BottomMm) * 1e-3);

    private static Region Discs(IEnumerable<Stillwall.Cabinets.Circle> circles) => Region.JoinAll(circles.Select(c => c.ToRegion()));

    private static Solid Within(Drawn cabinet, Solid space, params string[] names) =>
        cabinet
            .Parts.Where(p => names.Any(n => p.Name.StartsWith(n, StringComparison.Ordinal)))
            .Aggregate(space, (left, part) => left.Cut(InCabinet.Of(part)!));

    private static Drawn Unnamed(string name, Stillwall.Projects.Project project)
    {
        var drawn = Draw(name, project);
        var job = drawn.Job with { Named = false, Printer = null };
        return drawn with { Job = job, Parts = PartDrawings.Of(job) };
    }
}
