using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Numerics;
using Stillwall.Web.Texts;
using static Stillwall.Web.Drawings.Pen;

namespace Stillwall.Web.Drawings;

/// <summary>Section B–B: across, seen from the front, on the same floor as section A–A.</summary>
internal sealed class SectionAcross
{
    private const double Left = 16,
        Top = 36;

    private readonly Pen pen = new();
    private readonly Facts facts;
    private readonly SpotPlan plan;
    private readonly double scale;

    private SectionAcross(Facts facts, SpotPlan plan) => (this.facts, this.plan, scale) = (facts, plan, SectionAlong.ScaleOf(plan));

    private double Width => plan.Sizes.Width * scale;

    private double Height => plan.Sizes.Height * scale;

    private double X0 => Left + (plan.Width * scale - Width) / 2;

    private double Bottom => Top + Height;

    private double Floor => Bottom + plan.Foot * scale;

    private double FootWide => BuildUp.FootDiameter * scale;

    // Middle of the left foot for −1, of the right one for 1.
    private double FootAt(int side) => Middle + side * (Width / 2 - plan.Footing.AcrossMm * scale);

    private double Middle => X0 + Width / 2;

    /// <summary>Draws the view; null where the cabinet's sizes are not stated.</summary>
    internal static View? Of(Facts facts, Facts? former) =>
        SpotPlan.Of(facts) is { } plan ? new SectionAcross(facts, plan).Draw(former is null ? null : SpotPlan.Of(former)) : null;

    private View Draw(SpotPlan? former)
    {
        Spot();
        Inside();
        Walls();
        Driver();
        if (former is not null && (former.Sizes.Width != plan.Sizes.Width || former.Sizes.Height != plan.Sizes.Height))
        {
            var (w, h) = (former.Sizes.Width * scale, former.Sizes.Height * scale);
            pen.Path("pencil", Rounded(Middle - w / 2, Bottom - h, w, h, former.Sizes.Radius * scale));
        }

        var fields = Sizes();
        return new View(
            Width: 412,
            Height: Floor + 60,
            Title: DrawingTexts.AcrossTitle,
            Description: DrawingTexts.AcrossSaid,
            Svg: pen.Svg,
            Fields: fields,
            Marks:
            [
                new("parts/every-part-fits-the-printer", Middle + 62, Floor + 30),
                new("quiet/force-into-the-floor-does-it-walk", X0 + Width + 40, Floor - 30),
            ]
        )
        {
            Figures = pen.Figures,
        };
    }

    private double Z(double height) => Bottom - height * scale;

    private void Spot()
    {
        if (!plan.IsStated)
        {
            pen.Line("wall", Left, Floor, Left + plan.Width * scale, Floor);
            return;
        }

        var (right, top) = (Left + plan.Width * scale, Top - 26);
        pen.Path("brick", $"M3 {N(top)}H{N(Left)}V{N(Floor)}H{N(right)}V{N(top)}H{N(right + 13)}V{N(Floor + 13)}H3Z")
            .Path("wall", $"M{N(Left)} {N(top)}V{N(Floor)}H{N(right)}V{N(top)}")
            .Path("brk", $"M-1 {N(top)}H5.5l2 -5 4 10 2 -5H20")
            .Path("brk", $"M{N(right - 4)} {N(top)}h6.5l2 -5 4 10 2 -5h6.5");
    }

    private string Ring(double inset) =>
        Rounded(X0 + inset * scale, Top + inset * scale, Width - 2 * inset * scale, Height - 2 * inset * scale, Math.Max(0, plan.Sizes.Radius - inset) * scale);

    private void Inside()
    {
        var s = plan.Sizes;
        pen.Path("paper", Ring(0));
        if (s.Braces > 0)
        {
            var w = plan.Bracing.Window;
            pen.Path(
                "seen",
                Ring(s.Wall) + Rounded(X0 + w.Left * scale, Top + w.Bottom * scale, w.Width * scale, w.Height * scale, w.Radius * scale),
                true
            );
        }

        var rear = PlateLayout.Rear(s);
        foreach (var terminal in rear.Openings)
        {
            var (x, y, r) = (X0 + terminal.XMm * scale, Z(terminal.ZMm), terminal.DiameterMm / 2 * scale);
            pen.Circle("thing nofill", x, y, r).Circle("thing nofill", x - r / 3, y, 2.4).Circle("thing nofill", x + r / 3, y, 2.4);
        }

        foreach (var pour in rear.PourOpenings)
        {
            pen.Circle("hidden", X0 + pour.XMm * scale, Z(pour.ZMm), pour.DiameterMm / 2 * scale);
        }
    }

