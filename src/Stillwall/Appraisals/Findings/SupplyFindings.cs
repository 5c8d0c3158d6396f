using System.Globalization;
using Stillwall.Numerics;
using Stillwall.SupplyLists;
using static Stillwall.Appraisals.Findings.Judgement;

namespace Stillwall.Appraisals.Findings;

/// <summary>What is judged of the supplies.</summary>
internal static class SupplyFindings
{
    internal static IReadOnlyList<FindingRule> Rules { get; } =
    [
        new("Supplies", "nothing past its date", "best-before dates as stated", new("days-left"), Dates),
        new(
            "Supplies",
            "all to hand for each step",
            "the supplies list against the stated shelf",
            new("lacking-items", "print.filament_to_have_kg", "pour.powder_kg"),
            ToHand
        ),
    ];

    private static Judgement Dates(Facts f)
    {
        if (f.Project.Stock is not { } stock)
        {
            return Unknown("d", "stock");
        }

        var dated = stock.Where(s => s.BestBefore is not null).OrderBy(s => s.BestBefore).FirstOrDefault();
        if (dated is null)
        {
            return new Judgement(Verdict.Holds, null, null, "d", null, "nothing on the shelf has a date");
        }

        return f.Project.PourDate is not { } pour
            ? Unknown("d", "pour_date")
            : AtLeast(
                dated.BestBefore!.Value.DayNumber - pour.DayNumber,
                0,
                "d",
                Nearness.Days,
                string.Create(CultureInfo.InvariantCulture, $"the {dated.Item} is good until {dated.BestBefore:yyyy-MM-dd}; the pour is on {pour:yyyy-MM-dd}")
            ) with
            {
                Remedy =
                    dated.BestBefore < pour
                        ? string.Create(CultureInfo.InvariantCulture, $"replace the {dated.Item}, or pour on {dated.BestBefore:yyyy-MM-dd} or before")
                        : null,
            };
    }

    private static Judgement ToHand(Facts f)
    {
        if (f.Project.Stock is null)
        {
            return Unknown("pc", "stock");
        }

        var lacking = f.Supplies.Where(l => l.State is SupplyState.Short or SupplyState.Missing or SupplyState.PastDate).ToList();
        var open = f.Supplies.Where(l => l.State == SupplyState.Unknown).Select(l => l.Item).ToList();
        if (lacking.Count == 0 && open.Count > 0)
        {
            return Unknown("pc", $"cannot be said of {string.Join(", ", open)}");
        }

        return AtMost(
            lacking.Count,
            0,
            "pc",
            Nearness.Count,
            lacking.Count == 0
                ? $"all {f.Supplies.Count} items are on the shelf"
                : $"{lacking.Count} of {f.Supplies.Count} items are not: {string.Join(", ", lacking.Select(l => $"{l.Item} ({l.State.Word()})"))}"
        ) with
        {
            Remedy = lacking.Count > 0 ? $"buy {string.Join(", ", lacking.Select(f.ToBuyWords))}" : null,
        };
    }
}
