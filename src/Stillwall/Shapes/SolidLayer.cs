using static Stillwall.Shapes.Millimetres;

namespace Stillwall.Shapes;

/// <summary>A slab of a solid: what lies between two heights, its sides upright.</summary>
internal sealed class SolidLayer
{
    internal SolidLayer(int bottom, int top, Region region)
    {
        (Bottom, Top, Region) = (bottom, top, region);
        Edges = [.. region.Rings.SelectMany(ring => ring.Select((p, i) => new GridEdge(p, ring[(i + 1) % ring.Length])))];
    }

    /// <summary>Height of the lower face, mm.</summary>
    public double BottomMm => Bottom / MicrometresPerMillimetre;

    /// <summary>Height of the upper face, mm.</summary>
    public double TopMm => Top / MicrometresPerMillimetre;

    public Region Region { get; }

    public double VolumeM3 => (Top - Bottom) * MetresPerMicrometre * Region.AreaM2;

    internal int Bottom { get; }

    internal int Top { get; }

    internal IReadOnlyList<GridEdge> Edges { get; }
}
