using Stillwall.Cabinets;

namespace Stillwall.Parts.Drawing;

/// <summary>Draws everything that has to be printed, in the order of the catalogue.</summary>
internal static class PartDrawings
{
    /// <summary>Draws the parts, those that are too large for the printer in keyed pieces.</summary>
    /// <returns>
    /// The parts as they lie on the bed, their names cut into them where there is room, and where they go; none of which an opening leaves nothing.
    /// </returns>
    /// <remarks>
    /// Validity: cabinets that have been drawn. Source: our choice of build-up, see <see cref="BuildUp"/>. Accuracy: exact to the 1 µm grid; slopes in
    /// steps of two layers.
    /// </remarks>
    public static IReadOnlyList<DrawnPart> Of(PartJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. PartCatalogue.Of(job).SelectMany(part => Pieces.Of(part, job)).Where(drawn => drawn.Solid.FootMm is not null)];
    }
}
