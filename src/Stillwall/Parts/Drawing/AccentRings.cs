using Stillwall.Cabinets;
using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>The accent rings and their grooves in the outer sleeve.</summary>
internal static class AccentRings
{
    /// <summary>Where the grooves begin, from the front end of the outer sleeve, mm: each distance is the one before it times the stated ratio.</summary>
    internal static IReadOnlyList<double> Places(PartDrawingJob job)
    {
        if (job.Cabinet.Accents is not { Rings: > 0 } accents || job.Sizes.OuterSkin <= 0)
        {
            return [];
        }

        var free = job.Geometry.OuterSleeveLengthM * 1e3 - accents.Rings * BuildUp.AccentWidth;
        var distances = Enumerable.Range(0, accents.Rings + 1).Select(i => Math.Pow(accents.Ratio, i)).ToList();
        var unit = free / distances.Sum();
        return [.. Enumerable.Range(0, accents.Rings).Select(i => unit * distances.Take(i + 1).Sum() + i * BuildUp.AccentWidth)];
    }

    /// <summary>
    /// A ring, open in the middle of its lower side so that it springs into its groove; one that has to be split for the printer needs no gap.
    /// </summary>
    internal static Solid Draw(CabinetSizes sizes, Printer? printer)
    {
        var ring = SleeveDrawing.Ring(sizes, 0, sizes.OuterSkin / 2);
        var gap = Region.RoundedRectangle((sizes.Width - sizes.AccentGap) / 2, -1, (sizes.Width + sizes.AccentGap) / 2, sizes.OuterSkin, 0);
        var isSplit =
            printer is not null
            && PrinterFit.SpaceMm(printer) is { } space
            && PrinterFit.Pieces([sizes.Width, sizes.Height, BuildUp.AccentRingWidth], space) != (1, 1, 1);
        return Solid.Empty.Add(isSplit ? ring : ring.Cut(gap), 0, BuildUp.AccentRingWidth);
    }
}
