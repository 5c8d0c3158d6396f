using Stillwall.Materials;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Neighbours.Rooms;

namespace Stillwall.Neighbours;

/// <summary>Answers the neighbour question: what crosses the wall at the everyday level, and what would be polite.</summary>
public static class QuietModel
{
    /// <summary>Highest corner of a high-pass in a richer equaliser, Hz (our choice: above it little is left of what the cabinet is for).</summary>
    public const double HighestCornerHz = 80;

    /// <summary>Lowest corner that is tried, Hz (our choice: below it nothing changes in the bands judged).</summary>
    public const double LowestCornerHz = 5;

    // An equaliser that buys less than this is not worth naming (our choice).
    private const double LeastGainDb = 0.05;

    /// <summary>The neighbour question and its answer.</summary>
    /// <param name="inputs">Everyday listening, cabinet, room, wall and curve.</param>
    /// <returns>The answer; null values where something that they need is not stated.</returns>
    /// <remarks>
    /// Model: one broadband gain brings the energy sum of the ten bands at the seat to the everyday level; the same drive gives the room's mean
    /// level; less the wall, plus 10 log10(S/A2), it is the neighbour's. The polite level is the everyday level less the greatest excess over the
    /// curve. The equaliser is the one of several shapes that makes the everyday level polite and takes the least of what is audible at the seat,
    /// never more than the plain high-pass that would do.
    /// Validity: steady programme, no other path than the wall; below the first mode of either room the wall formula has no basis.
    /// Source: wall ISO 16283-1:2014; curve ISO 226:2023 or as stated; how drive, room and measure are tied is our choice.
    /// Accuracy: the band of the wall; 7 to 16 dB either way at these frequencies.
    /// </remarks>
    public static Quiet Of(QuietInputs inputs)
    {
        var (answer, trial) = Asked(inputs);
        return trial is null ? answer : Polite(answer, inputs, trial);
    }

    /// <summary>The same question with an equaliser of one's own instead of a sought one.</summary>
    /// <param name="inputs">Everyday listening, cabinet, room, wall and curve.</param>
    /// <param name="sections">The sections, one after the other.</param>
    /// <returns>The answer; what the sections change is null where nothing is stated to be polite to.</returns>
    /// <exception cref="InvalidOperationException">A kind of section that no equaliser here has.</exception>
    /// <remarks>Model: as the other, no search. Validity: as there. Source: sections W3C 2021. Accuracy: as there.</remarks>
    public static Quiet With(QuietInputs inputs, IReadOnlyList<EqualiserSection> sections)
    {
        ArgumentNullException.ThrowIfNull(sections);
        foreach (var section in sections)
        {
            section.Response(100);
        }

        var (answer, trial) = Asked(inputs);
        return trial is null ? answer : Equalised(Bare(answer, inputs, trial), trial, sections, inputs.Everyday!.LevelDb!.Value);
    }

    private static (Quiet Answer, EqualiserCase? Trial) Asked(QuietInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var drive = Drive.Of(inputs);
        var wall = PartyWall.Of(inputs.Neighbour, inputs.PartyWallDb, inputs.Air);
        var curve = CurveDb(inputs);
        var gain = drive is not null && inputs.Everyday?.LevelDb is { } level ? GainDb(drive, level) : (double?)null;
        IReadOnlyList<QuietBand> bands = [.. Enumerable.Range(0, ThirdOctaves.Bands.Count).Select(i => Band(i, drive, gain, wall, curve))];
        var missing = Missing(inputs, drive);
        var answer = new Quiet(
            Bands: bands,
            LoudestPoliteLevelDb: null,
            Equaliser: null,
            LoudestPoliteLevelWithEqualiserDb: null,
            SeatLossDb: null,
            LowestRoomModeHz: inputs.Room?.LowestModeHz,
            SeatADb: Weighted(bands, Weightings.ADb),
            SeatCDb: Weighted(bands, Weightings.CDb),
            Missing: missing
        )
        {
            WallBasisFromHz = BasisFromHz(inputs),
            WeightedLimits = QuietLimits.Weighted(bands, inputs.Neighbour?.AWeightedLimitDb, inputs.Neighbour?.CWeightedLimitDb),
            QuietHours = inputs.Everyday is { LevelDb: { } everyday, QuietHours: var hours }
                ? QuietLimits.Hours(hours, inputs.Neighbour, bands, everyday)
                : null,
        };
        var limits = Politeness.Of([.. bands.Select(band => band.NeighbourDb)], curve, inputs.Neighbour?.AWeightedLimitDb, inputs.Neighbour?.CWeightedLimitDb);
        if (drive is null || gain is null)
        {
            return (answer, null);
        }

        var headroom = DriveHeadroom.Of(inputs, drive, gain.Value);
        answer = answer with { Headroom = headroom.Left(null) };
        return (answer, limits.IsStated ? new EqualiserCase(drive, limits, headroom, [.. bands.Select(band => band.SeatDb)]) : null);
    }

    private static Quiet Bare(Quiet answer, QuietInputs inputs, EqualiserCase trial)
    {
        var polite = inputs.Everyday!.LevelDb!.Value - trial.OverDb;
        return answer with { LoudestPoliteLevelDb = polite, Equaliser = [], LoudestPoliteLevelWithEqualiserDb = polite, SeatLossDb = 0, AudibleLossDb = 0 };
    }

