using Stillwall.Parts;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;
using Stillwall.Tests.Appraisals;
using Stillwall.Tests.Shapes;
using static Stillwall.Tests.Parts.DrawnCabinets;

namespace Stillwall.Tests.Parts;

public sealed class PartDrawingTests
{
    [Fact]
    public void Every_part_is_closed_in_one_piece_and_stands_on_the_bed() =>
        Assert.All(
            All,
            cabinet =>
                Assert.All(
                    cabinet.Parts.Zip(cabinet.Meshes),
                    part =>
                    {
                        var (drawn, mesh) = part;
                        Assert.True(mesh.Watertight, drawn.Name);
                        Assert.Equal(0, drawn.Solid.Heights!.Value.Bottom);
                        Assert.True(
                            Connections.Pieces(drawn.Solid).Count == 1,
                            $"{cabinet}: {drawn.Name} comes in {Connections.Pieces(drawn.Solid).Count} pieces"
                        );
                    }
                )
        );

    [Fact]
    public void The_surface_of_every_part_encloses_areas_times_thickness() =>
        Assert.All(
            All,
            cabinet =>
                Assert.All(
                    cabinet.Parts.Zip(cabinet.Meshes),
                    part =>
                    {
                        var (drawn, mesh) = part;
                        Assert.InRange(mesh.Mesh.VolumeM3 / drawn.Solid.VolumeM3, 1 - 1e-6, 1 + 1e-6);
                    }
                )
        );

    [Fact]
    public void Every_part_has_the_number_of_ways_through_it_that_it_should()
    {
        // Rear outer plate: terminal, pour opening, a vent for each of the bays, six openings for drying; each a way through (the genus of
        // Euler 1758).
        var bays = Demo.Facts.Geometry!.Sleeve.Struts.Count;
        Assert.Equal(1 + 1 + bays + Demo.Facts.Geometry.Rear.Layout.DryOuts.Count, Genus("rear outer plate"));
        Assert.Equal(1, Genus("front outer plate"));
        Assert.Equal(1, Genus("front inner plate"));
        Assert.Equal(1, Genus("rear inner plate"));
        Assert.Equal(1, Genus("brace"));
        Assert.Equal(0, Genus("test-bar mould"));
        Assert.Equal(5, Genus("calibration strip"));
        Assert.Equal(0, Genus("accent ring 1 of 3"));
    }

    [Fact]
    public void Figures_are_those_of_the_drawn_parts() =>
        Assert.All(
            All,
            cabinet =>
            {
                Assert.Equal(cabinet.Facts.Parts.Select(p => p.Name), cabinet.Parts.Select(p => p.Name));
                var drawn = cabinet.Parts.GroupBy(p => WholeName(p.Name)).ToDictionary(g => g.Key, g => g.Sum(p => p.Solid.VolumeM3));
                Assert.All(cabinet.Facts.Parts.GroupBy(p => WholeName(p.Name)), g => Assert.InRange(drawn[g.Key] / g.Sum(p => p.VolumeM3), 0.995, 1.005));
                Assert.InRange(drawn.Values.Sum() / cabinet.Facts.Parts.Sum(p => p.VolumeM3), 0.999, 1.001);

                // A piece of a split part counts with a tooth at either side of the cut; some have one less.
                Assert.All(
                    cabinet.Facts.Parts.Zip(cabinet.Meshes),
                    pair =>
                        Assert.All(
                            pair.First.SizeM.Zip(pair.Second.Mesh.SizeM),
                            s =>
                                Assert.InRange(
                                    s.Second,
                                    s.First
                                        - (
                                            WholeName(pair.First.Name).Contains("sleeve", StringComparison.Ordinal) || cabinet.Name == "wide" ? 16.1e-3 : 0.1e-3
                                        ),
                                    s.First + 0.1e-3
                                )
                        )
                );
            }
        );

    [Fact]
    public void Every_piece_fits_the_printer_with_its_margin() =>
        Assert.All(
            All,
            cabinet =>
                Assert.All(
                    cabinet.Parts,
                    part => Assert.True(MeshedPart.Of(part, cabinet.Project.Brief.Printer).Figures(cabinet.Project.Brief.Printer, null, "stl").Fits, part.Name)
                )
        );

