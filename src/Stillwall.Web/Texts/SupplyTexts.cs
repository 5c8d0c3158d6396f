namespace Stillwall.Web.Texts;

/// <summary>Texts of the stage Supplies.</summary>
internal static class SupplyTexts
{
    internal const string Item = "for what", Needed = "needed", InStock = "in stock", ToBuy = "to buy", Packs = "in packs", Price = "to pay", State = "state";
    internal const string Note = "Prices and stock stand in the project file, under \"prices\" and \"stock\".";

    internal static string Hint(string total, string toPay, int unpriced) => $"Everything the plan uses costs {total}; {toPay} of it is still to be paid{(unpriced > 0 ? $"; {unpriced} without a price" : "")}.";

    internal static string For(string step) => step;

    internal static string NeedOf(string item) => $"amount of {item}";
}
