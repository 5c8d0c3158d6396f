using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>A round thing on a plate, in the cabinet's x and z.</summary>
/// <param name="X">Centre across, mm.</param>
/// <param name="Z">Centre up, mm.</param>
/// <param name="Diameter">Diameter, mm; 0 for none.</param>
public sealed record Circle(double X, double Z, double Diameter)
{
    /// <summary>Area, m².</summary>
    public double AreaM2 => Math.PI / 4 * Diameter * Diameter * 1e-6;

    /// <summary>The region within.</summary>
    /// <returns>The disc; empty for no diameter.</returns>
    public Region ToRegion() => Region.Disc(X, Z, Diameter);

    /// <summary>The circle with its edge further out.</summary>
    /// <param name="distance">Distance outwards, mm.</param>
    /// <returns>The greater circle; none stays none.</returns>
    public Circle Grown(double distance) => Diameter > 0 ? this with { Diameter = Diameter + 2 * distance } : this;

    /// <summary>Distance from edge to edge, mm; negative where they overlap.</summary>
    /// <param name="other">The other circle.</param>
    /// <returns>The distance.</returns>
    public double DistanceTo(Circle other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Math.Sqrt((X - other.X) * (X - other.X) + (Z - other.Z) * (Z - other.Z)) - (Diameter + other.Diameter) / 2;
    }

    /// <summary>Distance from the edge to a frame round it, mm; negative where it reaches past.</summary>
    /// <param name="plate">The frame.</param>
    /// <returns>The distance to its straight sides, or to the arc of a corner where the centre lies in one.</returns>
    public double DistanceTo(RoundedFrame plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        var (fromSide, fromEnd) = (Math.Min(X - plate.Left, plate.Right - X), Math.Min(Z - plate.Bottom, plate.Top - Z));
        var (intoX, intoZ) = (Math.Max(0, plate.Radius - fromSide), Math.Max(0, plate.Radius - fromEnd));
        var room = intoX > 0 && intoZ > 0 ? plate.Radius - Math.Sqrt(intoX * intoX + intoZ * intoZ) : Math.Min(fromSide, fromEnd);
        return room - Diameter / 2;
    }
}
