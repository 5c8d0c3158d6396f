using System.Globalization;
using System.Xml.Linq;
using Stillwall.Appraisals;
using Stillwall.Figures;
using Stillwall.Files.Charts;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Charts;

public sealed class ChartPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly Lazy<IReadOnlyList<Chart>> Demo = new(() => ResponseCharts.All(new Facts(DemoProject.Project, DemoDrivers.All)));

    // A chart whose places on the picture can be worked out by hand.
    private static Chart Plain =>
        new(
            "plain",
            "A < B & \"C\"?",
            "Half way up.",
            "box.f10_hz",
            new ChartAxis("across", "Hz", true, 10, 1000, [10, 100, 1000]),
            new ChartAxis("up", "dB", false, 0, 10, [0, 5, 10]),
            [new ChartSeries("line", StyleRole.Main, SeriesShape.Line, [new(10, 0), new(1000, 10)])],
            [new ChartLimit("too much", [new(10, 8), new(1000, 8)], [new(10, 8), new(1000, 8), new(1000, 10), new(10, 10)])],
            [new ChartLandmark(new(100, 5), "middle")],
            [],
            new ChartTable(["x", "y"], [])
        );

    [Fact]
    public void The_same_chart_gives_the_same_bytes_whatever_the_culture()
    {
        NeedsFont();
        var first = (ChartPicture.Svg(Demo.Value), ChartPicture.Png(Demo.Value[0]));
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(first.Item1, ChartPicture.Svg(ResponseCharts.All(new Facts(DemoProject.Project, DemoDrivers.All))));
            Assert.Equal(first.Item2, ChartPicture.Png(Demo.Value[0]));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    [Fact]
    public void An_svg_is_well_formed_and_carries_its_question_and_answer_for_those_who_do_not_see_it()
    {
        var root = XDocument.Parse(ChartPicture.Svg(Plain)).Root!;
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.Equal("A < B & \"C\"?", root.Element(Svg + "title")!.Value);
        Assert.Equal("Half way up.", root.Element(Svg + "desc")!.Value);
    }

    [Fact]
    public void An_svg_holds_no_script_no_identity_and_nothing_from_elsewhere()
    {
        foreach (var element in XDocument.Parse(ChartPicture.Svg(Demo.Value)).Descendants())
        {
            Assert.Contains(element.Name.LocalName, (string[])["svg", "title", "desc", "path", "circle", "text"]);
            Assert.DoesNotContain(element.Attributes(), a => a.Name.LocalName is "id" or "href" or "style");
        }
    }

    [Fact]
    public void A_point_in_the_middle_of_both_axes_stands_in_the_middle_of_the_plot()
    {
        // 100 Hz is half way from 10 Hz to 1 kHz on a logarithmic axis, 5 dB half way from 0 to 10 dB on a linear one.
        var root = XDocument.Parse(ChartPicture.Svg(Plain)).Root!;
        var point = root.Elements(Svg + "circle").Single();
        double Tick(string text, string place) =>
            Number(root.Elements(Svg + "text").First(t => t.Value == text && t.Attribute("text-anchor")?.Value == (place == "x" ? "middle" : "end")), place);
        Assert.Equal((Tick("10", "x") + Tick("1000", "x")) / 2, Number(point, "cx"), 0.02);
        Assert.Equal(Tick("5", "y") - 4, Number(point, "cy"), 0.02);
    }

    [Fact]
    public void A_limit_is_hatched_past_its_edge_and_no_deeper_than_twelve_pixels()
    {
        var root = XDocument.Parse(ChartPicture.Svg(Plain)).Root!;
        double Height(string text) => Number(root.Elements(Svg + "text").First(t => t.Value == text && t.Attribute("text-anchor")?.Value == "end"), "y") - 4;
        var edge = Height("0") + (0.8 * (Height("10") - Height("0")));
        var hatch = root.Elements(Svg + "path").Single(p => p.Attribute("stroke-width")?.Value == "0.8").Attribute("d")!.Value;
        var heights = hatch.Split('M', 'L').Where(p => p.Length > 0).Select(p => double.Parse(p.Split(' ')[1], CultureInfo.InvariantCulture)).ToList();
        Assert.True(heights.Count > 100);
        Assert.InRange(heights.Min(), edge - 12.01, edge - 10.5);
        Assert.InRange(heights.Max(), edge - 1, edge + 0.01);
    }

    [Theory]
    [InlineData(400, 300)]
    [InlineData(640, 420)]
    [InlineData(900, 520)]
    public void No_label_leaves_the_picture_and_none_covers_another(int width, int height)
    {
        foreach (var chart in Demo.Value)
        {
            var boxes = XDocument.Parse(ChartPicture.Svg(chart, null, width, height)).Descendants(Svg + "text").Select(Box).ToList();
            Assert.All(
                boxes,
                b =>
                    Assert.True(
                        b.Left >= 4 && b.Right <= width - 4 && b.Top > 4 && b.Bottom < height - 4,
                        $"{chart.Name}: \"{b.Text}\" leaves the picture of {width} × {height}"
                    )
            );
            if (width < 900)
            {
                continue;
            }

            foreach (var (a, i) in boxes.Select((b, i) => (b, i)))
            {
                Assert.DoesNotContain(boxes.Skip(i + 1), b => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom);
            }
        }
    }

    [Fact]
    public void A_png_has_the_size_asked_for_and_the_sheet_of_its_theme()
    {
        NeedsFont();
        Assert.Equal((640, 420), PngFile.Size(ChartPicture.Png(Plain, 640, 420)));
        Assert.Equal((1280, 840), PngFile.Size(ChartPicture.Png(Plain, 640, 420, scale: 2)));
        Assert.Equal(0xFBFAF6, PngFile.Pixels(ChartPicture.Png(Plain))[2, 2]);
        Assert.Equal(0x1D2327, PngFile.Pixels(ChartPicture.Png(Plain, theme: ChartTheme.Dark))[2, 2]);
    }

    [Fact]
    public void A_png_has_its_words_in_ink()
    {
        NeedsFont();
        // Title: the strip beside the frame holds ink only if letters are painted; the same strip of a chart without a title holds none.
        static int Ink(Chart chart)
        {
            var pixels = PngFile.Pixels(ChartPicture.Png(chart));
            return Enumerable.Range(20, 24).Sum(y => Enumerable.Range(20, 200).Count(x => pixels[y, x] == 0x23282B));
        }

        Assert.True(Ink(Plain) > 100);
        Assert.Equal(0, Ink(Plain with { Title = "" }));
    }

    [Fact]
    public void Ink_on_its_sheet_has_a_contrast_of_four_and_a_half_to_one_or_more()
    {
        // WCAG 2.2, success criterion 1.4.3, with its definition of relative luminance.
        foreach (var theme in new[] { ChartTheme.Light, ChartTheme.Dark })
        {
            Assert.All(
                [theme.Ink, theme.SecondInk, theme.Pencil, theme.Holds, theme.Tight, theme.Fails, theme.Unknown],
                c => Assert.True(Contrast(c, theme.Sheet) >= 4.5, $"{c} on {theme.Sheet}")
            );
        }
    }

    [Theory]
    [InlineData(399, 520)]
    [InlineData(900, 4001)]
    public void A_size_out_of_range_throws(int width, int height) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ChartPicture.Svg(Plain, null, width, height));

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    // About half an em for each letter: what a plain sans needs at least.
    private static (string Text, double Left, double Top, double Right, double Bottom) Box(XElement text)
    {
        var (x, y, size) = (Number(text, "x"), Number(text, "y"), Number(text, "font-size"));
        var width = 0.5 * size * text.Value.Length;
        var left = text.Attribute("text-anchor")?.Value switch
        {
            "middle" => x - (width / 2),
            "end" => x - width,
            _ => x,
        };
        return (text.Value, left, y - (0.7 * size), left + width, y + (0.2 * size));
    }

    private static double Contrast(string a, string b)
    {
        var (one, other) = (Luminance(a), Luminance(b));
        return (Math.Max(one, other) + 0.05) / (Math.Min(one, other) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Channel(int at) =>
            Convert.ToInt32(colour.Substring(at, 2), 16) / 255.0 is var c && c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }

    // On a build server the font is there, or the picture fails.
    private static void NeedsFont() =>
        Assert.SkipWhen(
            !ChartPicture.HasFont && Environment.GetEnvironmentVariable("CI") != "true",
            "there is no sans font on this machine (DejaVu, Liberation, Noto, Arial)"
        );
}
