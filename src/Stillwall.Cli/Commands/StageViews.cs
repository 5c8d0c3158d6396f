using Stillwall.Appraisals;
using Stillwall.Appraisals.Care;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands;

/// <summary><c>pour</c>, <c>supplies</c>: one stage of the appraisal to take to the bench or the shop.</summary>
internal static class StageViews
{
    internal static Verb Pour() =>
        Of(
            "Pour",
            "pour",
            "a clock for the bench: what to lay ready, every moment of each batch, and by when it must be poured",
            (loaded, appraisal, terminal) =>
                loaded.Facts() is { Bench: { } bench } facts ? new PourText(facts, appraisal, terminal).Of(bench) : "The pour cannot be planned yet.\n",
            60
        );

    internal static Verb Supplies() =>
        Of(
            "Supplies",
            "supplies",
            "a list for the shop: what the build needs, what is on the shelf, what to buy in which packs and for how much",
            (loaded, appraisal, terminal) =>
            {
                var show = Show.Of(loaded.Project);
                return SupplyText.Table(appraisal, show, terminal) is { } table
                    ? $"{table}\n{SupplyText.Summary(appraisal, show, terminal.Width)}\n{CareText.At(WorkStep.Supplies, loaded.Facts(), terminal.Width)}"
                    : "Nothing is needed as far as the project says.\n";
            },
            hasChecks: false
        );

    private static Verb Of(
        string stage,
        string name,
        string summary,
        Func<LoadedProject, Appraisal, Terminal, string> says,
        int widest = int.MaxValue,
        bool hasChecks = true
    )
    {
        var project = Common.Project;
        return new Verb(name, summary, $"stillwall {name} my-cabinet")
        {
            Takes = [project],
            Do = call =>
            {
                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                var terminal = call.Session.Terminal with { Width = Math.Min(widest, call.Session.Terminal.Width) };
                var appraisal = Appraisal.OfStage(loaded.Project, loaded.Candidates, stage);
                call.Session.Print(says(loaded, appraisal, terminal));
                call.Session.Print(hasChecks ? new AppraisalText(loaded, terminal).Checks(appraisal, stage) : "");
                return ExitCodes.Done;
            },
        };
    }
}
