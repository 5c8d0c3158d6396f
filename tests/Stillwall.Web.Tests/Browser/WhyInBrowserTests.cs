using Microsoft.Playwright;
using Stillwall.Appraisals.Explaining;
using Stillwall.Web.Proving;
using Stillwall.Web.Store;
using Stillwall.Web.Tests.Serving;

namespace Stillwall.Web.Tests.Browser;

/// <summary>Every number that the page computes says why, at a press and by the keyboard.</summary>
public sealed class WhyInBrowserTests(Chromium chromium) : BrowserTest(chromium)
{
    // The bench is not among them: it repeats the pour's figures in large for wet hands, and has no sheet to say why; the stage Pour does.
    private static readonly string[] Stages = ["brief", "driver", "cabinet", "walls", "parts", "pour", "supplies", "quiet", "proof", "logbook"];

    // Numbers without a why, each with its reason: what a cell is within, and which.
    private static readonly (string Selector, string Reason)[] Exempt =
    [
        (".cell.saved dd", "the time of saving"),
        (".rank td:nth-child(9)", "price as the table of drivers states it"),
        (".compare tr[data-stated] td", "as the data sheet states it"),
        ("#cast-kinds td[data-mix]", "figures of the mix, whose source stands in its row"),
        ("#wall-kinds .why-not", "names of findings that fail"),
        ("#cast-kinds .why-not", "where the figures of a mix are from"),
        (".stated dd", "stated by the maker"),
        ("td:has(a[download])", "names of file formats"),
        (".entries td", "stated by the maker, each in its field"),
        (".proof td[data-plain]", "counts, and what the maker typed or heard"),
        ("nav.stages, .head .sum, .notes h2, .notes .wait, .notes summary", "how many findings there are of each verdict; each of them says why by itself"),
        (".adm", "number of the sheet and the day that the maker states"),
        (".qread", "the line under the cross-hair, where the reader put it; the line's why stands at the answer and over the table"),
        ("output", "where the reader put a slider"),
        (".row label, .row .src", "what is stated, from where, and its default"),
        ("svg .tb, svg .name, svg .tick", "names of a section, lift, batch or driver, and the marks of a clock"),
        ("[data-count]", "how many rows the reader sees, or a search tried"),
        ("[data-basis], .proof caption", "how far a model or a band is to be trusted, the same for every project"),
        (".proof .said", "what to do, the same for every project, and how a recording was read"),
        (".care, .careall dd", "the class of a mask, and the mass that the maker states or the default beside it"),
        (".sheets li, .sheets small, .sheets span", "how many of a part a sheet shows, size and scale of the paper"),
        (".next", "the first failing finding's sentence once more; its why stands above"),
        (".remedy, .advice", "what the search of remedies tried; the finding's why stands above it, and the button shows the rest by doing it"),
    ];

    private static readonly (string Key, string Stated)[] Trouble =
    [
        ("cabinet.core", "5 mm"),
        ("cabinet.outside.depth", "480 mm"),
        ("brief.everyday.level", "88 dB"),
        ("materials.cast.pot_life", "4 min"),
        ("limits.lift_mass", "5 kg"),
        ("budget", "100"),
        ("measured.system_resonance", "55 Hz"),
        ("measured.system_q", "0.9"),
    ];

