using Stillwall.Materials;
using Stillwall.Parts;
using Stillwall.Pours;
using Stillwall.SupplyLists;
using Stillwall.Walls;

namespace Stillwall.Appraisals;

/// <summary>Walls and parts.</summary>
public sealed partial class Facts
{
    private readonly Fact<WallSet?> wallSet;
    private readonly Fact<IReadOnlyList<WallPanelFigures>> walls;
    private readonly Fact<IReadOnlyList<PartFigures>> parts;
    private readonly Fact<PrintTotals> print;
    private readonly Fact<Mass> mass;

    /// <summary>The plastic of the skins; null where it is not stated.</summary>
    public SkinMaterial? Skin => SkinMaterials.Of(Project.Materials);

    /// <summary>The mix of the core; null where it is not stated.</summary>
    public CastMix? CastMix => CastMixes.Of(Project.Materials?.Cast);

    /// <summary>Powder for one of water, as stated or as usual for the mix.</summary>
    public double? PowderPerWater => CastMix?.PowderPerWaterRatio;

    /// <summary>Largest grain of the mix, m.</summary>
    public double GrainM => CastMix?.GrainM ?? 0;

    /// <summary>The set core with what was measured; null where the mix is not stated.</summary>
    public CoreMaterial? Core => AssumedCore?.With(Project.Measured);

    /// <summary>The walls of a drawn cabinet; empty where geometry or materials are not known.</summary>
    public IReadOnlyList<WallPanelFigures> Walls => walls.Value;

    /// <summary>What the parts are made from; null where the cabinet is not drawn.</summary>
    internal PartJob? PartJob => Geometry is { } g ? new PartJob(g, Project.Cabinet!, Sheet, Project.Brief.Printer) : null;

    /// <summary>What is to be printed; empty for a ready box.</summary>
    public IReadOnlyList<PartFigures> Parts => parts.Value;

    /// <summary>What the printing takes.</summary>
    public PrintTotals Print => print.Value;

    /// <summary>What it weighs.</summary>
    public Mass Mass => mass.Value;

    /// <summary>Whether the skins count as bonded: keyed well enough near the ends and elsewhere.</summary>
    public bool IsKeyed => Geometry is { } g && g.KeyedFractions() is var (elsewhere, ends) && ends >= KeyedAtEnds && elsewhere >= Limits.KeyedFraction;

    /// <summary>The lowest mode of the cases that apply; null where the walls are not known.</summary>
    internal (string Panel, string Case, double ModeHz)? WorstMode =>
        Walls
            .SelectMany(Cases)
            .OrderBy(c => c.Figures.FirstModeHz)
            .Select(c => ((string, string, double)?)(c.Panel, c.Case, c.Figures.FirstModeHz))
            .FirstOrDefault();

    /// <summary>The loudest wall of the cases that apply; null where walls, box or crossover are not known.</summary>
    internal (string Panel, string Case, double LevelDb)? WorstSound =>
        Walls
            .SelectMany(Cases)
            .Where(c => c.Figures.WallToConeDb is not null)
            .OrderByDescending(c => c.Figures.WallToConeDb)
            .Select(c => ((string, string, double)?)(c.Panel, c.Case, c.Figures.WallToConeDb!.Value))
            .FirstOrDefault();

    /// <summary>The thinnest core that still meets both wall limits; the walls and their sound are known.</summary>
    internal ThinnerCore ThinnestCore =>
        ThinnerCore.Of(
            WallSet!,
            WorkingRangeHz(Limits.PanelModeRatio),
            Limits.WallToConeDb,
            BoxCompliance!.Value,
            Project.Brief.Aim!.CrossoverHz!.Value,
            Pour.DryInCabinetKg ?? 0
        );

    /// <summary>Gap behind an unkeyed inner skin, m; null where the heat is not known.</summary>
    internal double? SkinGapM =>
        Geometry is { } g && CastMix is { } mix && Pour.ExpectedPeakC is { } peak
            ? SkinGap.GapM(
                Math.Max(g.InsideWidthM, g.InsideHeightM),
                Math.Abs(mix.SettingStrainRatio),
                SkinGap.PlasticOverGypsumPerK,
                Math.Max(0, peak - Air.TemperatureC)
            )
            : null;

    /// <summary>Safety factor of the weakest joint at twice the weight; null where the mass is not known.</summary>
    internal double? JointSafety =>
        Mass.FinishedKg is { } mass && Geometry is { } g ? LiftJoints.WeakestSafety(g, mass, Limits.SealantStrengthPa, Limits.KeyedStrengthPa) : null;

    /// <summary>The driver's screws in their inserts; null where bolt or pull-out is not known.</summary>
    internal DriverScrews? Screws =>
        Sheet is { } s && Driver is { } driver ? DriverScrews.Of(s, driver, Air, NetVolumeM3, Box.SystemResonanceHz, Limits) : null;

