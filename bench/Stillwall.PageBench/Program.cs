// Measures the page as its users feel it: how long until it is ready, how long from a keystroke to the repaint, what the first load weighs, what an
// open page costs. dotnet run -c Release --project bench/Stillwall.PageBench
using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;

const int WarmUp = 60,
    Edits = 120,
    Pages = 5;

// Types a value and waits until the title block says something else and that has been painted.
const string Edit = """
    value => new Promise(done => {
      const field = document.querySelector('#f-cabinet-outside-depth'), cell = document.querySelector('.titleblock dl');
      const from = performance.now();
      const seen = new MutationObserver(() => { seen.disconnect(); requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now() - from))); });
      seen.observe(cell, { subtree: true, characterData: true, childList: true });
      field.value = value;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    })
    """;

var folder = Directory.CreateTempSubdirectory("stillwall-bench-").FullName;
var web = Path.GetFullPath(
    Path.Combine(
        AppContext.BaseDirectory.Replace(Path.Combine("bench", "Stillwall.PageBench"), Path.Combine("src", "Stillwall.Web"), StringComparison.Ordinal),
        "Stillwall.Web.dll"
    )
);
var clock = Stopwatch.StartNew();
using var program = Process.Start(
    new ProcessStartInfo("dotnet", [web, "--urls", "http://127.0.0.1:0", "--folder", folder]) { RedirectStandardOutput = true, RedirectStandardInput = true }
)!;
try
{
    var address = (await program.StandardOutput.ReadLineAsync())!.Split(' ')[3];
    using var client = new HttpClient();
    _ = await client.GetStringAsync(new Uri(address));
    Say("ready: from the start of the program to the first page, ms", clock.Elapsed.TotalMilliseconds);

    using var playwright = await Playwright.CreateAsync();
    await using var browser = await playwright.Chromium.LaunchAsync(
        new BrowserTypeLaunchOptions { ExecutablePath = "/usr/bin/chromium", Args = ["--no-sandbox"] }
    );
    var first = await browser.NewPageAsync();
    var weight = 0L;
    first.RequestFinished += async (_, request) => weight += (await request.SizesAsync()).ResponseBodySize;
    await Open(first, address);
    await first.WaitForTimeoutAsync(1500);
    Say("first load of the cabinet's page, as it travels, kB", weight / 1e3);

    // Compiled in earnest only after some use.
    for (var i = 0; i < WarmUp; i++)
    {
        await first.EvaluateAsync<double>(Edit, (260 + i % 2 * 20 + i * 0.1).ToString("0.0", CultureInfo.InvariantCulture));
    }

    var times = new List<double>();
    program.Refresh();
    var busy = program.TotalProcessorTime;
    for (var i = 0; i < Edits; i++)
    {
        times.Add(await first.EvaluateAsync<double>(Edit, (300 + i % 2 * 20 + i * 0.1).ToString("0.0", CultureInfo.InvariantCulture)));
        await first.WaitForTimeoutAsync(30);
    }

    program.Refresh();
    Say("processor time of the program for each edit, ms", (program.TotalProcessorTime - busy).TotalMilliseconds / Edits);
    times.Sort();
    Say("from a keystroke to the repaint, ms: median", times[Edits / 2]);
    Say("from a keystroke to the repaint, ms: 19 of 20", times[Edits * 95 / 100]);
    Say("from a keystroke to the repaint, ms: worst", times[^1]);

    program.Refresh();
    var before = program.WorkingSet64;
    for (var i = 0; i < Pages; i++)
    {
        await Open(await browser.NewPageAsync(), address);
    }

    program.Refresh();
    Say("the program with one page, MB", before / 1e6);
    Say("each further page, MB", (program.WorkingSet64 - before) / 1e6 / Pages);
}
finally
{
    program.Kill(entireProcessTree: true);
    Directory.Delete(folder, recursive: true);
}

static async Task Open(IPage page, string address)
{
    await page.GotoAsync($"{address}/cabinet");
    await page.WaitForSelectorAsync("[data-live]", new PageWaitForSelectorOptions { State = WaitForSelectorState.Attached });
    await page.WaitForSelectorAsync("main[aria-busy=false]");
}

static void Say(string what, double value) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {value:0.#}"));
