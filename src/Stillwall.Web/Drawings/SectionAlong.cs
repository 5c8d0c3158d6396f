using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Projects;
using Stillwall.Web.Texts;
using static Stillwall.Web.Drawings.Pen;
using Stillwall.Shapes;

namespace Stillwall.Web.Drawings;

/// <summary>Section A–A: along the depth, in its spot, seen from the right.</summary>
internal sealed class SectionAlong
{
    /// <summary>Most pixels that the spot takes across and up; the scale follows.</summary>
    private const double MostAcross = 296,
        MostUp = 374,
        Left = 64,
        LabelRoom = 168;

    private readonly Pen pen = new();
    private readonly Facts facts;
    private readonly SpotPlan plan;
    private readonly double scale,
        top,
        shift;

    private SectionAlong(Facts facts, SpotPlan plan)
    {
        (this.facts, this.plan) = (facts, plan);
        shift = Math.Max(0, 16 - plan.FrontAt);
        scale = ScaleOf(plan);
        top = 20 + Math.Max(0, LabelRoom - plan.Above * scale);
    }

    private double Floor => top + plan.Height * scale;

    private double Front => X(plan.FrontAt);

    private double Rear => X(plan.FrontAt + plan.Sizes.Depth);

    private double Bottom => Floor - plan.Foot * scale;

    private double Top => Z(plan.Sizes.Height);

    /// <summary>Pixels a millimetre, shared with section B–B.</summary>
    internal static double ScaleOf(SpotPlan plan) =>
        Math.Min(
            Math.Min(MostAcross / (plan.Depth + Math.Max(0, 16 - plan.FrontAt)), MostUp / Math.Max(plan.Height, plan.Sizes.Height + plan.Foot)),
            MostAcross / plan.Width
        );

    /// <summary>Draws the view; null where the cabinet's sizes are not stated.</summary>
    internal static View? Of(Facts facts, Facts? former) =>
        SpotPlan.Of(facts) is { } plan ? new SectionAlong(facts, plan).Draw(former is null ? null : SpotPlan.Of(former)) : null;

    private double X(double depth) => Left + (depth + shift) * scale;

    private double Z(double height) => Bottom - height * scale;

    private View Draw(SpotPlan? former)
    {
        Spot();
        Shell();
        Brace();
        Rears();
        foreach (var (_, z) in PlateLayout.DriverCentres(plan.Sizes).DistinctBy(c => Math.Round(c.Z)))
        {
            var (sunk, half) = (plan.Sizes.Sunk * scale, plan.Sizes.RecessDiameter / 2 * scale);
            if (sunk > 0)
            {
                pen.Box("blank", Front - 0.6, Z(z) - half, sunk + 0.6, 2 * half);
            }

            DriverSide.Draw(pen, facts.Sheet, Front + sunk, Z(z), scale);
        }

        Feet();
        if (former is not null && former.Sizes != plan.Sizes)
        {
            Pencil(former);
        }

        pen.Text("tb", X(0) + 10, top + 28, "A–A");
        var fields = Labels();
        Sizes(fields);
        var height = Floor + (plan.IsStated ? 58 : 36);
        return new View(Width: 386, Height: height, Title: DrawingTexts.AlongTitle, Description: Said(), Svg: pen.Svg, Fields: fields, Marks: Marks())
        {
            Figures = pen.Figures,
        };
    }

    private void Spot()
    {
        var (left, wall) = (X(0), X(plan.Depth));
        if (plan.IsStated)
        {
            pen.Path("brick", $"M{N(left)} {N(top - 13)}H{N(wall + 13)}V{N(Floor + 13)}H{N(left - 22)}V{N(Floor)}H{N(wall)}V{N(top)}H{N(left)}Z")
                .Path("wall", $"M{N(left - 22)} {N(Floor)}H{N(wall)}V{N(top)}H{N(left)}V{N(top - 13)}")
                .Line("phantom", left, top, left, Floor);
        }
        else
        {
            pen.Line("wall", left - 22, Floor, wall + 13, Floor);
        }
    }

    private void Shell()
    {
        var s = plan.Sizes;
        var (w, h) = (s.Depth * scale, s.Height * scale);
        string Ring(double inset) => Square(Front + inset * scale, Top + inset * scale, w - 2 * inset * scale, h - 2 * inset * scale);
        pen.Box("paper", Front, Top, w, h);
        Fill();
        pen.Path("core", Ring(s.OuterSkin) + Ring(s.OuterSkin + s.Core), true).Path("skin", Ring(0) + Ring(s.OuterSkin), true);
        if (s.InnerSkin > 0)
        {
            pen.Path("skin", Ring(s.OuterSkin + s.Core) + Ring(s.Wall), true);
        }
    }

