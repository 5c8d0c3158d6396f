using Microsoft.Playwright;
using Stillwall.Web.Proving;
using Stillwall.Web.Tests.Serving;

namespace Stillwall.Web.Tests.Browser;

/// <summary>The sweep, played and recorded through a microphone that is a file.</summary>
public sealed class RecordingInBrowserTests(Chromium chromium) : BrowserTest(chromium)
{
    // The file stands for what a microphone hears of the sweep through a closed box. It runs by itself from when the microphone is opened:
    // its place in the recording is not known, and is found by the alignment.
    [Fact]
    public async Task The_sweep_is_played_and_recorded_with_a_microphone_that_is_a_file()
    {
        // A machine that is busy loses blocks of a recording. A maker would play it again, and so does this, six times at most.
        var file = await Heard(0.5) + "%noloop";
        var worst = double.PositiveInfinity;
        for (var i = 0; i < 6 && worst > 0.5; i++)
        {
            worst = await WorstDb(await Listening(file));
        }

        Assert.InRange(worst, 0, 0.5);
        var outcome = OwnProject.Proofs.Of("sweep")!;

        // A browser that leaves its processing on is refused.
        var other = await Listening(file);
        await other.AddInitScriptAsync("MediaStreamTrack.prototype.getSettings = () => ({ echoCancellation: false, noiseSuppression: true })");
        await Go(other, "/proof");
        await other.Locator("[data-proof=sweep]").GetByText("Play and record").ClickAsync();
        await Assertions.Expect(other.Locator("[data-proof=sweep] [role=status]")).ToContainTextAsync("are off: noiseSuppression, autoGainControl.");
        Assert.Same(outcome, OwnProject.Proofs.Of("sweep"));
    }

    // A microphone that is a file, over and over: cut off at full scale, a thousandth of it (the faint begins under 0.003), and nothing at all.
    [Theory]
    [InlineData(40, "The input is overloaded", true)]
    [InlineData(0.004, "The input is faint", true)]
    [InlineData(0, "Nothing came in", false)]
    public async Task An_input_that_is_too_loud_too_faint_or_dead_is_told(double strength, string told, bool isRead)
    {
        var page = await Listening(await Heard(strength));
        var (proof, board) = (page.Locator("[data-proof=sweep]"), OwnProject.Proofs);
        var before = board.Of("sweep");
        await proof.GetByText("Play and record").ClickAsync();
        await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync(told);
        await Assertions.Expect(proof.Locator("[data-play]")).ToBeEnabledAsync();

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
        var page = await Listening(await Heard(0.5));
        var (proof, board) = (page.Locator("[data-proof=sweep]"), OwnProject.Proofs);
        var before = board.Of("sweep");
        await Assertions.Expect(proof.Locator("[data-stop]")).ToBeHiddenAsync();
        await proof.GetByText("Play and record").ClickAsync();
        await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync("Recording;");
        await Assertions.Expect(proof.Locator("[data-play]")).ToBeDisabledAsync();
        await proof.Locator("[data-stop]").ClickAsync();
        await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync("Stopped; nothing was kept.");
        await Assertions.Expect(proof.Locator("[data-play]")).ToBeEnabledAsync();
        await Assertions.Expect(proof.Locator("[data-stop]")).ToBeHiddenAsync();
        Assert.Same(before, board.Of("sweep"));
    }

    // A file of what a microphone would hear of the sweep.
    private async Task<string> Heard(double strength)
    {
        var file = Path.Combine(Own.Folder, "heard.wav");
        await File.WriteAllBytesAsync(file, Sounds.Heard(ProofReader.SignalFile("sweep"), strength), Stop);
        return file;
    }

    // The page in a browser whose microphone is that file.
    private async Task<IPage> Listening(string file)
    {
        var browser = await Launch(
            "--use-fake-ui-for-media-stream",
            "--use-fake-device-for-media-stream",
            $"--use-file-for-fake-audio-capture={file}",
            "--autoplay-policy=no-user-gesture-required"
        );
        return await Open(await browser.NewContextAsync(new BrowserNewContextOptions { Permissions = ["microphone"] }), Own, "/proof");
    }

    // How far what was recorded is from the second-order high-pass of a closed box, Small 1972, JAES 20(10) (from memory), dB.
    private async Task<double> WorstDb(IPage page)
    {
        var before = OwnProject.Proofs.Of("sweep");
        var proof = page.Locator("[data-proof=sweep]");
        await proof.GetByText("Play and record").ClickAsync();
        await Chromium.Until(() => !ReferenceEquals(OwnProject.Proofs.Of("sweep"), before), "the recording is not read");
        await Assertions.Expect(proof.Locator("[role=status]")).ToContainTextAsync("Read");
        var measured = OwnProject.Proofs.Of("sweep")!.Chart!.Series.Single(s => s.Name == "measured").Points;
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
