using Stillwall.Shapes;

namespace Stillwall.Cabinets;

/// <summary>A round thing on a plate, in the cabinet's x and z.</summary>
/// <param name="DiameterMm">DiameterMm, mm; 0 for none.</param>
internal sealed record Circle(double XMm, double ZMm, double DiameterMm)
{
    public double AreaM2 => (Math.PI / 4 * DiameterMm * DiameterMm).InSquareMetres();

    /// <summary>The region within.</summary>
    /// <returns>The disc; empty for no diameter.</returns>
    public Region ToRegion() => Region.Disc(XMm, ZMm, DiameterMm);

    /// <summary>The circle with its edge further out.</summary>
    /// <returns>The greater circle; none stays none.</returns>
    public Circle Grown(double distance) => DiameterMm > 0 ? this with { DiameterMm = DiameterMm + 2 * distance } : this;

    /// <summary>Distance from edge to edge, mm; negative where they overlap.</summary>
    public double DistanceTo(Circle other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Math.Sqrt((XMm - other.XMm) * (XMm - other.XMm) + (ZMm - other.ZMm) * (ZMm - other.ZMm)) - (DiameterMm + other.DiameterMm) / 2;
    }

    /// <summary>Distance from the edge to a frame round it, mm; negative where it reaches past.</summary>
    /// <returns>The distance to its straight sides, or to the arc of a corner where the centre lies in one.</returns>
    public double DistanceTo(RoundedFrame plate)
    {
        ArgumentNullException.ThrowIfNull(plate);
        var (fromSide, fromEnd) = (Math.Min(XMm - plate.Left, plate.Right - XMm), Math.Min(ZMm - plate.Bottom, plate.Top - ZMm));
        var (intoX, intoZ) = (Math.Max(0, plate.Radius - fromSide), Math.Max(0, plate.Radius - fromEnd));
        var room = intoX > 0 && intoZ > 0 ? plate.Radius - Math.Sqrt(intoX * intoX + intoZ * intoZ) : Math.Min(fromSide, fromEnd);
        return room - DiameterMm / 2;
    }
}
