using System.Numerics;
using Stillwall.Numerics;
using Stillwall.Proofs.Recordings;
using Stillwall.Proofs.Spectra;
using static System.FormattableString;

namespace Stillwall.Proofs.Impedances;

/// <summary>Impedance from a stereo recording: left the voltage of the source, right the voltage across the driver, one resistor between them.</summary>
public static class ImpedanceRecording
{
    private const double DeadRatio = 1e-3,
        HumMostHz = 400,
        PointRatio = 1.023293;

    // Valid to 2.5 kHz, above all that is fitted (our choice).
    private const double AnalysisRateHz = 6000,
        CurveHz = 2500;

    // Two channels of one sound card are set alike to this, and by hand with two knobs to this; deviations are half of it (our choice).
    private const double KnobsRatio = 0.05;

    // Creep over a decade that is worth a word (our choice).
    private const double LeastCreep = 0.02,
        WrongMisfit = 0.02,
        DifferentDeviations = 3;

    // Fits about the last model until nothing moves any more (our choice).
    private const int Refinements = 1;

    /// <summary>Looks into a recording.</summary>
    /// <param name="recording">Two channels: source, driver.</param>
    /// <param name="referenceOhm">The resistor between source and driver, ohm, above 0.</param>
    /// <param name="mismatch">A recording of the resistor with the driver unplugged, which shows how the two channels differ; null takes them as equal.</param>
    /// <param name="coil">Resistance of the coil by a meter and half of its 95 % band, ohm, above 0; null where it was not measured.</param>
    /// <param name="mismatchLoadOhm">A known resistor in the driver's place in that recording, ohm; null is none.</param>
    /// <returns>Figures with their bands and the curve, or why there are none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A resistance that is not positive.</exception>
    /// <remarks>
    /// Model: H = mean(S*V)/mean|S|² over Hann-windowed segments, Z = R·H/(1 − H); Re, Le, resonance, Qms and Qes by weighted least squares on H, the
    /// model seen through the same window, outliers without a say (Tukey's weights). A coil with losses gets K(jω)ⁿ or Le2 ∥ Re2, and a suspension
    /// that creeps its logarithmic law, where that explains more. Without a recording of the resistor alone the gain of one channel over the other is
    /// a value too, within 5 % of one. 95 % bands from the covariance, scaled by what is left over, and as far as the families reach that are not
    /// ruled out. Validity: any sound that covers 5 Hz to some 500 Hz: sweep, noise, music; a few seconds. Source: Bendat and Piersol 2010 (from
    /// memory); the weights and limits are our choice.
    /// Accuracy: 0.1 % of a recording computed from the circuit without noise; the reference resistor's own tolerance is not in the bands.
    /// </remarks>
    public static ImpedanceReading Of(
        Recording recording,
        double referenceOhm,
        Recording? mismatch = null,
        double? mismatchLoadOhm = null,
        (double Ohm, double BandOhm)? coil = null
    )
    {
        ArgumentNullException.ThrowIfNull(recording);
        Require.Positive(referenceOhm);
        var warnings = new List<string>();
        if (TroubleOf(recording, warnings) is { } trouble)
        {
            return new ImpedanceReading(null, trouble, []);
        }

        if (Pair(recording, 0, 1) is not { } pair)
        {
            return new ImpedanceReading(null, Invariant($"is too short ({recording.DurationS:0.##} s); three seconds or more"), []);
        }

        if (IsSwapped(pair.Ratio()))
        {
            warnings.Add("the channels are swapped: the right one holds the source; they were taken the other way round");
            pair = Pair(recording, 1, 0)!;
            if (IsSwapped(pair.Ratio()))
            {
                return new ImpedanceReading(
                    null,
                    "shows no load after a resistor: neither channel is the weaker one throughout; left the source, right the driver",
                    []
                );
            }
        }

        var mismatched = mismatch is null ? null : MismatchOf(mismatch, referenceOhm, mismatchLoadOhm, warnings);
        var known = new KnownBeside(mismatched?.Gain is null ? KnobsRatio / 2 : 0, coil?.Ohm, (coil?.BandOhm ?? 1) / 1.96);
        return mismatched is { Trouble: { } wrong } ? new ImpedanceReading(null, wrong, []) : Read(pair, mismatched?.Gain, referenceOhm, known, warnings);
    }

