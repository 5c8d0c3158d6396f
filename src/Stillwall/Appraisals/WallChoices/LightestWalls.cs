using Stillwall.Appraisals.Explaining;
using Stillwall.Appraisals.Findings;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Appraisals.WallChoices;

/// <summary>Seeks the lightest double skin that passes every finding of walls and pour.</summary>
internal static class LightestWalls
{
    private const double StepM = 0.001,
        LeastCoreM = 0.004,
        GreatestCoreM = 0.030;
    private const int MostBraces = 2;

    // Pitches that are tried besides the stated one, m (our choice).
    private static readonly double[] PitchesM = [0.060, 0.050, 0.040, 0.030, 0.025];

    /// <summary>The findings that count: all of walls and pour.</summary>
    internal static IReadOnlyList<FindingRule> Rules { get; } = [.. AllFindings.Rules.Where(r => r.Stage is "Walls" or "Pour")];

    // The quick ones first; plates take longest.
    private static readonly IReadOnlyList<FindingRule> QuickFirst = [.. Rules.OrderBy(r => r.Stage == "Pour" ? 0 : 1)];

    /// <summary>The lightest wall; null where none passes, or where mass or drawing is not known.</summary>
    /// <remarks>
    /// Model: cores from 4 to 30 mm in millimetres, no brace to two, six strut pitches; for each pitch and number of braces the thinnest core with
    /// which no finding of walls and pour fails, and of those the least finished mass. Mass rises with the core, so a core that weighs more than the
    /// best so far ends its row. Validity: skins as stated. Source: search over the findings' own rules; range and steps are our choice. Accuracy:
    /// one step.
    /// </remarks>
    public static LightestWall? Find(Project project, IReadOnlyList<DriverSheet> candidates)
    {
        ArgumentNullException.ThrowIfNull(project);
        if (project.Cabinet is not { CoreM: > 0 } stated || new Facts(project, candidates) is not { Mass.FinishedKg: { } asStated } facts)
        {
            return null;
        }

        (Facts Facts, double Kg)? best = null;
        var tried = 0;
        foreach (var pitch in PitchesM.Append(stated.StrutPitchM).Distinct().OrderDescending())
        {
            for (var braces = 0; braces <= MostBraces; braces++)
            {
                Facts With(double core)
                {
                    tried++;
                    return new Facts(project with { Cabinet = stated with { CoreM = core, StrutPitchM = pitch, Braces = braces } }, candidates);
                }

                if (Thinnest(With, best?.Kg ?? double.PositiveInfinity) is { } found)
                {
                    best = found;
                }
            }
        }

        return best is { } light
            ? Told(
                project: project,
                candidates: candidates,
                light: light.Facts,
                kg: light.Kg,
                statedKg: asStated,
                statedPasses: Failing(facts).Count == 0,
                tried: tried
            )
            : null;
    }

    /// <summary>Explains one figure of the lightest wall: what was tried, and what decided.</summary>
    /// <returns>The explanation; a search in steps has no effect of one per cent.</returns>
    /// <remarks>Source: our own search.</remarks>
    public static Explanation Explain(Facts facts, LightestWall light, string property)
    {
        ArgumentNullException.ThrowIfNull(light);
        var why = Why.Of(facts, light, property);
        var decided = light.HeldBy.Count == 0 ? "" : $"; what decided: with a core 1 mm thinner these fail: {string.Join(", ", light.HeldBy)}";
        return why with { Formula = $"{why.Formula}; {Show.Number(light.TriedCount, 4)} walls tried{decided}" };
    }

    private static (Facts Facts, double Kg)? Thinnest(Func<double, Facts> with, double toBeatKg)
    {
        for (var i = (int)Math.Round(LeastCoreM / StepM); i <= (int)Math.Round(GreatestCoreM / StepM); i++)
        {
            var facts = with(Millimetres.Whole(i));
            if (facts.Geometry is null || facts.Mass.FinishedKg is not { } mass)
            {
                continue;
            }

            if (mass >= toBeatKg)
            {
                return null;
            }

            if (QuickFirst.All(r => r.Judge(facts).Verdict != Verdict.Fails))
            {
                return (facts, mass);
            }
        }

        return null;
    }

    private static LightestWall Told(
        Project project,
        IReadOnlyList<DriverSheet> candidates,
        Facts light,
        double kg,
        double statedKg,
        bool statedPasses,
        int tried
    )
    {
        var (stated, found) = (project.Cabinet!, light.Project.Cabinet!);
        var less = Millimetres.Whole((int)Math.Round((found.CoreM!.Value - StepM).InMillimetres()));
        var thinner = new Facts(light.Project with { Cabinet = found with { CoreM = less } }, candidates);
        var changes = new List<Change>();
        void Changed(bool differs, string key, object value) => changes.AddRange(differs ? [new Change(key, value)] : []);
        Changed(stated.CoreM != found.CoreM, "cabinet.core", Units.Write(found.CoreM.Value, Dimension.Length));
        Changed(stated.Braces != found.Braces, "cabinet.braces", found.Braces);
        Changed(stated.StrutPitchM != found.StrutPitchM, "cabinet.strut_pitch", Units.Write(found.StrutPitchM, Dimension.Length));
        return new LightestWall(
            CoreM: found.CoreM.Value,
            Braces: found.Braces,
            StrutPitchM: found.StrutPitchM,
            FinishedKg: kg,
            SavedKg: statedKg - kg,
            StatedPasses: statedPasses,
            HeldBy: thinner.Geometry is null ? [] : Failing(thinner),
            TriedCount: tried,
            Change: changes
        );
    }

    private static IReadOnlyList<string> Failing(Facts facts) => [.. Rules.Where(r => r.Judge(facts).Verdict == Verdict.Fails).Select(r => r.Topic)];
}