    [Fact]
    public void A_part_larger_than_the_bed_is_split_and_its_pieces_make_the_whole_but_for_the_gaps_at_the_teeth()
    {
        var wide = All[1];
        var whole = PartDrawings.Of(wide.Job with { Printer = null });
        Assert.True(wide.Parts.Count > whole.Count + 6);
        Assert.All(
            whole,
            part =>
            {
                var pieces = wide
                    .Parts.Where(p => p.Name == part.Name || p.Name.StartsWith(part.Name + " ", StringComparison.Ordinal))
                    .Sum(p => p.Solid.VolumeM3);

                // A ring that is split is closed; one that is not has a gap of four clearances, 0.3 mm + 0.1 % of 300 mm each, across 1 mm × 3.4 mm.
                var gap = part.Name.StartsWith("accent ring", StringComparison.Ordinal) ? 4 * 0.6e-3 * 1e-3 * 3.4e-3 : 0;
                Assert.InRange(pieces / (part.Solid.VolumeM3 + gap), 0.996, 1.0005);
            }
        );
    }

    [Fact]
    public void The_cavity_is_one_space_that_the_mix_reaches_from_the_pour_opening_bay_by_bay()
    {
        var g = Demo.Facts.Geometry!;
        var s = g.Sizes;
        var space = Solid
            .Empty.Add(s.Outline.Inset(s.OuterSkin).ToRegion(), s.OuterSkin, s.Depth - s.OuterSkin)
            .Cut(s.Outline.Inset(s.OuterSkin + s.Core).ToRegion(), s.OuterSkin + s.Core, s.Depth - s.OuterSkin - s.Core);
        foreach (
            var part in Demo.Parts.Where(p => p.Name.Contains("sleeve", StringComparison.Ordinal) || p.Name.Contains("outer plate", StringComparison.Ordinal))
        )
        {
            space = space.Cut(InCabinet.Of(part)!);
        }

        var pour = g.Rear.Layout.PourOpenings[0];
        var terminal = g.Rear.Layout.Openings[0];
        space = space.Cut(g.Front.Layout.Openings[0].ToRegion(), 0, s.Wall).Cut(terminal.ToRegion(), s.Depth - s.Wall, s.Depth);

        // Holes for inserts open to the front, not into the cavity.
        space = space.Cut(Region.JoinAll(g.Front.Layout.Pilots.Select(p => p.Grown(0.1).ToRegion())), 0, 10.1);
        var reached = Reach.From(space, pour.XMm, pour.ZMm, s.Depth - s.OuterSkin - 1);
        Assert.NotNull(reached);

        // The tool's figure comes from areas times lengths; the flood counts the drawn parts. Flanks of teeth and engraved names are the difference.
        Assert.InRange(reached.VolumeM3 / g.CavityM3, 0.998, 1.002);
        Assert.InRange(reached.VolumeM3 / space.VolumeM3, 0.9999, 1);
        var (path, pitch) = (s.Outline.Inset(s.OuterSkin + s.Core / 2), g.Sleeve.StrutPitch);
        Assert.All(
            Enumerable.Range(0, g.Sleeve.Struts.Count).Select(i => path.At((i + 0.75) * pitch)),
            at => Assert.True(reached.Contains(at.X, at.Y, s.Depth / 2), $"the bay at {at.X} mm, {at.Y} mm is not reached")
        );
    }

    [Fact]
    public void Keys_and_struts_hold_the_cast_without_adhesion()
    {
        // Pulled away from its skin by half a millimetre, a key would have to go through cast: its head is wider than its foot.
        var (g, s) = (Demo.Facts.Geometry!, Demo.Job.Sizes);
        var ring = s.Outline.Inset(s.OuterSkin).ToRegion().Cut(s.Outline.Inset(s.OuterSkin + s.Core).ToRegion());
        foreach (var (keys, away) in new[] { (g.Sleeve.OuterKeys, 0.5), (g.Sleeve.InnerKeys, -0.5) })
        {
            // One on the lower side, where away from the outer skin is up.
            var key = keys.First(k => k.Extent is { Top: < 16.1, Left: > 60, Right: < 184 });
            Assert.True(key.Moved(0, away).Cut(key).Intersect(ring).AreaM2 > 2 * 0.5 * 1e-6, "the key slips out");
        }

        // A head that would have to pass between the caps of its slot.
        var (head, caps) = (g.Sleeve.Struts.First(h => h.Extent is { Top: < 16.1, Left: > 60, Right: < 184 }), Region.JoinAll(g.Sleeve.Lips));
        Assert.True(head.Moved(0, -1).Intersect(caps).AreaM2 > 1e-6, "the strut slips out of its slot");
    }

