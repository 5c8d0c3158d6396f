using Stillwall.Appraisals;
using Stillwall.Appraisals.Ranking;
using Stillwall.Figures;
using Stillwall.Figures.Sheets;
using Stillwall.Files.Charts;
using Stillwall.Files.Drawings;
using Stillwall.Tests.Appraisals;

namespace Stillwall.Files.Tests.Charts;

/// <summary>The demo's pictures in the documentation, held to the bytes. STILLWALL_WRITE_EXPECTED=1 writes them anew.</summary>
public sealed class ExpectedPictureTests
{
    private static readonly Lazy<IReadOnlyList<Chart>> Demo = new(() => ResponseCharts.All(new Facts(DemoProject.Project, DemoDrivers.All)));

    [Theory]
    [InlineData("how-low")]
    [InlineData("how-loud")]
    [InlineData("how-far")]
    [InlineData("what-the-amplifier-feels")]
    [InlineData("neighbour")]
    public void The_demo_draws_the_expected_picture(string name)
    {
        var svg = ChartPicture.Svg(Demo.Value.Single(c => c.Name == name));
        var file = Path.Combine(Pictures, name + ".svg");
        if (Environment.GetEnvironmentVariable("STILLWALL_WRITE_EXPECTED") == "1")
        {
            File.WriteAllText(file, svg);
        }

        Assert.Equal(File.ReadAllText(file), svg);
    }

    [Theory]
    [InlineData("how-quiet-are-the-walls")]
    [InlineData("how-warm")]
    public void The_demos_walls_and_their_warmth_are_the_expected_pictures(string name)
    {
        var facts = new Facts(DemoProject.Project, DemoDrivers.All);
        var svg = ChartPicture.Svg((name == "how-warm" ? WarmthChart.Of(facts) : WallSoundChart.Of(facts))!);
        var file = Path.Combine(Pictures, name + ".svg");
        if (Environment.GetEnvironmentVariable("STILLWALL_WRITE_EXPECTED") == "1")
        {
            File.WriteAllText(file, svg);
        }

        Assert.Equal(File.ReadAllText(file), svg);
    }

    [Fact]
    public void The_picture_shown_in_the_documentation_is_small_and_of_the_stated_size()
    {
        var file = Path.Combine(Pictures, "how-low.png");
        if (Environment.GetEnvironmentVariable("STILLWALL_WRITE_EXPECTED") == "1")
        {
            File.WriteAllBytes(file, ChartPicture.Png(Demo.Value[0]));
        }

        var png = File.ReadAllBytes(file);
        Assert.InRange(png.Length, 5000, 80000);
        Assert.Equal((ChartPicture.WidthPx, ChartPicture.HeightPx), PngFile.Size(png));
    }

    [Fact]
    public void The_demos_drivers_by_price_and_level_are_the_expected_picture()
    {
        var ranked = Ranking.Of(DemoProject.Project, DemoDrivers.All).Drivers;
        var chart = BestBuyChart.Of(ranked, Show.Of(DemoProject.Project))!;
        var (svg, png) = (Path.Combine(Pictures, chart.Name + ".svg"), Path.Combine(Pictures, chart.Name + ".png"));
        if (Environment.GetEnvironmentVariable("STILLWALL_WRITE_EXPECTED") == "1")
        {
            File.WriteAllText(svg, ChartPicture.Svg(chart));
            File.WriteAllBytes(png, ChartPicture.Png(chart));
        }

        Assert.Equal(File.ReadAllText(svg), ChartPicture.Svg(chart));
        Assert.Equal((ChartPicture.WidthPx, ChartPicture.HeightPx), PngFile.Size(File.ReadAllBytes(png)));
    }

    [Fact]
    public void The_demos_parts_exploded_are_the_expected_picture()
    {
        var svg = SheetSvg.Of(SheetSet.Of(new Facts(DemoProject.Project, DemoDrivers.All)).Single(s => s.Name.EndsWith("exploded", StringComparison.Ordinal)));
        var file = Path.Combine(Pictures, "parts-exploded.svg");
        if (Environment.GetEnvironmentVariable("STILLWALL_WRITE_EXPECTED") == "1")
        {
            File.WriteAllText(file, svg);
        }

        Assert.Equal(File.ReadAllText(file), svg);
    }

    private static string Pictures => Path.Combine(Path.GetDirectoryName(TestData.Demo("stillwall.json"))!, "..", "..", "docs", "pictures");
}
