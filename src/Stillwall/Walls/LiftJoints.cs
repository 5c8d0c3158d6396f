using Stillwall.Cabinets;
using Stillwall.Numerics;
using Stillwall.Shapes;

namespace Stillwall.Walls;

/// <summary>The joints of a drawn cabinet that carry it while it is lifted by its front or hung by its rear.</summary>
internal static class LiftJoints
{
    // Weakness of a joint without any area is told by a safety near nothing.
    private const double LeastM2 = 1e-9;

    /// <summary>Safety factor of the weakest joint at twice the weight.</summary>
    /// <remarks>
    /// Model: the front plate hangs on the sealant of its rim and on the front core, by collar, bosses and posts; the core hangs on the keys of the outer
    /// sleeve over the end zone. Without a core the sealant carries alone. Validity: lifting by hand. Source: elementary; which joints carry is our choice.
    /// Accuracy: as <see cref="Joints.Of"/>, a factor of two.
    /// </remarks>
    public static double WeakestSafety(CabinetGeometry geometry, double massKg, double sealantPa, double keyedPa)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        Require.Positive(massKg);
        var (s, front, load) = (geometry.Sizes, geometry.Front, Joints.LiftLoadN(massKg));
        var rim = (s.Outline.Inset(s.OuterSkin / 2).Length * s.OuterSkin).InSquareMetres();
        var sealing = Joints.Of("front plate on its sealant", Math.Max(rim, LeastM2) + front.CollarM2, sealantPa, load);
        if (s.Core <= 0)
        {
            return sealing.SafetyFactor;
        }

        var sides = Math.Sqrt(4 * Math.PI * (front.PostM2 + front.CollarM2)) * geometry.CoreM * Math.Sqrt(Math.Max(1, front.Posts));
        var plate = Joints.Of("front plate on the core", sides, keyedPa, load);
        var heads = (geometry.Sleeve.OuterEndKeys.Count * BuildUp.KeyHead * BuildUp.EndZone).InSquareMetres();
        var core = Joints.Of("core on the outer sleeve", heads, keyedPa, load);
        return Math.Min(core.SafetyFactor, plate.SafetyFactor + sealing.SafetyFactor);
    }
}