    // The demo, and the same with trouble in it: thin, deep, loud, late, heavy, dear, measured otherwise.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Every_number_in_a_table_a_drawing_or_a_sentence_has_a_why_and_every_why_an_answer(bool isTroubled)
    {
        if (isTroubled)
        {
            Assert.Empty(OwnProject.Set(this, Trouble, "trouble"));
        }

        var page = await OpenOwn("/");
        var (silent, asked) = (new List<string>(), new HashSet<(string Of, string? Driver)>());
        foreach (var stage in Stages)
        {
            await Go(page, stage);
            if (stage == "proof")
            {
                await Prove(page);
            }

            await Prepare(page, stage);
            silent.AddRange(
                (
                    await page.EvaluateAsync<string[]>(
                        """
                        exempt => [...document.querySelectorAll('main table td, main dl dd')].filter(cell => {
                          if (!/\d/.test(cell.textContent) || cell.matches(exempt)) return false;
                          const table = cell.closest('table'), head = table?.querySelectorAll('thead tr:last-child > *')[cell.cellIndex];
                          const term = cell.previousElementSibling?.matches('dt') ? cell.previousElementSibling : null;
                          return ![cell, head, table?.caption, cell.closest('tr')?.querySelector('th'), term].some(at => at?.querySelector('.fig, .why'));
                        }).map(cell => cell.closest('tr, div').textContent.trim().replace(/\s+/g, ' ') + ' (' + cell.textContent.trim() + ')')
                        """,
                        string.Join(", ", Exempt.Select(e => e.Selector))
                    )
                ).Select(cell => $"{stage}: {cell}")
            );
            silent.AddRange(
                (
                    await page.EvaluateAsync<string[]>(
                        """
                        exempt => {
                          const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT), found = new Set();
                          for (let text = walk.nextNode(); text; text = walk.nextNode()) {
                            const at = text.parentElement;
                            const elsewhere = 'script, style, title, desc, option, textarea, noscript, .vh, table td, table th, dl dd, dl dt, .whysheet';
                            if (!/\d/.test(text.data) || at.closest(elsewhere) || at.closest(exempt)) continue;
                            const sentence = at.closest('li, p, caption, summary, output, h1, h2, h3, .dfig, label, span.own, svg') ?? at;
                            const within = sentence.parentElement.getAttribute('class') ?? sentence.parentElement.tagName;
                            const where = sentence.tagName + '.' + (sentence.getAttribute('class') ?? '') + ' < ' + within;
                            if (!sentence.querySelector('.fig, .why')) found.add(where + ': ' + text.data.trim().replace(/\s+/g, ' ').slice(0, 140));
                          }
                          return [...found];
                        }
                        """,
                        string.Join(", ", Exempt.Select(e => e.Selector))
                    )
                ).Select(sentence => $"{stage}: {sentence}")
            );
            asked.UnionWith(
                (await page.EvaluateAsync<string[]>("[...document.querySelectorAll('.fig, .why')].map(f => f.dataset.of + '|' + (f.dataset.driver ?? ''))"))
                    .Select(q => q.Split('|'))
                    .Select(q => (q[0], q[1].Length > 0 ? q[1] : null))
            );
        }

        Assert.True(silent.Count == 0, "give it a Figure with its result, or put it among the exemptions with its reason:\n" + string.Join('\n', silent));
        Assert.True(asked.Count > 600, $"{asked.Count} figures");
        var project = OwnProject;
        var plain = asked.Where(q => q.Driver is null && Why.Results(project.Now.Plan.Facts).Contains(q.Of)).Select(q => q.Of).ToList();
        Assert.All(Why.Of(project.Now.Plan.Facts, plain), Told);
        Assert.All(asked.Where(q => !plain.Contains(q.Of)).GroupBy(q => q.Of).Select(g => g.First()), q =>
            Told(new WhyQuestion(q.Of, q.Of, q.Driver).Answer(project, project.Now), q.Of)
        );
    }

