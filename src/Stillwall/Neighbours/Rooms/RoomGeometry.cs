using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Neighbours.Rooms;

/// <summary>A point in the room.</summary>
/// <param name="XM">Along the width, m.</param>
/// <param name="YM">Along the length, m.</param>
/// <param name="ZM">Above the floor, m.</param>
public sealed record Place(double XM, double YM, double ZM)
{
    /// <summary>The three coordinates in order, m.</summary>
    internal double[] CoordinatesM => [XM, YM, ZM];

    /// <summary>Distance to another place, m.</summary>
    internal double ApartM(Place other) => Math.Sqrt(CoordinatesM.Zip(other.CoordinatesM, (a, b) => (a - b) * (a - b)).Sum());
}

/// <summary>A rectangular room with a source and a seat in it.</summary>
/// <param name="WidthM">Size along x, m.</param>
/// <param name="LengthM">Size along y, m.</param>
/// <param name="HeightM">Size along z, m.</param>
/// <param name="DecayTimeS">Time in which every mode but the uniform one decays by 60 dB, s.</param>
/// <param name="PressureDecayTimeS">Time in which the uniform pressure decays by 60 dB, s.</param>
/// <param name="Cabinet">Centre of the cone.</param>
/// <param name="Seat">The listener's ears.</param>
public sealed record RoomGeometry(double WidthM, double LengthM, double HeightM, double DecayTimeS, double PressureDecayTimeS, Place Cabinet, Place Seat)
{
    /// <summary>Volume, m³.</summary>
    public double VolumeM3 => WidthM * LengthM * HeightM;

    /// <summary>The three sizes in order, m.</summary>
    internal double[] SizesM => [WidthM, LengthM, HeightM];

    /// <summary>The room as stated in a project.</summary>
    /// <param name="room">The stated room, or null.</param>
    /// <returns>The room; null where something is missing or a point lies outside (see <see cref="Missing"/>).</returns>
    /// <remarks>
    /// Model: as stated; the uniform pressure decays with the room where it has no time of its own. Validity: a rectangle with a flat ceiling.
    /// Source: our choice. Accuracy: exact.
    /// </remarks>
    public static RoomGeometry? Of(Room? room)
    {
        if (room is null || Missing(room) is not null)
        {
            return null;
        }

        var decay = room.DecayTimeS!.Value;
        return new(
            WidthM: room.WidthM!.Value,
            LengthM: room.LengthM!.Value,
            HeightM: room.HeightM!.Value,
            DecayTimeS: decay,
            PressureDecayTimeS: room.PressureDecayTimeS ?? decay,
            Cabinet: At(room.CabinetAtM!),
            Seat: At(room.SeatAtM!)
        );
    }

    /// <summary>The first key of a stated room that is missing, or that puts a point outside the room.</summary>
    /// <param name="room">The stated room, or null.</param>
    /// <returns>The key in the project file; null where the room is complete.</returns>
    /// <remarks>Model: a check of what is stated. Validity: any room. Source: our choice. Accuracy: exact.</remarks>
    public static string? Missing(Room? room) =>
        room switch
        {
            null => "brief.room",
            { WidthM: null } => "brief.room.width",
            { LengthM: null } => "brief.room.length",
            { HeightM: null } => "brief.room.height",
            { DecayTimeS: null } => "brief.room.decay_time",
            _ when !Inside(room, room.CabinetAtM) => "brief.room.cabinet_at",
            _ when !Inside(room, room.SeatAtM) => "brief.room.seat_at",
            _ => null,
        };

    /// <summary>Throws unless the room has a size, decay times and both points within it.</summary>
    internal void Check()
    {
        Require.Within(WidthM, 0.1, 200, nameof(WidthM), "m");
        Require.Within(LengthM, 0.1, 200, nameof(LengthM), "m");
        Require.Within(HeightM, 0.1, 200, nameof(HeightM), "m");
        Require.Within(DecayTimeS, 0.01, 1000, nameof(DecayTimeS), "s");
        Require.Within(PressureDecayTimeS, 0.01, 1000, nameof(PressureDecayTimeS), "s");
        ArgumentNullException.ThrowIfNull(Cabinet);
        ArgumentNullException.ThrowIfNull(Seat);
        Check(Cabinet, nameof(Cabinet));
        Check(Seat, nameof(Seat));
    }

    private void Check(Place place, string name)
    {
        Require.Within(place.XM, 0, WidthM, $"{name}.{nameof(place.XM)}", "m");
        Require.Within(place.YM, 0, LengthM, $"{name}.{nameof(place.YM)}", "m");
        Require.Within(place.ZM, 0, HeightM, $"{name}.{nameof(place.ZM)}", "m");
    }

    private static bool Inside(Room room, IReadOnlyList<double>? at) =>
        at is { Count: 3 } && at[0] <= room.WidthM && at[1] <= room.LengthM && at[2] <= room.HeightM;

    private static Place At(IReadOnlyList<double> at) => new(at[0], at[1], at[2]);
}
