using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Bunit;
using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Proving;
using Stillwall.Pours;
using Stillwall.Web.Pages;
using Stillwall.Web.Store;

namespace Stillwall.Web.Tests.Pages;

/// <summary>
/// Every caution of the table stands on the page of its stage, beside its proof, or at its step at the bench; a new hazard is looked for by itself.
/// </summary>
public sealed class CautionTests(Page page) : IClassFixture<Page>
{
    private static readonly string[] Proofs = [.. Proof.All.Select(p => p.Kind)];

    // Those are sounds and filters that the command line makes; the page has them beside the proofs and at the stage Quiet.
    private static readonly WorkStep[] OfTheCommandLine = [WorkStep.Signal, WorkStep.Equaliser];

    public static TheoryData<string> Stages => [.. WorkSteps.All.Select(s => s.Stage).OfType<string>().Distinct()];

    private static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    [Fact]
    public void Every_step_has_its_place_on_the_page()
    {
        var places = Enum.GetValues<PourAction>()
            .Select(WorkSteps.Of)
            .OfType<WorkStep>()
            .Append(WorkStep.CleanUp)
            .Concat(Proof.All.Select(p => p.Step))
            .Concat(OfTheCommandLine)
            .ToHashSet();
        Assert.All(WorkSteps.All, s => Assert.True(s.Stage is not null || places.Contains(s.Step), $"{s.Word}: give it a stage, or a place of its own"));
    }

    [Theory]
    [MemberData(nameof(Stages))]
    public async Task A_stage_says_every_caution_of_its_steps(string stage)
    {
        var said = Texts((await Document(stage.ToLowerInvariant())).QuerySelectorAll(".work .care"));
        var steps = WorkSteps.All.Where(s => s.Stage == stage).ToList();
        Assert.All(steps.SelectMany(s => Cautions.At(s.Step, Demo.Facts)), c => Assert.Contains(said, t => t.Contains(c.Sentence, StringComparison.Ordinal)));
        Assert.NotEmpty(said);
    }

    [Fact]
    public async Task Every_page_lists_all_of_them_by_step_and_the_next_step_s_with_it()
    {
        var document = await Document("brief");
        var all = document.QuerySelectorAll(".notes dd").Select(d => d.TextContent);
        Assert.Equal(Cautions.Of(Demo.Facts).Select(c => c.Sentence), all);
        Assert.Equal(Cautions.At(WorkStep.Print, Demo.Facts).Select(c => c.Sentence), document.QuerySelectorAll(".notes .care li").Select(l => l.TextContent));
    }

    [Fact]
    public async Task A_proof_says_every_caution_of_its_step()
    {
        var document = await Document("proof");
        Assert.Equal(
            Proofs.Order(StringComparer.Ordinal),
            document.QuerySelectorAll("[data-proof]").Select(p => p.GetAttribute("data-proof")!).Order(StringComparer.Ordinal)
        );
        Assert.All(
            Proofs,
            kind =>
                Assert.Equal(
                    Cautions.At(Proof.Of(kind).Step, Demo.Facts).Select(c => c.Sentence),
                    document.QuerySelectorAll($"[data-proof={kind}] .care li").Select(l => l.TextContent)
                )
        );
        Assert.All(Proofs, kind => Assert.NotEmpty(document.QuerySelectorAll($"[data-proof={kind}] .care li")));
    }

    [Fact]
    public async Task Before_the_first_water_the_bench_asks_for_the_water_rehearsal()
    {
        var document = await Document("pour/bench");
        Assert.Equal(Cautions.At(WorkStep.Pour, Demo.Facts).Select(c => c.Sentence), document.QuerySelectorAll(".bench .warn li").Select(l => l.TextContent));
        Assert.Contains(
            document.QuerySelectorAll(".lay li"),
            l =>
                l.TextContent.Contains(
                    $"water rehearsal done: the form took {Demo.Facts.Show.Mass(Demo.Facts.Cast.RehearsalWaterKg!.Value)}",
                    StringComparison.Ordinal
                )
        );
    }

    [Fact]
    public void Every_step_at_the_bench_says_its_cautions()
    {
        using var context = new BunitContext();
        context.JSInterop.Mode = JSRuntimeMode.Loose;
        context.JSInterop.SetupModule("./page.js").Mode = JSRuntimeMode.Loose;
        var desk = new Desk(page.Workshop);
        context.Services.AddSingleton(desk).AddSingleton<TimeProvider>(new StillClock());
        var bench = context.Render<BenchPage>();
        foreach (var i in Enumerable.Range(0, bench.FindAll(".lay input").Count))
        {
            bench.FindAll(".lay input")[i].Change(true);
        }

        bench.FindAll(".hands .hand")[^1].Click();
        foreach (var step in BenchStep.Of(Demo.Facts.Bench!))
        {
            var said = bench.FindAll(".warn.now li").Select(l => l.TextContent).ToList();
            Assert.All(Cautions.At(WorkSteps.Of(step.Action)!.Value, Demo.Facts), c => Assert.Contains(c.Sentence, said));
            Assert.InRange(said.Count, 1, 4);
            bench.FindAll(".hands .hand")[^1].Click();
        }

        Assert.Equal(Cautions.At(WorkStep.CleanUp, Demo.Facts).Select(c => c.Sentence), bench.FindAll(".warn li").Select(l => l.TextContent));
    }

    // Without ticks: a page that is drawn anew between looking for a button and pressing it has another button.
    private sealed class StillClock : TimeProvider
    {
        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
            base.CreateTimer(callback, state, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
    }

    private static List<string> Texts(IEnumerable<IElement> elements) => [.. elements.Select(e => e.TextContent)];

    private async Task<IDocument> Document(string path)
    {
        using var client = page.Client();
        using var answer = await client.GetAsync(new Uri($"/{path}", UriKind.Relative), Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return new HtmlParser().ParseDocument(await answer.Content.ReadAsStringAsync(Stop));
    }
}
