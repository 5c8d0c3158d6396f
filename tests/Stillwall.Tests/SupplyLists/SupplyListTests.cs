using CsCheck;
using Stillwall.Projects;
using Stillwall.SupplyLists;

namespace Stillwall.Tests.SupplyLists;

/// <summary>Needs against shelf and prices, worked by hand.</summary>
public sealed class SupplyListTests
{
    private static readonly DateOnly PourDay = new(2026, 11, 14);

    // 3.84 kg needed, 1 kg on the shelf: 2.84 kg are lacking, two bags of 2.5 kg at 4.50 each.
    [Fact]
    public void What_is_lacking_is_bought_in_whole_packs()
    {
        var line = Line(
            3.84,
            [Shelf(1)],
            new Price
            {
                Item = "cast powder",
                Cost = 4.5,
                Per = new Amount(2.5, Dimension.Mass),
            }
        );
        Assert.Equal(2.84, line.ToBuy!.Value, 1e-12);
        Assert.Equal((2.0, 2.5, SupplyState.Short), (line.PackCount, line.Pack, line.State));
        Assert.Equal(9, line.PriceToBuy!.Value, 1e-12);
        Assert.Equal(3.84 * 1.8, line.Price!.Value, 1e-12);
    }

    [Fact]
    public void What_is_on_the_shelf_costs_nothing_more() =>
        Assert.Equal((0.0, 0.0, SupplyState.ToHand), Line(3.84, [Shelf(6)], Bag(1)) is var line ? (line.PackCount, line.PriceToBuy, line.State) : default);

    [Fact]
    public void What_is_past_its_date_is_bought_again()
    {
        var line = Line(3.84, [Shelf(6) with { BestBefore = PourDay.AddDays(-1) }], Bag(1));
        Assert.Equal((0.0, 3.84, 4.0, SupplyState.PastDate), (line.InStock, line.ToBuy, line.PackCount, line.State));
        Assert.Equal(SupplyState.ToHand, Line(3.84, [Shelf(6) with { BestBefore = PourDay }], Bag(1)).State);
    }

    [Fact]
    public void Without_a_price_the_packs_are_not_known()
    {
        var line = Line(3.84, [], null);
        Assert.Equal((null, null, null, 3.84, SupplyState.Missing), (line.PackCount, line.Pack, line.PriceToBuy, line.ToBuy, line.State));
    }

    [Fact]
    public void The_packs_are_enough_and_one_less_is_not() =>
        Gen.Select(Gen.Double[0.01, 50], Gen.Double[0, 40], Gen.Double[0.1, 25])
            .Sample(
                (needed, stocked, pack) =>
                {
                    var line = Line(needed, [Shelf(stocked)], Bag(pack));
                    Assert.Equal(Math.Floor(line.PackCount!.Value), line.PackCount.Value);
                    Assert.True(line.PackCount * pack >= line.ToBuy - 1e-6);
                    Assert.True((line.PackCount - 1) * pack < line.ToBuy || line.PackCount == 0);
                }
            );

    private static Stock Shelf(double kilograms) => new() { Item = "cast powder", Amount = new Amount(kilograms, Dimension.Mass) };

    private static Price Bag(double kilograms) =>
        new()
        {
            Item = "cast powder",
            Cost = 1.6,
            Per = new Amount(kilograms, Dimension.Mass),
        };

    private static SupplyLine Line(double neededKg, IReadOnlyList<Stock> stock, Price? price) =>
        Assert.Single(SupplyList.Of([new Need("cast powder", neededKg, Dimension.Mass, "Pour")], stock, price is null ? [] : [price], PourDay));
}
