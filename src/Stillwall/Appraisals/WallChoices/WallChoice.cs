using Stillwall.Numerics;
using Stillwall.Projects;

namespace Stillwall.Appraisals.WallChoices;

/// <summary>One kind of wall in the same outside.</summary>
/// <param name="Kind">Kind: <c>double skin + cast</c>, <c>single printed skin</c>, <c>lattice + cast</c> or <c>lattice alone</c>.</param>
/// <param name="WallM">Thickness of the wall, m.</param>
/// <param name="StiffnessNm">Bending stiffness per width, layers bonded, N·m.</param>
/// <param name="FirstModeHz">Lowest mode of the worst panel and case, Hz.</param>
/// <param name="WallToConeDb">Sound of the worst panel and case beside the cone, dB; null where box or crossover is not known.</param>
/// <param name="FinishedKg">Mass of the finished cabinet, kg; null where a part of it is not known.</param>
/// <param name="NetVolumeM3">Net volume, m³; null where not known.</param>
/// <param name="TotalPrice">Price of all that the build uses, in the project's currency, as far as prices are stated.</param>
/// <param name="PrintSeconds">Least time to print, s; null without the printer's flow.</param>
/// <param name="PassageM">Least passage for the mix, m; null where nothing is poured.</param>
/// <param name="CanBePoured">Whether the mix flows through it; null where nothing is poured.</param>
/// <param name="Verdict">Worst verdict on walls and pour, unknown ones left out.</param>
/// <param name="Reasons">What fails, in words.</param>
public sealed record WallKind(
    string Kind,
    [property: ComputedBy("kind-stiffness")] double WallM,
    [property: ComputedBy("kind-stiffness")] double StiffnessNm,
    [property: ComputedBy("kind-mode")] double FirstModeHz,
    [property: ComputedBy("kind-sound")] double? WallToConeDb,
    [property: ComputedBy("kind-mass", "mass.finished_kg")] double? FinishedKg,
    [property: ComputedBy("kind-volume")] double? NetVolumeM3,
    [property: ComputedBy("kind-price", "supplies[].price", "mass.finished_kg")] double TotalPrice,
    [property: ComputedBy("kind-time", "print.print_seconds")] double? PrintSeconds,
    [property: ComputedBy("kind-passage")] double? PassageM,
    bool? CanBePoured,
    Verdict Verdict,
    IReadOnlyList<string> Reasons
);

/// <summary>The lightest wall that passes every finding of walls and pour.</summary>
/// <param name="CoreM">Core, m.</param>
/// <param name="Braces">Number of braces.</param>
/// <param name="StrutPitchM">Strut pitch, m.</param>
/// <param name="FinishedKg">Mass of the finished cabinet, kg.</param>
/// <param name="SavedKg">What it weighs less than the cabinet as stated, kg; negative where the stated one does not pass and the lightest is heavier.</param>
/// <param name="StatedPasses">Whether the cabinet as stated passes.</param>
/// <param name="HeldBy">What fails with a core one millimetre thinner, in words; empty where that is not a wall.</param>
/// <param name="TriedCount">How many walls were tried.</param>
/// <param name="Change">Keys to change, with their values.</param>
public sealed record LightestWall(
    [property: ComputedBy("lightest-wall", "cabinet.core", "limits.panel_mode_ratio", "limits.wall_to_cone", "limits.passage")] double CoreM,
    [property: ComputedBy("lightest-wall", "cabinet.braces", "limits.panel_mode_ratio", "limits.wall_to_cone")] int Braces,
    [property: ComputedBy("lightest-wall", "cabinet.strut_pitch", "limits.bulge", "limits.panel_mode_ratio", "limits.wall_to_cone", "limits.passage")]
        double StrutPitchM,
    [property: ComputedBy("lightest-wall", "cabinet.core", "cabinet.braces", "cabinet.strut_pitch")] double FinishedKg,
    [property: ComputedBy("lightest-saving", "mass.finished_kg")] double SavedKg,
    bool StatedPasses,
    IReadOnlyList<string> HeldBy,
    int TriedCount,
    IReadOnlyList<Change> Change
);

/// <summary>Kinds of wall side by side, and the lightest that passes.</summary>
/// <param name="Kinds">The kinds; empty where cabinet or materials are not stated.</param>
/// <param name="Lightest">The lightest wall of the stated kind; null where none in the range passes.</param>
public sealed record WallChoice(IReadOnlyList<WallKind> Kinds, LightestWall? Lightest)
{
    /// <summary>Compares the kinds and seeks the lightest wall.</summary>
    /// <param name="project">The project.</param>
    /// <param name="candidates">The candidate drivers.</param>
    /// <returns>Kinds and lightest wall.</returns>
    /// <remarks>
    /// Model: <see cref="WallKinds"/> and <see cref="LightestWalls"/>. Validity: drawn cabinets. Source: as those. Accuracy: as those.
    /// </remarks>
    public static WallChoice Of(Project project, IReadOnlyList<DriverSheet> candidates) =>
        new(WallKinds.Of(project, candidates), LightestWalls.Find(project, candidates));
}
