using System.Globalization;
using System.Text.RegularExpressions;
using Stillwall.Appraisals;
using Stillwall.Projects;

namespace Stillwall.Tests.Appraisals;

/// <summary>What may be relied on of every finding, whatever the project.</summary>
public sealed partial class FindingTests
{
    private static readonly string[] Stages = ["Brief", "Driver", "Cabinet", "Walls", "Parts", "Pour", "Supplies", "Quiet", "Proof", "Logbook"];

    // Advice tells; it never stops anybody.
    private static readonly string[] Advice =
    [
        "walls/not-heavier-than-it-need-be",
        "parts/longest-single-print",
        "quiet/force-into-the-floor-does-it-walk",
        "logbook/plan-against-actual",
    ];

    // A value with a band of doubt is tight while the limit lies within the band, even where the value itself is past it.
    private static readonly string[] Banded = ["cabinet/tolerance-of-drivers", "quiet/neighbour-at-the-everyday-level"];

    // "not stated yet: depth of the driver (driver.depth)", or the key alone where it is the word.
    [GeneratedRegex(@"not (stated|measured) yet: (?:[^()]*\((?<key>[^)]+)\)|(?<key>\w+))$")]
    private static partial Regex Missing();

    [Fact]
    public void Every_change_of_every_finding_applied_makes_that_finding_hold_or_tight()
    {
        var offered = VariedProjects
            .All.SelectMany(p => p.Appraisal.Findings.Where(f => f.Change.Count > 0).Select(f => (p.Project, Finding: f)))
            .Where(o => o.Finding.Verdict is not Verdict.Holds)
            .ToList();
        var failing = offered
            .AsParallel()
            .AsOrdered()
            .Select(o => (o.Finding, After: Applied(o.Project, o.Finding)))
            .Where(o => o.After.Verdict is not (Verdict.Holds or Verdict.Tight))
            .Select(o => $"{o.Finding.Id}: {string.Join(", ", o.Finding.Change)} leaves it {o.After.Verdict}: {o.After.Because}")
            .ToList();
        Assert.Empty(failing);
        Assert.True(offered.Count >= 100, $"only {offered.Count} changes were tried");
    }

    [Fact]
    public void A_change_is_only_offered_where_something_is_to_be_mended_and_is_told_in_words_too() =>
        Assert.All(
            Findings(),
            f =>
            {
                Assert.True(f.Change.Count == 0 || f.Verdict is Verdict.Fails or Verdict.Tight, $"{f.Id} holds and still offers a change");
                Assert.True(f.Change.Count == 0 || !string.IsNullOrWhiteSpace(f.Remedy), $"{f.Id} offers a change without words");
            }
        );

    [Fact]
    public void A_change_names_keys_of_the_project_file_and_values_that_it_accepts() =>
        Assert.All(Findings().SelectMany(f => f.Change), c => Assert.NotNull(ProjectKeys.With(new Project { FormatVersion = 1 }, c.Key, Written(c))));

    [Fact]
    public void At_least_25_findings_have_unique_ids_in_kebab_case_and_come_in_the_order_of_the_job()
    {
        var findings = VariedProjects.All[0].Appraisal.Findings;
        Assert.True(findings.Count >= 25);
        Assert.Equal(findings.Count, findings.Select(f => f.Id).Distinct().Count());
        Assert.All(findings, f => Assert.Matches(KebabId, f.Id));
        Assert.All(findings, f => Assert.StartsWith(f.Stage.ToLowerInvariant() + "/", f.Id, StringComparison.Ordinal));
        var order = findings.Select(f => Array.IndexOf(Stages, f.Stage)).ToList();
        Assert.DoesNotContain(-1, order);
        Assert.Equal(order.Order(), order);
    }

    [Fact]
    public void Every_project_is_told_the_same_findings()
    {
        var ids = VariedProjects.All[0].Appraisal.Findings.Select(f => f.Id).ToList();
        Assert.All(Appraisals(), a => Assert.Equal(ids, a.Findings.Select(f => f.Id)));
    }

    [Fact]
    public void Every_finding_says_why_and_on_what_basis() =>
        Assert.All(
            Findings(),
            f =>
            {
                Assert.False(string.IsNullOrWhiteSpace(f.Because), f.Id);
                Assert.False(string.IsNullOrWhiteSpace(f.Basis), f.Id);
                Assert.False(string.IsNullOrWhiteSpace(f.Unit), f.Id);
                Assert.DoesNotContain("NaN", f.Because, StringComparison.Ordinal);
                Assert.DoesNotContain("∞", f.Because, StringComparison.Ordinal);
            }
        );

    [Fact]
    public void What_is_unknown_has_neither_value_nor_limit_nor_margin() =>
        Assert.All(Findings().Where(f => f.Verdict == Verdict.Unknown), f => Assert.Equal((null, null, null, f.Id), (f.Value, f.Limit, f.Margin, f.Id)));

