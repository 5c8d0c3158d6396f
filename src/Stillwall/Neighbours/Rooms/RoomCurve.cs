using System.Numerics;
using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Neighbours.Rooms;

/// <summary>Level and phase at the seat at one frequency.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="SplDb">Sound pressure level, dB re 20 µPa.</param>
/// <param name="PhaseDeg">Phase against the volume velocity, °.</param>
public sealed record RoomPoint(double FrequencyHz, [property: ComputedBy("room-seat")] double SplDb, [property: ComputedBy("room-seat")] double PhaseDeg);

/// <summary>Curves, maps and levels drawn from a room.</summary>
public static class RoomCurve
{
    /// <summary>Level and phase at the seat at 10, 12 … 200 Hz for a constant volume velocity.</summary>
    /// <param name="room">The room.</param>
    /// <param name="volumeVelocityM3S">Volume velocity, above 0 m³/s rms.</param>
    /// <returns>The points in rising order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A volume velocity that is not above zero.</exception>
    /// <remarks>
    /// Model: <see cref="RoomModel.SeatPressurePa"/>. Validity: as there. Source: Kuttruff 2000, chapter 3. Accuracy: 0.01 dB of the Green's function
    /// in waveguide form.
    /// </remarks>
    public static IReadOnlyList<RoomPoint> Of(RoomModel room, double volumeVelocityM3S)
    {
        return Of(room, volumeVelocityM3S, 2);
    }

    /// <summary>Level and phase at the seat from 10 to 200 Hz in even steps for a constant volume velocity.</summary>
    /// <param name="room">The room.</param>
    /// <param name="volumeVelocityM3S">Volume velocity, above 0 m³/s rms.</param>
    /// <param name="stepHz">Step, 0.1 to 50 Hz.</param>
    /// <returns>The points in rising order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>Model: as the other. Validity: as there. Source: Kuttruff 2000, chapter 3. Accuracy: as there.</remarks>
    public static IReadOnlyList<RoomPoint> Of(RoomModel room, double volumeVelocityM3S, double stepHz)
    {
        ArgumentNullException.ThrowIfNull(room);
        Require.Positive(volumeVelocityM3S);
        Require.Within(stepHz, 0.1, 50, nameof(stepHz), "Hz");
        return [.. Enumerable.Range(0, (int)Math.Floor((190 / stepHz) + 1e-9) + 1).Select(i => Point(room, 10 + (stepHz * i), volumeVelocityM3S))];
    }

    /// <summary>Mean level of the whole room for the drive that <see cref="Of(RoomModel, double)"/> gives the seat.</summary>
    /// <param name="room">The room.</param>
    /// <param name="frequencyHz">Frequency, 0.1 to 250 Hz.</param>
    /// <param name="volumeVelocityM3S">Volume velocity, above 0 m³/s rms.</param>
    /// <returns>Level of the mean squared pressure, dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: <see cref="RoomModel.MeanPressurePa"/>. Validity: as there. Source: Kuttruff 2000, chapter 3. Accuracy: 0.005 dB of a plain sum over
    /// the modes.
    /// </remarks>
    public static double MeanDb(RoomModel room, double frequencyHz, double volumeVelocityM3S)
    {
        ArgumentNullException.ThrowIfNull(room);
        Require.Positive(volumeVelocityM3S);
        return LevelDb(room.MeanPressurePa(frequencyHz, volumeVelocityM3S));
    }

    /// <summary>Level at the seat at one frequency.</summary>
    /// <param name="room">The room.</param>
    /// <param name="frequencyHz">Frequency, 0.1 to 400 Hz.</param>
    /// <param name="volumeVelocityM3S">Volume velocity, above 0 m³/s rms.</param>
    /// <returns>Level, dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: <see cref="RoomModel.SeatPressurePa"/>. Validity: as there. Source: Kuttruff 2000, chapter 3. Accuracy: 0.01 dB of the Green's function
    /// in waveguide form.
    /// </remarks>
    public static double SeatDb(RoomModel room, double frequencyHz, double volumeVelocityM3S)
    {
        ArgumentNullException.ThrowIfNull(room);
        Require.Positive(volumeVelocityM3S);
        return LevelDb(room.SeatPressurePa(frequencyHz, volumeVelocityM3S).Magnitude);
    }

    /// <summary>Level at the places of a grid, at one frequency: where to sit.</summary>
    /// <param name="geometry">The room; its seat's height is the height of the map.</param>
    /// <param name="air">The air.</param>
    /// <param name="frequencyHz">Frequency, 0.1 to 400 Hz.</param>
    /// <param name="volumeVelocityM3S">Volume velocity, above 0 m³/s rms.</param>
    /// <param name="across">Cells along the width, 1 to 200.</param>
    /// <param name="along">Cells along the length, 1 to 200.</param>
    /// <returns>Level, dB, at the middle of each cell: rows along the length, columns along the width.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: <see cref="RoomModel.SeatPressurePa"/> with the seat moved. Validity: as there. Source: Kuttruff 2000, chapter 3. Accuracy: as there.
    /// </remarks>
    public static IReadOnlyList<IReadOnlyList<double>> MapDb(
        RoomGeometry geometry,
        Air air,
        double frequencyHz,
        double volumeVelocityM3S,
        int across,
        int along
    )
    {
        ArgumentNullException.ThrowIfNull(geometry);
        Require.Positive(volumeVelocityM3S);
        Require.Within(across, 1, 200, nameof(across));
        Require.Within(along, 1, 200, nameof(along));
        return
        [
            .. Enumerable
                .Range(0, along)
                .Select(row =>
                    Enumerable
                        .Range(0, across)
                        .Select(column =>
                        {
                            var seat = new Place((column + 0.5) * geometry.WidthM / across, (row + 0.5) * geometry.LengthM / along, geometry.Seat.ZM);
                            return LevelDb(RoomModel.Of(geometry with { Seat = seat }, air).SeatPressurePa(frequencyHz, volumeVelocityM3S).Magnitude);
                        })
                        .ToArray()
                ),
        ];
    }

    /// <summary>How far the seat is above the half space at a distance, for the same source and frequency.</summary>
    /// <param name="room">The room; null stands for the half space itself.</param>
    /// <param name="frequencyHz">Frequency, 0.1 to 400 Hz.</param>
    /// <param name="distanceM">Distance in the half space, above 0 m.</param>
    /// <returns>Level at the seat less level in the half space, dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: 20 log10 |p_seat|/|p_half|, p_half = jωρU/(2πr). Validity: rigid walls; real ones take a few decibel. Source: Kuttruff 2000, chapter 3;
    /// half space Kinsler 2000, chapter 7 (from memory).
    /// Accuracy: 0.01 dB of the rigid room.
    /// </remarks>
    public static double SeatOverHalfSpaceDb(RoomModel? room, double frequencyHz, double distanceM)
    {
        Require.Positive(frequencyHz);
        Require.Positive(distanceM);
        return room is null
            ? 0
            : 20
                * Math.Log10(
                    room.SeatPressurePa(frequencyHz, Complex.One).Magnitude
                        / FarField.HalfSpacePressurePa(Complex.One, frequencyHz, distanceM, room.Air).Magnitude
                );
    }

    private static RoomPoint Point(RoomModel room, double frequencyHz, double volumeVelocityM3S)
    {
        var pressure = room.SeatPressurePa(frequencyHz, volumeVelocityM3S);
        return new RoomPoint(frequencyHz, LevelDb(pressure.Magnitude), pressure.Phase * 180 / Math.PI);
    }

    private static double LevelDb(double pressurePa) => 20 * Math.Log10(pressurePa / Air.ReferencePressurePa);
}
