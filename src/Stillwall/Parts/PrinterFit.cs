using Stillwall.Projects;
using Stillwall.Shapes;

namespace Stillwall.Parts;

/// <summary>Whether a part fits the printer, and by how much.</summary>
internal static class PrinterFit
{
    /// <summary>What is left of the build space beside or above a part, edge margin kept on all four sides.</summary>
    /// <param name="sizeM">Size as printed: x, y, z, m.</param>
    /// <param name="printer">The printer; null where none is stated.</param>
    /// <returns>The least of the three distances, m, negative where the part does not fit; null where the build space is not stated.</returns>
    /// <remarks>Source: geometry; the brim lies within the edge margin.</remarks>
    public static double? MarginM(IReadOnlyList<double> sizeM, Printer? printer)
    {
        ArgumentNullException.ThrowIfNull(sizeM);
        return printer is { BuildWidthM: { } width, BuildDepthM: { } depth, BuildHeightM: { } height }
            ? Math.Min(height - sizeM[2], Math.Min(width - sizeM[0], depth - sizeM[1]) - 2 * printer.EdgeMarginM)
            : null;
    }

    // Rounding of a drawn circle outwards is no reason to split a part or to refuse it.
    private const double RoundingM = 0.05e-3;

    /// <summary>Whether a part fits the printer, the edge margin kept on all four sides.</summary>
    /// <param name="sizeM">Size as printed: x, y, z, m.</param>
    /// <param name="printer">The printer; null where none is stated.</param>
    /// <returns>True where it fits; null where the build space is not stated.</returns>
    /// <remarks>Source: geometry; 0.05 mm are allowed for circles drawn as polygons.</remarks>
    public static bool? Fits(IReadOnlyList<double> sizeM, Printer? printer) => MarginM(sizeM, printer) is { } margin ? margin >= -RoundingM : null;

    /// <summary>A part turned by a right angle on the bed where it lies better that way.</summary>
    /// <param name="sizeM">Size as drawn: x, y, z, m.</param>
    /// <remarks>Source: geometry.</remarks>
    public static IReadOnlyList<double> Turned(IReadOnlyList<double> sizeM, Printer printer)
    {
        ArgumentNullException.ThrowIfNull(sizeM);
        return LiesBetterTurned(sizeM, printer) ? Quarter(sizeM) : sizeM;
    }

    /// <summary>Whether a part has more room on the bed when turned by a right angle.</summary>
    internal static bool LiesBetterTurned(IReadOnlyList<double> sizeM, Printer printer) => MarginM(Quarter(sizeM), printer) > MarginM(sizeM, printer);

    private static IReadOnlyList<double> Quarter(IReadOnlyList<double> sizeM) => [sizeM[1], sizeM[0], sizeM[2]];

    /// <summary>How far a tooth of a keyed split reaches to either side of the cut, mm (our choice).</summary>
    internal const double Tooth = 4;

    /// <summary>What a part may take: x, y, z, mm; null where the build space is not stated.</summary>
    internal static (double X, double Y, double Z)? SpaceMm(Printer printer) =>
        printer is { BuildWidthM: { } width, BuildDepthM: { } depth, BuildHeightM: { } height }
            ? ((width - 2 * printer.EdgeMarginM).InMillimetres(), (depth - 2 * printer.EdgeMarginM).InMillimetres(), height.InMillimetres())
            : null;

    /// <summary>
    /// Into how many pieces a part must be split along x, y and z so that each fits with its teeth; a part that fits when turned is not split.
    /// </summary>
    internal static (int X, int Y, int Z) Pieces(PartSize size, (double X, double Y, double Z) space)
    {
        var z = Count(size.Z, space.Z);
        var (upright, turned) = ((X: Count(size.X, space.X), Y: Count(size.Y, space.Y)), (X: Count(size.X, space.Y), Y: Count(size.Y, space.X)));
        return turned.X * turned.Y < upright.X * upright.Y ? (turned.X, turned.Y, z) : (upright.X, upright.Y, z);
    }

    /// <summary>Length of the longest piece of a part that is split along it.</summary>
    /// <remarks>Source: geometry.</remarks>
    internal static double PieceM(double wholeM, int count) =>
        wholeM / count
        + (
            count == 1 ? 0
            : count == 2 ? Tooth
            : 2 * Tooth
        ).InMetres();

    private static int Count(double size, double space)
    {
        var n = 1;
        while (PieceM(size.InMetres(), n).InMillimetres() > space + RoundingM.InMillimetres() && n < MostPieces)
        {
            n++;
        }

        return n;
    }

    private const int MostPieces = 20;
}
