using Stillwall.Numerics;
using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Cabinets;

/// <summary>The drawn cabinet: its sections and the volumes that follow from areas times thickness.</summary>
internal sealed record CabinetGeometry(CabinetSizes Sizes, SleeveSection Sleeve, PlateSection Front, PlateSection Rear, StrutRhythm Struts)
{
    /// <summary>Draws the cabinet.</summary>
    /// <param name="sizes">Stated sizes; the walls must leave an inside in every direction.</param>
    /// <remarks>
    /// Model: slabs along the depth: outer plate, core zone, inner plate, side walls, and the same at the rear. The outer sleeve runs between the outer
    /// plates, the inner sleeve between the inner plates. Source: our choice of build-up. Accuracy: exact to the 1 µm grid.
    /// </remarks>
    public static CabinetGeometry Of(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        Require.Positive(Math.Min(Math.Min(sizes.Width, sizes.Height), sizes.Depth) - 2 * sizes.Wall, "inside");
        return new CabinetGeometry(sizes, SleeveSection.Of(sizes), PlateSection.Front(sizes), PlateSection.Rear(sizes), StrutsOf(sizes));
    }

    /// <summary>The same sections along another depth or with other braces, without drawing them anew.</summary>
    /// <param name="sizes">Sizes that differ from these in depth and braces alone; the walls must leave an inside.</param>
    /// <returns>The geometry, the same as if it had been drawn.</returns>
    public CabinetGeometry Along(CabinetSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        Require.Positive(sizes.Depth - 2 * sizes.Wall, "inside");
        return sizes == (Sizes with { Depth = sizes.Depth, Braces = sizes.Braces })
            ? this with
            {
                Sizes = sizes,
                Struts = StrutsOf(sizes),
            }
            : throw new ArgumentException("accepted: sizes that differ in depth and braces alone", nameof(sizes));
    }

    /// <summary>How many pieces had to be clipped or joined to draw it, about: what drawing costs.</summary>
    internal int WorkCount
    {
        get
        {
            var frame = Sizes.Outline.Inset(Sizes.OuterSkin + Sizes.Core / 2);
            var pieces =
                Sleeve.Struts.Count
                + Sleeve.Lips.Count
                + Sleeve.OuterKeys.Count
                + Sleeve.InnerKeys.Count
                + Sleeve.OuterEndKeys.Count
                + Sleeve.InnerEndKeys.Count;
            const int perJoin = 10;
            return 1 + (int)(pieces * 2 * Math.PI * frame.Radius / frame.Length) + perJoin * (Front.JoinedCount + Rear.JoinedCount);
        }
    }

    /// <summary>Inside depth, between the inner plates, m.</summary>
    public double InsideDepthM => (Sizes.Depth - 2 * Sizes.Wall) * MetresPerMillimetre;

    public double InsideWidthM => (Sizes.Width - 2 * Sizes.Wall) * MetresPerMillimetre;

    public double InsideHeightM => (Sizes.Height - 2 * Sizes.Wall) * MetresPerMillimetre;

    /// <summary>Air space within the inner skins, m³; the openings in the walls are not counted.</summary>
    public double InsideM3 => Sleeve.InsideM2 * InsideDepthM;

    /// <summary>The braces.</summary>
    public Bracing Bracing => Bracing.Of(Sizes);

    /// <summary>Volume of one brace, m³.</summary>
    public double BraceM3 =>
        (Bracing.Frame.ToRegion().AreaM2 - Bracing.Window.ToRegion().AreaM2) * BuildUp.BraceThickness * MetresPerMillimetre;

    /// <summary>Side of the window in a brace, the smaller one, m.</summary>
    public double BraceWindowM => Math.Min(Bracing.Window.Width, Bracing.Window.Height) * MetresPerMillimetre;

    /// <summary>Depth behind the front face that a driver may take, m: to the rear, or to the first brace.</summary>
    /// <param name="passesBraces">Whether its magnet passes through the windows of the braces.</param>
    /// <remarks>Source: geometry; braces stand at equal distances.</remarks>
    public double RoomForDriverM(bool passesBraces)
    {
        var toRear = (Sizes.Depth - Sizes.Wall) * MetresPerMillimetre;
        var first = Sizes.Wall * MetresPerMillimetre + ClearDepthM;
        return passesBraces || Sizes.Braces == 0 ? toRear : first;
    }