    private double BraceAt(int i) => plan.FrontAt + plan.Sizes.Wall + plan.Bracing.FrontsMm[i];

    private double InsideRear => plan.FrontAt + plan.Sizes.Depth - plan.Sizes.Wall;

    private double FillFrom => plan.Sizes.Braces > 0 ? BraceAt(plan.Sizes.Braces - 1) + BuildUp.BraceThickness : plan.FrontAt + plan.Sizes.Depth * 0.6;

    private void Fill()
    {
        if (facts.Project.Cabinet?.Fill is not ({ MassKg: > 0 } or { Factor: > 1 }))
        {
            return;
        }

        var s = plan.Sizes;
        var (from, to) = (X(FillFrom) + 5, X(InsideRear) - 5);
        var waves = (int)((to - from) / 10.4);
        for (var (y, row) = (Z(s.Height - s.Wall) + 6, 0); y < Z(s.Wall) - 4 && waves > 0; y += 12.2, row++)
        {
            pen.Path("wad", $"M{N(from + (row % 2 == 0 ? 0 : 3.6))} {N(y)}" + string.Concat(Enumerable.Repeat("q2.6 -5.2 5.2 0q2.6 5.2 5.2 0", waves)));
        }
    }

    private void Brace()
    {
        var s = plan.Sizes;
        var frame = (plan.Bracing.Window.Bottom - s.Wall) * scale;
        for (var i = 0; i < s.Braces; i++)
        {
            var (x, w) = (X(BraceAt(i)), BuildUp.BraceThickness * scale);
            var (upper, lower) = (Z(s.Height - s.Wall), Z(s.Wall));
            pen.Box("seen", x, upper, w, lower - upper).Box("cutsolid", x, upper, w, frame).Box("cutsolid", x, lower - frame, w, frame);
        }
    }

    private void Rears()
    {
        var layout = PlateLayout.Rear(plan.Sizes);
        var wall = plan.Sizes.Wall * scale;
        foreach (var opening in layout.Openings.Where(o => o.DiameterMm > 0))
        {
            var (y, r, t) = (Z(opening.ZMm), opening.DiameterMm / 2 * scale, Math.Max(1.2, plan.Sizes.OuterSkin * scale));
            pen.Box("blank", Rear - wall - 0.6, y - r, wall + 1.2, 2 * r).Box("skin", Rear - wall, y - r - t, wall, t).Box("skin", Rear - wall, y + r, wall, t);
            var (cup, lip) = (24 * scale + wall, 3 * scale);
            pen.Path(
                    "thing",
                    $"M{N(Rear + lip)} {N(y - r - 3 * scale)}V{N(y + r + 3 * scale)}H{N(Rear)}V{N(y + r - lip)}H{N(Rear - cup)}"
                        + $"V{N(y - r + lip)}H{N(Rear)}V{N(y - r - 3 * scale)}Z"
                )
                .Line("thing", Rear - cup, y - r / 3, Rear - 4 * scale, y - r / 3)
                .Line("thing", Rear - cup, y + r / 3, Rear - 4 * scale, y + r / 3);
        }

        foreach (var opening in layout.PourOpenings.Where(o => o.DiameterMm > 0))
        {
            pen.Box(
                "corepatch",
                Rear - plan.Sizes.OuterSkin * scale - 1,
                Z(opening.ZMm) - opening.DiameterMm / 2 * scale,
                plan.Sizes.OuterSkin * scale + 1.6,
                opening.DiameterMm * scale
            );
        }
    }

    private void Feet()
    {
        var (w, h) = (BuildUp.FootDiameter * scale, plan.Footing.HeightMm * scale);
        var along = plan.Footing.AlongMm * scale;
        pen.Box("pad", Front + along - w / 2, Bottom, w, h)
            .Box("pad", Rear - along - w / 2, Bottom, w, h)
            .Line("axis", X(plan.FrontAt - 24), Z(plan.Sizes.Height / 2), X(plan.FrontAt + 150), Z(plan.Sizes.Height / 2));
        var cut = X(plan.FrontAt + plan.Sizes.Depth / 2);
        pen.Line("plane", cut, Top - 20, cut, Top - 6)
            .Line("planethin", cut, Top - 19, cut + 10, Top - 19)
            .ArrowAcross("ak", cut + 17, Top - 19, -1)
            .Text("tb", cut - 4, Top - 12, "B", "end")
            .Line("axis", cut, Top - 6, cut, Bottom + 3);
    }

