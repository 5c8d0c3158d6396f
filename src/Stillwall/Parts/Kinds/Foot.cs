using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A foot; where the feet stand is told by <see cref="Footing"/>.</summary>
internal sealed class Foot : PartKind
{
    /// <inheritdoc/>
    public override string Name => "foot";

    internal override int Turn => 110;

    internal override Exploding Exploding => new(120) { Down = 60 };

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var footing = Footing.Of(job.Sizes, job.Cabinet.Feet);
        return job.Cabinet.Feet is null
            ? []
            : footing
                .Places(job.Sizes)
                .Select(at =>
                    FlatDisc.Of(BuildUp.FootDiameter, BuildUp.FootHeight) with
                    {
                        Place = Placement.AsPrinted.Shifted(at.XMm, at.YMm, -footing.HeightMm),
                        CentreMm = at.YMm,
                    }
                );
    }

    internal override PartFeatures Features(FeatureJob job) => FlatDisc.Features(job, BuildUp.FootDiameter);
}