    /// <summary>Clear wall between two struts, m.</summary>
    public double ClearBayM => (Sleeve.StrutPitch - Sizes.Web) * MetresPerMillimetre;

    /// <summary>Clear depth from one brace to the next, or from plate to plate without braces, m.</summary>
    public double ClearDepthM => Bracing.ClearM;

    /// <summary>Space between the skins that the cast fills, the drying holes in the inner skin too, m³.</summary>
    public double CavityM3 =>
        Sizes.Core <= 0
            ? 0
            : (Front.CoreM2 + Rear.CoreM2) * CoreM
                - (Front.TongueM2 + Rear.TongueM2) * BuildUp.TongueHeight * MetresPerMillimetre
                + Sleeve.CoreRingM2 * StrutLengthM
                - StrutsM3
                - LipsM3
                - OuterKeysM3
                - InnerKeysM3
                + DryingHolesM3;

    /// <summary>Holes in the inner skin through which the cast dries.</summary>
    public DryingHoles DryingHoles => DryingHoles.Of(Sizes);

    /// <summary>Volume of the drying holes, m³: taped from inside, the cast fills them.</summary>
    public double DryingHolesM3 => DryingHoles.OpenM2 * Sizes.InnerSkin * MetresPerMillimetre;

    /// <summary>Volume of what stands out into the inside from skins and plates: seats for the braces and the tongues of the inner plates, m³.</summary>
    public double FittingsM3 => (2 * InnerTonguesMm3 + Sizes.Braces * SeatsMm3) * CubicMetresPerCubicMillimetre;

    /// <summary>Volume of the outer sleeve with its struts and keys, less the grooves for accents, m³.</summary>
    /// <remarks>Source: geometry.</remarks>
    public double OuterSleeveM3(int accents) => Sleeve.OuterSkinM2 * OuterSleeveLengthM + StrutsM3 + OuterKeysM3 - accents * AccentGrooveM3;

    /// <summary>Volume of the inner sleeve with its slots, keys and seats, less its drying holes, m³.</summary>
    public double InnerSleeveM3 =>
        Sleeve.InnerSkinM2 * InsideDepthM + LipsM3 + InnerKeysM3 + Sizes.Braces * SeatsMm3 * CubicMetresPerCubicMillimetre - DryingHolesM3;

    /// <summary>Volume of the groove of one accent ring, half as deep as the outer skin is thick, m³.</summary>
    public double AccentGrooveM3 =>
        (Sizes.Outline.Inset(0).ToRegion().AreaM2 - Sizes.Outline.Inset(Sizes.OuterSkin / 2).ToRegion().AreaM2) * BuildUp.AccentWidth * MetresPerMillimetre;

    /// <summary>Volume of an outer plate with all that stands on it, m³.</summary>
    /// <remarks>Source: geometry.</remarks>
    public double OuterPlateM3(PlateSection plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        return plate.OuterPlateM2 * Sizes.OuterSkin * MetresPerMillimetre
            + (plate.CollarM2 + plate.PostM2) * CoreM
            + plate.TongueM2 * BuildUp.TongueHeight * MetresPerMillimetre
            - plate.PilotM2 * (PilotDepth - Sizes.OuterSkin) * MetresPerMillimetre
            - RecessM3(plate);
    }

    /// <summary>Volume that the recesses for the drivers' flanges take from the face of a plate, openings and holes for inserts left out, m³.</summary>
    /// <returns>Volume; 0 without a recess.</returns>
    /// <remarks>
    /// Model: area of the ring times the depth; in a single printed wall, which may be recessed past its outer skin, the deeper part within the
    /// sleeve alone. Source: geometry. Accuracy: exact to the 1 µm grid.
    /// </remarks>
    public double RecessM3(PlateSection plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        var inSkin = Math.Min(Sizes.Sunk, Sizes.OuterSkin);
        return (plate.RecessM2 * inSkin + plate.DeepRecessM2 * (Sizes.Sunk - inSkin)) * MetresPerMillimetre;
    }

