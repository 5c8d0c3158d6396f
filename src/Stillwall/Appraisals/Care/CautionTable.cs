using Stillwall.Materials;
using static Stillwall.Appraisals.Care.WorkStep;

namespace Stillwall.Appraisals.Care;

/// <summary>What to take care of: the one place that knows. The worst stands first, at every step too.</summary>
internal static class CautionTable
{
    private const string Practice = "common practice, no source";

    public static IReadOnlyList<Caution> All { get; } =
    [
        new(
            Hazard.PlasterHeat,
            "Plaster heats up as it sets and can burn badly: never enclose a hand, arm or leg in it.",
            [WallCoupon, Pour, Set, CleanUp],
            Practice
        )
        {
            Applies = f => Has(CastDangers.Burns, f),
        },
        new(
            Hazard.Caustic,
            "Cement is caustic: wear gloves and goggles, rinse eyes and skin at once with much water, and see a doctor about an eye.",
            [Supplies, WallCoupon, Pour, Soak],
            Practice
        )
        {
            Applies = f => Has(CastDangers.Caustic, f),
            IsUnusual = true,
        },
        new(
            Hazard.SilicaDust,
            "The sand in the mix is silica, which scars the lungs: wear a dust mask of class P3 (FFP3) for powder and sanding, and sand wet.",
            [Supplies, WallCoupon, Pour, Soak, Paint, TapTest],
            "classes by EN 149:2001, from memory; common practice, no source"
        )
        {
            Applies = f => Has(CastDangers.Silica, f),
            IsUnusual = true,
        },
        new(
            Hazard.Dust,
            "Powder and sanding dust harm the lungs: wear a dust mask of class P2 (FFP2), and sand wet.",
            [Supplies, WallCoupon, Pour, Soak, Paint, TapTest],
            "classes by EN 149:2001, from memory; common practice, no source"
        )
        {
            Applies = f => !Has(CastDangers.Silica, f),
        },
        new(Hazard.Mains, "Mains wiring is for a qualified person only: pull the plug before you touch any wire.", [Wiring], Practice),
        new(Hazard.Falling, "A cabinet that falls can crush a child: stand it low and level, or fix it to the wall.", [WeighIn, SetUp], Practice),
        new(Hazard.HeavyWet, "Wet it weighs more than {lift_mass}: lift it with two people.", [Pour, Set, CleanUp, WeighIn], "ISO 11228-1:2003, from memory")
        {
            Applies = f => f?.Mass.WetKg > f?.Limits.LiftMassKg,
            IsUnusual = true,
        },
        new(Hazard.Heavy, "It weighs more than {lift_mass}: lift it with two people.", [Gasket, SetUp], "ISO 11228-1:2003, from memory")
        {
            Applies = f => f?.Mass.FinishedKg > f?.Limits.LiftMassKg,
            IsUnusual = true,
        },
        new(
            Hazard.Splash,
            "Wear gloves and goggles: rinse plaster or lime from eyes and skin at once with much water, and see a doctor about an eye.",
            [Supplies, WallCoupon, Pour, Soak],
            Practice
        )
        {
            Applies = f => IsPoured(f) && !Has(CastDangers.Caustic, f),
        },
        new(
            Hazard.BridgedAmplifier,
            "Neither terminal of a bridged amplifier is ground: never connect it to a sound card or to earth.",
            [Driver, Proof, Impedance],
            Practice
        ),
        new(
            Hazard.OverloadedInput,
            "An amplifier can overload a sound card's input: begin with the resistor or a divider in place, at the lowest gain.",
            [Driver, Proof, Impedance],
            Practice
        ),
        new(Hazard.PowerTools, "Clamp what you drill or cut, wear goggles, and keep hands and gloves clear of the turning tool.", [Template], Practice),
        new(Hazard.EpoxyHeat, "Never mix or pour epoxy in bulk, for it heats up and can burn: mix a little and spread it at once.", [Seal], Practice),
        new(
            Hazard.ThickMix,
            "Does it stand in ridges? Do not pour it and do not thin it with water: throw it away and mix this batch again.",
            [Stir, Fill],
            Practice
        )
        {
            Applies = IsPoured,
        },
        new(Hazard.Bulge, "Does a skin bulge? Stop pouring, board that side, and go on only once it holds.", [WaterRehearsal, Fill, TapWalls], Practice)
        {
            Applies = IsPoured,
        },
        new(
            Hazard.Printing,
            "Printing gives off fumes, and nozzle and bed burn skin: air the room and let them cool before you reach in.",
            [CalibrationStrip, WallCoupon, Print],
            Practice
        )
        {
            Applies = IsPrinted,
        },
        new(
            Hazard.HotInserts,
            "A hot insert and its iron burn skin and make the plastic fume: hold the insert with pliers and air the room.",
            [Print, DryFit],
            Practice
        )
        {
            Applies = IsPrinted,
        },
        new(
            Hazard.Solder,
            "A soldering iron burns, its fumes hurt the lungs and some solder holds lead: air the room and wash your hands afterwards.",
            [Wiring],
            Practice
        ),
        new(
            Hazard.Vapours,
            "Glue, sealant, epoxy and paint give off vapours: air the room, wear gloves and follow the maker's sheet.",
            [Supplies, Seal, Paint],
            Practice
        ),
        new(Hazard.LiveCone, "Switch the amplifier off before a hand touches the cone.", [Driver, Gasket, HoldTest], Practice),
        new(
            Hazard.Volume,
            "Begin with the volume down, then raise it; stop at any rattle, knock or smell.",
            [Driver, Proof, Signal, Impedance, Sweep, Rattle, Polarity, PartyWall, Quiet],
            Practice
        ),
        new(
            Hazard.Hearing,
            "Long loud bass harms hearing though it does not feel loud: keep it short, and mind the neighbour's ears too.",
            [Proof, Signal, Sweep, Rattle, Polarity, PartyWall, Quiet],
            Practice
        ),
        new(
            Hazard.Boost,
            "Boost below the resonance costs cone travel and amplifier power and reaches the neighbour: raise it in small steps.",
            [Quiet, Equaliser],
            Practice
        ),
        new(
            Hazard.LocalRules,
            "Building rules and neighbours' rights are local and come first; the figures here are a forecast.",
            [PartyWall, Quiet],
            Practice
        ),
        new(Hazard.Drain, "No plaster or cement down the drain: let it set in the bucket, then put it in the bin.", [CleanUp], Practice) { Applies = IsPoured },
        new(Hazard.OpenHoles, "A drying hole left open lets the box leak: seal each one before the driver goes in.", [CleanUp, WeighIn, Seal, Gasket], Practice)
        {
            Applies = f => IsPoured(f) && f!.Geometry?.DryingHoles.Count > 0,
            IsUnusual = true,
        },
    ];

    private static bool IsPoured(Facts? facts) => facts?.Pour.PowderKg is not null;

    private static bool IsPrinted(Facts? facts) => facts?.Parts.Count > 0;

    private static bool Has(CastDangers danger, Facts? facts) => IsPoured(facts) && facts!.CastMix?.Dangers.HasFlag(danger) == true;
}