    private static Quiet Polite(Quiet answer, QuietInputs inputs, EqualiserCase trial)
    {
        var (everyday, over) = (inputs.Everyday!.LevelDb!.Value, trial.OverDb);
        var bare = Bare(answer, inputs, trial);
        if (over > 0)
        {
            bare = EqualiserSearch.Plain(trial) is { } plain
                ? bare with
                {
                    PlainHighPass = new(plain.CornerHz, plain.Effect.SeatLossDb, plain.Effect.AudibleLossDb),
                }
                : bare;
            bare =
                EqualiserSearch.Best(trial, inputs.SystemResonanceHz, inputs.SystemQ, Seeds(answer.Bands, inputs.Room)) is { } best
                && over - best.Effect.OverDb >= LeastGainDb
                    ? Equalised(bare, trial, best.Sections, everyday)
                    : bare;
        }

        return inputs is { SystemResonanceHz: { } hertz, SystemQ: { } q } ? bare with { Extension = BassExtension.Of(trial, bare.Equaliser!, hertz, q) } : bare;
    }

    private static Quiet Equalised(Quiet bare, EqualiserCase trial, IReadOnlyList<EqualiserSection> sections, double everydayDb)
    {
        var effect = trial.Of(sections);
        return bare with
        {
            Equaliser = sections,
            LoudestPoliteLevelWithEqualiserDb = everydayDb - effect.OverDb,
            SeatLossDb = effect.SeatLossDb,
            AudibleLossDb = effect.AudibleLossDb,
            HeadroomWithEqualiser = trial.HeadroomOfLast(),
            BandsWithEqualiser = trial.BandsOfLast(bare.Bands),
        };
    }

    // Cuts are tried first at the two bands that are most over, and at the mode of the room that is nearest to the worst.
    private static List<double> Seeds(IReadOnlyList<QuietBand> bands, RoomModel? room)
    {
        var worst = bands
            .Zip(ThirdOctaves.Bands)
            .OrderByDescending(pair => pair.First.OverDb ?? pair.First.NeighbourDb + Weightings.ADb(pair.Second.CentreHz) - 200)
            .Take(2)
            .Select(pair => pair.Second.CentreHz)
            .ToList();
        if (room is null)
        {
            return worst;
        }

        var modes =
            from x in Enumerable.Range(0, 4)
            from y in Enumerable.Range(0, 4)
            from z in Enumerable.Range(0, 4)
            where x + y + z > 0
            select room.ModeHz(x, y, z);
        return [.. worst, modes.MinBy(mode => Math.Abs(Math.Log(mode / worst[0])))];
    }

    private static double GainDb(Drive drive, double everydayDb) => everydayDb - LevelDb(Enumerable.Range(0, drive.Count).Sum(i => drive.Seat(i)))!.Value;

    private static QuietBand Band(int i, Drive? drive, double? gainDb, PartyWall wall, IReadOnlyList<double?>? curve)
    {
        var seat = drive is null ? null : LevelDb(drive.Seat(i)) + gainDb;
        var source = drive is null ? null : LevelDb(drive.Mean(i)) + gainDb;
        var neighbour = source - wall.DifferenceDb?[i];
        return new(
            BandHz: ThirdOctaves.Bands[i].NominalHz,
            SeatDb: seat,
            SourceRoomDb: source,
            ReductionDb: wall.ReductionDb?[i],
            NeighbourDb: neighbour,
            UncertaintyDb: wall.UncertaintyDb?[i],
            CurveDb: curve?[i],
            OverDb: neighbour - curve?[i]
        );
    }

    // Null where a band has no power at all: the level of nothing is no number.
    private static double? LevelDb(double power) => power > 0 ? 10 * Math.Log10(power / (Air.ReferencePressurePa * Air.ReferencePressurePa)) : null;

    private static double? Weighted(IReadOnlyList<QuietBand> bands, Func<double, double> weightingDb) =>
        Politeness.WeightedDb([.. bands.Select(band => band.SeatDb)], weightingDb);

    // A room of known volume has its first mode highest where it is a cube; a measured wall needs no diffuse field.
    private static double? BasisFromHz(QuietInputs inputs) =>
        inputs is { PartyWallDb: null, Neighbour.RoomVolumeM3: { } volume }
            ? Math.Max(inputs.Room?.LowestModeHz ?? 0, inputs.Air.SpeedOfSoundMS / (2 * Math.Cbrt(volume)))
            : null;

    private static IReadOnlyList<double?>? CurveDb(QuietInputs inputs) =>
        inputs.Neighbour is { } neighbour ? QuietLimits.CurveDb(neighbour.Curve, neighbour.CurveDb, neighbour.AllowanceDb) : null;

    private static string[] Missing(QuietInputs inputs, Drive? drive)
    {
        var missing = new List<string>();
        AddIf(missing, inputs.Everyday?.LevelDb is null, inputs.Everyday is null ? "brief.everyday" : "brief.everyday.level");
        AddIf(missing, inputs.Everyday is not null && Drive.SpectrumDb(inputs) is null, "brief.everyday.spectrum");
        AddIf(missing, inputs.CrossoverHz is null, "brief.aim.crossover");
        AddIf(missing, inputs.VolumeVelocityM3S is null, "driver");
        AddIf(missing, inputs.StatedRoom is not null && inputs.Room is null, RoomGeometry.Missing(inputs.StatedRoom) ?? "brief.room");
        AddIf(missing, missing.Count == 0 && drive is null, "driver");
        missing.AddRange(PartyWall.Missing(inputs.Neighbour, inputs.PartyWallDb));
        AddIf(missing, inputs.Neighbour is { AWeightedLimitDb: null, CWeightedLimitDb: null } && CurveDb(inputs) is null, "brief.neighbour.curve");
        AddIf(missing, inputs.Neighbour is null && inputs.PartyWallDb is not null, "brief.neighbour");
        return [.. missing];
    }

    private static void AddIf(List<string> keys, bool condition, string key)
    {
        if (condition)
        {
            keys.Add(key);
        }
    }
}
