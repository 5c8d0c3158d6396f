using System.Numerics;
using Stillwall.Neighbours.Equalisers;
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
    [property: ComputedBy("seat-band", "box.effective_volume_m3")] double? SeatDb,
    [property: ComputedBy("room-mean-band", "box.effective_volume_m3")] double? SourceRoomDb,
    [property: ComputedBy("wall-reduction")] double? ReductionDb,
    [property: ComputedBy("neighbour-level", "quiet.bands[].source_room_db", "quiet.bands[].reduction_db")] double? NeighbourDb,
    [property: ComputedBy("wall-uncertainty")] double? UncertaintyDb,
    [property: ComputedBy("limit-curve")] double? CurveDb,
    [property: ComputedBy("over-curve", "quiet.bands[].neighbour_db", "quiet.bands[].curve_db")] double? OverDb
)
{
    /// <summary>The band at another volume setting.</summary>
    /// <param name="louderDb">How much louder, dB; negative for softer.</param>
    /// <returns>The band with every level moved alike; wall, doubt and curve stay.</returns>
    /// <remarks>Model: L + change. Validity: a linear loudspeaker. Source: definition of the level. Accuracy: exact.</remarks>
    public QuietBand Louder(double louderDb) =>
        this with
        {
            SeatDb = SeatDb + louderDb,
            SourceRoomDb = SourceRoomDb + louderDb,
            NeighbourDb = NeighbourDb + louderDb,
            OverDb = OverDb + louderDb,
        };
}

/// <summary>One section of the equaliser that makes the everyday level polite.</summary>
/// <param name="Kind">Kind of section, as the filter command names it.</param>
/// <param name="F0Hz">Corner or middle, Hz.</param>
/// <param name="Q">Q.</param>
/// <param name="GainDb">Gain, dB; 0 where the kind has none.</param>
public sealed record EqualiserSection(
    SectionKind Kind,
    [property: ComputedBy("polite-equaliser", "quiet.bands[].over_db", "quiet.bands[].seat_db")] double F0Hz,
    [property: ComputedBy("polite-equaliser", "quiet.bands[].over_db", "quiet.bands[].seat_db")] double Q,
    [property: ComputedBy("polite-equaliser", "quiet.bands[].over_db", "quiet.bands[].seat_db")] double GainDb
)
{
    /// <summary>
    /// Corner as wished, Hz; null for every kind but the Linkwitz transform, whose <see cref="F0Hz"/> and <see cref="Q"/> are the box as it is.
    /// </summary>
    [ComputedBy("polite-equaliser", "quiet.bands[].over_db", "box.system_resonance_hz", "box.system_q")]
    public double? FpHz { get; init; }

    /// <summary>Q as wished; null as above.</summary>
    [ComputedBy("polite-equaliser", "quiet.bands[].over_db", "box.system_resonance_hz", "box.system_q")]
    public double? PoleQ { get; init; }

    /// <summary>What <c>filter</c> takes to make this section.</summary>
    /// <param name="rateHz">Sampling rate, Hz.</param>
    /// <returns>The inputs of the section.</returns>
    /// <remarks>Model: the same figures. Validity: as the section. Source: W3C 2021. Accuracy: exact.</remarks>
    public FilterInputs At(double rateHz) =>
        new()
        {
            Kind = Kind,
            F0Hz = F0Hz,
            Q = Q,
            GainDb = GainDb,
            FpHz = FpHz,
            PoleQ = PoleQ ?? Analogue.ButterworthQ,
            RateHz = rateHz,
        };

    /// <summary>Response of the section before it is made digital.</summary>
    /// <param name="frequencyHz">Frequency, above 0 Hz.</param>
    /// <returns>Complex response.</returns>
    /// <exception cref="InvalidOperationException">A kind of section that no equaliser here has.</exception>
    /// <remarks>
    /// Model: <see cref="Analogue"/>. Validity: as there. Source: W3C 2021. Accuracy: exact; the digital one differs by less than 0.01 dB below 200
    /// Hz at 44.1 kHz.
    /// </remarks>
    public Complex Response(double frequencyHz) =>
        Kind switch
        {
            SectionKind.Highpass => Analogue.HighPass(frequencyHz, F0Hz, Q),
            SectionKind.Lowshelf => Analogue.LowShelf(frequencyHz, F0Hz, GainDb, Q),
            SectionKind.Peaking => Analogue.Peaking(frequencyHz, F0Hz, GainDb, Q),
            SectionKind.Transform => Analogue.Transform(frequencyHz, F0Hz, Q, FpHz!.Value, PoleQ ?? Analogue.ButterworthQ),
            _ => throw new InvalidOperationException($"\"{Kind}\" is no section of an equaliser here"),
        };
}

