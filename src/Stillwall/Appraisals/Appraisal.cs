using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Findings;
using Stillwall.Cabinets;
using Stillwall.Neighbours;
using Stillwall.Numerics;
using Stillwall.Parts;
using Stillwall.Pours;
using Stillwall.Projects;
using Stillwall.SupplyLists;
using Stillwall.Walls;

namespace Stillwall.Appraisals;

/// <summary>Everything computed from one project, and what is to be said of it.</summary>
/// <param name="Project">Name of the project.</param>
/// <param name="Box">The closed box.</param>
/// <param name="Walls">One line for each panel.</param>
/// <param name="Parts">What is to be printed.</param>
/// <param name="Pour">The pour plan.</param>
/// <param name="Print">What the printing takes.</param>
/// <param name="Mass">What it weighs.</param>
/// <param name="Supplies">The supplies list.</param>
/// <param name="Cost">What it costs.</param>
/// <param name="Quiet">The neighbour question.</param>
/// <param name="Findings">Every finding, in the order of the job.</param>
/// <param name="Cautions">What to take care of, step by step.</param>
public sealed record Appraisal(
    string Project,
    BoxFigures Box,
    IReadOnlyList<WallPanelFigures> Walls,
    IReadOnlyList<PartFigures> Parts,
    PourFigures Pour,
    PrintTotals Print,
    Mass Mass,
    IReadOnlyList<SupplyLine> Supplies,
    Cost Cost,
    Quiet Quiet,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<StepCaution> Cautions
)
{
    /// <summary>Appraises a project: figures, verdicts and the remedies of what does not hold.</summary>
    /// <param name="project">The project as stated.</param>
    /// <param name="candidates">The candidate drivers, among which the project may name one.</param>
    /// <returns>The appraisal; what cannot be computed is null, what cannot be judged is unknown.</returns>
    /// <remarks>Source: see the catalogue.</remarks>
    public static Appraisal Of(Project project, IReadOnlyList<DriverSheet> candidates)
    {
        var mender = new Mender(project, candidates);
        return WithFindings(mender.Facts, [.. mender.Judged.Select(f => mender.Sought(f.Id)!)]);
    }

    /// <summary>Appraises a project without seeking remedies, which takes most of the time.</summary>
    /// <param name="project">The project as stated.</param>
    /// <param name="candidates">The candidate drivers.</param>
    /// <returns>The appraisal; its findings have no remedy that a search would have to find.</returns>
    /// <remarks>Source: see the catalogue.</remarks>
    public static Appraisal WithoutRemedies(Project project, IReadOnlyList<DriverSheet> candidates)
    {
        var facts = new Facts(project, candidates);
        return WithFindings(facts, [.. AllFindings.Rules.Select(rule => rule.Of(facts))]);
    }

    /// <summary>Appraises a project and seeks the remedies of one stage only.</summary>
    /// <param name="project">The project as stated.</param>
    /// <param name="candidates">The candidate drivers.</param>
    /// <param name="stage">Stage whose remedies are sought, as its findings name it.</param>
    /// <returns>The appraisal; the findings of other stages have no remedy that a search would have to find.</returns>
    /// <remarks>Source: see the catalogue.</remarks>
    public static Appraisal OfStage(Project project, IReadOnlyList<DriverSheet> candidates, string stage)
    {
        var mender = new Mender(project, candidates);
        return WithFindings(mender.Facts, [.. mender.Judged.Select(f => f.Stage == stage ? mender.Sought(f.Id)! : f)]);
    }

    private static Appraisal WithFindings(Facts facts, IReadOnlyList<Finding> findings) =>
        new(
            facts.Project.Name,
            facts.Box,
            facts.Walls,
            facts.Parts,
            facts.Pour,
            facts.Print,
            facts.Mass,
            facts.Supplies,
            facts.Cost,
            facts.Quiet,
            findings,
            Care.Cautions.Of(facts)
        );
}

