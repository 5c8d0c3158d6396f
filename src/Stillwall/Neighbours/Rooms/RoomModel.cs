using System.Numerics;
using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Neighbours.Rooms;

/// <summary>Sound pressure of a small source in a rigid rectangular room: at the seat, and its mean over the room.</summary>
/// <remarks>The wave number is k = (ω − jδ)/c with δ = ln 1000/T60 for every mode but the uniform one, which decays in a time of its own.</remarks>
public sealed class RoomModel
{
    /// <summary>Highest frequency that the seat is computed for, Hz.</summary>
    public const double HighestHz = 400;

    /// <summary>Highest frequency that the mean of the room is computed for, Hz.</summary>
    public const double HighestMeanHz = 250;

    private readonly SeatSum seat;
    private readonly Lazy<MeanSum> mean;

    private RoomModel(RoomGeometry geometry, Air air)
    {
        Geometry = geometry;
        Air = air;
        seat = new SeatSum(geometry, 2 * Math.PI * HighestHz / air.SpeedOfSoundMS);

        // Only when asked for: a map of seats needs none.
        mean = new Lazy<MeanSum>(() => new MeanSum(geometry, 2 * Math.PI * HighestMeanHz / air.SpeedOfSoundMS));
    }

    /// <summary>The room, its source and its seat.</summary>
    public RoomGeometry Geometry { get; }

    /// <summary>The air in it.</summary>
    public Air Air { get; }

    /// <summary>Lowest mode after the uniform one, Hz; below it a diffuse field has no basis.</summary>
    public double LowestModeHz => Air.SpeedOfSoundMS / (2 * Geometry.SizesM.Max());

    /// <summary>Prepares a room.</summary>
    /// <param name="geometry">Sizes 0.1 to 200 m, decay times 0.01 to 1000 s, both points inside.</param>
    /// <param name="air">The air.</param>
    /// <returns>The model.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size, time or point outside its range.</exception>
    /// <remarks>
    /// Model: sum over all modes cos·cos·cos of a rigid rectangle. Validity: walls much stiffer than air, one decay time for all modes; a real room's
    /// walls give way, mostly below 60 Hz.
    /// Source: Kuttruff 2000, chapter 3. Accuracy: 0.01 dB of the Green's function in waveguide form.
    /// </remarks>
    public static RoomModel Of(RoomGeometry geometry, Air air)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(air);
        geometry.Check();
        return new RoomModel(geometry, air);
    }

    /// <summary>Frequency of a mode.</summary>
    /// <param name="alongX">Half waves along the width, 0 and up.</param>
    /// <param name="alongY">Half waves along the length, 0 and up.</param>
    /// <param name="alongZ">Half waves along the height, 0 and up.</param>
    /// <returns>Frequency, Hz.</returns>
    public double ModeHz(int alongX, int alongY, int alongZ)
    {
        var (x, y, z) = (alongX / Geometry.WidthM, alongY / Geometry.LengthM, alongZ / Geometry.HeightM);
        return Air.SpeedOfSoundMS / 2 * Math.Sqrt((x * x) + (y * y) + (z * z));
    }

    /// <summary>Complex pressure at the seat for a volume velocity at the source.</summary>
    /// <param name="frequencyHz">Frequency, 0.1 to 400 Hz.</param>
    /// <param name="volumeVelocityM3S">Volume velocity outward, m³/s rms.</param>
    /// <returns>Pressure, Pa rms, phase against the volume velocity's reference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency outside its range.</exception>
    public Complex SeatPressurePa(double frequencyHz, Complex volumeVelocityM3S)
    {
        var (k, k0) = WaveNumbers(frequencyHz, HighestHz);
        var uniform = (1 / (k * k)) - (1 / (k0 * k0));
        return Complex.ImaginaryOne * 2 * Math.PI * frequencyHz * Air.DensityKgM3 * volumeVelocityM3S * (seat.At(k * k) + (uniform / Geometry.VolumeM3));
    }

    /// <summary>Root of the mean, over the whole room, of the squared pressure for a volume velocity at the source.</summary>
    /// <param name="frequencyHz">Frequency, 0.1 to 250 Hz.</param>
    /// <param name="volumeVelocityM3S">Magnitude of the volume velocity, m³/s rms.</param>
    /// <returns>Pressure, Pa rms.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A frequency outside its range.</exception>
    public double MeanPressurePa(double frequencyHz, double volumeVelocityM3S)
    {
        Require.NotNegative(volumeVelocityM3S);
        var (k, k0) = WaveNumbers(frequencyHz, HighestMeanHz);
        var uniform = 1 / (k0 * k0 * Complex.Conjugate(k0 * k0)).Real;
        return 2 * Math.PI * frequencyHz * Air.DensityKgM3 * volumeVelocityM3S / Geometry.VolumeM3 * Math.Sqrt(mean.Value.At(k) + uniform);
    }

    private (Complex K, Complex Uniform) WaveNumbers(double frequencyHz, double highestHz)
    {
        Require.Within(frequencyHz, 0.1, highestHz, nameof(frequencyHz), "Hz");
        var omega = 2 * Math.PI * frequencyHz;
        return (
            new Complex(omega, -Math.Log(1000) / Geometry.DecayTimeS) / Air.SpeedOfSoundMS,
            new Complex(omega, -Math.Log(1000) / Geometry.PressureDecayTimeS) / Air.SpeedOfSoundMS
        );
    }
}
