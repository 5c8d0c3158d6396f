using System.Numerics;
using Stillwall.Numerics;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Spectra;
using static System.FormattableString;

namespace Stillwall.Proofs.Impedances;

/// <summary>Impedance from a stereo recording: left the voltage of the source, right the voltage across the driver, one resistor between them.</summary>
public static class ImpedanceRecording
{
    private const double DeadRatio = 1e-3, HumMostHz = 400, PointRatio = 1.023293;

    /// <summary>Looks into a recording.</summary>
    /// <param name="recording">Two channels: source, driver.</param>
    /// <param name="referenceOhm">The resistor between source and driver, ohm, above 0.</param>
    /// <param name="mismatch">A recording of the resistor with the driver unplugged, which shows how the two channels differ; null takes them as equal.</param>
    /// <param name="mismatchLoadOhm">A known resistor in the driver's place in that recording, ohm; null is none.</param>
    /// <returns>Figures with their bands and the curve, or why there are none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A resistance that is not positive.</exception>
    /// <remarks>
    /// Model: H = mean(S*V)/mean|S|² over Hann-windowed segments, Z = R·H/(1 − H); Re, Le, resonance, Qms and Qes by weighted least squares on H, the model seen through the same window, outliers without a say (Tukey's weights); 95 % bands from the covariance, scaled by what is left over.
    /// A coil with losses gets Le2 ∥ Re2 where that explains more. Validity: any sound that covers 5 Hz to some 500 Hz: sweep, noise, music; a few seconds. Source: Bendat and Piersol, Random Data (from memory); the weights and limits are our choice.
    /// Accuracy: 0.1 % of a recording computed from the circuit without noise; the reference resistor's own tolerance is not in the bands.
    /// </remarks>
    public static ImpedanceReading Of(Recording recording, double referenceOhm, Recording? mismatch = null, double? mismatchLoadOhm = null)
    {
        ArgumentNullException.ThrowIfNull(recording);
        Require.Positive(referenceOhm);
        var warnings = new List<string>();
        if (TroubleOf(recording, warnings) is { } trouble)
        {
            return new ImpedanceReading(null, trouble, []);
        }

        if (Ratio(recording) is not { } ratio)
        {
            return new ImpedanceReading(null, Invariant($"is too short ({recording.DurationS:0.##} s); three seconds or more"), []);
        }

        var isSwapped = IsSwapped(ratio);
        if (isSwapped)
        {
            warnings.Add("the channels are swapped: the right one holds the source; they were taken the other way round");
            ratio = Ratio(new Recording(recording.RateHz, [recording.Channels[1], recording.Channels[0]], recording.StepFraction))!;
            if (IsSwapped(ratio))
            {
                return new ImpedanceReading(null, "shows no load after a resistor: neither channel is the weaker one throughout; left the source, right the driver", []);
            }
        }

        if (mismatch is not null && Corrected(ratio, mismatch, referenceOhm, mismatchLoadOhm, warnings) is { } wrong)
        {
            return new ImpedanceReading(null, wrong, []);
        }
        else if (mismatch is not null)
        {
            ratio = Matched(ratio, Ratio(mismatch)!, (mismatchLoadOhm ?? double.PositiveInfinity) is var load && double.IsFinite(load) ? load / (load + referenceOhm) : 1);
        }

        return Read(ratio, referenceOhm, warnings);
    }

    private static ImpedanceReading Read(VoltageRatio ratio, double referenceOhm, List<string> warnings)
    {
        if (ImpedanceFit.Of(ratio, referenceOhm) is not { } fitted)
        {
            return new ImpedanceReading(null, "shows no resonance of a driver between 5 and 500 Hz; a sweep or noise over that span, loud enough, the driver after the resistor", []);
        }

        var (figures, bands) = (fitted.Model.Figures(), ImpedanceFit.Bands(fitted));
        if (!IsPlausible(figures, bands))
        {
            return new ImpedanceReading(null, "fits no driver: the noise is as strong as the signal, or it is no driver after a resistor; a louder sweep from 5 Hz to 1 kHz", []);
        }

        var hum = fitted.LeftOut.Select(k => k * ratio.SpacingHz).Where(f => f < HumMostHz).Select(f => NearestMains(f, ratio.SpacingHz)).OfType<int>().Distinct().Order().ToList();
        if (hum.Count > 0)
        {
            warnings.Add($"there is hum ({string.Join(", ", hum)} Hz); those lines were left out");
        }

        if (bands.ResonanceHz > 0.03 * figures.ResonanceHz || bands.QTotal > 0.1 * figures.QTotal || bands.DcResistanceOhm > 0.05 * figures.DcResistanceOhm)
        {
            warnings.Add("the bands are wide: record louder or longer, with less noise, from 5 Hz up");
        }

        if (fitted.MisfitRatio > 0.02)
        {
            warnings.Add("the curve is not that of one closed or free driver: look at it before using the figures");
        }

        return new ImpedanceReading(new ImpedanceResult(figures, bands, fitted.Model, Curve(ratio, fitted.Model, referenceOhm), fitted.MisfitRatio), null, warnings);
    }

