using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Neighbours;

/// <summary>The neighbour's weighted level against a limit of one's own.</summary>
/// <param name="Weighting"><c>A</c> or <c>C</c>.</param>
/// <param name="NeighbourDb">Weighted level next door from the ten bands, dB.</param>
/// <param name="LimitDb">The limit, dB.</param>
/// <param name="OverDb">Level over the limit, dB.</param>
/// <param name="UncertaintyDb">Half width of the 95 % band, all bands being off together, dB.</param>
public sealed record WeightedLimit(
    string Weighting,
    [property: ComputedBy("weighted-neighbour", "quiet.bands[].neighbour_db")] double NeighbourDb,
    [property: ComputedBy("limit-curve")] double LimitDb,
    [property: ComputedBy("over-curve", "quiet.bands[].neighbour_db")] double OverDb,
    [property: ComputedBy("weighted-doubt", "quiet.bands[].uncertainty_db")] double UncertaintyDb
);

/// <summary>The second everyday level, for the quiet hours.</summary>
/// <param name="LevelDb">Level at the seat in the quiet hours, dB.</param>
/// <param name="OverDb">Greatest excess over the curve or limit of those hours, dB.</param>
/// <param name="UncertaintyDb">Half width of the 95 % band there, dB.</param>
/// <param name="BandHz">The band that breaks it first, Hz; null where a weighted limit does.</param>
/// <param name="LoudestPoliteLevelDb">Greatest level at the seat with nothing over, dB.</param>
public sealed record QuietHoursAnswer(
    [property: ComputedBy("quiet-hours")] double LevelDb,
    [property: ComputedBy("quiet-hours", "quiet.bands[].neighbour_db")] double OverDb,
    [property: ComputedBy("wall-uncertainty")] double UncertaintyDb,
    [property: ComputedBy("quiet-hours", "quiet.bands[].neighbour_db")] double? BandHz,
    [property: ComputedBy("quiet-hours", "quiet.bands[].neighbour_db")] double LoudestPoliteLevelDb
);

/// <summary>Limits that are no curve by bands, and those of the quiet hours.</summary>
internal static class QuietLimits
{
    /// <summary>The curve with its allowance; null where none is stated.</summary>
    internal static IReadOnlyList<double?>? CurveDb(string? name, IReadOnlyList<double>? ownDb, double allowanceDb)
    {
        IReadOnlyList<double?>? values = name switch
        {
            "own" or null when Partitions.CoversTheBands(ownDb) => [.. ownDb!.Select(level => (double?)level)],
            { } known => LimitCurves.LevelDb(known),
            _ => null,
        };
        return values is null ? null : [.. values.Select(level => level + allowanceDb)];
    }

    /// <summary>The weighted limits that are stated and can be judged.</summary>
    internal static IReadOnlyList<WeightedLimit> Weighted(IReadOnlyList<QuietBand> bands, double? limitADb, double? limitCDb) =>
        [.. new[] { One("A", limitADb, Weightings.ADb, bands), One("C", limitCDb, Weightings.CDb, bands) }.OfType<WeightedLimit>()];

    private static WeightedLimit? One(string weighting, double? limitDb, Func<double, double> weightingDb, IReadOnlyList<QuietBand> bands)
    {
        if (limitDb is not { } limit || Politeness.WeightedDb([.. bands.Select(b => b.NeighbourDb)], weightingDb) is not { } level)
        {
            return null;
        }

        var worst = Politeness.WeightedDb([.. bands.Select(b => b.NeighbourDb + (b.UncertaintyDb ?? 0))], weightingDb)!.Value;
        return new(weighting, level, limit, level - limit, worst - level);
    }

    /// <summary>The quiet hours; null where they are not stated or cannot be judged.</summary>
    internal static QuietHoursAnswer? Hours(QuietHours? hours, Neighbour? neighbour, IReadOnlyList<QuietBand> bands, double everydayDb)
    {
        if (hours?.LevelDb is not { } level || neighbour is null)
        {
            return null;
        }

        var softer = level - everydayDb;
        var curve = CurveDb(hours.Curve ?? neighbour.Curve, neighbour.CurveDb, hours.AllowanceDb);
        IReadOnlyList<QuietBand> soft =
        [
            .. bands.Select((b, i) => b with { NeighbourDb = b.NeighbourDb + softer, OverDb = b.NeighbourDb + softer - curve?[i] }),
        ];
        var judged = soft.Where(b => b.OverDb is not null)
            .Select(b => (Over: b.OverDb!.Value, Doubt: b.UncertaintyDb ?? 0, Band: (double?)b.BandHz))
            .Concat(Weighted(soft, hours.AWeightedLimitDb, hours.CWeightedLimitDb).Select(w => (Over: w.OverDb, Doubt: w.UncertaintyDb, Band: (double?)null)))
            .ToList();
        if (judged.Count == 0)
        {
            return null;
        }

        var worst = judged.MaxBy(j => j.Over);
        return new(level, worst.Over, worst.Doubt, worst.Band, level - worst.Over);
    }
}
