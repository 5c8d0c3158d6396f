using Stillwall.Shapes;

namespace Stillwall.Parts.Drawing;

/// <summary>Parts in their places, as stacks along the depth: across is the cabinet's x, up its z, height of a slab its y.</summary>
internal static class InCabinet
{
    /// <summary>A part in its place.</summary>
    /// <returns>Its slabs along the depth, mm; null for one that has no place or does not lie along the depth.</returns>
    /// <remarks>Validity: parts printed along the depth, front or rear end down. Source: geometry. Accuracy: exact on the 1 µm grid.</remarks>
    public static Solid? Of(DrawnPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.Place is not { } place)
        {
            return null;
        }

        var origin = place.Apply(new MeshPoint(0, 0, 0));
        var (x, y, z) = (place.Apply(new MeshPoint(1, 0, 0)), place.Apply(new MeshPoint(0, 1, 0)), place.Apply(new MeshPoint(0, 0, 1)));
        var (right, up, deep) = (x.X - origin.X, y.Z - origin.Z, z.Y - origin.Y);
        if (Math.Abs(right) != 1 || up != 1 || Math.Abs(deep) != 1)
        {
            return null;
        }

        var (left, bottom, front) = (origin.X.OffGrid(), origin.Z.OffGrid(), origin.Y.OffGrid());
        return part.Solid.Layers.Aggregate(
            Solid.Empty,
            (solid, slab) =>
            {
                var region = (right == 1 ? slab.Region : slab.Region.Mirrored(0)).Moved(left, bottom);
                var (a, b) = (front + deep * slab.BottomMm, front + deep * slab.TopMm);
                return solid.Add(region, Math.Min(a, b), Math.Max(a, b));
            }
        );
    }
}
