using System.Numerics;
using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Neighbours.Rooms;

/// <summary>What a search of places may move, and how finely.</summary>
public sealed record PlaceOptions
{
    /// <summary>Whether the cabinet may be moved; it then stands along the walls.</summary>
    public bool MovesCabinet { get; init; } = true;

    /// <summary>Whether the seat may be moved.</summary>
    public bool MovesSeat { get; init; } = true;

    /// <summary>Upper end of the bands that count, 25 to 160 Hz; usually the crossover.</summary>
    public double HighestHz { get; init; } = 100;

    /// <summary>Distance between places that are tried, 0.1 to 5 m; null takes a tenth of the room's mean side, at least 0.3 m.</summary>
    public double? StepM { get; init; }

    /// <summary>Distance of the cone from the wall it stands at, 0 to 5 m.</summary>
    public double CabinetFromWallM { get; init; } = 0.3;

    /// <summary>Least distance of the ears from every wall, 0 to 5 m.</summary>
    public double SeatFromWallM { get; init; } = 0.6;

    /// <summary>Least distance between cabinet and seat, 0 to 20 m.</summary>
    public double ApartM { get; init; } = 1;
}

/// <summary>One way to stand and sit.</summary>
/// <param name="Cabinet">Centre of the cone.</param>
/// <param name="Seat">The listener's ears.</param>
/// <param name="SeatOverMeanDb">Level at the seat over the mean of the room, dB; what is gained here the neighbour does not get.</param>
/// <param name="UnevennessDb">Standard deviation of the third-octaves at the seat, dB.</param>
public sealed record PlaceChoice(Place Cabinet, Place Seat, double SeatOverMeanDb, double UnevennessDb);

/// <summary>What other places gain over the present ones.</summary>
/// <param name="There">The other places.</param>
/// <param name="Now">The present ones.</param>
public sealed record PlaceGain(PlaceChoice There, PlaceChoice Now)
{
    /// <summary>Level at the seat over the room's mean against the present places, dB.</summary>
    [ComputedBy("place-gain")]
    public double GainDb => There.SeatOverMeanDb - Now.SeatOverMeanDb;

    /// <summary>Standard deviation of the third-octaves at the other seat, dB.</summary>
    [ComputedBy("unevenness")]
    public double UnevennessDb => There.UnevennessDb;
}

/// <summary>What a search of places found.</summary>
/// <param name="Now">The places as they are.</param>
/// <param name="Loudest">The ones with the greatest seat level over the room's mean, the best first.</param>
/// <param name="Evenest">The ones with the most even bass, the best first.</param>
/// <param name="TriedCount">Pairs of places that were tried.</param>
public sealed record PlaceReport(PlaceChoice Now, IReadOnlyList<PlaceChoice> Loudest, IReadOnlyList<PlaceChoice> Evenest, int TriedCount);

/// <summary>Where to stand and where to sit.</summary>
public static class PlaceSearch
{
    private const int PointsPerBand = 5;

    /// <summary>Searches places of cabinet and seat.</summary>
    /// <param name="room">The room with cabinet and seat as they are; both keep their heights.</param>
    /// <param name="air">The air.</param>
    /// <param name="options">What may be moved, and how finely.</param>
    /// <param name="keptCount">How many choices of each kind are handed back, 1 to 100.</param>
    /// <param name="progress">Told the share that is done, 0 to 1, after every place of the cabinet; may be null.</param>
    /// <param name="stop">Ends the search early.</param>
    /// <returns>The choices; none where the room is too small for any.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    /// <remarks>
    /// Model: a source that is flat in the half space, third-octaves from 20 Hz to the upper end, five frequencies each; seat over mean = 10 log10
    /// Σ|p_seat|²/Σ mean|p|². Every place on the grid is tried.
    /// Validity: a rigid rectangle; furniture and light walls move the nulls. Source: pressures <see cref="RoomModel"/>, Kuttruff 2000, chapter 3;
    /// what is searched for, and how, is our choice.
    /// Accuracy: the grid's step; differences under 1 dB mean nothing in a real room.
    /// </remarks>
    public static PlaceReport Of(
        RoomGeometry room,
        Air air,
        PlaceOptions options,
        int keptCount = 5,
        IProgress<double>? progress = null,
        CancellationToken stop = default
    )
    {
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(options);
        room.Check();
        var step = options.StepM ?? Math.Max(0.3, Math.Sqrt(room.WidthM * room.LengthM) / 10);
        Check(options, step);
        Require.Within(keptCount, 1, 100, nameof(keptCount));
        var bands = Bands(options.HighestHz);
        var now = Judged(room, air, bands, Mean(room, air, bands));
        var (cabinets, seats) = (Cabinets(room, options, step), Seats(room, options, step));
        var tried = new List<PlaceChoice>();
        for (var i = 0; i < cabinets.Count; i++)
        {
            var standing = room with { Cabinet = cabinets[i] };
            var mean = Mean(standing, air, bands);
            foreach (var seat in seats.Where(seat => seat.ApartM(cabinets[i]) >= options.ApartM))
            {
                stop.ThrowIfCancellationRequested();
                tried.Add(Judged(standing with { Seat = seat }, air, bands, mean));
            }

            progress?.Report((i + 1.0) / cabinets.Count);
        }

        var distinct = Distinct(tried, room);
        return new(
            now,
            [.. distinct.OrderByDescending(choice => choice.SeatOverMeanDb).Take(keptCount)],
            [.. distinct.OrderBy(choice => choice.UnevennessDb).Take(keptCount)],
            tried.Count
        );
    }

