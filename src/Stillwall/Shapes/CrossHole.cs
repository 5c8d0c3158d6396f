using Stillwall.Numerics;

namespace Stillwall.Shapes;

/// <summary>A hole whose axis lies level while the part prints: cut in steps of a layer, round up to 8 mm, with a roof of 45° above that.</summary>
/// <param name="XMm">Where the axis begins, across, mm.</param>
/// <param name="YMm">Where the axis begins, up in the plane, mm.</param>
/// <param name="AngleDeg">Direction of the axis in the plane, counter-clockwise from x, degrees.</param>
internal sealed record CrossHole(double XMm, double YMm, double ZMm, double AngleDeg, double LengthMm, double DiameterMm)
{
    /// <summary>Diameter up to which a round hole prints without support, mm (common practice, no source).</summary>
    public const double GreatestRound = 8;

    /// <summary>Whether the hole has a roof.</summary>
    public bool HasRoof => DiameterMm > GreatestRound;

    /// <summary>The hole as a solid, to be cut.</summary>
    /// <param name="layer">Height of a layer, mm, 0.01 to 10; steps lie on its multiples from z = 0, as the printer's do.</param>
    /// <returns>The steps; each is as wide as the hole is on average over its height, so that the volume is the hole's.</returns>
    public Solid ToSolid(double layer)
    {
        Require.Within(layer, 0.01, 10, nameof(layer), "mm");
        Require.Positive(LengthMm);
        Require.Positive(DiameterMm);
        var (low, high) = (ZMm - DiameterMm / 2, ZMm + (HasRoof ? DiameterMm / Math.Sqrt(2) : DiameterMm / 2));
        var solid = Solid.Empty;
        for (var i = (int)Math.Floor(low / layer); i * layer < high; i++)
        {
            var (from, to) = (Math.Max(low, i * layer), Math.Min(high, (i + 1) * layer));
            if (to - from > 0.0005)
            {
                solid = solid.Add(Strip((AreaBelow(to - ZMm) - AreaBelow(from - ZMm)) / (to - from)), from, to);
            }
        }

        return solid;
    }

    // Area of the half of the cross-section on one side of the axis' plane, below a height over the axis.
    private double AreaBelow(double height)
    {
        var r = DiameterMm / 2;
        var tangent = r / Math.Sqrt(2);
        var round = Math.Clamp(height, -r, HasRoof ? tangent : r);
        var area = (round * Math.Sqrt(Math.Max(0, r * r - round * round)) + r * r * Math.Asin(Math.Clamp(round / r, -1, 1))) / 2 + Math.PI * r * r / 4;
        if (!HasRoof || height <= tangent)
        {
            return area;
        }

        var left = Math.Max(0, 2 * tangent - height);
        return area + (tangent * tangent - left * left) / 2;
    }

    private Region Strip(double halfWidth)
    {
        var (c, s) = (Math.Cos(AngleDeg * Math.PI / 180), Math.Sin(AngleDeg * Math.PI / 180));
        var (ex, ey) = (XMm + LengthMm * c, YMm + LengthMm * s);
        return Region.Polygon([
            (XMm + halfWidth * s, YMm - halfWidth * c),
            (ex + halfWidth * s, ey - halfWidth * c),
            (ex - halfWidth * s, ey + halfWidth * c),
            (XMm - halfWidth * s, YMm + halfWidth * c),
        ]);
    }
}
