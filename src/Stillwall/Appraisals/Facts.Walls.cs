using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Parts;
using Stillwall.Pours;
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

    /// <summary>The thinnest core that still meets both wall limits, and the mass it would save.</summary>
    internal (double CoreM, double SavedKg) ThinnestCore
    {
        get
        {
            var stated = Project.Cabinet!.CoreM!.Value;
            var thinnest =
                WallSet!.ThinnestCoreM(
                    0.002,
                    Math.Max(0.002, stated),
                    WorkingRangeHz(Limits.PanelModeRatio),
                    Limits.WallToConeDb,
                    BoxCompliance!.Value,
                    Project.Brief.Aim!.CrossoverHz!.Value
                ) ?? stated;
            return (thinnest, (Pour.DryInCabinetKg ?? 0) * (1 - thinnest / stated));
        }
    }

    /// <summary>Gap behind an unkeyed inner skin, m; null where the heat is not known.</summary>
    internal double? SkinGapM =>
        Geometry is { } g && CastMix is { } mix && Pour.ExpectedPeakC is { } peak
            ? SkinGap.GapM(
                Math.Max(g.InsideWidthM, g.InsideHeightM),
                Math.Abs(mix.SettingStrainRatio),
                SkinCastExpansionPerK,
                Math.Max(0, peak - Air.TemperatureC)
            )
            : null;

    /// <summary>Safety factor of the weakest joint at twice the weight; null where the mass is not known.</summary>
    internal double? JointSafety
    {
        get
        {
            if (Mass.FinishedKg is not { } mass || Geometry is not { } g)
            {
                return null;
            }

            var load = Joints.LiftLoadN(mass);
            var rim = g.Sizes.Outline.Inset(g.Sizes.OuterSkin / 2).Length * g.Sizes.OuterSkin * 1e-6;
            var sealed_ = Joints.Of("front plate on its sealant", Math.Max(rim, 1e-9) + g.Front.CollarM2, Limits.SealantStrengthPa, load);
            if (g.Sizes.Core <= 0)
            {
                return sealed_.SafetyFactor;
            }

            // The front core holds the plate by its collar, bosses and posts, the sleeve by its end keys over 80 mm.
            var posts = Math.Sqrt(4 * Math.PI * (g.Front.PostM2 + g.Front.CollarM2)) * g.CoreM * Math.Sqrt(Math.Max(1, g.Front.Posts));
            var keys = Joints.Of(
                "core on the outer sleeve",
                g.Sleeve.OuterEndKeys.Count * Cabinets.BuildUp.KeyHead * 1e-3 * Cabinets.BuildUp.EndZone * 1e-3,
                Limits.KeyedStrengthPa,
                load
            );
            var plate = Joints.Of("front plate on the core", posts, Limits.KeyedStrengthPa, load);
            return Math.Min(keys.SafetyFactor, plate.SafetyFactor + sealed_.SafetyFactor);
        }
    }

    /// <summary>Torque, load and pull-out of one threaded insert, and what the screws leave on the gasket; null where bolt or pull-out is not known.</summary>
    internal (double TorqueNM, double LoadN, double PullOutN, double Safety, double? GasketPa)? InsertSafety
    {
        get
        {
            if (
                Sheet is not { BoltM: { } bolt, Bolts: > 0 and { } screws }
                || Driver is not { } driver
                || (Limits.InsertPullOutN ?? Inserts.PullOutN(bolt)) is not { } pullOut
            )
            {
                return null;
            }

            // Box pressure and reaction at the excursion limit: static compression of the net volume, and the moving mass at the resonance.
            var x = driver.XmaxM ?? 0.01;
            var pressure = NetVolumeM3 is > 0 and { } net ? Air.BulkModulusPa * driver.SdM2 * x / net : 0;
            var omega = 2 * Math.PI * (Box.SystemResonanceHz ?? driver.FsHz);
            var torque = Limits.ScrewTorqueNM ?? ScrewTorquePerMetreN * bolt;
            var (preload, reaction) = (Inserts.PreloadN(torque, bolt), driver.MmsKg * omega * omega * x);
            var load = Inserts.LoadN(preload, pressure, driver.SdM2, reaction, screws);
            double? gasket =
                Sheet is { CutoutM: { } opening, FlangeM: { } flange } && flange > opening
                    ? Gasket.PressurePa(preload, screws, pressure * driver.SdM2 + reaction, opening, flange)
                    : null;
            return (torque, load, pullOut, Inserts.SafetyFactor(pullOut, load), gasket);
        }
    }

    /// <summary>
    /// Angle at which the cabinet tips over, °, over which edge, and how far behind the front its centre of mass is, m; null where the mass is not
    /// known.
    /// </summary>
    internal (double Deg, string Over, double CentreDepthM)? Tips
    {
        get
        {
            if (Sizes is not { } s || Mass.FinishedKg is null)
            {
                return null;
            }

            var centre = Tilt.CentreDepthM(Masses());
            var footing = Footing.Of(s, Project.Cabinet?.Feet);
            var (side, along) = ((s.Width / 2 - footing.AcrossMm) * 1e-3, footing.AlongMm * 1e-3);
            (double To, string Over)[] edges = [(side, "a side"), (centre - along, "the front"), (s.Depth * 1e-3 - centre - along, "the rear")];
            var (to, over) = edges.MinBy(e => e.To);
            return (Tilt.TippingDeg((s.Height / 2 + footing.HeightMm) * 1e-3, Math.Max(1e-3, to)), over, centre);
        }
    }

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

    // Height of all that counts is the middle. A driver's mass is its magnet's, two thirds of its depth behind the face (our choice).
    private IReadOnlyList<MassAt> Masses()
    {
        var (g, s) = (Geometry!, Sizes!);
        var (depth, wall, skin) = (s.Depth * 1e-3, s.Wall * 1e-3, s.OuterSkin * 1e-3);
        MassAt Printed(PartFigures part) =>
            new(
                Math.Max(0, part.MassKg ?? 0),
                part.Name switch
                {
                    _ when part.Name.StartsWith("front outer", StringComparison.Ordinal) || part.Name.StartsWith("trim", StringComparison.Ordinal) => skin / 2,
                    _ when part.Name.StartsWith("front inner", StringComparison.Ordinal) => wall,
                    _ when part.Name.StartsWith("rear inner", StringComparison.Ordinal) => depth - wall,
                    _ when part.Name.StartsWith("rear", StringComparison.Ordinal) || part.Name.StartsWith("lid", StringComparison.Ordinal) => depth - skin / 2,
                    _ => depth / 2,
                }
            );
        var cast = g.CavityM3 > 0 ? (Pour.DryInCabinetKg ?? 0) / g.CavityM3 : 0;
        var (front, rear) = (g.Front.CoreM2 * g.CoreM, g.Rear.CoreM2 * g.CoreM);
        return
        [
            .. Parts.Where(p => p.InCabinet).Select(Printed),
            new(cast * front, skin + g.CoreM / 2),
            new(cast * rear, depth - skin - g.CoreM / 2),
            new(cast * Math.Max(0, g.CavityM3 - front - rear), depth / 2),
            new((Project.Cabinet?.DriverCount ?? 1) * (Sheet?.MassKg ?? 0), (Sheet?.DepthM ?? 0) * 2 / 3 + s.Sunk * 1e-3),
            new(Project.Cabinet?.Fill?.MassKg ?? 0, depth / 2),
        ];
    }

    // Our choice: 0.2 N·m for an M5 screw, in proportion to its diameter; difference of expansion of plastic and gypsum.
    private const double ScrewTorquePerMetreN = 30,
        SkinCastExpansionPerK = 43e-6;

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
        double? shells = Parts.Count == 0 ? null : Parts.Where(p => p.InCabinet).Aggregate((double?)0, (sum, p) => sum + p.MassKg);
        var hasCore = Geometry is not { Sizes.Core: <= 0 };
        var dry = shells + (hasCore ? Pour.DryInCabinetKg : 0);
        var count = Project.Cabinet?.DriverCount ?? 1;
        var finished = dry + count * Sheet?.MassKg + (Project.Cabinet?.Fill?.MassKg ?? 0) + SupplyLists.Hardware.MassKg((Sheet?.Bolts ?? 0) * count);
        return new Mass(finished, shells + (hasCore ? Pour.WetInCabinetKg : 0), shells, dry);
    }

    private IReadOnlyList<PartFigures> ComputeParts() =>
        Geometry is { } g ? PartList.Of(g, Project.Cabinet!, Sheet, Project.Brief.Printer, Skin?.DensityKgM3) : [];

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
