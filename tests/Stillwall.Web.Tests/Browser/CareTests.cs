using Microsoft.Playwright;

namespace Stillwall.Web.Tests.Browser;

/// <summary>Care for everybody who uses the page: other hosts, the theme, paper. What axe finds is in <see cref="PictureTests"/>.</summary>
public sealed class CareTests(Chromium chromium) : BrowserTest(chromium)
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

    [Fact]
    public async Task Nothing_is_asked_of_another_host_and_no_policy_is_broken()
    {
        var page = await Open("/");
        var (asked, broken) = (new List<string>(), new List<string>());
        page.Request += (_, request) => asked.Add(request.Url);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                broken.Add(message.Text);
            }
        };
        page.PageError += (_, error) => broken.Add(error);
        foreach (var stage in Stages)
        {
            await Go(page, stage);
        }

        var here = Shown.Address.Authority;
        Assert.DoesNotContain(asked, url =>
            !url.StartsWith("data:", StringComparison.Ordinal) && !url.StartsWith("blob:", StringComparison.Ordinal) && new Uri(url).Authority != here
        );
        Assert.DoesNotContain(broken, text => !text.Contains("GL Driver", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_theme_is_chosen_by_hand_and_kept()
    {
        var page = await Open("cabinet");
        await page.ClickAsync("[data-theme-button]");
        await Assertions.Expect(page.Locator("html")).ToHaveAttributeAsync("data-theme", "dark");
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("html")).ToHaveAttributeAsync("data-theme", "dark");
    }

    [Fact]
    public async Task On_paper_there_is_no_control_and_the_drawing_is_there()
    {
        var page = await Open("cabinet");
        await page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });
        await Assertions.Expect(page.Locator("nav.stages")).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator(".remedy").First).ToBeHiddenAsync();
        await Assertions.Expect(page.Locator(".va svg").First).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".titleblock")).ToBeVisibleAsync();
    }
}
