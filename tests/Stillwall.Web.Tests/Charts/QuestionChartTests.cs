using Bunit;
using Stillwall.Figures;
using Stillwall.Web.Charts;
using Stillwall.Web.Store;

namespace Stillwall.Web.Tests.Charts;

/// <summary>A question, its answer, and what is sent to be drawn.</summary>
public sealed class QuestionChartTests : BunitContext
{
    private readonly BunitJSModuleInterop module;

    public QuestionChartTests()
    {
        // For the answer's why; nothing is opened.
        Services.AddSingleton(new Desk(new Workshop(null, null, TimeProvider.System)));
        module = JSInterop.SetupModule("./client/chart.js");
        module.Mode = JSRuntimeMode.Loose;
        var drawn = module.SetupModule("mount", _ => true);
        drawn.Mode = JSRuntimeMode.Loose;
        Drawn = drawn;
    }

    private BunitJSModuleInterop Drawn { get; }

    [Fact]
    public void The_question_stands_over_its_answer_in_which_figures_are_set_apart()
    {
        var chart = ResponseCharts.HowLow(Demo.Facts)!;
        var shown = Render<QuestionChart>(p => p.Add(c => c.Chart, chart));
        Assert.Equal("How low?", shown.Find("h2").TextContent);
        Assert.Equal(chart.Answer, shown.Find(".qanswer").TextContent.Replace('\u00a0', ' '));
        Assert.Equal("32\u00a0Hz", shown.FindAll(".qanswer b")[^1].TextContent);
    }

    [Fact]
    public void The_table_has_every_cell_of_the_library_s_table()
    {
        var chart = ResponseCharts.HowFar(Demo.Facts)!;
        var shown = Render<QuestionChart>(p => p.Add(c => c.Chart, chart));
        Assert.Empty(shown.FindAll("table"));
        shown.FindAll(".qsheet input[type=checkbox]")[^1].Change(true);
        Assert.Equal(chart.Table.Columns, shown.FindAll("thead th").Select(c => c.TextContent));
        Assert.Equal(chart.Table.Rows.SelectMany(r => r), shown.FindAll("tbody th, tbody td").Select(c => c.TextContent));
    }

    [Fact]
    public void Answer_and_line_ask_why_of_what_the_chart_names()
    {
        var chart = ResponseCharts.HowLow(Demo.Facts)!;
        var shown = Render<QuestionChart>(p => p.Add(c => c.Chart, chart));
        shown.FindAll(".qsheet input[type=checkbox]")[^1].Change(true);
        Assert.Equal("box.f10_hz", shown.Find(".qanswer .why").GetAttribute("data-of"));
        Assert.Equal("curve.spl_db", shown.Find("caption .why").GetAttribute("data-of"));
    }

    [Fact]
    public void What_a_figure_is_the_scripts_are_told_as_the_page_has_it()
    {
        Render<QuestionChart>(p => p.Add(c => c.Chart, ResponseCharts.HowLow(Demo.Facts)!));
        Assert.Equal(Figured.Pattern, module.Invocations["mount"].Single().Arguments[3]);
    }

    [Fact]
    public void A_new_chart_is_sent_once_and_the_same_one_not_again()
    {
        var shown = Render<QuestionChart>(p => p.Add(c => c.Chart, ResponseCharts.HowLow(Demo.Facts)!));
        Assert.Single(Drawn.Invocations["draw"]);
        shown.Render(p => p.Add(c => c.Stale, true));
        Assert.Single(Drawn.Invocations["draw"]);
        shown.Render(p => p.Add(c => c.Chart, ResponseCharts.HowLow(Demo.Shallower)!));
        Assert.Equal(2, Drawn.Invocations["draw"].Count);
    }

    [Fact]
    public void A_line_that_is_switched_off_is_named_to_the_page()
    {
        var shown = Render<QuestionChart>(p =>
            p.Add(c => c.Chart, ResponseCharts.HowLow(Demo.Facts)!)
                .Add(c => c.Former, ResponseCharts.HowLow(Demo.Shallower)!)
                .Add(c => c.FormerName, "before, 280 deep")
        );
        Assert.Equal(
            ["band of doubt", "before, 280 deep", "with leak, fill and coil"],
            shown.FindAll(".qsheet label span").Select(s => s.TextContent).SkipLast(1)
        );
        shown.FindAll(".qsheet input[type=checkbox]")[1].Change(false);
        Assert.Equal(["pencil"], (string[])Drawn.Invocations["draw"][^1].Arguments[2]!);
    }

    [Fact]
    public void Another_question_is_asked_by_its_radio_button()
    {
        var charts = ResponseCharts.All(Demo.Facts);
        var shown = Render<QuestionSet>(p => p.Add(c => c.Charts, charts));
        Assert.Equal(charts.Select(c => c.Title), shown.FindAll(".quest label").Select(l => l.TextContent));
        Assert.Equal("how-low", shown.Find("figure").GetAttribute("data-chart"));
        shown.FindAll(".quest input")[1].Change(true);
        Assert.Equal("how-loud", shown.Find("figure").GetAttribute("data-chart"));
    }

    [Fact]
    public void With_no_chart_there_is_a_sentence()
    {
        Assert.Equal("There is nothing to draw yet.", Render<QuestionSet>(p => p.Add(c => c.Charts, [])).Find("p").TextContent);
    }

    [Theory]
    [InlineData("Down to 28.2 Hz (f10, −10 dB).", "28.2 Hz|−10 dB")]
    [InlineData("Wren 6, 91.2 dB for 60 EUR, up to Stint 7.", "91.2 dB|60 EUR")]
    [InlineData("Even −4.5 dB and ±1.5 dB count, F3 does not.", "−4.5 dB|±1.5 dB")]
    [InlineData("In 1.2 ft³ (74 in³) it gets to 84 °F.", "1.2 ft³|74 in³|84 °F")]
    [InlineData("No figures here.", "")]
    public void Figures_are_set_apart_with_their_units_and_those_of_names_are_not(string text, string figures)
    {
        var shown = Render<Figured>(p => p.Add(f => f.Text, text));
        Assert.Equal(figures, string.Join('|', shown.FindAll("b").Select(b => b.TextContent.Replace('\u00a0', ' '))));
    }
}
