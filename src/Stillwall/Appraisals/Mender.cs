using Stillwall.Appraisals.Findings;
using Stillwall.Projects;

namespace Stillwall.Appraisals;

/// <summary>One plan judged, and remedies of single findings sought when they are asked for, which takes most of the time of an appraisal.</summary>
/// <remarks>What was computed for one remedy's trials serves the next; for one caller at a time.</remarks>
internal sealed class Mender
{
    private readonly Trials trials;

    /// <summary>Judges a plan.</summary>
    public Mender(Project project, IReadOnlyList<DriverSheet> candidates)
    {
        Facts = new Facts(project, candidates);
        Judged = [.. AllFindings.Rules.Select(rule => rule.Of(Facts))];
        trials = new Trials(Facts, [.. Judged.Select(f => f.Verdict)]);
    }

    /// <summary>Everything computed from the plan.</summary>
    public Facts Facts { get; }

    /// <summary>Every finding in the order of the job, without the remedies that a search would have to find.</summary>
    public IReadOnlyList<Finding> Judged { get; }

    /// <summary>One finding with its remedy.</summary>
    /// <returns>The finding as in the whole appraisal; null where there is none of that id.</returns>
    public Finding? Sought(string id) => AllFindings.Find(id) is { } rule ? Remedies.Sought(rule, Judged.First(f => f.Id == rule.Id), trials) : null;
}
