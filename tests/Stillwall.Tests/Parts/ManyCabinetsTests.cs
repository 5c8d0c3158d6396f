using Stillwall.Appraisals;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;
using Stillwall.Tests.Appraisals;
using Stillwall.Tests.Shapes;

namespace Stillwall.Tests.Parts;

/// <summary>Cabinets drawn from a seed, every part of them drawn and covered with triangles.</summary>
public sealed class ManyCabinetsTests
{
    private const int Few = 8,
        Many = 200;

    [Fact]
    public void Every_part_of_some_cabinets_is_closed_also_when_corners_at_the_same_place_are_one() =>
        Examine(Cabinets().Where(f => f.Geometry!.Sizes is { Width: < 260, Height: < 260 }).Take(Few));

    [Fact]
    public void Every_part_of_some_cabinets_with_drying_holes_or_a_recess_is_closed_too() =>
        Examine(
            Cabinets()
                .Where(f => f.Geometry!.DryingHoles.Count > 0 || f.Geometry.Front.Layout.Recesses.Count > 0)
                .Where(f => f.Geometry!.Sizes is { Width: < 300, Height: < 300 })
                .Take(Few / 2)
        );

    // Many minutes of work: -explicit only -class "*ManyCabinetsTests".
    [Fact(Explicit = true)]
    public void Every_part_of_two_hundred_cabinets_is_closed_also_when_corners_at_the_same_place_are_one() => Examine(Cabinets().Take(Many));

    [Fact]
    public void Some_of_them_ask_for_a_recess_and_some_for_drying_holes()
    {
        var openings = VariedProjects.Sound().Take(Many).Select(p => p.Cabinet!.Openings!).ToList();
        Assert.InRange(openings.Count(o => o.RecessM > 0), Many / 20, Many / 2);
        Assert.InRange(openings.Count(o => o.DryingHoleM > 0), Many / 10, Many / 2);
    }

    private static IEnumerable<Facts> Cabinets() => VariedProjects.Sound().Select(p => new Facts(p, DemoDrivers.All)).Where(f => f.Geometry is not null);

    private static void Examine(IEnumerable<Facts> cabinets)
    {
        var troubles = cabinets
            .Select((facts, i) => (facts.Project, i))
            .AsParallel()
            .AsOrdered()
            .SelectMany(c =>
                DrawnCabinets
                    .Draw($"cabinet {c.i}", c.Project)
                    .Parts.SelectMany(part => Troubles(part).Select(trouble => $"cabinet {c.i}, {part.Name}: {trouble}"))
            )
            .ToList();
        Assert.True(troubles.Count == 0, string.Join(Environment.NewLine, troubles.Take(40)));
    }

    private static IEnumerable<string> Troubles(DrawnPart part)
    {
        var solid = SolidMesh.Of(part.Solid);
        var welded = WeldedMesh.UnmatchedEdges(solid.Mesh);
        if (!solid.Watertight || welded > 0)
        {
            yield return $"open: {welded} edges when welded";
        }

        if (solid.PatchCount > 0)
        {
            yield return $"patched in {solid.PatchCount} places";
        }

        if (Math.Abs(solid.Mesh.VolumeM3 / part.Solid.VolumeM3 - 1) > 1e-6)
        {
            yield return $"the surface encloses {solid.Mesh.VolumeM3 / part.Solid.VolumeM3} of the slabs";
        }

        if (part.Solid.FootMm is not 0)
        {
            yield return $"begins {part.Solid.FootMm} mm over the bed";
        }
    }
}
