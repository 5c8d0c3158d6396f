using Stillwall.Cabinets;
using Stillwall.Parts.Drawing;
using Stillwall.Projects;

namespace Stillwall.Parts;

/// <summary>What has to be printed for a drawn cabinet, from the areas and lengths of its sections.</summary>
public static class PartList
{
    /// <summary>Size of the test bar that the last batch also fills, m: length, width, thickness.</summary>
    public static IReadOnlyList<double> TestBarM { get; } = [0.160, 0.040, 0.020];

    /// <summary>Wall of the mould and of the coupon's ends, m.</summary>
    internal const double MouldWallM = 0.002;

    /// <summary>Number of spacer gauges.</summary>
    internal const int Spacers = 4;

    /// <summary>Side of the wall coupon, m.</summary>
    internal const double CouponM = 0.120;

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
            return new PrintTotals(
                FilamentKg: null,
                FilamentToHaveKg: null,
                PrintSeconds: null,
                LongestPrintSeconds: null,
                HonestPrintSeconds: null,
                Spools: null,
                Pieces: null
            );
        }

        var mass = Sum(parts.Select(p => p.MassKg));
        var seconds = Sum(parts.Select(p => p.PrintSeconds));
        var toHave = mass * (1 + wasteRatio);
        return new PrintTotals(
            FilamentKg: mass,
            FilamentToHaveKg: toHave,
            PrintSeconds: seconds,
            LongestPrintSeconds: seconds is null ? null : parts.Max(p => p.PrintSeconds),
            HonestPrintSeconds: seconds is { } s ? [1.5 * s, 1.8 * s] : null,
            Spools: toHave is { } kg ? (int)Math.Ceiling(kg - 1e-9) : null,
            Pieces: parts.Count
        );
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
            var stepped = (s.Wall + BuildUp.TongueHeight) * 1e-3;
            return
            [
                .. maker.Of("sleeve", g.OuterSleeveM3(accents) + g.InnerSleeveM3, [width, height, g.OuterSleeveLengthM]),
                .. maker.Of("front plate", g.OuterPlateM3(g.Front) + g.InnerPlateM3(g.Front), [width, height, stepped]),
                .. maker.Of("rear plate", g.OuterPlateM3(g.Rear) + g.InnerPlateM3(g.Rear), [width, height, stepped]),
                .. Braces(g, maker),
            ];
        }

        var standing = 1e-3 * s.OuterSkin + g.CoreM;
        var inner = (s.InnerSkin + BuildUp.TongueHeight) * 1e-3;
        var (slotsWide, slotsHigh) = g.Sleeve.InnerSizeM;
        return
        [
            .. maker.Of("outer sleeve", g.OuterSleeveM3(accents), [width, height, g.OuterSleeveLengthM]),
            .. maker.Of("inner sleeve", g.InnerSleeveM3, [Math.Max(width - hidden, slotsWide), Math.Max(height - hidden, slotsHigh), g.InsideDepthM]),
            .. maker.Of("front outer plate", g.OuterPlateM3(g.Front), [width, height, standing]),
            .. maker.Of("front inner plate", g.InnerPlateM3(g.Front), [width - hidden, height - hidden, inner]),
            .. maker.Of("rear outer plate", g.OuterPlateM3(g.Rear), [width, height, standing]),
            .. maker.Of("rear inner plate", g.InnerPlateM3(g.Rear), [width - hidden, height - hidden, inner]),
            .. g.Rear.Layout.DryOuts.SelectMany(
                (o, i) => Disc(maker, Numbered("lid", i + 1, g.Rear.Layout.DryOuts.Count), (o.DiameterMm - 2 * BuildUp.LidGap) * 1e-3, s.OuterSkin * 1e-3)
            ),
            .. Braces(g, maker),
        ];
    }

    private static IEnumerable<PartFigures> Braces(CabinetGeometry g, PartMaker maker)
    {
        var play = g.Sizes.JointClearance * 1e-3;
        return Enumerable
            .Range(1, g.Sizes.Braces)
            .SelectMany(i =>
                maker.Of(Numbered("brace", i, g.Sizes.Braces), g.BraceM3, [g.InsideWidthM - play, g.InsideHeightM - play, BuildUp.BraceThickness * 1e-3])
            );
    }

    private static IEnumerable<PartFigures> Trims(CabinetGeometry g, Cabinet cabinet, DriverSheet? sheet, PartMaker maker)
    {
        if (sheet is { FlangeM: { } flange, CutoutM: { } cutout } && flange > cutout)
        {
            var thickness = BuildUp.TrimThickness * 1e-3;
            var (pocket, depth) = SmallParts.HeadPocket(g.Sizes.Bolt);
            var pockets = g.Sizes is { Bolt: > 0, BoltCircle: > 0 } s ? s.Bolts * Math.PI / 4 * pocket * pocket * depth * 1e-9 : 0;
            for (var i = 1; i <= g.Sizes.DriverCount; i++)
            {
                foreach (
                    var ring in maker.Of(
                        Numbered("trim ring", i, g.Sizes.DriverCount),
                        Math.PI / 4 * (flange * flange - cutout * cutout) * thickness - pockets,
                        [flange, flange, thickness]
                    )
                )
                {
                    yield return ring;
                }
            }
        }

        var rings = g.Sizes.OuterSkin > 0 ? cabinet.Accents?.Rings ?? 0 : 0;
        var feet = cabinet.Feet is null ? 0 : 4;
        var open =
            g.AccentGrooveM3 * BuildUp.AccentRingWidth / BuildUp.AccentWidth - g.Sizes.AccentGap * g.Sizes.OuterSkin / 2 * BuildUp.AccentRingWidth * 1e-9;
        foreach (
            var part in Enumerable
                .Range(1, rings)
                .SelectMany(i =>
                    maker.Of(Numbered("accent ring", i, rings), open, [g.Sizes.Width * 1e-3, g.Sizes.Height * 1e-3, BuildUp.AccentRingWidth * 1e-3])
                )
                .Concat(
                    Enumerable.Range(1, feet).SelectMany(i => Disc(maker, Numbered("foot", i, feet), BuildUp.FootDiameter * 1e-3, BuildUp.FootHeight * 1e-3))
                )
        )
        {
            yield return part;
        }
    }

    /// <summary>Space between the skins of the wall coupon, which the cast fills.</summary>
    /// <param name="geometry">The drawn cabinet, with a core.</param>
    /// <returns>Volume, m³.</returns>
    /// <remarks>
    /// Model: a square of 120 mm of the real wall, less its struts, slots and keys. Source: geometry; our choice of coupon. Accuracy: exact for the
    /// drawing.
    /// </remarks>
    public static double CouponCavityM3(CabinetGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return WallCoupon.Of(geometry.Sizes).CavityM3;
    }

    private static IEnumerable<PartFigures> Gauges(CabinetGeometry g, PartMaker maker)
    {
        if (g.Sizes.Core <= 0)
        {
            return [];
        }

        var (length, width, deep) = (TestBarM[0], TestBarM[1], TestBarM[2]);
        double[] tray = [length + 2 * MouldWallM, width + 2 * MouldWallM, deep + MouldWallM];
        double[] spacer =
        [
            (g.Sizes.Core - BuildUp.SpacerPlay + 2 * BuildUp.SpacerHead) * 1e-3,
            (BuildUp.SpacerLength + BuildUp.SpacerHead) * 1e-3,
            BuildUp.SpacerHeight * 1e-3,
        ];
        var spacerM3 = ((g.Sizes.Core - BuildUp.SpacerPlay) * BuildUp.SpacerLength * 1e-6 + spacer[0] * BuildUp.SpacerHead * 1e-3) * spacer[2];
        return
        [
            .. maker.Of("test-bar mould", tray[0] * tray[1] * tray[2] - length * width * deep, tray, false),
            .. maker.Of("wall coupon", WallCoupon.Of(g.Sizes).VolumeM3, [CouponM, g.Sizes.Wall * 1e-3, CouponM], false),
            .. maker.Of("calibration strip", GaugeDrawing.StripM3, GaugeDrawing.StripSizeM, false),
            .. maker.Of("calibration peg", GaugeDrawing.PegM3, GaugeDrawing.PegSizeM, false),
            .. Enumerable
                .Range(1, g.Sizes.Core >= BuildUp.LeastSpacerCore ? Spacers : 0)
                .SelectMany(i => maker.Of(Numbered("spacer gauge", i, Spacers), spacerM3, spacer, false)),
        ];
    }

    private static IEnumerable<PartFigures> Disc(PartMaker maker, string name, double diameter, double thickness) =>
        maker.Of(name, Math.PI / 4 * diameter * diameter * thickness, [diameter, diameter, thickness]);

    /// <summary>Least time to print a part, s; null without the printer's flow.</summary>
    internal static double? PrintSeconds(double volumeM3, double heightM, Printer? printer) =>
        printer?.Flow is { } flow ? volumeM3 * 1e9 / flow + Math.Ceiling(heightM / printer.LayerM - 1e-9) * printer.LayerPauseS : null;

    /// <summary>Name of one of several equal parts, or of one piece of a part: a part that has a number has numbered pieces.</summary>
    internal static string Numbered(string name, int i, int of) =>
        of == 1 ? name : FormattableString.Invariant($"{name} {(name.Contains(" of ", StringComparison.Ordinal) ? "piece " : "")}{i} of {of}");

    private sealed class PartMaker(Printer? printer, double? density)
    {
        // Pieces of a split part count as equal; a tooth reaches past the cut on one side or on both.
        internal IEnumerable<PartFigures> Of(string name, double volume, double[] size, bool inCabinet = true)
        {
            var (x, y, z) =
                printer is not null && PrinterFit.SpaceMm(printer) is { } space
                    ? PrinterFit.Pieces([size[0] * 1e3, size[1] * 1e3, size[2] * 1e3], space)
                    : (1, 1, 1);
            var count = x * y * z;
            double[] piece = [PrinterFit.PieceM(size[0], x), PrinterFit.PieceM(size[1], y), PrinterFit.PieceM(size[2], z)];
            return Enumerable.Range(1, count).Select(i => Part(Numbered(name, i, count), volume / count, piece, inCabinet));
        }

        private PartFigures Part(string name, double volume, double[] size, bool inCabinet)
        {
            var turned = printer is null ? size : PrinterFit.Turned(size, printer);
            return new PartFigures(
                Name: name,
                VolumeM3: volume,
                MassKg: volume * density,
                SizeM: turned,
                Fits: PrinterFit.Fits(turned, printer),
                PrintSeconds: PrintSeconds(volume, size[2], printer),
                InCabinet: inCabinet
            );
        }
    }
}
