namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Supplies.</summary>
internal static class SupplyTexts
{
    internal const string Item = "for what",
        Needed = "needed",
        InStock = "in stock",
        ToBuy = "to buy",
        Packs = "in packs",
        Price = "to pay",
        State = "state";
    internal const string Stock = "On the shelf",
        StockHint = "What there is, with its last good day; the list above takes it into account.",
        Prices = "Prices";

    internal static string PricesHint(string currency) => $"What the price buys stands beside it, one piece where nothing does. Prices in {currency}.";

    internal static IReadOnlyList<(string, string, string?, string, IReadOnlyList<string>)> StockColumns(IReadOnlyList<string> items) =>
        [
            ("item", "item", null, "cast powder", items),
            ("amount", "amount", null, "6 kg", []),
            ("best_before", "good until", null, "2027-03-01", []),
            ("note", "remark", null, "", []),
        ];

    internal static IReadOnlyList<(string, string, string?, string, IReadOnlyList<string>)> PriceColumns(IReadOnlyList<string> items) =>
        [
            ("item", "item", null, "cast powder", items),
            ("price", "price", null, "1.60", []),
            ("per", "buys", null, "1 kg", []),
            ("note", "remark", null, "", []),
        ];

    internal const string Everything = "Everything the plan uses costs",
        Total = "price of everything the plan uses",
        ToPay = "price of what is still to be bought";

    internal static string StillToPay(int unpriced) => $"of it is still to be paid{(unpriced > 0 ? $"; {unpriced} without a price" : "")}.";

    internal static string StockOf(string item) => $"{item} in stock";

    internal static string BuyOf(string item) => $"{item} to buy";

    internal static string PacksOf(string item) => $"packs of {item}";

    internal static string PriceOf(string item) => $"price of the {item} to buy";

    internal static string For(string step) => step;

    internal static string NeedOf(string item) => $"amount of {item}";
}