    // The former outline, thin, the rear against the same wall.
    private void Pencil(SpotPlan former)
    {
        var (left, right) = (
            X(former.FrontAt - former.BehindCabinet + plan.BehindCabinet),
            X(former.FrontAt + former.Sizes.Depth - former.BehindCabinet + plan.BehindCabinet)
        );
        pen.Path("pencil", Square(left, Z(former.Sizes.Height), right - left, former.Sizes.Height * scale));
    }

    // What stands above the cabinet, each on a step of its own, the rearmost highest.
    private List<FieldPlace> Labels()
    {
        var s = plan.Sizes;
        var fields = new List<FieldPlace>();
        var unit = facts.Show.SizeUnit;
        double Step(int i) => Top - 38 - 30 * i;
        var layout = PlateLayout.Rear(s);
        if (layout.Openings is [{ DiameterMm: > 0 } terminal, ..])
        {
            var (x, y) = (Math.Min(Rear + 38, 366), Z(terminal.ZMm));
            pen.Path("lead", $"M{N(x)} {N(Step(4) + 4)}V{N(y)}H{N(Rear + 2)}")
                .Circle("dot", Rear + 1, y, 1.7)
                .Text("t", x - 30, Step(4) - 2, DrawingTexts.Terminal, "end");
            fields.Add(new("cabinet.openings.terminal", DrawingTexts.TerminalOpening, x - 10, Step(4) - 6, unit, 3));
        }

        if (layout.PourOpenings is [{ DiameterMm: > 0 } pour, ..])
        {
            pen.Leader(Rear - 1, Step(3) + 4, Rear - 1, Z(pour.ZMm)).Text("t", Rear - 30, Step(3) - 2, DrawingTexts.Pour, "end");
            fields.Add(new("cabinet.openings.pour", DrawingTexts.PourOpening, Rear - 11, Step(3) - 6, unit, 3));
        }

        if (facts.Project.Cabinet?.Fill?.MassKg is not null)
        {
            var x = (X(FillFrom) + X(InsideRear)) / 2;
            pen.Leader(x, Step(2) + 4, x, Top + 34).Text("t", x + 8, Step(2) - 2, DrawingTexts.OfFill);
            fields.Add(
                new(
                    Key: "cabinet.fill.mass",
                    Label: DrawingTexts.FillMass,
                    X: x - 14,
                    Y: Step(2) - 6,
                    Unit: facts.Show.Inch ? "oz" : "g",
                    Characters: 4,
                    Step: 10
                )
            );
        }

        var brace = X(s.Braces > 0 ? BraceAt(0) + BuildUp.BraceThickness / 2 : plan.FrontAt + s.Depth / 2);
        pen.Leader(brace, Step(1) + 4, brace, Top + 26).Text("t", brace - 29, Step(1) - 2, s.Braces == 1 ? DrawingTexts.Brace : DrawingTexts.Braces, "end");
        fields.Add(new("cabinet.braces", DrawingTexts.BraceCount, brace - 13, Step(1) - 6, "", 2));
        if (facts.Sheet is { } sheet)
        {
            var x = X(plan.FrontAt + 40);
            pen.Leader(x, Step(0) + 14, x, Z(s.Height / 2) - 58 * scale).Text("t name", x - 6, Step(0) + 8, sheet.Name);
        }

        return fields;
    }

    private void Sizes(List<FieldPlace> fields)
    {
        var unit = facts.Show.SizeUnit;
        FigurePiece Plain(double mm, string of, string name) => DrawingTexts.Bracketed(mm, facts.Show.Inch, of, name);
        pen.Across(true, Front, Rear, Floor + 30, Bottom + 3, 62);
        fields.Add(new("cabinet.outside.depth", DrawingTexts.Depth, (Front + Rear) / 2, Floor + 30, unit, 5));
        pen.Up(true, Top, Bottom, 40, Front - 5, 50);
        fields.Add(new("cabinet.outside.height", DrawingTexts.Height, 38, (Top + Bottom) / 2 - 8, unit, 5));
        if (!plan.IsStated)
        {
            return;
        }

        pen.Across(false, Rear, X(plan.Depth), Floor + 30, Bottom + 3, 0)
            .Figure("size", (Rear + X(plan.Depth)) / 2, Floor + 25, "middle", Plain(plan.BehindCabinet, "standing.behind_m", DrawingTexts.Behind))
            .Across(false, X(0), X(plan.Depth), Floor + 52, Floor + 15, 44)
            .Figure("size", (X(0) + X(plan.Depth)) / 2, Floor + 56, "middle", Plain(plan.Depth, "brief.spot.depth", DrawingTexts.SpotDepth))
            .Up(false, top, Floor, 16, X(0) - 23, 20)
            .Figure("size", 17, (top + Floor) / 2 + 4, "middle", Plain(plan.Height, "brief.spot.height", DrawingTexts.SpotHeight));
        if (plan.Above * scale > 40)
        {
            pen.Up(false, top, Top, 40, X(0) - 2, 20)
                .Figure("size", 40, (top + Top) / 2 + 4, "middle", Plain(plan.Above, "standing.above_m", DrawingTexts.Above));
        }
    }

