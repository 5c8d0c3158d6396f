using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;

namespace Stillwall.Cli.Commands;

/// <summary><c>pour</c>, <c>supplies</c>, <c>quiet</c>: one stage of the appraisal to take to the bench or the shop.</summary>
internal static class StageViews
{
    internal static Verb Pour() => Of("Pour", "pour", "the pour plan: what to mix, in which batches, and by when each must be in", FigureTables.Pour);

    internal static Verb Supplies() => Of("Supplies", "supplies", "what the build needs, what is on the shelf, what to buy and for how much", FigureTables.Supplies);

    internal static Verb Quiet() => Of("Quiet", "quiet", "what the neighbour gets at the everyday level, band by band", (a, _, terminal) => FigureTables.Quiet(a, terminal));

    private static Verb Of(string stage, string name, string summary, Func<Appraisal, Show, Terminal, string?> table)
    {
        var project = Common.Project;
        return new Verb(name, summary, $"stillwall {name} my-cabinet")
        {
            Takes = [project],
            Do = call =>
            {
                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                var appraisal = Appraisal.Of(loaded.Project, loaded.Candidates);
                if (table(appraisal, Show.Of(loaded.Project), call.Session.Terminal) is { } shown)
                {
                    call.Session.PrintLine(shown);
                }

                foreach (var finding in appraisal.Findings.Where(f => f.Stage == stage))
                {
                    call.Session.PrintLine($"{Ink.Mark(finding.Verdict)} {finding.Topic}: {finding.Because}" + (finding.Remedy is { } remedy ? $"\n  → {remedy}" : ""));
                }

                foreach (var caution in Cautions.Of(loaded.Project, appraisal))
                {
                    call.Session.PrintLine($"! {caution}");
                }

                return ExitCodes.Done;
            },
        };
    }
}