/// <summary>A plain high-pass that would do the same.</summary>
/// <param name="F0Hz">Its corner, Hz; its Q is that of a second-order Butterworth.</param>
/// <param name="SeatLossDb">What the seat would lose of the everyday level, dB.</param>
/// <param name="AudibleLossDb">What it would lose of what is audible, dB.</param>
public sealed record PlainHighPass(
    [property: ComputedBy("polite-high-pass", "quiet.bands[].over_db")] double F0Hz,
    [property: ComputedBy("seat-loss", "quiet.bands[].seat_db", "quiet.plain_high_pass.f0_hz")] double SeatLossDb,
    [property: ComputedBy("audible-loss", "quiet.bands[].seat_db", "quiet.plain_high_pass.f0_hz")] double AudibleLossDb
);

/// <summary>Headroom at the everyday level, the programme's peaks included.</summary>
/// <param name="AmplifierDb">Left of the amplifier's voltage, dB; null where not stated.</param>
/// <param name="ExcursionDb">Left of the cone's excursion, dB; null where not stated.</param>
public sealed record Headroom([property: ComputedBy("headroom")] double? AmplifierDb, [property: ComputedBy("headroom")] double? ExcursionDb);

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
    [property: ComputedBy("polite-level", "quiet.bands[].over_db")] double? LoudestPoliteLevelDb,
    IReadOnlyList<EqualiserSection>? Equaliser,
    [property: ComputedBy("polite-level-equalised", "quiet.bands[].over_db", "quiet.equaliser[].f0_hz")] double? LoudestPoliteLevelWithEqualiserDb,
    [property: ComputedBy("seat-loss", "quiet.bands[].seat_db", "quiet.equaliser[].f0_hz")] double? SeatLossDb,
    [property: ComputedBy("lowest-room-mode")] double? LowestRoomModeHz,
    [property: ComputedBy("weighted-level", "quiet.bands[].seat_db")] double? SeatADb,
    [property: ComputedBy("weighted-level", "quiet.bands[].seat_db")] double? SeatCDb,
    IReadOnlyList<string> Missing
)
{
    /// <summary>Where the formula for the wall begins to have a basis, at or above the first mode of both rooms, Hz; null for a measured wall.</summary>
    [ComputedBy("wall-basis", "quiet.lowest_room_mode_hz")]
    public double? WallBasisFromHz { get; init; }

    /// <summary>What the seat loses of what is audible to the equaliser, weighted by how audible each band is, dB.</summary>
    [ComputedBy("audible-loss", "quiet.bands[].seat_db", "quiet.equaliser[].f0_hz")]
    public double? AudibleLossDb { get; init; }

    /// <summary>The plain second-order high-pass that would make the everyday level polite, for comparison; null where none is needed or none would.</summary>
    public PlainHighPass? PlainHighPass { get; init; }

    /// <summary>
    /// What amplifier and cone have left at the everyday level, without and with the equaliser; null where the amplifier or the driver is not stated.
    /// </summary>
    public Headroom? Headroom { get; init; }

    /// <summary>The same with the equaliser.</summary>
    public Headroom? HeadroomWithEqualiser { get; init; }

    /// <summary>The bands behind the equaliser at the same volume setting; null where there is none.</summary>
    public IReadOnlyList<QuietBand>? BandsWithEqualiser { get; init; }

    /// <summary>
    /// How much lower the box could play by Linkwitz transform, behind the equaliser's cuts; null where not at all, or where box, level or limits are
    /// not known.
    /// </summary>
    public BassExtension? Extension { get; init; }

    /// <summary>Weighted limits of one's own; empty where none is stated or the level is not known.</summary>
    public IReadOnlyList<WeightedLimit> WeightedLimits { get; init; } = [];

    /// <summary>The quiet hours; null where none are stated or they cannot be judged.</summary>
    public QuietHoursAnswer? QuietHours { get; init; }
}