    /// <summary>Judges the places of a room as they are.</summary>
    /// <param name="room">The room with cabinet and seat.</param>
    /// <param name="air">The air.</param>
    /// <param name="highestHz">Upper end of the bands that count, 25 to 160 Hz.</param>
    /// <returns>What the search would say of them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>Model: as the search. Validity: as the search. Source: as the search. Accuracy: as the search.</remarks>
    public static PlaceChoice At(RoomGeometry room, Air air, double highestHz)
    {
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(air);
        Require.Within(highestHz, 25, 160, nameof(highestHz), "Hz");
        room.Check();
        var bands = Bands(highestHz);
        return Judged(room, air, bands, Mean(room, air, bands));
    }

    private static double[][] Bands(double highestHz) =>
        [.. ThirdOctaves.Bands.Where(band => band.CentreHz < highestHz * 1.1).Select(band => ThirdOctaves.FrequenciesHz(band, PointsPerBand).ToArray())];

    // Mirror images sound alike; of those the one that moves things least.
    private static List<PlaceChoice> Distinct(List<PlaceChoice> tried, RoomGeometry room) =>
        [
            .. tried
                .GroupBy(choice => (Math.Round(choice.SeatOverMeanDb, 6), Math.Round(choice.UnevennessDb, 6)))
                .Select(alike => alike.MinBy(choice => choice.Cabinet.ApartM(room.Cabinet) + choice.Seat.ApartM(room.Seat))!),
        ];

    private static PlaceChoice Judged(RoomGeometry room, Air air, double[][] bands, double mean)
    {
        var model = RoomModel.Of(room, air);
        var powers = bands.Select(band => band.Sum(f => Power(model.SeatPressurePa(f, Source(f)).Magnitude))).ToArray();
        var levels = powers.Select(power => 10 * Math.Log10(power)).ToArray();
        var middle = levels.Average();
        return new(room.Cabinet, room.Seat, 10 * Math.Log10(powers.Sum() / mean), Math.Sqrt(levels.Average(level => Power(level - middle))));
    }

    private static double Mean(RoomGeometry room, Air air, double[][] bands)
    {
        var model = RoomModel.Of(room, air);
        return bands.Sum(band => band.Sum(f => Power(model.MeanPressurePa(f, Source(f).Real))));
    }

    // A volume velocity that falls with frequency is flat in the half space.
    private static Complex Source(double frequencyHz) => 1 / frequencyHz;

    private static double Power(double value) => value * value;

    private static List<Place> Cabinets(RoomGeometry room, PlaceOptions options, double step)
    {
        if (!options.MovesCabinet)
        {
            return [room.Cabinet];
        }

        var (xs, ys) = (Along(room.WidthM, options.CabinetFromWallM, step), Along(room.LengthM, options.CabinetFromWallM, step));
        return [.. ys.SelectMany(y => xs.Where(x => x == xs[0] || x == xs[^1] || y == ys[0] || y == ys[^1]).Select(x => room.Cabinet with { XM = x, YM = y }))];
    }

    private static List<Place> Seats(RoomGeometry room, PlaceOptions options, double step)
    {
        if (!options.MovesSeat)
        {
            return [room.Seat];
        }

        var xs = Along(room.WidthM, options.SeatFromWallM, step);
        return [.. Along(room.LengthM, options.SeatFromWallM, step).SelectMany(y => xs.Select(x => room.Seat with { XM = x, YM = y }))];
    }

    // Evenly from wall to wall, no farther apart than the step; one place in the middle where the room is too narrow.
    private static double[] Along(double sizeM, double fromWallM, double stepM)
    {
        var free = sizeM - (2 * fromWallM);
        var count = free > 0 ? (int)Math.Ceiling(free / stepM) : 0;
        return count == 0 ? [sizeM / 2] : [.. Enumerable.Range(0, count + 1).Select(i => fromWallM + (free * i / count))];
    }

    private static void Check(PlaceOptions options, double step)
    {
        Require.Within(options.HighestHz, 25, 160, nameof(options.HighestHz), "Hz");
        Require.Within(step, 0.1, 20, nameof(options.StepM), "m");
        Require.Within(options.CabinetFromWallM, 0, 5, nameof(options.CabinetFromWallM), "m");
        Require.Within(options.SeatFromWallM, 0, 5, nameof(options.SeatFromWallM), "m");
        Require.Within(options.ApartM, 0, 20, nameof(options.ApartM), "m");
    }
}