    [Fact]
    public void What_is_said_not_to_be_stated_is_not_stated()
    {
        var left = ProjectKeys
            .AllKeys()
            .Where(key => ProjectKeys.Get(DemoProject.Project, key) is not null && ProjectKeys.Find(key) is { Required: false })
            .Select(key => (Key: key, Project: ProjectKeys.With(DemoProject.Project, key, (object?)Default(key))))
            .Where(p => !ProjectChecks.Of(p.Project).Any())
            .ToList();
        Assert.True(left.Count > 80);
        var told = left.AsParallel()
            .AsOrdered()
            .SelectMany(p => Appraisal.WithoutRemedies(p.Project, DemoDrivers.All).Findings.Select(f => (p.Key, p.Project, Finding: f)))
            .AsSequential()
            .Concat(VariedProjects.BareAll.SelectMany(b => b.Appraisal.Findings.Select(f => (Key: b.Name, b.Project, Finding: f))))
            .Where(t => Missing().IsMatch(t.Finding.Because))
            .ToList();
        Assert.True(told.Count > 80);
        Assert.All(
            told,
            t =>
                Assert.True(
                    IsAbsent(t.Project, Missing().Match(t.Finding.Because).Groups["key"].Value),
                    $"without {t.Key}, {t.Finding.Id} says: {t.Finding.Because}"
                )
        );
    }

    [Fact]
    public void What_fails_is_past_its_limit() =>
        Assert.All(
            Findings().Where(f => f.Verdict == Verdict.Fails),
            f => Assert.True(f.Margin is null or < 0, $"{f.Id} fails with a margin of {f.Margin}: {f.Because}")
        );

    [Fact]
    public void What_holds_is_within_its_limit() =>
        Assert.All(
            Findings().Where(f => f.Verdict == Verdict.Holds),
            f => Assert.True(f.Margin is null or >= 0, $"{f.Id} holds with a margin of {f.Margin}: {f.Because}")
        );

    [Fact]
    public void What_is_tight_is_within_its_limit_or_in_doubt_or_advice() =>
        Assert.All(
            Findings().Where(f => f.Verdict == Verdict.Tight && !Advice.Contains(f.Id) && !Banded.Contains(f.Id)),
            f => Assert.True(f.Margin is null or >= 0, $"{f.Id} is tight with a margin of {f.Margin}: {f.Because}")
        );

    [Fact]
    public void Advice_never_fails()
    {
        Assert.All(Advice, id => Assert.Contains(Findings(), f => f.Id == id));
        Assert.DoesNotContain(Findings(), f => Advice.Contains(f.Id) && f.Verdict == Verdict.Fails);
    }

    [Fact]
    public void A_known_verdict_with_value_and_limit_has_the_distance_between_them_as_its_margin() =>
        Assert.All(
            Findings().Where(f => f is { Value: not null, Limit: not null, Margin: not null }),
            f =>
                Assert.True(
                    Math.Abs(Math.Abs(f.Limit!.Value - f.Value!.Value) - Math.Abs(f.Margin!.Value)) <= 1e-9 * Math.Max(1, Math.Abs(f.Limit.Value)),
                    $"{f.Id}: value {f.Value}, limit {f.Limit}, margin {f.Margin}"
                )
        );

    [Fact]
    public void The_drawn_projects_are_far_enough_apart_to_try_the_findings()
    {
        var failing = VariedProjects.All.SelectMany(p => p.Appraisal.Findings).Where(f => f.Verdict == Verdict.Fails).Select(f => f.Id).Distinct().ToList();
        Assert.True(failing.Count >= 25, $"only {failing.Count} findings fail anywhere: {string.Join(", ", failing)}");
    }

    private static IEnumerable<Appraisal> Appraisals() => VariedProjects.All.Select(p => p.Appraisal).Concat(VariedProjects.BareAll.Select(b => b.Appraisal));

    private static IEnumerable<Finding> Findings() => Appraisals().SelectMany(a => a.Findings);

    private static Finding Applied(Project project, Finding finding)
    {
        var changed = finding.Change.Aggregate(project, (p, change) => ProjectKeys.With(p, change.Key, Written(change)));
        Assert.Empty(ProjectChecks.Of(changed));
        return Appraisal.WithoutRemedies(changed, DemoDrivers.All).Findings.Single(f => f.Id == finding.Id);
    }

    private static object? Default(string key)
    {
        var path = key.Split('.');
        var above = path.Length == 1 ? ModelBlock.Root : ProjectKeys.Find(string.Join('.', path[..^1]))!.Block!;
        return above.Find(path[^1])!.Property.GetValue(above.Defaults);
    }

    private static bool IsAbsent(Project project, string key)
    {
        if (!key.StartsWith("driver.", StringComparison.Ordinal))
        {
            return ProjectKeys.Find(key) is not null && ProjectKeys.Get(project, key) is null or (System.Collections.ICollection { Count: 0 });
        }

        var sheet = project.Driver?.Sheet ?? DemoDrivers.All.FirstOrDefault(s => s.Name == project.Driver?.Name);
        return sheet is null || ModelBlock.Of(typeof(DriverSheet)).Find(key["driver.".Length..]) is not { } field || field.Property.GetValue(sheet) is null;
    }

    // As the value would be typed or stand in the file.
    private static string Written(Change change) => Convert.ToString(change.Value, CultureInfo.InvariantCulture)!;

    [GeneratedRegex("^[a-z]+/[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex KebabId { get; }
}