    private void Walls()
    {
        var s = plan.Sizes;
        pen.Path("core", Ring(s.OuterSkin) + Ring(s.OuterSkin + s.Core), true).Path("skin", Ring(0) + Ring(s.OuterSkin), true);
        if (s.InnerSkin > 0)
        {
            pen.Path("skin", Ring(s.OuterSkin + s.Core) + Ring(s.Wall), true);
        }

        if (facts.Geometry is not { Sleeve.StrutPitch: > 0 and var pitch })
        {
            return;
        }

        var path = s.Outline.Inset(s.OuterSkin + s.Core / 2);
        var (count, half) = ((int)Math.Round(path.Length / pitch), s.Core / 2);
        for (var i = 0; i < count; i++)
        {
            var at = path.At((i + 0.5) * pitch);
            var (nx, nz) = (-at.AlongY * half, at.AlongX * half);
            pen.Line("strutd", X0 + (at.X - nx) * scale, Z(at.Y - nz), X0 + (at.X + nx) * scale, Z(at.Y + nz));
        }
    }

    private void Driver()
    {
        foreach (var (x, z) in PlateLayout.DriverCentres(plan.Sizes))
        {
            var (cx, cy) = (X0 + x * scale, Z(z));
            pen.Circle("phantom", cx, cy, DriverBody.Of(facts.Sheet).Flange / 2 * scale).Circle("phantom", cx, cy, plan.Sizes.Cutout / 2 * scale);
        }

        pen.Line("axis", X0 - 10, Z(plan.Sizes.Height / 2), X0 + Width + 10, Z(plan.Sizes.Height / 2))
            .Line("axis", Middle, Top - 4, Middle, Bottom + 3)
            .Line("plane", Middle, Top - 20, Middle, Top - 7)
            .Line("planethin", Middle, Top - 19, Middle - 10, Top - 19)
            .ArrowAcross("ak", Middle - 17, Top - 19, 1)
            .Text("tb", Middle + 5, Top - 12, "A")
            .Box("pad", FootAt(-1) - FootWide / 2, Bottom, FootWide, plan.Foot * scale)
            .Box("pad", FootAt(1) - FootWide / 2, Bottom, FootWide, plan.Foot * scale)
            .Text("tb", 26, 26, "B–B")
            .Circle("ringc", X0 + Width * 0.746, Top + plan.Sizes.Wall / 2 * scale, 15)
            .Text("tb", X0 + Width * 0.746 + 18, Top - 3, "C");
    }

    private List<FieldPlace> Sizes()
    {
        var unit = facts.Show.SizeUnit;
        var (right, s) = (Left + plan.Width * scale, plan.Sizes);
        FigurePiece Plain(double mm, string of, string name) => DrawingTexts.Bracketed(mm, facts.Show.Inch, of, name);
        var corner = (1 - Math.Sqrt(0.5)) * s.Radius * scale;
        var (cx, cy) = (X0 + corner, Bottom - corner);
        pen.Path("lead", $"M{N(cx)} {N(cy)}L{N(cx - 14)} {N(cy - 14)}H{N(cx - 20)}").Text("t", X0 - 46, cy - 9.5, "R", "end");
        pen.Across(true, X0, X0 + Width, Floor + 30, Bottom + 3, 56);
        var fields = new List<FieldPlace>
        {
            new("cabinet.outside.width", DrawingTexts.Width, Middle, Floor + 30, unit, 5),
            new("cabinet.outside.corner_radius", DrawingTexts.Radius, X0 - 27, cy - 14, unit, 3),
        };
        if (facts.Project.Cabinet?.Feet is { StiffnessNPerM: not null } feet)
        {
            var foot = FootAt(1);
            pen.Path("lead", $"M{N(foot)} {N(Floor - 2)}L{N(X0 + Width + 8)} {N(Floor - 26)}H{N(right + 22)}")
                .Circle("dot", foot, Floor - 2, 1.7)
                .Text("t", right + 26, Floor - 22, feet.Kind.Word())
                .Text("t", right + 44, Floor - 1, facts.Show.Inch ? "N/mm" : "kN/m");
            fields.Add(new("cabinet.feet.stiffness", DrawingTexts.Stiffness, right + 32, Floor - 5, "kN/m", 2));
        }

        if (plan.IsStated)
        {
            var side = (plan.Width - s.Width) / 2;
            pen.Across(false, Left, X0, Floor + 30, Floor + 15, 0)
                .Figure("size", (Left + X0) / 2, Floor + 25, "middle", Plain(side, "standing.beside_m", DrawingTexts.Beside))
                .Across(false, X0 + Width, right, Floor + 30, Floor + 15, 0)
                .Figure("size", (X0 + Width + right) / 2, Floor + 25, "middle", Plain(side, "standing.beside_m", DrawingTexts.Beside))
                .Across(false, Left, right, Floor + 52, Floor + 15, 44)
                .Figure("size", (Left + right) / 2, Floor + 56, "middle", Plain(plan.Width, "brief.spot.width", DrawingTexts.SpotWidth));
        }

        return fields;
    }
}
