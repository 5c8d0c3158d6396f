using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Projects;
using Stillwall.Shapes;
using Stillwall.Tests.Appraisals;
using static Stillwall.Tests.Parts.DrawnCabinets;

namespace Stillwall.Tests.Parts;

/// <summary>The recess for the driver's flange: worked out by hand from the demo's flange of 222 mm, cut-out of 186 mm and eight holes of 6.6 mm.</summary>
public sealed class RecessTests
{
    private static readonly Lazy<Drawn> Cabinet = new(() => Draw("recessed", Recessed(0.001)));

    private static Project Recessed(double? depthM, DriverSheet? sheet = null) =>
        VariedProjects.With(DemoProject.Project, c => c with { Openings = c.Openings! with { RecessM = depthM } }) with
        {
            Driver = new DriverChoice(null, sheet ?? Dunlin),
        };

    private static DriverSheet Dunlin => DemoDrivers.All.Single(d => d.Name == "Dunlin 8");

    private static double Disc(double diameterMm) => Math.PI / 4 * diameterMm * diameterMm * 1e-6;

    [Fact]
    public void The_front_plate_loses_the_ring_times_its_depth_and_the_holes_for_inserts_go_as_much_deeper()
    {
        var (plain, recessed) = (new Facts(Recessed(null), []).Geometry!, Cabinet.Value.Facts.Geometry!);
        var ring = (Disc(222.6) - Disc(186) - 8 * Disc(6.6)) * 0.001;
        var holes = 8 * Disc(6.6) * 0.001;
        Assert.Equal(ring, recessed.RecessM3(recessed.Front), 1e-6 * ring);
        Assert.Equal(ring + holes, plain.OuterPlateM3(plain.Front) - recessed.OuterPlateM3(recessed.Front), 1e-6 * ring);
        Assert.Equal(0, recessed.RecessM3(recessed.Rear));
        Assert.Equal((plain.CavityM3, plain.InsideM3, plain.InnerSleeveM3), (recessed.CavityM3, recessed.InsideM3, recessed.InnerSleeveM3));
    }

    [Fact]
    public void A_single_printed_wall_is_recessed_past_its_outer_skin()
    {
        // Skins of 3 mm and 3 mm are one wall of 6 mm; 4 mm of it go.
        var g = CabinetGeometry.Of(new CabinetSizes(300, 300, 300, 0, 3, 0, 3, 40, 0, 1, 186, 0, 0, 0, 0, 0, 4, 222));
        var ring = (Disc(222.6) - Disc(186)) * 0.004;
        Assert.Equal(ring, g.RecessM3(g.Front), 1e-6 * ring);
    }

