namespace Stillwall.Appraisals.Care;

/// <summary>What to take care of where a hand is at work.</summary>
public static class Cautions
{
    /// <summary>What to take care of at one step.</summary>
    /// <param name="step">The step.</param>
    /// <param name="facts">What is computed from the project; null without a project.</param>
    /// <returns>The cautions that apply, the worst first.</returns>
    /// <remarks>Source: as each row of the table says.</remarks>
    public static IReadOnlyList<StepCaution> At(WorkStep step, Facts? facts) =>
        [.. CautionTable.All.Where(c => c.Steps.Contains(step) && c.Applies(facts)).Select(c => new StepCaution(step, c.Hazard, Said(c.Sentence, facts)))];

    /// <summary>Everything to take care of in a plan.</summary>
    /// <param name="facts">What is computed from the project.</param>
    /// <returns>Step by step, the worst of each first; empty where no cabinet is stated.</returns>
    /// <remarks>Source: as each row of the table says.</remarks>
    public static IReadOnlyList<StepCaution> Of(Facts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.Project.Cabinet is null ? [] : [.. WorkSteps.All.SelectMany(s => At(s.Step, facts))];
    }

    /// <summary>The sentence about one hazard that every plan has.</summary>
    /// <param name="hazard">The hazard.</param>
    /// <returns>The sentence.</returns>
    public static string Of(Hazard hazard) => Said(CautionTable.All.Single(c => c.Hazard == hazard).Sentence, null);

    private static string Said(string sentence, Facts? facts) =>
        facts is null ? sentence : sentence.Replace("{lift_mass}", facts.Show.Mass(facts.Limits.LiftMassKg), StringComparison.Ordinal);
}
