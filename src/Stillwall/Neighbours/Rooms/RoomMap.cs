using Stillwall.Numerics;

namespace Stillwall.Neighbours.Rooms;

/// <summary>Level over the plan of a room at one frequency, at the height of the ears.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="Room">The room.</param>
/// <param name="LevelsDb">Level at the middle of each cell, dB: rows along the length, columns along the width.</param>
/// <param name="SeatDb">Level at the seat, dB.</param>
/// <param name="MeanDb">Mean of the whole room, dB.</param>
public sealed record RoomMap(double FrequencyHz, RoomGeometry Room, IReadOnlyList<IReadOnlyList<double>> LevelsDb, double SeatDb, double MeanDb)
{
    /// <summary>Level at the seat over the mean of the room, dB: what is gained here the neighbour does not get.</summary>
    [ComputedBy("seat-over-mean")]
    public double SeatOverMeanDb => SeatDb - MeanDb;

    /// <summary>The map of a room.</summary>
    /// <param name="model">The room.</param>
    /// <param name="frequencyHz">Frequency, 0.1 to 250 Hz.</param>
    /// <param name="volumeVelocityM3S">Volume velocity of the source, above 0 m³/s rms.</param>
    /// <param name="cellsCount">Cells along the longer side, 2 to 200.</param>
    /// <returns>The map; cells are about square.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: <see cref="RoomCurve.MapDb"/>. Validity: as there. Source: Kuttruff 2000, chapter 3. Accuracy: as there; a cell has the level of its
    /// middle.
    /// </remarks>
    public static RoomMap Of(RoomModel model, double frequencyHz, double volumeVelocityM3S, int cellsCount = 60)
    {
        ArgumentNullException.ThrowIfNull(model);
        Require.Within(frequencyHz, 0.1, RoomModel.HighestMeanHz, nameof(frequencyHz), "Hz");
        Require.Within(cellsCount, 2, 200, nameof(cellsCount));
        var room = model.Geometry;
        var cell = Math.Max(room.WidthM, room.LengthM) / cellsCount;
        int Cells(double sizeM) => Math.Max(1, (int)Math.Round(sizeM / cell));
        return new(
            frequencyHz,
            room,
            RoomCurve.MapDb(room, model.Air, frequencyHz, volumeVelocityM3S, Cells(room.WidthM), Cells(room.LengthM)),
            RoomCurve.SeatDb(model, frequencyHz, volumeVelocityM3S),
            RoomCurve.MeanDb(model, frequencyHz, volumeVelocityM3S)
        );
    }
}
