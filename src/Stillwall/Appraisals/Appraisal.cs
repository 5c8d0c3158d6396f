using Stillwall.Appraisals.Care;
using Stillwall.Appraisals.Findings;
using Stillwall.Cabinets;
using Stillwall.Neighbours;
using Stillwall.Numerics;
using Stillwall.Parts;
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

/// <summary>What the build costs.</summary>
/// <param name="TotalPrice">Price of everything the plan uses, in the project's currency.</param>
/// <param name="ToPayPrice">Price of what is still to be bought, in whole packs.</param>
/// <param name="Unpriced">Items without a price.</param>
public sealed record Cost(
    [property: ComputedBy("cost", "supplies[].price")] double TotalPrice,
    [property: ComputedBy("cost", "supplies[].price_to_buy")] double ToPayPrice,
    IReadOnlyList<string> Unpriced
);
