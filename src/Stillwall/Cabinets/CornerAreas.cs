namespace Stillwall.Cabinets;

/// <summary>Areas that pieces at the corners have more than those on flat walls, over their slopes, m²: they lie at the skin that a piece stands on.</summary>
/// <param name="OuterKeysM2">Keys of the outer skin that run the whole length.</param>
/// <param name="InnerKeysM2">Keys of the inner skin that run the whole length.</param>
internal sealed record CornerAreas(double StrutsM2, double OuterKeysM2, double InnerKeysM2, double OuterEndKeysM2, double InnerEndKeysM2)
{
    private const double Hair = SleeveSection.SlopeHair;

    /// <summary>Draws the pieces at the corners alone, a hair narrower.</summary>
    internal static CornerAreas Of(CabinetSizes sizes, WallPen pen)
    {
        double Keys(bool onOuter, bool atEnds) =>
            pen.MoreAtCornersM2(
                SleeveSection.KeyPlaces(sizes, onOuter, atEnds),
                BuildUp.KeyHead - 2 * Hair,
                at => pen.Key(at, onOuter, Hair),
                ((BuildUp.KeyFoot + BuildUp.KeyHead) / 2 - 2 * Hair) * BuildUp.KeyHeightIn(sizes.Core)
            );

        var (from, to, top) = SleeveSection.StrutHeights(sizes, Hair);
        var web = sizes.Web - 2 * Hair;
        var head = sizes.Tied ? Math.Max(web, BuildUp.HeadWidth - 2 * Hair) : web;
        var flat = (sizes.Tied ? head * (to - from) : 0) + web * (sizes.Core - top);
        return new CornerAreas(
            pen.MoreAtCornersM2(SleeveSection.StrutPlaces(sizes).Places, head, at => SleeveSection.Strut(pen, at, sizes, Hair), flat),
            Keys(onOuter: true, atEnds: false),
            Keys(onOuter: false, atEnds: false),
            Keys(onOuter: true, atEnds: true),
            Keys(onOuter: false, atEnds: true)
        );
    }
}
