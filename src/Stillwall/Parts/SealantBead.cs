using Stillwall.Cabinets;
using Stillwall.Numerics;
using Stillwall.Shapes;

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
    /// <returns>The beads: sleeve ends, driver, terminal.</returns>
    /// <remarks>
    /// Model: along the middle of the skin's end; the bead fills the clearance over the tongue's height and a fillet of 4 mm. Validity: joints as
    /// drawn. Source: our choice of bead.
    /// Accuracy: a maker lays half as much again; the supplies list counts whole tubes.
    /// </remarks>
    internal static IReadOnlyList<SealantBead> Of(PartJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var clearance = job.Sizes.JointClearance;
        return
        [
            .. PartCatalogue
                .Of(job)
                .Select(part => part.Kind)
                .Distinct()
                .SelectMany(kind => kind.Sealed(job))
                .OrderBy(joint => joint.Turn)
                .Select(joint => new SealantBead(
                    joint.Between,
                    joint.LengthMm.InMetres(),
                    clearance.InMetres(),
                    joint.LengthMm.InMetres() * ((clearance * BuildUp.TongueHeight).InSquareMetres() + FilletM * FilletM / 2)
                )),
        ];
    }
}
