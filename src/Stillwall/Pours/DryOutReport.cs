using System.Globalization;
using Stillwall.Numerics;

namespace Stillwall.Pours;

/// <summary>What a log of weighings says.</summary>
/// <param name="DryMassKg">Mass that it tends to, kg; null where the weighings do not bend towards one yet.</param>
/// <param name="TimeConstantDays">Time in which the free water falls to 37 %, days; null with it.</param>
/// <param name="ReadyDate">Day on which it is dry enough to be sealed; null with it.</param>
/// <param name="StoichiometricDryMassKg">What the plan says it weighs dry, kg; null without a project.</param>
/// <param name="DryMassDoubtKg">Half the 95 % band of the dry mass, kg; null with fewer than four weighings.</param>
/// <param name="ReadyDoubtDays">Half the 95 % band of the day, days; null with fewer than four weighings.</param>
public sealed record DryOutReport(
    [property: ComputedBy("drying-fit")] double? DryMassKg,
    [property: ComputedBy("drying-fit")] double? TimeConstantDays,
    string? ReadyDate,
    [property: ComputedBy("dry-cabinet-mass", "mass.shells_kg", "pour.dry_in_cabinet_kg")] double? StoichiometricDryMassKg,
    [property: ComputedBy("drying-fit")] double? DryMassDoubtKg = null,
    [property: ComputedBy("drying-fit")] double? ReadyDoubtDays = null
)
{
    /// <summary>Reads weighings.</summary>
    /// <param name="weighIns">Day and mass of each, kg above 0.</param>
    /// <param name="drynessRatio">Free water that may be left over the dry mass, 1e-6 to 1.</param>
    /// <param name="stoichiometricDryKg">What the plan says it weighs dry, kg; null without a project.</param>
    /// <returns>The report.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value out of range.</exception>
    /// <remarks>Model: <see cref="DryOut.Fit"/>. Validity: as that. Source: as that. Accuracy: as that; the day is rounded up.</remarks>
    public static DryOutReport Of(IReadOnlyList<(DateOnly Date, double MassKg)> weighIns, double drynessRatio, double? stoichiometricDryKg)
    {
        ArgumentNullException.ThrowIfNull(weighIns);
        var fit = DryOut.Fit([.. weighIns.Select(w => new WeighIn(w.Date.DayNumber, w.MassKg))]);
        var ready =
            fit?.ReadyDays(drynessRatio) is { } day && day < DateOnly.MaxValue.DayNumber
                ? DateOnly.FromDayNumber((int)Math.Ceiling(day)).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
                : null;
        return new DryOutReport(
            fit?.DryMassKg,
            fit?.TimeConstantDays,
            ready,
            stoichiometricDryKg,
            fit?.DryMassDoubtKg,
            ready is null ? null : fit?.ReadyDoubtDays(drynessRatio)
        );
    }
}
