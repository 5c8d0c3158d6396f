using Microsoft.Playwright;

namespace Stillwall.Web.Tests.Browser;

/// <summary>The pour at the bench, on a telephone.</summary>
public sealed class BenchTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task Nothing_begins_before_all_is_laid_ready_and_then_every_step_comes_in_turn()
    {
        var page = await Open("pour/bench", 390, 844);
        var begin = page.Locator("text=First water is in");
        await Assertions.Expect(page.Locator(".warn").First).ToContainTextAsync("dust mask");
        await Assertions.Expect(begin).ToBeDisabledAsync();
        foreach (var box in await page.Locator(".lay input").AllAsync())
        {
            await box.CheckAsync();
        }

        await begin.ClickAsync();
        var plan = Demo.Facts.Bench!.Plan;
        string[] each = ["Soak", "Stir", "Pour", "Tap the walls", "Let it set"];
        foreach (var (i, step) in plan.Batches.SelectMany((_, b) => b + 1 < plan.Batches.Count ? each : each[..^1]).Index())
        {
            await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync(step);
            if (i == 0)
            {
                await Assertions.Expect(page.Locator(".step").First).ToContainTextAsync(Demo.Facts.Show.Mass(plan.Batches[0].PowderKg).Split(' ')[0]);
                await Assertions.Expect(page.Locator(".step").First).ToContainTextAsync(Demo.Facts.Show.Mass(plan.Batches[0].WaterKg).Split(' ')[0]);
            }

            if (step == "Pour")
            {
                await page.ScreenshotAsync(new PageScreenshotOptions { Path = Picture($"pour-bench-step-{i}") });
                await page.ClickAsync("text=I am late");
                await Assertions.Expect(page.Locator(".late").First).ToContainTextAsync("throw it away");
                await page.ClickAsync("text=Go on");
            }

            await page.Locator(".hands .hand").Last.ClickAsync();
        }

        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Poured");
    }
}
