namespace Stillwall.Appraisals.Care;

/// <summary>One row of what to take care of.</summary>
/// <param name="Sentence">What to do; <c>{lift_mass}</c> stands for that limit of the project.</param>
/// <param name="Source">A standard, or "common practice, no source".</param>
internal sealed record Caution(Hazard Hazard, string Sentence, IReadOnlyList<WorkStep> Steps, string Source)
{
    /// <summary>Whether a plan gives cause for it, from what is stated and computed; null is no project at all.</summary>
    public Func<Facts?, bool> Applies { get; init; } = _ => true;

    /// <summary>Whether most plans give no cause for it: told in the short list of a plan too.</summary>
    public bool IsUnusual { get; init; }
}

/// <summary>A caution at one step of a plan.</summary>
/// <param name="Step">The step.</param>
/// <param name="Hazard">What can hurt.</param>
/// <param name="Sentence">What to do.</param>
public sealed record StepCaution(WorkStep Step, Hazard Hazard, string Sentence);
