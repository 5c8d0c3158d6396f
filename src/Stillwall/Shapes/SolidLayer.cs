namespace Stillwall.Shapes;

/// <summary>A slab of a solid: what lies between two heights.</summary>
public sealed class SolidLayer
{
    private readonly Func<double, Region> regionAt;

    internal SolidLayer(int bottom, int top, Region region)
    {
        regionAt = _ => region;
        (Bottom, Top, Lower, Upper) = (bottom, top, region, region);
        LowerEdges = UpperEdges = EdgesOf(region);
    }

    internal SolidLayer(
        int bottom,
        int top,
        Region lower,
        Region upper,
        IReadOnlyList<GridEdge> lowerEdges,
        IReadOnlyList<GridEdge> upperEdges,
        Func<double, Region> regionAt
    )
    {
        this.regionAt = regionAt;
        (Bottom, Top, Lower, Upper, LowerEdges, UpperEdges) = (bottom, top, lower, upper, lowerEdges, upperEdges);
    }

    /// <summary>Height of the lower face, mm.</summary>
    public double BottomMm => Bottom / Grid.MicrometresPerMillimetre;

    /// <summary>Height of the upper face, mm.</summary>
    public double TopMm => Top / Grid.MicrometresPerMillimetre;

    /// <summary>The region at the lower face.</summary>
    public Region Lower { get; }

    /// <summary>The region at the upper face; the same one where the sides are upright.</summary>
    public Region Upper { get; }

    /// <summary>Whether the sides are not upright.</summary>
    public bool Tapered => !ReferenceEquals(LowerEdges, UpperEdges);

    /// <summary>Volume, m³: area times thickness, or the prismatoid's h/6·(A₀ + 4A + A₁) where sides are inclined.</summary>
    public double VolumeM3 => Tapered ? (Top - Bottom) * 1e-6 / 6 * (Lower.AreaM2 + 4 * MiddleAreaM2() + Upper.AreaM2) : (Top - Bottom) * 1e-6 * Lower.AreaM2;

    internal int Bottom { get; }

    internal int Top { get; }

    /// <summary>Edges at the lower face; each belongs to the one with the same index above.</summary>
    internal IReadOnlyList<GridEdge> LowerEdges { get; }

    internal IReadOnlyList<GridEdge> UpperEdges { get; }

    /// <summary>The region at a height, µm, within the slab.</summary>
    internal Region RegionAt(double height) => regionAt(height);

    private static GridEdge[] EdgesOf(Region region) =>
        [.. region.Rings.SelectMany(ring => ring.Select((p, i) => new GridEdge(p, ring[(i + 1) % ring.Length])))];

    private double MiddleAreaM2()
    {
        var eight = 0.0;
        for (var i = 0; i < LowerEdges.Count; i++)
        {
            var (l, u) = (LowerEdges[i], UpperEdges[i]);
            eight += ((double)l.From.X + u.From.X) * ((double)l.To.Y + u.To.Y) - ((double)l.To.X + u.To.X) * ((double)l.From.Y + u.From.Y);
        }

        return eight / 8 * 1e-12;
    }
}
