using Stillwall.Pours;

namespace Stillwall.Appraisals.Care;

/// <summary>What a step is called, and where it is shown.</summary>
/// <param name="Word">Its name; of a step of the job also what the logbook calls it.</param>
/// <param name="Stage">Stage on whose page it stands; null where it has a place of its own: at the bench, beside a recording, at the command line.</param>
/// <param name="Say">What to do, as the next thing of the job; null for a step within another.</param>
internal sealed record WorkStepLine(WorkStep Step, string Word, string? Stage, string? Say);

/// <summary>Every step, in the order of the job.</summary>
internal static class WorkSteps
{
    public static IReadOnlyList<WorkStepLine> All { get; } =
    [
        new(WorkStep.Supplies, "shopping", "Supplies", null),
        new(WorkStep.Driver, "driver", "Driver", "get the driver and measure it before anything is printed: impedance, flange, cut-out, depth"),
        new(WorkStep.CalibrationStrip, "calibration strip", "Parts", "print the calibration strip and set the clearances by it"),
        new(WorkStep.WallCoupon, "wall coupon", "Walls", "print and pour a wall coupon: fill, bulge, heat and bond in one evening"),
        new(WorkStep.Print, "print", "Parts", "print the parts, the longest first"),
        new(WorkStep.Template, "template", "Parts", null),
        new(WorkStep.DryFit, "dry fit", "Parts", "put everything together dry"),
        new(WorkStep.WaterRehearsal, "water rehearsal", "Pour", "fill the cavity with weighed water: it shows leaks and the true volume; let it dry"),
        new(WorkStep.Pour, "pour", "Pour", "pour, tilted by 5° from a low opening with a vent for each bay, in lifts; then weigh it and log the mass"),
        new(WorkStep.Soak, "soak", null, null),
        new(WorkStep.Stir, "stir", null, null),
        new(WorkStep.Fill, "fill", null, null),
        new(WorkStep.TapWalls, "tap the walls", null, null),
        new(WorkStep.Set, "set", null, null),
        new(WorkStep.CleanUp, "clean up", null, null),
        new(WorkStep.WeighIn, "weigh-in", "Pour", "weigh it every few days and log the mass until it is dry"),
        new(WorkStep.Seal, "seal", "Supplies", "seal it"),
        new(WorkStep.Paint, "paint", "Supplies", "paint it with a primer that suits the plastic"),
        new(WorkStep.Wiring, "wiring", "Supplies", "wire it and check the polarity"),
        new(WorkStep.Gasket, "gasket", "Supplies", "gasket and driver last, screws to the stated torque, and once more a day later"),
        new(WorkStep.SetUp, "set up", "Cabinet", "stand it in its place"),
        new(WorkStep.Proof, "proof", "Proof", "prove it: impedance, tap on the test bar, hold test, sweep"),
        new(WorkStep.Signal, "signal", null, null),
        new(WorkStep.Impedance, "impedance", null, null),
        new(WorkStep.Sweep, "sweep", null, null),
        new(WorkStep.TapTest, "tap test", null, null),
        new(WorkStep.HoldTest, "hold test", null, null),
        new(WorkStep.Rattle, "rattle", null, null),
        new(WorkStep.Polarity, "polarity", null, null),
        new(WorkStep.PartyWall, "party wall", null, null),
        new(WorkStep.Quiet, "quiet", "Quiet", null),
        new(WorkStep.Equaliser, "equaliser", null, null),
    ];

    /// <summary>Those that are the next thing of the job in turn.</summary>
    internal static IReadOnlyList<WorkStepLine> OfTheJob { get; } = [.. All.Where(s => s.Say is not null)];

    /// <summary>The step that a moment of the pour is.</summary>
    /// <returns>The step; null where nothing is done, only to be watched.</returns>
    public static WorkStep? Of(PourAction action) =>
        action switch
        {
            PourAction.Soak => WorkStep.Soak,
            PourAction.Stir => WorkStep.Stir,
            PourAction.Pour => WorkStep.Fill,
            PourAction.Empty => WorkStep.TapWalls,
            PourAction.NextLift => WorkStep.Set,
            _ => null,
        };

    /// <summary>What a step is called.</summary>
    public static string Word(WorkStep step) => All[(int)step].Word;
}
