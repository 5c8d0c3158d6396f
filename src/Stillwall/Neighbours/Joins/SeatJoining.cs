using System.Numerics;
using Stillwall.Materials;
using Stillwall.Neighbours.Rooms;
using Stillwall.Numerics;

namespace Stillwall.Neighbours.Joins;

/// <summary>How cabinet and main speakers join at the seat, in the stated room.</summary>
/// <param name="DelayS">Delay of the main speakers against the cabinet, s; negative: the cabinet is delayed instead.</param>
/// <param name="Inverted">Whether the cabinet's polarity is turned.</param>
/// <param name="TrimDb">Passband level of the cabinet over that of the main speakers, dB.</param>
/// <param name="RippleDb">Half the span of the third-octave levels from half to twice the crossover at the seat, ± dB.</param>
/// <param name="MovedRippleDb">The same at the worst of four seats moved by <see cref="MovedM"/>, with the same setting, ± dB.</param>
/// <param name="FreeFieldRippleDb">The same at the seat with the free field's setting, its delay made up for the distances, ± dB.</param>
public sealed record SeatJoining(
    [property: ComputedBy("joining-seat")] double DelayS,
    bool Inverted,
    [property: ComputedBy("joining-seat")] double TrimDb,
    [property: ComputedBy("joining-seat")] double RippleDb,
    [property: ComputedBy("joining-seat")] double MovedRippleDb,
    [property: ComputedBy("joining-seat")] double FreeFieldRippleDb
)
{
    /// <summary>How far the seat is moved to see what a setting is worth, m.</summary>
    public const double MovedM = 0.3;

    /// <summary>Searches delay, polarity and trim for the most even third-octaves at the seat.</summary>
    /// <param name="inputs">Crossover, box and main speakers.</param>
    /// <param name="freeField">The best setting in the free field.</param>
    /// <param name="room">The room with the cabinet and the seat; the crossover at most 200 Hz in it.</param>
    /// <param name="air">The air.</param>
    /// <param name="left">Where the left main speaker stands.</param>
    /// <param name="right">Where the right one stands.</param>
    /// <returns>The setting and what it is worth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    /// <remarks>
    /// Model: small sources in the rigid room, strength falling with frequency so that each is flat in the half space; each main speaker half of the
    /// pair; powers averaged over a third-octave. Validity: as the room; speakers without directivity.
    /// Source: pressures Kuttruff 2000, chapter 3; measure and search are our choice. Accuracy: advice: real rooms differ by several decibels near
    /// their modes.
    /// </remarks>
    public static SeatJoining Of(JoiningInputs inputs, Joining freeField, RoomGeometry room, Air air, Place left, Place right)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(freeField);
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        Require.Within(inputs.CrossoverHz, 1, RoomModel.HighestHz / 2, nameof(inputs.CrossoverHz), "Hz");

        // The nearer source waits for the farther one.
        var around = (room.Cabinet.ApartM(room.Seat) - ((left.ApartM(room.Seat) + right.ApartM(room.Seat)) / 2)) / air.SpeedOfSoundMS;
        var search = At(inputs, room, air, left, right);
        var best = search.Best(inputs.CrossoverHz, around);
        var moved = Moved(room).Max(seat => At(inputs, room with { Seat = seat }, air, left, right).RippleOf(best));
        var free = search.RippleOf(new JoiningSetting(freeField.DelayS + around, freeField.Inverted, freeField.TrimDb, 0));
        return new(best.DelayS, best.Inverted, best.TrimDb, best.RippleDb, moved, free);
    }

    private static JoiningSearch At(JoiningInputs inputs, RoomGeometry room, Air air, Place left, Place right)
    {
        var (cabinet, one, other) = (
            RoomModel.Of(room, air),
            RoomModel.Of(room with { Cabinet = left }, air),
            RoomModel.Of(room with { Cabinet = right }, air)
        );
        return new(
            [
                .. Joining
                    .Points(inputs, 0.5, 2)
                    .Take(2 * Joining.PointsPerOctave)
                    .Select(point =>
                    {
                        var source = 1 / new Complex(0, point.FrequencyHz);
                        return new JoiningPair(
                            point.FrequencyHz,
                            cabinet.SeatPressurePa(point.FrequencyHz, point.Cabinet * source),
                            one.SeatPressurePa(point.FrequencyHz, point.MainSpeakers * source / 2)
                                + other.SeatPressurePa(point.FrequencyHz, point.MainSpeakers * source / 2)
                        );
                    }),
            ],
            Joining.PointsPerOctave / 3
        );
    }

    private static IEnumerable<Place> Moved(RoomGeometry room)
    {
        (double X, double Y)[] ways = [(-MovedM, 0), (MovedM, 0), (0, -MovedM), (0, MovedM)];
        return ways.Select(way =>
            room.Seat with
            {
                XM = Math.Clamp(room.Seat.XM + way.X, 0, room.WidthM),
                YM = Math.Clamp(room.Seat.YM + way.Y, 0, room.LengthM),
            }
        );
    }
}
