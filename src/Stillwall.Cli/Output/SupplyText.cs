using System.Globalization;
using Stillwall.Appraisals;
using Stillwall.Cli.Running;
using Stillwall.Numerics;
using Stillwall.SupplyLists;

namespace Stillwall.Cli.Output;

/// <summary>The supplies as a list to take to the shop.</summary>
internal static class SupplyText
{
    /// <summary>The list by the step that needs it first; null where nothing is needed.</summary>
    internal static string? Table(Appraisal appraisal, Show show, Terminal terminal) =>
        appraisal.Supplies.Count == 0
            ? null
            : Tables.Of(
                terminal,
                "Supplies",
                ["for what", ">needed", ">in stock", ">to buy", ">in packs", ">price", "state"],
                appraisal.Supplies.GroupBy(s => s.Step).SelectMany(step => step.Select(s => Row(s, show)).Prepend([Purpose(step.Key), "", "", "", "", "", ""]))
            );

    /// <summary>What is to be spent now, then what is past its date, missing, short or not known.</summary>
    internal static string Summary(Appraisal appraisal, Show show, int width)
    {
        var open = appraisal.Supplies.Where(s => s.ToBuy is not 0).ToList();
        var lines = new List<string> { Spending(appraisal, open, show) };
        Add("past its date, to be replaced", SupplyState.PastDate);
        Add("missing", SupplyState.Missing);
        Add("short", SupplyState.Short);
        if (appraisal.Supplies.Any(s => s.ToBuy is not null))
        {
            Add("not known", SupplyState.Unknown);
        }

        lines.Add($"the whole build, counting what is on the shelf: {show.Money(appraisal.Cost.TotalPrice)}");
        return string.Concat(lines.Select(line => Words.Wrapped(line, width, 0, 2) + "\n"));

        void Add(string words, SupplyState state)
        {
            var items = appraisal.Supplies.Where(s => s.State == state).ToList();
            if (items.Count > 0)
            {
                lines.Add($"{words}: {string.Join(", ", items.Select(s => s.ToBuy is > 0 ? $"{s.Item} ({Amount(s.ToBuy, s.Unit, show)})" : s.Item))}");
            }
        }
    }

    /// <summary>An amount as it is asked for in a shop.</summary>
    internal static string Amount(double? amount, string unit, Show show) =>
        (amount, unit) switch
        {
            (null, _) => "unknown",
            (0, _) => "–",
            ({ } v, "kg") => show.Mass(v),
            ({ } v, "m") => show.Distance(v),
            ({ } v, "m3") => show.Liquid(v),
            ({ } v, "m2") => show.InUnit(v, unit, 3),
            ({ } v, _) => $"{Show.Number(v)} {unit}",
        };

    private static string Spending(Appraisal appraisal, List<SupplyLine> open, Show show)
    {
        var unknown = open.Where(s => s.ToBuy is null).ToList();
        var unpriced = open.Where(s => s is { ToBuy: not null, PriceToBuy: null }).Select(s => s.Item).ToList();
        if (open.Count == 0)
        {
            return "to spend now: nothing; everything is on the shelf";
        }

        if (unknown.Count == appraisal.Supplies.Count)
        {
            return "to spend now: not known: state what is on the shelf (stock)";
        }

        var priced = open.Count - unknown.Count - unpriced.Count;
        return $"to spend now: {show.Money(appraisal.Cost.ToPayPrice)} for {Count(priced)} {(priced == 1 ? "item" : "items")}, in whole packs"
            + (unpriced.Count > 0 ? $"; without a price: {string.Join(", ", unpriced)}" : "")
            + (unknown.Count > 0 ? $"; {Count(unknown.Count)} cannot be counted yet" : "");
    }

    private static IReadOnlyList<string> Row(SupplyLine s, Show show) =>
        [
            $"  {s.Item}",
            Amount(s.Needed, s.Unit, show),
            Amount(s.InStock, s.Unit, show),
            Amount(s.ToBuy, s.Unit, show),
            Packs(s, show),
            s.ToBuy is 0 ? "–"
            : s.PriceToBuy is { } price ? show.Money(price)
            : "unknown",
            s.State.Word(),
        ];

    private static string Packs(SupplyLine s, Show show) =>
        s switch
        {
            { ToBuy: 0 } => "–",
            { PackCount: { } pieces, Pack: 1, Unit: "pc" } => Show.Number(pieces),
            { PackCount: { } packs, Pack: { } pack } => $"{Show.Number(packs)} × {Amount(pack, s.Unit, show)}",
            _ => "unknown",
        };

    private static string Purpose(string step) =>
        step switch
        {
            "Driver" => "the driver",
            "Parts" => "printing",
            "Pour" => "the pour",
            _ => "finishing",
        };

    private static string Count(int value) => value.ToString(CultureInfo.InvariantCulture);
}
