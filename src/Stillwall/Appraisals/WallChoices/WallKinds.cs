using Stillwall.Projects;
using Stillwall.Walls;

namespace Stillwall.Appraisals.WallChoices;

/// <summary>Kinds of wall in one and the same outside.</summary>
public static class WallKinds
{
    /// <summary>Sheet of the lattice where the printer's nozzle is not stated, m; else two nozzles (our choice).</summary>
    public const double UsualSheetM = 0.0008;

    // Core where the project states a single wall, m (our choice).
    private const double UsualCoreM = 0.012;

    /// <summary>Compares four kinds of wall.</summary>
    /// <param name="project">The project.</param>
    /// <param name="candidates">The candidate drivers.</param>
    /// <returns>Double skin and cast, single printed skin, lattice and cast, lattice alone; empty where the cabinet is not drawn or its materials are not stated.</returns>
    /// <remarks>
    /// Model: the first is the project as stated (12 mm of core where it has none); the single skin has both skins' plastic in one; the lattices fill the core with a sheet gyroid of one cell across it, two nozzles thick,
    /// in place of struts and keys, and count as bonded. Masses, volumes, prices and times are the appraisal's own; those of the lattices follow from the drawn core. Walls and pour are judged by the findings' own limits,
    /// for the lattices mode, sound, passage and heat. Validity: comparison at an early stage. Source: our choice of kinds. Accuracy: as the stages; lattice alone as its modulus, a factor of 1.5.
    /// </remarks>
    public static IReadOnlyList<WallKind> Of(Project project, IReadOnlyList<DriverSheet> candidates)
    {
        ArgumentNullException.ThrowIfNull(project);
        var cabinet = project.Cabinet;
        if (cabinet?.OuterSkinM is not { } outer)
        {
            return [];
        }

        var inner = cabinet.InnerSkinM ?? outer;
        var cast = new Facts(project with { Cabinet = cabinet with { CoreM = cabinet.CoreM > 0 ? cabinet.CoreM : UsualCoreM, InnerSkinM = cabinet.CoreM > 0 ? inner : outer } }, candidates);
        var single = new Facts(project with { Cabinet = cabinet with { CoreM = 0, InnerSkinM = 0, OuterSkinM = outer + (cabinet.CoreM > 0 ? inner : 0) } }, candidates);
        return [.. new[] { Drawn("double skin + cast", cast), Drawn("single printed skin", single), Lattice("lattice + cast", cast, true), Lattice("lattice alone", cast, false) }.OfType<WallKind>()];
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
            kind, set.Geometry.Sizes.Wall * 1e-3, Laminate.Bonded(set.Layers).StiffnessNm, mode.ModeHz, f.WorstSound?.LevelDb, f.Mass.FinishedKg, f.NetVolumeM3, f.Cost.TotalPrice, f.Print.PrintSeconds,
            hasCore ? set.Geometry.PassageM : null, hasCore ? set.Geometry.PassageM >= Pours.Flow.WantedPassageM(f.Limits.PassageM, f.GrainM) : null,
            judged.Max(j => j.Verdict == Verdict.Fails ? Verdict.Fails : j.Verdict == Verdict.Tight ? Verdict.Tight : Verdict.Holds), [.. judged.Where(j => j.Verdict == Verdict.Fails).Select(j => j.Topic)]);
    }

    private static WallKind? Lattice(string kind, Facts f, bool isCast)
    {
        if (f.WallsDrawn is not { } set || f.Skin is not { } skin || f.Core is not { } core || f.Geometry is not { } g)
        {
            return null;
        }

        // One cell across the core, in place of struts and keys.
        var sheet = Math.Min(2 * f.Project.Brief.Printer?.NozzleM ?? UsualSheetM, 0.3 * g.CoreM);
        var share = Gyroid.SolidShare(g.CoreM, sheet);
        var middle = isCast ? Gyroid.Filled(g.CoreM, share, skin, core) : Gyroid.Empty(g.CoreM, share, skin);
        IReadOnlyList<Layer> layers = [set.Layers[0], middle, set.Layers[2]];
        var panels = set.Panels.Select(p => WallPanels.Of(p with { Layers = layers, StrutSpanM = null }, WallSet.Edges, f.BoxCompliance, f.Project.Brief.Aim?.CrossoverHz, f.ConeOnAirHz)).ToList();
        var (mode, sound) = (panels.Min(p => p.Bonded.FirstModeHz), panels.Max(p => p.Bonded.WallToConeDb));

        var space = g.CavityM3 + g.StandingM3;
        var (morePlastic, cast) = (share * space - g.StandingM3, isCast ? (1 - share) * space : 0);
        var castOverDrawn = cast / g.CavityM3 - 1;
        var passage = Gyroid.PassageM(g.CoreM, sheet);
        var wanted = Pours.Flow.WantedPassageM(f.Limits.PassageM, f.GrainM);
        var reasons = new List<string>();
        void Fails(bool fails, string why) => reasons.AddRange(fails ? [why] : []);
        Fails(mode < f.WorkingRangeHz(f.Limits.PanelModeRatio), "panel resonance above the working range");
        Fails(sound > f.Limits.WallToConeDb, "wall sound below the cone");
        Fails(isCast && passage < wanted, "mix flows into the cavity");
        Fails(isCast && f.Pour.ExpectedPeakC > skin.SofteningC - f.Limits.HeatMarginK, "heat below softening");
        double Priced(string item, double? ratio) => ratio * f.Supplies.FirstOrDefault(l => l.Item == item)?.Price ?? 0;
        var plastic = morePlastic * skin.DensityKgM3;
        return new WallKind(
            kind, g.Sizes.Wall * 1e-3, Laminate.Bonded(layers).StiffnessNm, mode, sound, f.Mass.FinishedKg + plastic + castOverDrawn * f.Pour.DryInCabinetKg, f.NetVolumeM3,
            f.Cost.TotalPrice + Priced("filament", plastic / f.Print.FilamentKg) + Priced("cast powder", castOverDrawn),
            f.Print.PrintSeconds + morePlastic * 1e9 / f.Project.Brief.Printer?.Flow, isCast ? passage : null, isCast ? passage >= wanted : null,
            reasons.Count > 0 ? Verdict.Fails : Verdict.Holds, reasons);
    }
}
