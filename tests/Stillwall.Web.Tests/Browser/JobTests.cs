using System.Globalization;
using System.IO.Compression;
using System.Text.Json;
using Microsoft.Playwright;
using Stillwall.Cli;
using Stillwall.Cli.Running;

namespace Stillwall.Web.Tests.Browser;

/// <summary>The job as its maker does it: with the pointer, with the keyboard alone, on two pages at once.</summary>
public sealed class JobTests(Chromium chromium) : BrowserTest(chromium)
{
    [Fact]
    public async Task From_brief_to_parts_by_clicking_with_the_figures_of_the_command_line()
    {
        var page = await OpenOwn("/");
        await Fill(page, "f-brief-spot-depth", "44 cm");
        await page.ClickAsync("nav >> text=Driver");
        await page.ClickAsync("button[aria-label='Use this driver: Wigeon 8']");
        await Expect(page, "tr.chosen >> text=Wigeon 8");
        await page.ClickAsync("nav >> text=Cabinet");
        await Fill(page, "f-cabinet-outside-depth", "320,5");
        await Fill(page, "f-cabinet-core", "12.5");
        await page.ClickAsync("nav >> text=Parts");
        await page.WaitForSelectorAsync("canvas[data-parts]");
        await Written("\"core\": \"12.5 mm\"");
        await Chromium.Live(page);

        using var appraisal = await CommandLine("appraise", Own.ProjectFolder, "--json");
        var (box, mass) = (appraisal.RootElement.GetProperty("box"), appraisal.RootElement.GetProperty("mass"));
        await Assertions.Expect(Cell(page, 0)).ToHaveTextAsync(Digits(1e3 * box.GetProperty("net_volume_m3").GetDouble(), 3));
        await Assertions.Expect(Cell(page, 1)).ToHaveTextAsync(Digits(box.GetProperty("system_resonance_hz").GetDouble(), 3));
        await Assertions.Expect(Cell(page, 2)).ToHaveTextAsync(Digits(box.GetProperty("system_q").GetDouble(), 3));
        await Assertions.Expect(Cell(page, 3)).ToHaveTextAsync(Digits(mass.GetProperty("finished_kg").GetDouble(), 3));
        foreach (var (verdict, word) in new[] { ("holds", "hold"), ("tight", "tight"), ("fails", "fail") })
        {
            var count = appraisal.RootElement.GetProperty("findings").EnumerateArray().Count(f => f.GetProperty("verdict").GetString() == verdict);
            await Assertions.Expect(page.Locator("#findings h2")).ToContainTextAsync($"{count} {word}");
        }

        var parts = appraisal.RootElement.GetProperty("parts").EnumerateArray().Select(p => p.GetProperty("name").GetString()!.Replace(' ', '-') + ".3mf");
        var download = await page.RunAndWaitForDownloadAsync(() => page.ClickAsync("text=All parts, 3MF"));
        using var zip = ZipFile.OpenRead(await download.PathAsync());
        Assert.Equal(parts.Append("assembly.3mf").Order(StringComparer.Ordinal), zip.Entries.Select(e => e.FullName).Order(StringComparer.Ordinal));
        Assert.All(zip.Entries, e => Assert.True(e.Length > 500, e.FullName));
    }

    [Fact]
    public async Task Kinds_of_wall_are_compared_at_a_press_as_the_command_line_does_and_the_lightest_is_taken()
    {
        var page = await OpenOwn("walls");
        await page.ClickAsync("#compare-walls");
        await page.WaitForSelectorAsync("#wall-kinds", new PageWaitForSelectorOptions { Timeout = 120_000 });
        using var walls = await CommandLine("walls", Own.ProjectFolder, "--json");
        var kinds = walls.RootElement.GetProperty("kinds").EnumerateArray().ToList();
        Assert.Equal(4, kinds.Count);
        Assert.Equal(
            kinds.Select(k => $"{Digits(k.GetProperty("finished_kg").GetDouble(), 3)} kg"),
            await page.Locator("#wall-kinds tbody td:nth-child(4)").AllInnerTextsAsync()
        );
        await page.ClickAsync("section.part >> text=Use this wall");
        var light = Digits(walls.RootElement.GetProperty("lightest").GetProperty("finished_kg").GetDouble(), 3);
        await Expect(page, $".titleblock >> text={light}");
    }

