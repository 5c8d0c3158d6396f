using System.Collections.Immutable;

namespace Stillwall.Shapes;

/// <summary>One piece of a solid: everything that hangs together through faces.</summary>
/// <param name="VolumeM3">Volume, m³.</param>
/// <param name="Slabs">What the piece is made of, from the lowest up: heights in mm and region.</param>
public sealed record SolidPiece(double VolumeM3, ImmutableArray<SolidLayer> Slabs)
{
    /// <summary>Whether a point lies in the piece or on its border.</summary>
    /// <param name="x">Across, mm.</param>
    /// <param name="y">Up in the plane, mm.</param>
    /// <param name="z">Height, mm.</param>
    /// <returns>True within and on the border.</returns>
    public bool Contains(double x, double y, double z) =>
        Slabs.Any(s => z >= s.BottomMm && z <= s.TopMm && s.RegionAt(z * Grid.MicrometresPerMillimetre).Contains(x, y));

    /// <summary>The piece as a solid; inclined sides in steps of 0.1 mm.</summary>
    /// <returns>The solid.</returns>
    public Solid ToSolid() => Slabs.SelectMany(LayerDrawing.Upright).Aggregate(Solid.Empty, (solid, s) => solid.Add(s.Lower, s.BottomMm, s.TopMm));
}

/// <summary>Which parts of a solid, or of a space, hang together.</summary>
public static class Connections
{
    /// <summary>Takes a solid apart into its pieces. A line or a point in common does not hold two pieces together.</summary>
    /// <param name="solid">The solid; or a space, to see which hollows open into one another.</param>
    /// <returns>The pieces, largest first.</returns>
    /// <remarks>
    /// Model: flood fill through the slabs; pieces of neighbouring slabs hang together where their regions overlap. Validity: any solid.
    /// Source: our own construction. Accuracy: exact on the grid.
    /// </remarks>
    public static IReadOnlyList<SolidPiece> Pieces(Solid solid)
    {
        ArgumentNullException.ThrowIfNull(solid);
        // A slab with inclined sides is taken in steps where it is in several pieces.
        var layers = solid.Layers.SelectMany(l => l.Tapered && (l.Lower.PieceCount > 1 || l.Upper.PieceCount > 1) ? LayerDrawing.Upright(l) : [l]).ToList();
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

    /// <summary>The part of a space that an opening leads to.</summary>
    /// <param name="space">The space.</param>
    /// <param name="x">A point in the opening: across, mm.</param>
    /// <param name="y">A point in the opening: up in the plane, mm.</param>
    /// <param name="z">A point in the opening: height, mm.</param>
    /// <returns>What can be reached from there; null where the point is not in the space.</returns>
    /// <remarks>Model: flood fill through the slabs. Validity: any space. Source: our own construction. Accuracy: exact on the grid.</remarks>
    public static SolidPiece? Reached(Solid space, double x, double y, double z) => Pieces(space).FirstOrDefault(p => p.Contains(x, y, z));

    private static void Join(Groups groups, IReadOnlyList<SolidLayer> below, int firstBelow, IReadOnlyList<SolidLayer> above, int firstAbove)
    {
        for (var a = 0; a < below.Count; a++)
        {
            for (var b = 0; b < above.Count; b++)
            {
                if (groups.Of(firstBelow + a) != groups.Of(firstAbove + b) && below[a].Upper.Overlaps(above[b].Lower))
                {
                    groups.Join(firstBelow + a, firstAbove + b);
                }
            }
        }
    }

    private static IReadOnlyList<SolidLayer> Parts(SolidLayer layer) =>
        layer.Lower.PieceCount <= 1 ? [layer] : [.. layer.Lower.Pieces().Select(p => new SolidLayer(layer.Bottom, layer.Top, p))];
}
