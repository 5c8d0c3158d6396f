using Stillwall.Appraisals.Explaining;
using Stillwall.Projects;
using Stillwall.Walls;
using Stillwall.Shapes;

namespace Stillwall.Appraisals.WallChoices;

/// <summary>Kinds of wall in one and the same outside.</summary>
public static class WallKinds
{
    private const string DoubleSkin = "double skin + cast",
        SingleSkin = "single printed skin",
        FilledLattice = "lattice + cast",
        BareLattice = "lattice alone";

    /// <summary>Sheet of the lattice where the printer's nozzle is not stated, m; else two nozzles (our choice).</summary>
    public const double UsualSheetM = 0.0008;

    // Core where the project states a single wall, m (our choice).
    private const double UsualCoreM = 0.012;

    /// <summary>Compares four kinds of wall.</summary>
    /// <param name="project">The project.</param>
    /// <param name="candidates">The candidate drivers.</param>
    /// <returns>
    /// Double skin and cast, single printed skin, lattice and cast, lattice alone; empty where the cabinet is not drawn or its materials are not
    /// stated.
    /// </returns>
    /// <remarks>
    /// Model: the first is the project as stated (12 mm of core where it has none); the single skin has both skins' plastic in one; the lattices fill
    /// the core with a sheet gyroid of one cell across it, two nozzles thick, in place of struts and keys, and count as bonded. Masses, volumes,
    /// prices and times are the appraisal's own; those of the lattices follow from the drawn core. Walls and pour are judged by the findings' own
    /// limits, for the lattices mode, sound, passage and heat. Validity: comparison at an early stage. Source: our choice of kinds. Accuracy: as the
    /// stages; lattice alone as its modulus, a factor of 1.5.
    /// </remarks>
    public static IReadOnlyList<WallKind> Of(Project project, IReadOnlyList<DriverSheet> candidates)
    {
        ArgumentNullException.ThrowIfNull(project);
        var (cast, single) = (Cast(project), Single(project));
        if (cast is null || single is null)
        {
            return [];
        }

        var (poured, printed) = (new Facts(cast, candidates), new Facts(single, candidates));
        return
        [
            .. new[]
            {
                Drawn(DoubleSkin, poured),
                Drawn(SingleSkin, printed),
                Latticed(FilledLattice, poured),
                Latticed(BareLattice, poured),
            }.OfType<WallKind>(),
        ];
    }

