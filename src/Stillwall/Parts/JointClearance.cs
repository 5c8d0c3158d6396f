using Stillwall.Cabinets;
using Stillwall.Numerics;
using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Parts;

/// <summary>Two printed pieces that have to go into one another.</summary>
/// <param name="What">The inner piece and where it goes.</param>
/// <param name="LengthM">Length across which they must agree, m.</param>
/// <param name="ClearanceM">Clearance on that length, both sides together, m.</param>
internal sealed record JointFit(string What, double LengthM, double ClearanceM, double UnevenM)
{
    /// <summary>What is left of the clearance, m; negative where the pieces may not go together.</summary>
    public double SpareM => ClearanceM - UnevenM;
}

/// <summary>Whether pieces that were printed one by one go together.</summary>
internal static class JointClearance
{
    private const double UnevenShareOfShrinkage = 0.5;

    /// <summary>By how much two pieces of one plastic may differ after they have cooled.</summary>
    /// <param name="lengthM">Length across which they must agree, m, zero or greater.</param>
    /// <remarks>
    /// Validity: both pieces from one spool and printer. Source: 0.3 to 0.5 % is told of PETG, a span of half its middle (from memory); the same share of
    /// every plastic is our choice. Accuracy: a factor of two.
    /// </remarks>
    public static double UnevenM(double lengthM, double shrinkageRatio)
    {
        Require.NotNegative(lengthM);
        Require.Within(shrinkageRatio, 0, 0.1, nameof(shrinkageRatio));
        return UnevenShareOfShrinkage * shrinkageRatio * lengthM;
    }

    /// <summary>The pieces of a drawn cabinet that go into one another.</summary>
    /// <param name="accents">Number of accent rings, zero or greater.</param>
    /// <returns>The joints, the tightest first; none where nothing goes into anything.</returns>
    /// <remarks>
    /// Model: heads of the struts in the slots of the inner sleeve with the gap as drawn on both sides, braces in the inner sleeve and accent rings in
    /// their grooves with the joints' clearance as drawn; each across the longer side. The tongues of the plates have that clearance on either side, twice
    /// as much together, and are never the tightest. Source: geometry of the drawn sections.
    /// </remarks>
    public static IReadOnlyList<JointFit> Of(CabinetGeometry geometry, int accents, double shrinkageRatio)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        Require.NotNegative(accents);
        var sizes = geometry.Sizes;
        var outside = Math.Max(sizes.Width, sizes.Height) * MetresPerMillimetre;
        JointFit Joint(string what, double length, double clearance) => new(what, length, clearance, UnevenM(length, shrinkageRatio));
        var joints = new List<JointFit>();
        if (sizes.Tied && geometry.Sleeve.Struts.Count > 0)
        {
            var across = outside - 2 * (sizes.OuterSkin + sizes.Core) * MetresPerMillimetre;
            joints.Add(Joint("heads of the struts in their slots", across, 2 * BuildUp.SlotGap * MetresPerMillimetre));
        }

        if (sizes.Braces > 0)
        {
            var inside = Math.Max(geometry.InsideWidthM, geometry.InsideHeightM);
            joints.Add(Joint("brace in the inner sleeve", inside, sizes.JointClearance * MetresPerMillimetre));
        }

        if (accents > 0 && sizes.OuterSkin > 0)
        {
            joints.Add(Joint("accent ring in its groove", outside, sizes.AccentGap / 4 * MetresPerMillimetre));
        }

        return [.. joints.OrderBy(j => j.SpareM)];
    }
}
