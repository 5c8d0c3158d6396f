using Stillwall.Materials;
using Stillwall.Neighbours.Equalisers;
using Stillwall.Neighbours.Rooms;

namespace Stillwall.Neighbours;

/// <summary>Answers the neighbour question: what crosses the wall at the everyday level, and what would be polite.</summary>
public static class QuietModel
{
    /// <summary>Highest corner that is tried, Hz (our choice: above it little is left of what the cabinet is for).</summary>
    public const double HighestCornerHz = 80;

    /// <summary>Lowest corner that is tried, Hz (our choice: below it nothing changes in the bands judged).</summary>
    public const double LowestCornerHz = 5;

    // An equaliser that buys less than this is not worth naming (our choice).
    private const double LeastGainDb = 0.05;

    /// <summary>The neighbour question and its answer.</summary>
    /// <param name="inputs">Everyday listening, cabinet, room, wall and curve.</param>
    /// <returns>The answer; null values where something that they need is not stated.</returns>
    /// <remarks>
    /// Model: one broadband gain brings the energy sum of the ten bands at the seat to the everyday level; the same drive gives the room's mean level; less the wall, plus 10 log10(S/A2), it is the neighbour's.
    /// The polite level is the everyday level less the greatest excess over the curve. The equaliser is the lowest second-order Butterworth high-pass that makes the everyday level polite, at most 80 Hz.
    /// Validity: steady programme, no other path than the wall; below the first mode of either room the wall formula has no basis.
    /// Source: wall ISO 16283-1:2014; curve ISO 226:2023 or as stated; how drive, room and measure are tied is our choice.
    /// Accuracy: the band of the wall; 7 to 16 dB either way at these frequencies.
    /// </remarks>
    public static Quiet Of(QuietInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var drive = Drive.Of(inputs);
        var wall = PartyWall.Of(inputs.Neighbour, inputs.PartyWallDb, inputs.Air);
        var curve = CurveDb(inputs);
        var gain = drive is not null && inputs.Everyday?.LevelDb is { } level ? GainDb(drive, level) : (double?)null;
        IReadOnlyList<QuietBand> bands = [.. Enumerable.Range(0, ThirdOctaves.Bands.Count).Select(i => Band(i, drive, gain, wall, curve))];
        var missing = Missing(inputs, drive);
        var answer = new Quiet(bands, null, null, null, null, inputs.Room?.LowestModeHz, Weighted(bands, Weightings.ADb), Weighted(bands, Weightings.CDb), missing) { WallBasisFromHz = BasisFromHz(inputs) };
        return drive is null || gain is null || !bands.Any(band => band.OverDb is not null) ? answer : Polite(answer, drive, inputs.Everyday!.LevelDb!.Value);
    }

    private static Quiet Polite(Quiet answer, Drive drive, double everydayDb)
    {
        var over = Over(answer.Bands, drive, null);
        var bare = answer with { LoudestPoliteLevelDb = everydayDb - over, Equaliser = [], LoudestPoliteLevelWithEqualiserDb = everydayDb - over, SeatLossDb = 0 };
        if (over <= 0)
        {
            return bare;
        }

        var corner = Corner(answer.Bands, drive);
        var equalised = Over(answer.Bands, drive, corner);
        if (over - equalised < LeastGainDb)
        {
            return bare;
        }

        var kept = 10 * Math.Log10(Enumerable.Range(0, drive.Count).Sum(i => drive.Seat(i, corner)) / Enumerable.Range(0, drive.Count).Sum(i => drive.Seat(i)));
        return bare with
        {
            Equaliser = [new EqualiserSection("highpass", corner, Analogue.ButterworthQ, 0)],
            LoudestPoliteLevelWithEqualiserDb = everydayDb - equalised,
            SeatLossDb = -kept,
        };
    }

    // The excess falls as the corner rises, since the high-pass falls at every frequency; so the corner is found by halving.
    private static double Corner(IReadOnlyList<QuietBand> bands, Drive drive)
    {
        if (Over(bands, drive, HighestCornerHz) > 0)
        {
            return HighestCornerHz;
        }

        var (low, high) = (LowestCornerHz, HighestCornerHz);
        while (high - low > 1e-6 * high)
        {
            var middle = Math.Sqrt(low * high);
            (low, high) = Over(bands, drive, middle) > 0 ? (middle, high) : (low, middle);
        }

        return high;
    }

    // Greatest excess over the curve with a high-pass or none; the high-pass changes each band by its own mean power.
    private static double Over(IReadOnlyList<QuietBand> bands, Drive drive, double? highPassHz)
    {
        var greatest = double.NegativeInfinity;
        for (var i = 0; i < bands.Count; i++)
        {
            if (bands[i].OverDb is { } over)
            {
                greatest = Math.Max(greatest, highPassHz is null ? over : over + (10 * Math.Log10(drive.Mean(i, highPassHz) / drive.Mean(i))));
            }
        }

        return greatest;
    }

    private static double GainDb(Drive drive, double everydayDb) =>
        everydayDb - LevelDb(Enumerable.Range(0, drive.Count).Sum(i => drive.Seat(i)))!.Value;

    private static QuietBand Band(int i, Drive? drive, double? gainDb, PartyWall wall, IReadOnlyList<double?>? curve)
    {
        var seat = drive is null ? null : LevelDb(drive.Seat(i)) + gainDb;
        var source = drive is null ? null : LevelDb(drive.Mean(i)) + gainDb;
        var neighbour = source - wall.DifferenceDb?[i];
        return new(ThirdOctaves.Bands[i].NominalHz, seat, source, wall.ReductionDb?[i], neighbour, wall.UncertaintyDb?[i], curve?[i], neighbour - curve?[i]);
    }

    // Null where a band has no power at all: the level of nothing is no number.
    private static double? LevelDb(double power) =>
        power > 0 ? 10 * Math.Log10(power / (Air.ReferencePressurePa * Air.ReferencePressurePa)) : null;

    private static double? Weighted(IReadOnlyList<QuietBand> bands, Func<double, double> weightingDb) => bands.All(band => band.SeatDb is null)
        ? null
        : ThirdOctaves.SumDb(bands.Zip(ThirdOctaves.Bands).Where(pair => pair.First.SeatDb is not null).Select(pair => pair.First.SeatDb!.Value + weightingDb(pair.Second.CentreHz)));

    // A room of known volume has its first mode highest where it is a cube; a measured wall needs no diffuse field.
    private static double? BasisFromHz(QuietInputs inputs) => inputs is { PartyWallDb: null, Neighbour.RoomVolumeM3: { } volume }
        ? Math.Max(inputs.Room?.LowestModeHz ?? 0, inputs.Air.SpeedOfSoundMS / (2 * Math.Cbrt(volume)))
        : null;

    private static IReadOnlyList<double?>? CurveDb(QuietInputs inputs)
    {
        var values = inputs.Neighbour switch
        {
            { Curve: "own" or null, CurveDb: var own } when Partitions.CoversTheBands(own) => [.. own!.Select(level => (double?)level)],
            { Curve: { } name } => LimitCurves.LevelDb(name),
            _ => null,
        };
        return values is null ? null : [.. values.Select(level => level + inputs.Neighbour!.AllowanceDb)];
    }

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
        AddIf(missing, inputs.Neighbour is not null && CurveDb(inputs) is null, "brief.neighbour.curve");
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
