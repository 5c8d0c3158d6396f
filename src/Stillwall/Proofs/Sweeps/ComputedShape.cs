using Stillwall.Cabinets;
using Stillwall.Neighbours.Rooms;

namespace Stillwall.Proofs.Sweeps;

/// <summary>The computed response at the points of a measured one, set to zero as that is.</summary>
internal static class ComputedShape
{
    private const double MostInRoomHz = 400;

    /// <summary>Computes the shape beside a measured one.</summary>
    /// <param name="room">The rigid room, for a microphone at the seat, to 400 Hz; null for one close to the cone.</param>
    /// <returns>Points in the measured one's order; fewer with a room.</returns>
    /// <remarks>
    /// Model: half-space level of the network, with a room its transfer to the seat, less the mean from 100 to 200 Hz. Validity: below some 200 Hz.
    /// Source: <see cref="BoxNetwork.At"/>, <see cref="RoomCurve"/>. Accuracy: as theirs.
    /// </remarks>
    public static IReadOnlyList<SweepPoint> Of(SweepResult measured, BoxNetwork network, RoomModel? room)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(network);
        return RelativeSweep.AboutZero([
            .. measured
                .Points.Where(p => room is null || p.FrequencyHz <= MostInRoomHz)
                .Select(p => new SweepPoint(
                    p.FrequencyHz,
                    network.At(p.FrequencyHz, 1).LevelDb() + RoomCurve.SeatOverHalfSpaceDb(room, p.FrequencyHz, 1),
                    null
                )),
        ]);
    }
}
