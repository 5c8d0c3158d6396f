using Stillwall.Numerics;

namespace Stillwall.Cabinets;

/// <summary>How long a port is printed for it to act as long as it should.</summary>
public static class PortSize
{
    /// <summary>End correction of a tube that opens in a large wall, in radii: 8/(3π).</summary>
    public const double FlangedEndRatio = 0.8488;

    /// <summary>End correction of a tube that ends in the open, in radii (Levine and Schwinger 1948).</summary>
    public const double FreeEndRatio = 0.6133;

    /// <summary>Length to print of a port with one end in the front and the other free in the box.</summary>
    /// <param name="acousticLengthM">Acoustic length, end corrections included, m, above 0.</param>
    /// <param name="areaM2">Area of one port, m², above 0.</param>
    /// <returns>Length, m; null where the end corrections alone are longer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: length − (0.8488 + 0.6133)·radius, the radius of a circle of equal area. Validity: ends more than a diameter from any wall.
    /// Source: 8/(3π) after Rayleigh 1896 (from memory) and Levine and Schwinger 1948 (from memory).
    /// Accuracy: a few per cent of the length; near walls add to it.
    /// </remarks>
    public static double? PrintLengthM(double acousticLengthM, double areaM2)
    {
        Require.Positive(acousticLengthM);
        Require.Positive(areaM2);
        var length = acousticLengthM - ((FlangedEndRatio + FreeEndRatio) * Math.Sqrt(areaM2 / Math.PI));
        return length > 0 ? length : null;
    }
}
