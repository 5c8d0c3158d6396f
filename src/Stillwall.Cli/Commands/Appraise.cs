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
        return new Verb("appraise", "computes everything and says what does not hold, with its remedy, and what to do next", "stillwall appraise my-cabinet --all")
        {
            Takes = [project, json, all, strict],
            Do = call =>
            {
                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                var appraisal = Appraisal.Of(loaded.Project, loaded.Candidates);
                call.Session.Print(call.Has(json) ? ResultJson.Write(appraisal) : new AppraisalText(loaded, call.Session.Terminal).Of(appraisal, call.Has(all)));
                return call.Has(strict) && appraisal.Findings.Any(f => f.Verdict == Verdict.Fails) ? ExitCodes.SomethingFails : ExitCodes.Done;
            },
        };
    }
}
