namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Supplies.</summary>
internal static class SupplyTexts
{
    internal const string Item = "for what", Needed = "needed", InStock = "in stock", ToBuy = "to buy", Packs = "in packs", Price = "to pay", State = "state";
    internal const string Note = "Prices and stock stand in the project file, under \"prices\" and \"stock\".";

    internal const string Everything = "Everything the plan uses costs", Total = "price of everything the plan uses", ToPay = "price of what is still to be bought";

    internal static string StillToPay(int unpriced) => $"of it is still to be paid{(unpriced > 0 ? $"; {unpriced} without a price" : "")}.";

    internal static string StockOf(string item) => $"{item} in stock";

    internal static string BuyOf(string item) => $"{item} to buy";

    internal static string PacksOf(string item) => $"packs of {item}";

    internal static string PriceOf(string item) => $"price of the {item} to buy";

    internal static string For(string step) => step;

    internal static string NeedOf(string item) => $"amount of {item}";
}
