using System.Numerics;
using Stillwall.Materials;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;

namespace Stillwall.Neighbours;

/// <summary>What the neighbour question needs; null where it is not stated.</summary>
public sealed record QuietInputs
{
    /// <summary>Everyday listening: level, programme, own spectrum.</summary>
    public Everyday? Everyday { get; init; }

    /// <summary>Corner of the low-pass in front of the cabinet, Hz.</summary>
    public double? CrossoverHz { get; init; }

    /// <summary>Listening distance where no room is stated, m.</summary>
    public double DistanceM { get; init; } = 2;

    /// <summary>The air.</summary>
    public required Air Air { get; init; }

    /// <summary>The cabinet's outward volume velocity for one volt at a frequency, m³/s; null without a driver and a box.</summary>
    public Func<double, Complex>? VolumeVelocityM3S { get; init; }

    /// <summary>The cone's excursion for one volt at a frequency, m peak; null without a driver and a box.</summary>
    public Func<double, double>? ExcursionPeakM { get; init; }

    /// <summary>Excursion the driver is good for, one way, m; null where not stated.</summary>
    public double? XmaxM { get; init; }

    /// <summary>Resonance of the box, Hz; null without one.</summary>
    public double? SystemResonanceHz { get; init; }

    /// <summary>Q of the box; null without one.</summary>
    public double? SystemQ { get; init; }

    /// <summary>The amplifier; null where not stated.</summary>
    public Amplifier? Amplifier { get; init; }

    /// <summary>The listening room as it is stated; null where none is.</summary>
    public Room? StatedRoom { get; init; }

    /// <summary>The listening room's model; null where none is stated or the stated one is incomplete.</summary>
    public RoomModel? Room { get; init; }

    /// <summary>The neighbour as stated.</summary>
    public Neighbour? Neighbour { get; init; }

    /// <summary>Measured level differences through the party wall, dB; they beat the wall's construction.</summary>
    public IReadOnlyList<double>? PartyWallDb { get; init; }

    /// <summary>The inputs as a project states them.</summary>
    /// <param name="project">The project.</param>
    /// <param name="air">The air.</param>
    /// <param name="room">The listening room's model; null where none is stated or the stated one is incomplete.</param>
    /// <param name="volumeVelocityM3S">The cabinet's outward volume velocity for one volt at a frequency, m³/s; null without a driver and a box.</param>
    /// <returns>The inputs.</returns>
    /// <remarks>Model: as stated. Validity: any project. Source: our choice. Accuracy: exact.</remarks>
    public static QuietInputs From(Project project, Air air, RoomModel? room, Func<double, Complex>? volumeVelocityM3S)
    {
        ArgumentNullException.ThrowIfNull(project);
        var brief = project.Brief;
        return new()
        {
            Everyday = brief.Everyday,
            CrossoverHz = brief.Aim?.CrossoverHz,
            DistanceM = brief.Aim?.DistanceM ?? 2,
            Air = air,
            VolumeVelocityM3S = volumeVelocityM3S,
            StatedRoom = brief.Room,
            Room = room,
            Neighbour = brief.Neighbour,
            Amplifier = brief.Amplifier,
            PartyWallDb = project.Measured.PartyWallDb,
        };
    }
}