    /// <summary>Explains one figure of a kind of wall; of that kind alone the one figure is computed anew for each input.</summary>
    /// <param name="facts">The facts of the project for which the kinds were compared.</param>
    /// <param name="kind">The kind.</param>
    /// <param name="property">Name of its property.</param>
    /// <returns>The explanation.</returns>
    /// <exception cref="ArgumentException">The property names no formula.</exception>
    /// <remarks>Source: as the comparison. Accuracy: 0.1 % of smooth closed forms.</remarks>
    public static Explanation Explain(Facts facts, WallKind kind, string property)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(kind);
        return Why.OfFigure(facts, kind, property, f => Figure(f, kind.Kind, property));
    }

    private static Project? Cast(Project project) =>
        project.Cabinet is { OuterSkinM: { } outer } cabinet
            ? project with
            {
                Cabinet = cabinet with
                {
                    CoreM = cabinet.CoreM > 0 ? cabinet.CoreM : UsualCoreM,
                    InnerSkinM = cabinet.CoreM > 0 ? cabinet.InnerSkinM ?? outer : outer,
                },
            }
            : null;

    private static Project? Single(Project project) =>
        project.Cabinet is { OuterSkinM: { } outer } cabinet
            ? project with
            {
                Cabinet = cabinet with { CoreM = 0, InnerSkinM = 0, OuterSkinM = outer + (cabinet.CoreM > 0 ? cabinet.InnerSkinM ?? outer : 0) },
            }
            : null;

    // One figure of one kind, nothing else of it.
    private static double? Figure(Facts f, string kind, string property)
    {
        if ((kind == SingleSkin ? Single(f.Project) : Cast(f.Project)) is not { } project)
        {
            return null;
        }

        var changed = f.With(project);
        return kind is FilledLattice or BareLattice
            ? Lattice.Of(changed, kind == FilledLattice)?.Figure(property)
            : property switch
            {
                nameof(WallKind.WallM) => changed.WallsDrawn?.Geometry.Sizes.Wall.InMetres(),
                nameof(WallKind.StiffnessNm) => changed.WallsDrawn is { } set ? Laminate.Bonded(set.Layers).StiffnessNm : null,
                nameof(WallKind.FirstModeHz) => changed.WorstMode?.ModeHz,
                nameof(WallKind.WallToConeDb) => changed.WorstSound?.LevelDb,
                nameof(WallKind.FinishedKg) => changed.Mass.FinishedKg,
                nameof(WallKind.NetVolumeM3) => changed.NetVolumeM3,
                nameof(WallKind.TotalPrice) => changed.Cost.TotalPrice,
                nameof(WallKind.PrintSeconds) => changed.Print.PrintSeconds,
                nameof(WallKind.PassageM) => changed.Geometry is { Sizes.Core: > 0 } g ? g.PassageM : null,
                _ => null,
            };
    }

    private static WallKind? Drawn(string kind, Facts f)
    {
        if (f.WallsDrawn is not { } set || f.WorstMode is not { } mode)
        {
            return null;
        }

        var judged = LightestWalls.Rules.Select(r => r.Of(f)).Where(j => j.Verdict != Verdict.Unknown).ToList();
        var hasCore = set.Geometry.Sizes.Core > 0;
        return new WallKind(
            Kind: kind,
            WallM: set.Geometry.Sizes.Wall.InMetres(),
            StiffnessNm: Laminate.Bonded(set.Layers).StiffnessNm,
            FirstModeHz: mode.ModeHz,
            WallToConeDb: f.WorstSound?.LevelDb,
            FinishedKg: f.Mass.FinishedKg,
            NetVolumeM3: f.NetVolumeM3,
            TotalPrice: f.Cost.TotalPrice,
            PrintSeconds: f.Print.PrintSeconds,
            PassageM: hasCore ? set.Geometry.PassageM : null,
            CanBePoured: hasCore ? set.Geometry.PassageM >= Pours.Flow.WantedPassageM(f.Limits.PassageM, f.GrainM) : null,
            Verdict: judged.Max(j =>
                j.Verdict == Verdict.Fails ? Verdict.Fails
                : j.Verdict == Verdict.Tight ? Verdict.Tight
                : Verdict.Holds
            ),
            Reasons: [.. judged.Where(j => j.Verdict == Verdict.Fails).Select(j => j.Topic)]
        );
    }

    private static WallKind? Latticed(string kind, Facts f)
    {
        if (Lattice.Of(f, kind == FilledLattice) is not { } l)
        {
            return null;
        }

        var reasons = new List<string>();
        void Fails(bool fails, string why) => reasons.AddRange(fails ? [why] : []);
        Fails(l.FirstModeHz < f.WorkingRangeHz(f.Limits.PanelModeRatio), "panel resonance above the working range");
        Fails(l.WallToConeDb > f.Limits.WallToConeDb, "wall sound below the cone");
        Fails(l.CanBePoured == false, "mix flows into the cavity");
        Fails(l.IsCast && f.Pour.ExpectedPeakC > l.Skin.SofteningC - f.Limits.HeatMarginK, "heat below softening");
        return new WallKind(
            Kind: kind,
            WallM: l.WallM,
            StiffnessNm: l.StiffnessNm,
            FirstModeHz: l.FirstModeHz,
            WallToConeDb: l.WallToConeDb,
            FinishedKg: l.FinishedKg,
            NetVolumeM3: f.NetVolumeM3,
            TotalPrice: l.TotalPrice,
            PrintSeconds: l.PrintSeconds,
            PassageM: l.PassageM,
            CanBePoured: l.CanBePoured,
            Verdict: reasons.Count > 0 ? Verdict.Fails : Verdict.Holds,
            Reasons: reasons
        );
    }
}
