using Stillwall.Projects;

namespace Stillwall.Parts;

/// <summary>Whether a part fits the printer, and by how much.</summary>
public static class PrinterFit
{
    /// <summary>What is left of the build space beside or above a part, edge margin kept on all four sides.</summary>
    /// <param name="sizeM">Size as printed: x, y, z, m.</param>
    /// <param name="printer">The printer; null where none is stated.</param>
    /// <returns>The least of the three distances, m, negative where the part does not fit; null where the build space is not stated.</returns>
    /// <exception cref="ArgumentNullException">No size.</exception>
    /// <remarks>Source: geometry; the brim lies within the edge margin.</remarks>
    public static double? MarginM(IReadOnlyList<double> sizeM, Printer? printer)
    {
        ArgumentNullException.ThrowIfNull(sizeM);
        return printer is { BuildWidthM: { } width, BuildDepthM: { } depth, BuildHeightM: { } height }
            ? Math.Min(height - sizeM[2], Math.Min(width - sizeM[0], depth - sizeM[1]) - 2 * printer.EdgeMarginM)
            : null;
    }

    /// <summary>A part turned by a right angle on the bed where it lies better that way.</summary>
    /// <param name="sizeM">Size as drawn: x, y, z, m.</param>
    /// <param name="printer">The printer.</param>
    /// <returns>The size as printed.</returns>
    /// <remarks>Source: geometry.</remarks>
    public static IReadOnlyList<double> Turned(IReadOnlyList<double> sizeM, Printer printer)
    {
        ArgumentNullException.ThrowIfNull(sizeM);
        IReadOnlyList<double> other = [sizeM[1], sizeM[0], sizeM[2]];
        return MarginM(other, printer) > MarginM(sizeM, printer) ? other : sizeM;
    }
}
