using Stillwall.Drivers;
using Stillwall.Materials;
using Stillwall.Numerics;

namespace Stillwall.Cabinets;

/// <summary>Where nine in ten drivers of this kind end up in this box.</summary>
/// <param name="LowResonanceHz">Resonance that one in twenty falls below, Hz.</param>
/// <param name="HighResonanceHz">Resonance that one in twenty exceeds, Hz.</param>
/// <param name="LowSystemQ">System Q that one in twenty falls below.</param>
/// <param name="HighSystemQ">System Q that one in twenty exceeds.</param>
public sealed record ToleranceBand(
    [property: ComputedBy("tolerance", "box.effective_volume_m3")] double LowResonanceHz,
    [property: ComputedBy("tolerance", "box.effective_volume_m3")] double HighResonanceHz,
    [property: ComputedBy("tolerance", "box.effective_volume_m3")] double LowSystemQ,
    [property: ComputedBy("tolerance", "box.effective_volume_m3")] double HighSystemQ
);

/// <summary>Where nine in ten responses lie at one frequency.</summary>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="LowSplDb">Level that one in twenty falls below, dB.</param>
/// <param name="HighSplDb">Level that one in twenty exceeds, dB.</param>
public sealed record ResponseBand(
    double FrequencyHz,
    [property: ComputedBy("tolerance", "box.effective_volume_m3")] double LowSplDb,
    [property: ComputedBy("tolerance", "box.effective_volume_m3")] double HighSplDb
);

/// <summary>How far drivers of one kind differ, drawn 1 000 times from a fixed seed.</summary>
public static class Tolerance
{
    /// <summary>How many drivers are drawn.</summary>
    public const int Draws = 1000;

    private const ulong Seed = 19720102;

    /// <summary>Band of resonance and system Q.</summary>
    /// <param name="driver">The driver, or several as one.</param>
    /// <param name="effectiveVolumeM3">Effective volume, m³, above 0.</param>
    /// <param name="air">The air.</param>
    /// <returns>The 5 to 95 % band.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The volume is not positive.</exception>
    /// <remarks>
    /// Model: Cms ±20 %, Bl, Mms and Re ±5 %, Rms ±30 %, drawn evenly and independently, the rest derived; closed forms of the lossless box.
    /// Validity: drivers of one kind from one maker. Source: our choice of spreads. Accuracy: the band's ends are good to about a twentieth of its width.
    /// </remarks>
    public static ToleranceBand Of(Driver driver, double effectiveVolumeM3, Air air)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(air);
        Require.Positive(effectiveVolumeM3);
        var boxStiffness = air.BulkModulusPa * driver.SdM2 * driver.SdM2 / effectiveVolumeM3;
        var resonances = new double[Draws];
        var qs = new double[Draws];
        var drawn = 0;
        foreach (var one in Drawn(driver))
        {
            var stiffness = (1 / one.CmsMPerN) + boxStiffness;
            resonances[drawn] = Math.Sqrt(stiffness / one.MmsKg) / (2 * Math.PI);
            qs[drawn++] = Math.Sqrt(stiffness * one.MmsKg) / (one.RmsKgS + (one.BlTM * one.BlTM / one.ReOhm));
        }

        var (lowHz, highHz) = Ends(resonances);
        var (lowQ, highQ) = Ends(qs);
        return new ToleranceBand(lowHz, highHz, lowQ, highQ);
    }

    /// <summary>Band of the response at given frequencies.</summary>
    /// <param name="network">The driver in its box.</param>
    /// <param name="frequenciesHz">Frequencies, Hz, each above 0.</param>
    /// <param name="volts">Voltage of the source, V rms, above 0.</param>
    /// <param name="distanceM">Distance, m, above 0.</param>
    /// <returns>The 5 to 95 % band at each frequency.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    /// <remarks>
    /// Model: as the band of resonance and Q, through the network with leak, fill and ports as they are. Validity: drivers of one kind from one maker.
    /// Source: our choice of spreads. Accuracy: the band's ends are good to about a twentieth of its width.
    /// </remarks>
    public static IReadOnlyList<ResponseBand> ResponseOf(BoxNetwork network, IReadOnlyList<double> frequenciesHz, double volts, double distanceM = 1)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(frequenciesHz);
        var networks = Drawn(network.Driver).Select(d => network with { Driver = d }).ToArray();
        return
        [
            .. frequenciesHz.Select(f =>
            {
                var (low, high) = Ends([.. networks.Select(n => n.At(f, volts).LevelDb(distanceM))]);
                return new ResponseBand(f, low, high);
            }),
        ];
    }

    private static IEnumerable<Driver> Drawn(Driver driver)
    {
        var generator = new SeededGenerator(Seed);
        for (var i = 0; i < Draws; i++)
        {
            yield return driver with
            {
                CmsMPerN = driver.CmsMPerN * generator.Factor(0.2),
                BlTM = driver.BlTM * generator.Factor(0.05),
                MmsKg = driver.MmsKg * generator.Factor(0.05),
                ReOhm = driver.ReOhm * generator.Factor(0.05),
                RmsKgS = driver.RmsKgS * generator.Factor(0.3),
            };
        }
    }

    private static (double Low, double High) Ends(double[] values)
    {
        Array.Sort(values);
        return (Quantile(values, 0.05), Quantile(values, 0.95));
    }

    private static double Quantile(double[] sorted, double share)
    {
        var position = share * (sorted.Length - 1);
        var below = (int)position;
        return sorted[below] + ((position - below) * (sorted[below + 1] - sorted[below]));
    }
}
