namespace Stillwall.Pours;

/// <summary>What a log of weighings says.</summary>
/// <param name="DryMassKg">Mass that it tends to, kg; null where the weighings do not bend towards one yet.</param>
/// <param name="TimeConstantDays">Time in which the free water falls to 37 %, days; null with it.</param>
/// <param name="ReadyDate">Day on which it is dry enough to be sealed; null with it.</param>
/// <param name="StoichiometricDryMassKg">What the plan says it weighs dry, kg; null without a project.</param>
public sealed record DryOutReport(double? DryMassKg, double? TimeConstantDays, string? ReadyDate, double? StoichiometricDryMassKg);
