using Stillwall.Projects;

namespace Stillwall.Briefs;

/// <summary>What is left of the spot on its tightest side.</summary>
/// <param name="Side">The side: width, height or depth.</param>
/// <param name="TakenM">What cabinet, clearance and plug space take, m.</param>
internal sealed record SpotFit(string Side, double TakenM, double SpotM)
{
    /// <summary>Room to spare, m; negative where it does not fit.</summary>
    public double SpareM => SpotM - TakenM;

    /// <summary>Compares an outside size with the spot.</summary>
    /// <param name="spot">The spot; sides that are not stated are left out.</param>
    /// <returns>The three sides, or those that are stated, the tightest first.</returns>
    /// <remarks>Model: clearance on both sides in every direction, plug space behind besides. Source: geometry.</remarks>
    public static IReadOnlyList<SpotFit> Of(Spot spot, double widthM, double heightM, double depthM)
    {
        ArgumentNullException.ThrowIfNull(spot);
        var sides = new (string Side, double Taken, double? Room)[]
        {
            ("width", widthM + 2 * spot.ClearanceM, spot.WidthM),
            ("height", heightM + 2 * spot.ClearanceM, spot.HeightM),
            ("depth", depthM + 2 * spot.ClearanceM + spot.PlugSpaceM, spot.DepthM),
        };
        return [.. sides.Where(s => s.Room is not null).Select(s => new SpotFit(s.Side, s.Taken, s.Room!.Value)).OrderBy(s => s.SpareM)];
    }
}
