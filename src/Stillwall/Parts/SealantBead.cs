using Stillwall.Cabinets;
using Stillwall.Numerics;

namespace Stillwall.Parts;

/// <summary>One bead of sealant to be laid.</summary>
/// <param name="Joint">Which joint.</param>
/// <param name="LengthM">Length of its path, m.</param>
/// <param name="ClearanceM">Clearance between tongue and sleeve, m.</param>
/// <param name="VolumeM3">Sealant that it takes, m³.</param>
public sealed record SealantBead(
    string Joint,
    [property: ComputedBy("sealant-path")] double LengthM,
    [property: ComputedBy("joint-clearance")] double ClearanceM,
    [property: ComputedBy("sealant-volume")] double VolumeM3
)
{
    /// <summary>Side of the three-cornered bead that is pressed into a joint, m (our choice).</summary>
    public const double FilletM = 0.004;

    /// <summary>The beads of a cabinet, in the order in which they are laid.</summary>
    /// <param name="geometry">The drawn cabinet.</param>
    /// <returns>The beads: sleeve ends, driver, terminal.</returns>
    /// <exception cref="ArgumentNullException">No geometry.</exception>
    /// <remarks>
    /// Model: along the middle of the skin's end; the bead fills the clearance over the tongue's height and a fillet of 4 mm. Validity: joints as
    /// drawn. Source: our choice of bead.
    /// Accuracy: a maker lays half as much again; the supplies list counts whole tubes.
    /// </remarks>
    public static IReadOnlyList<SealantBead> Of(CabinetGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var s = geometry.Sizes;
        var outer = s.Outline.Inset(s.OuterSkin / 2).Length;
        var inner = s.Outline.Inset(s.OuterSkin + s.Core + s.InnerSkin / 2).Length;
        List<(string Joint, double Length)> paths = [("front outer plate and sleeve", outer), ("rear outer plate and sleeve", outer)];
        if (s.Core > 0)
        {
            paths.AddRange([("front inner plate and sleeve", inner), ("rear inner plate and sleeve", inner)]);
        }

        paths.AddRange(geometry.Front.Layout.Openings.Where(o => o.DiameterMm > 0).Select(o => ("driver", Math.PI * o.DiameterMm)));
        paths.AddRange(geometry.Rear.Layout.Openings.Where(o => o.DiameterMm > 0).Select(o => ("terminal", Math.PI * o.DiameterMm)));
        var clearance = s.JointClearance;
        return
        [
            .. paths.Select(p => new SealantBead(
                p.Joint,
                p.Length * 1e-3,
                clearance * 1e-3,
                p.Length * 1e-3 * (clearance * BuildUp.TongueHeight * 1e-6 + FilletM * FilletM / 2)
            )),
        ];
    }
}
