using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Projects;

namespace Stillwall.Cli.Running;

/// <summary>Names what is not stated but would be needed.</summary>
internal static class Want
{
    /// <summary>What stands between a project and its box.</summary>
    internal static string OfBox(Facts facts) =>
        facts.Project.Driver is null ? "driver"
        : facts.Driver is null ? $"driver ({string.Join(", ", facts.Resolution is { } r ? r.Impossible.Concat(r.Missing) : ["not resolved"])})"
        : facts.Project.Cabinet is null ? "cabinet"
        : facts.NetVolumeM3 is null ? "cabinet.outside, the skins and the core"
        : facts.NetVolumeM3 <= 0 ? "air in the cabinet: driver and braces leave none"
        : string.Join(", ", BoxSystem.Of(facts.Driver, facts.NetVolumeM3.Value, facts.Project.Cabinet, facts.Project.Measured, facts.Air).Missing);

    /// <summary>What a cabinet must state to be drawn.</summary>
    internal const string OfCabinet = "cabinet.outside, the skins and the core, free of contradictions";

    /// <summary>What stands between a project and its walls.</summary>
    internal static string OfWalls(Facts facts) => facts.Geometry is null ? OfCabinet : facts.Skin is null ? "materials.skin" : "materials.cast.mix";

    internal static string OfRoom(Project project) => project.Brief.Room is null ? "brief.room" : "brief.room: width, length, height, decay_time, cabinet_at and seat_at, both within it";

    internal static string OfJoining(Facts facts) => facts.Project.Brief.Aim?.CrossoverHz is null ? "brief.aim.crossover"
        : facts.Project.Brief.MainSpeakers?.CornerHz is null ? "brief.main_speakers.corner"
        : OfBox(facts);
}
