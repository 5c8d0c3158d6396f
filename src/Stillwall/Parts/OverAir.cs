using Stillwall.Cabinets;
using Stillwall.Numerics;
using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Parts;

/// <summary>One place where the printer lays plastic over air.</summary>
/// <param name="SpanM">Bridge that it amounts to, m; null for a slope.</param>
/// <param name="AngleDeg">Lean of a slope from the upright, °; null for a bridge.</param>
internal sealed record OverAir(string What, double? SpanM, double? AngleDeg)
{
    /// <summary>Lean of the slopes on which struts begin, °: they climb the core over a length equal to it.</summary>
    public const double StrutSlopeDeg = 45;

    // Held at one end alone, a ledge sags as a bridge of twice its length does at its middle (our choice).
    private const double BridgePerLedge = 2;

    /// <summary>Lists where the drawn cabinet is printed over air.</summary>
    /// <param name="accents">Number of accent grooves in the outer sleeve, zero or greater.</param>
    /// <returns>The places; none where every part is a section that only runs upwards.</returns>
    /// <remarks>
    /// Model: sleeves stand on end, plates, braces and rings lie flat, so that openings are upright holes without a crown; drying holes lie level,
    /// round up to 8 mm and with a roof of 45° above. What is left: the slopes that close the windows of the struts, the wings of a strut's head
    /// beside its web, the upper edge of an accent groove, the floor of a recess for the driver's flange. Keys and seats begin with such slopes too.
    /// The front lies on its face, so that the floor of a recess for the driver's flange is a ring over air, held at its outer edge alone: the maker
    /// puts a support under it, or leaves the recess away. A ledge counts as a bridge of twice its length. Validity: sleeves printed along the depth.
    /// Source: geometry of the drawn sections; how parts lie and what a ledge amounts to are our choice. Accuracy: exact for the drawing.
    /// </remarks>
    public static IReadOnlyList<OverAir> Of(CabinetGeometry geometry, int accents)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        Require.NotNegative(accents);
        var sizes = geometry.Sizes;
        var places = new List<OverAir>();
        if (sizes.Core > 0 && geometry.Sleeve.Struts.Count > 0)
        {
            places.Add(new OverAir("slopes of the struts", null, StrutSlopeDeg));
            if (sizes.Tied)
            {
                places.Add(Ledge("wings of the struts' heads", Math.Max(0, (BuildUp.HeadWidth - sizes.Web) / 2)));
            }
        }

        if (sizes.RecessDiameter > sizes.Cutout)
        {
            places.Add(Ledge("floor of the recess for the flange", (sizes.RecessDiameter - sizes.Cutout) / 2));
        }

        if (accents > 0 && sizes.OuterSkin > 0)
        {
            places.Add(Ledge("upper edge of an accent groove", sizes.OuterSkin / 2));
        }

        return places;
    }

    private static OverAir Ledge(string what, double millimetres) => new(what, BridgePerLedge * millimetres * MetresPerMillimetre, null);
}
