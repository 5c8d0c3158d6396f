using System.Collections.Concurrent;
using System.Numerics;
using Stillwall.Cabinets;
using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Neighbours.Rooms;
using Stillwall.Parts;
using Stillwall.Pours;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Appraisals;

/// <summary>Everything computed from one project, each result at most once and only when it is asked for.</summary>
/// <remarks>
/// This is where the stages meet, in the order of the job: driver and cabinet here, then walls, parts and pour, then supplies and quiet in the other files.
/// Nothing here is a formula; formulas live with their stages.
/// </remarks>
public sealed partial class Facts
{
    /// <summary>Share of the skins that must be keyed within 80 mm of an end (our choice).</summary>
    public const double KeyedAtEnds = 0.30;

    // Clipped and joined pieces that the changed projects of one search may take, about 50 µs each (our choice): some hundred cabinets of the usual kind.
    private const int MostDrawing = 6_000;

    private static readonly string[] RoomKeys =
    [
        "brief.room.width",
        "brief.room.length",
        "brief.room.height",
        "brief.room.decay_time",
        "brief.room.cabinet_at",
        "brief.room.seat_at",
    ];

    private readonly IReadOnlyList<DriverSheet> candidates;
    private readonly Facts? before;
    private readonly ConcurrentDictionary<CabinetSizes, CabinetGeometry> drawn;
    private readonly DriverSheet? sheet;
    private readonly Lazy<bool> isSound;
    private readonly Lazy<ReadSet> moved;
    private readonly Fact<Air> air;
    private readonly Fact<Show> show;
    private readonly Fact<DriverResolution?> resolution;
    private readonly Fact<CabinetGeometry?> geometry;
    private readonly Fact<BoxSystemResolution?> system;
    private readonly Fact<RoomModel?> room;
    private readonly Fact<BoxFigures> box;
    private readonly Fact<Hollow?> hollow;
    private readonly Fact<double?> seatTransfer;
    private readonly bool isCandidate;

    /// <summary>Prepares a project; nothing is computed yet.</summary>
    /// <param name="project">The project as stated.</param>
    /// <param name="candidates">The candidate drivers, among which the project may name one.</param>
    public Facts(Project project, IReadOnlyList<DriverSheet> candidates)
        : this(project, candidates, null) { }

