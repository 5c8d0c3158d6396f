using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Stillwall.Web.Tests.Browser.Chromium))]

// One machine's browser draws for two tests at once; more would wait for each other.
[assembly: Xunit.v3.Parallelization(MaxThreads = 2)]

namespace Stillwall.Web.Tests.Browser;

/// <summary>One Chromium for all tests, and one running page with the demo, that they look at and do not change.</summary>
public sealed class Chromium : IAsyncDisposable
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    // Long enough for a busy machine; no test waits for it in vain.
    public const int Patience = 120_000;

    private readonly Lazy<Page> shown = new(() => new Page());
    private readonly Lazy<Task<IPlaywright>> driver = new(Playwright.CreateAsync);
    private readonly Lazy<Task<IBrowser>> browser;

    public Chromium()
    {
        browser = new(() => Launch("--use-gl=swiftshader", "--enable-unsafe-swiftshader"));
    }

    private static string? Executable => Places.FirstOrDefault(File.Exists);

    private static bool MayBeMissing => Environment.GetEnvironmentVariable("CI") != "true";

    /// <summary>The demo as it is delivered.</summary>
    public Page Shown => shown.Value;

    /// <summary>A browser context of its own, the rest of the world shut out.</summary>
    public async Task<IBrowserContext> Context(BrowserNewContextOptions options)
    {
        AssertThere();
        return await (await browser.Value).NewContextAsync(options);
    }

    /// <summary>Another browser, for a test that needs it started otherwise.</summary>
    public async Task<IBrowser> Launch(params string[] arguments)
    {
        AssertThere();
        return await (await driver.Value).Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions { ExecutablePath = Executable, Args = ["--no-sandbox", .. arguments] }
        );
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
#pragma warning disable RS0030 // Between two looks: here every wait for a thing ends.
            await Task.Delay(50, TestContext.Current.CancellationToken);
#pragma warning restore RS0030
        }
    }

    /// <summary>The same of what can be seen at once.</summary>
    public static Task Until(Func<bool> isSo, string otherwise) => Until(() => Task.FromResult(isSo()), otherwise);

    /// <summary>Waits until the page has been painted that often.</summary>
    public static Task Frames(IPage page, int count) =>
        page.EvaluateAsync("n => new Promise(done => { const next = () => n-- > 0 ? requestAnimationFrame(next) : done(); next(); })", count);

    public async ValueTask DisposeAsync()
    {
        if (browser.IsValueCreated)
        {
            await (await browser.Value).DisposeAsync();
        }

        if (driver.IsValueCreated)
        {
            (await driver.Value).Dispose();
        }

        if (shown.IsValueCreated)
        {
            Shown.Dispose();
        }
    }

    private static void AssertThere()
    {
        Assert.SkipWhen(Executable is null && MayBeMissing, "no Chromium at /usr/bin; apt-get install chromium");
        Assert.True(Executable is not null, "no Chromium at /usr/bin, and CI=true asks for it; apt-get install chromium");
        Assertions.SetDefaultExpectTimeout(Patience);
    }
}
