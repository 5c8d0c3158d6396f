using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Stillwall.Web.Tests.Browser;

/// <summary>The chart on the cabinet's page: that it is painted, and that what is read off it is right.</summary>
public sealed partial class ChartInBrowserTests(Chromium chromium) : BrowserTest(chromium)
{
    // Counts the pixels that are not paper.
    private const string Painted =
        "c => { const d = c.getContext('2d').getImageData(0, 0, c.width, c.height).data; let n = 0; for (let i = 3; i < d.length; i += 4) n += d[i] > 0; "
        + "return n; }";

    [Fact]
    public async Task The_cross_hair_reads_the_level_of_the_closed_form()
    {
        var page = await Cabinet();
        var box = Demo.Facts.Box;
        await Reads(page, 41.2, 0.01);
        foreach (var key in new[] { "", "ArrowLeft", "Shift+ArrowRight", "End", "Home" })
        {
            if (key.Length > 0)
            {
                var before = await Value(page);
                await page.Locator(".hair-pt").PressAsync(key);
                await Chromium.Until(async () => await Value(page) != before, $"{key} does not move the cross-hair");
            }

            var (frequency, text) = (await Value(page), await page.Locator(".hair-pt").GetAttributeAsync("aria-valuetext"));
            var read = double.Parse(Level().Match(text!).Groups[1].Value.Replace('\u2212', '-'), CultureInfo.InvariantCulture);
            // The second-order high-pass of a closed box: Small 1972, JAES 20(10) (from memory). Read to 0.1 dB between points 2 % apart.
            var x = frequency / box.SystemResonanceHz!.Value;
            var expected = 20 * Math.Log10(x * x / Math.Sqrt(Math.Pow(1 - (x * x), 2) + Math.Pow(x / box.SystemQ!.Value, 2)));
            Assert.True(Math.Abs(expected - read) < 0.06, $"{text} at {frequency} Hz, {expected:0.000} dB");
        }
    }

    [Fact]
    public async Task Arrows_go_a_hundred_and_twentieth_of_a_decade_and_ten_times_as_far_with_shift()
    {
        var page = await Cabinet();
        var before = await Value(page);
        await page.Locator(".hair-pt").PressAsync("ArrowRight");
        await Reads(page, before * Math.Pow(10, 1 / 120.0), 0.02);
        await page.Locator(".hair-pt").PressAsync("Shift+ArrowLeft");
        await Reads(page, before * Math.Pow(10, -9 / 120.0), 0.02);
    }

    [Fact]
    public async Task Every_question_paints_its_lines_and_a_line_that_is_switched_off_is_gone()
    {
        var page = await Cabinet();
        foreach (var title in new[] { "How loud?", "How far does the cone move?", "What does the amplifier feel?", "How low?" })
        {
            await page.ClickAsync($"text={title}");
            await Chromium.Until(async () => await Pixels(page) > 3000, title);
        }

        var (all, earlier) = (0, -1);
        await Chromium.Until(
            async () =>
            {
                await Chromium.Frames(page, 12);
                (earlier, all) = (all, await Pixels(page));
                return all == earlier;
            },
            "the chart is not at rest"
        );
        await page.ClickAsync(".qmore");
        await page.ClickAsync(".qsheet:popover-open >> text=band of doubt");
        await Chromium.Until(async () => await Pixels(page) is > 2000 and var left && left < all - 500, "the band is painted still");
    }

    [Fact]
    public async Task The_pointer_moves_the_cross_hair_and_leaves_it_at_rest_where_it_was()
    {
        var page = await Cabinet();
        var rest = await Value(page);
        var plot = (await page.Locator(".qplot .u-over").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(plot.X + (plot.Width / 2), plot.Y + (plot.Height / 2));
        // The middle of 10 to 500 Hz on a logarithmic axis.
        await Reads(page, Math.Sqrt(10 * 500), 0.5);
        await page.Mouse.MoveAsync(plot.X + (plot.Width / 2), plot.Y - 60);
        await Reads(page, rest, 0.01);
    }

    [Fact]
    public async Task The_cross_hair_goes_from_driver_to_driver_and_says_each_ones_name_price_and_level()
    {
        var page = await Open("/driver");
        await page.WaitForSelectorAsync(".hair-pt[aria-valuetext]");
        var point = page.Locator(".hair-pt");
        await point.PressAsync("Home");
        var ranked = Shown
            .Workshop.Current()
            .Project!.Now.Plan.Ranked.Drivers.Where(d => d is { Price: > 0, MaxSplAtLowestDb: not null })
            .OrderBy(d => d.Price)
            .ToList();
        Assert.True(ranked.Count > 20);
        foreach (var driver in ranked.Take(3))
        {
            await Assertions
                .Expect(point)
                .ToHaveAttributeAsync(
                    "aria-valuetext",
                    new Regex(
                        $"^{Regex.Escape(driver.Name)}, .*, {Regex.Escape(driver.MaxSplAtLowestDb!.Value.ToString("0.0", CultureInfo.InvariantCulture))} dB"
                    )
                );
            await point.PressAsync("ArrowRight");
        }
    }

    private async Task<IPage> Cabinet()
    {
        var page = await Open("/cabinet");
        await page.WaitForSelectorAsync(".hair-pt[aria-valuetext]");
        return page;
    }

    private static async Task<double> Value(IPage page) =>
        double.Parse((await page.Locator(".hair-pt").GetAttributeAsync("aria-valuenow"))!, CultureInfo.InvariantCulture);

    private static Task Reads(IPage page, double expected, double within) =>
        Chromium.Until(async () => Math.Abs(await Value(page) - expected) <= within, $"the cross-hair does not come to {expected}");

    private static Task<int> Pixels(IPage page) => page.Locator(".qplot canvas").EvaluateAsync<int>(Painted);

    [GeneratedRegex(@", ([\u22120-9.]+) dB")]
    private static partial Regex Level();
}
