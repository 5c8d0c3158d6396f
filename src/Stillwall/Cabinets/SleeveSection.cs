using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>The cross-section of the side walls: two skins, the ring between them, and what stands in that ring.</summary>
/// <remarks>
/// Every piece lies within the core ring and none overlaps another, so that what the cast fills is the ring less the pieces.
/// Struts and keys stand on the outer skin or the inner skin and run along the depth.
/// </remarks>
/// <param name="CoreRingM2">Area between the skins, m².</param>
/// <param name="InsideM2">Area within the inner skin, m².</param>
/// <param name="Struts">Struts on the outer skin, each a web with its head; without heads in a thin core.</param>
/// <param name="Lips">Lips of the slots on the inner skin; none in a thin core.</param>
/// <param name="OuterKeys">Keys of the outer skin that run the whole length.</param>
/// <param name="InnerKeys">Keys of the inner skin that run the whole length.</param>
/// <param name="OuterEndKeys">Keys of the outer skin near the ends, in place of the former.</param>
/// <param name="InnerEndKeys">Keys of the inner skin near the ends, in place of the former.</param>
/// <param name="StrutPitch">Distance between struts as drawn, mm.</param>
internal sealed record SleeveSection(
    double OuterSkinM2,
    double CoreRingM2,
    double InnerSkinM2,
    double InsideM2,
    IReadOnlyList<Region> Struts,
    IReadOnlyList<Region> Lips,
    IReadOnlyList<Region> OuterKeys,
    IReadOnlyList<Region> InnerKeys,
    IReadOnlyList<Region> OuterEndKeys,
    IReadOnlyList<Region> InnerEndKeys,
    double StrutPitch
)
{
    /// <summary>What pieces at the corners have more than those on flat walls, over their slopes.</summary>
    internal CornerAreas MoreAtCorners { get; private init; } = new(0, 0, 0, 0, 0);

    /// <summary>Width and height over the slots that stand on the inner skin, m; zeros without any.</summary>
    public (double WidthM, double HeightM) InnerSizeM
    {
        get
        {
            var boxes = Lips.Concat(InnerKeys)
                .Concat(InnerEndKeys)
                .Select(r => r.Extent)
                .OfType<(double Left, double Bottom, double Right, double Top)>()
                .ToList();
            return boxes.Count == 0
                ? (0, 0)
                : ((boxes.Max(b => b.Right) - boxes.Min(b => b.Left)).InMetres(), (boxes.Max(b => b.Top) - boxes.Min(b => b.Bottom)).InMetres());
        }
    }

    /// <summary>Draws the cross-section.</summary>
    /// <param name="sizes">Sizes of the cabinet; its walls must leave an inside.</param>
    /// <remarks>
    /// Model: struts at equal distances along the middle of the core, as many as the stated pitch asks for and an even number, so that left and
    /// right are alike; keys evenly between them. Source: our choice. Accuracy: areas are exact to the 1 µm grid.
    /// </remarks>
    public static SleeveSection Of(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        return Of(sizes, 0, 0);
    }

    /// <summary>The same with pieces that reach a little into the skins at the corners, so that drawn together with them no slit is left.</summary>
    internal static SleeveSection Rooted(CabinetSizes sizes) => Of(sizes, RootIn(sizes), 0);

    /// <summary>
    /// The same with struts and keys a hair narrower on every side: what slopes are made of, so that their steps do not bend the sides of the pieces.
    /// </summary>
    internal static SleeveSection RootedForSlopes(CabinetSizes sizes) => Of(sizes, RootIn(sizes), SlopeHair);

    /// <summary>How much narrower on either side a piece is over its slope, mm.</summary>
    internal const double SlopeHair = 0.02;

    /// <summary>How far rooted pieces reach into the skins, mm.</summary>
    internal const double Root = 0.2;

    private static double RootIn(CabinetSizes sizes) => Math.Min(Root, Math.Min(sizes.OuterSkin, sizes.InnerSkin) / 2);

    private static SleeveSection Of(CabinetSizes sizes, double root, double hair)
    {
        var outline = sizes.Outline;
        var (outside, outerWall, innerWall, inside) = (
            outline.Inset(0).ToRegion(),
            outline.Inset(sizes.OuterSkin).ToRegion(),
            outline.Inset(sizes.OuterSkin + sizes.Core).ToRegion(),
            outline.Inset(sizes.Wall).ToRegion()
        );
        var areas = (
            Outer: outside.AreaM2 - outerWall.AreaM2,
            Core: outerWall.AreaM2 - innerWall.AreaM2,
            Inner: innerWall.AreaM2 - inside.AreaM2,
            Inside: inside.AreaM2
        );
        if (sizes.Core <= 0)
        {
            return new SleeveSection(
                OuterSkinM2: areas.Outer,
                CoreRingM2: areas.Core,
                InnerSkinM2: areas.Inner,
                InsideM2: areas.Inside,
                Struts: [],
                Lips: [],
                OuterKeys: [],
                InnerKeys: [],
                OuterEndKeys: [],
                InnerEndKeys: [],
                StrutPitch: 0
            );
        }

        var (path, places, pitch) = StrutPlaces(sizes);
        var pen = PenOf(sizes, path, root);
        var web = sizes.Web;

        IReadOnlyList<Region> Keys(bool onOuter, bool atEnds) => pen.OnBothSides(KeyPlaces(sizes, onOuter, atEnds), at => [pen.Key(at, onOuter, hair)]);

        var section = new SleeveSection(
            OuterSkinM2: areas.Outer,
            CoreRingM2: areas.Core,
            InnerSkinM2: areas.Inner,
            InsideM2: areas.Inside,
            Struts: pen.OnBothSides(places, p => [Strut(pen, p, sizes, hair)]),
            Lips: sizes.Tied ? pen.OnBothSides(places, p => Slot(pen, p, web)) : [],
            OuterKeys: Keys(onOuter: true, atEnds: false),
            InnerKeys: Keys(onOuter: false, atEnds: false),
            OuterEndKeys: Keys(onOuter: true, atEnds: true),
            InnerEndKeys: Keys(onOuter: false, atEnds: true),
            StrutPitch: pitch
        );
        return root > 0 || hair > 0 ? section : section with { MoreAtCorners = CornerAreas.Of(sizes, pen) };
    }

    /// <summary>Where the struts stand: along the middle of the core, at equal distances, an even number.</summary>
    /// <returns>The path, the places along it and the distance from one to the next, mm; no places without a core.</returns>
    internal static (RoundedFrame Path, IReadOnlyList<double> Places, double Pitch) StrutPlaces(CabinetSizes sizes)
    {
        var path = sizes.Outline.Inset(sizes.OuterSkin + sizes.Core / 2);
        var count = sizes.Core > 0 ? 2 * (int)Math.Ceiling(path.Length / sizes.StrutPitch / 2) : 0;
        var pitch = count > 0 ? path.Length / count : 0;
        return (path, [.. Enumerable.Range(0, count).Select(i => (i + 0.5) * pitch)], pitch);
    }

    /// <summary>Where along the path the keys stand, those included that a corner has no room for, mm.</summary>
    /// <remarks>Source: geometry.</remarks>
    internal static IReadOnlyList<double> KeyPlaces(CabinetSizes sizes, bool onOuter, bool atEnds)
    {
        var (_, places, pitch) = StrutPlaces(sizes);
        var taken = onOuter || !sizes.Tied ? sizes.Web : BuildUp.HeadWidth + 2 * (BuildUp.SlotGap + BuildUp.LipThickness);
        return [.. places.SelectMany(p => Between(p, pitch, taken, atEnds ? BuildUp.KeySpacingAtEnds : BuildUp.KeySpacing))];
    }

    /// <summary>A strut, all its faces drawn in by a hair: a web with a head, or a web alone in a thin core.</summary>
    internal static Region Strut(WallPen pen, double at, CabinetSizes sizes, double hair)
    {
        var (head, web, (from, to, _)) = (BuildUp.HeadWidth / 2 - hair, sizes.Web / 2 - hair, StrutHeights(sizes, hair));
        return sizes.Tied && head > web
            ? pen.Outlined(at, [(-head, from), (head, from), (head, to), (web, to), (web, sizes.Core), (-web, sizes.Core), (-web, to), (-head, to)])
            : pen.Block(at, -web, web, from, sizes.Core);
    }

    /// <summary>From and to of a strut's head over the inner skin, and where its web ends, mm; all its faces drawn in by a hair.</summary>
    internal static (double HeadFrom, double HeadTo, double WebFrom) StrutHeights(CabinetSizes sizes, double hair)
    {
        var (from, to) = (BuildUp.SlotGap + hair, BuildUp.SlotGap + BuildUp.HeadThickness - hair);
        return (from, to, sizes.Tied ? to : from);
    }

    /// <summary>
    /// Distances from the outer skin at which a strut's slope changes its width, and the core's thickness at last, mm: where its steps begin anew.
    /// </summary>
    /// <remarks>Source: geometry.</remarks>
    internal static IReadOnlyList<double> StrutSteps(CabinetSizes sizes)
    {
        var (from, to, _) = StrutHeights(sizes, SlopeHair);
        return sizes.Tied ? [sizes.Core - to, sizes.Core - from, sizes.Core] : [sizes.Core - from, sizes.Core];
    }

    /// <summary>The two lips of a slot round the head of a strut, each a wall with a cap.</summary>
    internal static IReadOnlyList<Region> Slot(WallPen pen, double at, double web)
    {
        var (gap, lip) = (BuildUp.SlotGap, BuildUp.LipThickness);
        var (wallAt, capFrom) = (BuildUp.HeadWidth / 2 + gap, 2 * gap + BuildUp.HeadThickness);
        var capAt = Math.Min(web / 2 + gap, wallAt);
        (double U, double V)[] right =
        [
            (wallAt, 0),
            (wallAt + lip, 0),
            (wallAt + lip, capFrom + lip),
            (capAt, capFrom + lip),
            (capAt, capFrom),
            (wallAt, capFrom),
        ];
        return [pen.Outlined(at, [.. right.Reverse().Select(c => (-c.U, c.V))]), pen.Outlined(at, right)];
    }

    /// <summary>A pen that draws across the wall, for what stands on plates between the struts.</summary>
    /// <param name="sizes">Sizes of the cabinet; there must be a core.</param>
    internal static WallPen Pen(CabinetSizes sizes) => PenOf(sizes, StrutPlaces(sizes).Path, 0);

    private static WallPen PenOf(CabinetSizes sizes, RoundedFrame path, double root) =>
        new(
            path,
            sizes.Core,
            CornerRings(path, sizes.Outline.Inset(sizes.OuterSkin - root).ToRegion(), sizes.Outline.Inset(sizes.OuterSkin + sizes.Core + root).ToRegion())
        );

    // The ring's four quarters: a piece at a corner is clipped by the nearest one, which has few points.
    private static IReadOnlyList<Lazy<Region>> CornerRings(RoundedFrame path, Region outerWall, Region innerWall)
    {
        var (x, z) = ((path.Left + path.Right) / 2, (path.Bottom + path.Top) / 2);
        const double far = 1e4;
        var ring = new Lazy<Region>(() => outerWall.Cut(innerWall));
        return
        [
            .. new[] { (-far, -far, x, z), (x, -far, far, z), (-far, z, x, far), (x, z, far, far) }.Select(q => new Lazy<Region>(() =>
                ring.Value.Intersect(Region.RoundedRectangle(q.Item1, q.Item2, q.Item3, q.Item4, 0))
            )),
        ];
    }

    // Keys stand evenly in the clear wall from one strut to the next.
    private static IEnumerable<double> Between(double strut, double pitch, double taken, double spacing)
    {
        var clear = pitch - taken;
        var n = Math.Min(Math.Max(1, (int)Math.Round(clear / spacing)), (int)((clear - 2) / (BuildUp.KeyHead + 2)));
        return Enumerable.Range(1, Math.Max(0, n)).Select(i => strut + taken / 2 + clear * i / (n + 1));
    }
}
