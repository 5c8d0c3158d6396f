using Microsoft.Playwright;

namespace Stillwall.Web.Tests.Browser;

/// <summary>One Chromium for all browser tests, against one running page.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    // Long enough for a busy machine; no test waits for it in vain.
    private const int Patience = 120_000;

    private IPlaywright? playwright;
    private IBrowser? browser;

    public static string? Executable => Places.FirstOrDefault(File.Exists);

    public static bool MayBeMissing => Environment.GetEnvironmentVariable("CI") != "true";

    public Page Page { get; } = new();

    /// <summary>A fresh page of the browser, the rest of the world shut out.</summary>
    public async Task<IPage> Open(string path, int width = 1440, int height = 900, bool isDark = false, bool isReduced = true)
    {
        Assert.SkipWhen(Executable is null && MayBeMissing, "no Chromium at /usr/bin; apt-get install chromium");
        Assert.True(Executable is not null, "no Chromium at /usr/bin, and CI=true asks for it; apt-get install chromium");
        var context = await browser!.NewContextAsync(
            new BrowserNewContextOptions
            {
                ViewportSize = new ViewportSize { Width = width, Height = height },
                ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light,
                ReducedMotion = isReduced ? ReducedMotion.Reduce : ReducedMotion.NoPreference,
            }
        );
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(Patience);
        Assertions.SetDefaultExpectTimeout(Patience);
        await page.GotoAsync(new Uri(Page.Address, path).ToString());
        await Live(page);
        return page;
    }

    /// <summary>Waits until the page answers to a hand, and nothing is being computed.</summary>
    public static async Task Live(IPage page)
    {
        await page.WaitForSelectorAsync("[data-live]", new PageWaitForSelectorOptions { State = WaitForSelectorState.Attached });
        await page.WaitForSelectorAsync("main[aria-busy=false]");
    }

    /// <summary>Waits until something is so that the page cannot be asked to wait for.</summary>
    public static async Task Until(Func<Task<bool>> isSo, string otherwise)
    {
        for (var waited = 0; !await isSo(); waited += 50)
        {
            Assert.True(waited < Patience, otherwise);
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }
    }

    public async ValueTask InitializeAsync()
    {
        if (Executable is null)
        {
            return;
        }

        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions { ExecutablePath = Executable, Args = ["--no-sandbox", "--use-gl=swiftshader", "--enable-unsafe-swiftshader"] }
        );
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
        Page.Dispose();
    }
}
