using System.Numerics;
using Stillwall.Numerics;

namespace Stillwall.Walls;

/// <summary>How one panel answers the pressure in the box.</summary>
/// <param name="VolumePerPressureM3PerPa">Volume that it gives way under a static pressure: area times mean deflection per pascal, m³/Pa.</param>
/// <param name="FirstModeHz">First resonance, Hz.</param>
/// <param name="LossFactor">Loss factor.</param>
/// <param name="VolumePerConeM3PerPa">
/// Volume that it gives way under that pressure on the cone alone, which pushes on the rim of the driver's opening, m³/Pa; 0 where no driver hangs in
/// it.
/// </param>
public sealed record WallMotion(double VolumePerPressureM3PerPa, double FirstModeHz, double LossFactor, double VolumePerConeM3PerPa = 0)
{
    /// <summary>The motion of a panel.</summary>
    /// <param name="panel">Its frequencies and deflections.</param>
    /// <param name="areaM2">Clear area, m².</param>
    /// <param name="lossFactor">Loss factor.</param>
    /// <returns>The motion.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Area or loss factor is not positive.</exception>
    /// <remarks>Model: area × mean deflection, first mode. Validity: small deflections. Source: elementary. Accuracy: as the panel.</remarks>
    public static WallMotion Of(PanelCase panel, double areaM2, double lossFactor)
    {
        ArgumentNullException.ThrowIfNull(panel);
        Require.Positive(areaM2);
        Require.Positive(lossFactor);
        return new WallMotion(areaM2 * panel.MeanDeflectionMPerPa, panel.ModesHz[0], lossFactor);
    }
}

/// <summary>Sound of the walls where it is worst.</summary>
/// <param name="WallToConeDb">Volume velocity of the walls over that of the cone, dB.</param>
/// <param name="FrequencyHz">Where that is, Hz.</param>
public sealed record WorstWallSound(double WallToConeDb, double FrequencyHz);

/// <summary>What the walls sound beside the cone: the box pressure drives both.</summary>
public static class WallSound
{
    /// <summary>Lowest frequency that is looked at, Hz.</summary>
    public const double LowestHz = 20;

    private const int Steps = 400;

    /// <summary>Volume velocity of one wall over that of the cone at a frequency.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="boxComplianceM3PerPa">Compliance of the enclosed air, m³/Pa, above 0.</param>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <returns>Level difference, dB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not positive.</exception>
    /// <remarks>
    /// Model: the cone's volume velocity U makes the pressure U/(ωC) in the box; the wall gives way by its static volume times 1/|1 − (f/f₁)² + jη|,
    /// so the ratio is that over C.
    /// Validity: up to a little over the first mode; the box pressure is even, the walls' own compliance is small against the air's. Source: our
    /// choice of a one-mode model; hysteretic loss after Cremer and Heckl 1988 (from memory). Accuracy: static part as good as the deflection; ± 3 dB
    /// near the resonance, from the loss factor.
    /// </remarks>
    public static double LevelDb(WallMotion wall, double boxComplianceM3PerPa, double frequencyHz)
    {
        ArgumentNullException.ThrowIfNull(wall);
        return TotalDb([wall], boxComplianceM3PerPa, frequencyHz);
    }

    /// <summary>Volume velocity of all walls together over that of the cone at a frequency.</summary>
    /// <param name="walls">The walls, at least one.</param>
    /// <param name="boxComplianceM3PerPa">Compliance of the enclosed air, m³/Pa, above 0.</param>
    /// <param name="frequencyHz">Frequency, Hz, above 0.</param>
    /// <param name="coneOnAirHz">Resonance of the cone's mass on the enclosed air, Hz, above 0; without it the cone's reaction is left out.</param>
    /// <returns>Level difference, dB.</returns>
    /// <exception cref="ArgumentException">No walls, or a value that is not positive.</exception>
    /// <remarks>
    /// Model: sum of the walls' motions with their phases. The cone leans on its frame with p·S less what its own mass takes to be moved: p·S·[1 −
    /// (f/f₀)²], f₀ of the cone's mass on the enclosed air (balance of forces on the cone). Validity: as <see cref="LevelDb"/>, all walls much
    /// smaller than a wavelength. Source: as <see cref="LevelDb"/>. Accuracy: as <see cref="LevelDb"/>.
    /// </remarks>
    public static double TotalDb(IReadOnlyList<WallMotion> walls, double boxComplianceM3PerPa, double frequencyHz, double? coneOnAirHz = null)
    {
        Check(walls);
        Require.Positive(boxComplianceM3PerPa);
        Require.Positive(frequencyHz);
        Require.Positive(coneOnAirHz ?? 1, nameof(coneOnAirHz));
        var reaction = coneOnAirHz is { } own ? frequencyHz / own * (frequencyHz / own) : 0;
        var volume = Complex.Zero;
        foreach (var wall in walls)
        {
            var ratio = frequencyHz / wall.FirstModeHz;
            volume += (wall.VolumePerPressureM3PerPa - reaction * wall.VolumePerConeM3PerPa) / new Complex(1 - ratio * ratio, wall.LossFactor);
        }

        return 20 * Math.Log10(Complex.Abs(volume) / boxComplianceM3PerPa);
    }

