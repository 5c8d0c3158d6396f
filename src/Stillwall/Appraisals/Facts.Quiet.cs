using Stillwall.Neighbours;
using Stillwall.Neighbours.Joins;
using Stillwall.Neighbours.Rooms;
using Stillwall.Projects;
using Stillwall.SupplyLists;
using Stillwall.Shapes;

namespace Stillwall.Appraisals;

/// <summary>Supplies and the neighbour question.</summary>
public sealed partial class Facts
{
    private readonly Fact<IReadOnlyList<SupplyLine>> supplies;
    private readonly Fact<Cost> cost;
    private readonly Fact<Quiet> quiet;
    private readonly Fact<Joining?> joining;
    private readonly Fact<FloorForce?> floor;

    /// <summary>The supplies list.</summary>
    public IReadOnlyList<SupplyLine> Supplies => supplies.Value;

    /// <summary>What the build costs.</summary>
    public Cost Cost => cost.Value;

    /// <summary>The neighbour question.</summary>
    public Quiet Quiet => quiet.Value;

    /// <summary>The neighbour question with an equaliser of one's own.</summary>
    /// <param name="sections">The sections, one after the other.</param>
    /// <returns>The answer.</returns>
    /// <remarks>Source: <see cref="QuietModel.With"/>.</remarks>
    public Quiet QuietWith(IReadOnlyList<EqualiserSection> sections) => QuietModel.With(QuietInputsNow(), sections);

    /// <summary>How the cabinet joins the main speakers; null where they, the crossover or the box are not known.</summary>
    public Joining? Joining => joining.Value;

    /// <summary>The four ways to join with second and fourth orders; empty where joining is not known.</summary>
    public IReadOnlyList<Joining> WaysToJoin => JoiningInputs.From(Project.Brief, Box.SystemResonanceHz, Box.SystemQ) is { } inputs ? Joining.Ways(inputs) : [];

    /// <summary>
    /// How cabinet and main speakers join at the seat; null where joining, room or the places of the main speakers are not known, or the crossover is
    /// above what the room is computed for.
    /// </summary>
    public SeatJoining? JoiningAtSeat =>
        Joining is { } free
        && Room is { } r
        && Project.Brief.MainSpeakers is { LeftAtM: [var lx, var ly, var lz], RightAtM: [var rx, var ry, var rz] }
        && JoiningInputs.From(Project.Brief, Box.SystemResonanceHz, Box.SystemQ) is { CrossoverHz: <= RoomModel.HighestHz / 2 } inputs
            ? SeatJoining.Of(inputs, free, r.Geometry, Air, new Place(lx, ly, lz), new Place(rx, ry, rz))
            : null;

    /// <summary>Force into the floor at the lowest note and full level; null where mass, feet or level are not known.</summary>
    public FloorForce? Floor => floor.Value;

    private FloorForce? ComputeFloor()
    {
        if (
            System is not { } s
            || Mass.FinishedKg is not { } mass
            || Project.Cabinet?.Feet is not { } feet
            || Project.Brief.Aim?.LowestHz is not { } lowest
            || Cabinets.MaximumLevel.VoltageAt(
                s.Network,
                Cabinets.MaximumLevel.LimitsOf(s.Network.Driver, s.Network.PassiveRadiator, Project.Brief.Amplifier),
                lowest
            )
                is not { } drive
        )
        {
            return null;
        }

        var (excursion, moving) = (s.Network.At(lowest, drive.VoltageV).ExcursionPeakM, s.Network.Driver.MmsKg);
        return feet.Kind == FeetKind.Spikes ? FloorForce.Of(lowest, excursion, moving, mass, null)
            : Rocking is { } body ? FloorForce.Of(lowest, excursion, moving, body)
            : FloorForce.Of(lowest, excursion, moving, mass, feet.StiffnessNPerM);
    }

    /// <summary>Pads that would suit the finished cabinet; null where its mass or the lowest note is not known.</summary>
    public PadChoice? Pads => Mass.FinishedKg is { } mass && Project.Brief.Aim?.LowestHz is { } lowest ? PadChoice.Of(mass, lowest) : null;

    // Mass taken as even; the cone in the middle of the front.
    private Rocking? Rocking =>
        Sizes is { } sizes && Mass.FinishedKg is { } mass && Project.Cabinet?.Feet is { Kind: FeetKind.Pads, StiffnessNPerM: { } along } feet
            ? Neighbours.Rocking.OfBox(
                mass,
                sizes.Depth.InMetres(),
                sizes.Height.InMetres(),
                Math.Max(1e-3, (sizes.Depth - 2 * Cabinets.Footing.Of(sizes, feet).AlongMm).InMetres()),
                along,
                feet.VerticalStiffnessNPerM
            )
            : null;

    /// <summary>How much of an item is on the shelf and within its date; null without a stock list.</summary>
    internal double? InStock(string item) => Supplies.FirstOrDefault(l => l.Item == item)?.InStock;

    /// <summary>What is to be bought of one item, in words.</summary>
    internal string ToBuyWords(SupplyLine line)
    {
        var amount = line.State == SupplyState.PastDate ? line.Needed ?? 0 : line.ToBuy ?? 0;
        return line.Unit switch
        {
            "kg" => $"{Show.Mass(amount)} of {line.Item}",
            "m" => $"{Show.Distance(amount)} of {line.Item}",
            _ => $"{Show.Number(Math.Ceiling(amount))} × {line.Item}",
        };
    }

    /// <summary>What stands between the project and the neighbour question.</summary>
    internal string MissingForQuiet =>
        System is null ? MissingForBox
        : Quiet.Missing is [var first, ..] ? first
        : "brief.neighbour";

    /// <summary>What stands between the project and the force into the floor.</summary>
    internal string MissingForFloor =>
        Mass.FinishedKg is null ? MissingForMass
        : Project.Cabinet?.Feet is null ? "cabinet.feet"
        : Project.Brief.Aim?.LowestHz is null ? "brief.aim.lowest"
        : MissingForLevel;

    private IReadOnlyList<SupplyLine> ComputeSupplies()
    {
        var joints = PartJob is { } job ? Stillwall.Parts.SealantBead.Of(job).Sum(bead => bead.LengthM) : (double?)null;
        var holes = Geometry?.DryingHoles ?? Cabinets.DryingHoles.None;
        var (count, diameterM) = (holes.Count, holes.DiameterMm.InMetres());
        var needs = Hardware.Of(
            Project,
            Sheet,
            Print.FilamentToHaveKg,
            Pour.PowderKg,
            joints + Pours.HoleClosing.SealantBeadM(count, diameterM),
            Pours.HoleClosing.TapeM(count, diameterM)
        );
        return SupplyList.Of(needs, Project.Stock, Project.Prices, Project.PourDate);
    }

    private Cost ComputeCost()
    {
        var (total, toBuy, unpriced) = SupplyList.Cost(Supplies);
        return new Cost(total, toBuy, unpriced);
    }

    private Quiet ComputeQuiet() => QuietModel.Of(QuietInputsNow());

    private QuietInputs QuietInputsNow() =>
        QuietInputs.From(Project, Air, Room, VolumeVelocity) with
        {
            ExcursionPeakM = System is { } s ? f => s.Network.At(f, 1).ExcursionPeakM : null,
            XmaxM = Driver?.XmaxM,
            SystemResonanceHz = Box.SystemResonanceHz,
            SystemQ = Box.SystemQ,
        };

    private Joining? ComputeJoining() =>
        JoiningInputs.From(Project.Brief, Box.SystemResonanceHz, Box.SystemQ) is { } inputs ? Neighbours.Joins.Joining.Of(inputs) : null;
}
