using Stillwall.Materials;
using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Neighbours;

/// <summary>What stands between the listening room and the neighbour, in the ten third-octaves 20 to 160 Hz.</summary>
/// <param name="ReductionDb">Apparent sound reduction, dB; null where a measured level difference comes without the neighbour's room.</param>
/// <param name="DifferenceDb">Level difference from room to room, dB.</param>
/// <param name="UncertaintyDb">Half width of the 95 % band, dB.</param>
public sealed record PartyWall(IReadOnlyList<double>? ReductionDb, IReadOnlyList<double>? DifferenceDb, IReadOnlyList<double>? UncertaintyDb)
{
    // Two-sided 95 % of a normal distribution.
    private const double Coverage = 1.96;

    // Our choice: a measured wall leaves half of what a forecast one does, since neither builder nor construction is in doubt any more.
    private const double MeasuredShare = 0.5;

    // Our choice: a wall of which only the mass is known is a rougher forecast than a construction that was measured somewhere.
    private const double LeastByMassDb = 6;

    /// <summary>The wall as stated or measured.</summary>
    /// <param name="neighbour">The neighbour as stated, or null.</param>
    /// <param name="measuredDb">Measured level differences in the ten bands, dB, or null.</param>
    /// <param name="air">The air, for walls of which only the mass is known; null is 20 °C.</param>
    /// <returns>The wall; its parts are null where something is not stated (see <see cref="Missing"/>).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Measured differences that are not ten.</exception>
    /// <remarks>
    /// Model: D = R − 10 log10(S/A2), A2 = 0.16 V2/T2; a measured D replaces it. Validity: sound fields diffuse enough to have a level; below the
    /// first mode of either room that has no basis.
    /// Source: ISO 16283-1:2014 and ISO 12354-1:2017 for the formula; ISO 12999-1:2020, situation A, for the deviation; 8 dB below 50 Hz and half of
    /// it all for a measured wall are our choice.
    /// Accuracy: its own band.
    /// </remarks>
    public static PartyWall Of(Neighbour? neighbour, IReadOnlyList<double>? measuredDb, Air? air = null)
    {
        var reduction = Apparent(neighbour, air ?? Air.Reference);
        var gain = RoomGainDb(neighbour);
        if (measuredDb is not null)
        {
            Require.Within(measuredDb.Count, ThirdOctaves.Bands.Count, ThirdOctaves.Bands.Count, nameof(measuredDb), "bands");
            return new(gain is null ? null : [.. measuredDb.Select(d => d + gain.Value)], measuredDb, Half(MeasuredShare));
        }

        return reduction is null
            ? new(null, null, null)
            : new(reduction, gain is null ? null : [.. reduction.Select(r => r - gain.Value)], Half(1, IsByMass(neighbour) ? LeastByMassDb : 0));
    }

    /// <summary>What wall area and the neighbour's room add to the level behind the wall.</summary>
    /// <param name="areaM2">Area of the wall, above 0 m².</param>
    /// <param name="volumeM3">Volume of the neighbour's room, above 0 m³.</param>
    /// <param name="decayTimeS">Its decay time, above 0 s.</param>
    /// <returns>10 log10(S/A2), dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not above zero.</exception>
    /// <remarks>
    /// Model: 10 log10(S/A2), A2 = 0.16 V2/T2. Validity: diffuse field behind the wall. Source: ISO 16283-1:2014; ISO 12354-1:2017, Formula (5b).
    /// Accuracy: by definition.
    /// </remarks>
    public static double RoomGainDb(double areaM2, double volumeM3, double decayTimeS)
    {
        Require.Positive(areaM2);
        Require.Positive(volumeM3);
        Require.Positive(decayTimeS);
        return 10 * Math.Log10(areaM2 / (0.16 * volumeM3 / decayTimeS));
    }

    /// <summary>The keys that stand between what is stated and a level behind the wall.</summary>
    /// <param name="neighbour">The neighbour as stated, or null.</param>
    /// <param name="measuredDb">Measured level differences, or null.</param>
    /// <returns>Keys of the project file; empty where nothing is missing.</returns>
    /// <remarks>Model: a check of what is stated. Validity: any project. Source: our choice. Accuracy: exact.</remarks>
    public static IReadOnlyList<string> Missing(Neighbour? neighbour, IReadOnlyList<double>? measuredDb)
    {
        if (measuredDb is not null)
        {
            return [];
        }

        if (neighbour is null)
        {
            return ["brief.neighbour"];
        }

        var missing = new List<string>();
        if (Reduction(neighbour, Air.Reference) is null)
        {
            missing.Add(
                neighbour.Partition == "own" ? "brief.neighbour.reduction"
                : IsByMass(neighbour) ? "brief.neighbour.leaf"
                : "brief.neighbour.partition"
            );
        }

        if (neighbour.AreaM2 is null)
        {
            missing.Add("brief.neighbour.area");
        }

        if (neighbour.RoomVolumeM3 is null)
        {
            missing.Add("brief.neighbour.room_volume");
        }

        if (neighbour.DecayTimeS is null)
        {
            missing.Add("brief.neighbour.decay_time");
        }

        return missing;
    }

    private static double? RoomGainDb(Neighbour? neighbour) =>
        neighbour is { AreaM2: { } area, RoomVolumeM3: { } volume, DecayTimeS: { } decay } ? RoomGainDb(area, volume, decay) : null;

    private static bool IsByMass(Neighbour? neighbour) => neighbour?.Partition is "one-leaf" or "two-leaves";

    // What a maker measured includes every path; what is forecast knows of the wall alone.
    private static IReadOnlyList<double>? Apparent(Neighbour? neighbour, Air air) =>
        Reduction(neighbour, air) is not { } own ? null
        : neighbour!.FlankingDb is { } flanking ? [.. own.Select(r => Partitions.WithFlankingDb(r, flanking))]
        : own;

    // Own values need no construction's name beside them.
    private static IReadOnlyList<double>? Reduction(Neighbour? neighbour, Air air) =>
        neighbour switch
        {
            { Partition: "own" or null, ReductionDb: var own } when Partitions.CoversTheBands(own) => own,
            { Partition: "one-leaf", LeafKgM2: { } leaf } => Leaves.OneDb(leaf, air),
            { Partition: "two-leaves", LeafKgM2: { } first, SecondLeafKgM2: { } second, GapM: { } gap } => Leaves.TwoDb(first, second, gap, air),
            { Partition: { } name } => Partitions.ReductionDb(name),
            _ => null,
        };

    private static double[] Half(double share, double leastDb = 0) =>
        [.. Partitions.StandardDeviationDb.Select(sigma => Coverage * Math.Max(share * sigma, leastDb))];
}
