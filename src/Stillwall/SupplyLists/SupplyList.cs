using Stillwall.Projects;

namespace Stillwall.SupplyLists;

/// <summary>One thing the build needs, before the shelf is looked at.</summary>
/// <param name="Item">Name of the item.</param>
/// <param name="Amount">How much; null where the plan does not say yet.</param>
/// <param name="Dimension">Kind of quantity: mass, length or count.</param>
/// <param name="Step">Stage of the job that needs it first.</param>
/// <param name="OwnPrice">Price of one where the plan itself states it (a driver), else null.</param>
public sealed record Need(string Item, double? Amount, Dimension Dimension, string Step, double? OwnPrice = null);

/// <summary>The supplies list: what is needed, less what is on the shelf.</summary>
public static class SupplyList
{
    /// <summary>Compares needs with shelf and prices.</summary>
    /// <param name="needs">What the build needs.</param>
    /// <param name="stock">What is on the shelf; null where nothing is stated.</param>
    /// <param name="prices">What things cost; null where nothing is stated.</param>
    /// <param name="pourDate">Day of the pour, on which everything must still be good; null where not stated.</param>
    /// <returns>One line for each need, in their order.</returns>
    /// <remarks>
    /// Model: entries of one name are added up, those past their date left out; a price counts the needed share, what is to be bought comes in whole packs.
    /// Source: arithmetic; our choice of what counts.
    /// </remarks>
    public static IReadOnlyList<SupplyLine> Of(IReadOnlyList<Need> needs, IReadOnlyList<Stock>? stock, IReadOnlyList<Price>? prices, DateOnly? pourDate)
    {
        ArgumentNullException.ThrowIfNull(needs);
        return [.. needs.Select(need => Line(need, stock, prices, pourDate))];
    }

    /// <summary>Price of everything needed, and of what is to be bought.</summary>
    /// <param name="lines">The lines.</param>
    /// <returns>Sum of the known prices, sum of the known prices to buy, and the items without a price.</returns>
    /// <remarks>Source: arithmetic.</remarks>
    public static (double Total, double ToBuy, IReadOnlyList<string> Unpriced) Cost(IReadOnlyList<SupplyLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return (
            lines.Sum(l => l.Price ?? 0),
            lines.Sum(l => l.PriceToBuy ?? 0),
            [.. lines.Where(l => l.Price is null && l.Needed is not 0).Select(l => l.Item)]
        );
    }

    private static SupplyLine Line(Need need, IReadOnlyList<Stock>? stock, IReadOnlyList<Price>? prices, DateOnly? pourDate)
    {
        var shelf = stock?.Where(s => Same(s.Item, need.Item)).ToList();
        var matching = shelf?.Where(s => s.Amount.Dimension == need.Dimension).ToList();
        var good = matching?.Where(s => !(s.BestBefore < pourDate)).ToList();
        var inStock = good?.Sum(s => s.Amount.Value);
        var toBuy = need.Amount - inStock is { } lacking ? Math.Max(0, lacking) : (double?)null;
        var price = prices?.FirstOrDefault(p => Same(p.Item, need.Item) && p.Per.Dimension == need.Dimension && p.Per.Value > 0);
        var (unitPrice, pack) = need.OwnPrice is { } own ? (own, 1.0) : (price?.Cost / price?.Per.Value, price?.Per.Value ?? 1);
        var packs = toBuy is { } amount ? Math.Max(0, Math.Ceiling(amount / pack - 1e-9)) : (double?)null;
        return new SupplyLine(
            Item: need.Item,
            Needed: need.Amount,
            InStock: inStock,
            ToBuy: toBuy,
            Unit: UnitOf(need.Dimension),
            Price: need.Amount * unitPrice,
            State: State(need, shelf, matching, inStock),
            Step: need.Step,
            PriceToBuy: toBuy is 0 ? 0 : packs * pack * unitPrice,
            Pack: unitPrice is null ? null : pack,
            PackCount: unitPrice is null ? null : packs
        );
    }

    private static SupplyState State(Need need, List<Stock>? shelf, List<Stock>? matching, double? inStock)
    {
        if (need.Amount is not { } needed || inStock is not { } have || shelf!.Count != matching!.Count)
        {
            return SupplyState.Unknown;
        }

        if (have >= needed - 1e-9)
        {
            return SupplyState.ToHand;
        }

        return matching.Sum(s => s.Amount.Value) >= needed - 1e-9 ? SupplyState.PastDate
            : have > 0 ? SupplyState.Short
            : SupplyState.Missing;
    }

    private static bool Same(string a, string b) => string.Equals(a.Trim(), b, StringComparison.OrdinalIgnoreCase);

    private static string UnitOf(Dimension dimension) =>
        dimension switch
        {
            Dimension.Mass => "kg",
            Dimension.Length => "m",
            Dimension.Volume => "m3",
            Dimension.Area => "m2",
            _ => "pc",
        };
}
