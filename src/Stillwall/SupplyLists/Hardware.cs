using Stillwall.Projects;

namespace Stillwall.SupplyLists;

/// <summary>What a build needs besides skins, cast and driver.</summary>
public static class Hardware
{
    /// <summary>Lists everything the build needs.</summary>
    /// <param name="project">The project.</param>
    /// <param name="sheet">The chosen driver's data sheet; null without a driver.</param>
    /// <param name="filamentKg">Filament to have, kg; null where not known.</param>
    /// <param name="powderKg">Powder to mix, kg; null where not known.</param>
    /// <param name="jointM">Length of joints to seal, m; null where not known.</param>
    /// <param name="tapeM">Tape to close the drying holes with during the pour, m; 0 for none.</param>
    /// <returns>The needs in the order of the job; things the plan has no use for are left out.</returns>
    /// <remarks>
    /// Model: an insert and a screw for each bolt, a cartridge of sealant for 8 m of 6 mm bead, 1.5 m of cable, one terminal, gasket tape round each driver,
    /// mask and gloves. Source: common practice, no source.
    /// </remarks>
    public static IReadOnlyList<Need> Of(Project project, DriverSheet? sheet, double? filamentKg, double? powderKg, double? jointM, double tapeM = 0)
    {
        ArgumentNullException.ThrowIfNull(project);
        var cabinet = project.Cabinet;
        var count = cabinet?.DriverCount ?? 1;
        var needs = new List<Need> { new("driver", sheet is null ? null : count, Dimension.Count, "Driver", sheet?.Price) };
        if (cabinet?.NetVolumeM3 is not null)
        {
            return needs;
        }

        needs.Add(new("filament", filamentKg, Dimension.Mass, "Parts"));
        if (!(cabinet?.CoreM <= 0))
        {
            needs.Add(new("cast powder", powderKg, Dimension.Mass, "Pour"));
            needs.Add(new("dust mask", 1, Dimension.Count, "Pour"));
            needs.Add(new("pair of gloves", 1, Dimension.Count, "Pour"));
        }

        if (tapeM > 0)
        {
            needs.Add(new("masking tape", Math.Round(tapeM, 3), Dimension.Length, "Pour"));
        }

        needs.Add(new("sealant", jointM is { } m ? Math.Ceiling(m / MetresPerCartridge) : null, Dimension.Count, "Pour"));
        needs.Add(new("threaded insert", sheet?.Bolts * count, Dimension.Count, "Supplies"));
        needs.Add(new("screw", sheet?.Bolts * count, Dimension.Count, "Supplies"));
        needs.Add(
            new("gasket tape", sheet is null ? null : Math.Round(Math.PI * (sheet.FlangeM ?? sheet.CutoutM ?? 0.3) * count, 3), Dimension.Length, "Supplies")
        );
        needs.Add(new("terminal", 1, Dimension.Count, "Supplies"));
        needs.Add(new("cable", CableM * count, Dimension.Length, "Supplies"));
        if (cabinet?.Fill?.MassKg is { } fill)
        {
            needs.Add(new("fill", fill, Dimension.Mass, "Supplies"));
        }

        if (cabinet?.Feet is not null)
        {
            needs.Add(new(cabinet.Feet.Kind == FeetKind.Spikes ? "spike" : "pad", 4, Dimension.Count, "Supplies"));
        }

        return needs;
    }

    /// <summary>Mass of inserts, screws, terminal, cable, sealant and gasket of one cabinet, kg.</summary>
    /// <param name="bolts">Number of bolts.</param>
    /// <returns>Mass, kg.</returns>
    /// <remarks>Source: common practice, no source: 8 g for an insert with its screw, 250 g for the rest.</remarks>
    public static double MassKg(int bolts) => 0.008 * bolts + 0.25;

    private const double MetresPerCartridge = 8,
        CableM = 1.5;
}
