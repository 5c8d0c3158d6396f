using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Parts;

/// <summary>What has to be printed for a drawn cabinet, from the areas and lengths of its sections.</summary>
internal static class PartList
{
    /// <summary>What real printing takes of the floor, from and to.</summary>
    internal const double LeastTimes = 1.5,
        MostTimes = 1.8;

    /// <summary>Lists the parts in the order in which they are built in, then moulds and gauges.</summary>
    /// <param name="skinDensityKgM3">Density of the plastic, kg/m³; null where no skin is stated.</param>
    /// <returns>The parts; one that is larger than the build space comes in equal pieces.</returns>
    /// <remarks>
    /// Validity: parts whose sections do not change but by windows. Source: geometry; the time is common practice, no source. Accuracy: volumes exact to
    /// the 1 µm grid; times are a floor.
    /// </remarks>
    public static IReadOnlyList<PartFigures> Of(PartJob job, double? skinDensityKgM3)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. PartCatalogue.Of(job).SelectMany(part => Pieces(part, job.Printer, skinDensityKgM3))];
    }

    /// <summary>Adds the parts up.</summary>
    /// <param name="wasteRatio">Filament lost, as a ratio, zero or greater.</param>
    /// <returns>The totals; null where a part's figure is not known.</returns>
    /// <remarks>Source: common practice, no source (factor from memory).</remarks>
    public static PrintTotals Totals(IReadOnlyList<PartFigures> parts, double wasteRatio)
    {
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Count == 0)
        {
            return new PrintTotals();
        }

        var mass = Sum(parts.Select(p => p.MassKg));
        var seconds = Sum(parts.Select(p => p.PrintSeconds));
        var toHave = mass * (1 + wasteRatio);
        return new PrintTotals
        {
            FilamentKg = mass,
            FilamentToHaveKg = toHave,
            PrintSeconds = seconds,
            LongestPrintSeconds = seconds is null ? null : parts.Max(p => p.PrintSeconds),
            HonestPrintSeconds = seconds is { } s ? [LeastTimes * s, MostTimes * s] : null,
            Spools = toHave is { } kg ? (int)Math.Ceiling(kg - 1e-9) : null,
            Pieces = parts.Count,
        };
    }

    private static double? Sum(IEnumerable<double?> values) => values.Aggregate((double?)0, (sum, value) => sum + value);

    // Pieces of a split part count as equal; a tooth reaches past the cut on one side or on both.
    private static IEnumerable<PartFigures> Pieces(Part part, Printer? printer, double? density)
    {
        var (x, y, z) = printer is not null && PrinterFit.SpaceMm(printer) is { } space ? PrinterFit.Pieces(part.Draft.Size, space) : (1, 1, 1);
        var (count, size) = (x * y * z, part.Draft.Size);
        double[] drawn = [PrinterFit.PieceM(size.X.InMetres(), x), PrinterFit.PieceM(size.Y.InMetres(), y), PrinterFit.PieceM(size.Z.InMetres(), z)];
        var (volume, turned) = (part.Draft.VolumeM3 / count, printer is null ? drawn : PrinterFit.Turned(drawn, printer));
        return Enumerable
            .Range(1, count)
            .Select(piece => new PartFigures(
                Name: PartNames.Of(part, piece, count),
                VolumeM3: volume,
                MassKg: volume * density,
                SizeM: turned,
                Fits: PrinterFit.Fits(turned, printer),
                PrintSeconds: PrintSeconds(volume, drawn[2], printer),
                InCabinet: part.Draft.CentreMm is not null
            )
            {
                Kind = part.Kind,
                CentreMm = part.Draft.CentreMm,
            });
    }

    /// <summary>Least time to print a part, s; null without the printer's flow.</summary>
    /// <remarks>Source: common practice, no source.</remarks>
    internal static double? PrintSeconds(double volumeM3, double heightM, Printer? printer) =>
        printer?.Flow is { } flow ? volumeM3.InCubicMillimetres() / flow + Math.Ceiling(heightM / printer.LayerM - 1e-9) * printer.LayerPauseS : null;
}
