using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A flat disc, as feet and lids are.</summary>
internal static class FlatDisc
{
    internal static PartDraft Of(double diameter, double thickness) =>
        new((Math.PI / 4 * diameter * diameter * thickness).InCubicMetres(), new PartSize(diameter, diameter, thickness), () => Draw(diameter, thickness));

    internal static PartFeatures Features(FeatureJob job, double diameter) =>
        new()
        {
            Notes = [FeatureJob.Round(new Circle(0, 0, diameter), job.Units.Diameter(diameter))],
            Centres = [new Circle(0, 0, diameter)],
            IsRound = true,
        };

    private static Blank Draw(double diameter, double thickness)
    {
        var disc = Region.Disc(0, 0, diameter);
        return Blank.NamedOnTop(Solid.Empty.Add(disc, 0, thickness), disc, thickness);
    }
}
