using Stillwall.Appraisals.Care;
using Stillwall.Projects;

namespace Stillwall.Appraisals;

/// <summary>The one thing to do next, after what is stated, judged and logged.</summary>
/// <remarks>Source: order of work by common practice, no source.</remarks>
public static class NextStep
{
    // Findings that a walk to the shop or time mends, not a change of the plan.
    private static readonly string[] Shelf =
    [
        "parts/filament-in-stock",
        "pour/powder-in-stock-with-reserve",
        "pour/dry-before-it-is-sealed",
        "supplies/nothing-past-its-date",
        "supplies/all-to-hand-for-each-step",
    ];

    // A step is done once the logbook has an entry of that kind or about that part, or of a later one.
    private static IReadOnlyList<WorkStepLine> Steps => WorkSteps.OfTheJob;

    /// <summary>What to do next.</summary>
    /// <param name="project">The project.</param>
    /// <param name="appraisal">What is computed from it.</param>
    /// <returns>One sentence without a full stop.</returns>
    /// <remarks>Source: order of work by common practice, no source.</remarks>
    public static string Of(Project project, Appraisal appraisal)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(appraisal);
        return Mending(project, appraisal) ?? Said(Found(project, appraisal), project, appraisal);
    }

    /// <summary>The step of the job that is next.</summary>
    /// <param name="project">The project.</param>
    /// <param name="appraisal">What is computed from it.</param>
    /// <returns>The step; null where something has to be stated or mended before.</returns>
    /// <remarks>Source: order of work by common practice, no source.</remarks>
    public static WorkStep? StepOf(Project project, Appraisal appraisal)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(appraisal);
        return Mending(project, appraisal) is null ? Found(project, appraisal).Step : null;
    }

    // What comes before all work; null where nothing does.
    private static string? Mending(Project project, Appraisal appraisal)
    {
        if (Unstated(project) is { } unstated)
        {
            return unstated;
        }

        var failing = appraisal.Findings.Where(f => f.Verdict == Verdict.Fails && !Shelf.Contains(f.Id) && f.Stage is not ("Proof" or "Logbook")).ToList();
        var first = failing.FirstOrDefault(f => f.Change.Count > 0) ?? failing.FirstOrDefault();
        return first is null ? null : $"mend what fails before anything is bought or printed: {first.Topic}: {first.Remedy ?? first.Because}";
    }

    private static WorkStepLine Found(Project project, Appraisal appraisal)
    {
        var done = Done(project);
        var isWet = appraisal.Findings.Any(f => f.Id == "pour/dry-before-it-is-sealed" && f.Verdict is Verdict.Fails or Verdict.Unknown);
        return done < Steps.Count - 1 && Steps[done].Step == WorkStep.Seal && isWet ? Steps.First(s => s.Step == WorkStep.WeighIn) : Steps[done];
    }

    private static string Said(WorkStepLine next, Project project, Appraisal appraisal) =>
        next == Steps[0] && appraisal.Findings.Any(f => f.Id == "supplies/all-to-hand-for-each-step" && f.Verdict == Verdict.Fails) && project.Stock is not null
            ? $"{next.Say}; what else is missing stands in the supplies"
        : next.Step == WorkStep.Seal && project.Cabinet?.Openings?.DryingHoleM is not null ? $"{next.Say}, each drying hole from inside too"
        : next.Say!;

    private static string? Unstated(Project project) =>
        project.Brief == new Brief() ? "state the brief: printer, spot, aim and amplifier"
        : project.Driver is null ? "choose a driver: put its name, or its data sheet, under \"driver\""
        : project.Cabinet is null ? "state the cabinet: outside size, skins and core, or its net volume"
        : null;

    private static int Done(Project project)
    {
        var proven = project.Measured is { SystemResonanceHz: not null, SystemQ: not null };
        var last = Enumerable.Range(0, Steps.Count).LastOrDefault(i => project.Logbook.Any(e => e.Kind == Steps[i].Word || e.Part == Steps[i].Word), -1);
        return Math.Min(proven ? Steps.Count - 1 : last + 1, Steps.Count - 1);
    }
}