    /// <summary>How far the cabinet may lean; null where its mass is not known.</summary>
    internal Balance? Balance => PartJob is { } job && Mass.FinishedKg is not null ? Balance.Of(job, Parts, Pour.DryInCabinetKg ?? 0) : null;

    /// <summary>Modulus assumed for the core before anything was measured, Pa.</summary>
    internal double? AssumedCoreModulusPa => AssumedCore?.ModulusPa;

    /// <summary>What stands between the project and its walls: a key of the project file.</summary>
    public string MissingForWalls =>
        Geometry is null ? "cabinet.outside"
        : Skin is null ? "materials.skin"
        : "materials.cast.mix";

    /// <summary>What stands between the project and the sound of its walls.</summary>
    internal string MissingForWallSound =>
        Walls.Count == 0 ? MissingForWalls
        : System is null ? MissingForBox
        : "brief.aim.crossover";

    /// <summary>What stands between the project and its mass.</summary>
    internal string MissingForMass =>
        Geometry is null ? "cabinet.outside"
        : Skin is null ? "materials.skin"
        : Geometry.Sizes.Core > 0 && CastMix is null ? "materials.cast.mix"
        : Sheet is null ? MissingForDriver
        : "driver.mass";

    private CoreMaterial? AssumedCore =>
        CastMix is { } mix && PowderPerWater is { } ratio ? CoreMaterial.Dry(mix, Mix.FromPowder(mix, 1, ratio).DryDensityKgM3) : null;

    /// <summary>Compliance of the air in the box, m³/Pa; null where the box is not known.</summary>
    internal double? BoxCompliance => System is { } s ? Cabinets.Leakage.BoxComplianceM3Pa(s.Network.EffectiveVolumeM3, Air) : null;

    private WallSet? WallSet => wallSet.Value;

    private WallSet? ComputeWallSet() =>
        Geometry is { } g && Skin is { } skin && (g.Sizes.Core <= 0 || Core is not null)
            ? new WallSet(g, skin, Core, Sheet?.MassKg ?? 0, Driver?.SdM2 ?? 0)
            : null;

    /// <summary>Sound of the walls beside the cone over frequency, left, right, top, bottom, front, rear; null where walls or box are not known.</summary>
    /// <param name="pointsPerDecade">Points in a decade.</param>
    /// <returns>The curve; slipping where the core is not keyed to both skins.</returns>
    public IReadOnlyList<WallCurvePoint>? WallCurveOf(int pointsPerDecade) =>
        WallSet is { } set && BoxCompliance is { } box
            ? WallCurve.Of(set.PressureModes(IsKeyed || set.Layers.Count == 1), box, pointsPerDecade, ConeOnAirHz)
            : null;

    /// <summary>Resonance of the cone's mass on the air in the box, Hz; null where driver or box is not known.</summary>
    internal double? ConeOnAirHz => Driver is { } d && BoxCompliance is { } box ? WallSound.ConeOnAirHz(d.MmsKg, d.SdM2, box) : null;

    /// <summary>The walls as drawn; null where geometry or materials are not known.</summary>
    internal WallSet? WallsDrawn => WallSet;

    private IReadOnlyList<WallPanelFigures> ComputeWalls()
    {
        if (WallSet is not { } set)
        {
            return [];
        }

        var (compliance, crossover) = (BoxCompliance, Project.Brief.Aim?.CrossoverHz);
        return before?.WallSet == set && before.BoxCompliance == compliance && before.Project.Brief.Aim?.CrossoverHz == crossover && before.Driver == Driver
            ? before.Walls
            : set.Figures(compliance, crossover, ConeOnAirHz);
    }

    private Mass ComputeMass()
    {
        var hasCore = Geometry is not { Sizes.Core: <= 0 };
        return Mass.Of(Parts, Project.Cabinet, Sheet, hasCore ? Pour.DryInCabinetKg : 0, hasCore ? Pour.WetInCabinetKg : 0);
    }

    private IReadOnlyList<PartFigures> ComputeParts() =>
        PartJob is { } job ? PartList.Of(job, Skin?.DensityKgM3) : [];

    private IEnumerable<(string Panel, string Case, WallCase Figures)> Cases(WallPanelFigures wall)
    {
        yield return (wall.Panel, "bonded", wall.Bonded);
        if (Geometry!.Sizes.Core <= 0)
        {
            yield break;
        }

        if (!IsKeyed)
        {
            yield return (wall.Panel, "slipping", wall.Slipping);
        }

        if (wall.CutCore is { } cut && WallSet!.IsCut)
        {
            yield return (wall.Panel, "its core cut by struts", cut);
        }
    }
}
