using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Web.Texts;
using static Stillwall.Web.Drawings.Pen;
using Stillwall.Shapes;

namespace Stillwall.Web.Drawings;

/// <summary>Detail C: the wall, several times larger than the sections.</summary>
internal sealed class WallDetail
{
    private const double Left = 16,
        Wide = 282,
        MostWall = 81,
        MostPitch = 202,
        Top = 58;

    private readonly Pen pen = new();
    private readonly Facts facts;
    private readonly CabinetSizes sizes;
    private readonly double scale;

    private WallDetail(Facts facts, CabinetSizes sizes)
    {
        (this.facts, this.sizes) = (facts, sizes);
        scale = Math.Min(5.04, Math.Min(MostWall / sizes.Wall, MostPitch / sizes.StrutPitch));
    }

    private double CoreTop => Top + sizes.OuterSkin * scale;

    private double CoreBottom => CoreTop + sizes.Core * scale;

    private double Bottom => Top + sizes.Wall * scale;

    private const double Middle = Left + Wide / 2;

    /// <summary>Draws the view; null where the walls are not stated.</summary>
    internal static View? Of(Facts facts) => facts.Sizes is { } sizes ? new WallDetail(facts, sizes).Draw() : null;

    private View Draw()
    {
        var (top, bottom) = (Top - 5, Bottom + 5);
        var edge = $"C{N(Left + 4)} {N(top + (bottom - top) * .28)} {N(Left - 4)} {N(top + (bottom - top) * .6)} {N(Left)} {N(bottom)}";
        var right = Left + Wide;
        pen.Put(
            $"<defs><clipPath id=\"clip-c\"><path d=\"M{N(Left)} {N(top)}{edge}L{N(right)} {N(bottom)}C{N(right - 4)} {N(top + (bottom - top) * .6)} "
                + $"{N(right + 4)} {N(top + (bottom - top) * .28)} {N(right)} {N(top)}Z\"/></clipPath></defs><g clip-path=\"url(#clip-c)\">"
        );
        pen.Box("coreb", Left - 6, CoreTop, Wide + 12, sizes.Core * scale)
            .Box("skinb", Left - 6, Top, Wide + 12, sizes.OuterSkin * scale)
            .Box("skinb", Left - 6, CoreBottom, Wide + 12, sizes.InnerSkin * scale);
        var pitch = sizes.StrutPitch * scale;
        if (sizes.Core > 0)
        {
            foreach (var at in new[] { -0.5, 0.5 })
            {
                Strut(Middle + at * pitch);
            }

            Keys(pitch);
        }

        pen.Put("</g>")
            .Path("free", $"M{N(Left)} {N(top)}{edge}")
            .Path(
                "free",
                $"M{N(right)} {N(top)}C{N(right + 4)} {N(top + (bottom - top) * .28)} {N(right - 4)} {N(top + (bottom - top) * .6)} {N(right)} {N(bottom)}"
            );
        var fields = Sizes(pitch);
        pen.Text("tb", Left, 16, "C")
            .Text("t2", Left + 16, 16, DrawingTexts.Larger(scale / (SpotPlan.Of(facts) is { } plan ? SectionAlong.ScaleOf(plan) : 0.72)))
            .Figure("words", Left, Math.Max(Bottom + 26, Top + 106), "start", [.. DrawingTexts.Made(facts.Project.Materials)]);
        return new View(
            Width: 412,
            Height: Math.Max(Bottom + 36, 176),
            Title: DrawingTexts.DetailTitle,
            Description: DrawingTexts.DetailTitle,
            Svg: pen.Svg,
            Fields: fields,
            Marks: [new("pour/mix-flows-into-the-cavity", Middle + 40, (CoreTop + CoreBottom) / 2), new("walls/core-keyed-to-the-skins", Middle + 78, 38)]
        )
        {
            Figures = pen.Figures,
        };
    }

    private void Strut(double x)
    {
        var (web, head) = (sizes.Web / 2 * scale, BuildUp.HeadWidth / 2 * scale);
        if (!sizes.Tied)
        {
            pen.Box("skinb", x - web, CoreTop - .5, 2 * web, (sizes.Core - BuildUp.SlotGap) * scale + .5);
            return;
        }

        var gap = BuildUp.SlotGap * scale;
        var (headBottom, headTop) = (CoreBottom - gap, CoreBottom - gap - BuildUp.HeadThickness * scale);
        pen.Path(
            "skinb",
            $"M{N(x - web)} {N(CoreTop - .5)}V{N(headTop)}H{N(x - head)}V{N(headBottom)}H{N(x + head)}V{N(headTop)}H{N(x + web)}V{N(CoreTop - .5)}Z"
        );
        var lip = BuildUp.LipThickness * scale;
        foreach (var side in new[] { -1, 1 })
        {
            var (wall, cap) = (head + gap, web + gap);
            pen.Path(
                "skinb",
                $"M{N(x + side * wall)} "
                    + $"{N(CoreBottom + .5)}V{N(headTop - gap)}H{N(x + side * cap)}V{N(headTop - gap - lip)}H{N(x + side * (wall + lip))}V{N(CoreBottom + .5)}Z"
            );
        }
    }