    [Fact]
    public async Task With_the_keyboard_alone_a_size_is_stepped_kept_and_taken_back()
    {
        var page = await OpenOwn("cabinet");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator("a:focus")).ToHaveTextAsync("To the drawing");
        await page.Keyboard.PressAsync("Enter");
        await TabTo(page, "f-cabinet-openings-terminal");
        await TabTo(page, "f-cabinet-outside-depth");
        var before = await page.InputValueAsync("#f-cabinet-outside-depth");
        var number = double.Parse(before, CultureInfo.InvariantCulture);
        var volume = await Cell(page, 0).InnerTextAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await page.Keyboard.PressAsync("Shift+ArrowDown");
        await Assertions.Expect(Volume(page)).Not.ToHaveTextAsync(volume);
        await Assertions.Expect(page.Locator("#f-cabinet-outside-depth")).ToHaveValueAsync((number - 9).ToString("0.###", CultureInfo.InvariantCulture));
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(Volume(page)).ToHaveTextAsync(volume);
        await page.Keyboard.PressAsync("Shift+ArrowDown");
        await page.Keyboard.PressAsync("Enter");
        await Written($"\"depth\": \"{(number - 10).ToString(CultureInfo.InvariantCulture)} mm\"");
        await TabTo(page, null, "[data-undo]");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#f-cabinet-outside-depth")).ToHaveValueAsync(before);
    }

    [Fact]
    public async Task A_fault_stays_in_its_field_with_a_sentence_and_the_drawing_keeps_its_last_good_state()
    {
        var page = await Open("cabinet");
        var drawn = await page.GetAttributeAsync(".va svg path.skin", "d");
        await page.FillAsync("#f-cabinet-core", "12 kg");
        await Expect(page, "#f-cabinet-core[aria-invalid=true]");
        await Assertions.Expect(page.Locator("#f-cabinet-core-fault")).ToContainTextAsync("mm");
        await page.PressAsync("#f-cabinet-core", "Tab");
        await Assertions.Expect(page.Locator("#f-cabinet-core")).ToHaveValueAsync("12 kg");
        await Assertions.Expect(page.Locator(".va svg path.skin").First).ToHaveAttributeAsync("d", drawn!);
        await page.PressAsync("#f-cabinet-core", "Escape");
        await Assertions.Expect(page.Locator("#f-cabinet-core[aria-invalid]")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_remedy_is_done_by_its_button_and_undone_by_the_same()
    {
        var page = await OpenOwn("cabinet");
        await Fill(page, "f-cabinet-strut-pitch", "60");
        var remedy = page.Locator("[id='x-walls/core-keyed-to-the-skins'] .remedy");
        await remedy.ClickAsync();
        await Expect(page, "[id='x-walls/core-keyed-to-the-skins'] .remedy[aria-pressed=true]");
        await Written("\"strut_pitch\": \"60 mm\"", isThere: false);
        await remedy.ClickAsync();
        await Assertions.Expect(page.Locator("#f-cabinet-strut-pitch")).ToHaveValueAsync("60");
        await Written("\"strut_pitch\": \"60 mm\"");
    }

    [Fact]
    public async Task Two_pages_edit_one_project_and_the_second_is_told_and_follows()
    {
        var (first, second) = (await OpenOwn("cabinet"), await OpenOwn("cabinet"));
        await Fill(first, "f-cabinet-outside-corner-radius", "25");
        await Assertions.Expect(second.Locator(".notice")).ToContainTextAsync("Another page changed this project");
        await Assertions.Expect(second.Locator("#f-cabinet-outside-corner-radius")).ToHaveValueAsync("25");
        Assert.Equal(0, await first.Locator(".notice").CountAsync());
        await second.ClickAsync(".notice button");
        await Fill(second, "f-cabinet-outside-corner-radius", "30");
        await Expect(first, ".notice");
    }

    [Fact]
    public async Task Why_is_answered_at_the_number_and_leaves_with_escape()
    {
        var page = await Open("cabinet");
        await page.ClickAsync("button[aria-label='Why Resonance?']");
        await Expect(page, "#why-sheet:popover-open >> text=driver, vas");
        await Assertions.Expect(page.Locator("#why-sheet tbody").First).ToContainTextAsync("+");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(page.Locator("#why-sheet:popover-open")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_table_of_drivers_is_taken_with_each_fault_of_its_rows_named_and_can_be_undone()
    {
        var page = await OpenOwn("driver");
        var table = await File.ReadAllTextAsync(Path.Combine(Source.Root, "samples", "reading-room", "drivers.csv"), Stop);
        var lines = table.TrimEnd().Split('\n');
        var name = lines[1].Split(',')[0];
        lines[1] = lines[1].Replace($"{name},130,3.4", $"{name},130,none", StringComparison.Ordinal);
        await page.SetInputFilesAsync(
            "input[name=file]",
            new FilePayload
            {
                Name = "new.csv",
                MimeType = "text/csv",
                Buffer = System.Text.Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n"),
            }
        );
        await Expect(page, ".bring .faults li");
        await Chromium.Live(page);
        await Assertions.Expect(page.Locator(".bring .faults")).ToContainTextAsync("drivers.csv:2:");
        await Assertions.Expect(page.Locator(".catalogue .said")).ToHaveTextAsync($"{lines.Length - 2} drivers");
        await page.ClickAsync("[data-undo]");
        await Assertions.Expect(page.Locator(".catalogue .said")).ToHaveTextAsync($"{lines.Length - 1} drivers");
        await Written("drivers.csv", text => text == table, "drivers.csv is not as it was");
    }

    [Fact]
    public async Task The_catalogue_is_searched_sorted_and_put_side_by_side()
    {
        var page = await Open("driver");
        var byPrice = page.Locator("th:has(> button:has-text('price'))");
        await page.ClickAsync("th >> text=price");
        await Assertions.Expect(byPrice).ToHaveAttributeAsync("aria-sort", "ascending");
        var prices = (await page.Locator(".rank tbody tr td:nth-child(9)").AllInnerTextsAsync())
            .Where(t => t.Length > 0)
            .Select(t => double.Parse(t, CultureInfo.InvariantCulture))
            .ToList();
        Assert.Equal(prices.Order(), prices);
        await page.ClickAsync("th >> text=price");
        await Assertions.Expect(byPrice).ToHaveAttributeAsync("aria-sort", "descending");
        await page.FillAsync("input[type=search]", "te");
        await Assertions.Expect(page.Locator(".rank tbody tr:not(:has(th:has-text('te'))):not(:has(th:has-text('Te')))")).ToHaveCountAsync(0);
        await page.CheckAsync("[aria-label='compare Teal 8']");
        await page.FillAsync("input[type=search]", "");
        await page.CheckAsync("[aria-label='compare Dunlin 8']");
        await Expect(page, ".compare");
        await Assertions.Expect(page.Locator(".compare thead th")).ToHaveTextAsync(["Teal 8", "Dunlin 8"]);
    }

    [Fact]
    public async Task From_nothing_a_first_cabinet_is_drawn_at_a_press()
    {
        _ = OwnProject.Replace(null, "{ \"stillwall\": 1 }", null, "nothing");
        var page = await OpenOwn("cabinet");
        Assert.Equal(0, await page.Locator(".va").CountAsync());
        await page.ClickAsync("text=Begin with a small one");
        await Expect(page, ".va svg path.skin");
        await Assertions.Expect(page.Locator("#f-cabinet-outside-depth")).ToHaveValueAsync("330");
    }

    [Fact]
    public async Task Names_are_shown_as_text()
    {
        var page = await OpenOwn("brief");
        const string sly = "<img src=x onerror=alert(1)> & \"co\"";
        await Fill(page, "f-name", sly);
        await Assertions.Expect(page.Locator(".t1")).ToHaveTextAsync(sly);
        Assert.Equal(0, await page.Locator("img[src=x]").CountAsync());
    }

    private static async Task Fill(IPage page, string id, string text)
    {
        await page.FillAsync($"#{id}", text);
        await page.PressAsync($"#{id}", "Enter");
        await Assertions.Expect(page.Locator($"#{id}[aria-invalid]")).ToHaveCountAsync(0);
        await Expect(page, "main[aria-busy=false]");
    }

    private static Task<IElementHandle?> Expect(IPage page, string selector) => page.WaitForSelectorAsync(selector);

    private static ILocator Volume(IPage page) => Cell(page, 0);

    private static ILocator Cell(IPage page, int i) => page.Locator(".titleblock dd b").Nth(i);

    private static string Digits(double value, int significant) =>
        Math.Round(value, significant - 1 - (int)Math.Floor(Math.Log10(value))).ToString("0.###", CultureInfo.InvariantCulture);

    private static async Task TabTo(IPage page, string? id, string? selector = null)
    {
        for (var i = 0; i < 200; i++)
        {
            if (await page.EvaluateAsync<bool>($"document.activeElement.matches('{selector ?? "#" + id}')"))
            {
                return;
            }

            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"{selector ?? id} is not reached by Tab");
    }

    // What is on the page is in the file a moment later.
    private Task Written(string words, bool isThere = true) =>
        Written(
            "stillwall.json",
            text => text.Contains(words, StringComparison.Ordinal) == isThere,
            $"{words} {(isThere ? "is not" : "is still")} in the file"
        );

    private Task Written(string name, Func<string, bool> isSo, string otherwise) =>
        Chromium.Until(async () => isSo(await File.ReadAllTextAsync(Path.Combine(Own.ProjectFolder, name), Stop)), otherwise);

    private static Task<JsonDocument> CommandLine(params string[] args)
    {
        using var output = new MemoryStream();
        using var errors = new StringWriter();
        var status = CliApp.Run(args, new Terminal(output, errors, TextReader.Null));
        Assert.True(status == 0, errors.ToString());
        return Task.FromResult(JsonDocument.Parse(output.ToArray()));
    }
}
