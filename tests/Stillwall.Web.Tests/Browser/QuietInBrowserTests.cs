using Microsoft.Playwright;

namespace Stillwall.Web.Tests.Browser;

/// <summary>The neighbour question at another setting, behind an equaliser, and from other places in the room.</summary>
public sealed class QuietInBrowserTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task Ten_decibels_softer_the_neighbour_gets_ten_decibels_less()
    {
        var page = await Open("quiet");
        var over = Demo.Facts.Quiet.Bands.Max(b => b.OverDb!.Value);
        await Assertions.Expect(page.Locator("#next-door")).ToContainTextAsync(Appraisals.Show.Level(Math.Abs(over)));
        await page.FillAsync("#louder", "-10");
        await Assertions.Expect(page.Locator("#next-door")).ToContainTextAsync($"by {Appraisals.Show.Level(Math.Abs(over - 10))}");
        await page.ClickAsync("text=As every day");
        await Assertions.Expect(page.Locator("#next-door")).ToContainTextAsync(Appraisals.Show.Level(Math.Abs(over)));
    }

    [Fact]
    public async Task An_equaliser_that_is_needed_is_heard_and_taken_off_again_and_changed_by_hand()
    {
        var page = await OpenOwn("quiet");
        await page.FillAsync("#f-brief-everyday-level", "78");
        await page.PressAsync("#f-brief-everyday-level", "Enter");
        await Assertions.Expect(page.Locator("#next-door")).ToContainTextAsync("over the curve");
        var button = page.Locator("#with-equaliser");
        await button.ClickAsync();
        await Assertions.Expect(button).ToHaveAttributeAsync("aria-pressed", "true");
        await Assertions.Expect(page.Locator("#next-door")).ToContainTextAsync("stays under the curve");
        await page.ScreenshotAsync(new PageScreenshotOptions { Path = Picture("quiet-equalised") });
        var fetched = await page.APIRequest.GetAsync(
            new Uri(new Uri(page.Url), await page.Locator("a[href$='equaliser.csv']").GetAttributeAsync("href")).ToString()
        );
        var report = Neighbours.Equalisers.EqualiserReport.Of(OwnProject.Now.Plan.Facts.Quiet)!;
        Assert.Equal(Files.Tables.EqualiserTable.Write(report), await fetched.TextAsync());
        await page.Locator(".own input").First.FillAsync("20");
        await page.Locator(".own input").First.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#back-to-sought")).ToBeVisibleAsync();
        await page.ClickAsync("#back-to-sought");
        await Assertions.Expect(page.Locator("#next-door")).ToContainTextAsync("stays under the curve");
        await button.ClickAsync();
        await Assertions.Expect(page.Locator("#next-door")).ToContainTextAsync("over the curve");
    }

    [Fact]
    public async Task Cabinet_and_seat_are_moved_over_the_plan_by_keys_and_by_the_pointer_and_back_by_undo()
    {
        var page = await OpenOwn("quiet");
        var room = Demo.Facts.Room!.Geometry;
        Neighbours.Rooms.RoomGeometry Now() => OwnProject.Now.Plan.Facts.Room!.Geometry;
        await page.Locator("[data-move=move-seat]").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Chromium.Until(() => Math.Abs(Now().Seat.XM - room.Seat.XM - 0.1) < 1e-9, "the seat does not move by a tenth of a metre");

        var cabinet = page.Locator("[data-move=move-cabinet] rect");
        await cabinet.EvaluateAsync("rect => rect.scrollIntoView({ block: 'center' })");
        await cabinet.HoverAsync();
        var box = (await cabinet.BoundingBoxAsync())!;
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + box.Width, y, new() { Steps = 4 });
        await page.Mouse.UpAsync();

        // As far as its own width with its rim, 36 cm on the drawing.
        await Chromium.Until(() => Math.Abs(Now().Cabinet.XM - room.Cabinet.XM - 0.36) < 0.02, "the cabinet does not move by its width");
        await page.Locator("[data-undo]").First.ClickAsync();
        await Chromium.Until(() => Now().Cabinet == room.Cabinet, "the cabinet does not come back");
    }

    [Fact]
    public async Task Places_are_searched_at_a_press_and_the_best_is_taken()
    {
        var page = await OpenOwn("quiet");
        await page.ClickAsync("#search-places");
        await Assertions.Expect(page.Locator("#places li").First).ToBeVisibleAsync();
        var before = OwnProject.Now.Plan.Facts.Room!.Geometry;
        await page.Locator(".roommap")
            .ScreenshotAsync(
                new LocatorScreenshotOptions
                {
                    Path = Path.Combine(Directory.CreateDirectory(Path.Combine(Source.Root, "artifacts", "pages")).FullName, "quiet-places.png"),
                }
            );
        await page.Locator("#places li .act").First.ClickAsync();
        await Chromium.Until(() => OwnProject.Now.Plan.Facts.Room!.Geometry != before, "nothing is moved");
    }
}
