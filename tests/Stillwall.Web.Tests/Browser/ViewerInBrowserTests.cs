using System.Text.Json;
using Microsoft.Playwright;

namespace Stillwall.Web.Tests.Browser;

/// <summary>The view of the parts, by its own script on a bare canvas.</summary>
public sealed class ViewerInBrowserTests(Chromium chromium) : BrowserTest(chromium)
{
    // Mounts the view over the page and gives what a test asks of it. Colours are counted as they are on the screen.
    private const string Setup = """
        async () => {
          const box = document.createElement('div');
          Object.assign(box.style, { position: 'fixed', inset: '0', width: '600px', height: '500px', zIndex: 99 });
          const canvas = document.createElement('canvas');
          Object.assign(canvas.style, { width: '100%', height: '100%', display: 'block' });
          canvas.tabIndex = 0;
          box.append(canvas);
          document.body.append(box);
          const picked = [];
          const { mount } = await import('/client/viewer.js');
          const view = mount(canvas, { invokeMethodAsync: (name, part) => picked.push(part) });
          const count = await view.load('/files/reading-room/assembly');
          const pixels = () => {
            view.paint();
            const flat = document.createElement('canvas');
            [flat.width, flat.height] = [canvas.width, canvas.height];
            const ctx = flat.getContext('2d');
            ctx.drawImage(canvas, 0, 0);
            const d = ctx.getImageData(0, 0, flat.width, flat.height).data;
            const counts = {};
            for (let i = 0; i < d.length; i += 4) {
              const key = [d[i], d[i + 1], d[i + 2]].map(v => v.toString(16).padStart(2, '0')).join('');
              counts[key] = (counts[key] ?? 0) + 1;
            }
            return counts;
          };
          window.test = { view, canvas, picked, pixels };
          return count;
        }
        """;

    private const string Sheet = "fbfaf6",
        Ink = "23282b",
        Wash = "f4eadb",
        Cast = "eae5d9";

    [Fact]
    public async Task Parts_are_drawn_in_ink_on_paper_cut_filled_marked_and_picked()
    {
        var page = await Open("/cabinet");
        Assert.Equal(Viewer(), await page.EvaluateAsync<int>(Setup));
        var whole = await Pixels(page);
        Assert.True(whole[Ink] > 1500 && whole[Sheet] > 200_000, JsonSerializer.Serialize(whole));
        Assert.False(whole.ContainsKey(Cast), "nothing is cut, so no cast is seen");

        // Seen from the right, cut along the middle of the width: the cast is a frame about 240 mm by 330 mm, 12 mm wide, on all but the driver's opening.
        await page.EvaluateAsync("() => { test.view.look('right'); test.view.cut('width', 0.5); }");
        var cut = await Pixels(page);
        Assert.InRange(cut[Cast], whole[Sheet] / 60, whole[Sheet] / 4);
        Assert.True(cut[Ink] > 2 * 1500);

        await page.EvaluateAsync("() => { test.view.cut('none', 0.5); test.view.look('corner'); test.view.pick('front outer plate'); }");
        Assert.True((await Pixels(page))[Wash] > 10_000);

        await page.EvaluateAsync("() => { test.view.pick(null); test.view.look('front'); }");
        // Near the upper left corner of the front, outside of the ring round the driver.
        await page.Mouse.ClickAsync(300 - 185, 250 - 150);
        await page.WaitForFunctionAsync("() => JSON.stringify(test.picked) === '[\"front outer plate\"]'");
    }

    [Fact]
    public async Task Keys_turn_and_zoom_and_nothing_is_drawn_when_nothing_happens()
    {
        var page = await Open("/cabinet");
        await page.EvaluateAsync(Setup);
        var drawn = -1;
        await Chromium.Until(
            async () =>
            {
                var before = drawn;
                await Chromium.Frames(page, 30);
                drawn = await Drawn(page);
                return drawn == before;
            },
            "it is drawn over and over"
        );

        await page.EvaluateAsync("() => { test.view.look('front'); test.canvas.focus(); }");
        foreach (var _ in Enumerable.Range(0, 18))
        {
            await page.Keyboard.PressAsync("ArrowRight");
        }

        // Eighteen steps of 5° are a quarter turn.
        await page.WaitForFunctionAsync("() => Math.abs(Math.abs(test.view.camera.position.clone().sub(test.view.controls.target).normalize().x) - 1) < 1e-3");
        await page.Keyboard.PressAsync("+");
        await page.WaitForFunctionAsync("() => Math.abs(test.view.camera.zoom - 1.15) < 1e-9");
        await page.Keyboard.PressAsync("0");
        await page.WaitForFunctionAsync("() => test.view.camera.zoom === 1");
        Assert.True(await Drawn(page) > drawn);
    }

    [Fact]
    public async Task A_part_chosen_by_name_shows_the_figures_of_the_appraisal()
    {
        var page = await Open("/parts");
        await page.WaitForSelectorAsync($"canvas[data-parts='{Viewer()}']");
        var part = Demo.Facts.Parts.Single(p => p.Name == "brace");
        await page.SelectOptionAsync(".ptools label:last-child select", part.Name);
        await page.WaitForSelectorAsync(".pfigures strong");
        var said = (await page.Locator(".pfigures").InnerTextAsync()).Replace('\u00a0', ' ');
        Assert.All(new[] { part.Name, Demo.Facts.Show.Length(part.SizeM[0]), Demo.Facts.Show.Mass(part.MassKg!.Value), "fits the printer" }, words =>
            Assert.Contains(words, said, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void The_figures_of_the_drawing_are_those_of_the_appraisal_within_a_hundredth()
    {
        var drawn = Stillwall.Web.Viewer.AssemblyMeshes.Of(Demo.Facts)!.Parts;
        Assert.All(drawn, d => Assert.Equal(1, d.VolumeM3 / Demo.Facts.Parts.Single(p => p.Name == d.Name).VolumeM3, 0.01));
    }

    private static int Viewer() => Stillwall.Web.Viewer.AssemblyMeshes.Of(Demo.Facts)!.Parts.Count;

    private static async Task<Dictionary<string, int>> Pixels(IPage page) =>
        JsonSerializer.Deserialize<Dictionary<string, int>>(await page.EvaluateAsync<string>("JSON.stringify(test.pixels())"))!;

    private static Task<int> Drawn(IPage page) => page.EvaluateAsync<int>("Number(test.canvas.dataset.drawn)");
}