    private static ImpedanceReading Read(
        VoltagePair pair,
        Func<double, Complex>? gain,
        double referenceOhm,
        KnownBeside known,
        List<string> warnings
    )
    {
        var ratio = Matched(pair.Ratio(), gain);
        var fitted = ImpedanceFit.Of(ratio, referenceOhm, known);
        for (var round = 0; round < Refinements && fitted is not null; round++)
        {
            var (model, louder) = (fitted.Model, fitted.Gain);
            ratio = Matched(pair.RatioAbout(f => louder * model.AtOhm(f) / (model.AtOhm(f) + referenceOhm) * (gain?.Invoke(f) ?? 1)), gain);
            fitted = ImpedanceFit.Of(ratio, referenceOhm, known, fitted);
        }

        if (fitted is null)
        {
            return new ImpedanceReading(
                null,
                "shows no resonance of a driver between 5 and 500 Hz; a sweep or noise over that span, loud enough, the driver after the resistor",
                []
            );
        }

        var (figures, bands) = (fitted.Model.Figures(), ImpedanceFit.Bands(fitted));
        if (!IsPlausible(figures, bands))
        {
            return new ImpedanceReading(
                null,
                "fits no driver: the noise is as strong as the signal, or it is no driver after a resistor; a louder sweep from 5 Hz to 1 kHz",
                []
            );
        }

        var hum = fitted
            .LeftOut.Select(k => k * ratio.SpacingHz)
            .Where(f => f < HumMostHz)
            .Select(f => NearestHum(f, ratio.SpacingHz))
            .OfType<int>()
            .Distinct()
            .Order()
            .ToList();
        if (hum.Count > 0)
        {
            warnings.Add($"there is hum ({string.Join(", ", hum)} Hz); those lines were left out");
        }

        if (bands.ResonanceHz > 0.03 * figures.ResonanceHz)
        {
            warnings.Add("the bands are wide: record louder or longer, with less noise, from 5 Hz up");
        }

        bands = WithCreep(bands, fitted.Model);
        return new ImpedanceReading(
            new ImpedanceResult(figures, bands, fitted.Model, Curve(Matched(ratio, _ => fitted.Gain), fitted.Model, referenceOhm), fitted.MisfitRatio)
            {
                GainRatio = fitted.Gain,
            },
            null,
            warnings
        )
        {
            Doubts = [.. Doubts(fitted, known)],
            Hints = [.. Hints(known, figures, referenceOhm)],
        };
    }

    // What creep takes of Q at the resonance counts for what is heard there, and is no loss of the suspension's own: the bands hold both.
    private static ImpedanceFigures WithCreep(ImpedanceFigures bands, ImpedanceModel m)
    {
        var with = m.CreepingMechanicalQ;
        var total = with * m.ElectricalQ / (with + m.ElectricalQ);
        return bands with
        {
            QMechanical = Math.Max(bands.QMechanical, Math.Abs(with - m.MechanicalQ)),
            QTotal = Math.Max(bands.QTotal, Math.Abs(total - m.TotalQ)),
        };
    }

    private static IEnumerable<string> Doubts(ImpedanceFitted fitted, KnownBeside known)
    {
        var m = fitted.Model;
        if (fitted.MisfitRatio > WrongMisfit)
        {
            yield return "the curve is not that of one closed or free driver; look at it, and for a rattle, a leak or a second resonance, before using "
                + "the figures";
        }

        if (m.CreepRatio > LeastCreep)
        {
            yield return Invariant($"the suspension creeps, {100 * m.CreepRatio:0.#} % a decade, or a box leaks: at the resonance the mechanical Q is ")
                + Invariant($"{m.CreepingMechanicalQ:0.##} with what creep takes, and {m.MechanicalQ:0.##} without; record the driver free and after an hour ")
                + "of playing, and seal a box that it is in";
        }

        if (known.CoilOhm is { } ohm && Math.Abs(m.DcResistanceOhm - ohm) > DifferentDeviations * known.CoilDeviationOhm)
        {
            yield return Invariant($"the recording says {m.DcResistanceOhm:0.##} ohm of the coil where the meter says {ohm:0.##}: measure the resistor ")
                + "between the channels, touch the meter's leads together and take what they show off";
        }
    }

    private static IEnumerable<string> Hints(KnownBeside known, ImpedanceFigures figures, double referenceOhm)
    {
        if (known.GainDeviationRatio <= 0)
        {
            yield break;
        }

        double Magnified(double resistor) => 1 + (figures.PeakOhm / resistor);
        yield return "first record both inputs on one point, the driver unplugged, and bring that as the resistor alone (--alone): without it the two "
            + Invariant($"channels are taken as alike within {100 * KnobsRatio:0} %, and the bands hold that. One per cent between them is ")
            + Invariant($"{Magnified(referenceOhm):0.#} % of the peak with {referenceOhm:0.##} ohm, ")
            + Invariant($"and {Magnified(100):0.#} % with 100 ohm; take 47 ohm or more");
        }

