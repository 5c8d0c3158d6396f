using Stillwall.Appraisals;
using Stillwall.Web.Texts;
using static Stillwall.Web.Drawings.Pen;

namespace Stillwall.Web.Drawings;

/// <summary>The spot from the front and from the side, to scale, with the cabinet in it as an outline.</summary>
internal static class SpotViews
{
    private const double Left = 58,
        Top = 22,
        MostUp = 240,
        MostAcross = 250;

    /// <summary>Draws the view; null where the spot is not stated.</summary>
    internal static View? Of(Facts facts)
    {
        if (facts.Project.Brief.Spot is not { WidthM: { } width, HeightM: { } height, DepthM: { } depth } spot)
        {
            return null;
        }

        var pen = new Pen();
        var unit = facts.Show.SizeUnit;
        var scale = Math.Min(MostUp / height, MostAcross / Math.Max(width, depth));
        var (w, h, d) = (width * scale, height * scale, depth * scale);
        var floor = Top + h;
        var side = Left + w + 74;
        pen.Path("brick", $"M{N(Left - 11)} {N(Top - 11)}h{N(w + 22)}v{N(h + 22)}h{N(-w - 22)}z{Square(Left, Top, w, h)}", true)
            .Path("wall", Square(Left, Top, w, h))
            .Path("brick", $"M{N(side)} {N(Top - 11)}H{N(side + d + 11)}V{N(floor + 11)}H{N(side - 14)}V{N(floor)}H{N(side + d)}V{N(Top)}H{N(side)}Z")
            .Path("wall", $"M{N(side - 14)} {N(floor)}H{N(side + d)}V{N(Top)}H{N(side)}V{N(Top - 11)}")
            .Line("phantom", side, Top, side, floor);
        if (SpotPlan.Of(facts) is { } plan)
        {
            var k = scale * Shapes.Millimetres.MetresPerMillimetre;
            var (cw, ch, cd) = (plan.Sizes.Width * k, plan.Sizes.Height * k, plan.Sizes.Depth * k);
            var foot = plan.Foot * k;
            pen.Path("outline", Rounded(Left + (w - cw) / 2, floor - foot - ch, cw, ch, plan.Sizes.Radius * k))
                .Path("outline", Square(side + plan.FrontAt * k, floor - foot - ch, cd, ch));
        }

        var clear = (spot.ClearanceM + spot.PlugSpaceM) * scale;
        pen.Line("hidden", side + d - clear, Top, side + d - clear, floor);
        pen.Text("tb", Left + 10, Top + 20, $"{DrawingTexts.Spot}, {unit}").Text("t2", side + 10, Top + 20, DrawingTexts.FromTheSide);
        pen.Across(true, Left, Left + w, floor + 34, floor + 13, 56)
            .Up(true, Top, floor, 24, Left - 13, 34)
            .Across(true, side, side + d, floor + 34, floor + 13, 56);
        return new View(
            Width: side + d + 24,
            Height: floor + 48,
            Title: DrawingTexts.SpotTitle,
            Description: DrawingTexts.SpotTitle,
            Svg: pen.Svg,
            Fields:
            [
                new(Key: "brief.spot.width", Label: DrawingTexts.SpotWidth, X: Left + w / 2, Y: floor + 34, Unit: unit, Characters: 5, Step: 10),
                new(Key: "brief.spot.height", Label: DrawingTexts.SpotHeight, X: 24, Y: Top + h / 2, Unit: unit, Characters: 5, Step: 10),
                new(Key: "brief.spot.depth", Label: DrawingTexts.SpotDepth, X: side + d / 2, Y: floor + 34, Unit: unit, Characters: 5, Step: 10),
            ],
            Marks: [new("brief/cabinet-fits-the-spot", Left + w / 2, Top + 44)]
        );
    }
}