    [Fact]
    public async Task A_figure_tells_formula_inputs_and_source_at_a_press_and_by_the_keyboard()
    {
        var page = await Open("pour");
        var figure = page.Locator("td [data-of='pour.batches[0].powder_kg']");
        await figure.ClickAsync();
        var sheet = page.Locator("#why-sheet");
        await Assertions.Expect(sheet).ToBeVisibleAsync();
        await Assertions.Expect(sheet.Locator(".expr")).Not.ToBeEmptyAsync();
        await Assertions.Expect(sheet.Locator("tbody tr").First).ToBeVisibleAsync();
        await Assertions.Expect(sheet.Locator(".src").Last).ToContainTextAsync("accuracy");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(sheet).ToBeHiddenAsync();

        // One stop of the Tab key for a table; arrows within it.
        await Assertions.Expect(page.Locator(".tbl:has([data-of='pour.batches[0].powder_kg']) .fig[tabindex='0']")).ToHaveCountAsync(1);
        await figure.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(page.Locator("td [data-of='pour.batches[0].water_kg']")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(page.Locator("td [data-of='pour.batches[1].water_kg']")).ToBeFocusedAsync();
        await Assertions.Expect(page.Locator(".tbl:has([data-of='pour.batches[0].powder_kg']) .fig[tabindex='0']")).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(sheet).ToBeVisibleAsync();
        await Assertions.Expect(sheet.Locator(".fname").First).ToContainTextAsync("batch 2");
    }

    [Fact]
    public async Task A_drawing_is_one_stop_of_the_keyboard_and_arrows_go_from_figure_to_figure()
    {
        var page = await Open("cabinet");
        var (figures, sheet) = (page.Locator(".va .fig"), page.Locator("#why-sheet"));
        await Assertions.Expect(figures).ToHaveCountAsync(4);
        await Assertions.Expect(page.Locator(".va .fig[tabindex='0']")).ToHaveCountAsync(1);
        await Assertions.Expect(page.Locator(".vb .fig[tabindex='0']")).ToHaveCountAsync(1);
        await figures.First.FocusAsync();
        for (var i = 1; i < 4; i++)
        {
            await page.Keyboard.PressAsync("ArrowRight");
            await Assertions.Expect(figures.Nth(i)).ToBeFocusedAsync();
        }

        await Assertions.Expect(page.Locator(".va .fig[tabindex='0']")).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(sheet.Locator(".fname").First).ToHaveTextAsync("room above the cabinet");
        await Assertions.Expect(sheet.Locator("tbody tr", new() { HasText = "brief, spot, height" })).ToContainTextAsync("%");
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(sheet).ToBeHiddenAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "(70) millimetres, why room behind the cabinet?" })).ToBeVisibleAsync();
    }

    // On the same page too.
    [Fact]
    public async Task What_is_stated_below_a_drawing_is_led_to_without_leaving_the_page()
    {
        var page = await Open("walls");
        await page.ClickAsync(".vc [data-of='materials.cast.powder_per_water']");
        await page.Locator("#why-sheet").GetByRole(AriaRole.Link, new() { Name = "To its field" }).ClickAsync();
        await Assertions.Expect(page.Locator("#f-materials-cast-powder-per-water").First).ToBeFocusedAsync();
        await Assertions.Expect(page.Locator("#why-sheet")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task What_is_stated_on_another_stage_says_so_on_a_drawing_and_leads_to_its_field()
    {
        var page = await Open("cabinet");
        await page.ClickAsync(".va [data-of='brief.spot.depth']");
        var sheet = page.Locator("#why-sheet");
        await Assertions.Expect(sheet.Locator(".src").First).ToContainTextAsync("Stated by you");
        await sheet.GetByRole(AriaRole.Link, new() { Name = "To its field" }).ClickAsync();
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Brief");
        await Assertions.Expect(page.Locator("#f-brief-spot-depth").First).ToBeFocusedAsync();
        await Assertions.Expect(sheet).ToBeHiddenAsync();
    }

    // Each sentence has its own button, and not that of its neighbour.
    [Fact]
    public async Task Every_finding_says_why_under_its_own_id()
    {
        var page = await Open("walls");
        var lacking = await page.EvaluateAsync<string[]>(
            "[...document.querySelectorAll('.notes li[id^=\"x-\"]')].filter(li => !li.querySelector(`.why[data-of=\"${CSS.escape(li.id.slice(2))}\"], "
                + ".why[data-of=\"${li.id.slice(2)}\"]`)).map(li => li.id)"
        );
        Assert.Empty(lacking);
        await Assertions.Expect(page.Locator(".notes li[id^='x-']")).ToHaveCountAsync(Shown.Workshop.Opened("reading-room")!.Now.Plan.Findings.Count);
        Assert.Empty(
            await page.EvaluateAsync<string[]>(
                "[...document.querySelectorAll('.checks li')].filter(li => !li.querySelector('.why[data-of^=\"walls/\"]')).map(li => li.textContent)"
            )
        );
    }

    [Fact]
    public async Task The_reason_of_a_candidate_is_explained_with_that_driver()
    {
        var page = await Open("driver");
        var why = page.Locator(".rank tbody tr", new() { HasText = "Garganey 8" }).Locator(".why-not .why").First;
        await Assertions.Expect(why).ToHaveAttributeAsync("data-of", "driver/clear-of-braces-skins-and-rear");
        await why.ClickAsync();
        var sheet = page.Locator("#why-sheet");
        await Assertions.Expect(sheet.Locator(".fname").First).ToContainTextAsync("Garganey 8");
        await Assertions.Expect(sheet.Locator("tbody tr", new() { HasText = "driver, depth" })).ToContainTextAsync("136 mm");
    }

    // Pictures to look at, and that the sheet is wholly within the window.
    [Theory]
    [InlineData("desktop", 1440, 900, false)]
    [InlineData("phone", 390, 844, true)]
    public async Task The_sheet_that_says_why_stands_within_the_window(string name, int width, int height, bool isDark)
    {
        var page = await Open("walls", width, height, isDark);
        await Prepare(page, "walls");
        var figure = page.Locator("[data-of='kinds[2].finished_kg']");
        await figure.ScrollIntoViewIfNeededAsync();
        await figure.ClickAsync();
        var sheet = page.Locator("#why-sheet");
        await Assertions.Expect(sheet.Locator("tbody tr").First).ToBeVisibleAsync();
        await page.ScreenshotAsync(new PageScreenshotOptions { Path = Picture($"why-{name}") });
        var box = (await sheet.BoundingBoxAsync())!;
        Assert.True(box.X >= 0 && box.Y >= 0 && box.X + box.Width <= width && box.Y + box.Height <= height, $"{box.X} {box.Y} {box.Width} {box.Height}");
    }

    [Fact]
    public async Task Of_a_candidate_the_answer_is_with_that_driver()
    {
        var page = await Open("driver");
        var row = page.Locator(".rank tbody tr", new() { HasText = "Wigeon 8" });
        var figure = row.Locator("[data-of='box.system_q']");
        var value = await figure.InnerTextAsync();
        await figure.ClickAsync();
        await Assertions.Expect(page.Locator("#why-sheet .fname").First).ToContainTextAsync("Wigeon 8");
        await Assertions.Expect(page.Locator("#why-title")).ToContainTextAsync(value);
    }

    // Every proof with figures of its own, by request as the page sends it, and the one that is typed.
    private async Task Prove(IPage page)
    {
        using var client = Own.Client();
        byte[] free = Sounds.Impedance(30, 5.5, 0.475),
            loaded = Sounds.Impedance(30 / Math.Sqrt(2), 5.5 * Math.Sqrt(2), 0.475 * Math.Sqrt(2)),
            here = Sounds.Noise(0.5),
            there = Sounds.Noise(0.05);
        (string Path, byte[] Body)[] all =
        [
            ("impedance?reference=10+ohm", Sounds.Impedance()),
            ("tap?length=160mm&width=40mm&thickness=40mm&mass=268.8g", Sounds.Taps()),
            ("sweep?at=near", Sounds.Heard(ProofReader.SignalFile("sweep"))),
            ($"driver?reference=10+ohm&added=40+g&sd=214+cm2&parts=recording:{free.Length},mass:{loaded.Length}", [.. free, .. loaded]),
            ($"wall?parts=recording:{here.Length},there:{there.Length}", [.. here, .. there]),
        ];
        foreach (var (path, body) in all)
        {
            using var content = new ByteArrayContent(body);
            content.Headers.ContentType = new("audio/wav");
            using var answer = await client.PostAsync(new Uri($"/files/reading-room/prove/{path}", UriKind.Relative), content, Stop);
            Assert.True(answer.IsSuccessStatusCode, path);
        }

        await page.Locator("[data-proof=hold] [name=seconds]").FillAsync("2.1 s");
        await page.Locator("[data-proof=hold] button[type=submit]").ClickAsync();
        foreach (var kind in new[] { "impedance", "tap", "sweep", "driver", "wall", "hold" })
        {
            await Assertions.Expect(page.Locator($"[data-proof={kind}] tbody .fig").First).ToBeVisibleAsync();
        }
    }

    // What takes a press before it is shown.
    private static async Task Prepare(IPage page, string stage)
    {
        if (stage == "driver")
        {
            await page.Locator("[aria-label='compare Teal 8']").CheckAsync();
            await page.Locator("[aria-label='compare Dunlin 8']").CheckAsync();
            await Assertions.Expect(page.Locator(".compare thead th")).ToHaveCountAsync(2);
        }
        else if (stage == "walls")
        {
            await page.ClickAsync("#compare-walls");
            await Assertions.Expect(page.Locator("#wall-kinds tbody tr")).ToHaveCountAsync(4);
        }
        else if (stage == "quiet")
        {
            await page.ClickAsync("#search-places");
            await Assertions.Expect(page.Locator("#places li").First).ToBeVisibleAsync();
        }
        else if (stage == "cabinet")
        {
            await page.ClickAsync(".qmore");
            await page.GetByText("As a table").ClickAsync();
            await Assertions.Expect(page.Locator(".qtable tbody tr").First).ToBeVisibleAsync();
        }
    }

    private static void Told(Explanation why) => Told(why, why.Result);

    private static void Told(Explanation? why, string of)
    {
        Assert.True(why is not null, $"{of}: no answer");
        Assert.False(string.IsNullOrWhiteSpace(why!.Formula), of);
        Assert.False(string.IsNullOrWhiteSpace(why.Basis), of);
    }
}