    // What a change left as it was is taken over from the facts before it; sections once drawn are shared by all that come from one project.
    private Facts(Project project, IReadOnlyList<DriverSheet> candidates, Facts? before)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(candidates);
        Project = project;
        this.candidates = candidates;
        this.before = before;
        drawn = before?.drawn ?? new ConcurrentDictionary<CabinetSizes, CabinetGeometry>();
        sheet = ReadLog.Unnoted(() =>
            project.Driver switch
            {
                { Sheet: { } stated } => stated,
                { Name: { } name } => candidates.FirstOrDefault(c => c.Name == name),
                _ => null,
            }
        );
        isSound = new(() => ReadLog.Unnoted(() => !ProjectChecks.Of(project).Any()));
        moved = new(() => before is null ? ReadSet.None : Moved(before));
        air = Held(() => Air.At(Project.Brief.Air.TemperatureC, Project.Brief.Air.PressurePa), f => f.air);
        show = Held(() => Show.Of(Project), f => f.show);
        resolution = Held(() => Sheet is { } s ? DriverResolver.Resolve(s) : null, f => f.resolution);
        geometry = Held(() => Sizes is { } sizes && IsSound ? Drawn(sizes) : null, f => f.geometry);
        system = Held(
            () => Driver is { } driver && NetVolumeM3 is > 0 and { } net ? BoxSystem.Of(driver, net, Project.Cabinet, Project.Measured, Air) : null,
            f => f.system
        );
        room = Held(() => RoomGeometry.Of(Project.Brief.Room) is { } g ? RoomModel.Of(g, Air) : null, f => f.room);
        hollow = Held(() => Geometry is { } g ? Appraisals.Hollow.Of(g, Project.Cabinet!) : null, f => f.hollow);
        seatTransfer = Held(
            () => Room is { } r && Project.Brief.Aim?.LowestHz is { } lowest ? RoomCurve.SeatOverHalfSpaceDb(r, lowest, 1) - Limits.RoomAllowanceDb : null,
            f => f.seatTransfer
        );
        box = Held(ComputeBox, f => f.box);
        wallSet = Held(ComputeWallSet, f => f.wallSet);
        walls = Held(ComputeWalls, f => f.walls);
        parts = Held(ComputeParts, f => f.parts);
        print = Held(() => PartList.Totals(Parts, Limits.FilamentWaste), f => f.print);
        mass = Held(ComputeMass, f => f.mass);
        pour = Held(ComputePour, f => f.pour);
        clock = Held(() => Job is { } job ? PourClock.Plan(job) : null, f => f.clock);
        bench = Held(() => Clock is { } plan && Job is { } job && LiftHeightsM is { } heights ? PourBench.Of(plan, job, heights) : null, f => f.bench);
        warmth = Held(ComputeWarmth, f => f.warmth);
        cast = Held(() => CastFigures.Of(this), f => f.cast);
        supplies = Held(ComputeSupplies, f => f.supplies);
        cost = Held(ComputeCost, f => f.cost);
        quiet = Held(ComputeQuiet, f => f.quiet);
        joining = Held(ComputeJoining, f => f.joining);
        floor = Held(ComputeFloor, f => f.floor);
    }

    // One of many candidates in the same cabinet: what no driver changes is taken over.
    private Facts(Facts cabinet, DriverSheet candidate)
        : this(cabinet.Project with { Driver = new DriverChoice(null, candidate) }, cabinet.candidates)
    {
        hollow = cabinet.hollow;
        room = cabinet.room;
        seatTransfer = cabinet.seatTransfer;
        isCandidate = true;
    }

    /// <summary>The project as stated.</summary>
    public Project Project { get; }

    /// <summary>The air.</summary>
    public Air Air => air.Value;

    /// <summary>How numbers are written for people.</summary>
    internal Show Show => show.Value;

    /// <summary>The limits in force.</summary>
    public Limits Limits => Project.Limits;

    /// <summary>The chosen driver's data sheet; null where none is chosen or the name is not among the candidates.</summary>
    public DriverSheet? Sheet => Project.Driver is null ? null : sheet;

    /// <summary>What the data sheet resolves to; null without one.</summary>
    public DriverResolution? Resolution => resolution.Value;

    /// <summary>One driver, resolved; null where its parameters do not suffice.</summary>
    public Driver? Driver => Resolution?.Driver;

    /// <summary>Stated sizes; null for a ready box or where they are not stated.</summary>
    internal CabinetSizes? Sizes => CabinetSizes.Of(Project.Cabinet, Sheet);

    /// <summary>The drawn cabinet; null where its sizes are not stated.</summary>
    internal CabinetGeometry? Geometry => geometry.Value;

    /// <summary>The driver in its box; null where either is not known.</summary>
    public BoxSystem? System => system.Value?.System;

    /// <summary>What is left about the cabinet where it stands.</summary>
    internal Briefs.Standing Standing =>
        Briefs.Standing.Of(
            Project.Brief,
            Project.Cabinet?.Outside?.WidthM,
            Project.Cabinet?.Outside?.HeightM,
            Sizes is { } sizes ? Footing.Of(sizes, Project.Cabinet?.Feet).HeightMm.InMetres() : 0
        );

    /// <summary>The listening room; null where it is not stated in full.</summary>
    public RoomModel? Room => room.Value;

    /// <summary>The closed box.</summary>
    public BoxFigures Box => box.Value;

    /// <summary>Net acoustic volume, m³; null where it is not known.</summary>
    public double? NetVolumeM3 => Project.Cabinet?.NetVolumeM3 ?? (Hollow is { } h && Sheet is not null ? h.NetM3(Sheet) : null);

    /// <summary>Whether the drawing is there where sizes are stated; not for a changed project after too many costly others.</summary>
    internal bool IsDrawn => Sizes is null || Geometry is not null;

    /// <summary>The same, for a changed project with the same candidates.</summary>
    /// <param name="changed">The changed project.</param>
    /// <returns>Its facts.</returns>
    public Facts With(Project changed) => new(changed, candidates, this);

    /// <summary>The same project with another driver; inside, braces and room are worked out once for all, and the spread of drivers is left out.</summary>
    internal Facts Choosing(DriverSheet candidate) => new(this, candidate);

    /// <summary>What the drawn cabinet offers any driver; null where its sizes are not stated.</summary>
    internal Hollow? Hollow => hollow.Value;

    /// <summary>Upper end of the range in which the cabinet must not ring, Hz; null without a crossover.</summary>
    /// <param name="ratio">Multiple of the crossover.</param>
    /// <returns>Frequency, Hz.</returns>
    public double? WorkingRangeHz(double ratio) => Project.Brief.Aim?.CrossoverHz * ratio;

    /// <summary>What stands between the project and a driver.</summary>
    internal string MissingForDriver =>
        Project.Driver switch
        {
            null => "driver",
            { Name: { } name } when Sheet is null => $"no candidate is called \"{name}\"",
            _ when Resolution is { Impossible: [var first, ..] } => first,
            _ when Resolution is { Missing: [var key, ..] } => key.StartsWith("driver.", StringComparison.Ordinal) ? key : $"driver.{key}",
            _ => "driver",
        };

    /// <summary>What stands between the project and the box: a key of the project file, or a reason in words.</summary>
    public string MissingForBox =>
        Driver is null ? MissingForDriver
        : Project.Cabinet is null ? "cabinet"
        : NetVolumeM3 is null ? "cabinet.outside"
        : NetVolumeM3 <= 0 ? "driver and braces leave no air in the cabinet"
        : system.Value is { Missing: [var key, ..] } ? key
        : "cabinet";

    /// <summary>What stands between the project and the room's answer at the seat.</summary>
    public string MissingForRoom =>
        Project.Brief.Room is null
            ? "brief.room"
            : RoomKeys.FirstOrDefault(key => ProjectKeys.Get(Project, key) is null)
                ?? "cabinet and seat must both stand within the room (brief.room.cabinet_at, seat_at)";

    /// <summary>What stands between the project and the greatest level.</summary>
    internal string MissingForLevel =>
        System is null ? MissingForBox
        : Driver!.XmaxM is null ? "driver.xmax"
        : Driver.PowerW is null ? "driver.power"
        : Project.Brief.Amplifier?.PowerW is null ? "brief.amplifier.power"
        : "brief.amplifier.rated_load";

    /// <summary>Whether the checks find no contradiction; they look at everything, so they count as one value that is read.</summary>
    internal bool IsSound
    {
        get
        {
            ReadLog.Note(ReadSet.None.With(ReadSet.Soundness));
            return isSound.Value;
        }
    }

    private Fact<T> Held<T>(Func<T> compute, Func<Facts, Fact<T>> same) => new(compute, before is null ? null : same(before), () => moved.Value);

    // A named driver and the same one stated in place are the same.
    private ReadSet Moved(Facts former)
    {
        var between = ReadSet.Between(former.Project, Project).With(ReadSet.Between(former.sheet, sheet));
        var named = former.sheet is null == sheet is null ? between : between.With(ReadSet.PlaceOf(typeof(Project), nameof(Project.Driver))!.Value);
        return former.isSound.Value == isSound.Value ? named : named.With(ReadSet.Soundness);
    }

    private CabinetGeometry? Drawn(CabinetSizes sizes)
    {
        var section = sizes with { Depth = 0, Braces = 0 };
        return before is not null && !drawn.ContainsKey(section) && drawn.Values.Sum(g => g.WorkCount) > MostDrawing
            ? null
            : drawn.GetOrAdd(section, _ => CabinetGeometry.Of(sizes)).Along(sizes);
    }

    private BoxFigures ComputeBox()
    {
        var inside = new BoxFigures
        {
            InsideVolumeM3 = Hollow?.InsideM3,
            NetVolumeM3 = NetVolumeM3,
            LowestAirModeHz = Hollow is { } h ? BoxFigures.AirModeHz(h.LongestInsideM, Air) : null,
        };
        if (System is not { } s)
        {
            return inside;
        }

        var figures = BoxFigures.Of(s, Project.Brief.Aim, Project.Brief.Amplifier, Hollow?.LongestInsideM, seatTransfer.Value) with
        {
            InsideVolumeM3 = inside.InsideVolumeM3,
            MinimumImpedanceOhm = ResponseCurve.MinimumImpedance(s.Network).ImpedanceOhm,
        };
        if (isCandidate)
        {
            return figures;
        }

        var band = Tolerance.Of(s.Network.Driver, s.Network.EffectiveVolumeM3, Air);
        return figures with { SystemResonanceBandHz = [band.LowResonanceHz, band.HighResonanceHz], SystemQBand = [band.LowSystemQ, band.HighSystemQ] };
    }

    private Func<double, Complex>? VolumeVelocity => System is { } s ? f => s.Network.At(f, 1).OutwardVolumeVelocityM3S : null;
}
