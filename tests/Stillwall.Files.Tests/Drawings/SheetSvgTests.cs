using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Stillwall.Appraisals;
using Stillwall.Figures.Sheets;
using Stillwall.Files.Drawings;
using Stillwall.Parts.Drawing;
using Stillwall.Projects;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Drawings;

/// <summary>The demo's sheets, read back from their SVG: what is written beside a dimension is what is drawn.</summary>
public sealed partial class SheetSvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly Lazy<IReadOnlyList<Sheet>> Metric = new(() => SheetSet.Of(new Facts(DemoProject.Project, DemoDrivers.All)));

    private static readonly Lazy<IReadOnlyList<Sheet>> Inches = new(() =>
        SheetSet.Of(new Facts(DemoProject.Project with { DisplayUnits = DisplayUnits.Inch }, DemoDrivers.All))
    );

    private static readonly Lazy<IReadOnlyList<Sheet>> Small = new(() => SheetSet.Of(new Facts(SmallProject, DemoDrivers.All)));

    private static readonly Lazy<IReadOnlyList<Sheet>> Large = new(() => SheetSet.Of(new Facts(LargeProject, DemoDrivers.All)));

    private static readonly Lazy<IReadOnlyList<Sheet>> Asked = new(() => SheetSet.Of(new Facts(AskedProject, DemoDrivers.All)));

    // The demo with what few ask for.
    private static Project AskedProject =>
        DemoProject.Project with
        {
            Cabinet = DemoProject.Project.Cabinet! with { Openings = DemoProject.Project.Cabinet.Openings! with { RecessM = 0.001, DryingHoleM = 0.005 } },
        };

    // A single wall without accents, braces and feet.
    private static Project SmallProject =>
        DemoProject.Project with
        {
            Cabinet = DemoProject.Project.Cabinet! with
            {
                CoreM = 0,
                OuterSkinM = 0.006,
                InnerSkinM = null,
                Braces = 0,
                Accents = null,
                Feet = null,
                Openings = DemoProject.Project.Cabinet.Openings! with { PourM = null },
            },
        };

    // Two drivers one above the other in a cabinet that is split for the printer.
    private static Project LargeProject =>
        DemoProject.Project with
        {
            Cabinet = DemoProject.Project.Cabinet! with
            {
                Outside = new Outside
                {
                    WidthM = 0.300,
                    DepthM = 0.420,
                    HeightM = 0.560,
                    CornerRadiusM = 0.020,
                },
                Braces = 3,
                DriverCount = 2,
            },
        };

    public static TheoryData<string, string> Sheets
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var (set, sheets) in new[] { ("metric", Metric), ("inch", Inches), ("small", Small), ("large", Large), ("asked", Asked) })
            {
                foreach (var sheet in sheets.Value)
                {
                    data.Add(set, sheet.Name);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Every_text_lies_within_the_frame(string set, string name)
    {
        var sheet = SheetOf(set, name);
        var outside = Flat(sheet.Marks).OfType<SheetText>().Where(t => !sheet.Frame.Contains(t.Box)).Select(t => $"{t.Text} {t.Box}");
        Assert.Empty(outside);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void No_text_lies_over_another(string set, string name)
    {
        var texts = Flat(SheetOf(set, name).Marks).OfType<SheetText>().ToList();
        Assert.True(texts.Count > 8);
        var over = texts.SelectMany((t, i) => texts.Skip(i + 1).Where(o => t.Box.Overlaps(o.Box)).Select(o => $"{t.Text} / {o.Text}"));
        Assert.Empty(over);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Nothing_is_drawn_outside_the_frame(string set, string name)
    {
        var sheet = SheetOf(set, name);
        var frame = sheet.Frame;
        Assert.All(
            Flat(sheet.Marks).OfType<SheetPath>().SelectMany(p => p.Lines).SelectMany(l => l),
            p =>
            {
                Assert.InRange(p.XMm, frame.LeftMm - 0.01, frame.RightMm + 0.01);
                Assert.InRange(p.YMm, frame.TopMm - 0.01, frame.BottomMm + 0.01);
            }
        );
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_dimension_line_is_as_long_as_its_figure_says(string set, string name)
    {
        var sheet = SheetOf(set, name);
        foreach (var dimension in Parsed(sheet).Descendants(Svg + "g").Where(g => (string?)g.Attribute("class") == "dimension"))
        {
            // The tips of the two arrows.
            var tips = dimension
                .Elements(Svg + "path")
                .Where(p => (string?)p.Attribute("stroke") is null)
                .Select(p => Points((string)p.Attribute("d")!)[0])
                .ToList();
            Assert.Equal(2, tips.Count);
            var drawn = Math.Sqrt(Math.Pow(tips[1].X - tips[0].X, 2) + Math.Pow(tips[1].Y - tips[0].Y, 2)) / sheet.ScaleRatio;
            Assert.Equal(Millimetres(dimension.Element(Svg + "text")!.Value, set == "inch"), drawn, 0.03 / sheet.ScaleRatio);
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_sheet_is_sound_xml_of_the_stated_size_without_script_or_outside_address(string set, string name)
    {
        var sheet = SheetOf(set, name);
        var (text, root) = (SheetSvg.Of(sheet), Parsed(sheet));
        Assert.Equal(FormattableString.Invariant($"{sheet.WidthMm}mm"), (string?)root.Attribute("width"));
        Assert.Equal(FormattableString.Invariant($"0 0 {sheet.WidthMm} {sheet.HeightMm}"), (string?)root.Attribute("viewBox"));
        Assert.Contains((sheet.WidthMm, sheet.HeightMm), new[] { (297.0, 210.0), (420.0, 297.0) });
        Assert.DoesNotContain(root.Descendants(), e => e.Name.LocalName is "script" or "image" or "use" or "a" or "style" or "foreignObject");
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.Single(AddressPattern().Matches(text));
    }

    [Fact]
    public void The_same_project_gives_the_same_bytes() =>
        Assert.Equal(Small.Value.Select(SheetSvg.Of), SheetSet.Of(new Facts(SmallProject, DemoDrivers.All)).Select(SheetSvg.Of));

    [Fact]
    public void Every_thing_to_print_is_on_one_sheet()
    {
        var facts = new Facts(DemoProject.Project, DemoDrivers.All);
        var printed = PartDrawings
            .Of(facts.PartJob!)
            .Select(p => p.Name);
        Assert.Equal(printed.Order(StringComparer.Ordinal), Metric.Value.SelectMany(s => s.Parts).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_piece_of_a_split_part_is_on_one_sheet()
    {
        var pieces = new Facts(LargeProject, DemoDrivers.All).Parts.Select(p => p.Name).ToList();
        Assert.Contains(pieces, p => p.Contains("piece", StringComparison.Ordinal));
        Assert.Equal(pieces.Order(StringComparer.Ordinal), Large.Value.SelectMany(s => s.Parts).Order(StringComparer.Ordinal));
        Assert.All(Large.Value, s => Assert.DoesNotContain(" of ", s.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void Sheets_are_numbered_through()
    {
        var sheets = Metric.Value;
        for (var i = 0; i < sheets.Count; i++)
        {
            Assert.StartsWith(FormattableString.Invariant($"sheet-{i + 1:00}-"), sheets[i].Name, StringComparison.Ordinal);
            Assert.Contains(TextsOf(sheets[i]), t => t == FormattableString.Invariant($"{i + 1} of {sheets.Count}"));
        }
    }

    [Theory]
    [InlineData("outer-sleeve", 244)] // stated outside width and height
    [InlineData("outer-sleeve", 326)] // 330 less two outer skins of 2
    [InlineData("outer-sleeve", 240)] // 244 less two outer skins of 2
    [InlineData("inner-sleeve", 212)] // 244 less two walls of 2 + 12 + 2
    [InlineData("inner-sleeve", 298)] // 330 less two walls
    [InlineData("front-outer-plate", 14)] // skin and core
    [InlineData("front-inner-plate", 216)] // 244 less two skins and two cores
    [InlineData("test-bar-mould", 160)] // the bar that is tapped
    [InlineData("calibration-strip", 100)]
    public void The_size_that_follows_from_what_is_stated_is_on_the_sheet(string part, double sizeMm) =>
        Assert.Contains(DimensionsOf(Demo(part)), d => Math.Abs(d - sizeMm) < 0.005);

    // From the demo's table: cut-out 186, bolt circle 209, eight bolts M5 whose holes are 1.6 wider; openings as stated.
    [Theory]
    [InlineData("front-outer-plate", "⌀186")]
    [InlineData("front-outer-plate", "8 × ⌀10 on ⌀209,")]
    [InlineData("front-outer-plate", "hole ⌀6.6, 10 deep")]
    [InlineData("front-outer-plate", "R30")]
    [InlineData("rear-outer-plate", "⌀55")]
    [InlineData("rear-outer-plate", "⌀35, to pour")]
    [InlineData("outer-sleeve", "skin 2")]
    [InlineData("outer-sleeve", "3 × groove 4 wide,")]
    [InlineData("trim-ring", "⌀222")]
    [InlineData("template-driver-1", "8 × ⌀6.6 on ⌀209")]
    public void What_a_note_tells_is_what_the_driver_and_the_openings_ask_for(string part, string note) => Assert.Contains(note, TextsOf(Demo(part)));

    // The demo's flange is 222 mm wide, its recess 0.6 mm wider; a hole for an insert is 10 mm deep from the recess's floor.
    [Theory]
    [InlineData("front-outer-plate", "recess ⌀222.6,")]
    [InlineData("front-outer-plate", "1 deep, in the face")]
    [InlineData("front-outer-plate", "hole ⌀6.6, 10 deep")]
    [InlineData("template-driver-1", "recess ⌀222.6, 1 deep")]
    [InlineData("inner-sleeve", "136 × ⌀5, to dry,")]
    public void What_few_ask_for_is_told_on_the_sheets_that_it_is_on(string part, string note) =>
        Assert.Contains(note, TextsOf(Asked.Value.Single(s => s.Name[9..] == part)));

    // In the first 91.25 mm above the sleeve's foot, as counted with the drawing's tests.
    [Fact]
    public void Heights_of_drying_holes_are_measured_in_the_section() =>
        Assert.Contains(DimensionsOf(Asked.Value.Single(s => s.Name[9..] == "inner-sleeve")), d => Math.Abs(d - 91.25) < 0.006);

    [Fact]
    public void The_depth_of_a_recess_is_measured_in_the_section() =>
        Assert.Contains(DimensionsOf(Asked.Value.Single(s => s.Name[9..] == "front-outer-plate")), d => Math.Abs(d - 1) < 0.005);

    [Fact]
    public void Accent_grooves_stand_in_the_stated_ratio()
    {
        var places = DimensionsOf(Demo("outer-sleeve")).ToList();
        var unit = (326 - 3 * 4.0) / (1 + 1.4 + 1.96 + 2.744);
        Assert.Contains(places, d => Math.Abs(d - unit) < 0.006);
        Assert.Contains(places, d => Math.Abs(d - 1.4 * unit - 4) < 0.006);
        Assert.Contains(places, d => Math.Abs(d - 1.96 * unit - 4) < 0.006);
    }

    [Fact]
    public void The_check_line_of_a_template_is_100_mm_of_paper()
    {
        var templates = Metric.Value.Where(s => s.Name.Contains("template", StringComparison.Ordinal)).ToList();
        Assert.Equal(3, templates.Count);
        Assert.All(
            templates,
            sheet =>
            {
                var line = Points((string)GroupsOf(sheet, "check-line").Single().Elements(Svg + "path").First().Attribute("d")!);
                Assert.Equal(100, line[1].X - line[0].X, 9);
                Assert.Equal(line[0].Y, line[1].Y);
            }
        );
    }

    [Fact]
    public void Bolts_on_the_template_lie_on_the_bolt_circle_at_equal_angles()
    {
        // Both halves, the lower one laid under the upper one by their alignment crosses.
        var (upper, lower) = (Demo("template-driver-1"), Demo("template-driver-2"));
        var (a, b) = (Crosses(upper, "alignment"), Crosses(lower, "alignment"));
        Assert.Equal(2, a.Count);
        Assert.Equal(b[1].X - b[0].X, a[1].X - a[0].X, 0.011);
        var (dx, dy) = (a[0].X - b[0].X, a[0].Y - b[0].Y);
        var centres = Crosses(upper, "centre").Concat(Crosses(lower, "centre").Select(p => (X: p.X + dx, Y: p.Y + dy))).ToList();
        var middle = centres[0];
        var bolts = centres.Where(p => Distance(p, middle) > 20).OrderBy(p => Math.Atan2(p.Y - middle.Y, p.X - middle.X)).ToList();
        Assert.Equal(8, bolts.Count);
        Assert.All(bolts, p => Assert.Equal(104.5, Distance(p, middle), 0.02));
        Assert.All(bolts.Zip(bolts.Skip(1)), p => Assert.Equal(2 * 104.5 * Math.Sin(Math.PI / 8), Distance(p.First, p.Second), 0.03));
    }

    [Fact]
    public void Inches_stand_first_where_the_project_asks_for_them()
    {
        var texts = TextsOf(Inches.Value.Single(s => s.Name.EndsWith("outer-sleeve", StringComparison.Ordinal)));
        Assert.Contains("9.606 [244]", texts);
        Assert.Contains("Dimensions in inches, millimetres in brackets", texts);
    }

    [Fact]
    public void A_cabinet_that_is_not_drawn_has_no_sheets() =>
        Assert.Empty(SheetSet.Of(new Facts(DemoProject.Project with { Cabinet = null }, DemoDrivers.All)));

    [Fact]
    public void The_sheet_of_a_spacer_gauge_is_as_expected()
    {
        var svg = SheetSvg.Of(Demo("spacer-gauge"));
        var file = Path.Combine(Path.GetDirectoryName(TestData.Demo("stillwall.json"))!, "..", "..", "tests", "data", "sheets", "spacer-gauge.svg");
        if (Environment.GetEnvironmentVariable("STILLWALL_WRITE_EXPECTED") == "1")
        {
            File.WriteAllText(file, svg);
        }

        Assert.Equal(File.ReadAllText(file), svg);
    }

    private static Sheet SheetOf(string set, string name) =>
        (
            set switch
            {
                "metric" => Metric,
                "inch" => Inches,
                "small" => Small,
                "asked" => Asked,
                _ => Large,
            }
        ).Value.Single(s => s.Name == name);

    private static Sheet Demo(string part) => Metric.Value.Single(s => s.Name[9..] == part);

    private static XElement Parsed(Sheet sheet) => XDocument.Parse(SheetSvg.Of(sheet)).Root!;

    private static IEnumerable<XElement> GroupsOf(Sheet sheet, string kind) =>
        Parsed(sheet).Descendants(Svg + "g").Where(g => (string?)g.Attribute("class") == kind);

    private static List<string> TextsOf(Sheet sheet) => [.. Parsed(sheet).Descendants(Svg + "text").Select(t => t.Value)];

    private static IEnumerable<double> DimensionsOf(Sheet sheet) =>
        GroupsOf(sheet, "dimension").Select(g => Millimetres(g.Element(Svg + "text")!.Value, false));

    private static List<(double X, double Y)> Crosses(Sheet sheet, string kind) =>
        [
            .. GroupsOf(sheet, kind)
                .Select(g => Points((string)g.Element(Svg + "path")!.Attribute("d")!))
                .Where(p => p.Count == 4)
                .Select(p => ((p[0].X + p[1].X) / 2, p[0].Y)),
        ];

    private static double Distance((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));

    private static double Millimetres(string text, bool inBrackets) =>
        double.Parse(FigurePattern().Match(inBrackets ? text[text.IndexOf('[', StringComparison.Ordinal)..] : text).Value, CultureInfo.InvariantCulture);

    private static List<(double X, double Y)> Points(string path)
    {
        var figures = FigurePattern().Matches(path).Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture)).Chunk(2);
        return [.. figures.Select(f => (f[0], f[1]))];
    }

    [GeneratedRegex(@"-?[0-9]+(\.[0-9]+)?")]
    private static partial Regex FigurePattern();

    // The name of the format itself is the only one.
    [GeneratedRegex("[a-z]+://")]
    private static partial Regex AddressPattern();

    private static IEnumerable<SheetMark> Flat(IEnumerable<SheetMark> marks) => marks.SelectMany(m => m is SheetGroup group ? Flat(group.Marks) : [m]);
}
