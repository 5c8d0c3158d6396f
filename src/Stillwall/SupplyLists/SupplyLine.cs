using System.Diagnostics.CodeAnalysis;
using Stillwall.Numerics;

namespace Stillwall.SupplyLists;

/// <summary>How an item of the supplies list stands.</summary>
public enum SupplyState
{
    /// <summary>What is needed or what is there is not known.</summary>
    Unknown,

    /// <summary>Enough is there and within its date.</summary>
    ToHand,

    /// <summary>Some is there, not enough.</summary>
    [SuppressMessage("Naming", "CA1720", Justification = "the word of the list, no number type")]
    Short,

    /// <summary>None is there.</summary>
    Missing,

    /// <summary>Enough would be there, but past its date on the day of the pour.</summary>
    PastDate,
}

/// <summary>One line of the supplies list.</summary>
/// <param name="Item">Name of the item.</param>
/// <param name="Needed">Amount needed, in <paramref name="Unit"/>; null where the plan does not say yet.</param>
/// <param name="InStock">Amount on the shelf and within its date; null without a stock list.</param>
/// <param name="ToBuy">Amount to buy; null where needed or stock is not known.</param>
/// <param name="Unit">Unit of the amounts: kg, m or pc.</param>
/// <param name="Price">Price of what is needed, in the project's currency; null without a price.</param>
/// <param name="State">How it stands.</param>
/// <param name="Step">Stage of the job that needs it first.</param>
/// <param name="PriceToBuy">Price of the whole packs to buy; null without a price or where the amount is not known.</param>
/// <param name="Pack">Amount that one pack holds, in <paramref name="Unit"/>; null without a price.</param>
/// <param name="PackCount">Whole packs to buy; null where the pack or the amount is not known.</param>
public sealed record SupplyLine(
    string Item,
    [property: ComputedBy("supply-needed", "pour.powder_kg", "print.filament_to_have_kg")] double? Needed,
    [property: ComputedBy("supply-stock")] double? InStock,
    [property: ComputedBy("supply-to-buy", "supplies[].needed", "supplies[].in_stock")] double? ToBuy,
    string Unit,
    [property: ComputedBy("supply-price", "supplies[].needed")] double? Price,
    SupplyState State,
    string Step,
    [property: ComputedBy("supply-price", "supplies[].to_buy")] double? PriceToBuy,
    [property: ComputedBy("supply-price")] double? Pack,
    [property: ComputedBy("supply-price", "supplies[].to_buy")] double? PackCount
);
