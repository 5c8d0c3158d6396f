using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Stillwall.Web.Tests.Browser;

/// <summary>Pictures of every stage, for people to look at, and what axe-core 4.14 finds there (rules after WCAG 2.2 AA).</summary>
public sealed class PictureTests(Chromium chromium) : BrowserTest(chromium)
{
    private static readonly string[] Stages =
    [
        "brief",
        "driver",
        "cabinet",
        "walls",
        "parts",
        "pour",
        "supplies",
        "quiet",
        "proof",
        "logbook",
        "projects",
        "pour/bench",
    ];

    [Theory]
    [InlineData("desktop", 1440, 900)]
    [InlineData("phone", 390, 844)]
    public async Task Every_stage_is_drawn_in_ink_and_in_chalk_none_is_wider_than_the_window_and_none_has_a_serious_finding(string name, int width, int height)
    {
        var page = await Open("/", width, height);
        var found = new List<string>();
        foreach (var stage in Stages)
        {
            await Go(page, stage);
            await page.EvaluateAsync("document.fonts.ready.then(() => true)");
            if (stage == "parts")
            {
                await page.WaitForSelectorAsync("canvas[data-parts]");
            }

            foreach (var scheme in width < 1000 ? [ColorScheme.Light, ColorScheme.Dark] : new[] { ColorScheme.Dark, ColorScheme.Light })
            {
                await page.EmulateMediaAsync(new PageEmulateMediaOptions { ColorScheme = scheme });
                await Chromium.Frames(page, 2);
                var file = $"{stage.Replace('/', '-')}-{name}-{scheme.ToString().ToLowerInvariant()}";
                await page.ScreenshotAsync(new PageScreenshotOptions { Path = Picture(file), FullPage = width < 1000 });
            }

            Assert.True(
                await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"),
                $"{stage} is wider than the window of {width} px"
            );
            found.AddRange(Serious(stage, await page.RunAxe(new AxeRunOptions { ResultTypes = [ResultType.Violations] })));
        }

        Assert.True(found.Count == 0, string.Join("\n", found));
    }

    [Theory]
    [InlineData(360)]
    [InlineData(820)]
    [InlineData(1180)]
    [InlineData(1920)]
    [InlineData(2560)]
    public async Task The_cabinet_fits_windows_from_a_small_telephone_to_a_large_screen(int width)
    {
        var page = await Open("cabinet", width, width < 900 ? 800 : width * 9 / 16);
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        await Chromium.Frames(page, 2);
        await page.ScreenshotAsync(new PageScreenshotOptions { Path = Picture($"cabinet-{width}") });
    }

    private static IEnumerable<string> Serious(string stage, AxeResult result) =>
        result
            .Violations.Where(v => v.Impact is "serious" or "critical")
            .Select(v => $"{stage}: {v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}");
}
