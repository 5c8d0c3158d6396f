using Stillwall.Cabinets;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>
/// A square of the real wall, open at the top, with a floor and two ends: skins, struts with their windows, slots and keys. Printed standing.
/// </summary>
/// <param name="Sizes">Sizes of the cabinet whose wall it is.</param>
/// <param name="Shell">Skins and ends.</param>
/// <param name="Lips">Lips of the slots.</param>
/// <param name="Keys">Keys of both skins.</param>
/// <param name="Struts">Struts.</param>
/// <param name="Narrower">Struts as their slopes are made of.</param>
internal sealed record WallCoupon(
    CabinetSizes Sizes,
    IReadOnlyList<Region> Shell,
    IReadOnlyList<Region> Lips,
    IReadOnlyList<Region> Keys,
    IReadOnlyList<Region> Struts,
    IReadOnlyList<Region> Narrower
)
{
    private const double Side = 1e3 * PartList.CouponM,
        Floor = 1e3 * PartList.MouldWallM;

    /// <summary>Lays the section out: y from the outer face inwards, x along the wall.</summary>
    internal static WallCoupon Of(CabinetSizes sizes)
    {
        var s = sizes;
        var middle = s.OuterSkin + s.Core / 2;
        var pen = new WallPen(new RoundedFrame(-500, middle, 500, middle + 1000, 0), s.Core, []);
        var pitch = SleeveSection.StrutPlaces(s).Pitch;
        var count = (int)((Side / 2 - BuildUp.HeadWidth - BuildUp.KeyHead) / pitch);
        var places = Enumerable.Range(-count, 2 * count + 1).Select(i => i * pitch).ToList();
        var bays = Enumerable.Range(-count - 1, 2 * count + 2).Select(i => (i + 0.5) * pitch).Where(p => Math.Abs(p) + BuildUp.KeyHead < Side / 2 - Floor);
        Region End(double from) => Region.RoundedRectangle(from, s.OuterSkin, from + Floor, s.OuterSkin + s.Core, 0);
        return new WallCoupon(
            s,
            [Strip(0, s.OuterSkin), Strip(s.OuterSkin + s.Core, s.Wall), End(-Side / 2), End(Side / 2 - Floor)],
            s.Tied ? [.. places.SelectMany(p => SleeveSection.Slot(pen, p, s.Web))] : [],
            [.. bays.SelectMany(p => new[] { pen.Key(p, true), pen.Key(p, false) })],
            [.. places.Select(p => SleeveSection.Strut(pen, p, s, 0))],
            [.. places.Select(p => SleeveSection.Strut(pen, p, s, SleeveSection.SlopeHair))]
        );
    }

    /// <summary>Volume of plastic, m³.</summary>
    internal double VolumeM3 => (Side * Sizes.Wall * Floor * 1e-6 + Area(Shell) * (Side - Floor)) * 1e-3 + StandingM3;

    /// <summary>Space that the cast fills, m³.</summary>
    internal double CavityM3 => (Side - 2 * Floor) * Sizes.Core * (Side - Floor) * 1e-9 - StandingM3;

    private double StandingM3 =>
        (
            (Area(Lips) + Area(Keys)) * (Side - Floor)
            + CabinetGeometry.StrutVolume(Area(Struts), Struts.Count, atCorners: 0, Rhythm, Sizes, slopes: Rhythm.SolidLengths().Count() - 1)
        ) * 1e-3;

    /// <summary>The coupon, without a name: it is filled.</summary>
    internal Blank Draw(double layer)
    {
        var solid = Solid.Empty.Add(Strip(0, Sizes.Wall), 0, Floor).Add(Region.JoinAll([.. Shell, .. Lips, .. Keys]), Floor, Side);
        var slope = Slopes.Of(
            Region.JoinAll(Struts),
            Region.JoinAll(Narrower),
            reach => Strip(Sizes.OuterSkin, Sizes.OuterSkin + reach),
            SleeveSection.StrutSteps(Sizes),
            layer
        );
        foreach (var (from, to) in Rhythm.SolidLengths())
        {
            solid = (from > 0 ? slope.On(solid, Floor + from - Sizes.Core) : solid).Add(slope.Pieces, Floor + from, Floor + to);
        }

        return Blank.Nameless(solid);
    }

    private StrutRhythm Rhythm => StrutRhythm.Of(Side - Floor, Sizes.Core);

    private static Region Strip(double from, double to) => Region.RoundedRectangle(-Side / 2, from, Side / 2, to, 0);

    private static double Area(IEnumerable<Region> regions) => regions.Sum(r => r.AreaM2);
}
