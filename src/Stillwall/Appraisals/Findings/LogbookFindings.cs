using Stillwall.Logbooks;
using Stillwall.Parts;
using Stillwall.Parts.Kinds;
using Stillwall.Pours;
using static Stillwall.Appraisals.Findings.Judgement;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the logbook.</summary>
internal static class LogbookFindings
{
    // A tenth off the plan is worth a look (our choice); of the water that the cavity takes, a hundredth.
    private const double WorthALook = 0.10;

    private const string Water = "water rehearsal";

    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new(
            "Logbook",
            "plan against actual",
            "masses, times and costs of the logbook against the plan; advice past a tenth, our choice",
            new("plan-deviation", "mass.finished_kg", "print.print_seconds", "cost.total_price"),
            Plan
        ),
    ];

    private static Judgement Plan(Facts f)
    {
        var deviations = PlanAgainstActual.Of(Lines(f), f.Project.Logbook);
        if (deviations.MaxBy(Weight) is not { } worst)
        {
            return Unknown(
                "1",
                "no entry of the kind \"actual\" or \"attempt\" has a mass, a duration or a cost that the plan has too: log what each part weighed and "
                    + "how long it took"
            );
        }

        var more = worst.DeviationRatio > 0 ? "more" : "less";
        var off = worst.DeviationRatio == 0 ? "as planned" : $"{Show.Percent(Math.Abs(worst.DeviationRatio))} {more} than planned";
        var judged = AtMost(
                Math.Abs(worst.DeviationRatio),
                LimitOf(worst),
                "1",
                Nearness.Tenth,
                $"{(deviations.Count == 1 ? "" : $"of {Show.Number(deviations.Count)} figures ")}the {worst.Measure} of the {worst.Part} "
                    + $"is{(deviations.Count == 1 ? "" : " furthest off:")} {Amount(f, worst, worst.ActualValue)}, {off} "
                    + $"({Amount(f, worst, worst.PlannedValue)})"
            )
            .AsAdvice();
        var remedy = worst.Part == Water ? Advice(worst) : $"{Advice(worst)} before the next part: the plan counts {Amount(f, worst, worst.PlannedValue)}";
        return judged.Verdict == Verdict.Tight ? judged with { Remedy = remedy } : judged;
    }

    private static double LimitOf(PlanDeviation d) => d.Part == Water ? WaterRehearsal.NearRatio : WorthALook;

    private static double Weight(PlanDeviation d) => Math.Abs(d.DeviationRatio) / LimitOf(d);

    private static string Amount(Facts f, PlanDeviation d, double value) =>
        d.Measure switch
        {
            "mass" => f.Show.Mass(value),
            "time" => Show.Time(value),
            _ => f.Show.Money(value),
        };

    private static string Advice(PlanDeviation d) =>
        d.Measure switch
        {
            "mass" when d.Part == Water => WaterRehearsal.Read(d.PlannedValue, d.ActualValue) == RehearsalReading.TakesLess
                ? "look for trapped air, a blocked passage or a vent that is closed before any plaster is mixed"
                : "look for leaks and for a skin that bulges before any plaster is mixed",
            "mass" => "look at flow and walls in the slicer",
            "time" => "state the flow that the printer really keeps up",
            _ => "state the price that was paid",
        };

    // Parts by their names, items of the supplies by theirs, the coupon and the test bar as filled and dry, the whole cabinet, and the pour.
    private static IReadOnlyList<PlannedLine> Lines(Facts f)
    {
        double? core = f.Core?.DensityKgM3;
        var coupon = f.Geometry is { Sizes.Core: > 0 } g ? core * WallCoupon.CavityM3(g) : null;
        var bar = core * TestBarMould.BarM3;
        IEnumerable<PlannedLine> parts = f.Parts.Select(p => new PlannedLine(
            p.Name,
            p.Kind is WallCoupon ? p.MassKg + coupon : p.MassKg,
            PartList.LeastTimes * p.PrintSeconds,
            PartList.MostTimes * p.PrintSeconds,
            null
        ));
        IEnumerable<PlannedLine> items = f.Supplies.Select(l => new PlannedLine(l.Item, l.Unit == "kg" ? l.Needed : null, null, null, l.Price));
        var (least, most) = f.Print.HonestPrintSeconds is [var from, var to] ? ((double?)from, (double?)to) : (null, null);
        return
        [
            .. parts,
            .. items,
            new PlannedLine("cabinet", f.Mass.FinishedKg, least, most, f.Cost.Unpriced.Count == 0 ? f.Cost.TotalPrice : null),
            new PlannedLine("test bar", bar, null, null, null),
            new PlannedLine(Water, f.RehearsalWaterKg, null, null, null),
            new PlannedLine("pour", f.Pour.WetMassKg, f.Pour.DurationS, f.Pour.DurationS, null),
        ];
    }
}
