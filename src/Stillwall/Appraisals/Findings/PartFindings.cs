using Stillwall.Parts;
using Stillwall.Parts.Kinds;
using static Stillwall.Appraisals.Findings.Judgement;
using Stillwall.Shapes;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the printed parts.</summary>
internal static class PartFindings
{
    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new(
            "Parts",
            "every part fits the printer",
            "geometry: size and edge margin on all four sides against the build space",
            new("part-size"),
            Fit,
            [
                new Lever("cabinet.outside.width", Toward.Less, 0.001, "width {new} instead of {old}"),
                new Lever("cabinet.outside.height", Toward.Less, 0.001, "height {new} instead of {old}"),
                new Lever("cabinet.outside.width+cabinet.outside.height", Toward.Capped, 0.001, "width and height at most {new} instead of {old}"),
            ]
        ),
        new(
            "Parts",
            "thin walls stand while printing",
            "common practice, no source",
            new("slenderness"),
            Slender,
            [
                new Lever("cabinet.outer_skin+cabinet.inner_skin", Toward.More, 0.0001, "skins of {new} instead of {old}"),
                new Lever("cabinet.strut_pitch", Toward.Less, 0.001, "struts every {new} instead of {old}"),
            ]
        ),
        new(
            "Parts",
            "bridges and overhangs",
            "geometry of the drawn sections, sleeves on end and plates flat; common practice, no source",
            new("over-air"),
            Bridges,
            [
                new Lever(
                    "cabinet.openings.recess",
                    Toward.Less,
                    0.0001,
                    "a recess of {new} instead of {old}; or print its floor on support and state the longest bridge you printed well (limits.bridge)"
                ),
                new Lever("cabinet.core", Toward.Less, 0.0005, "core {new} instead of {old}"),
                new Lever("cabinet.outer_skin+cabinet.inner_skin", Toward.More, 0.0001, "skins of {new} instead of {old}"),
            ]
        ),
        new(
            "Parts",
            "pieces go together",
            "clearance of 0.3 mm + 0.1 % of the length, common practice, no source; half of the plastic's shrinkage (from memory) counts as uneven, our choice",
            new("joint-clearance"),
            Together,
            new Lever("cabinet.outside.width+cabinet.outside.height", Toward.Capped, 0.001, "width and height at most {new} instead of {old}")
        ),
        new(
            "Parts",
            "filament in stock",
            "mass of all parts with the stated waste against the shelf",
            new("filament-to-have", ["print.filament_to_have_kg"], ["supplies[\"filament\"].in_stock"]),
            Filament
        ),
        new(
            "Parts",
            "longest single print",
            "volume over flow and a pause a layer is a floor; 1.5 to 1.8 times is real (from memory); advice",
            new("print-time", "print.longest_print_seconds"),
            Longest
        ),
    ];

    private static Judgement Fit(Facts f)
    {
        if (f.Parts.Count == 0)
        {
            return Unknown("m", "cabinet.outside");
        }

        if (
            f
                .Parts.Select(p => (Part: p, Margin: PrinterFit.MarginM(p.SizeM, f.Project.Brief.Printer)))
                .Where(p => p.Margin is not null)
                .OrderBy(p => p.Margin)
                .FirstOrDefault()
            is not { Margin: { } margin } worst
        )
        {
            return Unknown(
                "m",
                f.Project.Brief.Printer switch
                {
                    null => "brief.printer",
                    { BuildWidthM: null } => "brief.printer.build_width",
                    { BuildDepthM: null } => "brief.printer.build_depth",
                    _ => "brief.printer.build_height",
                }
            );
        }

        var printer = f.Project.Brief.Printer!;
        var (x, y, z) = (printer.BuildWidthM!.Value, printer.BuildDepthM!.Value, printer.BuildHeightM!.Value);
        var size = worst.Part.SizeM;
        var room = new[] { (size[0] + 2 * printer.EdgeMarginM, x), (size[1] + 2 * printer.EdgeMarginM, y), (size[2], z) }.MinBy(s => s.Item2 - s.Item1);
        var verdict =
            margin < 0 ? Verdict.Fails
            : margin < 0.005 ? Verdict.Tight
            : Verdict.Holds;
        return new Judgement(
            verdict,
            room.Item1,
            room.Item2,
            "m",
            margin,
            $"the {worst.Part.Name} takes {f.Show.Length(room.Item1)} with its edge margin; the printer has {f.Show.Length(room.Item2)}"
        );
    }

    private static Judgement Slender(Facts f)
    {
        if (f.Geometry is not { } g)
        {
            return Unknown("1", "cabinet.outside");
        }

        var tallest = f.Parts.Where(p => p.Kind is Sleeve).Max(p => p.SizeM[2]).InMillimetres();
        var thin = g.Sizes.Core <= 0 ? g.Sizes.Wall : Math.Min(g.Sizes.OuterSkin, g.Sizes.InnerSkin);
        var span = g.Sizes.Core <= 0 ? Math.Max(g.Sizes.Width, g.Sizes.Height) : g.ClearBayM.InMillimetres();
        var byHeight = tallest / thin / f.Limits.WallHeightRatio >= span / thin / f.Limits.SpanRatio;
        var (value, limit) = byHeight ? (tallest / thin, f.Limits.WallHeightRatio) : (span / thin, f.Limits.SpanRatio);
        return AtMost(
            value,
            limit,
            "1",
            Nearness.Tenth,
            byHeight
                ? $"the tallest skin is {f.Show.Length(tallest.InMetres())} high and {f.Show.Length(thin.InMetres())} thick: {Show.Number(value)} "
                    + $"times its thickness; up to {Show.Number(limit)} it stands while it is printed"
                : $"the skin spans {f.Show.Length(span.InMetres())} between struts and is {f.Show.Length(thin.InMetres())} thick: {Show.Number(value)} "
                    + $"times its thickness; up to {Show.Number(limit)} it stays flat"
        );
    }

    private static Judgement Bridges(Facts f)
    {
        if (f.Geometry is not { } g)
        {
            return Unknown("m", "cabinet.outside");
        }

        var places = OverAir.Of(g, Accents(f));
        var bridge = places.Where(p => p.SpanM is not null).MaxBy(p => p.SpanM);
        var slope = places.Where(p => p.AngleDeg is not null).MaxBy(p => p.AngleDeg);
        var spans = bridge is { SpanM: { } span }
            ? AtMost(
                span,
                f.Limits.BridgeM,
                "m",
                Nearness.Tenth,
                $"{bridge.What}, counted as a bridge of {f.Show.Length(span)}: up to {f.Show.Length(f.Limits.BridgeM)} prints cleanly"
            )
            : AtMost(0, f.Limits.BridgeM, "m", Nearness.Tenth, "nothing is printed over air");
        if (slope is not { AngleDeg: { } angle })
        {
            return spans;
        }

        // A drawn angle is exact: at its limit it holds.
        var leans = AtMost(
            angle,
            f.Limits.OverhangDeg,
            "deg",
            Nearness.Count,
            $"the {slope.What} lean {Show.Number(angle)}° from the upright, up to {Show.Number(f.Limits.OverhangDeg)}° prints without support"
        ) with
        {
            Remedy =
                angle > f.Limits.OverhangDeg
                    ? $"print the sleeves with support under the {slope.What}, or try {Show.Number(angle)}° on the wall coupon and state it (limits.overhang)"
                    : null,
        };
        return leans.Verdict > spans.Verdict || (leans.Verdict == spans.Verdict && bridge is null)
            ? leans
            : spans with
            {
                Because = $"{spans.Because}; {leans.Because}",
            };
    }

    private static Judgement Together(Facts f)
    {
        if (f.Geometry is not { } g)
        {
            return Unknown("m", "cabinet.outside");
        }

        if (f.Skin is not { } skin)
        {
            return Unknown("m", "materials.skin");
        }

        if (JointClearance.Of(g, Accents(f), skin.ShrinkageRatio) is not [var worst, ..])
        {
            return new Judgement(Verdict.Holds, null, 0, "m", null, "no piece goes into another");
        }

        var near = worst.ClearanceM / 10;
        return new Judgement(
            worst.SpareM < 0 ? Verdict.Fails
                : worst.SpareM < near ? Verdict.Tight
                : Verdict.Holds,
            worst.SpareM,
            0,
            "m",
            worst.SpareM,
            $"{worst.What}: {f.Show.Length(worst.ClearanceM)} of clearance over {f.Show.Length(worst.LengthM)}; uneven shrinkage of "
                + $"{skin.Name.ToUpperInvariant()} may take {f.Show.Length(worst.UnevenM)} of it"
        )
        {
            Remedy = worst.SpareM < 0 ? $"print the calibration strip first and the inner piece {f.Show.Length(-worst.SpareM)} smaller" : null,
        };
    }

    private static int Accents(Facts f) => f.Project.Cabinet?.Accents?.Rings ?? 0;

    private static Judgement Filament(Facts f)
    {
        if (f.Print.FilamentToHaveKg is not { } needed)
        {
            return Unknown("kg", f.Geometry is null ? "cabinet.outside" : "materials.skin");
        }

        return f.InStock("filament") is not { } have
            ? Unknown("kg", "stock")
            : AtMost(needed, have, "kg", Nearness.Tenth, $"the parts take {f.Show.Mass(needed)} with waste; {f.Show.Mass(have)} is on the shelf") with
            {
                Remedy = have < needed ? $"buy {f.Show.Mass(needed - have)} of filament" : null,
            };
    }

    private static Judgement Longest(Facts f)
    {
        if (f.Print.LongestPrintSeconds is not { } seconds)
        {
            return Unknown("s", f.Geometry is null ? "cabinet.outside" : "brief.printer.flow_mm3_s");
        }

        var longest = f.Parts.MaxBy(p => p.PrintSeconds)!;
        return AtMost(
                seconds,
                f.Limits.LongestPrintS,
                "s",
                Nearness.Tenth,
                $"the {longest.Name} takes at least {Show.Time(seconds)}, more likely {Show.Time(PartList.LeastTimes * seconds)} "
                    + $"to {Show.Time(PartList.MostTimes * seconds)}"
            )
            .AsAdvice();
    }
}
