using Microsoft.Playwright;
using Stillwall.Web.Proving;
using Stillwall.Web.Tests.Serving;

namespace Stillwall.Web.Tests.Browser;

/// <summary>The proof on its page: a file brought and kept, and the sweep played and recorded through a microphone that is a file.</summary>
public sealed class ProofInBrowserTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task A_recording_is_read_kept_and_taken_back()
    {
        chromium.Page.Reset();
        var page = await chromium.Open("/proof");
        var proof = page.Locator("[data-proof=impedance]");
        await proof
            .Locator("[data-part=recording]")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "z.wav",
                    MimeType = "audio/wav",
                    Buffer = [1, 2, 3],
                }
            );
        await proof.GetByText("Analyse", new() { Exact = true }).ClickAsync();
        await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync("is too short for a WAV file");
        await proof
            .Locator("[data-part=recording]")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "z.wav",
                    MimeType = "audio/wav",
                    Buffer = Sounds.Impedance(),
                }
            );
        await proof.GetByText("Analyse", new() { Exact = true }).ClickAsync();
        await Assertions.Expect(proof.Locator("tbody tr").First).ToContainTextAsync("49");
        await page.WaitForSelectorAsync("[data-proof=impedance] .hair-pt[aria-valuetext]");
        if (Environment.GetEnvironmentVariable("STILLWALL_PICTURES") is { } folder)
        {
            await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, "proof.png"), FullPage = true });
        }

        await Assertions.Expect(proof.Locator("[name=day]")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("^20"));
        await proof.GetByRole(AriaRole.Button, new() { Name = "Keep" }).ClickAsync();
        await Assertions.Expect(proof.GetByRole(AriaRole.Button, new() { Name = "Kept" })).ToBeDisabledAsync();
        var open = chromium.Page.Workshop.Opened("reading-room")!;
        Assert.Equal(1, open.Now.Project.Measured.SystemResonanceHz!.Value / Sounds.ResonanceHz, 0.015);
        Assert.Equal("impedance", open.Now.Project.Logbook[^1].Kind);
        await page.Locator("[data-undo]").First.ClickAsync();
        await Assertions.Expect(proof.GetByRole(AriaRole.Button, new() { Name = "Keep" })).ToBeEnabledAsync();
        Assert.Null(open.Now.Project.Measured.SystemResonanceHz);
        await page.Context.CloseAsync();
    }

    // 2.1 s on the demo's box; the figure is Stillwall.Tests' business, here it must be kept, logged and taken back.
    [Fact]
    public async Task Hold_scales_and_ear_are_kept_with_their_day()
    {
        chromium.Page.Reset();
        var page = await chromium.Open("/proof");
        var open = chromium.Page.Workshop.Opened("reading-room")!;
        var entries = open.Now.Project.Logbook.Count;
        var hold = page.Locator("[data-proof=hold]");
        await hold.Locator("[name=seconds]").FillAsync("nonsense");
        await hold.Locator("button[type=submit]").ClickAsync();
        await Assertions.Expect(hold.Locator("[role=alert]")).ToContainTextAsync("is not a quantity");
        await hold.Locator("[name=seconds]").FillAsync("2.1 s");
        await hold.Locator("button[type=submit]").ClickAsync();
        await Assertions.Expect(hold.Locator("tbody tr").First).ToContainTextAsync("about");
        await hold.Locator(".fig").First.ClickAsync();
        await Assertions.Expect(page.Locator("#why-sheet .expr")).ToContainTextAsync("Q");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(hold.Locator("[name=day]")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("^20"));
        await hold.Locator("[name=day]").FillAsync("2026-12-03");
        await hold.Locator("[data-keep]").ClickAsync();
        await Assertions.Expect(hold.Locator("[data-keep]")).ToHaveTextAsync("Kept");
        Assert.NotNull(open.Now.Project.Measured.LeakResistancePaSM3);
        Assert.Equal(("hold", new DateOnly(2026, 12, 3)), (open.Now.Project.Logbook[^1].Kind, open.Now.Project.Logbook[^1].Date));

        var scales = page.Locator("[data-proof=weight]");
        await scales.Locator("[name=mass]").FillAsync("9.87 kg");
        await scales.Locator("button[type=submit]").ClickAsync();
        await Assertions.Expect(scales.Locator("[name=day]")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("^20"));
        await scales.Locator("[name=day]").FillAsync("2026-12-04");
        await scales.Locator("[data-keep]").ClickAsync();
        await Assertions.Expect(scales.Locator("[data-keep]")).ToHaveTextAsync("Logged");
        Assert.Equal(
            ("weigh-in", "cabinet", 9.87),
            (open.Now.Project.Logbook[^1].Kind, open.Now.Project.Logbook[^1].Part, open.Now.Project.Logbook[^1].MassKg!.Value)
        );

        var ear = page.Locator("[data-proof=rattle]");
        await ear.Locator("[name=part]").FillAsync("terminal");
        await ear.Locator("button[type=submit]").ClickAsync();
        await Assertions.Expect(ear.Locator("tbody tr").First).ToContainTextAsync("terminal rattled");
        await Assertions.Expect(ear.Locator("[name=day]")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("^20"));
        await ear.Locator("[data-keep]").ClickAsync();
        await Assertions.Expect(page.Locator("tr", new() { HasText = "No rattle" }).First).ToContainTextAsync("terminal");
        if (Environment.GetEnvironmentVariable("STILLWALL_PICTURES") is { } folder)
        {
            await page.ScreenshotAsync(new PageScreenshotOptions { Path = Path.Combine(folder, "proof-all.png"), FullPage = true });
        }

        for (var i = 0; i < 3; i++)
        {
            await page.Locator("[data-undo]").First.ClickAsync();
            await Chromium.Until(() => Task.FromResult(open.Now.Project.Logbook.Count == entries + 2 - i), "undo");
        }

        Assert.Null(open.Now.Project.Measured.LeakResistancePaSM3);
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Two_recordings_tell_which_way_the_cabinet_pushes_and_the_answer_is_judged()
    {
        chromium.Page.Reset();
        var page = await chromium.Open("/proof");
        var proof = page.Locator("[data-proof=polarity]");
        FilePayload File(string name, double sign) =>
            new()
            {
                Name = name,
                MimeType = "audio/wav",
                Buffer = Sounds.Pulses(sign),
            };
        await proof.Locator("[data-part=recording]").SetInputFilesAsync(File("cabinet.wav", 1));
        await proof.Locator("[data-part=main]").SetInputFilesAsync(File("main.wav", -1));
        await proof.GetByText("Analyse", new() { Exact = true }).ClickAsync();
        await Assertions.Expect(proof.Locator("tbody")).ToContainTextAsync("the other way");
        await Assertions.Expect(proof.Locator("[name=day]")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("^20"));
        await proof.Locator("[data-keep]").ClickAsync();

        // The demo joins best with its polarity as it is.
        var row = page.Locator("tr", new() { HasText = "Polarity matches the main speakers" }).First;
        await Assertions.Expect(row).ToContainTextAsync("against the main speakers");
        Assert.Equal("opposite", chromium.Page.Workshop.Opened("reading-room")!.Now.Project.Measured.Polarity);
        chromium.Page.Reset();
        await page.Context.CloseAsync();
    }

    // The file stands for what a microphone hears of the sweep through a closed box. It runs by itself from when the microphone is opened:
    // its place in the recording is not known, and is found by the alignment.
    [Fact]
    public async Task The_sweep_is_played_and_recorded_with_a_microphone_that_is_a_file()
    {
        Assert.SkipWhen(Chromium.Executable is null && Chromium.MayBeMissing, "no Chromium at /usr/bin; apt-get install chromium");
        var heard = Path.Combine(chromium.Page.Folder, "heard.wav");
        await File.WriteAllBytesAsync(heard, Sounds.Heard(ProofReader.SignalFile("sweep")), TestContext.Current.CancellationToken);
        using var playwright = await Playwright.CreateAsync();
        Task<IBrowser> Launch() => Hearing(playwright, heard + "%noloop");

        // A machine that is busy loses blocks of a recording. A maker would play it again, and so does this, three times at most.
        var worst = double.PositiveInfinity;
        for (var i = 0; i < 3 && worst > 0.5; i++)
        {
            await using var player = await Launch();
            worst = await WorstDb(await player.NewContextAsync(new BrowserNewContextOptions { Permissions = ["microphone"] }));
        }

        Assert.InRange(worst, 0, 0.5);
        var outcome = chromium.Page.Workshop.Opened("reading-room")!.Proofs.Of("sweep")!;
        await using var browser = await Launch();
        var context = await browser.NewContextAsync(new BrowserNewContextOptions { Permissions = ["microphone"] });

        // A browser that leaves its processing on is refused.
        var other = await context.NewPageAsync();
        other.SetDefaultTimeout(120_000);
        await other.AddInitScriptAsync("MediaStreamTrack.prototype.getSettings = () => ({ echoCancellation: false, noiseSuppression: true })");
        await other.GotoAsync(new Uri(chromium.Page.Address, "/proof").ToString());
        await Chromium.Live(other);
        await other.Locator("[data-proof=sweep]").GetByText("Play and record").ClickAsync();
        await Assertions
            .Expect(other.Locator("[data-proof=sweep] [role=status]"))
            .ToContainTextAsync("are off: noiseSuppression, autoGainControl.", new() { Timeout = 120_000 });
        Assert.Same(outcome, chromium.Page.Workshop.Opened("reading-room")!.Proofs.Of("sweep"));
    }

    // A microphone that is a file, over and over: cut off at full scale, a thousandth of it (the faint begins under 0.003), and nothing at all.
    [Theory]
    [InlineData(40, "The input is overloaded", true)]
    [InlineData(0.004, "The input is faint", true)]
    [InlineData(0, "Nothing came in", false)]
    public async Task An_input_that_is_too_loud_too_faint_or_dead_is_told(double strength, string told, bool isRead)
    {
        await using var hearing = await Heard(strength);
        var (proof, board) = (hearing.Page.Locator("[data-proof=sweep]"), chromium.Page.Workshop.Opened("reading-room")!.Proofs);
        var before = board.Of("sweep");
        await proof.GetByText("Play and record").ClickAsync();
        await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync(told, new() { Timeout = 120_000 });
        await Assertions.Expect(proof.Locator("[data-play]")).ToBeEnabledAsync(new() { Timeout = 120_000 });

        // What is said last stands beside what was read; a dead input is not read at all. A busy machine may lose so much that nothing can be read:
        // then that is said.
        if (isRead && !ReferenceEquals(before, board.Of("sweep")))
        {
            await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync(told);
        }

        Assert.True(isRead || ReferenceEquals(before, board.Of("sweep")), "a dead input was read");
        await Assertions.Expect(proof.Locator("[data-stop]")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Stop_ends_a_recording_and_keeps_nothing()
    {
        await using var hearing = await Heard(0.5);
        var (proof, board) = (hearing.Page.Locator("[data-proof=sweep]"), chromium.Page.Workshop.Opened("reading-room")!.Proofs);
        var before = board.Of("sweep");
        await Assertions.Expect(proof.Locator("[data-stop]")).ToBeHiddenAsync();
        await proof.GetByText("Play and record").ClickAsync();
        await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync("Recording;", new() { Timeout = 120_000 });
        await Assertions.Expect(proof.Locator("[data-play]")).ToBeDisabledAsync();
        await proof.Locator("[data-stop]").ClickAsync();
        await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync("Stopped; nothing was kept.", new() { Timeout = 120_000 });
        await Assertions.Expect(proof.Locator("[data-play]")).ToBeEnabledAsync();
        await Assertions.Expect(proof.Locator("[data-stop]")).ToBeHiddenAsync();
        Assert.Same(before, board.Of("sweep"));
    }

    private static Task<IBrowser> Hearing(IPlaywright playwright, string file) =>
        playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions
            {
                ExecutablePath = Chromium.Executable,
                Args =
                [
                    "--no-sandbox",
                    "--use-fake-ui-for-media-stream",
                    "--use-fake-device-for-media-stream",
                    $"--use-file-for-fake-audio-capture={file}",
                    "--autoplay-policy=no-user-gesture-required",
                ],
            }
        );

    private async Task<Hears> Heard(double strength)
    {
        Assert.SkipWhen(Chromium.Executable is null && Chromium.MayBeMissing, "no Chromium at /usr/bin; apt-get install chromium");
        _ = chromium.Page.Workshop.Current();
        var file = Path.Combine(chromium.Page.Folder, "input.wav");
        await File.WriteAllBytesAsync(file, Sounds.Heard(ProofReader.SignalFile("sweep"), strength), TestContext.Current.CancellationToken);
        var playwright = await Playwright.CreateAsync();
        var browser = await Hearing(playwright, file);
        var page = await (await browser.NewContextAsync(new BrowserNewContextOptions { Permissions = ["microphone"] })).NewPageAsync();
        page.SetDefaultTimeout(120_000);
        Assertions.SetDefaultExpectTimeout(120_000);
        await page.GotoAsync(new Uri(chromium.Page.Address, "/proof").ToString());
        await Chromium.Live(page);
        return new Hears(playwright, browser, page);
    }

    private sealed record Hears(IPlaywright Playwright, IBrowser Browser, IPage Page) : IAsyncDisposable
    {
        public async ValueTask DisposeAsync()
        {
            await Browser.DisposeAsync();
            Playwright.Dispose();
        }
    }

    // How far what was recorded is from the second-order high-pass of a closed box, Small 1972, JAES 20(10) (from memory), dB.
    private async Task<double> WorstDb(IBrowserContext context)
    {
        var before = chromium.Page.Workshop.Opened("reading-room")?.Proofs.Of("sweep");
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(120_000);
        await page.GotoAsync(new Uri(chromium.Page.Address, "/proof").ToString());
        await Chromium.Live(page);
        var proof = page.Locator("[data-proof=sweep]");
        await proof.GetByText("Play and record").ClickAsync();
        for (var waited = 0; waited < 240 && ReferenceEquals(chromium.Page.Workshop.Opened("reading-room")?.Proofs.Of("sweep"), before); waited++)
        {
            await page.WaitForTimeoutAsync(500);
        }

        await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync("Read", new() { Timeout = 120_000 });
        var measured = chromium.Page.Workshop.Opened("reading-room")!.Proofs.Of("sweep")!.Chart!.Series.Single(s => s.Name == "measured").Points;
        double Level(double f) =>
            20
            * Math.Log10(
                f
                    / Sounds.ResonanceHz
                    * (f / Sounds.ResonanceHz)
                    / Math.Sqrt(Math.Pow(1 - Math.Pow(f / Sounds.ResonanceHz, 2), 2) + Math.Pow(f / Sounds.ResonanceHz / Sounds.Q, 2))
            );
        var zero = measured.Where(p => p.X is >= 100 and <= 200).Average(p => Level(p.X));
        return measured.Where(p => p.X is >= 25 and <= 400).Max(p => Math.Abs(Level(p.X) - zero - p.Y));
    }
}