/// <summary>The pour plan.</summary>
/// <param name="CavityVolumeM3">Space the cast fills, m³.</param>
/// <param name="PowderKg">Powder to mix, reserve counted, kg.</param>
/// <param name="WaterKg">Water to mix, kg.</param>
/// <param name="SlurryDensityKgM3">Density of the slurry, kg/m³.</param>
/// <param name="WetMassKg">Mass of all that is mixed, kg.</param>
/// <param name="DryMassKg">Mass of all that is mixed when set and dry, kg.</param>
/// <param name="FreeWaterKg">Water that has to dry out of all that is mixed, kg.</param>
/// <param name="WetInCabinetKg">Slurry in the cabinet, kg.</param>
/// <param name="DryInCabinetKg">Set and dry cast in the cabinet, kg.</param>
/// <param name="FormPressurePa">Pressure at the deepest point of the highest lift, Pa.</param>
/// <param name="SkinBulgeM">Bulge of the worst bay, m.</param>
/// <param name="LiftHeightM">Height of the highest lift, m.</param>
/// <param name="AdiabaticPeakC">Peak temperature if no heat is lost, °C.</param>
/// <param name="AdiabaticPeakRangeC">The same for the least and greatest published heat of setting, °C.</param>
/// <param name="ExpectedPeakC">Peak temperature expected in the wall, °C.</param>
/// <param name="PeakTimeS">When the wall is that warm, from the first water of its bucket, s.</param>
/// <param name="PeakOuterFaceC">Temperature of the outer face at that time, °C.</param>
/// <param name="ThickestPlaceM">Greatest ball that the cavity has room for, m.</param>
/// <param name="DryOutLeastDays">
/// Least time to dry through the openings of the rear's outer plate, lids off, and the drying holes in the inner skin, the box open, days.
/// </param>
/// <param name="DurationS">From the first water to the end of the last pour, s.</param>
/// <param name="Batches">The batches in order.</param>
public sealed record PourFigures(
    [property: ComputedBy("cavity-between-skins")] double? CavityVolumeM3,
    [property: ComputedBy("slurry", "pour.cavity_volume_m3")] double? PowderKg,
    [property: ComputedBy("slurry", "pour.powder_kg")] double? WaterKg,
    [property: ComputedBy("slurry")] double? SlurryDensityKgM3,
    [property: ComputedBy("slurry", "pour.powder_kg", "pour.water_kg")] double? WetMassKg,
    [property: ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg")] double? DryMassKg,
    [property: ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg")] double? FreeWaterKg,
    [property: ComputedBy("slurry", "pour.cavity_volume_m3", "pour.slurry_density_kg_m3")] double? WetInCabinetKg,
    [property: ComputedBy("stoichiometry", "pour.cavity_volume_m3")] double? DryInCabinetKg,
    [property: ComputedBy("form-pressure", "pour.slurry_density_kg_m3", "pour.lift_height_m")] double? FormPressurePa,
    [property: ComputedBy("skin-bulge", "pour.form_pressure_pa")] double? SkinBulgeM,
    [property: ComputedBy("lift-height")] double? LiftHeightM,
    [property: ComputedBy("adiabatic-peak")] double? AdiabaticPeakC,
    [property: ComputedBy("adiabatic-peak")] IReadOnlyList<double>? AdiabaticPeakRangeC,
    [property: ComputedBy("setting-heat", "pour.adiabatic_peak_c")] double? ExpectedPeakC,
    [property: ComputedBy("setting-heat")] double? PeakTimeS,
    [property: ComputedBy("setting-heat", "pour.adiabatic_peak_c")] double? PeakOuterFaceC,
    [property: ComputedBy("thickest-place")] double? ThickestPlaceM,
    [property: ComputedBy("dry-out", "pour.free_water_kg")] double? DryOutLeastDays,
    [property: ComputedBy("pour-clock")] double? DurationS,
    IReadOnlyList<PourBatch> Batches
);

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
);

/// <summary>What the build costs.</summary>
/// <param name="TotalPrice">Price of everything the plan uses, in the project's currency.</param>
/// <param name="ToPayPrice">Price of what is still to be bought, in whole packs.</param>
/// <param name="Unpriced">Items without a price.</param>
public sealed record Cost(
    [property: ComputedBy("cost", "supplies[].price")] double TotalPrice,
    [property: ComputedBy("cost", "supplies[].price_to_buy")] double ToPayPrice,
    IReadOnlyList<string> Unpriced
);
