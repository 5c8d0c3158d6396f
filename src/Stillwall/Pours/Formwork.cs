using Stillwall.Cabinets;
using Stillwall.Materials;
using Stillwall.Shapes;

namespace Stillwall.Pours;

/// <summary>The skins as the form that the slurry presses on.</summary>
internal sealed record Formwork(CabinetGeometry Geometry, SkinMaterial Skin, double SlurryDensityKgM3)
{
    /// <summary>How deep the first lift buries the inner sleeve, m (our choice).</summary>
    public const double BuriedByFirstLiftM = 0.030;

    private const int MostLifts = 4;

    // What bears less is poured in as many lifts as there may be; a first lift takes no more of the cavity than this (our choice).
    private const double LeastHeadM = 0.001,
        MostOfFirst = 0.8;

    /// <summary>Heights, m, in their order; one where the cavity is no higher than two first lifts.</summary>
    /// <remarks>
    /// Model: the first lift fills the front core and buries the inner sleeve, and must set before the rest presses on it; the rest goes in as few equal
    /// lifts as keep the bulge within its limit, four at most. Validity: each lift sets before the next. Source: our choice. Accuracy: exact for its model.
    /// </remarks>
    public IReadOnlyList<double> LiftHeightsM(double bulgeLimitM)
    {
        var whole = Geometry.OuterSleeveLengthM;
        var first = Geometry.CoreM + BuriedByFirstLiftM;
        if (whole <= 2 * first)
        {
            return [whole];
        }

        var bears = bulgeLimitM / BulgeM(FormPressure.AtDepthPa(SlurryDensityKgM3, 1));
        var rest = Math.Min(MostLifts, FormPressure.Lifts(whole - first, Math.Max(LeastHeadM, bears)));
        return [first, .. Enumerable.Repeat((whole - first) / rest, rest)];
    }

    /// <summary>What share of the cavity each lift fills.</summary>
    /// <remarks>Model: areas of the core times heights. Source: geometry. Accuracy: struts and keys are taken as spread evenly.</remarks>
    public IReadOnlyList<double> LiftShares(IReadOnlyList<double> heights)
    {
        ArgumentNullException.ThrowIfNull(heights);
        var g = Geometry;
        var first = Math.Min(MostOfFirst, (g.Front.CoreM2 * g.CoreM + g.Sleeve.CoreRingM2 * BuriedByFirstLiftM) / g.CavityM3);
        return heights.Count == 1 ? [1] : [first, .. Enumerable.Repeat((1 - first) / (heights.Count - 1), heights.Count - 1)];
    }

    /// <summary>Bulge of the worse skin in the middle of a bay.</summary>
    /// <remarks>
    /// Model: <see cref="SkinBulge.Skin"/>; an untied strut bends with its skin, its ends taken as supported, the softer bound. Source: as that.
    /// </remarks>
    public double BulgeM(double pressurePa)
    {
        var strip = Strip(pressurePa).BulgeM;
        var g = Geometry;
        return g.Sizes.Tied
            ? strip
            : strip
                + SkinBulge
                    .UntiedStrut(pressurePa, g.Sleeve.StrutPitch.InMetres(), g.ClearDepthM, g.Sizes.Web.InMetres(), g.CoreM, Skin.HotModulusPa)
                    .SupportedM;
    }

    /// <summary>Bending stress of the worse skin at a strut.</summary>
    /// <remarks>Model: <see cref="SkinBulge.Skin"/>. Source: as that.</remarks>
    public double StressPa(double pressurePa) => Strip(pressurePa).StressPa;

    /// <summary>Weight that keeps the inner sleeve and its front plate down until the first lift has set.</summary>
    /// <remarks>
    /// Model: uplift of what the first lift buries, openings of the front left out. Validity: slurry gets under the sleeve. Source: elementary, Archimedes.
    /// Accuracy: exact for its model.
    /// </remarks>
    public double HoldDownKg(double sleeveKg)
    {
        var s = Geometry.Sizes;
        var floor = s.Outline.Inset(s.OuterSkin + s.Core).ToRegion().AreaM2 - Geometry.Front.OpeningM2;
        return Math.Max(0, FormPressure.UpliftN(SlurryDensityKgM3, floor * BuriedByFirstLiftM, sleeveKg) / FormPressure.AtDepthPa(1, 1));
    }

    private BulgeFigures Strip(double pressurePa)
    {
        // Struts thicker than their distance leave no bay; the skin is then held all over.
        var bay = Math.Max(1e-5, Geometry.ClearBayM);
        BulgeFigures Of(double skin, double left)
        {
            var whole = SkinBulge.Skin(pressurePa, bay, Geometry.Sleeve.StrutPitch.InMetres(), skin.InMetres(), Skin.HotModulusPa, Skin.Poisson);
            return whole with { BulgeM = whole.BulgeM / left, StressPa = whole.StressPa / left };
        }

        // A row of drying holes leaves so much of the inner skin to bend.
        var (outer, inner) = (Of(Geometry.Sizes.OuterSkin, 1), Of(Geometry.Sizes.InnerSkin, Geometry.DryingHoles.LeftRatio));
        return outer with { BulgeM = Math.Max(outer.BulgeM, inner.BulgeM), StressPa = Math.Max(outer.StressPa, inner.StressPa) };
    }
}