    private static string? TroubleOf(Recording recording, List<string> warnings)
    {
        if (recording.Channels.Count != 2)
        {
            return Invariant($"has {recording.Channels.Count} channel{(recording.Channels.Count == 1 ? "" : "s")}; two: left the voltage of the source, right the voltage across the driver");
        }

        var health = recording.Channels.Select(c => ChannelHealth.Of(c, recording.StepFraction)).ToList();
        string[] names = ["left channel (the source)", "right channel (the driver)"];
        var strongest = health.Max(h => h.RmsFraction);
        for (var c = 0; c < 2; c++)
        {
            if (health[c].IsSilent || health[c].RmsFraction < DeadRatio * strongest)
            {
                return $"has nothing on its {names[c]}; both voltages, about equally loud";
            }

            if (health[c].IsClipped)
            {
                warnings.Add($"the {names[c]} is clipped: the figures are off; record again with the level down by 6 dB");
            }

            if (health[c].HasOffset)
            {
                warnings.Add(Invariant($"the {names[c]} stands {100 * health[c].OffsetFraction:0.#} % of full scale off zero; that was taken off"));
            }
        }

        return null;
    }

    private static VoltageRatio? Ratio(Recording recording)
    {
        double[] At(int c) => Resampling.To(Recording.WithoutMean(recording.Channels[c]), recording.RateHz, Resampling.BassRateHz);
        return VoltageRatio.Of(At(0), At(1), Resampling.BassRateHz);
    }

    // A load after a resistor has less voltage than the source, and its impedance a positive real part: |H| below 1 where the source has its power.
    private static bool IsSwapped(VoltageRatio ratio)
    {
        var (sum, power) = (0.0, 0.0);
        for (var k = 1; k < ratio.Ratios.Length && k * ratio.SpacingHz < 2000; k++)
        {
            var weight = ratio.PowerDensityRatios[k] * ratio.CoherenceFractions[k];
            sum += weight * ratio.Ratios[k].Magnitude;
            power += weight;
        }

        return sum > 1.001 * power;
    }

    private static string? Corrected(VoltageRatio ratio, Recording mismatch, double referenceOhm, double? loadOhm, List<string> warnings)
    {
        Require.Positive(loadOhm ?? referenceOhm);
        var heard = new List<string>();
        if (TroubleOf(mismatch, heard) is { } trouble)
        {
            return $"the recording of the resistor alone {trouble}";
        }

        warnings.AddRange(heard.Select(w => $"in the recording of the resistor alone {w}"));
        return Ratio(mismatch) is { } other && other.Ratios.Length >= 8 && ratio.Ratios.Length >= 8 ? null : "the recording of the resistor alone is too short; three seconds or more";
    }

    // The other recording's ratio over what it should be, between its own lines.
    private static VoltageRatio Matched(VoltageRatio ratio, VoltageRatio other, double expected)
    {
        var gains = ratio.Ratios.Select((_, k) => Between(other, k * ratio.SpacingHz / other.SpacingHz) / expected).ToArray();
        return ratio with
        {
            Ratios = [.. ratio.Ratios.Zip(gains, (h, g) => g == 0 ? h : h / g)],
            DeviationRatios = [.. ratio.DeviationRatios.Zip(gains, (d, g) => g == 0 ? double.PositiveInfinity : d / g.Magnitude)],
        };
    }

    // A mismatch of sound cards is smooth: the mean over a few lines that are coherent.
    private static Complex Between(VoltageRatio other, double line)
    {
        var (sum, weight) = (Complex.Zero, 0.0);
        var middle = (int)Math.Round(line);
        var reach = Math.Max(3, middle / 20);
        for (var k = Math.Max(1, middle - reach); k <= Math.Min(other.Ratios.Length - 1, middle + reach); k++)
        {
            var w = other.CoherenceFractions[k] > 0.9 ? other.PowerDensityRatios[k] : 0;
            sum += w * other.Ratios[k];
            weight += w;
        }

        return weight > 0 ? sum / weight : 0;
    }

    private static bool IsPlausible(ImpedanceFigures f, ImpedanceFigures band) =>
        f.ResonanceHz is > 4 and < 1000 && f.QMechanical is > 0.1 and < 200 && f.QElectrical is > 0.01 and < 1000 && f.DcResistanceOhm is > 1e-3 and < 1e4
        && new[] { f.ResonanceHz, f.QTotal, f.DcResistanceOhm, f.PeakOhm, band.ResonanceHz, band.QTotal, band.DcResistanceOhm }.All(double.IsFinite)
        && band.ResonanceHz < 0.3 * f.ResonanceHz && band.QTotal < f.QTotal && band.DcResistanceOhm < f.DcResistanceOhm;

    private static int? NearestMains(double hertz, double spacingHz)
    {
        foreach (var mains in new[] { 50, 60 })
        {
            var order = (int)Math.Round(hertz / mains);
            if (order > 0 && Math.Abs(hertz - (order * mains)) <= Math.Max(1.5, 2 * spacingHz))
            {
                return order * mains;
            }
        }

        return null;
    }

    private static List<ImpedancePoint> Curve(VoltageRatio ratio, ImpedanceModel model, double referenceOhm)
    {
        var points = new List<ImpedancePoint>();
        var last = 0.0;
        for (var k = 1; k < ratio.Ratios.Length && k * ratio.SpacingHz <= 5000; k++)
        {
            var hertz = k * ratio.SpacingHz;
            var z = referenceOhm * ratio.Ratios[k] / (1 - ratio.Ratios[k]);
            if (hertz >= 4 && hertz >= last * PointRatio && ratio.CoherenceFractions[k] > 0.5 && ratio.PowerDensityRatios[k] > 1e-8 && double.IsFinite(z.Magnitude) && double.IsFinite(z.Phase))
            {
                points.Add(new ImpedancePoint(hertz, z.Magnitude, z.Phase * 180 / Math.PI, ratio.CoherenceFractions[k], model.AtOhm(hertz).Magnitude));
                last = hertz;
            }
        }

        return points;
    }
}
