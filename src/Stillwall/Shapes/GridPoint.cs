namespace Stillwall.Shapes;

/// <summary>A point of the plane on the grid of 1 µm. Ordered from left to right, then upwards.</summary>
internal readonly record struct GridPoint(int X, int Y) : IComparable<GridPoint>
{
    /// <summary>A number that orders as the point does.</summary>
    internal long Key => ((long)X << 32) + (Y - (long)int.MinValue);

    public bool Equals(GridPoint other) => X == other.X && Y == other.Y;

    public override int GetHashCode() => (X * 73856093) ^ (Y * 19349663);

    public int CompareTo(GridPoint other) => X != other.X ? X.CompareTo(other.X) : Y.CompareTo(other.Y);

    /// <summary>The point that a number stands for.</summary>
    internal static GridPoint Of(long key) => new((int)(key >> 32), (int)((key & uint.MaxValue) + int.MinValue));

    /// <summary>
    /// Twice the area of the triangle; positive where the third point lies left of the way from the first to the second. Exact for coordinates below
    /// 2³⁰.
    /// </summary>
    internal static long Turn(GridPoint a, GridPoint b, GridPoint c) => (long)(b.X - a.X) * (c.Y - a.Y) - (long)(b.Y - a.Y) * (c.X - a.X);
}

/// <summary>An edge of a region, run so that the region lies at its left.</summary>
internal readonly record struct GridEdge(GridPoint From, GridPoint To)
{
    public bool Equals(GridEdge other) => From == other.From && To == other.To;

    public override int GetHashCode() => From.GetHashCode() * 31 + To.GetHashCode();
}
