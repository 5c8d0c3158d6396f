using Stillwall.Projects;

namespace Stillwall.Cabinets;

/// <summary>What the cabinet stands on: the one place that knows where its feet are. Drawing, tipping, rocking and the page read it.</summary>
/// <param name="AcrossMm">From either side to the middle of a foot, mm; without feet to where the flat of the bottom begins.</param>
/// <param name="AlongMm">From front or rear to the middle of a foot, mm; 0 without feet.</param>
/// <param name="HeightMm">Height of the feet, mm; 0 without.</param>
internal sealed record Footing(double AcrossMm, double AlongMm, double HeightMm)
{
    // What is left of the bottom beside a foot, mm.
    private const double Rim = 5;

    /// <summary>The footing of a drawn cabinet.</summary>
    /// <param name="feet">The stated feet; null where it stands on its bottom.</param>
    /// <returns>The footing; feet stand where the rounding of the lower edges begins, or one rim within the sides.</returns>
    /// <remarks>Source: our choice of places. Accuracy: exact for the drawing.</remarks>
    public static Footing Of(CabinetSizes sizes, Feet? feet)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        return feet is null
            ? new Footing(sizes.Radius, 0, 0)
            : new Footing(Math.Max(sizes.Radius, BuildUp.FootDiameter / 2 + Rim), BuildUp.FootDiameter, BuildUp.FootHeight);
    }

    /// <summary>Middles of the four feet on the plan of the cabinet.</summary>
    /// <remarks>Source: our choice of places.</remarks>
    public IReadOnlyList<(double XMm, double YMm)> Places(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        return
        [
            (AcrossMm, AlongMm),
            (sizes.Width - AcrossMm, AlongMm),
            (AcrossMm, sizes.Depth - AlongMm),
            (sizes.Width - AcrossMm, sizes.Depth - AlongMm),
        ];
    }
}
