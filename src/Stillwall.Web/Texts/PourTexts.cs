using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Pours;
using Stillwall.Web.Drawings;

namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Pour and of the bench.</summary>
internal static class PourTexts
{
    internal const string Hint = "What is mixed, when, and until when it must be in. Times run from the first water.",
        Nothing = "Cabinet, cast and bucket are needed before the pour can be planned.";
    internal const string ScheduleTitle = "The pour: lifts in the form, batches on the clock",
        Lifts = "lifts",
        FromFirstWater = "minutes from the first water: mixing, pouring, spare until it must be in";
    internal const string ToTheBench = "To the bench",
        BenchHint = "One step fills the screen; for a telephone beside the bucket.",
        Quantities = "Quantities",
        Batches = "Batches",
        Plan = "The plan";
    internal const string Powder = "powder",
        Water = "water",
        Start = "starts",
        PourBy = "poured by",
        Lift = "lift",
        BatchHead = "batch";
    internal const string DoNot = "Do not pour by this plan: a batch outlives its pot life.";

    internal static readonly (string Key, string Label, string? Unit, double Step)[] Keys =
    [
        ("materials.cast.mix", "cast", null, 1),
        ("materials.cast.powder_per_water", "powder to water", null, 0.1),
        ("materials.cast.water_temperature", "mixing water", "degC", 1),
        ("materials.cast.pot_life", "pot life", "min", 1),
        ("materials.cast.bucket", "bucket", "L", 1),
        ("materials.cast.soak", "soak", "min", 0.5),
        ("materials.cast.stir", "stir", "min", 0.5),
        ("materials.cast.pour_rate", "pour rate", "L/min", 0.5),
        ("materials.cast.people", "people", null, 1),
        ("materials.cast.hold_down", "weight on the inner sleeve", "kg", 1),
        ("limits.cast_reserve", "reserve", null, 0.01),
        ("pour_date", "day of the pour", null, 1),
    ];

    internal static string OfBatch(string what, int batch) => $"{what} of batch {batch + 1}";

    internal static string Batch(int number) => $"batch {number}";

    internal static string TopOf(int lift) => $"top of lift {lift + 1}";

    internal static IEnumerable<FigurePiece> Weights(string powder, string water, int batch) =>
        [Figure(powder, "powder_kg", Powder, batch), new($" {Powder}, "), Figure(water, "water_kg", Water, batch), new($" {Water}")];

    internal static IEnumerable<FigurePiece> By(double seconds, int batch) => [new("by "), Figure(Clock(Math.Floor(seconds)), "pour_by_s", PourBy, batch)];

    private static FigurePiece Figure(string text, string result, string name, int batch) =>
        new(text, string.Create(CultureInfo.InvariantCulture, $"pour.batches[{batch}].{result}"), OfBatch(name, batch));

    internal static string Said(PourPlan plan) => $"{plan.Batches.Count} batches, {Clock(plan.DurationS)} from the first water to the end of the last pour.";

    /// <summary>Minutes and seconds as a stopwatch shows them, hours before them from the third on.</summary>
    internal static string Clock(double seconds) => Show.Clock((int)Math.Round(seconds));

    internal const string Cavity = "cavity",
        PowderToMix = "powder to mix, reserve counted",
        WaterToMix = "water to mix",
        SlurryDensity = "density of the slurry",
        WetInCabinet = "in the cabinet, wet",
        DryInCabinet = "in the cabinet, dry",
        FreeWater = "water that has to dry out",
        FormPressure = "pressure on the form",
        SkinBulge = "bulge of the worst bay",
        HighestLift = "highest lift",
        ExpectedPeak = "hottest, expected",
        AdiabaticPeak = "hottest if no heat is lost",
        LeastDays = "least time to dry";

    internal const string RehearsalWater = "water that fills the cavity, for the rehearsal",
        Kinds = "Kinds of cast in this cavity",
        Scales = "What the scales must do",
        Drying = "Drying, by the weigh-ins",
        RehearsalHint =
            "Fill the form with weighed water before any plaster is mixed. More than a hundredth less: air is trapped or a passage blocked. More: it "
            + "leaks or a skin bulges. Pour it out, let the form dry, and log the mass as actual of “water rehearsal”.",
        Holes = "drying holes",
        Tape = "tape for the drying holes",
        HolesHint =
            "of tape: they are taped from inside before the rehearsal; water that is missing may have gone through a tape. Once the cast has set the tape "
            + "comes off, and they stay open with the box while it dries; then each is sealed with a dab: one left open lets the box leak.",
        KindsHint =
            "Each at its usual ratio of powder to water. Stiffness and strength when dry, with the band in which they are believable; a bar that was "
            + "tapped replaces them.",
        Kind = "cast",
        DryMass = "dry in the cabinet",
        Modulus = "stiffness, dry",
        Band = "band",
        Strength = "strength, dry",
        Wet = "left of it while wet",
        Loss = "loss factor",
        PotLife = "pot life",
        Peak = "hottest",
        From = "from",
        Take = "Use this cast",
        Weighed = "weighed",
        Carry = "must carry",
        Step = "in steps of",
        NoWeighIn = "No weigh-in of the cabinet is logged yet. From the fourth on the fit has a band.",
        Dry = "dry",
        DryByPlan = "dry by the plan",
        TimeConstant = "drying time constant",
        Ready = "ready to be sealed",
        NotYet = "not known: three days or more, until the masses bend towards an end";

    internal static string Taken(string kind) => $"cast {kind}";

    internal static string WithKind(string what, string kind) => $"{what}, {kind}";

    internal static string Doubt(string half) => $", ± {half} with 95 %";

    internal static string Days(string days) => $"{days} days";
}
