using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>The peg that goes with the strip: 10 mm square, on a wider foot to hold it by.</summary>
internal sealed class CalibrationPeg : PartKind
{
    internal const double Side = 10;

    private const double Height = 12,
        FootSide = 20,
        Corner = 2,
        From = (FootSide - Side) / 2,
        To = (FootSide + Side) / 2;

    /// <inheritdoc/>
    public override string Name => "calibration peg";

    internal override int Turn => 150;

    internal override PrintedFor For => PrintedFor.Calibration;

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        if (job.Sizes.Core > 0)
        {
            var volume = (FootSide * FootSide - (4 - Math.PI) * Corner * Corner) * CalibrationStrip.Thickness + Side * Side * Height;
            yield return new PartDraft(volume.InCubicMetres(), new PartSize(FootSide, FootSide, CalibrationStrip.Thickness + Height), Draw);
        }
    }

    internal override PartFeatures Features(FeatureJob job) =>
        new()
        {
            Across = [new(From, To, From, From)],
            SectionUp = [new(0, CalibrationStrip.Thickness, 0, 0)],
            CutAt = FootSide / 2,
        };

    private static Blank Draw() =>
        Blank.Nameless(
            Solid
                .Empty.Add(Region.RoundedRectangle(0, 0, FootSide, FootSide, Corner), 0, CalibrationStrip.Thickness)
                .Add(Region.RoundedRectangle(From, From, To, To, 0), CalibrationStrip.Thickness, CalibrationStrip.Thickness + Height)
        );
}
