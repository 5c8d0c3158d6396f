using Stillwall.Projects;

namespace Stillwall.Appraisals;

/// <summary>The one thing to do next, after what is stated, judged and logged.</summary>
/// <remarks>Source: order of work by common practice, no source.</remarks>
public static class NextStep
{
    // Findings that a walk to the shop or time mends, not a change of the plan.
    private static readonly string[] Shelf =
        ["parts/filament-in-stock", "pour/powder-in-stock-with-reserve", "pour/dry-before-it-is-sealed", "supplies/nothing-past-its-date", "supplies/all-to-hand-for-each-step"];

    // A step is done once the logbook has an entry of that kind or about that part, or of a later one.
    private static readonly (string Word, string Say)[] Steps =
    [
        ("driver", "get the driver and measure it before anything is printed: impedance, flange, cut-out, depth"),
        ("calibration strip", "print the calibration strip and set the clearances by it"),
        ("wall coupon", "print and pour a wall coupon: fill, bulge, heat and bond in one evening"),
        ("print", "print the parts, the longest first"),
        ("dry fit", "put everything together dry"),
        ("water rehearsal", "fill the cavity with weighed water: it shows leaks and the true volume; let it dry"),
        ("pour", "pour, tilted by 5° from a low opening with a vent for each bay, in lifts; then weigh it and log the mass"),
        ("weigh-in", "weigh it every few days and log the mass until it is dry"),
        ("seal", "seal it"),
        ("paint", "paint it with a primer that suits the plastic"),
        ("wiring", "wire it and check the polarity"),
        ("gasket", "gasket and driver last, screws to the stated torque, and once more a day later"),
        ("proof", "prove it: impedance, tap on the test bar, hold test, sweep"),
    ];

    /// <summary>What to do next.</summary>
    /// <param name="project">The project.</param>
    /// <param name="appraisal">What is computed from it.</param>
    /// <returns>One sentence without a full stop.</returns>
    /// <remarks>Source: order of work by common practice, no source.</remarks>
    public static string Of(Project project, Appraisal appraisal)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(appraisal);
        if (Unstated(project) is { } unstated)
        {
            return unstated;
        }

        var failing = appraisal.Findings.Where(f => f.Verdict == Verdict.Fails && !Shelf.Contains(f.Id) && f.Stage is not ("Proof" or "Logbook")).ToList();
        if (failing.Count > 0)
        {
            var first = failing.FirstOrDefault(f => f.Change.Count > 0) ?? failing[0];
            return $"mend what fails before anything is bought or printed: {first.Topic}: {first.Remedy ?? first.Because}";
        }

        var done = Done(project);
        var isWet = appraisal.Findings.Any(f => f.Id == "pour/dry-before-it-is-sealed" && f.Verdict is Verdict.Fails or Verdict.Unknown);
        var next = Steps[done] is { Word: "weigh-in" } || (done < Steps.Length - 1 && Steps[done].Word == "seal" && isWet) ? Steps.First(s => s.Word == "weigh-in") : Steps[done];
        return done == 0 && appraisal.Findings.Any(f => f.Id == "supplies/all-to-hand-for-each-step" && f.Verdict == Verdict.Fails) && project.Stock is not null
            ? $"{next.Say}; what else is missing stands in the supplies"
            : next.Word == "seal" && project.Cabinet?.Openings?.DryingHoleM is not null ? $"{next.Say}, each drying hole from inside too" : next.Say;
    }

    private static string? Unstated(Project project) =>
        project.Brief == new Brief() ? "state the brief: printer, spot, aim and amplifier"
        : project.Driver is null ? "choose a driver: put its name, or its data sheet, under \"driver\""
        : project.Cabinet is null ? "state the cabinet: outside size, skins and core, or its net volume"
        : null;

    private static int Done(Project project)
    {
        var proven = project.Measured is { SystemResonanceHz: not null, SystemQ: not null };
        var last = Enumerable.Range(0, Steps.Length).LastOrDefault(i => project.Logbook.Any(e => e.Kind == Steps[i].Word || e.Part == Steps[i].Word), -1);
        return Math.Min(proven ? Steps.Length - 1 : last + 1, Steps.Length - 1);
    }
}