    private IReadOnlyList<MarkPlace> Marks() =>
        [
            new("parts/every-part-fits-the-printer", 40, (Top + Bottom) / 2 + 16),
            new("brief/cabinet-fits-the-spot", (Rear + X(plan.Depth)) / 2, Floor - 16),
            new("cabinet/fill-sensible", X(FillFrom) + 30, Z(plan.Sizes.Wall) - 16),
            new("driver/clear-of-braces-skins-and-rear", X(plan.FrontAt + 150), Z(plan.Sizes.Height / 2) + 60 * scale),
        ];

    private string Said() =>
        DrawingTexts.AlongSaid(
            facts.Show.Length(plan.Sizes.Depth.InMetres()),
            facts.Show.Length(plan.Sizes.Height.InMetres()),
            plan.IsStated ? facts.Show.Length(plan.Depth.InMetres()) : null,
            facts.Show.Length(plan.Height.InMetres()),
            plan.Sizes.Braces
        );
}

/// <summary>A driver from the side, cut through its axis.</summary>
internal static class DriverSide
{
    // Sizes of the drawn driver, mm, that a stated one is stretched from.
    private const double DrawnDepth = 130,
        DrawnCutout = 184;

    /// <summary>Draws a driver that looks to the left.</summary>
    internal static void Draw(Pen pen, DriverSheet? sheet, double x, double y, double scale)
    {
        if (sheet is null)
        {
            return;
        }

        var cutout = (sheet.CutoutM ?? sheet.DiameterM * 0.9)?.InMillimetres() ?? DrawnCutout;
        var flange = (sheet.FlangeM?.InMillimetres() ?? cutout * 1.2) / 2;
        var (kx, ky) = (scale * (sheet.DepthM?.InMillimetres() ?? cutout * 0.7) / DrawnDepth, scale * cutout / DrawnCutout);
        var magnet = Math.Min((sheet.MagnetDiameterM?.InMillimetres() ?? cutout * 0.68) / 2 * scale, 91 * ky);
        string P(double dx, double dy) => $"{N(x + dx * kx)} {N(y + dy * ky)}";
        string F(double dx, double half) => $"{N(x + dx * kx)} {N(y + half)}";
        var f = flange * scale;
        pen.Path("thing", $"M{F(-4, -f)}L{P(-4, -95)}L{P(0, -93)}L{P(5, -91)}L{P(84, -62)}L{P(84, 0)}")
            .Path("thing", $"M{F(-4, f)}L{P(-4, 95)}L{P(0, 93)}L{P(5, 91)}L{P(84, 62)}L{P(84, 0)}")
            .Path(
                "thing fillp",
                $"M{F(-4, -f)}L{F(0, -f)}L{P(0, -92)}L{P(6, -90)}L{P(80, -58)}L{P(86, -58)}L{F(86, -magnet)}"
                    + $"L{F(124, -magnet)}L{F(130, -magnet * 0.9)}L{F(130, magnet * 0.9)}L{F(124, magnet)}L{F(86, magnet)}"
                    + $"L{P(86, 58)}L{P(80, 58)}L{P(6, 90)}L{P(0, 92)}L{F(0, f)}L{F(-4, f)}L{P(-4, 97)}L{P(58, 24)}L{P(58, -24)}L{P(-4, -97)}Z"
            )
            .Path("thing", $"M{P(-4, -98)}C{P(-15, -96)} {P(-13, -84)} {P(-1, -84)}L{P(54, -26)}H{N(x + 86 * kx)}")
            .Path("thing", $"M{P(-4, 98)}C{P(-15, 96)} {P(-13, 84)} {P(-1, 84)}L{P(54, 26)}H{N(x + 86 * kx)}")
            .Path("thing", $"M{P(36, -45)}C{P(24, -26)} {P(24, 26)} {P(36, 45)}")
            .Path("thing", $"M{F(86, -magnet)}V{N(y + magnet)}M{F(112, -magnet)}V{N(y + magnet)}");
    }
}