    /// <summary>The worst of the walls' sound from 20 Hz to twice the crossover.</summary>
    /// <param name="walls">One wall, or all walls together; at least one.</param>
    /// <param name="boxComplianceM3PerPa">Compliance of the enclosed air, m³/Pa, above 0.</param>
    /// <param name="crossoverHz">Crossover, Hz, at least 10.</param>
    /// <param name="coneOnAirHz">Resonance of the cone's mass on the enclosed air, Hz; without it the cone's reaction is left out.</param>
    /// <returns>The worst level and its frequency.</returns>
    /// <exception cref="ArgumentException">No walls, or a value out of range.</exception>
    /// <remarks>
    /// Model: the greatest of 401 frequencies spaced by equal ratios and of every resonance within the range. Validity: as <see cref="TotalDb"/>.
    /// Source: as <see cref="LevelDb"/>; the range is our choice.
    /// Accuracy: for one wall exact, the peak being at the resonance or at an end of the range; for several 0.1 dB below a loss factor of 0.01.
    /// </remarks>
    public static WorstWallSound Worst(IReadOnlyList<WallMotion> walls, double boxComplianceM3PerPa, double crossoverHz, double? coneOnAirHz = null)
    {
        Check(walls);
        Require.Within(crossoverHz, LowestHz / 2, 20000, nameof(crossoverHz), "Hz");
        var highest = 2 * crossoverHz;

        // One wall's peak lies at its resonance or at an end of the range.
        var looked =
            walls.Count == 1
                ? [LowestHz, highest]
                : Enumerable.Range(0, Steps + 1).Select(k => k == Steps ? highest : LowestHz * Math.Pow(highest / LowestHz, k / (double)Steps));
        var peaks = walls.Select(w => w.FirstModeHz).Where(f => f > LowestHz && f < highest);
        return looked.Concat(peaks).Select(f => new WorstWallSound(TotalDb(walls, boxComplianceM3PerPa, f, coneOnAirHz), f)).MaxBy(w => w.WallToConeDb)!;
    }

    /// <summary>Resonance of the cone's mass on the enclosed air alone.</summary>
    /// <param name="movingKg">Moving mass, kg, above 0.</param>
    /// <param name="coneM2">Area of the cone, m², above 0.</param>
    /// <param name="boxComplianceM3PerPa">Compliance of the enclosed air, m³/Pa, above 0.</param>
    /// <returns>Frequency, Hz.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value that is not positive.</exception>
    /// <remarks>Model: f₀ = S/(2π√(MC)). Validity: below the first air mode. Source: elementary, a mass on a spring. Accuracy: exact for its model.</remarks>
    public static double ConeOnAirHz(double movingKg, double coneM2, double boxComplianceM3PerPa)
    {
        Require.Positive(movingKg);
        Require.Positive(coneM2);
        Require.Positive(boxComplianceM3PerPa);
        return coneM2 / Math.Sqrt(movingKg * boxComplianceM3PerPa) / (2 * Math.PI);
    }

    private static void Check(IReadOnlyList<WallMotion> walls)
    {
        ArgumentNullException.ThrowIfNull(walls);
        if (walls.Count == 0)
        {
            throw new ArgumentException("accepted: at least one wall", nameof(walls));
        }

        foreach (var wall in walls)
        {
            Require.Positive(wall.VolumePerPressureM3PerPa);
            Require.Positive(wall.FirstModeHz);
            Require.Positive(wall.LossFactor);
        }
    }
}
