using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>The sleeve of a cabinet without a core: both skins are one print.</summary>
internal sealed class SingleSleeve : Sleeve
{
    /// <inheritdoc/>
    public override string Name => "sleeve";

    internal override int Turn => 11;

    internal override Exploding Exploding => new(61) { CarriesFeet = true };

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var (s, g) = (job.Sizes, job.Geometry);
        if (s.Core <= 0)
        {
            var size = new PartSize(s.Width, s.Height, s.Depth - 2 * s.OuterSkin);
            yield return new PartDraft(g.OuterSleeveM3(AccentRing.Count(job)) + g.InnerSleeveM3, size, () => Draw(job))
            {
                Place = job.FrontDown(s.OuterSkin),
                CentreMm = s.Depth / 2,
            };
        }
    }

    internal override PartFeatures Features(FeatureJob job) =>
        new()
        {
            SectionAcross = [job.Inside(job.Sizes.Wall)],
            SectionUp = AccentRing.Grooves(job.Job),
            Notes = [job.Corner(), new(job.Sizes.Width - job.Sizes.Wall, job.Sizes.Height / 2, $"wall {job.Units.Of(job.Sizes.Wall)}")],
        };

    // A single wall has no room for letters.
    private static Blank Draw(PartJob job)
    {
        var s = job.Sizes;
        var length = s.Depth - 2 * s.OuterSkin;
        return Blank.Nameless(
            AccentRing.Grooved(
                Solid.Empty.Add(Ring(s, 0, s.OuterSkin), 0, length).Add(Ring(s, s.OuterSkin, s.Wall), s.InnerSkin, length - s.InnerSkin),
                job
            )
        );
    }
}
