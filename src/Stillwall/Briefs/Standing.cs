using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Briefs;

/// <summary>What is left about the cabinet where it stands, its back against its clearance.</summary>
/// <param name="BesideM">Room on either side of it in its spot, m; negative where it is too wide, null where the spot's width is not stated.</param>
/// <param name="AboveM">Room above it, the feet counted, m; null where the spot's height is not stated.</param>
/// <param name="BehindM">Room kept behind it for clearance and plugs, m.</param>
/// <param name="SeatM">How far the seat is from the cone on the plan of the room, m; null where either place is not stated.</param>
internal sealed record Standing(
    [property: ComputedBy("room-in-spot")] double? BesideM,
    [property: ComputedBy("room-in-spot")] double? AboveM,
    [property: ComputedBy("room-behind")] double BehindM,
    [property: ComputedBy("seat-distance")] double? SeatM
)
{
    /// <summary>Works out what is left.</summary>
    /// <param name="brief">Spot and room, as far as they are stated.</param>
    /// <remarks>
    /// Model: the cabinet in the middle of its spot, as far back as clearance and plugs leave it; the seat's distance on the plan, heights left out.
    /// Source: geometry.
    /// </remarks>
    public static Standing Of(Brief brief, double? widthM, double? heightM, double footM)
    {
        ArgumentNullException.ThrowIfNull(brief);
        Require.NotNegative(footM);
        var (spot, room) = (brief.Spot, brief.Room);
        return new Standing(
            (spot?.WidthM - widthM) / 2,
            spot?.HeightM - heightM - footM,
            (spot?.ClearanceM ?? 0) + (spot?.PlugSpaceM ?? 0),
            room is { CabinetAtM: [var cx, var cy, ..], SeatAtM: [var sx, var sy, ..] } ? Math.Sqrt(Math.Pow(sx - cx, 2) + Math.Pow(sy - cy, 2)) : null
        );
    }
}
