using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Shapes;

namespace Stillwall.Parts.Kinds;

/// <summary>A piece of the real wall to try print, fill, heat and bond on before the cabinet is printed.</summary>
internal sealed class WallCoupon : PartKind
{
    /// <summary>Side of the coupon, mm (our choice).</summary>
    internal const double Side = 120;

    /// <inheritdoc/>
    public override string Name => "wall coupon";

    internal override int Turn => 130;

    internal override PrintedFor For => PrintedFor.WallTrial;

    /// <summary>Space between the skins of the wall coupon, which the cast fills.</summary>
    /// <remarks>Source: geometry; our choice of coupon. Accuracy: exact for the drawing.</remarks>
    public static double CavityM3(CabinetGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return CouponSection.Of(geometry.Sizes).CavityM3;
    }

    internal override IEnumerable<PartDraft> Of(PartJob job)
    {
        if (job.Sizes.Core > 0)
        {
            var section = CouponSection.Of(job.Sizes);
            yield return new PartDraft(section.VolumeM3, new PartSize(Side, job.Sizes.Wall, Side), () => section.Draw(job.LayerMm));
        }
    }

    internal override PartFeatures Features(FeatureJob job)
    {
        var s = job.Sizes;
        var (skin, pitch) = (s.OuterSkin + s.Core, SleeveSection.StrutPlaces(s).Pitch);
        return new PartFeatures
        {
            Across = pitch < Side / 2 ? [new(0, pitch, 0, 0)] : [],
            Up =
            [
                new(0, s.OuterSkin, -Side / 2, -Side / 2),
                new(s.OuterSkin, skin, -Side / 2, -Side / 2),
                .. s.InnerSkin > 0 ? [new Length(skin, s.Wall, -Side / 2, -Side / 2)] : Array.Empty<Length>(),
            ],
            SectionUp = [new(0, TestBarMould.Wall, -Side / 2, -Side / 2)],
            CutAt = s.OuterSkin + s.Core / 2,
        };
    }
}

/// <summary>
/// A square of the real wall, open at the top, with a floor and two ends: skins, struts with their windows, slots and keys. Printed standing.
/// </summary>
/// <param name="Narrower">Struts as their slopes are made of.</param>
internal sealed record CouponSection(
    CabinetSizes Sizes,
    IReadOnlyList<Region> Shell,
    IReadOnlyList<Region> Lips,
    IReadOnlyList<Region> Keys,
    IReadOnlyList<Region> Struts,
    IReadOnlyList<Region> Narrower
)
{
    private const double Side = WallCoupon.Side,
        Floor = TestBarMould.Wall;

    /// <summary>Lays the section out: y from the outer face inwards, x along the wall.</summary>
    internal static CouponSection Of(CabinetSizes sizes)
    {
        var s = sizes;
        var middle = s.OuterSkin + s.Core / 2;
        var pen = new WallPen(new RoundedFrame(-500, middle, 500, middle + 1000, 0), s.Core, []);
        var pitch = SleeveSection.StrutPlaces(s).Pitch;
        var count = (int)((Side / 2 - BuildUp.HeadWidth - BuildUp.KeyHead) / pitch);
        var places = Enumerable.Range(-count, 2 * count + 1).Select(i => i * pitch).ToList();
        var bays = Enumerable.Range(-count - 1, 2 * count + 2).Select(i => (i + 0.5) * pitch).Where(p => Math.Abs(p) + BuildUp.KeyHead < Side / 2 - Floor);
        Region End(double from) => Region.RoundedRectangle(from, s.OuterSkin, from + Floor, s.OuterSkin + s.Core, 0);
        return new CouponSection(
            s,
            [Strip(0, s.OuterSkin), Strip(s.OuterSkin + s.Core, s.Wall), End(-Side / 2), End(Side / 2 - Floor)],
            s.Tied ? [.. places.SelectMany(p => SleeveSection.Slot(pen, p, s.Web))] : [],
            [.. bays.SelectMany(p => new[] { pen.Key(p, true), pen.Key(p, false) })],
            [.. places.Select(p => SleeveSection.Strut(pen, p, s, 0))],
            [.. places.Select(p => SleeveSection.Strut(pen, p, s, SleeveSection.SlopeHair))]
        );
    }

    /// <summary>Volume of plastic, m³.</summary>
    internal double VolumeM3 => ((Side * Sizes.Wall * Floor).InSquareMetres() + Area(Shell) * (Side - Floor)).InMetres() + StandingM3;

    /// <summary>Space that the cast fills, m³.</summary>
    internal double CavityM3 => ((Side - 2 * Floor) * Sizes.Core * (Side - Floor)).InCubicMetres() - StandingM3;

    private double StandingM3 =>
        (
            (Area(Lips) + Area(Keys)) * (Side - Floor)
            + CabinetGeometry.StrutVolume(Area(Struts), Struts.Count, atCorners: 0, Rhythm, Sizes, slopes: Rhythm.SolidLengths().Count() - 1)
        ).InMetres();

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
