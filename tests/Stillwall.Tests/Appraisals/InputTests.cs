using System.Text.RegularExpressions;
using Stillwall.Appraisals;
using Stillwall.Appraisals.Explaining;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>Every stated number is moved against every result, both ways: what moves a result is among its inputs, and what is among them moves it.</summary>
public sealed class InputTests
{
    private const double StepRatio = 0.01,
        LeastRatio = 1e-6;

    public static TheoryData<string> Projects => ["demo", "with a passive radiator", "a ready box"];

    [Theory]
    [MemberData(nameof(Projects))]
    public void The_inputs_of_every_result_are_those_that_move_it(string name)
    {
        var project = Named(name);
        var facts = new Facts(project, DemoDrivers.All);
        var all = Why.Results(facts).Where(r => !r.EndsWith(".margin", StringComparison.Ordinal));
        var results = (name == "demo" ? all : all.GroupBy(Shape).Select(g => g.Last())).ToList();
        var told = Why.Of(facts, results)
            .ToDictionary(w => w.Result, w => w.Inputs.Where(i => i.Acts is not null).ToDictionary(i => i.Key, i => i.Acts!.Value));
        var wrong = Numbers(project).AsParallel().AsOrdered().SelectMany(key => Wrong(facts, project, key, results, told)).ToList();
        Assert.True(wrong.Count == 0, $"{wrong.Count} of {results.Count} results, such as\n" + string.Join('\n', wrong.Take(400)));
    }

    // Lines of one list have one formula: of the other projects the last of each does.
    private static string Shape(string result) =>
        result.StartsWith("findings", StringComparison.Ordinal) ? result : Regex.Replace(result, @"\[[^\]]*\]", "[]");

    // A second and independent way: the whole project changed in its text form, appraised from nothing.
    private static List<string> Wrong(Facts facts, Project project, string key, List<string> results, Dictionary<string, Dictionary<string, Acting>> told)
    {
        var value = (double)ProjectKeys.Get(project, key)!;
        var moved = new[] { 1 - StepRatio, 1 + StepRatio }
            .Select(factor => ProjectKeys.With(project, key, (object)(value * factor)))
            .Where(changed => !ProjectChecks.Of(changed).Any())
            .Select(changed => new Facts(changed, DemoDrivers.All))
            .ToList();
        var wrong = new List<string>();
        foreach (var result in results)
        {
            var was = Why.ValueOf(facts, result);
            var moves =
                was is not null
                && moved.Any(f => Why.ValueOf(f, result) is not { } now || Math.Abs(now - was.Value) > LeastRatio * Math.Abs(was.Value) + 1e-12);
            var acts = told[result].TryGetValue(key, out var how) ? how : (Acting?)null;
            if (moves && acts is null or Acting.Inactive)
            {
                wrong.Add($"{result}: {key} moves it and is {(acts is null ? "not named" : "said not to act")}");
            }
            else if (!moves && acts is Acting.Smooth)
            {
                wrong.Add($"{result}: {key} is named and does not move it");
            }
        }

        return wrong;
    }

    private static List<string> Numbers(Project project) =>
        [
            .. ProjectKeys
                .AllKeys()
                .Where(key =>
                    !key.StartsWith("driver.", StringComparison.Ordinal)
                    && ProjectKeys.Get(project, key) is double and not 0
                    && ProjectKeys.Find(key)!.Dimension != Dimension.Temperature
                ),
        ];

    private static Project Named(string name) =>
        name switch
        {
            "demo" => DemoProject.Project,
            "a ready box" => DemoProject.Project with
            {
                Cabinet = new Cabinet
                {
                    NetVolumeM3 = 0.024,
                    Fill = new Fill { Factor = 1.2 },
                    Leak = new Leak
                    {
                        GapM = 1e-4,
                        LengthM = 0.7,
                        DepthM = 0.008,
                    },
                },
            },
            _ => DemoProject.Project with
            {
                Cabinet = DemoProject.Project.Cabinet! with
                {
                    Fill = null,
                    PassiveRadiator = new PassiveRadiator
                    {
                        SdM2 = 0.03,
                        MmsKg = 0.18,
                        CmsMPerN = 5e-4,
                        RmsKgS = 2,
                    },
                },
            },
        };
}
