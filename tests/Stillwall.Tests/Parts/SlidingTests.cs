using Stillwall.Parts.Drawing;
using Stillwall.Shapes;
using static Stillwall.Tests.Parts.DrawnCabinets;

namespace Stillwall.Tests.Parts;

/// <summary>Whether the sleeves go into one another: every section of the one passes every section of the other that lies on its way.</summary>
public sealed class SlidingTests
{
    // Heads of struts have 0.3 mm in their slots on every side; the grid and the bends on it take up to 2 µm. Where a thin core has no slots, keys
    // pass one another at a corner more closely.
    private static double Clearance(Drawn cabinet) => cabinet.Job.Sizes.Tied ? 0.29 : 0.1;

    [Fact]
    public void The_inner_sleeve_slides_into_the_outer_from_the_rear_with_clearance_all_the_way() =>
        Assert.All(
            All.Where(c => c.Job.Sizes.Core > 0),
            cabinet =>
            {
                var (outer, inner) = (Placed(cabinet, "outer sleeve"), Placed(cabinet, "inner sleeve"));

                // Coming from the rear, a section of the inner sleeve passes all of the outer sleeve that lies behind its own place.
                var behind = Region.Empty;
                var (left, at) = (outer.OrderByDescending(l => l.TopMm).ToList(), 0);
                foreach (var section in inner.OrderByDescending(l => l.TopMm))
                {
                    for (; at < left.Count && left[at].TopMm > section.BottomMm; at++)
                    {
                        behind = behind.Join(left[at].Region);
                    }

                    Assert.True(
                        section.Region.Offset(Clearance(cabinet)).Intersect(behind).AreaM2 < 1e-12,
                        $"{cabinet}: the section {section.BottomMm} to {section.TopMm} mm from the front does not pass"
                    );
                }
            }
        );

    [Fact]
    public void Sleeves_that_are_turned_against_one_another_by_a_strut_do_not_go_together()
    {
        var (outer, inner) = (Placed(Demo, "outer sleeve"), Placed(Demo, "inner sleeve"));
        var shifted = inner[0].Region.Moved(Demo.Facts.Geometry!.Sleeve.StrutPitch / 2, 0);
        Assert.Contains(outer, l => l.Region.Intersect(shifted).AreaM2 > 1e-6);
    }

    private static List<SolidLayer> Placed(Drawn cabinet, string name) =>
        [.. cabinet.Parts.Where(p => p.Name.StartsWith(name, StringComparison.Ordinal)).SelectMany(p => InCabinet.Of(p)!.Layers)];
}
