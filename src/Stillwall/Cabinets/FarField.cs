using System.Numerics;
using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Cabinets;

/// <summary>Sound of a small source in the open.</summary>
public static class FarField
{
    /// <summary>Pressure of a small source on a large hard wall.</summary>
    /// <param name="volumeVelocityM3S">Outward volume velocity, m³/s rms.</param>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <param name="distanceM">Distance, m, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>Pressure, Pa rms, without travel time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: p = jωρU/(2πr). Validity: wavelength long against the source, distance long against its size.
    /// Source: simple source in an infinite baffle, Beranek 1954, 4 (from memory). Accuracy: exact in the limit of a small source.
    /// </remarks>
    public static Complex HalfSpacePressurePa(Complex volumeVelocityM3S, double frequencyHz, double distanceM, Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(frequencyHz);
        Require.Positive(distanceM);
        return new Complex(0, frequencyHz * air.DensityKgM3 / distanceM) * volumeVelocityM3S;
    }

    /// <summary>Level of a pressure.</summary>
    /// <param name="pressurePaRms">Pressure, Pa rms, above 0.</param>
    /// <returns>Level, dB re 20 µPa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is not positive.</exception>
    /// <remarks>
    /// Model: 20 lg(p/20 µPa). Validity: any. Source: IEC 61672-1. Accuracy: exact by definition.
    /// </remarks>
    public static double LevelDb(double pressurePaRms)
    {
        Require.Positive(pressurePaRms);
        return 20 * Math.Log10(pressurePaRms / Air.ReferencePressurePa);
    }
}
