using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>A plan mended by nothing but what its findings propose, one change after the other.</summary>
public sealed class MendingTests
{
    private static readonly Lazy<IReadOnlyList<Walk>> Walks = new(() =>
        [.. VariedProjects.All.AsParallel().AsOrdered().Select(p => Mended(p.Project, p.Appraisal))]
    );

    [Fact]
    public void Every_change_that_is_applied_leaves_fewer_findings_that_fail() =>
        Assert.All(
            Walks.Value,
            w =>
                Assert.All(
                    w.Failing.Zip(w.Failing.Skip(1)),
                    pair => Assert.True(pair.Second < pair.First, $"{string.Join(" → ", w.Failing)}: {string.Join("; ", w.Steps)}")
                )
        );

    [Fact]
    public void No_walk_comes_back_to_a_plan_that_it_has_left() =>
        Assert.All(Walks.Value, w => Assert.Equal(w.Plans.Count, w.Plans.Distinct(StringComparer.Ordinal).Count()));

    [Fact]
    public void What_still_fails_at_the_end_says_what_is_to_be_done_or_that_nothing_stated_does_it() =>
        Assert.All(Walks.Value, w => Assert.All(w.Left, f => Assert.True(f.Change.Count == 0 && !string.IsNullOrWhiteSpace(f.Remedy), $"{f.Id}: {f.Because}")));

    [Fact]
    public void A_change_says_what_it_makes_fail_and_makes_nothing_else_fail() =>
        Assert.All(
            Walks.Value.SelectMany(w => w.Steps),
            s => Assert.All(s.Broken, b => Assert.Contains($"{b.Stage}: {b.Topic}", s.Remedy, StringComparison.Ordinal))
        );

    [Fact]
    public void The_walks_are_long_enough_to_try_the_changes()
    {
        Assert.True(Walks.Value.Sum(w => w.Steps.Count) >= 60, $"only {Walks.Value.Sum(w => w.Steps.Count)} changes were applied");
        Assert.Contains(Walks.Value, w => w.Left.Count > 0);
        Assert.True(Walks.Value.Count(w => w.Steps.Count >= 3) >= 10);
    }

    private static Walk Mended(Project project, Appraisal appraisal)
    {
        var walk = new Walk([], [Fails(appraisal.Findings).Count], [Plan(project)], []);
        var mender = new Mender(project, DemoDrivers.All);
        var waiting = new Queue<Finding>(Fails(appraisal.Findings));
        var vain = 0;
        while (vain < waiting.Count)
        {
            if (mender.Sought(waiting.Dequeue().Id) is not { Verdict: Verdict.Fails } finding)
            {
                continue;
            }

            if (finding.Change.Count == 0)
            {
                waiting.Enqueue(finding);
                vain++;
                continue;
            }

            project = finding.Change.Aggregate(project, (p, c) => ProjectKeys.With(p, c.Key, Convert.ToString(c.Value, CultureInfo.InvariantCulture)!));
            var (before, after) = (Fails(mender.Judged), new Mender(project, DemoDrivers.All));
            var broken = Fails(after.Judged).Where(f => !before.Any(b => b.Id == f.Id)).ToList();
            walk.Steps.Add(new Step(finding.Id, finding.Remedy!, broken));
            walk.Failing.Add(Fails(after.Judged).Count);
            walk.Plans.Add(Plan(project));
            broken.ForEach(waiting.Enqueue);
            (mender, vain) = (after, 0);
        }

        return walk with
        {
            Left = [.. waiting],
        };
    }

    private static List<Finding> Fails(IEnumerable<Finding> findings) => [.. findings.Where(f => f.Verdict == Verdict.Fails)];

    private static string Plan(Project project) =>
        string.Join(
            '\n',
            ProjectKeys
                .AllKeys()
                .Select(key => (key, ProjectKeys.Get(project, key)))
                .Where(p => p.Item2 is double or int)
                .Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.key} {p.Item2}"))
        );

    private sealed record Step(string Id, string Remedy, IReadOnlyList<Finding> Broken);

    private sealed record Walk(List<Step> Steps, List<int> Failing, List<string> Plans, IReadOnlyList<Finding> Left);
}
