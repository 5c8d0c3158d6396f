using Stillwall.Figures.Sheets;
using Stillwall.Parts;
using Stillwall.Parts.Kinds;

namespace Stillwall.Tests.Figures;

/// <summary>Exploded, the parts stand one behind the other, as they are put together.</summary>
public sealed class ExplodedPlacesTests
{
    // In their places, in no particular order.
    private static readonly PlacedPart[] Parts =
    [
        new(Kind<OuterSleeve>(), 2, 328),
        new(Kind<RearOuterPlate>(), 316, 330),
        new(Kind<FrontOuterPlate>(), 0, 14),
        new(Kind<OuterSleeve>(), 2, 328),
        new(Kind<Brace>(), 100, 108),
        new(Kind<Brace>(), 200, 208),
        new(Kind<Foot>(), 30, 60),
        new(Kind<TrimRing>(), -10, -4),
    ];

    private static T Kind<T>()
        where T : PartKind => PartCatalogue.Kinds.OfType<T>().Single();

    private static IReadOnlyList<ApartShift> Shifts => ExplodedPlaces.Of(Parts);

    [Fact]
    public void Kinds_follow_one_another_from_the_front_with_room_between_them()
    {
        (double Front, double Rear) At(int i) => (Parts[i].FrontMm + Shifts[i].YMm, Parts[i].RearMm + Shifts[i].YMm);
        int[] order = [7, 2, 0, 4, 5, 1];
        Assert.All(order.Zip(order.Skip(1)), pair => Assert.Equal(45, At(pair.Second).Front - At(pair.First).Rear, 1e-9));
    }

    [Fact]
    public void Pieces_of_one_part_stay_together_and_nothing_but_feet_leaves_its_height()
    {
        Assert.Equal(Shifts[0], Shifts[3]);
        Assert.All(Parts.Zip(Shifts), p => Assert.Equal(p.First.Kind is Foot ? -60 : 0, p.Second.ZMm));
        Assert.Equal(Shifts[0].YMm, Shifts[6].YMm);
    }

    [Fact]
    public void Of_nothing_nothing_is_moved() => Assert.Empty(ExplodedPlaces.Of([]));
}