    private void Keys(double pitch)
    {
        var (foot, head, height) = (BuildUp.KeyFoot / 2 * scale, BuildUp.KeyHead / 2 * scale, BuildUp.KeyHeightIn(sizes.Core) * scale);
        var count = Math.Max(0, (int)Math.Floor((sizes.StrutPitch - BuildUp.HeadWidth - 4) / BuildUp.KeySpacingAtEnds));
        for (var i = 0; i < count; i++)
        {
            var x = Middle + (i - (count - 1) / 2.0) * Math.Min(BuildUp.KeySpacingAtEnds * scale, pitch / (count + 1));
            pen.Path("skinb", $"M{N(x - foot)} {N(CoreTop - .5)}L{N(x - head)} {N(CoreTop + height)}H{N(x + head)}L{N(x + foot)} {N(CoreTop - .5)}Z")
                .Path("skinb", $"M{N(x - foot)} {N(CoreBottom + .5)}L{N(x - head)} {N(CoreBottom - height)}H{N(x + head)}L{N(x + foot)} {N(CoreBottom + .5)}Z");
        }

        if (facts.Geometry?.PassageM is not { } passage || count == 0)
        {
            return;
        }

        var (px, y1, y2) = (
            Middle - (count - 1) / 2.0 * Math.Min(BuildUp.KeySpacingAtEnds * scale, pitch / (count + 1)),
            CoreTop + height,
            CoreBottom - height
        );
        pen.Path("mask", Square(px + 5, (y1 + y2) / 2 - 9, 84, 18));
        if (y2 - y1 > 20)
        {
            pen.Line("dr", px, y1, px, y2).ArrowUp("ar", px, y1, 1).ArrowUp("ar", px, y2, -1);
        }

        pen.Figure(
            "size",
            px + 8,
            (y1 + y2) / 2 + 4.5,
            "start",
            DrawingTexts.Bracketed(passage.InMillimetres(), facts.Show.Inch, "pour/mix-flows-into-the-cavity", DrawingTexts.Passage)
        );
    }

    private List<FieldPlace> Sizes(double pitch)
    {
        var unit = facts.Show.SizeUnit;
        var x = Left + Wide + 18;
        pen.Across(true, Middle - pitch / 2, Middle + pitch / 2, 38, 56, 100).Text("t", Middle + 13, 42.5, DrawingTexts.StrutsEvery, "end");
        foreach (var y in new[] { Top, CoreTop, CoreBottom, Bottom })
        {
            pen.Line("ext", x - 15, y, x + 4, y);
        }

        pen.Line("de", x, Top - 15, x, Bottom + 15)
            .ArrowUp("ae", x, Top, -1)
            .ArrowUp("ae", x, CoreTop, 1)
            .ArrowUp("ae", x, CoreBottom, -1)
            .ArrowUp("ae", x, Bottom, 1);
        // Numbers keep a line's distance from one another, however thin the skins are.
        var middle = (CoreTop + CoreBottom) / 2;
        var (upper, lower) = (Math.Min(Top + sizes.OuterSkin * scale / 2, middle - 25), Math.Max(Bottom - sizes.InnerSkin * scale / 2, middle + 25));
        pen.Text("t", x + 38, upper + 4.5, DrawingTexts.OuterSkin)
            .Text("t", x + 38, middle + 4.5, DrawingTexts.Core)
            .Text("t", x + 38, lower + 4.5, DrawingTexts.InnerSkin);
        return
        [
            new("cabinet.strut_pitch", DrawingTexts.StrutsEvery, Middle + 35, 38, unit, 3),
            new(Key: "cabinet.outer_skin", Label: DrawingTexts.OuterSkin, X: x + 20, Y: upper, Unit: unit, Characters: 3, Step: 0.2),
            new(Key: "cabinet.core", Label: DrawingTexts.Core, X: x + 20, Y: middle, Unit: unit, Characters: 3, Step: 0.5),
            new(Key: "cabinet.inner_skin", Label: DrawingTexts.InnerSkin, X: x + 20, Y: lower, Unit: unit, Characters: 3, Step: 0.2),
        ];
    }
}