    private static string? TroubleOf(Recording recording, List<string> warnings)
    {
        if (recording.Channels.Count != 2)
        {
            return Invariant($"has {recording.Channels.Count} channel{(recording.Channels.Count == 1 ? "" : "s")}; two: left the voltage of the source, ")
                + "right the voltage across the driver";
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

    private static VoltagePair? Pair(Recording recording, int source, int load)
    {
        double[] At(int c) => Resampling.To(Recording.WithoutMean(recording.Channels[c]), recording.RateHz, AnalysisRateHz);
        return VoltagePair.Of(At(source), At(load), AnalysisRateHz);
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

    private sealed record Mismatch(Func<double, Complex>? Gain, string? Trouble);

    // Gain of the load's channel against the source's: the ratio that was found over the one that should be.
    private static Mismatch MismatchOf(Recording recording, double referenceOhm, double? loadOhm, List<string> warnings)
    {
        Require.Positive(loadOhm ?? referenceOhm);
        var heard = new List<string>();
        if (TroubleOf(recording, heard) is { } trouble)
        {
            return new Mismatch(null, $"the recording of the resistor alone {trouble}");
        }

        warnings.AddRange(heard.Select(w => $"in the recording of the resistor alone {w}"));
        var expected = loadOhm is { } load ? load / (load + referenceOhm) : 1;
        return Pair(recording, 0, 1)?.Ratio() is { } ratio
            ? new Mismatch(f => Between(ratio, f / ratio.SpacingHz) / expected, null)
            : new Mismatch(null, "the recording of the resistor alone is too short; three seconds or more");
    }

    private static VoltageRatio Matched(VoltageRatio ratio, Func<double, Complex>? gain)
    {
        if (gain is null)
        {
            return ratio;
        }

        var gains = ratio.Ratios.Select((_, k) => gain(k * ratio.SpacingHz)).ToArray();
        return ratio with
        {
            Ratios = [.. ratio.Ratios.Zip(gains, (h, g) => h / g)],
            DeviationRatios = [.. ratio.DeviationRatios.Zip(gains, (d, g) => d / g.Magnitude)],
        };
    }

    // A mismatch of sound cards is smooth: the mean over lines that are coherent, a twentieth of the frequency to either side; one where there are none.
    private static Complex Between(VoltageRatio ratio, double line)
    {
        var (sum, weight) = (Complex.Zero, 0.0);
        var middle = (int)Math.Round(line);
        var reach = Math.Max(3, middle / 20);
        for (var k = Math.Max(1, middle - reach); k <= Math.Min(ratio.Ratios.Length - 1, middle + reach); k++)
        {
            var w = ratio.CoherenceFractions[k] > 0.9 ? ratio.PowerDensityRatios[k] : 0;
            sum += w * ratio.Ratios[k];
            weight += w;
        }

        return weight > 0 && sum != 0 ? sum / weight : 1;
    }

    private static bool IsPlausible(ImpedanceFigures f, ImpedanceFigures band) =>
        f.ResonanceHz is > 4 and < 1000
        && f.QMechanical is > 0.1 and < 200
        && f.QElectrical is > 0.01 and < 1000
        && f.DcResistanceOhm is > 1e-3 and < 1e4
        && new[] { f.ResonanceHz, f.QTotal, f.DcResistanceOhm, f.PeakOhm, band.ResonanceHz, band.QTotal, band.DcResistanceOhm }.All(double.IsFinite)
        && band.ResonanceHz < 0.3 * f.ResonanceHz
        && band.QTotal < f.QTotal
        && band.DcResistanceOhm < f.DcResistanceOhm;

    private static int? NearestHum(double hertz, double spacingHz)
    {
        foreach (var line in new[] { 50, 60 })
        {
            var order = (int)Math.Round(hertz / line);
            if (order > 0 && Math.Abs(hertz - (order * line)) <= Math.Max(1.5, 2 * spacingHz))
            {
                return order * line;
            }
        }

        return null;
    }

    private static List<ImpedancePoint> Curve(VoltageRatio ratio, ImpedanceModel model, double referenceOhm)
    {
        var points = new List<ImpedancePoint>();
        var last = 0.0;
        for (var k = 1; k < ratio.Ratios.Length && k * ratio.SpacingHz <= CurveHz; k++)
        {
            var hertz = k * ratio.SpacingHz;
            var z = referenceOhm * ratio.Ratios[k] / (1 - ratio.Ratios[k]);
            if (
                hertz >= 4
                && hertz >= last * PointRatio
                && ratio.CoherenceFractions[k] > 0.5
                && ratio.PowerDensityRatios[k] > 1e-8
                && double.IsFinite(z.Magnitude)
                && double.IsFinite(z.Phase)
            )
            {
                points.Add(new ImpedancePoint(hertz, z.Magnitude, z.Phase * 180 / Math.PI, ratio.CoherenceFractions[k], model.AtOhm(hertz).Magnitude));
                last = hertz;
            }
        }

        return points;
    }
}