    /// <summary>Volume of an inner plate, m³.</summary>
    /// <remarks>Source: geometry.</remarks>
    public double InnerPlateM3(PlateSection plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        return plate.InnerPlateM2 * Sizes.InnerSkin * MetresPerMillimetre + InnerTonguesMm3 * CubicMetresPerCubicMillimetre;
    }

    public double OuterSleeveLengthM => (Sizes.Depth - 2 * Sizes.OuterSkin) * MetresPerMillimetre;

    /// <summary>Thickness of the outer skin, m.</summary>
    public double OuterSkinM => Sizes.OuterSkin * MetresPerMillimetre;

    /// <summary>Thickness of the inner skin, m.</summary>
    public double InnerSkinM => Sizes.InnerSkin * MetresPerMillimetre;

    /// <summary>Area through which the cast dries, m²: the openings of the rear's outer plate, lids off, and the drying holes.</summary>
    public double DryingAreaM2 => Rear.Layout.OuterOnly.Sum(c => c.AreaM2) + DryingHoles.OpenM2;

    /// <summary>Thickness of the core, m.</summary>
    public double CoreM => Sizes.Core * MetresPerMillimetre;

    /// <summary>Share of the skins held by undercut keys, struts and slots, away from the ends and near them, the lesser of both skins.</summary>
    /// <returns>Elsewhere, and within 80 mm of an end.</returns>
    /// <remarks>
    /// Source: heads of keys and slots over the strut pitch, on the drawn section; a web is one with the outer skin. Our choice of what counts.
    /// </remarks>
    public (double Elsewhere, double AtEnds) KeyedFractions()
    {
        var struts = Sleeve.Struts.Count;
        if (struts == 0 || Sizes.Core <= 0)
        {
            return (0, 0);
        }

        var web = Sizes.Web;
        var slot = Sizes.Tied ? BuildUp.HeadWidth + 2 * (BuildUp.SlotGap + BuildUp.LipThickness) : 0;
        double Share(IReadOnlyList<Shapes.Region> keys, double besides) =>
            (keys.Count(k => k.AreaM2 > 0) * BuildUp.KeyHead / struts + besides) / Sleeve.StrutPitch;
        return (
            Math.Min(Share(Sleeve.OuterKeys, web), Share(Sleeve.InnerKeys, slot)),
            Math.Min(Share(Sleeve.OuterEndKeys, web), Share(Sleeve.InnerEndKeys, slot))
        );
    }

    /// <summary>Least passage the mix has to go through, m: between facing keys, beside a key, or between a key and a strut.</summary>
    public double PassageM
    {
        get
        {
            if (Sizes.Core <= 0)
            {
                return 0;
            }

            var facing = Sizes.Core - 2 * BuildUp.KeyHeightIn(Sizes.Core);
            return facing * MetresPerMillimetre;
        }
    }

    /// <summary>Diameter of the greatest ball that the cavity has room for, m: in the edge where the core of front or rear meets that of the sides.</summary>
    /// <remarks>Source: geometry: a ball that touches two outer skins at right angles and the edge of the inner one, 2√2/(1 + √2) times the core.</remarks>
    public double ThickestPlaceM => 2 * Math.Sqrt(2) / (1 + Math.Sqrt(2)) * CoreM;

    private double StrutLengthM => Struts.Length * MetresPerMillimetre;

    /// <summary>Depth of the holes for inserts from the front face, mm: as deep as usual, or as the wall allows.</summary>
    internal double PilotDepth =>
        Math.Clamp(Sizes.Core > 0 ? Sizes.OuterSkin + Sizes.Core - 1 : Sizes.Wall, Sizes.OuterSkin, Math.Max(BuildUp.PilotDepth + Sizes.Sunk, Sizes.OuterSkin));

    private static double SeatsMm3 => BuildUp.Seats * BuildUp.SeatWidth * BuildUp.SeatDepth * BuildUp.SeatDepth / 2;

    private static double InnerTonguesMm3 => 4 * BuildUp.InnerTongue * BuildUp.TongueThickness * BuildUp.TongueHeight;

