using Stillwall.Numerics;

namespace Stillwall.Neighbours;

/// <summary>One third-octave of the neighbour question at the everyday level.</summary>
/// <param name="BandHz">Nominal band, Hz.</param>
/// <param name="SeatDb">Level at the seat, dB.</param>
/// <param name="SourceRoomDb">Mean level of the listening room for the same drive, dB; the seat's where no room is stated.</param>
/// <param name="ReductionDb">Apparent sound reduction of the party wall, dB.</param>
/// <param name="NeighbourDb">Level in the neighbour's room, dB.</param>
/// <param name="UncertaintyDb">Half width of the 95 % band of <paramref name="NeighbourDb"/>, dB.</param>
/// <param name="CurveDb">Curve with its allowance, dB.</param>
/// <param name="OverDb">Neighbour's level over the curve, dB.</param>
public sealed record QuietBand(
    double BandHz,
    [property: ComputedBy("seat-band", "brief.everyday.level", "brief.everyday.programme", "brief.everyday.spectrum", "brief.aim.crossover", "box.effective_volume_m3", "cabinet.leak", "brief.room", "brief.room.seat_at", "brief.room.cabinet_at", "brief.air.temperature", "brief.air.pressure")] double? SeatDb,
    [property: ComputedBy("room-mean-band", "brief.everyday.level", "brief.everyday.programme", "brief.everyday.spectrum", "brief.aim.crossover", "box.effective_volume_m3", "cabinet.leak", "brief.room", "brief.room.cabinet_at", "brief.air.temperature", "brief.air.pressure")] double? SourceRoomDb,
    [property: ComputedBy("wall-reduction", "brief.neighbour.partition", "brief.neighbour.reduction", "brief.neighbour.leaf", "brief.neighbour.second_leaf", "brief.neighbour.gap", "brief.neighbour.flanking", "measured.party_wall")] double? ReductionDb,
    [property: ComputedBy("neighbour-level", "quiet.bands[].source_room_db", "quiet.bands[].reduction_db", "brief.neighbour.area", "brief.neighbour.room_volume", "brief.neighbour.decay_time")] double? NeighbourDb,
    [property: ComputedBy("wall-uncertainty", "brief.neighbour.partition", "measured.party_wall")] double? UncertaintyDb,
    [property: ComputedBy("limit-curve", "brief.neighbour.curve", "brief.neighbour.allowance")] double? CurveDb,
    [property: ComputedBy("over-curve", "quiet.bands[].neighbour_db", "quiet.bands[].curve_db")] double? OverDb);

/// <summary>One section of the equaliser that makes the everyday level polite.</summary>
/// <param name="Kind">Kind of section, as the filter command names it.</param>
/// <param name="F0Hz">Corner, Hz.</param>
/// <param name="Q">Q.</param>
/// <param name="GainDb">Gain, dB; 0 where the kind has none.</param>
public sealed record EqualiserSection(
    string Kind,
    [property: ComputedBy("polite-high-pass", "quiet.bands[].over_db")] double F0Hz,
    [property: ComputedBy("polite-high-pass", "quiet.bands[].over_db")] double Q,
    [property: ComputedBy("polite-high-pass", "quiet.bands[].over_db")] double GainDb);

/// <summary>The neighbour question and its answer; null where something that it needs is not stated.</summary>
/// <param name="Bands">The ten third-octaves from 20 to 160 Hz.</param>
/// <param name="LoudestPoliteLevelDb">Greatest everyday level with no band over the curve, dB.</param>
/// <param name="Equaliser">The equaliser that makes the everyday level polite; empty where none is needed or none helps.</param>
/// <param name="LoudestPoliteLevelWithEqualiserDb">The same volume setting in the same measure with the equaliser, dB.</param>
/// <param name="SeatLossDb">What the seat loses of the everyday level to the equaliser, dB.</param>
/// <param name="LowestRoomModeHz">Lowest mode of the listening room, Hz; below it the formula for the wall has no basis.</param>
/// <param name="SeatADb">A-weighted level at the seat from these bands alone, dB.</param>
/// <param name="SeatCDb">C-weighted level at the seat from these bands alone, dB.</param>
/// <param name="Missing">Keys of the project file that stand between this and a full answer.</param>
public sealed record Quiet(
    IReadOnlyList<QuietBand> Bands,
    [property: ComputedBy("polite-level", "brief.everyday.level", "quiet.bands[].over_db")] double? LoudestPoliteLevelDb,
    IReadOnlyList<EqualiserSection>? Equaliser,
    [property: ComputedBy("polite-level-equalised", "brief.everyday.level", "quiet.bands[].over_db", "quiet.equaliser[].f0_hz")] double? LoudestPoliteLevelWithEqualiserDb,
    [property: ComputedBy("seat-loss", "quiet.bands[].seat_db", "quiet.equaliser[].f0_hz")] double? SeatLossDb,
    [property: ComputedBy("lowest-room-mode", "brief.room.width", "brief.room.length", "brief.room.height")] double? LowestRoomModeHz,
    [property: ComputedBy("weighted-level", "quiet.bands[].seat_db")] double? SeatADb,
    [property: ComputedBy("weighted-level", "quiet.bands[].seat_db")] double? SeatCDb,
    IReadOnlyList<string> Missing)
{
    /// <summary>Where the formula for the wall begins to have a basis, at or above the first mode of both rooms, Hz; null for a measured wall.</summary>
    [ComputedBy("wall-basis", "brief.neighbour.room_volume", "quiet.lowest_room_mode_hz")]
    public double? WallBasisFromHz { get; init; }

    /// <summary>Weighted limits of one's own; empty where none is stated or the level is not known.</summary>
    public IReadOnlyList<WeightedLimit> WeightedLimits { get; init; } = [];

    /// <summary>The quiet hours; null where none are stated or they cannot be judged.</summary>
    public QuietHoursAnswer? QuietHours { get; init; }
}
