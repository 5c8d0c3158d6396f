using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A lid for an opening for drying.</summary>
internal sealed class Lid : PartKind
{
    /// <inheritdoc/>
    public override string Name => "lid";

    internal override int Turn => 70;

    internal override Exploding Exploding => new(110);

    internal override IEnumerable<PartDraft> Of(PartJob job) =>
        job.Sizes.Core <= 0
            ? []
            : job.Geometry.Rear.Layout.DryOuts.Select(opening =>
                FlatDisc.Of(Diameter(opening), job.Sizes.OuterSkin) with
                {
                    Place = Placement.AsPrinted.TurnedAboutX(1).Shifted(opening.XMm, job.Sizes.Depth, opening.ZMm),
                    CentreMm = job.Sizes.Depth - job.Sizes.OuterSkin / 2,
                }
            );

    internal override PartFeatures Features(FeatureJob job) => FlatDisc.Features(job, Diameter(job.Job.Geometry.Rear.Layout.DryOuts[0]));

    private static double Diameter(Circle opening) => opening.DiameterMm - 2 * BuildUp.LidGap;
}
