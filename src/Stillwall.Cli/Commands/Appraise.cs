using Stillwall.Appraisals;
using Stillwall.Cli.Output;
using Stillwall.Cli.Running;
using Stillwall.Files.Json;

namespace Stillwall.Cli.Commands;

/// <summary><c>appraise</c>: everything computed and judged.</summary>
internal static class Appraise
{
    internal static Verb Verb()
    {
        var project = Common.Project;
        var json = Common.Json;
        var all = new Flag("--all", "every finding and every figure, not only what does not hold");
        var strict = new Flag("--strict", "exit code 1 where some finding fails");
        var watch = new Flag("--watch", "again whenever the project or its drivers' table is saved, until it is stopped");
        return new Verb(
            "appraise",
            "computes everything and says what does not hold, with its remedy, and what to do next",
            "stillwall appraise my-cabinet --all"
        )
        {
            Takes = [project, json, all, strict, watch],
            Do = call =>
            {
                if (!call.Has(watch))
                {
                    return Once(call.Session, call.Text(project), call.Has(json), call.Has(all), call.Has(strict));
                }

                return call.Has(json) || call.Has(strict)
                    ? throw Refusal.Input("--watch: shows the words for people, again and again; without --json and --strict")
                    : Watching.Of(call.Session, call.Text(project), () => Once(call.Session, call.Text(project), false, call.Has(all), false));
            },
        };
    }

    private static int Once(Session session, string? project, bool json, bool all, bool strict)
    {
        var loaded = LoadedProject.Load(session, project);
        var appraisal = Appraisal.Of(loaded.Project, loaded.Candidates);
        session.Print(json ? ResultJson.Write(appraisal) : new AppraisalText(loaded, session.Terminal).Of(appraisal, all));
        return strict && appraisal.Findings.Any(f => f.Verdict == Verdict.Fails) ? ExitCodes.SomethingFails : ExitCodes.Done;
    }
}
