using Stillwall.Cabinets;
using Stillwall.Projects;

namespace Stillwall.Parts;

/// <summary>What has to be printed for a drawn cabinet, from the areas and lengths of its sections.</summary>
public static class PartList
{
    /// <summary>Size of the test bar that the last batch also fills, m: length, width, thickness.</summary>
    public static IReadOnlyList<double> TestBarM { get; } = [0.160, 0.040, 0.020];

    private const double MouldWallM = 0.002, CouponM = 0.120;

    private const int CouponRibs = 3;

    /// <summary>Lists the parts in the order in which they are built in, then moulds and gauges.</summary>
    /// <param name="geometry">The drawn cabinet.</param>
    /// <param name="cabinet">The cabinet as stated, for accents and feet.</param>
    /// <param name="sheet">The driver's data sheet, for the trim ring; null without a driver.</param>
    /// <param name="printer">The printer; null where none is stated.</param>
    /// <param name="skinDensityKgM3">Density of the plastic, kg/m³; null where no skin is stated.</param>
    /// <returns>The parts; a sleeve that is taller than the build space comes in equal pieces.</returns>
    /// <remarks>
    /// Model: volume from sections times lengths; least time from volume over flow and a pause at each layer. Validity: parts whose sections do not change
    /// but by windows. Source: geometry; the time is common practice, no source. Accuracy: volumes exact to the 1 µm grid; times are a floor.
    /// </remarks>
    public static IReadOnlyList<PartFigures> Of(CabinetGeometry geometry, Cabinet cabinet, DriverSheet? sheet, Printer? printer, double? skinDensityKgM3)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(cabinet);
        var maker = new PartMaker(printer, skinDensityKgM3);
        return [.. Shells(geometry, cabinet, maker), .. Trims(geometry, cabinet, sheet, maker), .. Gauges(geometry, maker)];
    }

    /// <summary>Adds the parts up.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="wasteRatio">Filament lost, as a ratio, zero or greater.</param>
    /// <returns>The totals; null where a part's figure is not known.</returns>
    /// <remarks>Model: sums; real printing takes 1.5 to 1.8 times the floor. Source: common practice, no source (factor from memory).</remarks>
    public static PrintTotals Totals(IReadOnlyList<PartFigures> parts, double wasteRatio)
    {
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Count == 0)
        {
            return new PrintTotals(null, null, null, null, null, null, null);
        }

        var mass = Sum(parts.Select(p => p.MassKg));
        var seconds = Sum(parts.Select(p => p.PrintSeconds));
        var toHave = mass * (1 + wasteRatio);
        return new PrintTotals(
            mass, toHave, seconds, seconds is null ? null : parts.Max(p => p.PrintSeconds),
            seconds is { } s ? [1.5 * s, 1.8 * s] : null, toHave is { } kg ? (int)Math.Ceiling(kg - 1e-9) : null, parts.Count);
    }

    private static double? Sum(IEnumerable<double?> values) => values.Aggregate((double?)0, (sum, value) => sum + value);

    private static IEnumerable<PartFigures> Shells(CabinetGeometry g, Cabinet cabinet, PartMaker maker)
    {
        var s = g.Sizes;
        var (width, height) = (s.Width * 1e-3, s.Height * 1e-3);
        var hidden = 2e-3 * s.OuterSkin + 2 * g.CoreM;
        var accents = s.OuterSkin > 0 ? cabinet.Accents?.Rings ?? 0 : 0;
        if (s.Core <= 0)
        {
            // A single wall: both skins are one print.
            return [
                .. maker.Split("sleeve", g.OuterSleeveM3(accents) + g.InnerSleeveM3, [width, height, g.OuterSleeveLengthM]),
                maker.Flat("front plate", g.OuterPlateM3(g.Front) + g.InnerPlateM3(g.Front), [width, height, s.Wall * 1e-3]),
                maker.Flat("rear plate", g.OuterPlateM3(g.Rear) + g.InnerPlateM3(g.Rear), [width, height, s.Wall * 1e-3]),
                .. Braces(g, maker)];
        }

        var standing = 1e-3 * s.OuterSkin + g.CoreM;
        return [
            .. maker.Split("outer sleeve", g.OuterSleeveM3(accents), [width, height, g.OuterSleeveLengthM]),
            .. maker.Split("inner sleeve", g.InnerSleeveM3, [width - hidden, height - hidden, g.InsideDepthM]),
            maker.Flat("front outer plate", g.OuterPlateM3(g.Front), [width, height, standing]),
            maker.Flat("front inner plate", g.InnerPlateM3(g.Front), [width - hidden, height - hidden, s.InnerSkin * 1e-3]),
            maker.Flat("rear outer plate", g.OuterPlateM3(g.Rear), [width, height, standing]),
            maker.Flat("rear inner plate", g.InnerPlateM3(g.Rear), [width - hidden, height - hidden, s.InnerSkin * 1e-3]),
            .. Braces(g, maker)];
    }

    private static IEnumerable<PartFigures> Braces(CabinetGeometry g, PartMaker maker) =>
        Enumerable.Range(1, g.Sizes.Braces).Select(i => maker.Flat(
            Numbered("brace", i, g.Sizes.Braces), g.BraceM3, [g.InsideWidthM, g.InsideHeightM, BuildUp.BraceThickness * 1e-3]));

    private static IEnumerable<PartFigures> Trims(CabinetGeometry g, Cabinet cabinet, DriverSheet? sheet, PartMaker maker)
    {
        if (sheet is { FlangeM: { } flange, CutoutM: { } cutout } && flange > cutout)
        {
            var thickness = BuildUp.TrimThickness * 1e-3;
            for (var i = 1; i <= g.Sizes.DriverCount; i++)
            {
                yield return maker.Flat(Numbered("trim ring", i, g.Sizes.DriverCount), Math.PI / 4 * (flange * flange - cutout * cutout) * thickness, [flange, flange, thickness]);
            }
        }

        var rings = g.Sizes.OuterSkin > 0 ? cabinet.Accents?.Rings ?? 0 : 0;
        for (var i = 1; i <= rings; i++)
        {
            yield return maker.Flat(Numbered("accent ring", i, rings), g.AccentRingM3, [g.Sizes.Width * 1e-3, g.Sizes.Height * 1e-3, BuildUp.AccentWidth * 1e-3]);
        }

        if (cabinet.Feet is not null)
        {
            for (var i = 1; i <= 4; i++)
            {
                yield return maker.Flat(Numbered("foot", i, 4), Math.PI / 4 * 0.030 * 0.030 * 0.008, [0.030, 0.030, 0.008]);
            }
        }
    }

    /// <summary>Space between the skins of the wall coupon, which the cast fills.</summary>
    /// <param name="geometry">The drawn cabinet, with a core.</param>
    /// <returns>Volume, m³.</returns>
    /// <remarks>Model: a square of 120 mm of the real wall with three ribs of 2 mm. Source: geometry; our choice of coupon. Accuracy: exact for the drawing.</remarks>
    public static double CouponCavityM3(CabinetGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return (CouponM - CouponRibs * MouldWallM) * CouponM * geometry.CoreM;
    }

    // Mould of the test bar: a tray; coupon: a square of the real wall; strip and gauges: small blocks.
    private static IEnumerable<PartFigures> Gauges(CabinetGeometry g, PartMaker maker)
    {
        if (g.Sizes.Core <= 0)
        {
            yield break;
        }

        var (length, width, deep) = (TestBarM[0], TestBarM[1], TestBarM[2]);
        double[] tray = [length + 2 * MouldWallM, width + 2 * MouldWallM, deep + MouldWallM];
        yield return maker.Flat("test-bar mould", tray[0] * tray[1] * tray[2] - length * width * deep, tray, inCabinet: false);
        var skins = (g.Sizes.OuterSkin + g.Sizes.InnerSkin) * 1e-3;
        var wall = g.Sizes.Wall * 1e-3;
        yield return maker.Flat("wall coupon", CouponM * CouponM * skins + CouponRibs * CouponM * MouldWallM * g.CoreM, [CouponM, wall, CouponM], inCabinet: false);
        yield return maker.Flat("calibration strip", 0.100 * 0.020 * 0.004, [0.100, 0.020, 0.004], inCabinet: false);
    }

    private static string Numbered(string name, int i, int of) => of == 1 ? name : FormattableString.Invariant($"{name} {i} of {of}");

    private sealed class PartMaker(Printer? printer, double? density)
    {
        internal IEnumerable<PartFigures> Split(string name, double volume, double[] size)
        {
            var pieces = printer?.BuildHeightM is { } height ? Math.Max(1, (int)Math.Ceiling(size[2] / height - 1e-9)) : 1;
            return Enumerable.Range(1, pieces).Select(i => Part(Numbered(name, i, pieces), volume / pieces, [size[0], size[1], size[2] / pieces], true));
        }

        internal PartFigures Flat(string name, double volume, double[] size, bool inCabinet = true) => Part(name, volume, size, inCabinet);

        private PartFigures Part(string name, double volume, double[] size, bool inCabinet)
        {
            double? seconds = printer?.Flow is { } flow ? volume * 1e9 / flow + Math.Ceiling(size[2] / printer.LayerM - 1e-9) * printer.LayerPauseS : null;
            var turned = printer is null ? size : PrinterFit.Turned(size, printer);
            return new PartFigures(name, volume, volume * density, turned, PrinterFit.MarginM(turned, printer) is { } margin ? margin >= 0 : null, seconds, inCabinet);
        }
    }
}
