using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A gauge that keeps the skins apart until the first lift has set; it hangs over the rear ends by its head.</summary>
internal sealed class SpacerGauge : PartKind
{
    private const int Count = 4;

    /// <inheritdoc/>
    public override string Name => "spacer gauge";

    internal override int Turn => 160;

    internal override PrintedFor For => PrintedFor.Pour;

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        var thick = Thickness(job.Sizes);
        var (wide, length) = (thick + 2 * BuildUp.SpacerHead, BuildUp.SpacerLength + BuildUp.SpacerHead);
        var volume = (thick * BuildUp.SpacerLength + wide * BuildUp.SpacerHead) * BuildUp.SpacerHeight;
        return Enumerable.Repeat(
            new PartDraft(volume.InCubicMetres(), new PartSize(wide, length, BuildUp.SpacerHeight), () => Draw(thick)),
            job.Sizes.Core >= BuildUp.LeastSpacerCore ? Count : 0
        );
    }

    internal override PartFeatures Features(FeatureJob job)
    {
        var thick = Thickness(job.Sizes);
        return new PartFeatures
        {
            Across = [new(-thick / 2, thick / 2, 0, 0)],
            Up = [new(0, BuildUp.SpacerLength, -thick / 2, -thick / 2 - BuildUp.SpacerHead)],
        };
    }

    private static double Thickness(CabinetSizes s) => s.Core - BuildUp.SpacerPlay;

    private static Blank Draw(double thick)
    {
        var (half, long_) = (thick / 2, BuildUp.SpacerLength);
        var bar = Region.RoundedRectangle(-half, 0, half, long_, 0);
        var head = Region.RoundedRectangle(-half - BuildUp.SpacerHead, long_, half + BuildUp.SpacerHead, long_ + BuildUp.SpacerHead, 0);
        return Blank.NamedOnTop(Solid.Empty.Add(bar.Join(head), 0, BuildUp.SpacerHeight), bar.Join(head), BuildUp.SpacerHeight);
    }
}
