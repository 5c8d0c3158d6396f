using Stillwall.Briefs;
using static Stillwall.Appraisals.Findings.Judgement;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the brief.</summary>
internal static class BriefFindings
{
    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new(
            "Brief",
            "cabinet fits the spot",
            "geometry: outside size, clearance on both sides, plug space behind",
            new("spot-fit"),
            Spot,
            [
                new Lever("cabinet.outside.depth", Toward.Less, 0.001, "depth {new} instead of {old}"),
                new Lever("cabinet.outside.width", Toward.Less, 0.001, "width {new} instead of {old}"),
                new Lever("cabinet.outside.height", Toward.Less, 0.001, "height {new} instead of {old}"),
            ]
        )
        {
            Direct = WithinSpot,
        },
        new(
            "Brief",
            "weight for the hands that lift it",
            "ISO 11228-1:2003, reference mass for one person (from memory)",
            new("finished-mass", "mass.finished_kg"),
            Weight,
            [
                new Lever("cabinet.core", Toward.Less, 0.0005, "core {new} instead of {old}, or lift it with two people"),
                new Lever("cabinet.outside.depth", Toward.Less, 0.001, "depth {new} instead of {old}, or lift it with two people"),
            ]
        ),
        new(
            "Brief",
            "cost",
            "sum of the stated prices",
            new("cost", "cost.total_price"),
            Cost,
            new Lever("budget", Toward.More, 1, "a budget of {new} instead of {old}, or a cheaper driver")
        ),
    ];

    private static Judgement Spot(Facts f)
    {
        if (f.Project.Cabinet?.Outside is not { } outside)
        {
            return Unknown("m", "cabinet.outside");
        }

        if (f.Project.Brief.Spot is not { } spot || SpotFit.Of(spot, outside.WidthM, outside.HeightM, outside.DepthM) is not [var worst, ..])
        {
            return Unknown("m", "brief.spot");
        }

        return AtMost(
            worst.TakenM,
            worst.SpotM,
            "m",
            Nearness.Fit,
            $"the {worst.Side} takes {f.Show.Length(worst.TakenM)} with clearance{(worst.Side == "depth" ? " and plug space" : "")}; the spot has "
                + $"{f.Show.Length(worst.SpotM)}"
        );
    }

    // Every side that is too long, down to what the spot leaves in whole millimetres.
    private static IReadOnlyList<(string Key, double Value)> WithinSpot(Facts f, double spareM) =>
        f.Project is { Cabinet.Outside: { } outside, Brief.Spot: { } spot }
            ?
            [
                .. SpotFit
                    .Of(spot, outside.WidthM, outside.HeightM, outside.DepthM)
                    .Where(s => s.SpotM - s.TakenM < spareM)
                    .Select(s =>
                        (
                            $"cabinet.outside.{s.Side}",
                            (double)(Math.Floor((decimal)(OutsideM(outside, s.Side) - (s.TakenM - s.SpotM) - spareM) * 1000 + 1e-6m) / 1000)
                        )
                    ),
            ]
            : [];

    private static double OutsideM(Projects.Outside outside, string side) =>
        side switch
        {
            "width" => outside.WidthM,
            "height" => outside.HeightM,
            _ => outside.DepthM,
        };

    private static Judgement Weight(Facts f) =>
        f.Mass.FinishedKg is { } mass
            ? AtMost(
                mass,
                f.Limits.LiftMassKg,
                "kg",
                Nearness.Tenth,
                $"finished it weighs {f.Show.Mass(mass)}; one person may lift {f.Show.Mass(f.Limits.LiftMassKg)}; lift more with two people"
            )
            : Unknown("kg", f.MissingForMass);

    private static Judgement Cost(Facts f)
    {
        if (f.Project.Budget is not { } budget)
        {
            return Unknown(f.Project.Currency, "budget");
        }

        if (f.Project.Prices is null)
        {
            return Unknown(f.Project.Currency, "prices");
        }

        var cost = f.Cost;
        if (cost.Unpriced.Count > 0 && cost.TotalPrice <= budget)
        {
            return Unknown(f.Project.Currency, $"{f.Show.Money(cost.TotalPrice)} so far, but there is no price for {string.Join(", ", cost.Unpriced)}");
        }

        return AtMost(
            cost.TotalPrice,
            budget,
            f.Project.Currency,
            Nearness.Tenth,
            $"everything together costs {f.Show.Money(cost.TotalPrice)}, of which {f.Show.Money(cost.ToPayPrice)} is still to be paid; the budget is "
                + $"{f.Show.Money(budget)}"
        );
    }
}
