using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Cli.Running;
using Stillwall.Files.Projects;
using Stillwall.Projects;

namespace Stillwall.Cli.Commands;

/// <summary><c>apply</c>: does what a finding proposes.</summary>
internal static class Apply
{
    internal static Verb Verb()
    {
        var id = new TextArgument("FINDING-ID", "id of a finding, such as pour/skins-bulge; appraise shows it");
        var project = Common.ProjectOption;
        return new Verb(
            "apply",
            "makes the change that a finding proposes and says which verdicts changed; the former file is kept",
            "stillwall apply pour/skins-bulge --project my-cabinet"
        )
        {
            Takes = [id, project],
            Do = call =>
            {
                var loaded = LoadedProject.Load(call.Session, call.Text(project));
                var finding = Proposed(Appraisal.Of(loaded.Project, loaded.Candidates), call.Text(id)!);
                var text = loaded.Text;
                var changes = new List<(string Key, string Stated, string Text)>();
                foreach (var change in finding.Change)
                {
                    text = ProjectTextEditor.Set(text, change.Key, Stated(change), change.Value is not string);
                    changes.Add((change.Key, Stated(change), text));
                }

                return Changing.Save(call.Session, loaded, changes);
            },
        };
    }

    private static Finding Proposed(Appraisal appraisal, string id)
    {
        var finding =
            appraisal.Findings.FirstOrDefault(f => f.Id == id)
            ?? throw Refusal.Input($"{id}: no such finding{NearestWord.Suggest(id, appraisal.Findings.Select(f => f.Id))}; appraise --all shows them");
        var why = finding.Remedy is { } remedy ? $"nothing stated to change; {remedy}" : $"it {Output.AppraisalText.Says(finding.Verdict)}; nothing to change";
        return finding.Change.Count > 0 ? finding : throw Refusal.Input($"{id}: {why}");
    }

    private static string Stated(Change change) => Convert.ToString(change.Value, CultureInfo.InvariantCulture) ?? "";
}