    private double StrutsM3 =>
        StrutVolume(Sleeve.Struts.Sum(r => r.AreaM2), Sleeve.Struts.Count, Sleeve.MoreAtCorners.StrutsM2, Struts, Sizes, Struts.SolidLengths().Count())
        * MetresPerMillimetre;

    /// <summary>
    /// Struts in full, and the slopes of 45° that lead up to their lengths, at the foot through the front core zone: areas times lengths, m² times
    /// mm. A slope that grows from the outer skin covers a point v from the inner skin over a length v, so that its volume is the area times the mean
    /// of v; over it pieces are a hair narrower. What struts at a corner have more than rectangles lies at the skin that they stand on.
    /// </summary>
    /// <remarks>Source: geometry.</remarks>
    internal static double StrutVolume(double area, int count, double atCorners, StrutRhythm rhythm, CabinetSizes sizes, int slopes)
    {
        var (from, to, _) = SleeveSection.StrutHeights(sizes, 0);
        var (fromIn, toIn, topIn) = SleeveSection.StrutHeights(sizes, SleeveSection.SlopeHair);
        double Block(double width, double height) => count * Math.Max(0, width) * height * SquareMetresPerSquareMillimetre;
        var headWidth = sizes.Tied && BuildUp.HeadWidth > sizes.Web ? BuildUp.HeadWidth : 0;
        var slope =
            Block(sizes.Web - 2 * SleeveSection.SlopeHair, sizes.Core - topIn) * (topIn + sizes.Core) / 2
            + atCorners * sizes.Core
            + Block(headWidth - 2 * SleeveSection.SlopeHair, toIn - fromIn) * (from + to) / 2;
        return area * rhythm.Solid + slope * slopes;
    }

    /// <summary>Volume of all that stands in the core between the sleeves' skins, m³: struts, slots and keys.</summary>
    internal double StandingM3 => Sizes.Core <= 0 ? 0 : StrutsM3 + LipsM3 + OuterKeysM3 + InnerKeysM3;

    private double LipsM3 => Sleeve.Lips.Sum(r => r.AreaM2) * InsideDepthM;

    // The inner sleeve's first keys stand on the printer's bed; all others begin with a slope.
    private double OuterKeysM3 => KeysM3(Sleeve.OuterKeys, Sleeve.OuterEndKeys, Sleeve.MoreAtCorners.OuterKeysM2, Sleeve.MoreAtCorners.OuterEndKeysM2, 0);

    private double InnerKeysM3 => KeysM3(Sleeve.InnerKeys, Sleeve.InnerEndKeys, Sleeve.MoreAtCorners.InnerKeysM2, Sleeve.MoreAtCorners.InnerEndKeysM2, 1);

    private double KeysM3(IReadOnlyList<Shapes.Region> along, IReadOnlyList<Shapes.Region> atEnds, double moreAlong, double moreAtEnds, int onBed)
    {
        var inside = InsideDepthM / MetresPerMillimetre;
        var ends = Math.Min(2 * BuildUp.EndZone, inside);
        var (endStarts, alongStarts) = ends < inside ? (2, 1) : (1, 0);

        // Over a slope the trapezium of a key, a hair narrower, grows from its foot to its head; what a key at a corner has more lies at the skin.
        var (height, hair) = (BuildUp.KeyHeightIn(Sizes.Core), 2 * SleeveSection.SlopeHair);
        var slope = (2 * (BuildUp.KeyFoot - hair) + BuildUp.KeyHead - hair) / 6 * height * height * SquareMetresPerSquareMillimetre;
        double Volume(IReadOnlyList<Shapes.Region> keys, double more, double length, int starts) =>
            keys.Sum(r => r.AreaM2) * (length - starts * height) + starts * (keys.Count(r => r.AreaM2 > 0) * slope + more * height);
        return (Volume(atEnds, moreAtEnds, ends, endStarts - onBed) + Volume(along, moreAlong, inside - ends, alongStarts)) * MetresPerMillimetre;
    }

    private static StrutRhythm StrutsOf(CabinetSizes sizes) => StrutRhythm.Of(sizes.Depth - 2 * (sizes.OuterSkin + sizes.Core), sizes.Core);
}