    [Fact]
    public void Holes_for_inserts_go_as_deep_as_they_should_from_the_front_and_no_deeper()
    {
        var plate = Demo.Parts.Single(p => p.Name == "front outer plate");
        var placed = InCabinet.Of(plate)!;
        var bolt = Demo.Facts.Geometry!.Front.Layout.Pilots[0];
        bool IsSolidAt(double depth) => placed.Layers.Any(l => l.BottomMm < depth && depth < l.TopMm && l.Region.Contains(bolt.XMm, bolt.ZMm));
        Assert.Equal(104.5, Math.Sqrt(Math.Pow(bolt.XMm - 122, 2) + Math.Pow(bolt.ZMm - 122, 2)), 1e-9);
        Assert.False(IsSolidAt(1));
        Assert.False(IsSolidAt(9.9));
        Assert.True(IsSolidAt(10.1));
        Assert.True(IsSolidAt(13.9));
    }

    [Fact]
    public void Accent_rings_stand_apart_by_the_chosen_ratio()
    {
        // Each groove is 0.3 mm wider than its ring on either side.
        var rings = Demo
            .Parts.Where(p => p.Name.StartsWith("accent ring", StringComparison.Ordinal))
            .Select(p => InCabinet.Of(p)!.Heights!.Value)
            .Select(h => (Bottom: h.Bottom - 0.3, Top: h.Top + 0.3))
            .ToList();
        var gaps = new[] { rings[0].Bottom - 2, rings[1].Bottom - rings[0].Top, rings[2].Bottom - rings[1].Top, 328 - rings[2].Top };
        Assert.All(gaps.Zip(gaps.Skip(1)), pair => Assert.Equal(1.4, pair.Second / pair.First, 1e-3));
    }

    [Fact]
    public void Names_are_cut_two_fifths_of_a_millimetre_deep()
    {
        var plate = Demo.Parts.Single(p => p.Name == "rear inner plate").Solid;
        Region At(double z) => plate.Layers.Single(l => l.BottomMm < z && z < l.TopMm).Region;
        Assert.True(At(1.5).AreaM2 > At(1.7).AreaM2 + 20e-6);
        Assert.Equal(At(0.5).AreaM2, At(1.5).AreaM2);
    }

    [Fact]
    public void Nothing_collides_in_any_of_the_cabinets() => Assert.All(All, cabinet => Assert.Empty(InteriorCheck.Of(cabinet.Job, cabinet.Parts)));

    [Fact]
    public void A_driver_deeper_than_the_brace_allows_collides_with_it_and_one_with_a_thin_magnet_leaves_room_for_the_wire()
    {
        var deep = Demo.Job with { Sheet = Demo.Job.Sheet! with { DepthM = 0.19, MagnetDiameterM = 0.18 } };
        var hit = Assert.Single(InteriorCheck.Of(deep, Demo.Parts), c => c.First == "brace" || c.Second == "brace");
        Assert.Contains("driver", new[] { hit.First, hit.Second });
        Assert.InRange(hit.DepthM, 0.150, 0.165);
        Assert.Empty(InteriorCheck.Of(Demo.Job with { Sheet = Demo.Job.Sheet! with { DepthM = 0.19, MagnetDiameterM = 0.1 } }, Demo.Parts));

        // A square window leaves its corners free beside a magnet that fills it, a round one nothing.
        var filling = Demo.Job.Sheet! with
        {
            DepthM = 0.19,
            MagnetDiameterM = 0.155,
        };
        Assert.Empty(InteriorCheck.Of(Demo.Job with { Sheet = filling }, Demo.Parts));
        var round = Draw("round", VariedProjects.With(Demo.Project, c => c with { Outside = c.Outside! with { CornerRadiusM = 0.122 } }));
        Assert.Contains(InteriorCheck.Of(round.Job with { Sheet = filling }, round.Parts), c => c.First == "wire");
    }

    [Fact]
    public void A_bead_of_sealant_runs_once_round_each_joint()
    {
        // 244 mm square with corners of 30 mm, half a skin of 2 mm in: 4 × 242 − (8 − 2π) × 29 mm.
        var bead = SealantBead.Of(Demo.Job)[0];
        Assert.Equal(0.9182, bead.LengthM, 1e-4);
        Assert.Equal(0.3e-3 + 0.244e-3, bead.ClearanceM, 1e-9);
        Assert.Equal(0.9182 * (0.544e-3 * 5e-3 + 16e-6 / 2), bead.VolumeM3, 1e-8);
    }

    private static int Genus(string name) => MeshReport.Of(Demo.Meshes[Demo.Parts.ToList().FindIndex(p => p.Name == name)].Mesh).Shells.Sum(s => s.GenusCount);
}
