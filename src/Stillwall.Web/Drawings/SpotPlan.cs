using Stillwall.Appraisals;
using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Web.Drawings;

/// <summary>Where the cabinet stands in its spot, mm: depth from the front of the spot, height from the floor.</summary>
/// <param name="Width">Width of the spot; the cabinet's and some room where none is stated.</param>
internal sealed record SpotPlan(double Width, double Height, double Depth, bool IsStated, double BehindCabinet, Footing Footing, CabinetSizes Sizes)
{
    /// <summary>Front of the cabinet behind the front of the spot.</summary>
    internal double FrontAt => Depth - BehindCabinet - Sizes.Depth;

    /// <summary>The braces.</summary>
    internal Bracing Bracing { get; } = Bracing.Of(Sizes);

    /// <summary>Height of the feet, mm.</summary>
    internal double Foot => Footing.HeightMm;

    /// <summary>Room above the cabinet.</summary>
    internal double Above => Height - Foot - Sizes.Height;

    internal static SpotPlan? Of(Facts facts)
    {
        if (facts.Sizes is not { } sizes)
        {
            return null;
        }

        var spot = facts.Project.Brief.Spot;
        var behind = ((spot?.ClearanceM ?? 0) + (spot?.PlugSpaceM ?? 0)).InMillimetres();
        var footing = Footing.Of(sizes, facts.Project.Cabinet?.Feet);
        return spot is { WidthM: { } w, HeightM: { } h, DepthM: { } d }
            ? new SpotPlan(
                Width: w.InMillimetres(),
                Height: h.InMillimetres(),
                Depth: d.InMillimetres(),
                IsStated: true,
                BehindCabinet: behind,
                Footing: footing,
                Sizes: sizes
            )
            : new SpotPlan(
                Width: sizes.Width * 1.3,
                Height: sizes.Height * 1.9,
                Depth: sizes.Depth + 80,
                IsStated: false,
                BehindCabinet: 50,
                Footing: footing,
                Sizes: sizes
            );
    }
}
