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
    /// <remarks>Source: the stages' own formulas; see the catalogue.</remarks>
    public static Appraisal Of(Project project, IReadOnlyList<DriverSheet> candidates)
    {
        var mender = new Mender(project, candidates);
        return WithFindings(mender.Facts, [.. mender.Judged.Select(f => mender.Sought(f.Id)!)]);
    }

    /// <summary>Appraises a project without seeking remedies, which takes most of the time.</summary>
    /// <param name="project">The project as stated.</param>
    /// <param name="candidates">The candidate drivers.</param>
    /// <returns>The appraisal; its findings have no remedy that a search would have to find.</returns>
    /// <remarks>Source: the stages' own formulas; see the catalogue.</remarks>
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
    /// <remarks>Source: the stages' own formulas; see the catalogue.</remarks>
    public static Appraisal OfStage(Project project, IReadOnlyList<DriverSheet> candidates, string stage)
    {
        var mender = new Mender(project, candidates);
        return WithFindings(mender.Facts, [.. mender.Judged.Select(f => f.Stage == stage ? mender.Sought(f.Id)! : f)]);
    }

    private static Appraisal WithFindings(Facts facts, IReadOnlyList<Finding> findings) =>
        new(
            Project: facts.Project.Name,
            Box: facts.Box,
            Walls: facts.Walls,
            Parts: facts.Parts,
            Pour: facts.Pour,
            Print: facts.Print,
            Mass: facts.Mass,
            Supplies: facts.Supplies,
            Cost: facts.Cost,
            Quiet: facts.Quiet,
            Findings: findings,
            Cautions: Care.Cautions.Of(facts)
        );
}

/// <summary>The pour plan. What is not known is null.</summary>
public sealed record PourFigures
{
    /// <summary>Space the cast fills, m³.</summary>
    [ComputedBy("cavity-between-skins")]
    public double? CavityVolumeM3 { get; init; }

    /// <summary>Powder to mix, reserve counted, kg.</summary>
    [ComputedBy("slurry", "pour.cavity_volume_m3")]
    public double? PowderKg { get; init; }

    /// <summary>Water to mix, kg.</summary>
    [ComputedBy("slurry", "pour.powder_kg")]
    public double? WaterKg { get; init; }

    /// <summary>Density of the slurry, kg/m³.</summary>
    [ComputedBy("slurry")]
    public double? SlurryDensityKgM3 { get; init; }

    /// <summary>Mass of all that is mixed, kg.</summary>
    [ComputedBy("slurry", "pour.powder_kg", "pour.water_kg")]
    public double? WetMassKg { get; init; }

    /// <summary>Mass of all that is mixed when set and dry, kg.</summary>
    [ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg")]
    public double? DryMassKg { get; init; }

    /// <summary>Water that has to dry out of all that is mixed, kg.</summary>
    [ComputedBy("stoichiometry", "pour.powder_kg", "pour.water_kg")]
    public double? FreeWaterKg { get; init; }

    /// <summary>Slurry in the cabinet, kg.</summary>
    [ComputedBy("slurry", "pour.cavity_volume_m3", "pour.slurry_density_kg_m3")]
    public double? WetInCabinetKg { get; init; }

    /// <summary>Set and dry cast in the cabinet, kg.</summary>
    [ComputedBy("stoichiometry", "pour.cavity_volume_m3")]
    public double? DryInCabinetKg { get; init; }

    /// <summary>Pressure at the deepest point of the highest lift, Pa.</summary>
    [ComputedBy("form-pressure", "pour.slurry_density_kg_m3", "pour.lift_height_m")]
    public double? FormPressurePa { get; init; }

    /// <summary>Bulge of the worst bay, m.</summary>
    [ComputedBy("skin-bulge", "pour.form_pressure_pa")]
    public double? SkinBulgeM { get; init; }

    /// <summary>Height of the highest lift, m.</summary>
    [ComputedBy("lift-height")]
    public double? LiftHeightM { get; init; }

    /// <summary>Peak temperature if no heat is lost, °C.</summary>
    [ComputedBy("adiabatic-peak")]
    public double? AdiabaticPeakC { get; init; }

    /// <summary>The same for the least and greatest published heat of setting, °C.</summary>
    [ComputedBy("adiabatic-peak")]
    public IReadOnlyList<double>? AdiabaticPeakRangeC { get; init; }

    /// <summary>Peak temperature expected in the wall, °C.</summary>
    [ComputedBy("setting-heat", "pour.adiabatic_peak_c")]
    public double? ExpectedPeakC { get; init; }

    /// <summary>When the wall is that warm, from the first water of its bucket, s.</summary>
    [ComputedBy("setting-heat")]
    public double? PeakTimeS { get; init; }

    /// <summary>Temperature of the outer face at that time, °C.</summary>
    [ComputedBy("setting-heat", "pour.adiabatic_peak_c")]
    public double? PeakOuterFaceC { get; init; }

    /// <summary>Greatest ball that the cavity has room for, m.</summary>
    [ComputedBy("thickest-place")]
    public double? ThickestPlaceM { get; init; }

    /// <summary>
    /// Least time to dry through the openings of the rear's outer plate, lids off, and the drying holes in the inner skin, the box open, days.
    /// </summary>
    [ComputedBy("dry-out", "pour.free_water_kg")]
    public double? DryOutLeastDays { get; init; }

    /// <summary>From the first water to the end of the last pour, s.</summary>
    [ComputedBy("pour-clock")]
    public double? DurationS { get; init; }

    /// <summary>The batches in order.</summary>
    public IReadOnlyList<PourBatch> Batches { get; init; } = [];
}

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
