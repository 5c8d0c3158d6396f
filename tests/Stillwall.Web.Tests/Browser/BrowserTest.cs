using Microsoft.Playwright;
using Stillwall.Appraisals.Proving;
using Stillwall.Web.Store;

namespace Stillwall.Web.Tests.Browser;

/// <summary>
/// A test in the browser. It looks at the page that all tests share; whatever changes a project or proves something does it on a page of its own, with
/// its own copy of the demo.
/// </summary>
public abstract class BrowserTest(Chromium chromium) : IAsyncDisposable
{
    private readonly List<IAsyncDisposable> opened = [];
    private Page? own;

    protected static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>What all tests look at.</summary>
    protected Page Shown => chromium.Shown;

    /// <summary>The page that this test alone may change.</summary>
    protected Page Own => own ??= new Page();

    internal OpenProject OwnProject => Own.Workshop.Current().Project!;

    /// <summary>A fresh page of the browser on what all tests look at.</summary>
    protected async Task<IPage> Open(string path, int width = 1440, int height = 900, bool isDark = false)
    {
        var page = await Open(Shown, path, width, height, isDark);
        AssertUntouched();
        return page;
    }

    /// <summary>A fresh page of the browser on this test's own.</summary>
    protected Task<IPage> OpenOwn(string path) => Open(Own, path, 1440, 900, false);

    /// <summary>Another stage of the same page.</summary>
    protected static async Task Go(IPage page, string path)
    {
        await page.GotoAsync(new Uri(new Uri(page.Url), "/" + path.TrimStart('/')).ToString());
        await Chromium.Live(page);
    }

    /// <summary>A browser started otherwise, on this test's own page.</summary>
    protected async Task<IBrowser> Launch(params string[] arguments)
    {
        var browser = await chromium.Launch(arguments);
        opened.Add(browser);
        return browser;
    }

    /// <summary>Where pictures for people to look at are kept.</summary>
    protected static string Picture(string name) =>
        Path.Combine(Directory.CreateDirectory(Path.Combine(Source.Root, "artifacts", "pages")).FullName, $"{name}.png");

    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        foreach (var one in opened)
        {
            await one.DisposeAsync();
        }

        own?.Dispose();
        AssertUntouched();
    }

    private async Task<IPage> Open(Page at, string path, int width, int height, bool isDark)
    {
        var context = await chromium.Context(
            new BrowserNewContextOptions
            {
                ViewportSize = new ViewportSize { Width = width, Height = height },
                ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light,
                ReducedMotion = ReducedMotion.Reduce,
            }
        );
        opened.Add(context);
        return await Open(context, at, path);
    }

    /// <summary>A page in a context that is there.</summary>
    protected static async Task<IPage> Open(IBrowserContext context, Page at, string path)
    {
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(Chromium.Patience);
        await page.GotoAsync(new Uri(at.Address, path).ToString());
        await Chromium.Live(page);
        return page;
    }

    private void AssertUntouched()
    {
        var isUntouched =
            Shown.Workshop.Opened("reading-room") is not { } project
            || (project is { Before: null, CanRedo: null } && Proof.All.All(proof => project.Proofs.Of(proof.Kind) is null));
        Assert.True(isUntouched, "a test changed what all tests look at: OpenOwn instead of Open");
    }
}
