using Stillwall.Numerics;

namespace Stillwall.Walls;

/// <summary>Sound of the walls beside the cone at one frequency.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="PanelsDb">Each panel, dB, in the order of the panels.</param>
/// <param name="PowerSumDb">All panels by their power, dB.</param>
/// <param name="WorstPhaseDb">All panels if they moved in step, dB.</param>
public sealed record WallCurvePoint(double FrequencyHz, IReadOnlyList<double> PanelsDb, double PowerSumDb, double WorstPhaseDb);

/// <summary>Sound of the walls beside the cone over frequency, by all their modes.</summary>
public static class WallCurve
{
    /// <summary>Lowest frequency, Hz.</summary>
    public const double LowHz = 20;

    /// <summary>Highest frequency, Hz.</summary>
    public const double HighHz = 1000;

    /// <summary>The curve of some panels.</summary>
    /// <param name="panels">Modes of each panel, at least one panel with at least one mode.</param>
    /// <param name="boxComplianceM3PerPa">Compliance of the enclosed air, m³/Pa, above 0.</param>
    /// <param name="pointsPerDecade">Points in a decade, 1 to 10 000.</param>
    /// <param name="coneOnAirHz">Resonance of the cone's mass on the enclosed air, Hz; without it the cone's reaction on the front is left out.</param>
    /// <returns>Points from 20 Hz to 1 kHz by equal ratios.</returns>
    /// <exception cref="ArgumentException">No panels, one without modes, or a figure out of range.</exception>
    /// <remarks>
    /// Model: the cone's volume velocity U makes the pressure U/(jωC) in the box; each panel gives way by the sum of its modes, V/[1 − (f/fₙ)² + jη];
    /// panels add by power, and in step for the worst. The front also bears the cone's reaction, <see cref="WallSound.TotalDb"/>. Validity: an even
    /// box pressure, so below the first air mode of the box; walls' compliance small against the air's. Source: modal superposition; hysteretic loss
    /// after Cremer and Heckl 1988 (from memory).
    /// Accuracy: ± 3 dB near a mode, from the loss factor; over the first air mode an order of magnitude.
    /// </remarks>
    public static IReadOnlyList<WallCurvePoint> Of(
        IReadOnlyList<IReadOnlyList<WallMotion>> panels,
        double boxComplianceM3PerPa,
        int pointsPerDecade = 40,
        double? coneOnAirHz = null
    )
    {
        ArgumentNullException.ThrowIfNull(panels);
        Require.Within(pointsPerDecade, 1, 10000, nameof(pointsPerDecade));
        if (panels.Count == 0)
        {
            throw new ArgumentException("accepted: at least one panel", nameof(panels));
        }

        var steps = (int)Math.Round(Math.Log10(HighHz / LowHz) * pointsPerDecade);
        return
        [
            .. Enumerable
                .Range(0, steps + 1)
                .Select(k => At(panels, boxComplianceM3PerPa, coneOnAirHz, k == steps ? HighHz : LowHz * Math.Pow(HighHz / LowHz, k / (double)steps))),
        ];
    }

    private static WallCurvePoint At(IReadOnlyList<IReadOnlyList<WallMotion>> panels, double compliance, double? coneOnAirHz, double frequencyHz)
    {
        List<double> each = [.. panels.Select(p => WallSound.TotalDb(p, compliance, frequencyHz, coneOnAirHz))];
        return new WallCurvePoint(
            frequencyHz,
            each,
            10 * Math.Log10(each.Sum(l => Math.Pow(10, l / 10))),
            20 * Math.Log10(each.Sum(l => Math.Pow(10, l / 20)))
        );
    }
}
