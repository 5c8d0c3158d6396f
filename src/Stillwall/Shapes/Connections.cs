using System.Collections.Immutable;

namespace Stillwall.Shapes;

/// <summary>One piece of a solid: everything that hangs together through faces.</summary>
/// <param name="Slabs">What the piece is made of, from the lowest up: heights in mm and region.</param>
internal sealed record SolidPiece(double VolumeM3, ImmutableArray<SolidLayer> Slabs);

/// <summary>Which parts of a solid, or of a space, hang together.</summary>
internal static class Connections
{
    /// <summary>Takes a solid apart into its pieces. A line or a point in common does not hold two pieces together.</summary>
    /// <param name="solid">The solid; or a space, to see which hollows open into one another.</param>
    /// <remarks>Source: our own construction. Accuracy: exact on the grid.</remarks>
    public static IReadOnlyList<SolidPiece> Pieces(Solid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        var layers = solid.Layers;
        var parts = layers.Select(Parts).ToList();
        var start = new int[parts.Count + 1];
        for (var i = 0; i < parts.Count; i++)
        {
            start[i + 1] = start[i] + parts[i].Count;
        }

        var groups = new Groups(start[^1]);
        for (var i = 1; i < parts.Count; i++)
        {
            if (layers[i].Bottom == layers[i - 1].Top)
            {
                Join(groups, parts[i - 1], start[i - 1], parts[i], start[i]);
            }
        }

        return
        [
            .. parts
                .SelectMany((list, i) => list.Select((part, j) => (Group: groups.Of(start[i] + j), Part: part)))
                .GroupBy(p => p.Group, p => p.Part)
                .Select(piece => new SolidPiece(piece.Sum(p => p.VolumeM3), [.. piece]))
                .OrderByDescending(p => p.VolumeM3),
        ];
    }

    private static void Join(Groups groups, IReadOnlyList<SolidLayer> below, int firstBelow, IReadOnlyList<SolidLayer> above, int firstAbove)
    {
        for (var a = 0; a < below.Count; a++)
        {
            for (var b = 0; b < above.Count; b++)
            {
                if (groups.Of(firstBelow + a) != groups.Of(firstAbove + b) && below[a].Region.Overlaps(above[b].Region))
                {
                    groups.Join(firstBelow + a, firstAbove + b);
                }
            }
        }
    }

    private static IReadOnlyList<SolidLayer> Parts(SolidLayer layer) =>
        layer.Region.PieceCount <= 1 ? [layer] : [.. layer.Region.Pieces().Select(p => new SolidLayer(layer.Bottom, layer.Top, p))];
}
