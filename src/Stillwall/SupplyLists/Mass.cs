using Stillwall.Numerics;
using Stillwall.Parts;
using Stillwall.Projects;

namespace Stillwall.SupplyLists;

/// <summary>What the cabinet weighs.</summary>
/// <param name="FinishedKg">Shells, dry cast, driver, fill and hardware, kg.</param>
/// <param name="WetKg">Shells and wet cast on the day of the pour, kg.</param>
/// <param name="ShellsKg">Printed parts of the cabinet, kg.</param>
/// <param name="DryShellsAndCastKg">Shells and dry cast: what the scales must show before it is sealed, kg.</param>
public sealed record Mass(
    [property: ComputedBy("finished-mass", "mass.shells_kg", "pour.dry_in_cabinet_kg")] double? FinishedKg,
    [property: ComputedBy("wet-mass", "mass.shells_kg", "pour.wet_in_cabinet_kg")] double? WetKg,
    [property: ComputedBy("part-mass", "parts[].mass_kg")] double? ShellsKg,
    [property: ComputedBy("dry-cabinet-mass", "mass.shells_kg", "pour.dry_in_cabinet_kg")] double? DryShellsAndCastKg
)
{
    /// <summary>Adds it up.</summary>
    /// <param name="parts">What is printed; empty for a ready box.</param>
    /// <param name="cabinet">The cabinet as stated; null where none is.</param>
    /// <param name="sheet">The driver's data sheet; null without a driver.</param>
    /// <param name="dryCastKg">Dry cast in the cabinet, kg; 0 where it has no core, null where it is not known.</param>
    /// <param name="wetCastKg">Wet cast in the cabinet, kg; likewise.</param>
    /// <returns>The masses; null where something that counts is not known.</returns>
    /// <exception cref="ArgumentNullException">No parts.</exception>
    /// <remarks>Model: sums. Validity: any. Source: elementary; mass of the hardware from memory. Accuracy: as the parts.</remarks>
    public static Mass Of(IReadOnlyList<PartFigures> parts, Cabinet? cabinet, DriverSheet? sheet, double? dryCastKg, double? wetCastKg)
    {
        ArgumentNullException.ThrowIfNull(parts);
        double? shells = parts.Count == 0 ? null : parts.Where(p => p.InCabinet).Aggregate((double?)0, (sum, p) => sum + p.MassKg);
        var (dry, count) = (shells + dryCastKg, cabinet?.DriverCount ?? 1);
        var finished = dry + count * sheet?.MassKg + (cabinet?.Fill?.MassKg ?? 0) + Hardware.MassKg((sheet?.Bolts ?? 0) * count);
        return new Mass(finished, shells + wetCastKg, shells, dry);
    }
}