    [Fact]
    public void Two_recesses_that_would_run_into_one_another_are_told()
    {
        var sizes = new CabinetSizes(460, 300, 300, 0, 2, 10, 2, 40, 0, 2, 186, 209, 8, 0, 0, 5, 1, 222);

        // A driver's share is 230 mm: 115 less 111 less 0.3 of play and 2 of rim; without a recess 4 mm.
        var worst = FrontFit.Of(sizes, Dunlin, 0.186).Single(f => f.What.Contains("recess", StringComparison.Ordinal));
        Assert.Equal(0.0017, worst.SpareM, 1e-9);
        Assert.Equal(
            0.004,
            FrontFit.Of(sizes with { Recess = 0, Flange = 0 }, Dunlin, 0.186).Single(f => f.What.Contains("flange", StringComparison.Ordinal)).SpareM,
            1e-9
        );
        var recesses = PlateLayout.Front(sizes).Recesses;
        Assert.Equal(230 - 222.6, recesses[0].DistanceTo(recesses[1]), 1e-9);
        var narrow = Finding("driver/fits-the-front", VariedProjects.With(Recessed(0.001), c => c with { Outside = c.Outside! with { WidthM = 0.226 } }));
        Assert.Equal((Verdict.Fails, "m"), (narrow.Verdict, narrow.Unit));
        Assert.Contains("recess", narrow.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void The_drawn_plate_is_that_of_the_figures_and_every_part_is_closed() =>
        Assert.All(
            Cabinet.Value.Parts.Zip(Cabinet.Value.Meshes),
            p =>
            {
                Assert.True(p.Second.Watertight, p.First.Name);
                if (p.First.Name == "front outer plate")
                {
                    Assert.Single(Connections.Pieces(p.First.Solid));
                    Assert.InRange(p.First.Solid.VolumeM3 / Cabinet.Value.Facts.Parts.Single(f => f.Name == p.First.Name).VolumeM3, 0.995, 1.005);
                }
            }
        );

    [Fact]
    public void The_face_of_the_drawn_front_is_open_where_the_flange_goes_and_whole_behind_it()
    {
        var front = InCabinet.Of(Cabinet.Value.Parts.Single(p => p.Name == "front outer plate"))!;
        var under = Region
            .Disc(122, 122, 222)
            .Cut(Region.Disc(122, 122, 187))
            .Cut(Region.JoinAll(Cabinet.Value.Facts.Geometry!.Front.Layout.Pilots.Select(p => p.Grown(0.1).ToRegion())));
        Assert.Equal(0, front.Between(0, 1).Layers.Sum(l => l.Region.Intersect(under).AreaM2));
        Assert.All(front.Between(1, 2).Layers, l => Assert.Equal(under.AreaM2, l.Region.Intersect(under).AreaM2, 1e-9));
    }

    [Fact]
    public void The_flange_goes_into_its_recess_and_a_wider_one_does_not()
    {
        Assert.Empty(InteriorCheck.Of(Cabinet.Value.Job, Cabinet.Value.Parts));
        var wider = Cabinet.Value.Job with { Geometry = Cabinet.Value.Facts.Geometry! with { Sizes = Cabinet.Value.Job.Sizes with { Flange = 224 } } };
        Assert.Contains(InteriorCheck.Of(wider, Cabinet.Value.Parts), c => (c.First, c.Second) == ("front outer plate", "driver"));
    }

    [Fact]
    public void The_trim_ring_lies_on_the_flange_that_stands_out_by_as_much_less()
    {
        // Printed face down, the ring's rear is its upper face.
        double RearMm(Drawn cabinet) =>
            cabinet.Parts.Single(p => p.Name == "trim ring").Place!.Apply(new MeshPoint(0, 0, (int)(BuildUp.TrimThickness * 1000))).Y / 1000.0;
        Assert.Equal(-Dunlin.FlangeThicknessM!.Value * 1e3, RearMm(Demo), 1e-9);
        Assert.Equal(1 - Dunlin.FlangeThicknessM!.Value * 1e3, RearMm(Cabinet.Value), 1e-9);
    }

    [Fact]
    public void The_driver_stands_deeper_by_the_recess_and_has_as_much_less_room_behind_it()
    {
        var (plain, recessed) = (
            Finding("driver/clear-of-braces-skins-and-rear", Recessed(null)),
            Finding("driver/clear-of-braces-skins-and-rear", Recessed(0.001))
        );
        Assert.Equal(plain.Limit!.Value - 0.001, recessed.Limit!.Value, 1e-12);
        Assert.Equal(plain.Value, recessed.Value);
    }

    [Fact]
    public void A_flange_that_is_not_stated_leaves_it_unknown_and_nothing_is_drawn()
    {
        var project = Recessed(0.001, Dunlin with { FlangeM = null });
        Assert.Equal(
            (Verdict.Unknown, "not stated yet: flange of the driver (driver.flange)"),
            (Finding("driver/fits-the-front", project).Verdict, Finding("driver/fits-the-front", project).Because)
        );
        var (plain, drawn) = (new Facts(Recessed(null), []).Geometry!, new Facts(project, []).Geometry!);
        Assert.Equal(plain.OuterPlateM3(plain.Front), drawn.OuterPlateM3(drawn.Front));
        Assert.Empty(drawn.Front.Layout.Recesses);
    }

    [Fact]
    public void Its_floor_is_a_ledge_over_air_twice_as_long_as_a_bridge_and_without_it_the_finding_holds()
    {
        var bridges = Appraisal.Of(Recessed(0.001), []).Findings.Single(f => f.Id == "parts/bridges-and-overhangs");
        Assert.Equal((Verdict.Fails, "m"), (bridges.Verdict, bridges.Unit));
        Assert.Equal(0.2226 - 0.186, bridges.Value!.Value, 1e-9);
        Assert.Contains("recess", bridges.Because, StringComparison.Ordinal);
        Assert.Contains("support", bridges.Remedy, StringComparison.Ordinal);
        var change = Assert.Single(bridges.Change);
        Assert.Equal("cabinet.openings.recess", change.Key);
        Assert.NotEqual(Verdict.Fails, Finding("parts/bridges-and-overhangs", Recessed(0)).Verdict);
    }

    // At least 1 mm and two layers stay under the flange: of an outer skin of 2 mm, of a single wall of 4 mm and 2 mm; with layers of 0.6 mm 1.2 mm.
    [Theory]
    [InlineData(0.002, 0.012, 0.0003, 0.001, true)]
    [InlineData(0.002, 0.012, 0.0003, 0.0011, false)]
    [InlineData(0.002, 0.012, 0.0006, 0.0008, true)]
    [InlineData(0.002, 0.012, 0.0006, 0.0009, false)]
    [InlineData(0.004, 0, 0.0003, 0.005, true)]
    [InlineData(0.004, 0, 0.0003, 0.0051, false)]
    [InlineData(0.001, 0.012, 0.0003, 0.0001, false)]
    public void A_recess_leaves_a_millimetre_and_two_layers_under_the_flange(double skinM, double coreM, double layerM, double recessM, bool fits)
    {
        var project = VariedProjects.With(Recessed(recessM), c => c with { OuterSkinM = skinM, CoreM = coreM });
        project = project with { Brief = project.Brief with { Printer = project.Brief.Printer! with { LayerM = layerM } } };
        Assert.Equal(fits ? [] : ["cabinet.openings.recess"], ProjectChecks.Of(project).Select(f => f.Path));
    }

    private static Finding Finding(string id, Project project) => Appraisal.WithoutRemedies(project, []).Findings.Single(f => f.Id == id);
}
