using Stillwall.Numerics;

namespace Stillwall.Shapes;

/// <summary>Flat shapes that cabinets are drawn from, beside the rectangle, the disc and the polygon of <see cref="Region"/>. Sizes in millimetres.</summary>
public static class Outlines
{
    private const double TangentDegrees = 45;

    /// <summary>A flat ring.</summary>
    /// <param name="x">Centre across, mm.</param>
    /// <param name="y">Centre up, mm.</param>
    /// <param name="outer">Outer diameter, mm, zero or greater.</param>
    /// <param name="inner">Inner diameter, mm, zero or greater.</param>
    /// <returns>The ring; empty where the inner diameter is not the smaller.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative or endless diameter.</exception>
    public static Region Ring(double x, double y, double outer, double inner) =>
        inner >= outer ? Region.Empty : Region.Disc(x, y, outer).Cut(Region.Disc(x, y, inner));

    /// <summary>A teardrop: a disc with a roof of 45° that prints without support where the hole's axis lies level.</summary>
    /// <param name="x">Centre of the disc across, mm.</param>
    /// <param name="y">Centre of the disc up, mm.</param>
    /// <param name="diameter">Diameter, mm, zero or greater.</param>
    /// <returns>The region; its tip lies √2 radii above the centre.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative or endless diameter.</exception>
    public static Region Teardrop(double x, double y, double diameter)
    {
        Require.NotNegative(diameter);
        var side = diameter / 2 * Math.Cos(TangentDegrees * Math.PI / 180);
        return diameter <= 0.01
            ? Region.Empty
            : Region.Disc(x, y, diameter).Join(Region.Polygon([(x + side, y + side), (x, y + 2 * side), (x - side, y + side), (x, y)]));
    }

    /// <summary>A slot with round ends.</summary>
    /// <param name="fromX">Centre of one end across, mm.</param>
    /// <param name="fromY">Centre of one end up, mm.</param>
    /// <param name="toX">Centre of the other end across, mm.</param>
    /// <param name="toY">Centre of the other end up, mm.</param>
    /// <param name="width">Width, mm, zero or greater.</param>
    /// <returns>The region.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative or endless width.</exception>
    public static Region Slot(double fromX, double fromY, double toX, double toY, double width)
    {
        Require.NotNegative(width);
        var length = Math.Sqrt((toX - fromX) * (toX - fromX) + (toY - fromY) * (toY - fromY));
        var ends = Region.JoinAll([Region.Disc(fromX, fromY, width), Region.Disc(toX, toY, width)]);
        if (length < 0.001)
        {
            return ends;
        }

        var (nx, ny) = (-(toY - fromY) / length * width / 2, (toX - fromX) / length * width / 2);
        return ends.Join(Region.Polygon([(fromX - nx, fromY - ny), (toX - nx, toY - ny), (toX + nx, toY + ny), (fromX + nx, fromY + ny)]));
    }
}
