using Microsoft.Playwright;

namespace Stillwall.Web.Tests.Browser;

/// <summary>Pictures of every stage, for people to look at.</summary>
public sealed class PictureTests(Chromium chromium) : IClassFixture<Chromium>
{
    private static readonly string[] Stages = ["brief", "driver", "cabinet", "walls", "parts", "pour", "supplies", "quiet", "proof", "logbook", "projects"];

    public static TheoryData<string, int, int, bool> Sizes => new() { { "desktop-light", 1440, 900, false }, { "desktop-dark", 1440, 900, true }, { "phone-light", 390, 844, false }, { "phone-dark", 390, 844, true } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public async Task Every_stage_is_drawn_and_none_is_wider_than_the_window(string name, int width, int height, bool isDark)
    {
        var page = await chromium.Open("/", width, height, isDark);
        var folder = Directory.CreateDirectory(Path.Combine(Source.Root, "artifacts", "pages")).FullName;
        foreach (var stage in Stages)
        {
            await page.GotoAsync(new Uri(chromium.Page.Address, stage).ToString());
            await Chromium.Live(page);
            await page.EvaluateAsync("document.fonts.ready.then(() => true)");
            await page.WaitForTimeoutAsync(250);
            await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, $"{stage}-{name}.png"), FullPage = width < 1000 });
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{stage} is wider than the window of {width} px");
        }

        await page.Context.CloseAsync();
    }
}
