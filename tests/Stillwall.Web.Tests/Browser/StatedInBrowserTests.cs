using Microsoft.Playwright;

namespace Stillwall.Web.Tests.Browser;

/// <summary>What a maker states on the page: values with the way back to their default, stock, prices and logbook.</summary>
public sealed class StatedInBrowserTests(Chromium chromium) : BrowserTest(chromium)
{
    private Stillwall.Projects.Project Now => OwnProject.Now.Project;

    [Fact]
    public async Task A_stated_value_goes_back_to_its_default_and_can_be_undone()
    {
        var page = await OpenOwn("brief");
        var row = page.Locator(".row[data-key='brief.printer.nozzle']");
        await Assertions.Expect(row.Locator(".src")).ToContainTextAsync("stated by you");
        await row.GetByRole(AriaRole.Button, new() { Name = "nozzle: back to 0.4 mm" }).ClickAsync();
        await Assertions.Expect(row.Locator("input")).ToHaveValueAsync("0.4");
        await Assertions.Expect(row.Locator(".src")).ToContainTextAsync("default: the commonest nozzle");
        await Assertions.Expect(row.Locator(".taken")).ToHaveCountAsync(0);
        await page.ClickAsync("[data-undo]");
        await Assertions.Expect(row.Locator("input")).ToHaveValueAsync("0.6");
        await Assertions.Expect(row.Locator(".src")).ToContainTextAsync("stated by you");

        // An emptied field does the same; a size that must be there keeps its fault.
        var budget = page.Locator("#f-budget");
        await budget.FillAsync("");
        await budget.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".row[data-key='budget'] .src")).ToContainTextAsync("not stated");
        await Chromium.Until(() => Now.Budget is null, "the budget is still stated");
        await Go(page, "cabinet");
        await page.FillAsync("#f-cabinet-outside-depth", "");
        await Assertions.Expect(page.Locator("#f-cabinet-outside-depth[aria-invalid=true]")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task What_few_ask_for_is_stated_among_what_is_not_drawn_and_taken_out_again()
    {
        var page = await OpenOwn("cabinet");
        await page.GetByText("What is not drawn").ClickAsync();
        foreach (var (key, value) in new[] { ("recess", "1"), ("drying-hole", "5") })
        {
            var field = page.Locator($"#f-cabinet-openings-{key}");
            await Assertions.Expect(field).ToHaveValueAsync("");
            await field.FillAsync(value);
            await field.PressAsync("Enter");
            await Assertions.Expect(page.Locator($".row[data-key='cabinet.openings.{key.Replace('-', '_')}'] .src")).ToContainTextAsync("stated by you");
        }

        await Chromium.Until(() => Now.Cabinet!.Openings is { RecessM: 0.001, DryingHoleM: 0.005 }, "recess and drying hole are not stated");
        await Assertions.Expect(page.GetByText("Floor of the recess for the flange").First).ToBeVisibleAsync();
        await Go(page, "pour");
        await Assertions.Expect(page.GetByText("taped from inside before the rehearsal")).ToBeVisibleAsync();
        await Go(page, "cabinet");
        await page.GetByText("What is not drawn").ClickAsync();
        await page.FillAsync("#f-cabinet-openings-recess", "1.5");
        await page.PressAsync("#f-cabinet-openings-recess", "Enter");
        await Assertions.Expect(page.GetByText("leaves too little of an outer skin").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Every_input_of_a_form_says_where_its_value_is_from()
    {
        var page = await Open("brief");
        foreach (var stage in new[] { "brief", "walls", "pour", "quiet", "proof" })
        {
            await Go(page, stage);
            Assert.Empty(
                await page.EvaluateAsync<string[]>(
                    "[...document.querySelectorAll('.row[data-key]')].filter(r => !r.querySelector('.src').textContent.trim()).map(r => r.dataset.key)"
                )
            );
            Assert.Empty(
                await page.EvaluateAsync<string[]>(
                    "[...document.querySelectorAll('[data-key] input, [data-key] select')].filter(i => "
                        + "!document.getElementById(i.getAttribute('aria-describedby'))).map(i => i.id)"
                )
            );
        }
    }

    [Fact]
    public async Task Stock_is_added_changed_and_taken_out_and_the_list_follows()
    {
        var page = await OpenOwn("supplies");
        var before = Now.Stock!.Count;
        var adding = page.Locator("[data-adding=stock]");
        await adding.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(adding.Locator(".flt").First).ToContainTextAsync("is needed");
        await adding.GetByLabel("item, new entry").FillAsync("magnets, odd");
        await adding.GetByLabel("amount, new entry").FillAsync("three");
        await adding.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(adding.Locator(".flt")).ToHaveCountAsync(1);
        await adding.GetByLabel("amount, new entry").FillAsync("3 pc");
        await adding.GetByLabel("amount, new entry").PressAsync("Enter");
        var amount = page.Locator($"#f-stock-{before}-amount");
        await Assertions.Expect(amount).ToHaveValueAsync("3 pc");
        await Chromium.Until(() => Now.Stock!.Count > before && Now.Stock[before].Item == "magnets, odd", "the magnets are not in stock");

        var powder = Now.Stock.ToList().FindIndex(s => s.Item == "cast powder");
        await page.FillAsync($"#f-stock-{powder}-amount", "1 kg");
        await page.PressAsync($"#f-stock-{powder}-amount", "Enter");
        await Assertions.Expect(page.Locator("table.supplies tr", new() { HasText = "cast powder" })).ToContainTextAsync("short");

        await page.GetByRole(AriaRole.Button, new() { Name = "magnets, odd: clear" }).ClickAsync();
        await Assertions.Expect(amount).ToHaveCountAsync(0);
        await Chromium.Until(() => Now.Stock!.Count == before, "the magnets are still in stock");
        await page.ClickAsync("[data-undo]");
        await Assertions.Expect(amount).ToHaveValueAsync("3 pc");
    }

    [Fact]
    public async Task A_price_and_a_logbook_entry_are_stated_on_the_page()
    {
        var page = await OpenOwn("supplies");
        await page.FillAsync("#f-prices-0-price", "1,75");
        await page.PressAsync("#f-prices-0-price", "Enter");
        await Assertions.Expect(page.Locator("#f-prices-0-price")).ToHaveValueAsync("1.75");
        await Chromium.Until(() => Now.Prices![0].Cost == 1.75, "the price is not stated");

        await Go(page, "logbook");
        var count = Now.Logbook.Count;
        var adding = page.Locator("[data-adding=logbook]");
        await adding.GetByLabel("date, new entry").FillAsync("2026-12-01");
        await adding.GetByLabel("kind, new entry").FillAsync("weigh-in");
        await adding.GetByLabel("part, new entry").FillAsync("cabinet");
        await adding.GetByLabel("mass, new entry").FillAsync("9.42");
        await adding.GetByRole(AriaRole.Button, new() { Name = "Add" }).ClickAsync();
        await Assertions.Expect(page.Locator("[data-list=logbook] tbody tr").First.Locator("input").First).ToHaveValueAsync("2026-12-01");
        await Chromium.Until(() => (Now.Logbook.Count, Now.Logbook[^1].MassKg) == (count + 1, 9.42), "the weigh-in is not in the logbook");
        await page.FillAsync($"#f-logbook-{count}-mass", "soon");
        await Assertions.Expect(page.Locator($"#f-logbook-{count}-mass-fault")).ToContainTextAsync("kg");
        await page.FillAsync($"#f-logbook-{count}-mass", "9.4");
        await page.PressAsync($"#f-logbook-{count}-mass", "Enter");
        await Assertions.Expect(page.Locator("[data-undo][title='mass, 2026-12-01 9.4 kg']")).ToBeEnabledAsync();
        await Chromium.Until(() => Now.Logbook[^1].MassKg == 9.4, "the weigh-in is not changed");
        await page.ClickAsync("[data-undo]");
        await Assertions.Expect(page.Locator($"#f-logbook-{count}-mass")).ToHaveValueAsync("9.42");
    }
}
