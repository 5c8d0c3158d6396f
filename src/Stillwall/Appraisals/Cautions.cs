using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Projects;

namespace Stillwall.Appraisals;

/// <summary>What to take care of where a plan gives cause.</summary>
/// <remarks>Source: ISO 11228-1 for the mass one person lifts (from memory); the rest is common practice, no source.</remarks>
public static class Cautions
{
    private const double OnePersonKg = 25;

    /// <summary>Everything to take care of in this plan.</summary>
    /// <param name="project">The project.</param>
    /// <param name="appraisal">What is computed from it.</param>
    /// <returns>One sentence each.</returns>
    /// <remarks>Source: as the class says.</remarks>
    public static IReadOnlyList<string> Of(Project project, Appraisal appraisal)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(appraisal);
        var lines = new List<string>();
        if (appraisal.Pour.PowderKg is not null)
        {
            lines.AddRange(OfCast(CastMixes.Of(project.Materials?.Cast)));
            lines.AddRange(OfHoles(project));
        }

        if (appraisal.Parts.Count > 0)
        {
            lines.Add("Air the room while printing, painting and gluing.");
        }

        if (appraisal.Mass.FinishedKg > OnePersonKg || appraisal.Mass.WetKg > OnePersonKg)
        {
            lines.Add(TwoPeople(project));
        }

        if (project.Brief.Neighbour is not null || project.Brief.Everyday is not null)
        {
            lines.Add(Local);
        }

        return lines;
    }

    /// <summary>What to take care of at the pour.</summary>
    /// <param name="project">The project.</param>
    /// <param name="appraisal">What is computed from it.</param>
    /// <returns>One sentence each.</returns>
    /// <remarks>Source: as the class says.</remarks>
    public static IReadOnlyList<string> OfPour(Project project, Appraisal appraisal)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(appraisal);
        return [.. OfCast(CastMixes.Of(project.Materials?.Cast)), .. appraisal.Pour.PowderKg is null ? [] : OfHoles(project), .. appraisal.Mass.WetKg > OnePersonKg ? [TwoPeople(project)] : Array.Empty<string>()];
    }

    /// <summary>What to take care of with the neighbour.</summary>
    public const string Local = "Local rules decide on noise; the figures here are a forecast.";

    private static string TwoPeople(Project project) => $"Lift it by two: it weighs more than {Show.Of(project).Mass(OnePersonKg)}.";

    private static IEnumerable<string> OfHoles(Project project) =>
        CabinetSizes.Of(project.Cabinet, null) is { } sizes && DryingHoles.Of(sizes).Count > 0 ? ["A drying hole left open lets the box leak: seal each one before the driver goes in."] : [];

    private static IEnumerable<string> OfCast(CastMix? mix)
    {
        var hasSand = mix?.Name is "sand-plaster" or "cement-grout" or "own";
        yield return hasSand ? "Wear a dust mask for powder and sanding: sand is silica." : "Wear a dust mask for powder and sanding.";
        if (mix?.Name is "cement-grout" or "own")
        {
            yield return "Cement is caustic: gloves and goggles.";
        }

        if (mix?.Name is not "cement-grout")
        {
            yield return "Setting plaster burns skin in bulk: never cast it around a hand or limb.";
        }
    }
}
