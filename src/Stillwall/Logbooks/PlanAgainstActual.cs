using Stillwall.Projects;

namespace Stillwall.Logbooks;

/// <summary>What the plan says of one thing that a logbook entry may be about.</summary>
/// <param name="Part">Its name: a part, an item of the supplies, the cabinet, or a step.</param>
/// <param name="MassKg">Planned mass, kg; null where the plan has none.</param>
/// <param name="LeastS">Least time to reckon with, s; null where the plan has none.</param>
/// <param name="MostS">Most time to reckon with, s; null where the plan has none.</param>
/// <param name="Price">Planned price, in the project's currency; null where the plan has none.</param>
public sealed record PlannedLine(string Part, double? MassKg, double? LeastS, double? MostS, double? Price);

/// <summary>One actual figure beside the planned one.</summary>
/// <param name="Date">Day of the entry.</param>
/// <param name="Part">What it is about.</param>
/// <param name="Measure">Which figure: <c>mass</c>, <c>time</c> or <c>cost</c>.</param>
/// <param name="ActualValue">The actual figure: kg, s, or the project's currency.</param>
/// <param name="PlannedValue">The planned figure, the nearer end where the plan has a span.</param>
/// <param name="DeviationRatio">How far the actual figure is from the plan, as a ratio of it; positive where it is more.</param>
public sealed record PlanDeviation(DateOnly Date, string Part, string Measure, double ActualValue, double PlannedValue, double DeviationRatio);

/// <summary>Puts what happened beside what was planned.</summary>
public static class PlanAgainstActual
{
    private static readonly string[] Kinds = ["actual", "attempt"];

    /// <summary>Compares masses, times and costs of the logbook with the plan.</summary>
    /// <param name="plan">The plan's lines; names are compared without regard to case.</param>
    /// <param name="logbook">The entries; those of kind <c>actual</c> and <c>attempt</c> count, without a part they are about the cabinet.</param>
    /// <returns>One line for each figure that both know, in the order of the entries.</returns>
    /// <remarks>
    /// Model: actual/planned − 1; a time within the planned span deviates by nothing, outside it from the nearer end. Source: arithmetic; what is
    /// compared with what is our choice. Accuracy: the scales' and the clock's.
    /// </remarks>
    public static IReadOnlyList<PlanDeviation> Of(IReadOnlyList<PlannedLine> plan, IReadOnlyList<LogEntry> logbook)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(logbook);
        return [.. logbook.Where(e => Kinds.Contains(e.Kind.Trim(), StringComparer.OrdinalIgnoreCase)).SelectMany(e => Lines(plan, e))];
    }

    private static IEnumerable<PlanDeviation> Lines(IReadOnlyList<PlannedLine> plan, LogEntry entry)
    {
        var part = string.IsNullOrWhiteSpace(entry.Part) ? "cabinet" : entry.Part.Trim();
        if (plan.FirstOrDefault(l => string.Equals(l.Part, part, StringComparison.OrdinalIgnoreCase)) is not { } line)
        {
            return [];
        }

        return
        [
            .. One("mass", entry.MassKg, line.MassKg, line.MassKg),
            .. One("time", entry.DurationS, line.LeastS, line.MostS),
            .. One("cost", entry.Cost, line.Price, line.Price),
        ];

        IEnumerable<PlanDeviation> One(string measure, double? actual, double? least, double? most)
        {
            if (actual is { } value && least is > 0 and { } from && most is { } to)
            {
                var planned = Math.Clamp(value, from, Math.Max(from, to));
                yield return new PlanDeviation(entry.Date, line.Part, measure, value, planned, (value - planned) / planned);
            }
        }
    }
}
